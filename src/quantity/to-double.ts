import { type Decimal, perWord } from '../decimal.js'

/** The powers of ten by words, as far as a double holds them exactly. */
const sizes = [1, 1e7, 1e14, 1e21] as const

/**
 * A decimal as a double, to the last digit that a double has: uncertainties need no more, and going through text as `toNumber` does
 * takes several times as long. The first two words are a whole number that a double holds exactly.
 */
export function toDouble({ s, e, d }: Decimal): number {
  const mantissa = (d[0] as number) * 1e7 + (d[1] ?? 0) + ((d[2] ?? 0) * 1e-7 + (d[3] ?? 0) * 1e-14)
  const words = Math.floor(e / perWord) - 1
  const size = sizes[Math.abs(words)] ?? 10 ** (perWord * Math.abs(words))
  return s * (words < 0 ? mantissa / size : mantissa * size)
}
