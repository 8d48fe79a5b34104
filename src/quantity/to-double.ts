import type { Decimal } from '../decimal.js'

/** Digits of a decimal are kept by sevens. */
const perWord = 7

/**
 * A decimal as a double, good to its last digit or two: uncertainties need no more, and going through text as `toNumber` does takes
 * ten times as long. The leading three words hold more digits than a double.
 */
export function toDouble({ s, e, d }: Decimal): number {
  const [first, second = 0, third = 0] = d as [number, number?, number?]
  const power = perWord * Math.floor(e / perWord)
  return s * (first + second * 1e-7 + third * 1e-14) * (power === 0 ? 1 : 10 ** power)
}
