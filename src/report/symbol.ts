/** A symbol as the letter that is written slanted and what stands below it. */
export interface SplitSymbol {
  /** The letter, such as `A`; with a delta before it, `Δm`. */
  readonly base: string
  /** What stands below, such as the `r` of `Ar`; empty where nothing does. */
  readonly sub: string
}

/**
 * Splits a symbol of up to three letters: all after the first stand below it (IUPAC Green Book, 3rd ed., 1.3). A delta goes with the
 * letter after it.
 */
export function splitSymbol(symbol: string): SplitSymbol {
  const letters = [...symbol]
  const size = letters[0] === 'Δ' ? 2 : 1
  if (letters.length > 3) return { base: symbol, sub: '' }
  return { base: letters.slice(0, size).join(''), sub: letters.slice(size).join('') }
}
