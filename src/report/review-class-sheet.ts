import type { AnswerStatus, BenchResult, ClassReview, SlipCount } from '../review/index.js'
import { type Cell, csvOf } from './csv.js'
import { reviewReportOf } from './review-guard.js'
import { statusWords } from './review-sheet.js'
import type { Block, Line, Sheet, SheetFormat } from './sheet.js'
import { writeSheet } from './write-sheet.js'

const format = 'saltwright/class-review@1'

/**
 * Writes the review of a class: the most common slip, how each bench did, how each question went, and every slip with how often it fits.
 *
 * @param review - The review of a class.
 * @param as - `"text"` unless said, `"markdown"`, `"html"` (a fragment, escaped) or `"latex"` (for the body of a document).
 * @returns The sheet, ending with a line break.
 * @throws {@link ReportError} `report/unknown-format`; `report/not-a-review` for anything but the review of a class.
 *
 * @example
 * ```ts
 * import { classReviewSheet } from 'saltwright/report'
 * import { reviewClass } from 'saltwright/review'
 *
 * classReviewSheet(reviewClass([])).includes('0 benches') // => true
 * ```
 */
export function classReviewSheet(review: ClassReview, as: SheetFormat = 'text'): string {
  return reviewReportOf(format, 'reviewClass', review, (document) => writeSheet(sheetOf(document), as))
}

/**
 * The review of a class as comma-separated values for a spreadsheet: a row for each bench and question.
 *
 * @param review - The review of a class.
 * @returns Text by RFC 4180: bench, question, how the answer stands, the slips that fit best. Text that a spreadsheet would run as a
 *   formula is defused with an apostrophe.
 * @throws {@link ReportError} `report/not-a-review` for anything but the review of a class.
 * @source RFC 4180.
 *
 * @example
 * ```ts
 * import { classReviewCsv } from 'saltwright/report'
 * import { reviewClass } from 'saltwright/review'
 *
 * classReviewCsv(reviewClass([])) // => 'bench,question,status,slips\r\n'
 * ```
 */
export function classReviewCsv(review: ClassReview): string {
  return reviewReportOf(format, 'reviewClass', review, ({ benches }) =>
    csvOf([['bench', 'question', 'status', 'slips'], ...benches.flatMap(benchRows)]),
  )
}

function benchRows({ bench, statuses, slips }: BenchResult): readonly (readonly Cell[])[] {
  const fitting = new Map(Object.entries(slips))
  return Object.entries(statuses).map(([question, status]) => [
    bench,
    question,
    status,
    (fitting.get(question) ?? []).join('; '),
  ])
}

function sheetOf(review: ClassReview): Sheet {
  const { benches, mostCommon } = review
  return {
    title: 'Review of a class',
    subtitle: `${benches.length} ${benches.length === 1 ? 'bench' : 'benches'}`,
    blocks: [
      ...(mostCommon === undefined ? [] : [mostCommonNote(mostCommon)]),
      { kind: 'heading', text: 'Benches' },
      benchTable(benches),
      { kind: 'heading', text: 'Questions' },
      questionTable(review),
      ...slipBlocks(review.slips),
      ...unreadBlocks(review),
    ],
  }
}

function mostCommonNote({ did, answers, advice }: SlipCount): Block {
  const times = answers === 1 ? 'one answer' : `${answers} answers`
  return { kind: 'notes', lines: [`Most common, in ${times}: ${did} To look at: ${advice}`] }
}

function benchTable(benches: readonly BenchResult[]): Block {
  return {
    kind: 'table',
    head: ['bench', 'not faulted', 'to look at', 'slips that fit'],
    numeric: [1, 2],
    rows: benches.map(({ bench, notFaulted, faulted, slips }) => [
      bench,
      String(notFaulted),
      String(faulted),
      [...new Set(Object.values(slips).flat())].join(', '),
    ]),
  }
}

function questionTable({ questions }: ClassReview): Block {
  const statuses = Object.keys(statusWords) as AnswerStatus[]
  return {
    kind: 'table',
    head: ['question', ...statuses.map((status) => statusWords[status])],
    numeric: statuses.map((_, index) => index + 1),
    rows: questions.map(({ asks, counts }) => [asks, ...statuses.map((status) => String(counts[status] ?? 0))]),
  }
}

function slipBlocks(slips: readonly SlipCount[]): readonly Block[] {
  if (slips.length === 0) return []
  const rows = slips.map(({ slip, did, answers, alone }): Line[] => [slip, did, String(answers), String(alone)])
  return [
    { kind: 'heading', text: 'Slips' },
    { kind: 'table', head: ['slip', 'what was done', 'fits', 'fits alone'], numeric: [2, 3], rows },
  ]
}

function unreadBlocks({ unread }: ClassReview): readonly Block[] {
  if (unread.length === 0) return []
  return [
    { kind: 'heading', text: 'Not read' },
    { kind: 'notes', lines: unread.map(({ index, error }) => `Worksheet ${index + 1}: ${error.message}`) },
  ]
}
