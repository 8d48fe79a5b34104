import { type Formula, type FormulaLike, formulaOf } from '../formula/index.js'
import { formatFraction } from '../fraction.js'

/** Memos of a pure function: the key of a formula, or of its text, never changes. */
const keys: WeakMap<Formula, string> = /* @__PURE__ */ new WeakMap()
const keysOfTexts: Map<string, string> = /* @__PURE__ */ new Map()

/** So many texts are remembered; a preparation has a dozen. */
const mostTexts = 500

/**
 * What makes two formulas one species here: composition, charge and water of crystallisation, however they are written.
 * `CuSO4.5H2O` and `CuSO4·5H2O` are one species, `CuSO4` is another. Isomers of the same composition are one species, and so are
 * the states of a substance, as an amount of the one is an amount of the other.
 *
 * @param formula - A formula or its text.
 * @returns A text that is the same for the same species; for comparing, not for reading.
 * @throws {@link FormulaError} the codes of `parseFormula`, such as `formula/unknown-symbol`.
 *
 * @example
 * ```ts
 * import { speciesKey } from 'saltwright/stoichiometry'
 *
 * speciesKey('K[Al(OH)4]') === speciesKey('KAl(OH)4') // => true
 * speciesKey('FeSO4·7H2O') === speciesKey('FeSO4') // => false
 * speciesKey('Fe^2+') === speciesKey('Fe^3+') // => false
 * ```
 */
export function speciesKey(formula: FormulaLike): string {
  return typeof formula === 'string' ? keyOfText(formula) : keyOf(formulaOf(formula))
}

function keyOf(formula: Formula): string {
  const key = keys.get(formula) ?? writeKey(formula)
  keys.set(formula, key)
  return key
}

function keyOfText(text: string): string {
  const known = keysOfTexts.get(text)
  if (known !== undefined) return known
  const key = keyOf(formulaOf(text))
  if (keysOfTexts.size === mostTexts) keysOfTexts.clear()
  keysOfTexts.set(text, key)
  return key
}

function writeKey({ counts, charge, hydration }: Formula): string {
  const atoms = [...counts].map(([symbol, count]) => `${symbol}${formatFraction(count)}`).sort()
  return `${atoms.join(' ')} ^${charge} ·${hydration ?? 'x'}`
}
