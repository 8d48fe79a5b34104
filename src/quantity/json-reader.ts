import { Decimal } from '../decimal.js'
import { showFound } from '../errors.js'
import { largestResult } from './graph-error.js'
import { QuantityError } from './quantity-error.js'
import { findUnit, type Unit, units } from './unit.js'

/** Where in a document something stands. */
export type Path = readonly (string | number)[]

/** The fields of an object of a document, each looked up as its own and known to nobody else. */
export type Fields = ReadonlyMap<string, unknown>

/** Largest power of ten of the last digit of a number. */
export const largestPlace = 200
const longestText = 2000
const longestNumber = 200
const longestList = 1_000_000

/** An object with no fields but those named. */
export function readObject(value: unknown, path: Path, known: readonly string[]): Fields {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) throw badJson(value, path, 'an object')
  const fields = new Map(Object.entries(value).filter(([, field]) => field !== undefined))
  for (const key of fields.keys())
    if (!known.includes(key)) throw badJson(key, [...path, key], `only ${known.join(', ')}`)
  return fields
}

/** An array that is not absurdly long. */
export function readList(value: unknown, path: Path): readonly unknown[] {
  if (!Array.isArray(value)) throw badJson(value, path, 'an array')
  if (value.length > longestList) throw badJson(value, path, `at most ${longestList} entries`)
  return Array.from(value) // what is left out of an array is undefined, not skipped
}

/** A text of some length at most. */
export function readText(value: unknown, path: Path): string {
  if (typeof value === 'string' && value.length <= longestText) return value
  throw badJson(value, path, `text of at most ${longestText} characters`)
}

/** One of several values. */
export function readChoice<T>(value: unknown, path: Path, among: readonly T[]): T {
  const found = among.find((one) => one === value)
  if (found !== undefined) return found
  throw badJson(value, path, among.join(' or '))
}

/** A whole number within bounds. */
export function readWhole(value: unknown, path: Path, least: number, most: number): number {
  if (Number.isInteger(value) && (value as number) >= least && (value as number) <= most) return value as number
  throw badJson(value, path, `a whole number from ${least} to ${most}`)
}

/** A decimal number as text, plain or with an exponent. */
export function readDecimal(value: unknown, path: Path): Decimal {
  const text = typeof value === 'string' && value.length <= longestNumber ? value : ''
  const number = /^-?\d+(?:\.\d+)?(?:e[+-]?\d+)?$/.test(text) ? new Decimal(text) : undefined
  if (number !== undefined && Math.abs(number.e) <= largestResult) return number
  throw badJson(value, path, 'a decimal number as text: "3.977", "1.5e-9"')
}

/** An uncertainty: a number of zero or more. */
export function readSpread(value: unknown, path: Path): Decimal {
  const spread = readDecimal(value, path)
  if (spread.isNegative()) throw badJson(value, path, 'an uncertainty of zero or more')
  return spread
}

/** A unit, in the spelling that is written. */
export function readUnit(value: unknown, path: Path): Unit {
  const unit = typeof value === 'string' ? findUnit(value) : undefined
  if (unit !== undefined && value !== '') return unit
  throw badJson(value, path, Object.keys(units).join(', '))
}

/** The error for a document that is not as it should be. */
export function badJson(found: unknown, path: Path, expected: string): QuantityError {
  const place = path.length === 0 ? 'The document' : `The document at ${path.join('.')}`
  return new QuantityError({
    code: 'quantity/bad-json',
    message: `${place} has ${showFound(found)} where something else was expected.`,
    path,
    found: showFound(found),
    expected,
  })
}
