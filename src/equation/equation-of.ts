import { showFound } from '../errors.js'
import type { Equation } from './equation.js'
import { EquationError } from './equation-error.js'
import { isEquation } from './is-equation.js'
import { isOwnEquation } from './make-equation.js'
import { parseEquation } from './parse.js'

/** An equation, or its text. */
export type EquationLike = Equation | string

/**
 * The equation of what may be an equation or its text. An equation that another copy of the library has read is read again
 * here.
 *
 * @param input - An equation, or its text.
 * @returns The equation; the same object where it was read by this copy of the library.
 * @throws {@link EquationError} `equation/not-text` for anything else, and whatever {@link parseEquation} throws for a text.
 *
 * @example
 * ```ts
 * import { equationOf, parseEquation } from 'saltwright/equation'
 *
 * const dehydration = parseEquation('ZnSO4·7H2O -> ZnSO4 + 7 H2O')
 * equationOf(dehydration) === dehydration // => true
 * equationOf('ZnSO4·7H2O -> ZnSO4 + 7 H2O').right.length // => 2
 * ```
 */
export function equationOf(input: EquationLike): Equation {
  if (typeof input === 'string') return parseEquation(input)
  if (!isEquation(input)) throw notText(input)
  return isOwnEquation(input) ? input : parseEquation(input.text)
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
  return Array.from(inputs, (input) => equationOf(input)) // not map, which would pass over the holes of a list
}
