import type { SaltwrightError } from '../errors.js'
import { attempt, isSaltwrightError } from '../errors.js'
import type { Plan } from '../preparation/index.js'
import type { Quantity } from '../quantity/index.js'
import { speciesKey } from '../stoichiometry/index.js'
import { type Carried, carriedOn, type Earlier, earlierChoice, earlierNumber } from './carry.js'
import { checkReviewOptions } from './check-options.js'
import { checkPlan, isWorksheet } from './check-plan.js'
import type { Review } from './review.js'
import { agrees, type FullOptions, type ReviewOptions, reviewWith } from './review-answer.js'
import { ReviewError } from './review-error.js'
import type {
  ChoiceQuestion,
  FilledWorksheet,
  QuantityQuestion,
  Question,
  Worksheet,
  WorksheetOptions,
} from './worksheet.js'
import { worksheetOf } from './worksheet-of.js'
import type { AnswerReview, AnswerStatus, WorksheetReview } from './worksheet-review.js'
import { readFilledWorksheet } from './worksheet-schema.js'

/** How a worksheet is reviewed: as each of its answers, with what was recorded and printed. */
export type WorksheetReviewOptions = Omit<ReviewOptions, 'context'> & WorksheetOptions

/**
 * Reviews a worksheet. A later number that follows correctly from an earlier wrong one is marked so: only the first is faulted.
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
  return Object.freeze({
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
    if (stated === undefined || stated === '') return without(question, 'missing')
    if (question.kind === 'choice') return chosen(question, stated, worksheet, earlier)
    return numbered(question, stated, earlier, options)
  })
}

function without(question: Question, status: AnswerStatus, stated?: string, error?: SaltwrightError): AnswerReview {
  const advice = status === 'missing' ? 'Nothing is written here yet.' : 'Write a number and its unit, such as 3.255 g.'
  const { id, asks } = question
  return { question: id, asks, stated, status, follows: [], review: undefined, error: error?.toJSON(), advice }
}

function chosen(question: ChoiceQuestion, stated: string, worksheet: Worksheet, earlier: Earlier[]): AnswerReview {
  const { id, asks, right } = question
  const formula = choiceOf(question, stated)
  const isRight = formula !== undefined && right.includes(formula)
  if (formula !== undefined && !isRight) earlier.push(...earlierChoice(question, formula, worksheet, worksheet.context))
  const advice = isRight
    ? 'This agrees.'
    : 'How far does each of them let the reaction go? Compare what there is with what is needed.'
  return {
    question: id,
    asks,
    stated,
    status: isRight ? 'right' : 'wrong',
    follows: [],
    review: undefined,
    error: undefined,
    advice,
  }
}

/** Which of the choices is meant, by its name or its formula. */
function choiceOf({ choices }: ChoiceQuestion, stated: string): string | undefined {
  const named = choices.find(({ name, formula }) => [name, formula].some((each) => sameWords(each, stated)))
  const key = attempt(() => speciesKey(stated))
  return (named ?? choices.find(({ formula }) => key.ok && speciesKey(formula) === key.value))?.formula
}

function sameWords(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase()
}

function numbered(question: QuantityQuestion, stated: string, earlier: Earlier[], options: FullOptions): AnswerReview {
  try {
    const found = judged(question, stated, earlier, options)
    earlier.push(...earlierNumber(question, found.review))
    const { id, asks } = question
    return { question: id, asks, stated, error: undefined, advice: adviceFor(found), ...found }
  } catch (error) {
    if (!isSaltwrightError(error) || error.code !== 'review/unreadable-answer') throw error
    return without(question, 'unreadable', stated, error)
  }
}

type Judged = Pick<AnswerReview, 'status' | 'follows'> & { readonly review: Review }

/** Against the plan; if that does not agree, against what follows from earlier answers. */
function judged(question: QuantityQuestion, stated: string, earlier: readonly Earlier[], options: FullOptions): Judged {
  const full = { ...options, readableTo: question.readableTo }
  const { expected } = question
  if (agrees(expected, stated, full))
    return { status: 'right', follows: [], review: reviewWith(expected, stated, full) }
  const carried = carriedOn(expected, earlier)
  const kept = carried.find((one) => agrees(one.expected, stated, full))
  return kept === undefined ? faulted(expected, stated, carried, full) : keptOn(kept, stated, full)
}

/** A number that follows from earlier answers: from a wrong one, or from right ones that were rounded on the way. */
function keptOn({ expected, follows, fromWrong }: Carried, stated: string, options: FullOptions): Judged {
  return { status: fromWrong ? 'carried forward' : 'rounding', follows, review: reviewWith(expected, stated, options) }
}

/** The first way of looking at a number that explains it: against the plan, or after earlier answers. */
function faulted(expected: Quantity, stated: string, carried: readonly Carried[], options: FullOptions): Judged {
  const direct: Judged = judgedBy(expected, [], stated, options)
  if (direct.review.verdict !== 'unexplained') return direct
  for (const { expected: next, follows } of carried) {
    const after = judgedBy(next, follows, stated, options)
    if (after.review.verdict !== 'unexplained') return after
  }
  return direct
}

function judgedBy(expected: Quantity, follows: readonly string[], stated: string, options: FullOptions): Judged {
  const review = reviewWith(expected, stated, options)
  const { verdict } = review
  return { status: verdict === 'rounding' || verdict === 'unit' ? verdict : 'wrong', follows, review }
}

function adviceFor({ status, follows, review }: Judged): string {
  if (status === 'carried forward') return 'This follows from your earlier answer: look at that one.'
  if (status === 'rounding' && follows.length > 0)
    return 'This follows from your rounded answer before: keep all digits on the calculator until the last step.'
  return review.advice
}
