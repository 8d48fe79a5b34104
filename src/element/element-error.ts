import { SaltwrightError } from '../errors.js'

/** What can be wrong with an element symbol or a set of atomic weights. */
export type ElementCode =
  | 'element/unknown-symbol'
  | 'element/no-standard-weight'
  | 'element/not-in-set'
  | 'element/unknown-set'
  | 'element/invalid-set'
  | 'element/not-text'
  | 'element/bad-weight'
  | 'element/bad-bound'

/**
 * An element that is not one, or an atomic weight that does not exist or cannot be read.
 *
 * @example
 * ```ts
 * import { atomicWeight } from 'saltwright/element'
 *
 * atomicWeight('ZN') // throws element/unknown-symbol
 * atomicWeight('Tc') // throws element/no-standard-weight
 * ```
 */
export class ElementError extends SaltwrightError<ElementCode> {}
