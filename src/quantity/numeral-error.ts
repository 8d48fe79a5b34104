import { type Span, showFound } from '../errors.js'
import { type QuantityCode, QuantityError } from './quantity-error.js'

/** Longest numeral that is read, in digits. */
export const longest = 100
/** Largest power of ten, up or down, of a number that is read. */
export const largestExponent = 100

/** Text where a numeral should stand. */
export function notANumeral(text: string, at: number, offset: number): QuantityError {
  return mistake(
    'quantity/not-a-numeral',
    text,
    { start: offset + at, end: offset + text.length },
    {
      message: `${showFound(text)} is not a decimal numeral (character ${offset + at + 1}).`,
      expected: 'digits, at most one decimal point, and perhaps a power of ten: 3.977, 2.50e2',
    },
  )
}

/** A comma, which could be a decimal sign or a mark of thousands. */
export function decimalComma(text: string, at: number, offset: number): QuantityError {
  return mistake(
    'quantity/decimal-comma',
    text,
    { start: offset + at, end: offset + at + 1 },
    {
      message: `${showFound(text)} has a comma: it could be a decimal sign or a mark of thousands, so it is not read.`,
      expected: 'a point as the decimal sign, and no mark of thousands',
      hint: text.slice(0, longest).replace(',', '.'),
    },
  )
}

/** More digits than are read. */
export function tooLong(text: string, offset: number): QuantityError {
  return mistake(
    'quantity/too-long',
    text,
    { start: offset, end: offset + text.length },
    {
      message: `A numeral of more than ${longest} digits is not read.`,
      expected: `at most ${longest} digits`,
    },
  )
}

/** A number too large or too small. */
export function exponentOutOfRange(text: string, offset: number): QuantityError {
  return mistake(
    'quantity/exponent-out-of-range',
    text,
    { start: offset, end: offset + text.length },
    {
      message: `${showFound(text)} has a power of ten beyond ${largestExponent}.`,
      expected: `a power of ten between -${largestExponent} and ${largestExponent}`,
    },
  )
}

/** Trailing zeros that say nothing, where that was not to be. */
export function ambiguousZeros(text: string, offset: number): QuantityError {
  return mistake(
    'quantity/ambiguous-zeros',
    text,
    { start: offset, end: offset + text.length },
    {
      message: `${showFound(text)} does not say whether its trailing zeros are significant.`,
      expected: 'a decimal point behind it, or a power of ten: 250. or 2.50e2',
      hint: `${text.slice(0, longest)}.`,
    },
  )
}

function mistake(
  code: QuantityCode,
  text: string,
  position: Span,
  words: { readonly message: string; readonly expected: string; readonly hint?: string },
): QuantityError {
  return new QuantityError({ code, position, found: text.slice(0, longest), ...words })
}

/** A reading of trailing zeros that is none. */
export function unknownZeros(given: unknown, choices: readonly unknown[]): QuantityError {
  return new QuantityError({
    code: 'quantity/unknown-option',
    message: `${showFound(given)} is not a choice for wholeNumberZeros.`,
    path: ['wholeNumberZeros'],
    found: showFound(given),
    expected: choices.join(', '),
  })
}
