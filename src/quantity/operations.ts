import { Decimal } from '../decimal.js'
import { showFound } from '../errors.js'
import { type Dimension, isDimension } from './dimension.js'
import { convert, derivedNode, type Node, nodeIn, nodeLike, nodeOf } from './node.js'
import type { Quantity } from './quantity.js'
import { QuantityError } from './quantity-error.js'
import type { Unit } from './unit.js'

/**
 * The sum of any number of quantities of one dimension, in the unit of the first.
 *
 * @typeParam D - Their dimension.
 * @param terms - One or more quantities.
 * @returns Their sum; the coarsest last place of the terms is its last significant place.
 * @throws {@link QuantityError} `quantity/nothing-to-average` for an empty list, `quantity/dimensions-differ`,
 *   `quantity/not-a-quantity`.
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
 * @throws {@link QuantityError} `quantity/nothing-to-average` for an empty list, `quantity/dimensions-differ`,
 *   `quantity/not-a-quantity`.
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

function joined<D extends Dimension>(rule: 'sum' | 'mean', list: readonly Quantity<D>[]): Quantity<D> {
  const nodes = alike(list)
  const { unit } = nodes[0]
  const to = unit === 'degC' && rule === 'sum' ? 'K' : unit // the mean of temperatures is one, their sum is not
  return derivedNode(rule, converted(nodes, to), to) as Quantity as Quantity<D>
}

type Nodes = readonly [Node, ...Node[]]

/** The nodes of a list that is not empty, all of one dimension. */
function alike(list: unknown): Nodes {
  if (!Array.isArray(list)) throw notAList(list)
  if (list.length === 0) throw nothing()
  const first = nodeOf(list[0])
  const nodes: [Node, ...Node[]] = [first]
  for (let index = 1; index < list.length; index += 1) nodes.push(nodeLike(first, list[index]))
  return nodes
}

function converted(nodes: Nodes, unit: Unit): readonly Node[] {
  return nodes.every((node) => node.unit === unit) ? nodes : nodes.map((node) => convert(node, unit))
}

/**
 * Counted terms added up, such as the atomic weights of a formula: the sum of n · x.
 *
 * @typeParam D - The dimension of the terms.
 * @param terms - Each quantity with how often it counts; counts are exact.
 * @returns The sum. A count of one or more keeps the last significant place of its term, as adding it n times does.
 * @throws {@link QuantityError} `quantity/nothing-to-average` for an empty list, `quantity/dimensions-differ`,
 *   `quantity/not-a-quantity`.
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
  if (!Array.isArray(terms)) throw notAList(terms)
  const counts = Object.freeze(terms.map((term) => readCount(term?.times)))
  const nodes = alike(terms.map(({ of }) => of))
  const unit = nodes[0].unit === 'degC' ? 'K' : nodes[0].unit
  return derivedNode('weightedSum', converted(nodes, unit), unit, { counts }) as Quantity as Quantity<D>
}

/** Largest power of ten of a count. */
const largestCount = 15

/** A count of one's own: a decimal may be changed by whoever handed it over, unless it is frozen. */
function readCount(times: unknown): Decimal {
  if (typeof times !== 'number' && !Decimal.isDecimal(times)) throw notACount(times)
  const count = times instanceof Decimal && Object.isFrozen(times) ? times : new Decimal(times)
  if (!(count.e <= largestCount)) throw notACount(times)
  return count
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
  return nodeIn(q, knownDimension(dimension)) as Quantity as Quantity<D>
}

function nothing(): QuantityError {
  return new QuantityError({
    code: 'quantity/nothing-to-average',
    message: 'There is nothing to add up.',
    found: 'an empty list',
    expected: 'at least one quantity',
  })
}

function notAList(found: unknown): QuantityError {
  return new QuantityError({
    code: 'quantity/not-a-quantity',
    message: `${showFound(found)} is not a list of quantities.`,
    found: showFound(found),
    expected: 'an array of quantities',
  })
}

function notACount(found: unknown): QuantityError {
  return new QuantityError({
    code: 'quantity/not-a-count',
    message: `${showFound(found)} does not say how often a term counts.`,
    found: showFound(found),
    expected: 'a finite number',
  })
}

/** A dimension that exists: names such as `constructor` come out of objects, too. */
function knownDimension(dimension: unknown): Dimension {
  if (isDimension(dimension)) return dimension
  throw new QuantityError({
    code: 'quantity/unknown-option',
    message: `${showFound(dimension)} is not a dimension.`,
    found: showFound(dimension),
    expected: 'a dimension such as "mass" or "amount"',
  })
}
