/** A symbol as what is written slanted and what stands below it. */
export interface SplitSymbol {
  /** The letter, such as `A`; with a delta before it, `Δm`. */
  readonly base: string
  /** What stands below, such as the `r` of `Ar`; empty where nothing does. */
  readonly sub: string
  /** What follows on the line, such as the `H` of an enthalpy of reaction, `ΔrH`; mostly empty. */
  readonly rest: string
}

/**
 * Splits a symbol of up to three letters: all after the first stand below it. A delta goes with the letter after it; what kind of change
 * it is stands below the delta (IUPAC Green Book, 3rd ed., 1.3 and 2.11).
 */
export function splitSymbol(symbol: string): SplitSymbol {
  const letters = [...symbol]
  if (letters.length > 3) return { base: symbol, sub: '', rest: '' }
  const [first = '', second = '', third = ''] = letters
  if (first !== 'Δ') return { base: first, sub: second + third, rest: '' }
  if (third === '') return { base: first + second, sub: '', rest: '' }
  return { base: first, sub: second, rest: third }
}
