import { anhydrous, type FormulaLike } from '../formula/index.js'
import { speciesKey } from '../stoichiometry/index.js'
import { acidAndBaseHazards } from './acid-and-base-hazards.js'
import { metalHazards } from './metal-hazards.js'
import { saltHazards } from './salt-hazards.js'
import { solventAndGasHazards } from './solvent-and-gas-hazards.js'
import type { SubstanceHazard } from './substance-hazard.js'

/**
 * Every classification there is, for a list, a search or a look at the sources.
 *
 * @returns One row per substance and form: acids and bases, metals and their compounds, other salts, solvents and gases.
 * @throws Never.
 *
 * @example
 * ```ts
 * import { substanceHazards } from 'saltwright/cautions'
 *
 * substanceHazards().find(({ formula }) => formula === 'ZnSO4·7H2O')?.statements // => ['H302', 'H318', 'H410']
 * ```
 */
export function substanceHazards(): readonly SubstanceHazard[] {
  return [...acidAndBaseHazards, ...metalHazards, ...saltHazards, ...solventAndGasHazards]
}

/** The rows by what they classify, and by the same without its water: memos, filled when first asked. */
const bySpecies: Map<string, SubstanceHazard[]> = /* @__PURE__ */ new Map()
const bySalt: Map<string, SubstanceHazard[]> = /* @__PURE__ */ new Map()

/** The classifications of a substance, in whatever form. */
export function rowsOf(formula: FormulaLike): readonly SubstanceHazard[] {
  return filled(bySpecies).get(speciesKey(formula)) ?? []
}

/** Those of the same salt, with whatever water. */
export function rowsOfSalt(formula: FormulaLike): readonly SubstanceHazard[] {
  return filled(bySalt).get(speciesKey(anhydrous(formula))) ?? []
}

function filled(rows: Map<string, SubstanceHazard[]>): ReadonlyMap<string, readonly SubstanceHazard[]> {
  if (rows.size > 0) return rows
  for (const row of substanceHazards()) {
    add(bySpecies, speciesKey(row.formula), row)
    add(bySalt, speciesKey(anhydrous(row.formula)), row)
  }
  return rows
}

function add(rows: Map<string, SubstanceHazard[]>, key: string, row: SubstanceHazard): void {
  const known = rows.get(key)
  if (known === undefined) rows.set(key, [row])
  else known.push(row)
}
