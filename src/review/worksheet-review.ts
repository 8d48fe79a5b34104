import type { ErrorJSON } from '../errors.js'
import type { Quantity } from '../quantity/index.js'
import type { Review } from './review.js'

/**
 * How an answer of a worksheet stands. Right. Rounding and unit: the value or the number is right, its digits or its unit are not. Carried
 * forward: it follows correctly from earlier answers of the same worksheet, so only those are faulted. Wrong. Missing. Unreadable.
 */
export type AnswerStatus = 'right' | 'rounding' | 'unit' | 'carried forward' | 'wrong' | 'missing' | 'unreadable'

/** The review of one answer of a worksheet. */
export interface AnswerReview {
  /** The name of its question. */
  readonly question: string
  /** What was asked. */
  readonly asks: string
  /** What was answered, as written; absent where nothing was. */
  readonly stated: string | undefined
  /** How it stands. */
  readonly status: AnswerStatus
  /** Names of the questions whose answers it was reckoned on with, where those differ from the right ones. */
  readonly follows: readonly string[]
  /** The right answer to a number, unrounded, whatever was answered before; absent where there is no number to review. */
  readonly right: Quantity | undefined
  /** The review of a number, against what it should be after `follows`; absent where there is no number to review. */
  readonly review: Review | undefined
  /** Why it cannot be read; absent where it can. */
  readonly error: ErrorJSON | undefined
  /** What to look at. */
  readonly advice: string
}

/** The review of a worksheet. `JSON.stringify` gives the whole of it. */
export interface WorksheetReview {
  /** `saltwright/worksheet-review@1`. */
  readonly format: 'saltwright/worksheet-review@1'
  /** Whose it is. */
  readonly bench: string | undefined
  /** What was prepared. */
  readonly title: string
  /** Every question with its answer, in order. */
  readonly answers: readonly AnswerReview[]
}
