import type { Span } from '../errors.js'
import { type Formula, type State, tryParseFormula } from '../formula/index.js'
import { isDigit, isSpace, skipSpaces, trimEnd } from './characters.js'
import { readCoefficient } from './coefficient.js'
import type { Term } from './equation.js'
import { startsWithState } from './states.js'
import { contradictedState, formulaError, missingPlus } from './term-errors.js'

/** Signs that may stand with spaces around them within one formula. */
const joints = '·•∙⋅‧・*.×'

/** Reads one term, coefficient and formula and state, from its first to its last character. */
export function readTerm(text: string, span: Span): Term {
  const { value, written, next } = readCoefficient(text, span.start, span.end)
  const sign = signState(text.charCodeAt(span.end - 1))
  const end = sign === undefined ? span.end : trimEnd(text, next, span.end - 1)
  const formula = readFormula(text, next, end)
  if (sign !== undefined && formula.state !== undefined && formula.state !== sign) throw contradictedState(text, span)
  const state = formula.state ?? sign
  const [coefficient, position] = [Object.freeze(value), Object.freeze(span)]
  return Object.freeze({ coefficient, coefficientWritten: written, formula, state, position })
}

/** `BaSO4↓` is a solid that falls, `CO2↑` a gas that escapes. */
function signState(code: number): State | undefined {
  if (code === 0x2193) return 's'
  return code === 0x2191 ? 'g' : undefined
}

function readFormula(text: string, start: number, end: number): Formula {
  const gap = gapIn(text, start, end)
  if (gap !== undefined) throw missingPlus(text, { start, end }, gap)
  const outcome = tryParseFormula(text.slice(start, end))
  if (outcome.ok) return outcome.value
  throw formulaError(text, { start, end }, outcome.error)
}

/** The first white space that separates two formulas, rather than a formula from its state or the parts around a dot. */
function gapIn(text: string, start: number, end: number): Span | undefined {
  for (let at = start; at < end; at += 1) {
    if (!isSpace(text.charCodeAt(at))) continue
    const next = skipSpaces(text, at, end)
    if (!endsJoint(text, start, at) && !startsJoint(text, next)) return { start: at, end: next }
    at = next
  }
  return undefined
}

/** Whether a dot, or a dot and the number of the part behind it, stands before the white space: `· 5 H2O`. */
function endsJoint(text: string, start: number, at: number): boolean {
  let last = at - 1
  while (last > start && isDigit(text.charCodeAt(last))) last -= 1
  const dot = last < at - 1 ? trimEnd(text, start, last + 1) - 1 : last
  return joints.includes(text.charAt(dot))
}

/** Whether a dot or a state stands behind the white space. */
function startsJoint(text: string, next: number): boolean {
  return joints.includes(text.charAt(next)) || startsWithState(text, next)
}
