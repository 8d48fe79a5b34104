import type { Span } from '../errors.js'
import { type Formula, type State, tryParseFormula } from '../formula/index.js'
import { trimEnd } from './characters.js'
import { readCoefficient } from './coefficient.js'
import type { Term } from './equation.js'
import { missingPlus } from './gap-errors.js'
import { gapIn } from './gaps.js'
import { contradictedState, formulaError } from './term-errors.js'

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
