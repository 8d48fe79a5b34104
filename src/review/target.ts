import type { Decimal } from '../decimal.js'
import { conversionBetween } from '../quantity/combine.js'
import type { Quantity, Unit } from '../quantity/index.js'
import { givesAt } from './agreement.js'
import type { Statement } from './statement.js'

/** The number that a slip has to give. */
export interface Target {
  /** In which unit. */
  readonly unit: Unit
  /** The number. */
  readonly value: Decimal
  /** Exponent of ten of its last digit. */
  readonly place: number
  /** The same in the unit of the calculation's result, as a double. */
  readonly about: number
  /** One in the last digit, in that unit. */
  readonly step: number
}

/** The number that was stated, read in a unit of the dimension of the result. */
export function targetOf(result: Quantity, { value, places }: Statement, unit: Unit): Target {
  const place = places.at(-1) as number
  const { factor, inverse, offset } = conversionBetween(result.unit, unit)
  const size = inverse ? 1 / Number(factor) : Number(factor)
  const about = (value.toNumber() - (offset?.toNumber() ?? 0)) / size
  return { unit, value, place, about, step: Math.abs(10 ** place / size) }
}

/** How well a number fits: to its digits, or one off in the last of them. */
export type Fit = 'to the digits' | 'one in the last digit'

/** Doubles are a little off; a number at the very edge is looked at more closely. */
const slack = 1.000_001

/** Whether a number may fit. */
export function isInReach({ about, step }: Target, estimate: number): boolean {
  return Math.abs(estimate - about) <= 1.5 * step * slack + Math.abs(about) * 1e-12
}

/** Whether a number may be the stated one to its digits. */
export function mayGive({ about, step }: Target, estimate: number): boolean {
  return Math.abs(estimate - about) <= 0.5 * step * slack + Math.abs(about) * 1e-12
}

/** How a quantity fits; undefined where it does not. */
export function fitOf({ unit, value, place }: Target, recomputed: Quantity): Fit | undefined {
  const number = recomputed.to(unit as never).value
  if (givesAt(number, value, place)) return 'to the digits'
  return number.minus(value).abs().lte(`1.5e${place}`) ? 'one in the last digit' : undefined
}
