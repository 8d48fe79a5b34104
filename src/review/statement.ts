import type { Decimal } from '../decimal.js'
import { showFound } from '../errors.js'
import {
  type Dimension,
  isQuantity,
  type Quantity,
  tryQuantity,
  type Unit,
  type WholeNumberZeros,
} from '../quantity/index.js'
import { roundToPlace } from '../quantity/rounding.js'
import { figuresAt } from '../quantity/significance.js'
import { ReviewError } from './review-error.js'

/** An answer as it was stated. */
export interface Statement {
  /** The answer as a quantity. */
  readonly quantity: Quantity
  /** Its number. */
  readonly value: Decimal
  /** Its unit; `1` where none was written. */
  readonly unit: Unit
  /** What it measures. */
  readonly dimension: Dimension
  /** Exponents of ten that its last digit may have, the finest first: several where trailing zeros of a whole number leave it open. */
  readonly places: readonly number[]
  /** Exponent of ten of its last digit, zeros at the end of a whole number taken for placeholders all of them. */
  readonly coarsest: number
}

/** Reads an answer: text, or a quantity. */
export function readStatement(stated: unknown, zeros: WholeNumberZeros | undefined): Statement {
  const quantity = isQuantity(stated) ? stated : readText(stated, zeros)
  const { unit, dimension } = quantity
  const places = placesOf(quantity)
  const coarsest = quantity.input?.writtenPlace ?? (places[0] as number)
  return { quantity, value: shownValue(quantity, places), unit, dimension, places, coarsest }
}

/** The number as it is shown: what was worked out is stated to its significant digits. */
function shownValue({ input, value }: Quantity, [finest]: readonly number[]): Decimal {
  return input === undefined ? roundToPlace(value, finest as number, 'half-even') : value
}

function readText(stated: unknown, zeros: WholeNumberZeros | undefined): Quantity {
  const read = tryQuantity(stated, zeros === undefined ? {} : { wholeNumberZeros: zeros })
  if (read.ok) return read.value
  const { message, position, expected, hint } = read.error
  throw new ReviewError({
    code: 'review/unreadable-answer',
    message: `The answer cannot be read: ${message}`,
    position,
    found: showFound(stated),
    expected,
    hint,
  })
}

/** More digits than this are taken from no exact result. */
const mostDigits = 15

/** A whole number with zeros behind its first digit is taken for no less than two figures: 58 % is not 100 %. */
const fewestFigures = 2

function placesOf({ input, place, value }: Quantity): readonly number[] {
  if (input === undefined) return [place ?? Math.max(-value.dp(), value.e + 1 - mostDigits)]
  if (!input.ambiguous) return [input.writtenPlace]
  const coarsest = Math.max(0, Math.min(input.writtenPlace, value.e + 1 - fewestFigures))
  return Array.from({ length: coarsest + 1 }, (_, index) => index)
}

/** How many figures an answer was stated to. */
export function statedFigures({ value, places }: Statement): number {
  return figuresAt(value, places[0] as number)
}
