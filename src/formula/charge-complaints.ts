import { capital, caret, digit, digitValue, kindAt, opening, runEnd, sign, signAt, small } from './characters.js'
import { complain } from './complaint.js'
import type { FormulaError } from './formula-error.js'
import type { Scan } from './scan.js'

/** A charge out of bounds, or malformed. */
export function badCharge(scan: Scan, start: number, end: number): FormulaError {
  const expected = 'a charge with one sign, from 1 to 99: ^2- or ^+'
  return complain(scan, { code: 'formula/bad-charge', start, end, says: 'is not a charge that can be read', expected })
}

/** A charge right behind another one, or behind a bracket with charges inside. */
export function secondCharge(scan: Scan, start: number, end: number): FormulaError {
  const [says, expected] = ['is a second charge of the same ion', 'one charge behind every ion']
  return complain(scan, { code: 'formula/bad-charge', start, end, says, expected })
}

/** What stands behind a caret, or is raised, and is no charge. */
export function notCharge(scan: Scan, start: number): FormulaError {
  const { text } = scan
  const from = kindAt(text, start) === caret ? start + 1 : start
  const inside = kindAt(text, from) === opening ? from + 1 : from
  const roman = romanEnd(text, inside)
  if (roman > inside) return oxidationNumber(scan, start, roman)
  const digits = raisedEnd(text, inside)
  const behind = kindAt(text, text[digits] === '}' ? digits + 1 : digits) === capital
  return digits > inside && behind ? isotopeLabel(scan, start, digits) : badCharge(scan, start, digits)
}

function raisedEnd(text: string, at: number): number {
  let next = at
  while (digitValue(text, next) >= 0) next += 1
  return next
}

/** The end of a run of the letters I, V and X. */
export function romanEnd(text: string, at: number): number {
  let next = at
  while ('IVX'.includes(text.charAt(next) || ' ')) next += 1
  return next
}

/** Whether a round bracket holds two or more of the letters I, V and X and nothing else. */
export function isOxidationNumber(text: string, at: number): boolean {
  const first = text.charCodeAt(at + 1)
  if (first !== 73 && first !== 86 && first !== 88) return false
  const end = romanEnd(text, at + 1)
  return end >= at + 3 && text.charAt(at) === '(' && text.charAt(end) === ')'
}

/** A Roman numeral behind a caret or in brackets. */
export function oxidationNumber(scan: Scan, start: number, end: number): FormulaError {
  const says = 'looks like an oxidation number, which belongs into a name'
  const expected = 'a formula without oxidation numbers'
  const hint = rest(scan, start, end)
  return complain(scan, { code: 'formula/oxidation-number', start, end, says, expected, hint })
}

/** A mass number in front of a symbol. */
export function isotopeLabel(scan: Scan, start: number, end: number): FormulaError {
  const says = 'looks like a mass number'
  const expected = 'a symbol without a mass number; of the isotopes only D and T are known'
  return complain(scan, { code: 'formula/isotope-label', start, end, says, expected })
}

/** The formula without a stretch and without the brace that closes it. */
function rest({ text }: Scan, start: number, end: number): string {
  return `${text.slice(0, start)}${text.slice('})'.includes(text.charAt(end)) ? end + 1 : end)}?`
}

/** A sign on the line that has more behind it: a bond, a range, an unknown count, or a sum. */
export function signInside(scan: Scan, start: number, next: number): FormulaError {
  const { text } = scan
  const at = runEnd(text, start, digit)
  if (signAt(text, at) > 0) return sumInside(scan, at, at + 1)
  const behind = kindAt(text, at + 1)
  if (isRange(text, at)) return rangeInside(scan, at)
  if (behind === small || behind === 0) return unknownInside(scan, at)
  const says = 'is a bond or a stray sign'
  const expected = 'a charge at the end of a part, or a formula without bonds'
  const hint = behind === capital || behind === opening ? `${text.slice(0, at)}${text.slice(at + 1)}?` : undefined
  return complain(scan, { code: 'formula/bond', start: at, end: next, says, expected, hint })
}

/** A plus with a formula behind it. */
export function sumInside(scan: Scan, start: number, end: number): FormulaError {
  const says = 'joins two formulas, or is a charge without a caret inside a formula'
  const expected = 'one formula; a charge that is followed by more needs a caret, as in Na^+Cl^-'
  return complain(scan, { code: 'formula/equation', start, end, says, expected })
}

/** Whether a sign on the line stands between two digits. */
export function isRange(text: string, at: number): boolean {
  return kindAt(text, at) === sign && kindAt(text, at + 1) === digit && digitValue(text, at - 1) >= 0
}

/** Two numbers with a dash between them. */
export function rangeInside(scan: Scan, at: number): FormulaError {
  const { text } = scan
  let [start, end] = [at, at + 1]
  while (isNumeral(text, start - 1)) start -= 1
  while (isNumeral(text, end)) end += 1
  return complain(scan, { code: 'formula/range', start, end, says: 'is a range', expected: 'one number' })
}

function isNumeral(text: string, at: number): boolean {
  return kindAt(text, at) === digit || (text[at] === '.' && kindAt(text, at + 1) === digit)
}

function unknownInside(scan: Scan, at: number): FormulaError {
  const start = at + 1
  return unknownCount(scan, start, runEnd(scan.text, start, small))
}

/** A letter where a count should be. */
export function unknownCount(scan: Scan, start: number, end: number): FormulaError {
  const says = 'stands for an unknown number'
  const expected = 'a number; only the water of a hydrate may be unknown, as in ·xH2O'
  return complain(scan, { code: 'formula/placeholder', start, end: Math.max(end, start + 1), says, expected })
}
