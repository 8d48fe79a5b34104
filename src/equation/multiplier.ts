import { showFound } from '../errors.js'
import { type Fraction, fraction } from '../fraction.js'
import { isDigit } from './characters.js'
import { readNumber } from './coefficient.js'
import { EquationError } from './equation-error.js'

/** How many times a stage runs: a whole number, a text such as `1/3`, `0.5` or `-1`, or a fraction. */
export type Multiplier = Fraction | number | string

/** The exact fraction a multiplier says. */
export function readMultiplier(value: Multiplier, path: readonly (string | number)[]): Fraction {
  const read = typeof value === 'string' ? fromText(value) : fromValue(value)
  if (read === undefined) throw unreadable(value, path)
  return read
}

function fromText(text: string): Fraction | undefined {
  const start = text.startsWith('-') ? 1 : 0
  if (!isDigit(text.charCodeAt(start))) return undefined
  const { value, end } = readNumber(text, start, text.length)
  if (end !== text.length) return undefined
  return start === 0 ? value : { numerator: -value.numerator, denominator: value.denominator }
}

function fromValue(value: unknown): Fraction | undefined {
  if (typeof value === 'number') return Number.isSafeInteger(value) ? fraction(BigInt(value)) : undefined
  const { numerator, denominator } = Object(value) as Partial<Fraction>
  if (typeof numerator !== 'bigint' || typeof denominator !== 'bigint' || denominator === 0n) return undefined
  return fraction(numerator, denominator)
}

function unreadable(value: unknown, path: readonly (string | number)[]): EquationError {
  return new EquationError({
    code: 'equation/coefficient-unreadable',
    message: `A stage runs ${showFound(value)} times, which is no exact number.`,
    path,
    found: showFound(value),
    expected: 'a whole number, or a text such as "1/3"',
  })
}
