import {
  caret,
  closing,
  closingOf,
  digit,
  digitValue,
  dot,
  end,
  kindAt,
  opening,
  signAt,
  skipSpaces,
  superscript,
} from './characters.js'
import { badCharge, notCharge, secondCharge, signInside } from './charge-complaints.js'
import { loneCharge } from './reader-complaints.js'
import { addAtoms, chargePlace, mark, type Scan } from './scan.js'

/** A charge as written, and the place behind it. */
interface Charge {
  readonly value: number
  readonly next: number
}

const greatestCharge = 99

/** Whether the text can end a part here: spaces, then the end, a dot or a closing bracket. */
export function endsPart(text: string, at: number): boolean {
  const kind = kindAt(text, skipSpaces(text, at))
  return kind === end || kind === dot || kind === closing
}

/** Whether a charge stands here without a caret: `2-`, `--`, `+2`, `²⁻`. */
export function isCharge(text: string, at: number): boolean {
  return chargeAt(text, at) !== undefined
}

/** A charge without a caret: digits and a sign, a sign and digits, or signs alone, on the line or raised. */
function chargeAt(text: string, at: number): Charge | undefined {
  const before = digitsEnd(text, at)
  const signs = signsEnd(text, before)
  if (signs === before) return undefined
  const after = before === at && signs === before + 1 ? digitsEnd(text, signs) : signs
  const isTwice = before > at && signs > before + 1
  const size = isTwice ? 0 : magnitude(text, before > at ? [at, before] : [signs, after], signs - before)
  return { value: size === 0 ? Number.NaN : signAt(text, before) * size, next: after }
}

/** The number between two places; where there is none, the number of signs. */
function magnitude(text: string, [start, stop]: readonly [number, number], signs: number): number {
  return stop > start ? numberIn(text, start, stop) : signs
}

/** The end of a run of digits, on the line or raised. */
function digitsEnd(text: string, at: number): number {
  let next = at
  while (isChargeDigit(text, next)) next += 1
  return next
}

function isChargeDigit(text: string, at: number): boolean {
  const kind = kindAt(text, at)
  return (kind === digit || kind === superscript) && digitValue(text, at) >= 0
}

/** The end of a run of equal signs. */
function signsEnd(text: string, at: number): number {
  const first = signAt(text, at)
  let next = at
  while (first !== 0 && signAt(text, next) === first) next += 1
  return next
}

function numberIn(text: string, start: number, stop: number): number {
  let value = 0
  for (let at = start; at < stop; at += 1) value = value * 10 + digitValue(text, at)
  return value
}

/** Reads a charge: from its caret, or from its first digit or sign where it has none. */
export function readCharge(scan: Scan): void {
  const { text, at: start } = scan
  const behindCaret = kindAt(text, start) === caret
  const charge = behindCaret ? charged(text, start + 1) : (chargeAt(text, start) ?? neutral(text, start))
  if (charge === undefined) throw notCharge(scan, start)
  if (!behindCaret && kindAt(text, start) !== superscript) checkEnd(scan, start, charge.next)
  checkCharge(scan, start, charge)
  addCharge(scan, start, charge)
}

/** A charge in brackets of its own, as in `SO4(2-)`; whether there was one. */
export function readBracketedCharge(scan: Scan): boolean {
  const { text, at: start } = scan
  const charge = closed(text, start, chargeAt(text, start + 1))
  if (charge === undefined) return false
  if (start === scan.segment) throw loneCharge(scan)
  checkCharge(scan, start, charge)
  addCharge(scan, start, charge)
  return true
}

/** A charge behind a caret, perhaps in braces. */
function charged(text: string, from: number): Charge | undefined {
  const inBrackets = kindAt(text, from) === opening
  const at = inBrackets ? from + 1 : from
  const charge = chargeAt(text, at) ?? neutral(text, at)
  return inBrackets ? closed(text, from, charge) : charge
}

/** The charge with the bracket that closes the one at a place. */
function closed(text: string, open: number, charge: Charge | undefined): Charge | undefined {
  if (charge === undefined || text.charAt(charge.next) !== closingOf(text.charAt(open))) return undefined
  return { ...charge, next: charge.next + 1 }
}

/** `^0`, `⁰`: no charge, said on purpose. */
function neutral(text: string, at: number): Charge | undefined {
  return digitValue(text, at) === 0 && digitsEnd(text, at) === at + 1 ? { value: 0, next: at + 1 } : undefined
}

function addCharge(scan: Scan, start: number, { value, next }: Charge): void {
  if (scan.chargeAt >= 0 && !scan.bare) throw secondCharge(scan, start, next)
  scan.at = next
  scan.top = value
  scan.bottom = 1
  addAtoms(scan, chargePlace)
  scan.charged = true
  scan.chargeAt = start
  scan.bare = false
  mark(scan, 'charge', start, spellCharge(value))
}

/** `2-`, `+`, `0`. */
export function spellCharge(charge: number): string {
  if (charge === 0) return '0'
  const size = Math.abs(charge)
  return `${size === 1 ? '' : size}${charge < 0 ? '-' : '+'}`
}

/** A sign on the line is a charge only at the end of a part. */
function checkEnd(scan: Scan, start: number, next: number): void {
  const isPoint = scan.text.charAt(next) === '.' && kindAt(scan.text, next + 1) === digit
  if (isPoint || !endsPart(scan.text, next)) throw signInside(scan, start, next)
}

function checkCharge(scan: Scan, start: number, { value, next }: Charge): void {
  if (Math.abs(value) <= greatestCharge && digitValue(scan.text, next) < 0) return
  throw badCharge(scan, start, Math.max(next, digitsEnd(scan.text, next)))
}
