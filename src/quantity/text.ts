import type { Decimal } from '../decimal.js'
import { type Span, showFound } from '../errors.js'
import {
  inRange,
  type Numeral,
  readLeadingNumeral,
  readPowerOfTen,
  settleZeros,
  type WholeNumberZeros,
  type WrittenNumeral,
} from './numeral.js'
import { QuantityError } from './quantity-error.js'
import { findUnit, type Unit, units } from './unit.js'

/** A number with its unit as written, and what was written of its uncertainty. */
export interface QuantityParts {
  /** The number. */
  readonly numeral: Numeral
  /** The unit; `1` where none was written. */
  readonly unit: Unit
  /** What stands in brackets or after the plus-minus sign, in the unit. */
  readonly spread: Decimal | undefined
}

interface Body {
  readonly numeral: Numeral
  readonly spread: Decimal | undefined
  /** Where the unit starts. */
  readonly end: number
}

const plusMinusSigns = ['±', '+/-', '+-'] as const

/**
 * Reads a number and its unit: `3.977 g`, and with an uncertainty `3.9772(21) g`, `(3.9772 ± 0.0021) g` or `3.9772 ± 0.0021 g`
 * (the forms of JCGM 100:2008, 7.2.2).
 */
export function readQuantityText(value: unknown, zeros: WholeNumberZeros = 'placeholders'): QuantityParts {
  if (typeof value !== 'string') throw notText(value)
  const text = value.trim()
  if (text === '') throw empty()
  const offset = value.length - value.trimStart().length
  const { numeral, spread, end } = readBody(text, zeros, offset)
  const rest = text.slice(end).trim()
  const unit = findUnit(rest)
  if (unit !== undefined) return { numeral, unit, spread }
  const start = offset + text.length - rest.length
  throw unknownUnit(rest, { start, end: start + rest.length })
}

function readBody(text: string, zeros: WholeNumberZeros, offset: number): Body {
  if (text.startsWith('(')) return readBracketed(text, offset)
  const written = readLeadingNumeral(text, offset)
  if (text[written.end] === '(') return readConcise(text, written, offset)
  const at = skipPlusMinus(text, written.end)
  if (at === undefined)
    return { numeral: settleZeros(written, zeros, text, offset), spread: undefined, end: written.end }
  const spread = readSpread(text, at, offset)
  return { numeral: allDigits(written), spread: spread.value, end: spread.end }
}

/** `3.9772(21)`: the digits in brackets stand under the last digits before them; with a point they stand for themselves. */
function readConcise(text: string, written: WrittenNumeral, offset: number): Body {
  const inside = text.slice(written.end, text.indexOf(')', written.end))
  const spread = readSpread(text, written.end + 1, offset, inside.includes('.') ? 0 : written.last)
  if (text[spread.end] !== ')') throw unclosed(text, spread.end, offset)
  return scaled(text, spread.end + 1, written, spread.value, offset)
}

/** `(3.9772 ± 0.0021)`. */
function readBracketed(text: string, offset: number): Body {
  const written = readLeadingNumeral(text.slice(1), offset + 1)
  const at = skipPlusMinus(text, written.end + 1)
  if (at === undefined) throw unclosed(text, written.end + 1, offset)
  const spread = readSpread(text, at, offset)
  if (text[spread.end] !== ')') throw unclosed(text, spread.end, offset)
  return scaled(text, spread.end + 1, written, spread.value, offset)
}

/** A power of ten behind the brackets belongs to both numbers. */
function scaled(text: string, from: number, written: WrittenNumeral, spread: Decimal, offset: number): Body {
  const power = readPowerOfTen(text, from, offset)
  if (power === undefined) return { numeral: allDigits(written), spread, end: from }
  const { exponent, end } = power
  const value = inRange(written.value.times(`1e${exponent}`), text, offset)
  const numeral = { value, place: written.last + exponent, ambiguous: false }
  return { numeral, spread: inRange(spread.times(`1e${exponent}`), text, offset), end }
}

/** Beside an uncertainty every digit was meant, trailing zeros included. */
function allDigits({ value, last }: WrittenNumeral): Numeral {
  return { value, place: last, ambiguous: false }
}

/** An uncertainty, times a power of ten. */
function readSpread(text: string, from: number, offset: number, power = 0): Pick<WrittenNumeral, 'value' | 'end'> {
  const { value, end } = readLeadingNumeral(text.slice(from), offset + from, power)
  if (value.isNegative()) throw negativeSpread(text, { start: offset + from, end: offset + from + end })
  return { value, end: from + end }
}

/** Where the number after a plus-minus sign starts; undefined where there is no such sign. */
function skipPlusMinus(text: string, from: number): number | undefined {
  const at = skipSpaces(text, from)
  const sign = plusMinusSigns.find((one) => text.startsWith(one, at))
  return sign === undefined ? undefined : skipSpaces(text, at + sign.length)
}

function skipSpaces(text: string, from: number): number {
  let at = from
  while (at < text.length && ' \u00a0\u2009\u202f'.includes(text[at] as string)) at += 1
  return at
}

function notText(value: unknown): QuantityError {
  const isNumber = typeof value === 'number'
  return new QuantityError({
    code: isNumber ? 'quantity/javascript-number' : 'quantity/not-text',
    message: isNumber
      ? `The JavaScript number ${value} has lost its trailing zeros, so its figures are unknown.`
      : `${showFound(value)} is not text.`,
    found: showFound(value),
    expected: isNumber ? 'text with its digits and unit, or exact(...) for a choice or a count' : 'text: "3.977 g"',
  })
}

function empty(): QuantityError {
  return new QuantityError({
    code: 'quantity/empty',
    message: 'The text is empty where a quantity was expected.',
    position: { start: 0, end: 0 },
    found: '""',
    expected: 'a number and a unit: "3.977 g"',
  })
}

function unknownUnit(rest: string, position: Span): QuantityError {
  return new QuantityError({
    code: 'quantity/unknown-unit',
    message: `${showFound(rest)} is not a unit (character ${position.start + 1}).`,
    position,
    found: rest.slice(0, 60),
    expected: `one of ${Object.keys(units)
      .filter((unit) => unit !== '1')
      .join(', ')}`,
    hint: Object.keys(units).find((unit) => unit.toLowerCase() === rest.toLowerCase()),
  })
}

function unclosed(text: string, at: number, offset: number): QuantityError {
  return new QuantityError({
    code: 'quantity/bad-uncertainty',
    message: `${showFound(text)} opens a bracket for an uncertainty and does not go on as one (character ${offset + at + 1}).`,
    position: { start: offset + at, end: offset + Math.min(at + 1, text.length) },
    found: text.slice(at, at + 60),
    expected: '3.9772(21) g or (3.9772 ± 0.0021) g',
  })
}

function negativeSpread(text: string, position: Span): QuantityError {
  return new QuantityError({
    code: 'quantity/bad-uncertainty',
    message: `${showFound(text)} has a negative uncertainty (character ${position.start + 1}).`,
    position,
    found: text.slice(0, 60),
    expected: 'an uncertainty of zero or more',
  })
}
