import { addFractions, type Fraction, fraction } from '../fraction.js'
import { isDigit, skipDigits, skipSpaces } from './characters.js'
import {
  blank,
  decimalComma,
  maxDigits,
  missingFormula,
  negative,
  outOfRange,
  twoNumbers,
  unreadable,
  zero,
} from './coefficient-errors.js'

/** A coefficient as read, and where the formula begins. */
export interface ReadCoefficient {
  readonly value: Fraction
  readonly written: boolean
  readonly next: number
}

const one: Fraction = /* @__PURE__ */ Object.freeze({ numerator: 1n, denominator: 1n })
const multiplicationSigns = '×·⋅∙•*'
/** What stands where a number is to be filled in. */
const blanks = '?_…'

/** Vulgar fractions of one character, as numerator and denominator. */
const vulgar: ReadonlyMap<string, readonly [bigint, bigint]> = /* @__PURE__ */ new Map([
  ['½', [1n, 2n]],
  ['⅓', [1n, 3n]],
  ['⅔', [2n, 3n]],
  ['¼', [1n, 4n]],
  ['¾', [3n, 4n]],
  ['⅕', [1n, 5n]],
  ['⅖', [2n, 5n]],
  ['⅗', [3n, 5n]],
  ['⅘', [4n, 5n]],
  ['⅙', [1n, 6n]],
  ['⅚', [5n, 6n]],
  ['⅛', [1n, 8n]],
  ['⅜', [3n, 8n]],
  ['⅝', [5n, 8n]],
  ['⅞', [7n, 8n]],
])

/** Whether a character is a fraction that can be read. */
export function isVulgarFraction(character: string): boolean {
  return vulgar.has(character)
}

/** Reads the number at the beginning of a term: `2`, `0.5`, `1/2`, `½`, `1½`, `(1/2)`; without one it is 1. */
export function readCoefficient(text: string, start: number, end: number): ReadCoefficient {
  const code = text.charCodeAt(start)
  if (isDigit(code) || (code === 0x2e && isDigit(text.charCodeAt(start + 1))))
    return finish(text, end, readNumber(text, start, end))
  const part = code > 0x7f ? vulgar.get(text.charAt(start)) : undefined
  if (part !== undefined) return finish(text, end, { value: fraction(...part), start, end: start + 1 })
  if (code === 0x28 && isDigit(text.charCodeAt(start + 1))) return readBracketed(text, start, end)
  if (code === 0x2d || code === 0x2212) throw negative(text, start, end)
  if (blanks.includes(text.charAt(start))) throw blank(text, start, end)
  return { value: one, written: false, next: start }
}

/** A number as read, and where it stands. */
export interface ReadNumber {
  readonly value: Fraction
  readonly start: number
  readonly end: number
}

/** Reads a number that begins with a digit or a point: whole, decimal, fraction, or whole number and fraction. */
export function readNumber(text: string, start: number, end: number): ReadNumber {
  const whole = skipDigits(text, start, end)
  if (whole - start > maxDigits) throw outOfRange(text, start, whole)
  const next = text.charAt(whole)
  if (next === '/' || next === '⁄') return readFraction(text, start, whole, 0n, start)
  if (next === '.' && isDigit(text.charCodeAt(whole + 1))) return readDecimal(text, start, whole, end)
  if (next === ',' && isDigit(text.charCodeAt(whole + 1))) throw decimalComma(text, start, whole, end)
  const part = vulgar.get(next)
  if (part !== undefined)
    return { value: addFractions(fraction(digits(text, start, whole)), fraction(...part)), start, end: whole + 1 }
  return readMixed(text, start, whole, end)
}

/** `2`, or the `1 1/2` of a whole number, a space and a proper fraction. */
function readMixed(text: string, start: number, whole: number, end: number): ReadNumber {
  const value = digits(text, start, whole)
  const second = skipSpaces(text, whole, end)
  const slash = skipDigits(text, second, end)
  if (slash === second || slash - second > maxDigits || text.charAt(slash) !== '/') {
    return { value: fraction(value), start, end: whole }
  }
  const mixed = readFraction(text, second, slash, value, start)
  if (mixed.value.numerator >= (value + 1n) * mixed.value.denominator) throw twoNumbers(text, start, mixed.end)
  return mixed
}

function readFraction(text: string, from: number, slash: number, whole: bigint, start: number): ReadNumber {
  const end = skipDigits(text, slash + 1, text.length)
  if (end === slash + 1) throw unreadable(text, start, end, 'a number after the slash')
  if (end - slash - 1 > maxDigits) throw outOfRange(text, start, end)
  const denominator = digits(text, slash + 1, end)
  if (denominator === 0n) throw unreadable(text, start, end, 'a number above 0 after the slash')
  return { value: fraction(whole * denominator + digits(text, from, slash), denominator), start, end }
}

function readDecimal(text: string, start: number, point: number, end: number): ReadNumber {
  const last = skipDigits(text, point + 1, end)
  if (last - start > maxDigits) throw outOfRange(text, start, last)
  const scale = 10n ** BigInt(last - point - 1)
  const value = fraction(BigInt(text.slice(start, point) + text.slice(point + 1, last)), scale)
  return { value, start, end: last }
}

function readBracketed(text: string, start: number, end: number): ReadCoefficient {
  const number = readNumber(text, start + 1, end)
  if (text.charAt(number.end) !== ')') return { value: one, written: false, next: start }
  return finish(text, end, { ...number, start, end: number.end + 1 })
}

function finish(text: string, end: number, number: ReadNumber): ReadCoefficient {
  if (number.value.numerator === 0n) throw zero(text, number.start, number.end)
  const next = skipSpaces(text, number.end, end)
  if (isDigit(text.charCodeAt(next))) throw twoNumbers(text, number.start, skipDigits(text, next, end))
  if (next >= end) throw missingFormula(text, number.start, number.end)
  return { value: number.value, written: true, next: skipSign(text, next, end) }
}

function skipSign(text: string, at: number, end: number): number {
  return multiplicationSigns.includes(text.charAt(at)) ? skipSpaces(text, at + 1, end) : at
}

function digits(text: string, start: number, end: number): bigint {
  return BigInt(text.slice(start, end))
}
