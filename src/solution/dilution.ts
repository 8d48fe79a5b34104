import { type FormulaLike, formulaOf } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import type { Given } from '../stoichiometry/given.js'
import { anObject } from './bounds.js'
import { solveDilution } from './dilution-numbers.js'
import { type Mixing, mixingOf } from './mixing.js'
import { volumeNaming } from './naming.js'

/** A dilution: three of its four numbers give the fourth. Text is exact; a reading is `quantity('10.00 mL')`. */
export interface DilutionRequest {
  /** Amount concentration of the stock solution. */
  readonly from?: Given<'amountConcentration'> | undefined
  /** Amount concentration of the diluted solution. */
  readonly to?: Given<'amountConcentration'> | undefined
  /** Volume of stock solution. */
  readonly stock?: Given<'volume'> | undefined
  /** Volume of the diluted solution. */
  readonly volume?: Given<'volume'> | undefined
  /** What is dissolved: tells an acid or alkali, which have their customary order of mixing. */
  readonly substance?: FormulaLike | undefined
}

/** How a solution is diluted. */
export interface Dilution extends Mixing {
  /** Amount concentration of the stock solution. */
  readonly from: Quantity<'amountConcentration'>
  /** Amount concentration of the diluted solution. */
  readonly to: Quantity<'amountConcentration'>
  /** Volume of stock solution to measure out. */
  readonly stock: Quantity<'volume'>
  /** Volume of the diluted solution, to the mark. */
  readonly volume: Quantity<'volume'>
  /** About how much water that takes: volumes do not quite add, so the solution is made up to its volume with the last of it. */
  readonly water: Quantity<'volume'>
  /** Final by initial volume. */
  readonly dilutionFactor: Quantity<'ratio'>
}

/**
 * Diluting a solution with water: c1 V1 = c2 V2. Three of the four numbers give the fourth.
 *
 * @param request - Three of `from`, `to`, `stock` and `volume`, and perhaps the substance.
 * @returns All four numbers, about how much water, in which order they are mixed, and the caution that goes with it.
 * @throws {@link SolutionError} `solution/three-of-four`, `solution/cannot-concentrate`, `solution/not-above-zero`,
 *   `solution/not-an-object`; {@link FormulaError} and {@link QuantityError} for what cannot be read.
 * @source OpenStax, Chemistry 2e, section 3.3.
 *
 * @example
 * ```ts
 * import { dilution } from 'saltwright/solution'
 *
 * const acid = dilution({ from: '15.7 mol/L', to: '8 mol/L', volume: '50 mL', substance: 'HNO3' })
 * acid.stock.toString() // => '25.47770701 mL'
 * acid.water.toString() // => '24.52229299 mL'
 * acid.order // => 'acid into water'
 * dilution({ from: '3 mol/L', to: '6 mol/L', volume: '50 mL' }) // throws solution/cannot-concentrate
 * ```
 */
export function dilution(request: DilutionRequest): Dilution {
  const { substance, ...given } = anObject(request, 'three of { from, to, stock, volume }')
  const of = substance === undefined ? undefined : formulaOf(substance).text
  const numbers = solveDilution(given, of)
  const { stock, volume } = numbers
  return {
    ...numbers,
    water: volume.minus(stock).named(volumeNaming('volume of water, about')),
    dilutionFactor: volume.dividedBy(stock).named({ label: 'dilution factor' }),
    ...mixingOf(substance),
  }
}
