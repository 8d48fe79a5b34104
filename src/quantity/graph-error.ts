import type { Decimal } from '../decimal.js'
import { showFound } from '../errors.js'
import { type Dimension, nameDimension } from './dimension.js'
import { QuantityError } from './quantity-error.js'
import { unitsOf } from './unit.js'

/** What an error says of a quantity. */
interface Told {
  readonly dimension: Dimension
  toString(): string
}

/** The largest power of ten of a result; derivatives of what lies within still fit into a double. */
export const largestResult = 140

/** A product or quotient that is no quantity. */
export function noSuch(what: 'product' | 'quotient', left: Told, right: Told): QuantityError {
  const words = what === 'product' ? 'times' : 'divided by'
  return new QuantityError({
    code: what === 'product' ? 'quantity/no-such-product' : 'quantity/no-such-quotient',
    message: `${nameDimension(left.dimension)} ${words} ${nameDimension(right.dimension)} is no quantity known here.`,
    found: `${left.toString()} ${words} ${right.toString()}`,
    expected: 'dimensions that go together, such as a mass and a molar mass',
  })
}

/** A divisor of zero. */
export function divisionByZero(right: Told): QuantityError {
  return new QuantityError({
    code: 'quantity/division-by-zero',
    message: 'A number is divided by zero.',
    found: right.toString(),
    expected: 'a divisor other than zero',
  })
}

/** A result too large or too small. */
export function outOfRange(value: Decimal | number): QuantityError {
  return new QuantityError({
    code: 'quantity/out-of-range',
    message: `A result has a power of ten beyond ${largestResult}.`,
    found: value.toString(),
    expected: `a power of ten between -${largestResult} and ${largestResult}`,
  })
}

/** A sum or comparison of unlike quantities. */
export function dimensionsDiffer(left: Told, right: Told): QuantityError {
  return new QuantityError({
    code: 'quantity/dimensions-differ',
    message: `${nameDimension(left.dimension)} and ${nameDimension(right.dimension)} neither add nor compare.`,
    found: right.toString(),
    expected: `${nameDimension(left.dimension)}, in ${unitsOf(left.dimension).join(', ')}`,
  })
}

/** A quantity of another dimension. */
export function wrongDimension(node: Told, dimension: Dimension): QuantityError {
  return new QuantityError({
    code: 'quantity/wrong-dimension',
    message: `${node.toString()} is ${nameDimension(node.dimension)}, not ${nameDimension(dimension)}.`,
    found: node.toString(),
    expected: nameDimension(dimension),
  })
}

/** Whatever is not a quantity. */
export function notAQuantity(found: unknown): QuantityError {
  return new QuantityError({
    code: 'quantity/not-a-quantity',
    message: `${showFound(found)} is not a quantity.`,
    found: showFound(found),
    expected: 'a quantity: quantity("3.977 g") or exact("2")',
  })
}

/** A number compared or calculated with by an operator of JavaScript. */
export function comparedWithOperator(node: Told): QuantityError {
  return new QuantityError({
    code: 'quantity/compared-with-operator',
    message: 'Operators such as < and * do not know units; use compare, plus, minus, times or dividedBy.',
    found: node.toString(),
    expected: 'a method: a.compare(b) < 0, a.times(b)',
  })
}
