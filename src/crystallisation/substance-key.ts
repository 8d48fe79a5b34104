import { type FormulaLike, formulaOf } from '../formula/index.js'
import { divideFractions, type Fraction, formatFraction } from '../fraction.js'

/**
 * What a substance is made of, whichever way its formula is written: `KAl(SO4)2·12H2O` and `K2SO4·Al2(SO4)3·24H2O` are one
 * substance, so the atoms are counted relative to the first element of the alphabet.
 */
export function substanceKey(formula: FormulaLike): string {
  const counts = [...formulaOf(formula).counts].sort(([a], [b]) => (a < b ? -1 : 1))
  const [first] = counts
  if (first === undefined) return ''
  return counts.map(([symbol, count]) => `${symbol}${relative(count, first[1])}`).join(' ')
}

function relative(count: Fraction, to: Fraction): string {
  return formatFraction(divideFractions(count, to))
}
