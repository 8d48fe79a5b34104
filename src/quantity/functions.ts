import { showFound } from '../errors.js'
import { convert, derivedNode, type Node, nodeIn } from './node.js'
import type { Quantity } from './quantity.js'
import { QuantityError } from './quantity-error.js'

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
 * The natural logarithm of a ratio.
 *
 * @param of - A ratio above zero.
 * @returns The logarithm, with as many decimals as the argument has significant figures.
 * @throws {@link QuantityError} `quantity/logarithm-of-non-positive`, `quantity/wrong-dimension`.
 * @source Figures as for {@link logarithm}.
 *
 * @example
 * ```ts
 * import { naturalLogarithm, quantity } from 'saltwright/quantity'
 *
 * naturalLogarithm(quantity('2.00')).toString() // => '0.693'
 * ```
 */
export function naturalLogarithm(of: Quantity<'ratio'>): Quantity<'ratio'> {
  const node = ratioNode(of)
  if (!node.value.gt(0))
    throw outsideDomain('quantity/logarithm-of-non-positive', 'logarithm', node, 'a number above zero')
  return derivedNode('naturalLogarithm', [node], '1') as Quantity as Quantity<'ratio'>
}

/**
 * e to the power of a ratio: the inverse of {@link naturalLogarithm}.
 *
 * @param exponent - A ratio between -322 and 322.
 * @returns The exponential, with as many significant figures as the exponent has decimals.
 * @throws {@link QuantityError} `quantity/out-of-range`, `quantity/wrong-dimension`.
 * @source Figures as for {@link antilogarithm}.
 *
 * @example
 * ```ts
 * import { exponential, quantity } from 'saltwright/quantity'
 *
 * exponential(quantity('0.693')).toString() // => '2.00'
 * ```
 */
export function exponential(exponent: Quantity<'ratio'>): Quantity<'ratio'> {
  const node = ratioNode(exponent)
  if (node.value.abs().gt(322)) throw outsideDomain('quantity/out-of-range', 'exponential', node, '-322 to 322')
  return derivedNode('exponential', [node], '1') as Quantity as Quantity<'ratio'>
}

/**
 * The sine of an angle.
 *
 * @param angle - In radians, as a ratio; no more than a million either way.
 * @returns The sine, with the figures of the angle.
 * @throws {@link QuantityError} `quantity/out-of-range`, `quantity/wrong-dimension`.
 * @source Figures: common practice, no source.
 *
 * @example
 * ```ts
 * import { quantity, sine } from 'saltwright/quantity'
 *
 * sine(quantity('0.5236')).toString() // => '0.5000'
 * ```
 */
export function sine(angle: Quantity<'ratio'>): Quantity<'ratio'> {
  return derivedNode('sine', [angleNode(angle)], '1') as Quantity as Quantity<'ratio'>
}

/**
 * The cosine of an angle.
 *
 * @param angle - In radians, as a ratio; no more than a million either way.
 * @returns The cosine, with the figures of the angle.
 * @throws {@link QuantityError} `quantity/out-of-range`, `quantity/wrong-dimension`.
 * @source Figures: common practice, no source.
 *
 * @example
 * ```ts
 * import { cosine, quantity } from 'saltwright/quantity'
 *
 * cosine(quantity('1.0472')).toString() // => '0.50000'
 * ```
 */
export function cosine(angle: Quantity<'ratio'>): Quantity<'ratio'> {
  return derivedNode('cosine', [angleNode(angle)], '1') as Quantity as Quantity<'ratio'>
}

function angleNode(angle: unknown): Node {
  const node = ratioNode(angle)
  if (node.value.abs().gt(1e6)) throw outsideDomain('quantity/out-of-range', 'sine or cosine', node, '-1e6 to 1e6')
  return node
}

function ratioNode(q: unknown): Node {
  return convert(nodeIn(q, 'ratio'), '1')
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
