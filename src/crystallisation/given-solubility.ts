import type { FormulaLike } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import { isQuantity } from '../quantity/index.js'
import type { Given } from '../stoichiometry/given.js'
import { positive } from './crop-input.js'
import { type Solubility, solubilityOf } from './solubility-of.js'
import type { SolubilityTable } from './solubility-table.js'

/** A solubility to calculate with, and where it comes from unless it was given. */
export interface SolubilityUsed {
  /** Grams of the anhydrous salt per gram of water. */
  readonly massRatio: Quantity<'ratio'>
  /** Where that comes from; undefined where it was given. */
  readonly solubility: Solubility | undefined
}

/** Whether a solubility was given as a number, which holds for one temperature, rather than as a table. */
export function isNumber(given: Given<'ratio'> | SolubilityTable | undefined): given is Given<'ratio'> {
  return typeof given === 'string' || isQuantity(given)
}

/** The solubility of a solid: the number given, else that of the table. */
export function solubilityFor(
  crystal: FormulaLike,
  temperature: Given<'temperature'>,
  given: Given<'ratio'> | SolubilityTable | undefined,
): SolubilityUsed {
  if (!isNumber(given)) {
    const solubility = solubilityOf(crystal, temperature, { crystal, table: given })
    return { massRatio: solubility.massRatio, solubility }
  }
  const naming = { label: 'solubility, g per g of water', symbol: 's', role: 'solubility' } as const
  return { massRatio: positive(given, 'ratio', naming, 'solubility').to('1'), solubility: undefined }
}
