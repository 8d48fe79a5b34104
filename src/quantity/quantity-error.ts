import { SaltwrightError } from '../errors.js'

/** Everything that can be wrong with a number, a unit or a calculation. */
export type QuantityCode =
  | 'quantity/not-text'
  | 'quantity/empty'
  | 'quantity/not-a-numeral'
  | 'quantity/decimal-comma'
  | 'quantity/too-long'
  | 'quantity/exponent-out-of-range'
  | 'quantity/ambiguous-zeros'
  | 'quantity/unknown-unit'
  | 'quantity/javascript-number'
  | 'quantity/not-a-quantity'
  | 'quantity/dimensions-differ'
  | 'quantity/no-such-product'
  | 'quantity/no-such-quotient'
  | 'quantity/wrong-dimension'
  | 'quantity/division-by-zero'
  | 'quantity/out-of-range'
  | 'quantity/logarithm-of-non-positive'
  | 'quantity/not-a-count'
  | 'quantity/not-a-whole-power'
  | 'quantity/root-of-negative'
  | 'quantity/nothing-to-average'
  | 'quantity/figures-out-of-range'
  | 'quantity/unknown-option'
  | 'quantity/compared-with-operator'
  | 'quantity/bad-uncertainty'
  | 'quantity/uncertainty-not-stated'

/** A number, unit or calculation that cannot be. */
export class QuantityError extends SaltwrightError<QuantityCode> {}
