import { showFound } from '../errors.js'
import type { Dimension, Quantity } from '../quantity/index.js'
import { StoichiometryError } from './stoichiometry-error.js'

/** An amount, mass or factor that cannot be below zero. */
export function notNegative<D extends Dimension>(q: Quantity<D>): Quantity<D> {
  if (!q.value.lt(0)) return q
  throw new StoichiometryError({
    code: 'stoichiometry/negative',
    message: `${q.toString()} is below zero (${q.naming.label}).`,
    found: q.toString(),
    expected: 'zero or more',
  })
}

/** A part of a whole: above zero, and 1 at most. */
export function partOfWhole(q: Quantity<'ratio'>): Quantity<'ratio'> {
  const part = q.to('1').value
  if (part.gt(0) && part.lte(1)) return q
  throw new StoichiometryError({
    code: 'stoichiometry/not-a-fraction',
    message: `${q.toString()} is not a part of a whole (${q.naming.label}).`,
    found: q.toString(),
    expected: 'above 0 and at most 1, or 100 %',
  })
}

/** Makes sure that a list of objects was handed over. */
export function listOf<T>(value: readonly T[], expected: string): readonly T[] {
  if (!Array.isArray(value)) throw notAnObject(value, expected)
  return Array.from(value, (each: T) => anObject(each, expected)) // not map, which would pass over the holes of a list
}

/** Makes sure that an object was handed over. */
export function anObject<T>(value: T, expected: string): T {
  if (typeof value === 'object' && value !== null) return value
  throw notAnObject(value, expected)
}

function notAnObject(value: unknown, expected: string): StoichiometryError {
  return new StoichiometryError({
    code: 'stoichiometry/not-an-object',
    message: `${showFound(value)} is no object with named numbers.`,
    found: showFound(value),
    expected,
  })
}
