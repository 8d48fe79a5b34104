import type { EquationLike } from '../equation/index.js'
import type { Quantity } from '../quantity/index.js'
import { compareSupplies, type Reactant, type SupplyOptions } from './limiting-reagent.js'
import { namedAmount } from './naming.js'
import { amountUsed, remaining } from './progress.js'
import { reactionOf } from './reaction.js'
import type { Supplies } from './supplies.js'

/** What becomes of a supply when the limiting reagent is used up. */
export interface Leftover {
  /** The formula as the equation has it. */
  readonly formula: string
  /** How much there was, in mol. */
  readonly supplied: Quantity<'amount'>
  /** How much reacted, in mol. */
  readonly used: Quantity<'amount'>
  /** How much is left over, in mol; zero for the limiting reagent. */
  readonly left: Quantity<'amount'>
}

/**
 * What is left of each supply when the limiting reagent is used up.
 *
 * @param equation - A balanced equation or its text.
 * @param supplies - How much there is, by formula; reactants that are not listed are taken to be there in excess.
 * @param options - Atomic weights.
 * @returns Each supplied reactant in the order of the equation: supplied, used, left.
 * @throws {@link StoichiometryError} `stoichiometry/nothing-limits` and the other codes of `limitingReagent`;
 *   {@link EquationError}, {@link FormulaError} and {@link QuantityError} for what cannot be read.
 * @source OpenStax, Chemistry 2e, section 4.4.
 *
 * @example
 * ```ts
 * import { leftovers } from 'saltwright/stoichiometry'
 *
 * const [oxide, acid] = leftovers('ZnO + H2SO4 -> ZnSO4 + H2O', { ZnO: '0.0400 mol', H2SO4: '0.0600 mol' })
 * oxide?.left.toString() // => '0 mol'
 * acid?.left.toString() // => '0.02 mol'
 * ```
 */
export function leftovers(
  equation: EquationLike,
  supplies: Supplies,
  options: SupplyOptions = {},
): readonly Leftover[] {
  const { reactants, limiting } = compareSupplies(reactionOf(equation), supplies, options)
  return reactants.map((reactant) => leftover(reactant, limiting))
}

function leftover(reactant: Reactant, limiting: Reactant): Leftover {
  const { formula, amount: supplied } = reactant
  const used = amountUsed(reactant, limiting)
  const left = namedAmount(remaining(supplied, used), formula, `amount of ${formula} left over`)
  return { formula, supplied, used, left }
}
