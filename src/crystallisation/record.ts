import { showFound } from '../errors.js'
import { type CrystallisationCode, CrystallisationError } from './crystallisation-error.js'

/** An object, where one was expected: what comes in may be anything. */
export function record<T extends object>(value: T, what: string): T {
  if (typeof value === 'object' && value !== null) return value
  throw wrong('crystallisation/not-an-object', value, what)
}

/** A list of texts, where one was expected. */
export function texts(value: readonly string[], what: string): readonly string[] {
  if (Array.isArray(value) && value.every((each) => typeof each === 'string')) return value
  throw wrong('crystallisation/not-a-list', value, `a list of ${what}`)
}

function wrong(code: CrystallisationCode, found: unknown, expected: string): CrystallisationError {
  return new CrystallisationError({
    code,
    message: `${showFound(found)} stands where ${expected} was expected.`,
    found: showFound(found),
    expected,
  })
}
