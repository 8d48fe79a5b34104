import { digit, digitValue, kindAt, plainDigits, runEnd, signAt, subscript, vulgar, vulgarAt } from './characters.js'
import { type Complaint, complain } from './complaint.js'
import { isDecimalPoint } from './decimal-point.js'
import type { FormulaError } from './formula-error.js'
import { settleSign } from './lost-caret.js'
import { greatestCount, mark, type Scan } from './scan.js'

/** A number as written: `top / bottom`, and the place behind it. */
interface Numeral {
  readonly top: number
  readonly bottom: number
  readonly next: number
}

/** Reads the count behind a symbol or bracket into `scan.top` and `scan.bottom`: 1 where there is none. */
export function readCount(scan: Scan): void {
  const code = scan.text.charCodeAt(scan.at)
  scan.top = 1
  scan.bottom = 1
  if (code >= 49 && code <= 57) readDigits(scan, code)
  else if (code >= 48) readUnusualCount(scan)
}

/** The usual count: digits, and behind them a capital, a bracket, the middle dot or the end. */
function readDigits(scan: Scan, first: number): void {
  const { text, at: start } = scan
  let [code, value, at] = [first, 0, start]
  do {
    value = value * 10 + code - 48
    at += 1
    code = text.charCodeAt(at)
  } while (code >= 48 && code <= 57)
  if (value > greatestCount || !endsCount(code)) {
    readLongCount(scan, digit)
    return
  }
  scan.top = value
  scan.at = at
  if (scan.tokens !== undefined) mark(scan, 'count', start, text.slice(start, at))
}

/** Whether a count certainly ends before this character: capitals, brackets, the middle dot, the end. */
function endsCount(code: number): boolean {
  return (code >= 65 && code <= 93) || code === 40 || code === 41 || code === 0xb7 || Number.isNaN(code)
}

/** A count of lowered digits or a one-character fraction, one that begins with a zero, or none. */
function readUnusualCount(scan: Scan): void {
  const kind = kindAt(scan.text, scan.at)
  if (kind === digit || kind === subscript || kind === vulgar) readLongCount(scan, kind)
}

/** A count with a point, a slash, a fraction or a sign behind its digits. */
function readLongCount(scan: Scan, kind: number): void {
  const { text, at: start } = scan
  const number = readNumeral(scan, start, (point) => isDecimalPoint(scan, start, point))
  const behind = kind === digit && isWhole(text, start, number.next) && signAt(text, number.next) !== 0
  const next = behind ? settleSign(scan, start, number.next) : number.next
  scan.at = next
  if (next === start) return
  scan.top = next === number.next ? number.top : Number(text.slice(start, next))
  scan.bottom = number.bottom
  mark(scan, 'count', start, spellNumber(scan, start, next))
}

function isWhole(text: string, start: number, next: number): boolean {
  return runEnd(text, start, digit) === next
}

/** Reads the number in front of a part, as in `5H2O`. */
export function readTimes(scan: Scan): void {
  const { text, at: start } = scan
  const [first, behind] = [text.charCodeAt(start), text.charCodeAt(start + 1)]
  if (behind >= 65 && behind <= 90 && first > 48 && first <= 57) readOneDigit(scan, first - 48)
  else readLongTimes(scan)
}

/** The usual number of waters: one digit, and a capital behind it. */
function readOneDigit(scan: Scan, value: number): void {
  scan.at += 1
  scan.top = value
  mark(scan, 'times', scan.at - 1, String(value))
}

function readLongTimes(scan: Scan): void {
  const { text, at: start } = scan
  const number = readNumeral(scan, start, (point) => kindAt(text, point + 1) === digit)
  scan.top = number.top
  scan.bottom = number.bottom
  scan.at = number.next
  mark(scan, 'times', start, spellNumber(scan, start, number.next))
}

/** The one spelling of a number: as written, with plain digits; `3/2` for `1½`. */
function spellNumber({ text, top, bottom, tokens }: Scan, start: number, next: number): string {
  if (tokens === undefined) return ''
  const hasFraction = vulgarAt(text, next - 1) !== undefined
  return hasFraction ? `${top}/${bottom}` : plainDigits(text.slice(start, next))
}

/** A whole number, decimal, fraction, or whole number and fraction. */
function readNumeral(scan: Scan, start: number, isPoint: (at: number) => boolean): Numeral {
  const { text } = scan
  const kind = kindAt(text, start)
  const whole = kind === vulgar ? start : runEnd(text, start, kind)
  const fraction = vulgarAt(text, whole)
  if (fraction !== undefined) return checkNumeral(scan, start, mixed(text.slice(start, whole), fraction, whole + 1))
  const behind = text.charAt(whole)
  if (behind === ',' && digitValue(text, whole + 1) >= 0) throw decimalComma(scan, start, whole)
  if (behind === '.' && isPoint(whole)) return readDecimal(scan, start, whole, kind)
  if (isSlash(behind) && kindAt(text, whole + 1) === kind) return readFraction(scan, start, whole, kind)
  return checkNumeral(scan, start, { top: numberOf(text.slice(start, whole)), bottom: 1, next: whole })
}

function isSlash(character: string): boolean {
  return character === '/' || character === '⁄' || character === '∕'
}

function numberOf(digits: string): number {
  return digits.charCodeAt(0) < 58 ? Number(digits) : Number(plainDigits(digits.slice(0, 400)))
}

function mixed(whole: string, [top, bottom]: readonly [number, number], next: number): Numeral {
  return { top: (whole === '' ? 0 : numberOf(whole)) * bottom + top, bottom, next }
}

function readDecimal(scan: Scan, start: number, point: number, kind: number): Numeral {
  const next = runEnd(scan.text, point + 1, kind)
  const decimals = next - point - 1
  if (decimals > 6) throw outOfRange(scan, start, next)
  const digits = scan.text.slice(start, point) + scan.text.slice(point + 1, next)
  return checkNumeral(scan, start, lowest(numberOf(digits), 10 ** decimals, next))
}

function readFraction(scan: Scan, start: number, slash: number, kind: number): Numeral {
  const next = runEnd(scan.text, slash + 1, kind)
  const [top, bottom] = [numberOf(scan.text.slice(start, slash)), numberOf(scan.text.slice(slash + 1, next))]
  if (bottom === 0) throw dividesByZero(scan, start, next)
  if (bottom > greatestCount) throw outOfRange(scan, start, next)
  return checkNumeral(scan, start, lowest(top, bottom, next))
}

/** A fraction in lowest terms. */
function lowest(top: number, bottom: number, next: number): Numeral {
  const divisor = commonDivisor(top, bottom)
  return { top: top / divisor, bottom: bottom / divisor, next }
}

/** The greatest common divisor of whole numbers of zero or more, not both zero; 1 where one of them is no number. */
export function commonDivisor(a: number, b: number): number {
  let [x, y] = [a, b]
  while (y > 0) [x, y] = [y, x % y]
  return x
}

function checkNumeral(scan: Scan, start: number, number: Numeral): Numeral {
  const written = scan.text.slice(start, number.next)
  if (number.top === 0) throw zero(scan, start, number.next)
  if (digitValue(written, 0) === 0 && digitValue(written, 1) >= 0) throw leadingZero(scan, start, number.next)
  if (number.top > greatestCount * number.bottom) throw outOfRange(scan, start, number.next)
  return number
}

function zero(scan: Scan, start: number, end: number): FormulaError {
  const says = 'is a count of zero'
  return complain(scan, { code: 'formula/zero-count', start, end, says, expected: 'a count above zero' })
}

function leadingZero(scan: Scan, start: number, end: number): FormulaError {
  const says = 'begins with the digit zero'
  return complain(scan, { code: 'formula/leading-zero', start, end, says, expected: 'a count without a leading zero' })
}

function dividesByZero(scan: Scan, start: number, end: number): FormulaError {
  const says = 'divides by zero'
  return complain(scan, { code: 'formula/bad-number', start, end, says, expected: 'a fraction such as 1/2' })
}

/** A number beyond what is read. */
export function outOfRange(scan: Scan, start: number, end: number): FormulaError {
  const expected = 'a count up to 1000000 with up to six decimals; multiplied out up to 1000000000'
  return complain(scan, { code: 'formula/count-out-of-range', start, end, says: 'is out of bounds', expected })
}

function decimalComma(scan: Scan, start: number, comma: number): FormulaError {
  const end = runEnd(scan.text, comma + 1, kindAt(scan.text, comma + 1))
  const [before, after] = [scan.text.slice(0, comma), scan.text.slice(comma + 1)]
  const complaint: Complaint = {
    code: 'formula/decimal-comma',
    start,
    end,
    says: 'has a decimal comma',
    expected: 'a decimal point',
    hint: `${before}.${after}?`,
  }
  return complain(scan, complaint)
}
