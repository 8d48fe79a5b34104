import { Decimal, mostDigits, scaledDecimal } from '../decimal.js'
import {
  ambiguousZeros,
  decimalComma,
  exponentOutOfRange,
  largestExponent,
  longest,
  notANumeral,
  tooLong,
  unknownZeros,
} from './numeral-error.js'

/**
 * What trailing zeros of a whole number without a decimal point mean ("250"): `"placeholders"` (they only show the size; the
 * default), `"significant"` (they were read), or `"reject"` (an error asks for a clearer spelling).
 */
export type WholeNumberZeros = 'placeholders' | 'significant' | 'reject'

const zerosChoices: readonly unknown[] = ['placeholders', 'significant', 'reject']

/** The choice of a reading of trailing zeros, checked; `"placeholders"` unless said. */
export function zerosChoice(given: unknown): WholeNumberZeros {
  if (given === undefined) return 'placeholders'
  if (zerosChoices.includes(given)) return given as WholeNumberZeros
  throw unknownZeros(given, zerosChoices)
}

/** A number as written. */
export interface Numeral {
  /** Its value, every digit kept. */
  readonly value: Decimal
  /** Exponent of ten of its last significant digit: -3 for `3.977`. */
  readonly place: number
  /** True where trailing zeros of a whole number left it open which digit is the last significant one. */
  readonly ambiguous: boolean
}

interface Scan {
  readonly digits: string
  readonly decimals: number | null
  readonly exponent: number | null
  readonly end: number
  readonly negative: boolean
}

interface Digits {
  readonly digits: string
  readonly end: number
}

interface Power {
  readonly exponent: number
  readonly end: number
}

const signs = '+-−'
const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹'
const spaces = ' \u00a0\u2009\u202f'

/** A numeral at the start of a text, before it is settled what its trailing zeros mean. */
export interface WrittenNumeral {
  /** Its value, every digit kept. */
  readonly value: Decimal
  /** Exponent of ten of the last digit written. */
  readonly last: number
  /** How many trailing zeros of a whole number leave open whether they were read. */
  readonly idle: number
  /** Where in the text it ends. */
  readonly end: number
}

/** Reads a whole text as one numeral. */
export function readNumeral(text: string, zeros: WholeNumberZeros = 'placeholders'): Numeral {
  const written = readLeadingNumeral(text)
  if (written.end < text.length) throw notANumeral(text, written.end, 0)
  return settleZeros(written, zeros, text)
}

/** Decides what trailing zeros of a whole number mean. */
export function settleZeros(written: WrittenNumeral, zeros: WholeNumberZeros, text: string, offset = 0): Numeral {
  const { value, last, idle, end } = written
  if (idle > 0 && zeros === 'reject') throw ambiguousZeros(text.slice(0, end), offset)
  return { value, place: last + (zeros === 'placeholders' ? idle : 0), ambiguous: idle > 0 }
}

/** The power of ten at a place of a text, such as `e-3` or `× 10^-3`; undefined where there is none. */
export function readPowerOfTen(text: string, from: number, offset: number): Power | undefined {
  const { exponent, end } = scanExponent(text, from)
  if (exponent === null) return undefined
  if (Math.abs(exponent) > largestExponent) throw exponentOutOfRange(text, offset)
  return { exponent, end }
}

/** Reads the numeral that a text starts with, and takes its value times a power of ten. */
export function readLeadingNumeral(text: string, offset = 0, power = 0): WrittenNumeral {
  const scan = scanNumeral(text, offset)
  const exponent = scan.exponent ?? 0
  const last = exponent - (scan.decimals ?? 0)
  if (Math.abs(exponent) > largestExponent) throw exponentOutOfRange(text, offset)
  const digits = stripLeadingZeros(scan.digits)
  const value = inRange(decimalOf(scan.negative, digits, last + power), text, offset)
  const idle = scan.decimals === null && scan.exponent === null ? trailingZeros(digits) : 0
  return { value, last, idle, end: scan.end }
}

function decimalOf(negative: boolean, digits: string, power: number): Decimal {
  if (digits.length > mostDigits) return new Decimal(`${negative ? '-' : ''}${digits}e${power}`)
  return scaledDecimal(negative ? -Number(digits) : Number(digits), power)
}

/** A number that was read, unless its power of ten is beyond what is read. */
export function inRange(value: Decimal, text: string, offset: number): Decimal {
  if (Math.abs(value.e) <= largestExponent) return value
  throw exponentOutOfRange(text, offset)
}

function scanNumeral(text: string, offset: number): Scan {
  const sign = text[0] ?? ' '
  const start = signs.includes(sign) ? 1 : 0
  const whole = scanWhole(text, start)
  const hasPoint = text[whole.end] === '.'
  const part = hasPoint ? scanDecimals(text, whole.end + 1) : { digits: '', end: whole.end }
  const digits = whole.digits + part.digits
  if (digits === '') throw notANumeral(text, start, offset)
  if (text[part.end] === ',') throw decimalComma(text, part.end, offset)
  if (digits.length > longest) throw tooLong(text, offset)
  const power = scanExponent(text, part.end)
  return {
    digits,
    decimals: hasPoint ? part.digits.length : null,
    exponent: power.exponent,
    end: power.end,
    negative: sign === '-' || sign === '−',
  }
}

/** Digits before the point; in groups of three after a space if so written: `100 021`. */
function scanWhole(text: string, from: number): Digits {
  const end = digitRun(text, from)
  const lead = { digits: text.slice(from, end), end }
  return end > from && end - from <= 3 ? scanGroups(text, lead, 3) : lead
}

/** Digits after the point. The last group may have two digits, not one: in `0.500 1` the 1 is a unit. */
function scanDecimals(text: string, from: number): Digits {
  const end = digitRun(text, from)
  const lead = { digits: text.slice(from, end), end }
  return end - from === 3 ? scanGroups(text, lead, 2) : lead
}

function scanGroups(text: string, lead: Digits, shortest: number): Digits {
  let { digits, end } = lead
  while (end < text.length && spaces.includes(text[end] as string)) {
    const next = digitRun(text, end + 1)
    const size = next - end - 1
    if (size < shortest || size > 3) break
    digits += text.slice(end + 1, next)
    end = next
    if (size < 3) break
  }
  return { digits, end }
}

function digitRun(text: string, from: number): number {
  let at = from
  while (isDigit(text.charCodeAt(at))) at += 1
  return at
}

function isDigit(code: number): boolean {
  return code >= 48 && code <= 57
}

/** `e-3`, `E3`, ` × 10^-3`, `x10-3`, `·10⁻³`. */
function scanExponent(text: string, from: number): Power | { readonly exponent: null; readonly end: number } {
  const none = { exponent: null, end: from }
  if (text[from] === 'e' || text[from] === 'E') return scanPower(text, from + 1) ?? none
  const times = skipSpaces(text, from)
  if (!'×x*·⋅'.includes(text[times] ?? ' ')) return none
  const ten = skipSpaces(text, times + 1)
  return text.startsWith('10', ten) ? (scanPowerOfTen(text, ten + 2) ?? none) : none
}

/** What follows the ten: a caret, a sign or raised digits; without one of them `x 1000` would be a power of ten. */
function scanPowerOfTen(text: string, from: number): Power | undefined {
  if (text[from] === '^') return scanPower(text, from + 1) ?? scanSuperscript(text, from + 1)
  return signs.includes(text[from] ?? ' ') ? scanPower(text, from) : scanSuperscript(text, from)
}

function scanPower(text: string, from: number): Power | undefined {
  const signed = signs.includes(text[from] ?? ' ') ? from + 1 : from
  const end = digitRun(text, signed)
  if (end === signed) return undefined
  return { exponent: powerOf(text.slice(signed, end), text[from]), end }
}

function scanSuperscript(text: string, from: number): Power | undefined {
  const signed = '⁺⁻'.includes(text[from] ?? ' ') ? from + 1 : from
  let end = signed
  let digits = ''
  while (end < text.length && superscripts.includes(text[end] as string)) {
    digits += superscripts.indexOf(text[end] as string)
    end += 1
  }
  if (digits === '') return undefined
  return { exponent: powerOf(digits, text[from]), end }
}

function powerOf(digits: string, sign: string | undefined): number {
  const written = stripLeadingZeros(digits)
  const size = Number(written.slice(0, 10)) * (written.length > 10 ? 1e10 : 1)
  return sign === '-' || sign === '−' || sign === '⁻' ? 0 - size : size // no negative zero
}

function skipSpaces(text: string, from: number): number {
  let at = from
  while (at < text.length && spaces.includes(text[at] as string)) at += 1
  return at
}

function stripLeadingZeros(digits: string): string {
  let at = 0
  while (at < digits.length - 1 && digits.charCodeAt(at) === 48) at += 1
  return digits.slice(at)
}

function trailingZeros(digits: string): number {
  if (digits === '0') return 0
  let count = 0
  while (digits.charCodeAt(digits.length - 1 - count) === 48) count += 1
  return count
}
