import type { Span } from '../errors.js'
import { isDash, isDigit, isPlus, isSmallLetter, isSpace, skipDigits, skipSpaces, trimEnd } from './characters.js'
import { isConditionText } from './conditions.js'
import { startsWithState } from './states.js'

/** Signs that may stand with spaces around them within one formula; the letter x, as in `CuSO4 x 5 H2O`, is one of them. */
const joints = '·•∙⋅‧・*.×:x'
/** What the number of a part is written with, besides digits. */
const fractions = './⁄¼½¾⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞'

/** The first white space that separates two formulas, rather than a formula from its state, its charge or its parts. */
export function gapIn(text: string, start: number, end: number): Span | undefined {
  for (let at = start; at < end; at += 1) {
    if (!isSpace(text.charCodeAt(at))) continue
    const next = skipSpaces(text, at, end)
    if (!endsJoint(text, start, at) && !startsJoint(text, next, end)) return { start: at, end: next }
    at = next
  }
  return undefined
}

/** Whether a dot, or a dot and the number of the part behind it, stands before the white space: `· 5 H2O`, `·½ H2O`. */
function endsJoint(text: string, start: number, at: number): boolean {
  if (joints.includes(text.charAt(at - 1))) return true
  let first = at
  while (first > start && isNumeral(text, first - 1)) first -= 1
  if (first === at) return false
  return joints.includes(text.charAt(first)) || joints.includes(text.charAt(trimEnd(text, start, first) - 1))
}

function isNumeral(text: string, at: number): boolean {
  return isDigit(text.charCodeAt(at)) || fractions.includes(text.charAt(at))
}

/** Whether a dot, a state or a charge stands behind the white space. */
function startsJoint(text: string, next: number, end: number): boolean {
  if (joints.includes(text.charAt(next)) || startsWithState(text, next)) return true
  return isCharge(text, next, end) || isOddState(text.slice(next, end))
}

/** `(graphite)` behind a formula: the reader of formulas knows what to say about it. */
function isOddState(text: string): boolean {
  const letters = text.slice(1, -1)
  return text === `(${letters})` && [...letters].every(isSmallLetter) && !isConditionText(text)
}

/** `SO4 2-`: in copied text, what was raised often stands apart. A sign without a number is no charge here. */
function isCharge(text: string, next: number, end: number): boolean {
  const sign = skipDigits(text, next, end)
  const code = text.charCodeAt(sign)
  if (sign === next || sign === end || !(isPlus(code) || isDash(code))) return false
  return sign + 1 === end || isSpace(text.charCodeAt(sign + 1)) || startsWithState(text, sign + 1)
}
