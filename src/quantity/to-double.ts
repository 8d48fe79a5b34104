import type { Decimal } from '../decimal.js'

/** Digits of a decimal are kept in words of seven. */
const perWord = 7

/**
 * A decimal as a double, to the last digit that a double has: uncertainties need no more, and going through text as `toNumber` does
 * takes several times as long. The first two words are a whole number that a double holds exactly, and so is a power of ten up to 22.
 */
export function toDouble({ s, e, d }: Decimal): number {
  const [first, second = 0, third = 0, fourth = 0] = d as [number, number?, number?, number?]
  const mantissa = first * 1e7 + second + (third * 1e-7 + fourth * 1e-14)
  const power = perWord * (Math.floor(e / perWord) - 1)
  return s * (power < 0 ? mantissa / 10 ** -power : mantissa * 10 ** power)
}
