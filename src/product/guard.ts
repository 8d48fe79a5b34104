import { showFound } from '../errors.js'
import type { Dimension, Quantity } from '../quantity/index.js'
import { type Given, type Labels, measured } from '../stoichiometry/given.js'
import { ProductError } from './product-error.js'

/** An object, where one was expected: what comes in may be anything. */
export function record<T extends object>(value: T, what: string): T {
  if (typeof value === 'object' && value !== null) return value
  throw new ProductError({
    code: 'product/not-an-object',
    message: `${showFound(value)} stands where ${what} was expected.`,
    found: showFound(value),
    expected: what,
  })
}

/** A list, where one was expected. */
export function list<T>(value: readonly T[], what: string): readonly T[] {
  if (Array.isArray(value)) return Array.from(value) // in which a hole is undefined, and refused as such
  throw new ProductError({
    code: 'product/not-a-list',
    message: `${showFound(value)} stands where a list of ${what} was expected.`,
    found: showFound(value),
    expected: `a list of ${what}`,
  })
}

/** Text, or nothing, where text may stand. */
export function textOrNothing(value: string | undefined, what: string): string | undefined {
  if (value === undefined || typeof value === 'string') return value
  throw new ProductError({
    code: 'product/not-text',
    message: `${showFound(value)} stands where ${what} was expected.`,
    found: showFound(value),
    expected: `${what}, as text`,
  })
}

/** A quantity of the dimension, above zero; text is measured. */
export function positive<D extends Dimension>(given: Given<D>, dimension: D, naming: Labels): Quantity<D> {
  const q = measured(given, dimension, naming)
  if (q.value.gt(0)) return q
  throw new ProductError({
    code: 'product/not-positive',
    message: `${q} stands where the ${naming.label} was expected.`,
    found: String(q),
    expected: `${naming.label}, above zero`,
  })
}

/** Gives a quantity its part in the calculation; what it is called stays. */
export function inRole<D extends Dimension>(q: Quantity<D>, naming: Labels): Quantity<D> {
  return q.named({ ...naming, ...q.naming, ...(naming.role && { role: naming.role }) })
}
