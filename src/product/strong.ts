import { saltCations, strongAcids } from '../equation/index.js'
import type { FormulaLike } from '../formula/index.js'
import { speciesKey } from '../stoichiometry/index.js'

/**
 * Whether an acid ionises completely in water. Sulfuric acid counts, though its second hydron does not quite.
 *
 * @param formula - A formula or its text.
 * @returns True for the acids of {@link strongAcids}.
 *
 * @example
 * ```ts
 * import { isStrongAcid } from 'saltwright/product'
 *
 * isStrongAcid('H2SO4') // => true
 * isStrongAcid('H3PO4') // => false
 * ```
 */
export function isStrongAcid(formula: FormulaLike): boolean {
  return keysOf('acids', () => strongAcids.map((acid) => acid.formula)).has(speciesKey(formula))
}

/**
 * Whether a base ionises completely in water.
 *
 * @param formula - A formula or its text.
 * @returns True for the hydroxides of those {@link saltCations} whose hydroxide is a strong base: KOH, Ba(OH)2.
 *
 * @example
 * ```ts
 * import { isStrongBase } from 'saltwright/product'
 *
 * isStrongBase('KOH') // => true
 * isStrongBase('NH3') // => false
 * ```
 */
export function isStrongBase(formula: FormulaLike): boolean {
  return keysOf('bases', strongBases).has(speciesKey(formula))
}

function strongBases(): readonly string[] {
  return saltCations
    .filter(({ strongBase }) => strongBase)
    .flatMap(({ written, charges }) => charges.map((charge) => `${written}(OH)${charge}`))
}

/** A memo: which acids and bases are strong never changes. */
const known: Map<string, ReadonlySet<string>> = /* @__PURE__ */ new Map()

function keysOf(which: string, formulas: () => readonly string[]): ReadonlySet<string> {
  const keys = known.get(which) ?? new Set(formulas().map((formula) => speciesKey(formula)))
  known.set(which, keys)
  return keys
}
