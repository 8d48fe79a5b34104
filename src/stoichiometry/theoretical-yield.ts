import type { EquationLike } from '../equation/index.js'
import type { FormulaLike } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import { compareSupplies, type SupplyOptions } from './limiting-reagent.js'
import { massFromAmount } from './molar-amount.js'
import { ratioBetween } from './mole-ratio.js'
import { productOf, reactionOf } from './reaction.js'
import type { SpeciesAmount, Supplies } from './supplies.js'

/** What a reaction can give at best. */
export interface TheoreticalYield extends SpeciesAmount {
  /** The mass of product, in g. */
  readonly mass: Quantity<'mass'>
  /** The reactant that runs out first, by which the yield is counted. */
  readonly limiting: string
}

/**
 * The most product that supplies can give: what the limiting reagent makes if all of it reacts and nothing is lost.
 *
 * @param equation - A balanced equation or its text.
 * @param product - The product, with its water of crystallisation as it will be weighed.
 * @param supplies - How much there is, by formula; reactants that are not listed are taken to be there in excess.
 * @param options - Atomic weights.
 * @returns Amount and mass of product, and what limits them.
 * @throws {@link StoichiometryError} `stoichiometry/not-a-product` and the codes of `limitingReagent`, such as
 *   `stoichiometry/nothing-limits`; {@link EquationError}, {@link FormulaError} and {@link QuantityError} for what cannot be read.
 * @source OpenStax, Chemistry 2e, section 4.4.
 *
 * @example
 * ```ts
 * import { theoreticalYield } from 'saltwright/stoichiometry'
 *
 * const crop = theoreticalYield('ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O', 'ZnSO4·7H2O', { ZnO: '3.98 g', H2SO4: '0.060 mol' })
 * crop.mass.toString() // => '14.1 g'
 * crop.limiting // => 'ZnO'
 * ```
 */
export function theoreticalYield(
  equation: EquationLike,
  product: FormulaLike,
  supplies: Supplies,
  options: SupplyOptions = {},
): TheoreticalYield {
  const reaction = reactionOf(equation)
  const made = productOf(reaction, product)
  const { limiting } = compareSupplies(reaction, supplies, options)
  const amount = limiting.amount.times(ratioBetween(made, limiting)).named({
    label: `theoretical amount of ${made.formula}`,
    symbol: 'n',
    of: made.formula,
    role: 'amount',
  })
  const mass = massFromAmount(amount, made.formula, { weights: options.weights }).named({
    label: `theoretical yield of ${made.formula}`,
    role: 'theoretical yield',
  })
  return { formula: made.formula, amount, mass, limiting: limiting.formula }
}
