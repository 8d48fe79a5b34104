import { showFound } from '../errors.js'
import type { Dimension, Quantity } from '../quantity/index.js'
import { type SolutionCode, SolutionError } from './solution-error.js'

/** A number that has to be above zero. */
export function aboveZero<D extends Dimension>(q: Quantity<D>): Quantity<D> {
  if (q.value.gt(0)) return q
  throw outOfBounds('solution/not-above-zero', q, 'above zero')
}

/** A mass fraction: above zero, and 1 at most. */
export function aFraction(w: Quantity<'ratio'>): Quantity<'ratio'> {
  const { value } = w.to('1')
  if (value.gt(0) && value.lte(1)) return w
  throw outOfBounds('solution/not-a-fraction', w, 'above 0 and at most 1, or 100 %')
}

function outOfBounds(code: SolutionCode, q: Quantity, expected: string): SolutionError {
  return new SolutionError({
    code,
    message: `${q.toString()} cannot be the ${q.naming.label}: expected is ${expected}.`,
    found: q.toString(),
    expected,
  })
}

/** Makes sure that named numbers were handed over. */
export function anObject<T>(value: T, expected: string): T {
  if (typeof value === 'object' && value !== null) return value
  throw new SolutionError({
    code: 'solution/not-an-object',
    message: `${showFound(value)} is no object with named numbers.`,
    found: showFound(value),
    expected,
  })
}
