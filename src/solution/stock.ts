import { formulaOf } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import { type Given, measured } from '../stoichiometry/given.js'
import { massNaming } from '../stoichiometry/naming.js'
import { anObject } from './bounds.js'
import { amountConcentration, type ByMassFraction, type OfSubstance } from './concentration.js'
import { type Dilution, dilution } from './dilution.js'
import { densityNaming } from './naming.js'

/** A solution to be made from a concentrated reagent. */
export interface StockRequest extends OfSubstance {
  /** The concentration to make; text is exact. */
  readonly concentration: Given<'amountConcentration'>
  /** The volume to make; text is exact. */
  readonly volume: Given<'volume'>
  /** What the bottle on the shelf says; text is measured. A strength of the table of stock reagents fits. */
  readonly stock: ByMassFraction
}

/** How a solution is made from a concentrated reagent. */
export interface StockDilution extends Dilution {
  /** The mass of stock to measure out, for those who weigh it. */
  readonly mass: Quantity<'mass'>
}

/**
 * How much of a concentrated reagent makes a volume of diluted solution: the concentration of the stock from its mass fraction and
 * density, then the dilution.
 *
 * @param request - What is to be made, and what the label of the stock says.
 * @returns Volume and mass of stock, about how much water, in which order, with the caution.
 * @throws {@link SolutionError} `solution/cannot-concentrate` and the other codes of `dilution` and `amountConcentration`;
 *   {@link FormulaError} and {@link QuantityError} for what cannot be read.
 * @source OpenStax, Chemistry 2e, section 3.3; c = w ρ / M as in `amountConcentration`.
 *
 * @example
 * ```ts
 * import { stockFor } from 'saltwright/solution'
 *
 * const stock = { massFraction: '96.0 %', density: '1.84 g/mL' } as const
 * const acid = stockFor({ substance: 'H2SO4', concentration: '3 mol/L', volume: '500 mL', stock })
 * acid.stock.toString() // => '83.3 mL'
 * acid.mass.toString() // => '153 g'
 * acid.order // => 'acid into water'
 * ```
 */
export function stockFor(request: StockRequest): StockDilution {
  const expected = '{ substance, concentration, volume, stock }'
  const { substance, weights, concentration, volume, stock } = anObject(request, expected)
  const { massFraction, basis } = anObject(stock, '{ massFraction, density }')
  const of = formulaOf(substance).text
  const density = measured(stock.density, 'density', densityNaming(of))
  const from = amountConcentration({ massFraction, density, basis, substance, weights })
  const diluted = dilution({ from, to: concentration, volume, substance })
  return { ...diluted, mass: density.times(diluted.stock).named(massNaming(of, `mass of stock of ${of}`)) }
}
