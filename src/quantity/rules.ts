import { Decimal } from '../decimal.js'
import { type Rounding, roundDecimal, roundingPlace } from './rounding.js'
import { coarsestPlace, fewestFigures, figuresAt, placeAt, type Significant } from './significance.js'

/** What a rule needs beside its operands. */
export interface RuleSettings {
  /** Conversion: what the number is multiplied by (or divided by, where `inverse`). */
  readonly factor?: Decimal
  /** Conversion: whether the factor divides. One of the two is always a terminating decimal. */
  readonly inverse?: boolean
  /** Conversion: what is added afterwards, for the degree Celsius. */
  readonly offset?: Decimal
  /** Weighted sum: how often each operand counts. */
  readonly counts?: readonly Decimal[]
  /** Power: the whole exponent. */
  readonly exponent?: number
  /** Rounding: to what, and what a lone 5 does. */
  readonly rounding?: Rounding
}

/** How a calculation is written: a small tree that a report lays out as text, Markdown, LaTeX or HTML. */
export type Expression =
  | { readonly kind: 'name'; readonly operand: number }
  | { readonly kind: 'number'; readonly text: string }
  | { readonly kind: 'sum'; readonly terms: readonly Expression[] }
  | { readonly kind: 'difference'; readonly left: Expression; readonly right: Expression }
  | { readonly kind: 'product'; readonly factors: readonly Expression[] }
  | { readonly kind: 'fraction'; readonly top: Expression; readonly bottom: Expression }
  | { readonly kind: 'power'; readonly base: Expression; readonly exponent: Expression }
  | { readonly kind: 'root'; readonly of: Expression }
  | { readonly kind: 'call'; readonly name: string; readonly of: Expression }

/** One way to make a number from others, said once; every reader of the calculation graph looks here. */
export interface Rule {
  /** The value, from those of the operands. */
  readonly evaluate: (operands: readonly Significant[], settings: RuleSettings) => Decimal
  /** The place of the last significant digit; `null` where the result is exact. */
  readonly place: (operands: readonly Significant[], value: Decimal, settings: RuleSettings) => number | null
  /** Partial derivatives by each operand, for the law of propagation of uncertainty (JCGM 100:2008, 5.1.2). */
  readonly partials: (values: readonly number[], result: number, settings: RuleSettings) => readonly number[]
  /** How it is written out, operands by their position. */
  readonly write: (count: number, settings: RuleSettings) => Expression
}

const zero: Decimal = /* @__PURE__ */ new Decimal(0)
const ln10 = Math.LN10

const name = (operand: number): Expression => ({ kind: 'name', operand })
const number = (text: string): Expression => ({ kind: 'number', text })
const names = (count: number): readonly Expression[] => Array.from({ length: count }, (_, index) => name(index))
const first = (operands: readonly Significant[]): Significant => operands[0] as Significant
const second = (operands: readonly Significant[]): Significant => operands[1] as Significant
const figures = (one: Significant): number | null => (one.place === null ? null : figuresAt(one.value, one.place))

const sum: Rule = {
  evaluate: (operands) => operands.reduce((total, { value }) => total.plus(value), zero),
  place: (operands) => coarsestPlace(operands),
  partials: (values) => values.map(() => 1),
  write: (count) => ({ kind: 'sum', terms: names(count) }),
}

const difference: Rule = {
  evaluate: (operands) => first(operands).value.minus(second(operands).value),
  place: (operands) => coarsestPlace(operands),
  partials: () => [1, -1],
  write: () => ({ kind: 'difference', left: name(0), right: name(1) }),
}

const product: Rule = {
  evaluate: (operands) => first(operands).value.times(second(operands).value),
  place: (operands, value) => fewestFigures(operands, value),
  partials: ([a, b]) => [b as number, a as number],
  write: () => ({ kind: 'product', factors: names(2) }),
}

const quotient: Rule = {
  evaluate: (operands) => first(operands).value.div(second(operands).value),
  place: (operands, value) => (value.isZero() ? placeOfZeroQuotient(operands) : fewestFigures(operands, value)),
  partials: ([, b], result) => [1 / (b as number), -result / (b as number)],
  write: () => ({ kind: 'fraction', top: name(0), bottom: name(1) }),
}

function placeOfZeroQuotient(operands: readonly Significant[]): number | null {
  const { place } = first(operands)
  return place === null ? null : place - second(operands).value.e
}

/** A defined change of unit keeps the figures; a change of zero point keeps the place. */
const conversion: Rule = {
  evaluate: (operands, { factor, inverse, offset }) => {
    const scaled = inverse
      ? first(operands).value.div(factor as Decimal)
      : first(operands).value.times(factor as Decimal)
    return offset === undefined ? scaled : scaled.plus(offset)
  },
  place: (operands, value, { factor, inverse, offset }) => {
    const { place } = first(operands)
    if (place === null || offset !== undefined) return place
    const size = factor as Decimal
    if (size.sd() === 1 && size.eq(`1e${size.e}`)) return place + (inverse ? -size.e : size.e)
    return value.isZero() ? place + (inverse ? -size.e : size.e) : fewestFigures(operands, value)
  },
  partials: (_values, _result, { factor, inverse }) => [inverse ? 1 / Number(factor) : Number(factor)],
  write: (_count, { factor, inverse, offset }) => {
    const scaled: Expression = inverse
      ? { kind: 'fraction', top: name(0), bottom: number(String(factor)) }
      : { kind: 'product', factors: [name(0), number(String(factor))] }
    if (offset === undefined) return scaled
    return { kind: 'sum', terms: [name(0), number(String(offset))] }
  },
}

/** The mean of readings is known to the place of the readings: common practice, no source. */
const mean: Rule = {
  evaluate: (operands) => sum.evaluate(operands, {}).div(operands.length),
  place: (operands) => coarsestPlace(operands),
  partials: (values) => values.map(() => 1 / values.length),
  write: (count) => ({ kind: 'fraction', top: { kind: 'sum', terms: names(count) }, bottom: number(String(count)) }),
}

/** Counted terms, such as the atoms of a formula: n · x is x added n times, so a whole count keeps the place of x. */
const weightedSum: Rule = {
  evaluate: (operands, { counts }) =>
    operands.reduce((total, { value }, index) => total.plus(value.times(countAt(counts, index))), zero),
  place: (operands, _value, { counts }) =>
    coarsestPlace(operands.map((operand, index) => countedTerm(operand, countAt(counts, index)))),
  partials: (values, _result, { counts }) => values.map((_, index) => Number(countAt(counts, index))),
  write: (count, { counts }) => ({
    kind: 'sum',
    terms: names(count).map((term, index) => countedExpression(term, countAt(counts, index))),
  }),
}

function countAt(counts: readonly Decimal[] | undefined, index: number): Decimal {
  return (counts as readonly Decimal[])[index] as Decimal
}

function countedTerm(operand: Significant, count: Decimal): Significant {
  const value = operand.value.times(count)
  if (operand.place === null || count.isInteger()) return { value, place: operand.place }
  return { value, place: fewestFigures([operand], value) }
}

function countedExpression(term: Expression, count: Decimal): Expression {
  return count.eq(1) ? term : { kind: 'product', factors: [number(count.toString()), term] }
}

const power: Rule = {
  evaluate: (operands, { exponent }) => first(operands).value.pow(exponent as number),
  place: (operands, value) => fewestFigures(operands, value),
  partials: ([base], _result, { exponent }) => [
    exponent === 0 ? 0 : (exponent as number) * (base as number) ** ((exponent as number) - 1),
  ],
  write: (_count, { exponent }) => ({ kind: 'power', base: name(0), exponent: number(String(exponent)) }),
}

const squareRoot: Rule = {
  evaluate: (operands) => first(operands).value.sqrt(),
  place: (operands, value) => fewestFigures(operands, value),
  partials: (_values, result) => [1 / (2 * result)],
  write: () => ({ kind: 'root', of: name(0) }),
}

/** As many decimals in the logarithm as figures in the argument: OpenStax, Chemistry 2e, section 14.2 and Appendix B. */
const logarithm: Rule = {
  evaluate: (operands) => first(operands).value.log(10),
  place: (operands) => {
    const count = figures(first(operands))
    return count === null ? null : -count
  },
  partials: ([x]) => [1 / ((x as number) * ln10)],
  write: () => ({ kind: 'call', name: 'log10', of: name(0) }),
}

/** As many figures in the antilogarithm as decimals in the exponent: the same source, read backwards. */
const antilogarithm: Rule = {
  evaluate: (operands) => new Decimal(10).pow(first(operands).value),
  place: (operands, value) => {
    const { place } = first(operands)
    return place === null ? null : placeAt(value, Math.max(0, -place))
  },
  partials: (_values, result) => [result * ln10],
  write: () => ({ kind: 'power', base: number('10'), exponent: name(0) }),
}

/** A rounded number stands for the one it was made from, so its uncertainty is that one's. */
const rounded: Rule = {
  evaluate: (operands, { rounding }) => roundDecimal(first(operands).value, rounding as Rounding),
  place: (operands, _value, { rounding }) => {
    const { value, place } = first(operands)
    const to = roundingPlace(value, rounding as Rounding)
    return place === null ? to : Math.max(place, to)
  },
  partials: () => [1],
  write: () => name(0),
}

/** Every rule. To add one, add a row. */
export const rules = {
  sum,
  difference,
  product,
  quotient,
  conversion,
  mean,
  weightedSum,
  power,
  squareRoot,
  logarithm,
  antilogarithm,
  rounded,
} as const satisfies Readonly<Record<string, Rule>>

/** The name of a rule. */
export type RuleName = keyof typeof rules
