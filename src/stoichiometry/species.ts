import { type Formula, type FormulaLike, formulaOf } from '../formula/index.js'
import { formatFraction } from '../fraction.js'

/** A memo of a pure function: the key of a formula never changes. */
const keys: WeakMap<Formula, string> = /* @__PURE__ */ new WeakMap()

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
  const read = formulaOf(formula)
  const known = keys.get(read) ?? writeKey(read)
  keys.set(read, known)
  return known
}

function writeKey({ counts, charge, hydration }: Formula): string {
  const atoms = [...counts].map(([symbol, count]) => `${symbol}${formatFraction(count)}`).sort()
  return `${atoms.join(' ')} ^${charge} ·${hydration ?? 'x'}`
}
