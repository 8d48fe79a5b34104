import { Decimal as Shared } from 'decimal.js'

/** A decimal number of the library: 34 significant digits, as in the IEEE 754 format decimal128. */
export type Decimal = Shared

/**
 * The library's own constructor. The one that decimal.js shares can be reconfigured by anybody; this one is ours alone.
 * Exponents are kept within what a double can hold, so that derivatives never overflow.
 */
export const Decimal: typeof Shared = /* @__PURE__ */ Shared.clone({
  defaults: true,
  precision: 34,
  rounding: 6, // half to even; ties in what is shown are decided where it is shown
  toExpNeg: -7,
  toExpPos: 21,
})

/** How decimal.js keeps a decimal: its sign, the power of ten of its first digit, and its digits in words of seven. */
interface Kept {
  s: number
  e: number
  d: number[]
}

/** Digits in a word. */
export const perWord = 7
const powers = [1, 10, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7] as const
const word: number = powers[perWord]

/** The most digits of a whole number that {@link scaledDecimal} takes. */
export const mostDigits = 15
/** The power of ten of {@link tenMillionths}. */
export const tenMillionth: number = -perWord

/**
 * A whole number of at most fifteen digits times a power of ten, put together from words as decimal.js keeps them: by way of text it
 * takes more than twice as long.
 */
export function scaledDecimal(whole: number, power: number): Decimal {
  if (whole === 0) return new Decimal(whole)
  const shift = ((power % perWord) + perWord) % perWord
  const words = wordsOf(Math.abs(whole), shift)
  const made = new Decimal(0)
  const kept: Kept = made
  kept.s = whole < 0 ? -1 : 1
  kept.e = power - shift + perWord * (words.length - 1) + digitsIn(words.at(-1) as number) - 1
  kept.d = withoutZeros(words).reverse()
  return made
}

/** How many ten-millionths a decimal is; undefined where it has more digits after the point, or more than seven before it. */
export function tenMillionths({ s, e, d }: Decimal): number | undefined {
  return e >= 0 && e < perWord && d.length <= 2 ? s * ((d[0] as number) * word + (d[1] ?? 0)) : undefined
}

/** A whole decimal of at most seven digits as a number; undefined for any other. */
export function smallWhole({ s, e, d }: Decimal): number | undefined {
  return e >= 0 && e < perWord && d.length === 1 ? s * (d[0] as number) : undefined
}

/** The words of a whole number times ten to the power of `shift`, the last first. */
function wordsOf(whole: number, shift: number): number[] {
  const unit = powers[perWord - shift] as number
  let rest = Math.floor(whole / unit)
  const words = [(whole - rest * unit) * (powers[shift] as number)]
  while (rest > 0) {
    const next = Math.floor(rest / word)
    words.push(rest - next * word)
    rest = next
  }
  return words
}

/** The words without those at the end of the number that are zero. */
function withoutZeros(words: number[]): number[] {
  let zeros = 0
  while (words[zeros] === 0) zeros += 1
  return words.slice(zeros)
}

function digitsIn(first: number): number {
  let digits = 1
  while (first >= (powers[digits] as number)) digits += 1
  return digits
}
