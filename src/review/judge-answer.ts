import { attempt, isSaltwrightError, type SaltwrightError, showFound } from '../errors.js'
import type { Quantity } from '../quantity/index.js'
import { speciesKey } from '../stoichiometry/index.js'
import { type Carried, carriedInScale, carriedOn, type Earlier, earlierChoice, earlierNumber } from './carry.js'
import { withWeights } from './course-weights.js'
import type { Review } from './review.js'
import { agrees, type FullOptions, reviewWith } from './review-answer.js'
import { ReviewError } from './review-error.js'
import type { ChoiceQuestion, QuantityQuestion, Question, Worksheet } from './worksheet.js'
import type { AnswerReview, AnswerStatus } from './worksheet-review.js'

const howToWrite = {
  quantity: 'Write a number and its unit, such as 3.255 g.',
  choice: 'Write the formula of one of the supplies, or its name as it stands on the sheet.',
} as const satisfies Record<Question['kind'], string>

/** An answer without anything to review: left empty, or not to be read. */
export function unanswered(
  question: Question,
  status: AnswerStatus,
  stated?: string,
  error?: SaltwrightError,
): AnswerReview {
  const advice = status === 'missing' ? 'Nothing is written here yet.' : howToWrite[question.kind]
  const { id, asks } = question
  return {
    question: id,
    asks,
    stated,
    status,
    follows: [],
    right: undefined,
    review: undefined,
    error: error?.toJSON(),
    advice,
  }
}

/** The review of a choice; a wrong one decides what later answers follow from. */
export function choiceReviewed(
  question: ChoiceQuestion,
  stated: string,
  worksheet: Worksheet,
  earlier: Earlier[],
): AnswerReview {
  const { id, asks, right } = question
  const formula = choiceOf(question, stated)
  if (formula === undefined && !isFormula(stated))
    return unanswered(question, 'unreadable', stated, noSupply(question, stated))
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
    right: undefined,
    review: undefined,
    error: undefined,
    advice,
  }
}

/** Which of the choices is meant, by one of its names or its formula. */
function choiceOf({ choices }: ChoiceQuestion, stated: string): string | undefined {
  const meant = choices.map(({ formula, name, others = [] }) => ({ formula, names: [name, formula, ...others] }))
  const found = meant.find(({ names }) => names.some((each) => sameWords(each, stated)))
  return (found ?? meant.find(({ names }) => names.some((each) => sameSubstance(each, stated))))?.formula
}

const article = /^(the|an?)\s+/i

/** Whether two names are the same but for an article and capitals. */
function sameWords(a: string, b: string): boolean {
  return bare(a) === bare(b)
}

function bare(name: string): string {
  return name.replace(article, '').toLowerCase()
}

function sameSubstance(a: string, b: string): boolean {
  const [one, other] = [keyOf(a), keyOf(b)]
  return one !== undefined && one === other
}

function keyOf(text: string): string | undefined {
  const key = attempt(() => speciesKey(text.replace(article, '')))
  return key.ok ? key.value : undefined
}

/** A formula names a substance, if not one of the supplies; other words may be a name that the recipe does not have. */
function isFormula(stated: string): boolean {
  return keyOf(stated) !== undefined
}

function noSupply({ choices }: ChoiceQuestion, stated: string): ReviewError {
  return new ReviewError({
    code: 'review/unreadable-answer',
    message: `${showFound(stated)} is the name of no supply.`,
    found: showFound(stated),
    expected: choices
      .flatMap(({ formula, name }) => (name === formula ? [formula] : [`${name} (${formula})`]))
      .join(', '),
  })
}

/** The review of a number: against the plan, or against what follows from earlier answers, which it joins. */
export function numberReviewed(
  question: QuantityQuestion,
  stated: string,
  earlier: Earlier[],
  options: FullOptions,
): AnswerReview {
  try {
    const found = judged(question, stated, earlier, options)
    earlier.push(...earlierNumber(question, found.review, found.status === 'carried forward'))
    const { id, asks, expected } = question
    const right = withWeights(expected, options.weights)
    return { question: id, asks, stated, right, error: undefined, advice: adviceFor(found), ...found }
  } catch (error) {
    if (!isSaltwrightError(error) || error.code !== 'review/unreadable-answer') throw error
    return unanswered(question, 'unreadable', stated, error)
  }
}

type Judged = Pick<AnswerReview, 'status' | 'follows'> & { readonly review: Review }

/** Against the plan; if that does not agree, against what follows from earlier answers. */
function judged(question: QuantityQuestion, stated: string, earlier: readonly Earlier[], options: FullOptions): Judged {
  const { expected, readableTo, step } = question
  const full = { ...options, readableTo, step }
  if (agrees(expected, stated, full))
    return { status: 'right', follows: [], review: reviewWith(expected, stated, full) }
  const carried = carriedOn(expected, earlier)
  const agreeing = (one: Carried): boolean => agrees(one.expected, stated, full)
  const kept = carried.find(agreeing) ?? carriedInScale(expected, earlier).find(agreeing)
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
