import type { ErrorJSON } from '../errors.js'
import type { Assessment, Plan } from '../preparation/index.js'
import type { FilledWorksheet, Worksheet } from './worksheet.js'
import type { AnswerStatus } from './worksheet-review.js'

/** The worksheet of one bench, with the plan at its scale. */
export interface BenchWorksheet {
  /** Whose it is; as the worksheet says unless given. */
  readonly bench?: string | undefined
  /** The plan of the bench, or the questions that were made from it. */
  readonly plan: Plan | Worksheet
  /** What it obtained. */
  readonly assessment?: Assessment | undefined
  /** Its answers. */
  readonly filled: FilledWorksheet
}

/** One row of the table: how a bench did. */
export interface BenchResult {
  /** Whose. */
  readonly bench: string
  /** How each answer stands, by the name of its question. */
  readonly statuses: Readonly<Record<string, AnswerStatus>>
  /** The slips that fit each wrong answer best, by the name of its question. */
  readonly slips: Readonly<Record<string, readonly string[]>>
  /** How many answers are right, those with a remark on digits and those carried forward included. */
  readonly notFaulted: number
  /** How many are wrong, or have a wrong unit. */
  readonly faulted: number
}

/** How a class did on one question. */
export interface QuestionResult {
  /** Its name. */
  readonly question: string
  /** What was asked. */
  readonly asks: string
  /** How many answers stand how. */
  readonly counts: Readonly<Partial<Record<AnswerStatus, number>>>
}

/** How often a slip fits in a class. */
export interface SlipCount {
  /** Its name. */
  readonly slip: string
  /** What was done. */
  readonly did: string
  /** What to look at. */
  readonly advice: string
  /** In how many answers it is among the slips that fit best. */
  readonly answers: number
  /** In how many of these nothing else fits. */
  readonly alone: number
  /** The same with each answer shared out among the slips that cannot be told apart: what the order goes by. */
  readonly share: number
}

/** A worksheet that could not be read. */
export interface UnreadWorksheet {
  /** Which, counted from 0. */
  readonly index: number
  /** Why. */
  readonly error: ErrorJSON
}

/** The review of a class. `JSON.stringify` gives the whole of it. */
export interface ClassReview {
  /** `saltwright/class-review@1`. */
  readonly format: 'saltwright/class-review@1'
  /** Every bench whose worksheet could be read, in order. */
  readonly benches: readonly BenchResult[]
  /** Every question, in order. */
  readonly questions: readonly QuestionResult[]
  /** The slips that fit, the most common first. */
  readonly slips: readonly SlipCount[]
  /** The most common one; absent where no answer is explained by a slip. */
  readonly mostCommon: SlipCount | undefined
  /** Worksheets that could not be read. */
  readonly unread: readonly UnreadWorksheet[]
}
