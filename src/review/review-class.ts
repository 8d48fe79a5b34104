import { attempt, showFound } from '../errors.js'
import { deepFreeze } from '../preparation/freeze.js'
import type { Candidate } from './candidate.js'
import { checkReviewOptions } from './check-options.js'
import type {
  BenchResult,
  BenchWorksheet,
  ClassReview,
  QuestionResult,
  SlipCount,
  UnreadWorksheet,
} from './class-review.js'
import { ReviewError } from './review-error.js'
import { reviewWorksheet, type WorksheetReviewOptions } from './review-worksheet.js'
import type { AnswerReview, AnswerStatus, WorksheetReview } from './worksheet-review.js'

/** How a class is reviewed. */
export type ClassReviewOptions = Omit<WorksheetReviewOptions, 'assessment'> & {
  /** Called after each worksheet with how many are done: to show progress. */
  readonly onProgress?: ((done: number) => void) | undefined
}

/** The review of one worksheet of a class, or why there is none. */
export type BenchReview =
  | {
      /** Which worksheet, counted from 0. */
      readonly index: number
      /** Its review. */
      readonly review: WorksheetReview
    }
  | {
      /** Which worksheet, counted from 0. */
      readonly index: number
      /** Why it could not be read. */
      readonly error: ReviewError
    }

/**
 * Reviews many worksheets one by one, as they come: for lists that are long, or that arrive.
 *
 * @param worksheets - Each with the plan of its bench.
 * @param options - As for {@link reviewWorksheet}; and what to call after each.
 * @returns The reviews in the same order; a worksheet that cannot be read gives its error and stops nothing.
 * @throws {@link ReviewError} `review/not-a-list`, `review/not-an-object`.
 *
 * @example
 * ```ts
 * import { reviewBenches } from 'saltwright/review'
 *
 * [...reviewBenches([])] // => []
 * ```
 */
export function* reviewBenches(
  worksheets: Iterable<BenchWorksheet>,
  options: ClassReviewOptions = {},
): Generator<BenchReview, void, undefined> {
  const checked = checkReviewOptions(options)
  let index = 0
  for (const worksheet of listOf(worksheets)) {
    yield reviewBench(worksheet, index, checked)
    index += 1
    checked.onProgress?.(index)
  }
}

function listOf(worksheets: unknown): Iterable<BenchWorksheet> {
  if (isObject(worksheets) && typeof worksheets[Symbol.iterator] === 'function')
    return worksheets as unknown as Iterable<BenchWorksheet>
  throw new ReviewError({
    code: 'review/not-a-list',
    message: `${showFound(worksheets)} is no list of worksheets.`,
    found: showFound(worksheets),
    expected: 'a list, or anything else that can be gone through',
  })
}

function isObject(value: unknown): value is Readonly<Record<symbol, unknown>> {
  return typeof value === 'object' && value !== null
}

function reviewBench(worksheet: BenchWorksheet, index: number, options: ClassReviewOptions): BenchReview {
  const outcome = attempt<WorksheetReview, ReviewError>(() => {
    const { plan, filled, assessment, bench } = checkReviewOptions(worksheet)
    const review = reviewWorksheet(plan, filled, { ...options, assessment })
    return Object.freeze({ ...review, bench: bench ?? review.bench ?? `Bench ${index + 1}` })
  })
  return Object.freeze(outcome.ok ? { index, review: outcome.value } : { index, error: outcome.error })
}

/**
 * Reviews the worksheets of a class: how each bench did, how each question went, and which slips were made, the most common first.
 *
 * @param worksheets - Each with the plan of its bench.
 * @param options - As for {@link reviewWorksheet}; and what to call after each.
 * @returns The table. A worksheet that cannot be read is listed with its error and stops nothing.
 * @throws {@link ReviewError} `review/not-a-list`, `review/not-an-object`.
 *
 * @example
 * ```ts
 * import { planClass } from 'saltwright/preparation'
 * import { reviewClass } from 'saltwright/review'
 *
 * const { benches } = planClass(
 *   {
 *     format: 'saltwright/recipe@1',
 *     title: 'Zinc sulfate heptahydrate',
 *     product: 'ZnSO4·7H2O',
 *     scale: { of: 'ZnO', amount: '0.0400 mol' },
 *     stages: [{ name: 'dissolve and crystallise', equation: 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O' }],
 *     supplies: [
 *       { form: 'solid', substance: 'ZnO' },
 *       { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
 *     ],
 *   },
 *   [
 *     { name: 'Bench 1', scale: { amount: '0.0400 mol' } },
 *     { name: 'Bench 2', scale: { amount: '0.0500 mol' } },
 *   ],
 * )
 * const answers = ['6.458 g', '8.072 g']
 * const review = reviewClass(
 *   benches.map(({ plan }, index) => ({
 *     plan,
 *     filled: { format: 'saltwright/worksheet@1', answers: { 'theoretical-yield': answers[index] ?? '' } },
 *   })),
 * )
 * review.mostCommon?.slip // => 'product-taken-as-anhydrous'
 * review.mostCommon?.answers // => 2
 * ```
 */
export function reviewClass(worksheets: Iterable<BenchWorksheet>, options: ClassReviewOptions = {}): ClassReview {
  const benches: BenchResult[] = []
  const unread: UnreadWorksheet[] = []
  const tally: Tally = { questions: new Map(), slips: new Map() }
  for (const reviewed of reviewBenches(worksheets, options)) {
    if ('error' in reviewed) unread.push({ index: reviewed.index, error: reviewed.error.toJSON() })
    else benches.push(counted(tally, reviewed.review))
  }
  const slips = [...tally.slips.values()].sort((a, b) => b.share - a.share)
  const questions = [...tally.questions.values()]
  return deepFreeze({ format: 'saltwright/class-review@1', benches, questions, slips, mostCommon: slips[0], unread })
}

/** What has been counted so far. */
interface Tally {
  readonly questions: Map<string, QuestionResult>
  readonly slips: Map<string, SlipCount>
}

function counted(tally: Tally, { bench, answers }: WorksheetReview): BenchResult {
  for (const answer of answers) {
    countQuestion(tally, answer)
    const fitting = bestFitting(answer)
    for (const candidate of fitting) countSlip(tally, candidate, fitting.length)
  }
  return {
    bench: bench as string,
    statuses: Object.fromEntries(answers.map(({ question, status }) => [question, status])),
    slips: Object.fromEntries(answers.flatMap((answer) => slipsOf(answer))),
    notFaulted: answers.filter(({ status }) => notFaulted.has(status)).length,
    faulted: answers.filter(({ status }) => faulted.has(status)).length,
  }
}

const notFaulted: ReadonlySet<AnswerStatus> = /* @__PURE__ */ new Set<AnswerStatus>([
  'right',
  'rounding',
  'carried forward',
])
const faulted: ReadonlySet<AnswerStatus> = /* @__PURE__ */ new Set<AnswerStatus>(['wrong', 'unit'])

/** The single slips that fit a faulted answer best. */
function bestFitting({ status, review }: AnswerReview): readonly Candidate[] {
  if (review === undefined || !faulted.has(status)) return []
  const single = review.candidates.filter(({ slips }) => slips.length === 1)
  return single.filter(({ fit }) => fit === single[0]?.fit)
}

function slipsOf(answer: AnswerReview): readonly (readonly [string, readonly string[]])[] {
  const names = bestFitting(answer).map(({ slips }) => slips[0])
  return names.length === 0 ? [] : [[answer.question, names]]
}

function countQuestion({ questions }: Tally, { question, asks, status }: AnswerReview): void {
  const counts = questions.get(question)?.counts ?? {}
  questions.set(question, { question, asks, counts: { ...counts, [status]: (counts[status] ?? 0) + 1 } })
}

function countSlip({ slips }: Tally, { slips: [slip], did, advice }: Candidate, among: number): void {
  const { answers, alone, share } = slips.get(slip) ?? { answers: 0, alone: 0, share: 0 }
  slips.set(slip, {
    slip,
    did,
    advice,
    answers: answers + 1,
    alone: alone + (among === 1 ? 1 : 0),
    share: share + 1 / among,
  })
}
