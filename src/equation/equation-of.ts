import { showFound } from '../errors.js'
import type { Equation } from './equation.js'
import { EquationError } from './equation-error.js'
import { isOwnEquation } from './make-equation.js'
import { parseEquation } from './parse.js'

/** An equation, or its text. */
export type EquationLike = Equation | string

/** The equation itself, or the one its text says; an equation from another copy of the library is read from its text. */
export function equationOf(input: EquationLike): Equation {
  if (typeof input === 'string') return parseEquation(input)
  if (typeof input !== 'object' || input === null) throw notText(input)
  if (isOwnEquation(input)) return input
  const text: unknown = (input as Partial<Equation>).text
  if (typeof text !== 'string') throw notText(input)
  return parseEquation(text)
}

function notText(input: unknown): EquationError {
  return new EquationError({
    code: 'equation/not-text',
    message: `An equation or its text was expected, not ${showFound(input)}.`,
    found: showFound(input),
    expected: 'an equation or its text',
  })
}

/** Some equations or their texts. */
export function equationsOf(inputs: readonly EquationLike[]): readonly Equation[] {
  if (!Array.isArray(inputs)) throw notText(inputs)
  return inputs.map(equationOf)
}
