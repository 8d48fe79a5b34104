import { type Formula, type FormulaLike, formulaOf } from '../formula/index.js'
import { divideFractions, type Fraction, formatFraction } from '../fraction.js'

/**
 * What a substance is made of, whichever way its formula is written: `KAl(SO4)2·12H2O` and `K2SO4·Al2(SO4)3·24H2O` are one
 * substance, so the atoms are counted relative to the first element of the alphabet.
 */
export function substanceKey(formula: FormulaLike): string {
  const read = formulaOf(formula)
  const known = keys.get(read) ?? writeKey(read)
  keys.set(read, known)
  return known
}

/** A memo of a pure function: the key of a formula never changes. */
const keys: WeakMap<Formula, string> = /* @__PURE__ */ new WeakMap()

function writeKey(formula: Formula): string {
  const counts = [...formula.counts].sort(([a], [b]) => (a < b ? -1 : 1))
  const [first] = counts
  if (first === undefined) return ''
  return counts.map(([symbol, count]) => `${symbol}${relative(count, first[1])}`).join(' ')
}

function relative(count: Fraction, to: Fraction): string {
  return formatFraction(divideFractions(count, to))
}
