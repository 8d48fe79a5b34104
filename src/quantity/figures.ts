import type { Decimal } from '../decimal.js'
import { showFound } from '../errors.js'
import type { Dimension } from './dimension.js'
import { derivedNode, nodeOf } from './node.js'
import { readNumeral, type WholeNumberZeros, zerosChoice } from './numeral.js'
import type { Quantity } from './quantity.js'
import { QuantityError } from './quantity-error.js'
import type { Rounding, TieRule } from './rounding.js'
import { figuresAt } from './significance.js'

/** To what a quantity is rounded: `figures`, or the multiples of a `place` (`"0.01"`, `"0.05"`, `"10"`) in its unit. */
export type RoundTo =
  | {
      /** How many significant figures are kept, from 1 to 30. */
      readonly figures: number
      /** What a lone 5 does; `"half-even"` unless said otherwise. */
      readonly rule?: TieRule
    }
  | {
      /** The step whose multiples are kept, such as `"0.01"`, in the unit of the quantity. */
      readonly place: string
      /** What a lone 5 does; `"half-even"` unless said otherwise. */
      readonly rule?: TieRule
    }

/**
 * Rounds a quantity for showing; the number it was made from keeps all its digits.
 *
 * @typeParam D - Its dimension.
 * @param q - Any quantity.
 * @param to - How many figures, or which place, to keep; and what a lone 5 does (`"half-even"` unless said otherwise).
 * @returns The same dimension and unit, with no more figures than asked for.
 * @throws {@link QuantityError} `quantity/figures-out-of-range` when `figures` is not a whole number from 1 to 30 or
 *   `place` is not above zero; `quantity/unknown-option` for a rule of another name.
 * @source OpenStax, Chemistry 2e, section 1.5, rounding rules and Example 1.3.
 *
 * @example
 * ```ts
 * import { quantity, roundTo } from 'saltwright/quantity'
 *
 * roundTo(quantity('0.90275 g'), { figures: 4 }).toString() // => '0.9028 g'
 * roundTo(quantity('0.051065 g'), { figures: 4 }).toString() // => '0.05106 g'
 * roundTo(quantity('12.47 mL'), { place: '0.05' }).toString() // => '12.45 mL'
 * roundTo(quantity('1.0 g'), { figures: 0 }) // throws quantity/figures-out-of-range
 * ```
 */
export function roundTo<D extends Dimension>(q: Quantity<D>, to: RoundTo): Quantity<D> {
  const node = nodeOf(q)
  return derivedNode('rounded', [node], node.unit, { rounding: roundingOf(to) }, node.naming) as Quantity as Quantity<D>
}

/** A rounding as asked for, checked. */
export function roundingOf(to: unknown): Rounding {
  if (typeof to !== 'object' || to === null) throw outOfRange(to, '{ figures: 3 } or { place: "0.01" }')
  const { figures, place, rule: ties = 'half-even' } = to as { figures?: unknown; place?: unknown; rule?: unknown }
  if (ties !== 'half-even' && ties !== 'half-up') throw unknownRule(ties)
  return Object.freeze(figures === undefined ? { step: stepOf(place), ties } : { figures: figuresOf(figures), ties })
}

function figuresOf(figures: unknown): number {
  if (Number.isInteger(figures) && (figures as number) >= 1 && (figures as number) <= 30) return figures as number
  throw outOfRange(figures, 'a whole number from 1 to 30')
}

function stepOf(place: unknown): Decimal {
  const step = typeof place === 'string' ? readNumeral(place.trim()).value : undefined
  if (step?.gt(0)) return step
  throw outOfRange(place, 'a step above zero, as text: "0.01"')
}

/** How many significant figures a numeral has. */
export interface FigureCount {
  /** Significant figures, by the stated reading of trailing zeros. */
  readonly figures: number
  /** True where trailing zeros of a whole number leave it open. */
  readonly ambiguous: boolean
}

/**
 * Counts the significant figures of a numeral as written.
 *
 * @param text - A decimal numeral without a unit.
 * @param options - `wholeNumberZeros`: what trailing zeros of a whole number mean; `"placeholders"` unless said.
 * @returns The count, and whether trailing zeros leave it open.
 * @throws {@link QuantityError} `quantity/not-a-numeral`, `quantity/decimal-comma`, `quantity/ambiguous-zeros` and the
 *   other codes of a numeral.
 * @source OpenStax, Chemistry 2e, section 1.5.
 *
 * @example
 * ```ts
 * import { countFigures } from 'saltwright/quantity'
 *
 * countFigures('0.0500') // => { figures: 3, ambiguous: false }
 * countFigures('250') // => { figures: 2, ambiguous: true }
 * ```
 */
export function countFigures(
  text: string,
  options: { readonly wholeNumberZeros?: WholeNumberZeros } = {},
): FigureCount {
  if (typeof text !== 'string') throw notText(text)
  if (typeof options !== 'object' || options === null) throw notOptions(options)
  const { value, place, ambiguous } = readNumeral(text.trim(), zerosChoice(options.wholeNumberZeros))
  return { figures: figuresAt(value, place), ambiguous }
}

function notText(found: unknown): QuantityError {
  return new QuantityError({
    code: 'quantity/not-text',
    message: `${showFound(found)} is not text.`,
    found: showFound(found),
    expected: 'a numeral as text: "0.0500"',
  })
}

function outOfRange(found: unknown, expected: string): QuantityError {
  return new QuantityError({
    code: 'quantity/figures-out-of-range',
    message: `Nothing can be rounded to ${showFound(found)}.`,
    found: showFound(found),
    expected,
  })
}

function unknownRule(found: unknown): QuantityError {
  return new QuantityError({
    code: 'quantity/unknown-option',
    message: `${showFound(found)} is not a rule for ties.`,
    found: showFound(found),
    expected: '"half-even" or "half-up"',
  })
}

function notOptions(found: unknown): QuantityError {
  return new QuantityError({
    code: 'quantity/unknown-option',
    message: `${showFound(found)} does not hold options.`,
    found: showFound(found),
    expected: '{ wholeNumberZeros: "significant" }',
  })
}
