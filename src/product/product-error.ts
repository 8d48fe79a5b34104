import { SaltwrightError } from '../errors.js'

/** Everything that stops a product from being weighed, judged or assayed. */
export type ProductCode =
  | 'product/not-an-object'
  | 'product/not-a-list'
  | 'product/not-text'
  | 'product/nothing-weighed'
  | 'product/too-few-weighings'
  | 'product/unknown-criterion'
  | 'product/unknown-option'
  | 'product/mass-taken-needed'
  | 'product/not-positive'
  | 'product/no-mole-ratio'
  | 'product/unreadable-ratio'
  | 'product/cannot-tell-apart'
  | 'product/unknown-conditions'

/**
 * Weighings, yields or assays that say nothing.
 *
 * @example
 * ```ts
 * import { netMass } from 'saltwright/product'
 *
 * netMass([]) // throws product/nothing-weighed
 * ```
 */
export class ProductError extends SaltwrightError<ProductCode> {}
