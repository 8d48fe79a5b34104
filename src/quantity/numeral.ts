import { Decimal } from '../decimal.js'
import { type Span, showFound } from '../errors.js'
import { type QuantityCode, QuantityError } from './quantity-error.js'

/**
 * What trailing zeros of a whole number without a decimal point mean ("250"): `"placeholders"` (they only show the size; the
 * default), `"significant"` (they were read), or `"reject"` (an error asks for a clearer spelling).
 */
export type WholeNumberZeros = 'placeholders' | 'significant' | 'reject'

/** A number as written. */
export interface Numeral {
  /** Its value, every digit kept. */
  readonly value: Decimal
  /** Exponent of ten of its last significant digit: -3 for `3.977`. */
  readonly place: number
  /** True where trailing zeros of a whole number left it open which digit is the last significant one. */
  readonly ambiguous: boolean
}

/** Longest numeral that is read, in characters. */
const longest = 100
/** Largest power of ten, up or down, of a number that is read. */
const largestExponent = 100

interface Scan {
  readonly digits: string
  readonly decimals: number | null
  readonly exponent: number | null
  readonly end: number
  readonly negative: boolean
}

interface Power {
  readonly exponent: number
  readonly end: number
}

const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹'
const spaces = ' \u00a0\u2009\u202f'

/** Reads a whole text as one numeral. */
export function readNumeral(text: string, zeros: WholeNumberZeros = 'placeholders', offset = 0): Numeral {
  const scan = scanNumeral(text, 0, offset)
  if (scan.end < text.length) throw notANumeral(text, scan.end, offset)
  return numeralOf(scan, text, zeros, offset)
}

/** Reads the numeral that a text starts with, and says where it ends. */
export function readLeadingNumeral(
  text: string,
  zeros: WholeNumberZeros = 'placeholders',
  offset = 0,
): { readonly numeral: Numeral; readonly end: number } {
  const scan = scanNumeral(text, 0, offset)
  return { numeral: numeralOf(scan, text.slice(0, scan.end), zeros, offset), end: scan.end }
}

function numeralOf(scan: Scan, text: string, zeros: WholeNumberZeros, offset: number): Numeral {
  const exponent = scan.exponent ?? 0
  const scale = exponent - (scan.decimals ?? 0)
  if (Math.abs(exponent) > largestExponent) throw exponentOutOfRange(text, offset)
  const digits = stripLeadingZeros(scan.digits)
  const value = new Decimal(`${scan.negative ? '-' : ''}${digits}e${scale}`)
  const idle = scan.decimals === null && scan.exponent === null ? trailingZeros(digits) : 0
  if (idle > 0 && zeros === 'reject') throw ambiguousZeros(text, offset)
  return { value, place: scale + (zeros === 'placeholders' ? idle : 0), ambiguous: idle > 0 }
}

function scanNumeral(text: string, from: number, offset: number): Scan {
  let at = from
  const sign = text[at] ?? ''
  if ('+-−'.includes(sign) && sign !== '') at += 1
  const whole = scanDigits(text, at)
  const hasPoint = text[whole.end] === '.'
  const part = hasPoint ? scanDigits(text, whole.end + 1) : { digits: '', end: whole.end }
  const digits = whole.digits + part.digits
  if (digits === '') throw notANumeral(text, at, offset)
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

/** Digits, in groups of three after a thin or plain space if so written: `100 021.47`. */
function scanDigits(text: string, from: number): { readonly digits: string; readonly end: number } {
  let at = from
  let digits = ''
  for (;;) {
    const run = digitRun(text, at)
    digits += text.slice(at, run)
    const group = run + 1
    const grouped =
      run > at && run < text.length && spaces.includes(text[run] as string) && digitRun(text, group) === group + 3
    if (!grouped) return { digits, end: run }
    at = group
  }
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
  if (text.slice(ten, ten + 2) !== '10') return none
  const caret = text[ten + 2] === '^' ? ten + 3 : ten + 2
  return scanPower(text, caret) ?? scanSuperscript(text, caret) ?? none
}

function scanPower(text: string, from: number): Power | undefined {
  const signed = '+-−'.includes(text[from] ?? ' ') ? from + 1 : from
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
  const size = Number(digits.slice(0, 10)) * (digits.length > 10 ? 1e10 : 1)
  return sign === '-' || sign === '−' || sign === '⁻' ? -size : size
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

function notANumeral(text: string, at: number, offset: number): QuantityError {
  return mistake(
    'quantity/not-a-numeral',
    text,
    { start: offset + at, end: offset + text.length },
    {
      message: `${showFound(text)} is not a decimal numeral (character ${offset + at + 1}).`,
      expected: 'digits, at most one decimal point, and perhaps a power of ten: 3.977, 2.50e2',
    },
  )
}

function decimalComma(text: string, at: number, offset: number): QuantityError {
  return mistake(
    'quantity/decimal-comma',
    text,
    { start: offset + at, end: offset + at + 1 },
    {
      message: `${showFound(text)} has a comma: it could be a decimal sign or a mark of thousands, so it is not read.`,
      expected: 'a point as the decimal sign, and no mark of thousands',
      hint: text.replace(',', '.'),
    },
  )
}

function tooLong(text: string, offset: number): QuantityError {
  return mistake(
    'quantity/too-long',
    text,
    { start: offset, end: offset + text.length },
    {
      message: `A numeral of more than ${longest} digits is not read.`,
      expected: `at most ${longest} digits`,
    },
  )
}

function exponentOutOfRange(text: string, offset: number): QuantityError {
  return mistake(
    'quantity/exponent-out-of-range',
    text,
    { start: offset, end: offset + text.length },
    {
      message: `${showFound(text)} has a power of ten beyond ${largestExponent}.`,
      expected: `a power of ten between -${largestExponent} and ${largestExponent}`,
    },
  )
}

function ambiguousZeros(text: string, offset: number): QuantityError {
  return mistake(
    'quantity/ambiguous-zeros',
    text,
    { start: offset, end: offset + text.length },
    {
      message: `${showFound(text)} does not say whether its trailing zeros are significant.`,
      expected: 'a decimal point behind it, or a power of ten: 250. or 2.50e2',
      hint: `${text}.`,
    },
  )
}

function mistake(
  code: QuantityCode,
  text: string,
  position: Span,
  words: { readonly message: string; readonly expected: string; readonly hint?: string },
): QuantityError {
  return new QuantityError({ code, position, found: text.slice(0, longest), ...words })
}
