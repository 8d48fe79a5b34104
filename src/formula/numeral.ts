import { digitValue, kindAt, plainDigits, runEnd, vulgar, vulgarAt } from './characters.js'
import { decimalComma, dividesByZero, leadingZero, outOfRange, zeroCount } from './number-complaints.js'
import { greatestCount, type Scan } from './scan.js'

/** A number as written: `top / bottom`, and the place behind it. */
export interface Numeral {
  readonly top: number
  readonly bottom: number
  readonly next: number
}

/** A whole number, decimal, fraction, or whole number and fraction. */
export function readNumeral(scan: Scan, start: number, isPoint: (at: number) => boolean): Numeral {
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

/** The number of some digits; 0 of none. */
function numberOf(digits: string): number {
  return digits.charCodeAt(0) < 58 ? Number(digits) : Number(plainDigits(digits.slice(0, 400)))
}

function mixed(whole: string, [top, bottom]: readonly [number, number], next: number): Numeral {
  return { top: numberOf(whole) * bottom + top, bottom, next }
}

/** A decimal with its point at `point`; without digits before it the number is below one. */
export function readDecimal(scan: Scan, start: number, point: number, kind: number): Numeral {
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
  if (number.top === 0) throw zeroCount(scan, start, number.next)
  if (digitValue(written, 0) === 0 && digitValue(written, 1) >= 0) throw leadingZero(scan, start, number.next)
  if (number.top > greatestCount * number.bottom) throw outOfRange(scan, start, number.next)
  return number
}
