import { digit, kindAt, plainDigits, runEnd, signAt, subscript, vulgar, vulgarAt } from './characters.js'
import { isDecimalPoint } from './decimal-point.js'
import { settleSign } from './lost-caret.js'
import { readDecimal, readNumeral } from './numeral.js'
import { greatestCount, mark, type Scan } from './scan.js'

/** Reads the count behind a symbol or bracket into `scan.top` and `scan.bottom`: 1 where there is none. */
export function readCount(scan: Scan): void {
  const code = scan.text.charCodeAt(scan.at)
  scan.top = 1
  scan.bottom = 1
  if (code >= 49 && code <= 57) readDigits(scan, code)
  else if (code >= 48) readUnusualCount(scan)
  else if (code === 46) readBareDecimal(scan)
}

/** The usual count: digits, and behind them a capital, a bracket, the middle dot or the end. */
function readDigits(scan: Scan, first: number): void {
  const { text, at: start } = scan
  let value = first - 48
  let at = start + 1
  let code = text.charCodeAt(at)
  while (code >= 48 && code <= 57) {
    value = value * 10 + code - 48
    at += 1
    code = text.charCodeAt(at)
  }
  if (value <= greatestCount && endsCount(code)) pass(scan, 'count', value, at)
  else readLongCount(scan)
}

/** Takes a whole number and goes on behind it. */
function pass(scan: Scan, kind: 'count' | 'times', value: number, next: number): void {
  const start = scan.at
  scan.top = value
  scan.at = next
  if (scan.tokens !== undefined) mark(scan, kind, start, String(value))
}

/** Whether a count certainly ends before this character: capitals, brackets, the middle dot, the end. */
function endsCount(code: number): boolean {
  return (code >= 65 && code <= 93) || code === 40 || code === 41 || code === 0xb7 || Number.isNaN(code)
}

/** A count of lowered digits or a one-character fraction, one that begins with a zero, or none. */
function readUnusualCount(scan: Scan): void {
  const kind = kindAt(scan.text, scan.at)
  if (kind === digit || kind === subscript || kind === vulgar) readLongCount(scan)
}

/** `.95` for 0.95, as in `Fe.95O`, where the point stands between no two parts. */
function readBareDecimal(scan: Scan): void {
  const { at: start } = scan
  if (!isDecimalPoint(scan, start, start)) return
  const { top, bottom, next } = readDecimal(scan, start, start, digit)
  scan.top = top
  scan.bottom = bottom
  scan.at = next
  mark(scan, 'count', start, `0${scan.text.slice(start, next)}`)
}

/** A count with a point, a slash, a fraction or a sign behind its digits. */
function readLongCount(scan: Scan): void {
  const { text, at: start } = scan
  const number = readNumeral(scan, start, (point) => isDecimalPoint(scan, start, point))
  const behind = isWhole(text, start, number.next) && signAt(text, number.next) !== 0
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
  const { text, at } = scan
  const first = text.charCodeAt(at) - 48
  const second = text.charCodeAt(at + 1) - 48
  if (first < 1 || first > 9) readLongTimes(scan)
  else if (isCapital(second)) pass(scan, 'times', first, at + 1)
  else if (second >= 0 && second <= 9 && isCapital(text.charCodeAt(at + 2) - 48))
    pass(scan, 'times', 10 * first + second, at + 2)
  else readLongTimes(scan)
}

/** Whether a character code, less that of the digit zero, is that of a capital. */
function isCapital(code: number): boolean {
  return code >= 17 && code <= 42
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
