import { deepFreeze } from '../preparation/freeze.js'
import type { Plan } from '../preparation/index.js'
import type { Earlier } from './carry.js'
import { checkReviewOptions } from './check-options.js'
import { checkPlan, isWorksheet } from './check-plan.js'
import { choiceReviewed, numberReviewed, unanswered } from './judge-answer.js'
import type { FullOptions, ReviewOptions } from './review-answer.js'
import { ReviewError } from './review-error.js'
import type { FilledWorksheet, Worksheet, WorksheetOptions } from './worksheet.js'
import { worksheetOf } from './worksheet-of.js'
import type { AnswerReview, WorksheetReview } from './worksheet-review.js'
import { readFilledWorksheet } from './worksheet-schema.js'

/** How a worksheet is reviewed: as each of its answers, with what was recorded and printed. */
export type WorksheetReviewOptions = Omit<ReviewOptions, 'context'> & WorksheetOptions

/**
 * Reviews a worksheet. A later number that follows correctly from an earlier wrong one is marked so: only the first is faulted. An amount
 * may follow from that of any other substance that is not taken in excess.
 *
 * @param plan - The plan of the bench, or the worksheet that was made from it.
 * @param filled - The answers as plain JSON, by the names of the questions.
 * @param options - As for {@link reviewAnswer}; and the assessment of the bench, for what it obtained.
 * @returns Every question with how its answer stands, its review, and what to look at.
 * @throws {@link ReviewError} `review/invalid` with every mistake in `problems`, each with its path: there `review/unknown-question`;
 *   `review/unreadable` for what is no plain JSON; `review/not-a-plan`, `review/not-an-assessment`, `review/not-an-object`. An answer that cannot be read stops nothing.
 *
 * @example
 * ```ts
 * import { planPreparation } from 'saltwright/preparation'
 * import { reviewWorksheet } from 'saltwright/review'
 *
 * const plan = planPreparation({
 *   format: 'saltwright/recipe@1',
 *   title: 'Zinc sulfate heptahydrate',
 *   product: 'ZnSO4·7H2O',
 *   scale: { of: 'ZnO', amount: '0.0400 mol' },
 *   stages: [{ name: 'dissolve and crystallise', equation: 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O' }],
 *   supplies: [
 *     { form: 'solid', substance: 'ZnO' },
 *     { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
 *   ],
 * })
 * const review = reviewWorksheet(plan, {
 *   format: 'saltwright/worksheet@1',
 *   bench: 'Bench 1',
 *   answers: {
 *     'mass-of-ZnO': '3.255 g',
 *     'molar-mass-of-product': '161.44 g/mol',
 *     'theoretical-yield': '6.458 g',
 *   },
 * })
 * review.answers.filter(({ status }) => status !== 'missing').map(({ question, status }) => [question, status])
 * // => [['mass-of-ZnO', 'right'], ['molar-mass-of-product', 'wrong'], ['theoretical-yield', 'carried forward']]
 * ```
 */
export function reviewWorksheet(
  plan: Plan | Worksheet,
  filled: FilledWorksheet,
  options: WorksheetReviewOptions = {},
): WorksheetReview {
  const checked = checkReviewOptions(options)
  const worksheet = worksheetFor(plan, checked)
  const { bench, answers } = readFilledWorksheet(filled)
  checkNames(worksheet, answers)
  const given = new Map(Object.entries(answers))
  return deepFreeze({
    format: 'saltwright/worksheet-review@1',
    bench,
    title: worksheet.title,
    answers: answersReviewed(worksheet, given, { ...checked, context: worksheet.context }),
  })
}

function worksheetFor(plan: Plan | Worksheet, options: WorksheetReviewOptions): Worksheet {
  if (isWorksheet(plan)) return plan
  const isPlain = options.assessment === undefined && options.printed === undefined
  return isPlain ? plainWorksheet(checkPlan(plan)) : worksheetOf(plan, options)
}

/** Worksheets of plans, as long as somebody holds on to them: many benches may work by one plan. */
const known: WeakMap<Plan, Worksheet> = /* @__PURE__ */ new WeakMap()

function plainWorksheet(plan: Plan): Worksheet {
  const worksheet = known.get(plan) ?? worksheetOf(plan)
  known.set(plan, worksheet)
  return worksheet
}

function checkNames({ questions }: Worksheet, answers: FilledWorksheet['answers']): void {
  const names = questions.map(({ id }) => id)
  const problems = Object.keys(answers)
    .filter((name) => !names.includes(name))
    .map((name) => ({
      code: 'review/unknown-question',
      message: `answers: there is no question "${name}".`,
      path: ['answers', name],
      found: name,
      expected: names.join(', '),
    }))
  const [first] = problems
  if (first === undefined) return
  throw new ReviewError({
    ...first,
    code: 'review/invalid',
    message: `The worksheet cannot be used: ${first.message}`,
    problems,
  })
}

function answersReviewed(
  worksheet: Worksheet,
  given: ReadonlyMap<string, string>,
  options: FullOptions,
): readonly AnswerReview[] {
  const earlier: Earlier[] = []
  return worksheet.questions.map((question) => {
    const stated = given.get(question.id)?.trim()
    if (stated === undefined || stated === '') return unanswered(question, 'missing')
    if (question.kind === 'choice') return choiceReviewed(question, stated, worksheet, earlier)
    return numberReviewed(question, stated, earlier, options)
  })
}
