import { type Fraction, formatFraction, fractionToDecimal } from '../fraction.js'
import { spellCharge } from './charge.js'
import { type FormulaLike, formulaOf } from './formula-of.js'
import { plainText } from './plain-text.js'
import type { Token } from './scan.js'

/**
 * The Hill formula: all atoms of the formula unit, water included, by element; carbon first and hydrogen second where there is
 * carbon, everything else by the alphabet. D and T count as symbols of their own.
 *
 * @param formula - A formula or its text.
 * @returns The formula as plain text with its charge. Water of unknown number stays behind a dot.
 * @throws {@link FormulaError} Whatever {@link parseFormula} throws for a text, such as `formula/unknown-symbol`.
 * @source Hill E. A., On a system of indexing chemical literature, J. Am. Chem. Soc. 1900, 22(8), 478-494; from memory.
 *
 * @example
 * ```ts
 * import { hillFormula } from 'saltwright/formula'
 *
 * hillFormula('(NH4)2Fe(SO4)2·6H2O') // => 'FeH20N2O14S2'
 * hillFormula('CH3COO^-') // => 'C2H3O2^-'
 * ```
 */
export function hillFormula(formula: FormulaLike): string {
  const { counts, charge, hydration } = formulaOf(formula)
  if (counts.size === 0) return charge === -1 ? 'e^-' : `${-charge}e^-`
  const atoms = [...counts].sort(hillOrder(counts.has('C')))
  return `${writeAtoms(atoms)}${charge === 0 ? '' : `^${spellCharge(charge)}`}${hydration === null ? '·xH2O' : ''}`
}

type Entry = readonly [symbol: string, count: Fraction]

function hillOrder(hasCarbon: boolean): (a: Entry, b: Entry) => number {
  const rank = (symbol: string): string => (hasCarbon && (symbol === 'C' || symbol === 'H') ? ` ${symbol}` : symbol)
  return ([a], [b]) => (rank(a) < rank(b) ? -1 : 1)
}

/** The atoms; decimals as fractions where they would be read as water behind a full stop. */
function writeAtoms(atoms: readonly Entry[]): string {
  const tokens = atoms.flatMap(([symbol, count]): Token[] => [
    { kind: 'symbol', start: 0, end: 0, text: symbol },
    ...(isOne(count) ? [] : [{ kind: 'count', start: 0, end: 0, text: writeCount(count) } as const]),
  ])
  return plainText(tokens)
}

function isOne({ numerator, denominator }: Fraction): boolean {
  return numerator === denominator
}

/** A decimal where it terminates, else a fraction. */
function writeCount(count: Fraction): string {
  const terminates = 10n ** 15n % count.denominator === 0n
  return terminates ? fractionToDecimal(count).toFixed() : formatFraction(count)
}
