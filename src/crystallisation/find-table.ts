import { anhydrous, type Formula, type FormulaLike, formulaOf } from '../formula/index.js'
import { CrystallisationError } from './crystallisation-error.js'
import { doubleSaltSolubilities } from './double-salt-solubilities.js'
import { saltSolubilities } from './salt-solubilities.js'
import type { SolubilityTable } from './solubility-table.js'
import { substanceKey } from './substance-key.js'
import { sulfateSolubilities } from './sulfate-solubilities.js'

/** The built-in tables by what their salt, or a solid of theirs, is made of: a memo, filled when first asked. */
const tables: Map<string, SolubilityTable> = /* @__PURE__ */ new Map()

/**
 * Every built-in solubility table, for a list, a search or a look at the sources.
 *
 * @returns One table per salt: sulfates, other salts, then double salts, complexes and acids.
 * @throws Never.
 *
 * @example
 * ```ts
 * import { solubilityTables } from 'saltwright/crystallisation'
 *
 * solubilityTables().find(({ salt }) => salt === 'ZnSO4')?.phases[0]?.crystal // => 'ZnSO4·7H2O'
 * ```
 */
export function solubilityTables(): readonly SolubilityTable[] {
  return [...sulfateSolubilities, ...saltSolubilities, ...doubleSaltSolubilities]
}

/**
 * The solids that the built-in table of a salt names: its hydrates, and the anhydrous salt where that is stable at some temperature.
 *
 * @param salt - The salt or any hydrate of it.
 * @returns Their formulas, by rising temperature; empty for a salt without a table.
 * @throws {@link FormulaError} `formula/unknown-symbol` and its other codes, for a formula that cannot be read.
 *
 * @example
 * ```ts
 * import { solidsOf } from 'saltwright/crystallisation'
 *
 * solidsOf('ZnSO4') // => ['ZnSO4·7H2O', 'ZnSO4·6H2O', 'ZnSO4·H2O']
 * solidsOf('LaCl3') // => []
 * ```
 */
export function solidsOf(salt: FormulaLike): readonly string[] {
  const table = lookUp(formulaOf(salt))
  return table === undefined ? [] : table.phases.map(({ crystal }) => crystal)
}

/** The built-in table of a salt, asked for by the salt or by any hydrate of it. */
export function findTable(salt: FormulaLike): SolubilityTable {
  const formula = formulaOf(salt)
  const table = lookUp(formula)
  if (table !== undefined) return table
  throw new CrystallisationError({
    code: 'crystallisation/unknown-salt',
    message: `No solubility of ${formula.text} is known here.`,
    found: formula.text,
    expected: 'a salt with a solubility table',
    hint: 'Pass a solubility, or a table of your own with its source.',
  })
}

/** By the formula itself where that is tabulated, which is quick; else by its anhydrous salt. */
function lookUp(formula: Formula): SolubilityTable | undefined {
  if (tables.size === 0) for (const table of solubilityTables()) remember(table)
  return tables.get(substanceKey(formula)) ?? tables.get(substanceKey(anhydrous(formula)))
}

function remember(table: SolubilityTable): void {
  for (const formula of [table.salt, ...table.phases.map(({ crystal }) => crystal)])
    tables.set(substanceKey(formula), table)
}
