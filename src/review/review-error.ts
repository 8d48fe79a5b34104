import { SaltwrightError } from '../errors.js'

/** Everything that stops an answer, a worksheet or a class from being reviewed. */
export type ReviewCode =
  | 'review/not-an-object'
  | 'review/not-a-list'
  | 'review/not-a-plan'
  | 'review/not-an-assessment'
  | 'review/unreadable-answer'
  | 'review/unknown-option'
  | 'review/unreadable'
  | 'review/invalid'
  | 'review/unknown-question'
  | 'review/bad-range'

/**
 * An answer, a worksheet or a class that cannot be reviewed; `problems` lists every mistake of a document.
 *
 * @example
 * ```ts
 * import { exact } from 'saltwright/quantity'
 * import { reviewAnswer } from 'saltwright/review'
 *
 * reviewAnswer(exact('0.0400 mol'), 'a little') // throws review/unreadable-answer
 * ```
 */
export class ReviewError extends SaltwrightError<ReviewCode> {}
