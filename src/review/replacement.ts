import { Decimal } from '../decimal.js'
import { exact, type Quantity, roundTo } from '../quantity/index.js'
import { roundedNumber } from './numeric-rules.js'

/** One quantity of a calculation and what stands in its place; as `reconsider` takes it, with the same on doubles. */
export interface Replacement {
  /** What is replaced. */
  readonly replace: Quantity
  /** What stands there instead, from what would stand there. */
  readonly with: (q: Quantity) => Quantity
  /** The same on doubles, in the unit of what is replaced: it only says whether a closer look is worth while. */
  readonly estimate: (value: number) => number
}

/** Another quantity in its place. */
export function instead(replace: Quantity, other: Quantity): Replacement {
  const value = other.to(replace.unit as never).value.toNumber()
  return { replace, with: () => other, estimate: () => value }
}

/** Two quantities in each other's place, as numbers of their own: otherwise the second change would undo the first. */
export function exchanged(one: Quantity, other: Quantity): readonly Replacement[] {
  return [instead(one, asNumber(other)), instead(other, asNumber(one))]
}

function asNumber({ value, unit, naming }: Quantity): Quantity {
  return exact(`${value.toString()} ${unit}` as '1 g', naming)
}

/** So many times what it was. */
export function times(replace: Quantity, factor: Quantity<'ratio'>): Replacement {
  const size = factor.to('1').value.toNumber()
  return { replace, with: (q) => named(q, q.times(factor as never)), estimate: (value) => value * size }
}

/** So many times what it was, as an exact number. */
export function timesNumber(replace: Quantity, factor: string): Replacement {
  return times(replace, exact(factor as `${number}`))
}

/** One divided by it; of ratios. */
export function upsideDown(replace: Quantity): Replacement {
  const unit = replace.unit === '%' ? 0.01 : 1
  return {
    replace,
    with: (q) => named(q, exact(1).dividedBy(q as Quantity<'ratio'>)),
    estimate: (value) => 1 / (value * unit * unit),
  }
}

/** The number that it is in a unit, one divided by it: what comes of multiplying where one divides, in the numbers of that unit. */
export function numberUpsideDown(replace: Quantity, unit: string): Replacement {
  const size = replace
    .to(unit as never)
    .value.div(replace.value)
    .toNumber()
  return {
    replace,
    with: (q) => exact(`${new Decimal(1).div(q.to(unit as never).value)} ${unit}` as '1 g', q.naming),
    estimate: (value) => 1 / (value * size * size),
  }
}

/** The number 1 in its place; of ratios. */
export function leftOut(replace: Quantity): Replacement {
  return instead(replace, exact('1'))
}

/** Rounded to a place, such as `0.1`, in the unit that is given. */
export function roundedTo(replace: Quantity, place: string, unit: 'g/mol'): Replacement {
  const inUnit = replace.to(unit as never).value.toNumber()
  const step = (Number(place) * replace.value.toNumber()) / inUnit
  return {
    replace,
    with: (q) => roundTo(q.to(unit as never), { place }),
    estimate: (value) => Math.round(value / step) * step,
  }
}

/** Rounded to so many figures before the calculation goes on. */
export function roundedEarly(replace: Quantity, figures: number): Replacement {
  return { replace, with: (q) => roundTo(q, { figures }), estimate: (value) => roundedNumber(value, figures) }
}

/** The other quantity under the names of the first. */
function named(q: Quantity, other: Quantity): Quantity {
  return other.named(q.naming)
}
