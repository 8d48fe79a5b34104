/**
 * Judging stated answers: whether they agree, whether only digits or units differ, and which slips would explain them.
 *
 * @module review
 */
export type { RequiredFigures, RoundingRemark, RoundingRemarkKind } from './agreement.js'
export type { Calculation } from './calculation.js'
export type { Candidate, CandidateGroup } from './candidate.js'
export type {
  BenchResult,
  BenchWorksheet,
  ClassReview,
  QuestionResult,
  SlipCount,
  UnreadWorksheet,
} from './class-review.js'
export type { ReactantAtHand, ReviewContext, SlipContext } from './context.js'
export type { UnitRemark } from './other-unit.js'
export { contextOf, type PlanContextOptions } from './plan-context.js'
export { questionSet } from './question-set.js'
export type {
  Distractor,
  GivenNumber,
  NumericAnswer,
  PosedQuestion,
  PosedStage,
  QuestionSet,
  QuestionSetOptions,
  QuestionVariant,
  Range,
} from './question-set-type.js'
export type { Replacement } from './replacement.js'
export type { Review, Verdict } from './review.js'
export { answerOf, type ReviewOptions, reviewAnswer } from './review-answer.js'
export { type BenchReview, type ClassReviewOptions, reviewBenches, reviewClass } from './review-class.js'
export { type ReviewCode, ReviewError } from './review-error.js'
export { reviewWorksheet, type WorksheetReviewOptions } from './review-worksheet.js'
export type { Evidence, Slip, SlipChange, SlipGroup } from './slip.js'
export { slips } from './slips.js'
export type { Fit } from './target.js'
export type {
  ChoiceQuestion,
  FilledWorksheet,
  QuantityQuestion,
  Question,
  Worksheet,
  WorksheetOptions,
} from './worksheet.js'
export { worksheetOf } from './worksheet-of.js'
export type { AnswerReview, AnswerStatus, WorksheetReview } from './worksheet-review.js'
export { filledWorksheetJsonSchema, filledWorksheetSchema } from './worksheet-schema.js'
