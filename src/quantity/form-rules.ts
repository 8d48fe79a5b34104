import type { Decimal } from '../decimal.js'
import { type Rounding, roundDecimal, roundingPlace } from './rounding.js'
import type { Rule } from './rule.js'
import { first, name } from './rule-parts.js'
import { fewestFigures } from './significance.js'
import { units } from './unit.js'

/** A defined change of unit keeps the figures; a change of zero point keeps the place. */
export const conversion: Rule = {
  evaluate: (operands, { factor, inverse, offset }) => {
    const { value } = first(operands)
    const scaled = inverse ? value.div(factor as Decimal) : value.times(factor as Decimal)
    return offset === undefined ? scaled : scaled.plus(offset)
  },
  place: (operands, value, { factor, inverse, offset }) => {
    const { place } = first(operands)
    if (place === null || offset !== undefined) return place
    const size = factor as Decimal
    if (!value.isZero() && !size.eq(`1e${size.e}`)) return fewestFigures(operands, value)
    return place + (inverse ? -size.e : size.e)
  },
  partials: (_values, _result, { factor, inverse }) => [inverse ? 1 / Number(factor) : Number(factor)],
  write: () => name(0),
  fits: ([unit, ...rest], result, { factor }) =>
    unit !== undefined &&
    rest.length === 0 &&
    units[unit].dimension === units[result].dimension &&
    factor !== undefined,
}

/** A rounded number stands for the one it was made from, so its uncertainty is that one's. */
export const rounded: Rule = {
  evaluate: (operands, { rounding }) => roundDecimal(first(operands).value, rounding as Rounding),
  place: (operands, _value, { rounding }) => {
    const { value, place } = first(operands)
    const to = roundingPlace(value, rounding as Rounding)
    return place === null ? to : Math.max(place, to)
  },
  partials: () => [1],
  write: () => name(0),
  fits: ([unit, ...rest], result, { rounding }) => unit === result && rest.length === 0 && rounding !== undefined,
}
