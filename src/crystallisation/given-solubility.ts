import { type FormulaLike, formulaOf } from '../formula/index.js'
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

/** A memo of a pure function: what the built-in tables say of a solid at a temperature never changes. */
const looked: Map<string, SolubilityUsed> = /* @__PURE__ */ new Map()

/** How many are kept; beyond it, all are looked up anew. */
const mostKept = 100

/** The solubility of a solid: the number given, else that of the table. */
export function solubilityFor(
  crystal: FormulaLike,
  temperature: Given<'temperature'>,
  given: Given<'ratio'> | SolubilityTable | undefined,
): SolubilityUsed {
  if (isNumber(given)) {
    const naming = { label: 'solubility, g per g of water', symbol: 's', role: 'solubility' } as const
    return { massRatio: positive(given, 'ratio', naming, 'solubility').to('1'), solubility: undefined }
  }
  if (given !== undefined || typeof temperature !== 'string') return lookUp(crystal, temperature, given)
  return remembered(crystal, temperature)
}

/** For a temperature that is text, the same quantity each time: the same table is the same source of error. */
function remembered(crystal: FormulaLike, temperature: Given<'temperature'>): SolubilityUsed {
  const key = `${formulaOf(crystal).text} ${temperature}`
  const known = looked.get(key) ?? lookUp(crystal, temperature, undefined)
  if (looked.size === mostKept) looked.clear()
  looked.set(key, known)
  return known
}

function lookUp(
  crystal: FormulaLike,
  temperature: Given<'temperature'>,
  table: SolubilityTable | undefined,
): SolubilityUsed {
  const solubility = solubilityOf(crystal, temperature, { crystal, table })
  return { massRatio: solubility.massRatio, solubility }
}
