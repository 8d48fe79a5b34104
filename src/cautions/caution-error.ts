import { SaltwrightError } from '../errors.js'

/** Everything that stops cautions from being derived. */
export type CautionCode =
  | 'cautions/not-an-object'
  | 'cautions/not-text'
  | 'cautions/not-a-list'
  | 'cautions/unknown-choice'

/**
 * Facts of a plan that cannot be read.
 *
 * @example
 * ```ts
 * import { cautionsFor } from 'saltwright/cautions'
 *
 * const typed: string = 'juggling'
 * cautionsFor({ operations: [typed as 'boil'] }) // throws cautions/unknown-choice
 * ```
 */
export class CautionError extends SaltwrightError<CautionCode> {}
