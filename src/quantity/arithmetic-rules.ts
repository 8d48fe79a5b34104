import { type Decimal, mostDigits, scaledDecimal, smallWhole, tenMillionth, tenMillionths } from '../decimal.js'
import { type Combination, productOf, quotientOf } from './combine.js'
import type { Expression, Rule } from './rule.js'
import { allAlike, first, name, names, number, second } from './rule-parts.js'
import { coarsest, coarsestPlace, fewestFigures, type Significant } from './significance.js'
import type { Unit } from './unit.js'

/** Terms added up, all in one unit. */
export const sum: Rule = {
  evaluate: (operands) => added(operands, ({ value }) => value),
  place: (operands) => coarsestPlace(operands),
  partials: (values) => values.map(() => 1),
  write: (count) => ({ kind: 'sum', terms: names(count) }),
  fits: allAlike,
}

function added(operands: readonly Significant[], term: (operand: Significant, index: number) => Decimal): Decimal {
  let total = term(first(operands), 0)
  for (let index = 1; index < operands.length; index += 1)
    total = total.plus(term(operands[index] as Significant, index))
  return total
}

/** The first less the second, in one unit. */
export const difference: Rule = {
  evaluate: (operands) => first(operands).value.minus(second(operands).value),
  place: (operands) => coarsestPlace(operands),
  partials: () => [1, -1],
  write: () => ({ kind: 'difference', left: name(0), right: name(1) }),
  fits: (operands, result) => operands.length === 2 && allAlike(operands, result),
}

/** Two factors whose units go together. */
export const product: Rule = {
  evaluate: (operands) => first(operands).value.times(second(operands).value),
  place: (operands, value) => fewestFigures(operands, value),
  partials: ([a, b]) => [b as number, a as number],
  write: () => ({ kind: 'product', factors: names(2) }),
  fits: (operands, result) => combines(productOf, operands, result),
}

/** The first by the second, whose units go together. */
export const quotient: Rule = {
  evaluate: (operands) => first(operands).value.div(second(operands).value),
  place: (operands, value) => (value.isZero() ? placeOfZeroQuotient(operands) : fewestFigures(operands, value)),
  partials: ([, b], result) => [1 / (b as number), -result / (b as number)],
  write: () => ({ kind: 'fraction', top: name(0), bottom: name(1) }),
  fits: (operands, result) => combines(quotientOf, operands, result),
}

function placeOfZeroQuotient(operands: readonly Significant[]): number | null {
  const { place } = first(operands)
  return place === null ? null : place - second(operands).value.e
}

type Combine = (left: Unit, right: Unit) => Combination | undefined

function combines(combine: Combine, operands: readonly Unit[], result: Unit): boolean {
  const [left, right, ...rest] = operands
  if (left === undefined || right === undefined || rest.length > 0) return false
  const plan = combine(left, right)
  return plan !== undefined && plan.left === left && plan.right === right && plan.unit === result
}

/** The mean of readings is known to the place of the readings: common practice, no source. */
export const mean: Rule = {
  evaluate: (operands) => sum.evaluate(operands, {}).div(operands.length),
  place: (operands) => coarsestPlace(operands),
  partials: (values) => values.map(() => 1 / values.length),
  write: (count) => ({ kind: 'fraction', top: { kind: 'sum', terms: names(count) }, bottom: number(String(count)) }),
  fits: allAlike,
}

/** Counted terms, such as the atoms of a formula: n · x is x added n times, so a count of one or more keeps the place of x. */
export const weightedSum: Rule = {
  evaluate: (operands, { counts }) =>
    wholeSum(operands, counts) ?? added(operands, ({ value }, index) => value.times(countAt(counts, index))),
  place: (operands, _value, { counts }) =>
    coarsest(operands.map((operand, index) => countedPlace(operand, countAt(counts, index)))),
  partials: (values, _result, { counts }) => values.map((_, index) => numberOf(countAt(counts, index))),
  write: (count, { counts }) => ({
    kind: 'sum',
    terms: names(count).map((term, index) => countedExpression(term, countAt(counts, index))),
  }),
  fits: (operands, result, { counts }) => allAlike(operands, result) && counts?.length === operands.length,
}

/** Largest size of a sum of which a double is sure to hold every digit. */
const largestWhole = 10 ** mostDigits

/**
 * The counted sum in whole ten-millionths, which a double holds exactly: for a molar mass, ten times as fast as a sum of decimals. Undefined
 * where numbers are finer or larger than that, or cancel.
 */
function wholeSum(operands: readonly Significant[], counts: readonly Decimal[] | undefined): Decimal | undefined {
  let [total, size] = [0, 0]
  for (let index = 0; index < operands.length; index += 1) {
    const count = smallWhole(countAt(counts, index))
    const whole = tenMillionths((operands[index] as Significant).value)
    if (count === undefined || whole === undefined) return undefined
    total += count * whole
    size += Math.abs(count * whole)
  }
  return total === 0 || size >= largestWhole ? undefined : scaledDecimal(total, tenMillionth)
}

function countAt(counts: readonly Decimal[] | undefined, index: number): Decimal {
  return (counts as readonly Decimal[])[index] as Decimal
}

/** As a double; by way of text only where there is no shorter one. */
function numberOf(count: Decimal): number {
  return smallWhole(count) ?? count.toNumber()
}

function countedPlace(operand: Significant, count: Decimal): number | null {
  if (operand.place === null || count.e >= 0) return operand.place
  return fewestFigures([operand], operand.value.times(count))
}

function countedExpression(term: Expression, count: Decimal): Expression {
  return count.eq(1) ? term : { kind: 'product', factors: [number(count.toString()), term] }
}
