import { Decimal } from '../decimal.js'
import { showFound } from '../errors.js'
import { type Dimension, nameDimension } from './dimension.js'
import { convert, derivedNode, type Node, nodeOf } from './node.js'
import type { Quantity } from './quantity.js'
import { QuantityError } from './quantity-error.js'
import type { RuleName } from './rules.js'

/**
 * The sum of any number of quantities of one dimension, in the unit of the first.
 *
 * @typeParam D - Their dimension.
 * @param terms - One or more quantities.
 * @returns Their sum; the coarsest last place of the terms is its last significant place.
 * @throws {@link QuantityError} `quantity/nothing-to-average` for an empty list, `quantity/dimensions-differ`.
 * @source OpenStax, Chemistry 2e, section 1.5.
 *
 * @example
 * ```ts
 * import { quantity, sum } from 'saltwright/quantity'
 *
 * sum([quantity('1.0023 g'), quantity('4.383 g')]).toString() // => '5.385 g'
 * ```
 */
export function sum<D extends Dimension>(terms: readonly Quantity<D>[]): Quantity<D> {
  return joined('sum', terms)
}

/**
 * The arithmetic mean of readings of one quantity, in the unit of the first.
 *
 * @typeParam D - Their dimension.
 * @param readings - One or more quantities.
 * @returns Their mean, shown to the place of the readings.
 * @throws {@link QuantityError} `quantity/nothing-to-average` for an empty list, `quantity/dimensions-differ`.
 * @source The place of the readings is kept: common practice, no source.
 *
 * @example
 * ```ts
 * import { mean, quantity } from 'saltwright/quantity'
 *
 * mean([quantity('0.2628 g'), quantity('0.2623 g'), quantity('0.2626 g')]).toString() // => '0.2626 g'
 * ```
 */
export function mean<D extends Dimension>(readings: readonly Quantity<D>[]): Quantity<D> {
  return joined('mean', readings)
}

function joined<D extends Dimension>(rule: RuleName & ('sum' | 'mean'), list: readonly Quantity<D>[]): Quantity<D> {
  const [first, ...rest] = list.map(nodeOf)
  if (first === undefined) throw nothing()
  const unit = first.unit === 'degC' ? 'K' : first.unit
  const operands = [first, ...rest].map((node) => convert(expectNode(node, first.dimension), unit))
  return derivedNode(rule, operands, unit) as Quantity as Quantity<D>
}

/**
 * Counted terms added up, such as the atomic weights of a formula: the sum of n · x.
 *
 * @typeParam D - The dimension of the terms.
 * @param terms - Each quantity with how often it counts; counts are exact.
 * @returns The sum. A whole count keeps the last significant place of its term, as adding it n times does.
 * @throws {@link QuantityError} `quantity/nothing-to-average` for an empty list, `quantity/dimensions-differ`.
 * @source Sums by place: OpenStax, Chemistry 2e, section 1.5.
 *
 * @example
 * ```ts
 * import { constant, weightedSum } from 'saltwright/quantity'
 *
 * const water = weightedSum([
 *   { times: 2, of: constant('1.0080 g/mol') },
 *   { times: 1, of: constant('15.999 g/mol') },
 * ])
 * water.toString() // => '18.015 g/mol'
 * ```
 */
export function weightedSum<D extends Dimension>(
  terms: readonly { readonly times: number | Decimal; readonly of: Quantity<D> }[],
): Quantity<D> {
  const nodes = terms.map(({ of }) => nodeOf(of))
  const [first] = nodes
  if (first === undefined) throw nothing()
  const operands = nodes.map((node) => convert(expectNode(node, first.dimension), first.unit))
  const counts = Object.freeze(terms.map(({ times }) => new Decimal(times)))
  return derivedNode('weightedSum', operands, first.unit, { counts }) as Quantity as Quantity<D>
}

/**
 * A ratio to a whole power.
 *
 * @param base - A ratio.
 * @param exponent - A whole number from -20 to 20.
 * @returns The power, with the figures of the base.
 * @throws {@link QuantityError} `quantity/not-a-whole-power`, `quantity/wrong-dimension`, `quantity/division-by-zero`.
 * @source Powers keep figures as products do: OpenStax, Chemistry 2e, section 1.5.
 *
 * @example
 * ```ts
 * import { power, quantity } from 'saltwright/quantity'
 *
 * power(quantity('1.20'), 2).toString() // => '1.44'
 * ```
 */
export function power(base: Quantity<'ratio'>, exponent: number): Quantity<'ratio'> {
  const node = ratioNode(base)
  if (!Number.isInteger(exponent) || Math.abs(exponent) > 20) throw notWholePower(exponent)
  if (node.value.isZero() && exponent < 0) throw zeroToNegative(node)
  return derivedNode('power', [node], '1', { exponent }) as Quantity as Quantity<'ratio'>
}

/**
 * The square root of a ratio.
 *
 * @param of - A ratio of zero or more.
 * @returns The root, with the figures of the argument.
 * @throws {@link QuantityError} `quantity/root-of-negative`, `quantity/wrong-dimension`.
 * @source OpenStax, Chemistry 2e, Appendix B, square roots.
 *
 * @example
 * ```ts
 * import { quantity, squareRoot } from 'saltwright/quantity'
 *
 * squareRoot(quantity('2.25')).toString() // => '1.50'
 * ```
 */
export function squareRoot(of: Quantity<'ratio'>): Quantity<'ratio'> {
  const node = ratioNode(of)
  if (node.value.lt(0)) throw outsideDomain('quantity/root-of-negative', 'square root', node, 'zero or more')
  return derivedNode('squareRoot', [node], '1') as Quantity as Quantity<'ratio'>
}

/**
 * The decimal logarithm of a ratio.
 *
 * @param of - A ratio above zero.
 * @returns The logarithm, with as many decimals as the argument has significant figures.
 * @throws {@link QuantityError} `quantity/logarithm-of-non-positive`, `quantity/wrong-dimension`.
 * @source OpenStax, Chemistry 2e, section 14.2 and Appendix B.
 *
 * @example
 * ```ts
 * import { logarithm, quantity } from 'saltwright/quantity'
 *
 * logarithm(quantity('1.0e-7')).toString() // => '-7.00'
 * ```
 */
export function logarithm(of: Quantity<'ratio'>): Quantity<'ratio'> {
  const node = ratioNode(of)
  if (!node.value.gt(0))
    throw outsideDomain('quantity/logarithm-of-non-positive', 'logarithm', node, 'a number above zero')
  return derivedNode('logarithm', [node], '1') as Quantity as Quantity<'ratio'>
}

/**
 * Ten to the power of a ratio: the inverse of {@link logarithm}.
 *
 * @param exponent - A ratio between -140 and 140.
 * @returns The antilogarithm, with as many significant figures as the exponent has decimals.
 * @throws {@link QuantityError} `quantity/out-of-range`, `quantity/wrong-dimension`.
 * @source OpenStax, Chemistry 2e, section 14.2 and Appendix B.
 *
 * @example
 * ```ts
 * import { antilogarithm, quantity } from 'saltwright/quantity'
 *
 * antilogarithm(quantity('-6.52')).toString() // => '3.0e-7'
 * ```
 */
export function antilogarithm(exponent: Quantity<'ratio'>): Quantity<'ratio'> {
  const node = ratioNode(exponent)
  if (node.value.abs().gt(140)) throw outsideDomain('quantity/out-of-range', 'antilogarithm', node, '-140 to 140')
  return derivedNode('antilogarithm', [node], '1') as Quantity as Quantity<'ratio'>
}

/**
 * Makes sure of a dimension, where a quantity came from outside or from text that was not literal.
 *
 * @typeParam D - The dimension.
 * @param q - Any quantity.
 * @param dimension - What it should be.
 * @returns The same quantity, typed.
 * @throws {@link QuantityError} `quantity/wrong-dimension`, `quantity/not-a-quantity`.
 *
 * @example
 * ```ts
 * import { asDimension, quantity } from 'saltwright/quantity'
 *
 * const typed: string = '2.50 g'
 * asDimension(quantity(typed), 'mass').plus(quantity('0.25 g')).toString() // => '2.75 g'
 * asDimension(quantity(typed), 'amount') // throws quantity/wrong-dimension
 * ```
 */
export function asDimension<D extends Dimension>(q: Quantity, dimension: D): Quantity<D> {
  return expectNode(nodeOf(q), dimension) as Quantity as Quantity<D>
}

function expectNode(node: Node, dimension: Dimension): Node {
  if (node.dimension === dimension) return node
  throw new QuantityError({
    code: 'quantity/wrong-dimension',
    message: `${node.toString()} is ${nameDimension(node.dimension)}, not ${nameDimension(dimension)}.`,
    found: node.toString(),
    expected: nameDimension(dimension),
  })
}

function ratioNode(q: Quantity): Node {
  return convert(expectNode(nodeOf(q), 'ratio'), '1')
}

function nothing(): QuantityError {
  return new QuantityError({
    code: 'quantity/nothing-to-average',
    message: 'There is nothing to add up.',
    found: 'an empty list',
    expected: 'at least one quantity',
  })
}

function notWholePower(exponent: unknown): QuantityError {
  return new QuantityError({
    code: 'quantity/not-a-whole-power',
    message: `${showFound(exponent)} is not a whole exponent from -20 to 20.`,
    found: showFound(exponent),
    expected: 'a whole number from -20 to 20',
  })
}

function zeroToNegative(node: Node): QuantityError {
  return new QuantityError({
    code: 'quantity/division-by-zero',
    message: 'Zero has no negative power.',
    found: node.toString(),
    expected: 'a base other than zero',
  })
}

function outsideDomain(
  code: 'quantity/root-of-negative' | 'quantity/logarithm-of-non-positive' | 'quantity/out-of-range',
  what: string,
  node: Node,
  expected: string,
): QuantityError {
  return new QuantityError({
    code,
    message: `${node.toString()} has no ${what} here.`,
    found: node.toString(),
    expected,
  })
}
