import { Decimal } from '../decimal.js'
import type { Rounding, RuleName, RuleSettings } from '../quantity/index.js'

/** Values of a calculation by place, as doubles. */
type Values = Float64Array | number[]
/** Works out a value from those at some places. */
export type NumericRule = (values: Values, places: readonly number[], settings: RuleSettings) => number

/**
 * Every rule on doubles. They only say which slips are worth a closer look; what a review reports is worked out on decimals by the
 * rules themselves.
 */
export const numericRules: Readonly<Record<RuleName, NumericRule>> = {
  sum: (v, at) => total(v, at),
  difference: (v, at) => operand(v, at, 0) - operand(v, at, 1),
  product: (v, at) => operand(v, at, 0) * operand(v, at, 1),
  quotient: (v, at) => operand(v, at, 0) / operand(v, at, 1),
  conversion: (v, at, { factor, inverse, offset }) => {
    const size = Number(factor)
    const scaled = inverse ? operand(v, at, 0) / size : operand(v, at, 0) * size
    return offset === undefined ? scaled : scaled + Number(offset)
  },
  mean: (v, at) => total(v, at) / at.length,
  weightedSum: (v, at, { counts }) =>
    at.reduce((sum, _, index) => sum + operand(v, at, index) * Number((counts as readonly Decimal[])[index]), 0),
  power: (v, at, { exponent }) => operand(v, at, 0) ** (exponent as number),
  squareRoot: (v, at) => Math.sqrt(operand(v, at, 0)),
  logarithm: (v, at) => Math.log10(operand(v, at, 0)),
  antilogarithm: (v, at) => 10 ** operand(v, at, 0),
  naturalLogarithm: (v, at) => Math.log(operand(v, at, 0)),
  exponential: (v, at) => Math.exp(operand(v, at, 0)),
  sine: (v, at) => Math.sin(operand(v, at, 0)),
  cosine: (v, at) => Math.cos(operand(v, at, 0)),
  rounded: (v, at, { rounding }) => {
    const to = rounding as Rounding
    if ('figures' in to) return roundedNumber(operand(v, at, 0), to.figures)
    const step = Number(to.step)
    return Math.round(operand(v, at, 0) / step) * step
  },
}

/** Digits of a double that can be trusted. */
const trusted = 15

/** A double rounded to so many figures, a lone 5 to the even digit, as the decimals do. */
export function roundedNumber(value: number, figures: number): number {
  return Number.isFinite(value)
    ? new Decimal(value.toPrecision(trusted)).toSignificantDigits(figures).toNumber()
    : value
}

function operand(values: Values, places: readonly number[], index: number): number {
  return values[places[index] as number] as number
}

function total(values: Values, places: readonly number[]): number {
  return places.reduce((sum, place) => sum + (values[place] as number), 0)
}
