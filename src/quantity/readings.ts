import { Decimal } from '../decimal.js'
import { showFound } from '../errors.js'
import type { Dimension } from './dimension.js'
import type { Naming } from './input.js'
import { readId, readNaming } from './naming.js'
import { convert, inputNode, type Node, nodeLike, nodeOf } from './node.js'
import type { Quantity } from './quantity.js'
import { QuantityError } from './quantity-error.js'
import { type DimensionOf, type QuantityText, quantity } from './read.js'
import { coarsestPlace } from './significance.js'

/** What can be said of a mean of readings beside its numbers. */
export interface ReadingsOptions extends Naming {
  /** A name that stays the same wherever this measurement is saved. */
  readonly id?: string
}

/**
 * The mean of repeated readings of one quantity as one measurement, with the uncertainty that their scatter shows: the experimental
 * standard deviation of the mean, with one degree of freedom less than there are readings (a type A evaluation).
 *
 * @typeParam T - The texts, so that an editor marks an unknown unit.
 * @param readings - Two or more readings, each with its unit; quantities are taken by their numbers.
 * @param options - Names, and an id.
 * @returns The mean in the unit of the first reading, shown to the place of the readings.
 * @throws {@link QuantityError} `quantity/too-few-readings`, `quantity/dimensions-differ`, and the codes of {@link quantity}.
 * @source JCGM 100:2008, 4.2.
 *
 * @example
 * ```ts
 * import { fromReadings, standardUncertainty } from 'saltwright/quantity'
 *
 * const mass = fromReadings(['7.4281 g', '7.4279 g', '7.4284 g', '7.4280 g'], { label: 'crop' })
 * mass.toString() // => '7.4281 g'
 * standardUncertainty(mass).toString() // => '0.00011 g'
 * ```
 */
export function fromReadings<const T extends string>(
  readings: readonly (T & QuantityText<T>)[],
  options?: ReadingsOptions,
): Quantity<DimensionOf<T>>
export function fromReadings<D extends Dimension>(
  readings: readonly Quantity<D>[],
  options?: ReadingsOptions,
): Quantity<D>
export function fromReadings(readings: readonly (string | Quantity)[], options: ReadingsOptions = {}): Quantity {
  const nodes = readNodes(readings)
  const naming = readNaming(options)
  const [first] = nodes as readonly [Node, ...Node[]]
  const values = nodes.map(({ value }) => value)
  const mean = meanOf(values)
  const facts = {
    kind: 'measured',
    writtenPlace: coarsestPlace(nodes) ?? 0,
    ambiguous: false,
    uncertainty: Object.freeze({
      standard: deviation(values, mean).div(new Decimal(values.length).sqrt()),
      distribution: 'normal',
      degreesOfFreedom: values.length - 1,
    }),
    id: readId(options.id),
  } as const
  return inputNode(mean, first.unit, facts, naming)
}

/**
 * How far the means of two quantities vary together that were read at the same time, reading by reading.
 *
 * @param a - The readings of one quantity, as for {@link fromReadings}.
 * @param b - As many readings of the other.
 * @returns The correlation coefficient of the two means, from -1 to 1; zero where one of the two does not scatter.
 * @throws {@link QuantityError} `quantity/too-few-readings`, also where the two are not as many; the codes of {@link fromReadings}.
 * @source JCGM 100:2008, 5.2.3, formulas (14) and (17).
 *
 * @example
 * ```ts
 * import { correlationOfReadings } from 'saltwright/quantity'
 *
 * correlationOfReadings(['5.007', '4.994', '5.005'], ['19.663', '19.639', '19.640']).toFixed(2) // => '0.65'
 * ```
 */
export function correlationOfReadings(a: readonly (string | Quantity)[], b: readonly (string | Quantity)[]): number {
  const [xs, ys] = [readNodes(a).map(({ value }) => value), readNodes(b).map(({ value }) => value)]
  if (xs.length !== ys.length) throw tooFew(`${xs.length} and ${ys.length}`, 'as many readings of both')
  const [xMean, yMean] = [meanOf(xs), meanOf(ys)]
  const products = xs.map((x, index) => x.minus(xMean).times((ys[index] as Decimal).minus(yMean)))
  const scatter = deviation(xs, xMean)
    .times(deviation(ys, yMean))
    .times(xs.length - 1)
  return scatter.isZero() ? 0 : total(products).div(scatter).toNumber()
}

function readNodes(readings: unknown): readonly Node[] {
  if (!Array.isArray(readings) || readings.length < 2) throw tooFew(readings, 'two readings or more')
  const [first, ...rest] = [...readings].map((one) => nodeOf(typeof one === 'string' ? quantity(one) : one))
  const head = first as Node
  return [head, ...rest.map((one) => convert(nodeLike(head, one), head.unit))]
}

function total(values: readonly Decimal[]): Decimal {
  return values.reduce((sum, value) => sum.plus(value), new Decimal(0))
}

function meanOf(values: readonly Decimal[]): Decimal {
  return total(values).div(values.length)
}

/** The experimental standard deviation: JCGM 100:2008, 4.2.2. */
function deviation(values: readonly Decimal[], mean: Decimal): Decimal {
  const squares = values.map((value) => value.minus(mean).pow(2))
  return total(squares)
    .div(values.length - 1)
    .sqrt()
}

function tooFew(found: unknown, expected: string): QuantityError {
  return new QuantityError({
    code: 'quantity/too-few-readings',
    message: `${showFound(found)} are not readings of which a mean and its scatter can be taken.`,
    found: showFound(found),
    expected,
  })
}
