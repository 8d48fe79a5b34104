import { attempt, isSaltwrightError, type SaltwrightError, showFound } from '../errors.js'
import type { Quantity } from '../quantity/index.js'
import { speciesKey } from '../stoichiometry/index.js'
import { type Carried, carriedInScale, carriedOn, type Earlier, earlierChoice, earlierNumber } from './carry.js'
import { withWeights } from './course-weights.js'
import type { Review, Verdict } from './review.js'
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
    const { rights, ...found } = judged(question, stated, earlier, options)
    const isCarried = found.status === 'carried forward'
    earlier.push(...rights.flatMap((expected) => earlierNumber({ ...question, expected }, found.review, isCarried)))
    const { id, asks } = question
    const right = withWeights(rights[0], options.weights)
    return { question: id, asks, stated, right, error: undefined, advice: adviceFor(found), ...found }
  } catch (error) {
    if (!isSaltwrightError(error) || error.code !== 'review/unreadable-answer') throw error
    return unanswered(question, 'unreadable', stated, error)
  }
}

type Judged = Pick<AnswerReview, 'status' | 'follows'> & { readonly review: Review }

/** What is right: as planned, and as recorded where the bench did; only the one that was meant, where the value says which. */
type Rights = readonly [Quantity, ...Quantity[]]

/** Against the plan and the records; if neither agrees, against what follows from earlier answers. */
function judged(
  question: QuantityQuestion,
  stated: string,
  earlier: readonly Earlier[],
  options: FullOptions,
): Judged & { readonly rights: Rights } {
  const { expected, recorded, readableTo, step } = question
  const full = { ...options, readableTo, step }
  const rights: Rights = recorded === undefined ? [expected] : [expected, recorded]
  const right = rights.find((each) => agrees(each, stated, full))
  if (right !== undefined) return { ...judgedBy(right, [], stated, full), rights: [right] }
  const carried = rights.flatMap((each) => carriedOn(each, earlier))
  const agreeing = (one: Carried): boolean => agrees(one.expected, stated, full)
  const kept = carried.find(agreeing) ?? rights.flatMap((each) => carriedInScale(each, earlier)).find(agreeing)
  return kept === undefined ? faulted(rights, stated, carried, full) : { ...keptOn(kept, stated, full), rights }
}

/** A number that follows from earlier answers: from a wrong one, or from right ones that were rounded on the way. */
function keptOn({ expected, follows, fromWrong }: Carried, stated: string, options: FullOptions): Judged {
  return { status: fromWrong ? 'carried forward' : 'rounding', follows, review: reviewWith(expected, stated, options) }
}

/** The first way of looking at a number that explains it: against what is right, in value if it can be, or after earlier answers. */
function faulted(
  rights: Rights,
  stated: string,
  carried: readonly Carried[],
  options: FullOptions,
): Judged & { readonly rights: Rights } {
  const direct = rights.map((right) => ({ ...judgedBy(right, [], stated, options), rights: [right] as const }))
  const near = direct.find(({ status }) => status !== 'wrong')
  if (near !== undefined) return near
  const explained = direct.find(({ review }) => review.verdict !== 'unexplained')
  if (explained !== undefined) return { ...explained, rights }
  for (const { expected: next, follows } of carried) {
    const after = judgedBy(next, follows, stated, options)
    if (after.review.verdict !== 'unexplained') return { ...after, rights }
  }
  return { ...(direct[0] as Judged), rights }
}

const statuses: Readonly<Record<Verdict, AnswerStatus>> = {
  agrees: 'right',
  rounding: 'rounding',
  unit: 'unit',
  slip: 'wrong',
  unexplained: 'wrong',
}

function judgedBy(expected: Quantity, follows: readonly string[], stated: string, options: FullOptions): Judged {
  const review = reviewWith(expected, stated, options)
  return { status: statuses[review.verdict], follows, review }
}

function adviceFor({ status, follows, review }: Judged): string {
  if (status === 'carried forward') return 'This follows from your earlier answer: look at that one.'
  if (status === 'rounding' && follows.length > 0)
    return 'This follows from your rounded answer before: keep all digits on the calculator until the last step.'
  return review.advice
}
