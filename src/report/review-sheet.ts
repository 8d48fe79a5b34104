import type { Quantity } from '../quantity/index.js'
import { type AnswerReview, type AnswerStatus, answerOf, type Review, type WorksheetReview } from '../review/index.js'
import { reviewReportOf } from './review-guard.js'
import type { Block, Line, Sheet, SheetFormat } from './sheet.js'
import { writeSheet } from './write-sheet.js'

/** For whom a review is written. */
export interface ReviewSheetOptions {
  /**
   * `"bench"` (unless said): how each answer stands and what to look at, without the right ones. `"teacher"`: the right answers too, and the
   * slips that would explain the wrong ones.
   */
  readonly readBy?: 'bench' | 'teacher' | undefined
}

/**
 * Writes the review of a worksheet: how each answer stands and what to look at; for whoever teaches also the right answers, what should come
 * out after earlier answers where one was reckoned on with them, and the slips.
 *
 * @param review - The review of a worksheet.
 * @param format - `"text"` unless said, `"markdown"`, `"html"` (a fragment, escaped) or `"latex"` (for the body of a document).
 * @param options - For whom.
 * @returns The sheet, ending with a line break.
 * @throws {@link ReportError} `report/unknown-format`; `report/not-a-review` for anything but the review of a worksheet.
 *
 * @example
 * ```ts
 * import { planPreparation } from 'saltwright/preparation'
 * import { reviewSheet } from 'saltwright/report'
 * import { reviewWorksheet } from 'saltwright/review'
 *
 * const plan = planPreparation({
 *   format: 'saltwright/recipe@1',
 *   title: 'Zinc sulfate heptahydrate',
 *   product: 'ZnSO4·7H2O',
 *   scale: { of: 'ZnO', amount: '0.0400 mol' },
 *   stages: [{ name: 'Dissolve and crystallise', equation: 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O' }],
 *   supplies: [
 *     { form: 'solid', substance: 'ZnO' },
 *     { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
 *   ],
 * })
 * const answers = { 'theoretical-yield': '6.458 g' }
 * const review = reviewWorksheet(plan, { format: 'saltwright/worksheet@1', bench: 'Bench 1', answers })
 * reviewSheet(review).includes('11.502 g') // => false
 * reviewSheet(review, 'text', { readBy: 'teacher' }).includes('11.502 g') // => true
 * ```
 */
export function reviewSheet(
  review: WorksheetReview,
  format: SheetFormat = 'text',
  options: ReviewSheetOptions = {},
): string {
  return reviewReportOf('saltwright/worksheet-review@1', 'reviewWorksheet', review, (document) =>
    writeSheet(options?.readBy === 'teacher' ? sheetForTeacher(document) : sheetForBench(document), format),
  )
}

/** How an answer stands, in words. */
export const statusWords: Readonly<Record<AnswerStatus, string>> = {
  right: 'agrees',
  rounding: 'value agrees',
  unit: 'number agrees',
  'carried forward': 'follows from before',
  wrong: 'look again',
  missing: 'empty',
  unreadable: 'cannot be read',
}

function sheetForBench(review: WorksheetReview): Sheet {
  const rows = review.answers.map(({ asks, stated, status }): Line[] => [asks, stated ?? '', statusWords[status]])
  return {
    title: review.title,
    subtitle: subtitleOf(review),
    blocks: [{ kind: 'table', head: ['question', 'answer', ''], rows, numeric: [1] }, ...lookAt(review)],
  }
}

function subtitleOf({ bench }: WorksheetReview): string {
  return bench === undefined ? 'Review of a worksheet' : `Review of the worksheet of ${bench}`
}

/** What to look at, for every answer that does not agree. */
function lookAt({ answers }: WorksheetReview): readonly Block[] {
  const open = answers.filter(({ status }) => status !== 'right' && status !== 'missing')
  if (open.length === 0) return []
  return [
    { kind: 'heading', text: 'Look at' },
    { kind: 'notes', lines: open.map(({ asks, advice }) => `${asks} ${advice}`) },
  ]
}

function sheetForTeacher(review: WorksheetReview): Sheet {
  const isCarriedOn = review.answers.some(({ follows }) => follows.length > 0)
  const rows = review.answers.map((answer): Line[] => [
    answer.asks,
    answer.stated ?? '',
    rightAnswer(answer),
    ...(isCarriedOn ? [afterEarlier(answer)] : []),
    statusWords[answer.status],
  ])
  const head = ['question', 'answer', 'expected', ...(isCarriedOn ? ['after earlier answers'] : []), '']
  return {
    title: review.title,
    subtitle: subtitleOf(review),
    blocks: [
      { kind: 'table', head, rows, numeric: isCarriedOn ? [1, 2, 3] : [1, 2] },
      ...explained(review),
      ...lookAt(review),
    ],
  }
}

/** The right answer, whatever went before. */
function rightAnswer({ review, right }: AnswerReview): string {
  return review === undefined ? '' : answerOf({ ...review, expected: right as Quantity })
}

/** What an answer should be after those that it was reckoned on with. */
function afterEarlier({ review, follows }: AnswerReview): string {
  return follows.length === 0 ? '' : answerOf(review as Review)
}

function explained({ answers }: WorksheetReview): readonly Block[] {
  const lines = answers.flatMap(candidateLines)
  if (lines.length === 0) return []
  return [
    { kind: 'heading', text: 'What would explain it' },
    { kind: 'notes', lines },
  ]
}

/** The slips that fit an answer, and how well. */
function candidateLines({ question, review }: AnswerReview): readonly Line[] {
  return (review?.candidates ?? []).map(({ slips, reason, value, fit }) => [
    `${question}: ${slips.join(' and ')} (${reason}) gives `,
    { quantity: value },
    fit === 'to the digits' ? '.' : ', one off in the last digit.',
  ])
}
