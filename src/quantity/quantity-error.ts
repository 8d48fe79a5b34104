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
  | 'quantity/identity-conflict'
  | 'quantity/no-derivative'
  | 'quantity/bad-correlation'
  | 'quantity/bad-coverage'
  | 'quantity/too-few-readings'
  | 'quantity/bad-change'
  | 'quantity/bad-json'

/**
 * A number, unit or calculation that cannot be.
 *
 * @example
 * ```ts
 * import { quantity } from 'saltwright/quantity'
 *
 * quantity('3,98 g' as string) // throws quantity/decimal-comma
 * quantity('3.98 g').dividedBy(quantity('0.00 mL')) // throws quantity/division-by-zero
 * ```
 */
export class QuantityError extends SaltwrightError<QuantityCode> {}
