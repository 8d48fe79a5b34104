import { withSummary } from '../display.js'
import type { AtomicWeights } from '../element/index.js'
import { deepFreeze } from '../preparation/freeze.js'
import { type Quantity, roundTo, type TieRule, type WholeNumberZeros } from '../quantity/index.js'
import { nodeOf } from '../quantity/node.js'
import { adviceOn, type Findings } from './advice.js'
import { type Agreement, agreementOf, type Exactness, type RequiredFigures } from './agreement.js'
import { calculationOf } from './calculation.js'
import type { Candidate } from './candidate.js'
import { checkObject, checkReviewOptions } from './check-options.js'
import type { ReviewContext } from './context.js'
import { withWeights } from './course-weights.js'
import { findCandidates, groupsOf } from './find-candidates.js'
import { remarkOn, unitRemark } from './other-unit.js'
import type { Review } from './review.js'
import type { Slip } from './slip.js'
import { slips as allSlips } from './slips.js'
import { readStatement, type Statement, statedFigures } from './statement.js'
import { reviewSummary } from './summary.js'
import { targetOf } from './target.js'

/** How an answer is reviewed. */
export interface ReviewOptions {
  /** The rule for a lone 5 that the course requires; both are accepted unless said. */
  readonly ties?: TieRule | undefined
  /** How many figures the answer should have; `"at least three"` unless said. */
  readonly figures?: RequiredFigures | undefined
  /** The course's own atomic weights: an answer that was worked out with them agrees. Those of the calculation unless said. */
  readonly weights?: AtomicWeights | undefined
  /** What trailing zeros of a whole number in the answer mean; both readings are accepted unless they are said to be significant. */
  readonly wholeNumberZeros?: WholeNumberZeros | undefined
  /** What else was at hand, and may have been taken by mistake. Nothing unless said. */
  readonly context?: ReviewContext | undefined
  /**
   * Whether pairs of slips are tried too; a few are named, below single ones. Not unless said. Of a calculation with many numbers only
   * the best known of the ways to go wrong are paired, so that an answer takes no longer than a fraction of a second.
   */
  readonly pairs?: boolean | undefined
  /** Which slips are looked for; all of them unless said. */
  readonly slips?: readonly Slip[] | undefined
}

/**
 * Reviews a stated answer: whether it agrees with a calculation, whether only its figures, its rounding or its unit differ, and if its value
 * differs, which known slips would give it.
 *
 * Slips are read off the roles of the numbers that the calculation was made from (molar mass, mole ratio, tare, assay ...), so a
 * calculation of one's own gets them as well, if its inputs are labelled. A slip that fits is a candidate with its reason, not proof:
 * several may give the same number.
 *
 * @param expected - The right answer as a calculation; its unrounded value counts.
 * @param stated - The answer: a number with its unit as text, or a quantity. It is compared at its own digits.
 * @param options - The course's rule for a lone 5, its figures, its atomic weights; what else was at hand; whether pairs of slips are tried.
 * @returns The verdict, remarks on digits and unit, the candidates in order of rank, what to look at.
 * @throws {@link ReviewError} `review/unreadable-answer`, with the place in the text and a hint; `review/not-an-object` for options that are
 *   none, `review/unknown-option` with the path of an option that is no choice; {@link QuantityError} `quantity/not-a-quantity` for an expected answer that is none; {@link ElementError} where the course's
 *   atomic weights lack an element.
 * @source Comparison at the stated digits with the unrounded value: ISO 80000-1:2009, B.4 (round once).
 *
 * @example
 * ```ts
 * import { exact } from 'saltwright/quantity'
 * import { reviewAnswer } from 'saltwright/review'
 * import { massFromAmount } from 'saltwright/stoichiometry'
 *
 * const mass = massFromAmount(exact('0.0250 mol'), 'ZnSO4·7H2O')
 * reviewAnswer(mass, '7.189 g').verdict // => 'agrees'
 * reviewAnswer(mass, '7189 mg').verdict // => 'agrees'
 * reviewAnswer(mass, '7.188525 g').rounding?.kind // => 'too many figures'
 * reviewAnswer(mass, '7.189 kg').unit // => { kind: 'wrong', stated: 'kg', right: 'g' }
 *
 * const review = reviewAnswer(mass, '4.036 g')
 * review.verdict // => 'slip'
 * review.candidates[0]?.slips // => ['hydrate-weighed-as-anhydrous']
 * review.candidates[0]?.reason // => 'molar mass of ZnSO4·7H2O without its water'
 * reviewAnswer(mass, 'four grams') // throws review/unreadable-answer
 * ```
 */
export function reviewAnswer(expected: Quantity, stated: string | Quantity, options: ReviewOptions = {}): Review {
  return reviewWith(expected, stated, checkReviewOptions(options))
}

/** Options as worksheets have them: they also know what the instrument shows. */
export type FullOptions = ReviewOptions & Pick<Exactness, 'readableTo' | 'step'>

/** Reviews an answer with checked options. */
export function reviewWith(expected: Quantity, stated: string | Quantity, options: FullOptions): Review {
  const right = withWeights(nodeOf(expected), options.weights)
  const statement = readStatement(stated, options.wholeNumberZeros)
  const agreement = agreementWith(right, expected, statement, options)
  return completed(right, statement, findingsOf(right, statement, agreement, options))
}

/** Whether an answer agrees in every respect; no slips are looked for. */
export function agrees(expected: Quantity, stated: string, options: FullOptions): boolean {
  const right = withWeights(expected, options.weights)
  const agreement = agreementWith(right, expected, readStatement(stated, options.wholeNumberZeros), options)
  return agreement !== undefined && agreement.remark === undefined
}

function completed(expected: Quantity, { quantity }: Statement, findings: Findings): Review {
  const { verdict, rounding, unit, candidates } = findings
  const groups = groupsOf(candidates)
  const review: Review = {
    verdict,
    expected,
    stated: quantity,
    rounding,
    unit,
    candidates,
    groups,
    advice: adviceOn(findings),
  }
  return deepFreeze(withSummary(review, reviewSummary))
}

/** Whether the value is right in the unit that was stated, by the course's atomic weights or those of the calculation. */
function agreementWith(
  right: Quantity,
  expected: Quantity,
  statement: Statement,
  options: FullOptions,
): Agreement | undefined {
  if (statement.dimension !== right.dimension) return undefined
  const agreement = agreementOf(right.to(statement.unit as never), statement, options)
  if (agreement !== undefined || right === expected) return agreement
  return agreementOf(expected.to(statement.unit as never), statement, options)
}

function findingsOf(
  right: Quantity,
  statement: Statement,
  agreement: Agreement | undefined,
  options: FullOptions,
): Findings {
  if (agreement !== undefined && agreement.remark === undefined) return plain
  if (agreement !== undefined) {
    const candidates = isOff(agreement) ? candidatesFor(right, statement, options) : []
    return { ...plain, verdict: 'rounding', rounding: agreement.remark, candidates }
  }
  const unit = unitRemark(right, statement, options.step)
  const candidates = candidatesFor(right, statement, options)
  if (unit !== undefined) return { ...plain, verdict: 'unit', unit, candidates }
  const verdict = candidates.length > 0 ? 'slip' : 'unexplained'
  return { ...plain, verdict, unit: kindRemark(right, statement), candidates }
}

const plain: Findings = { verdict: 'agrees', rounding: undefined, unit: undefined, candidates: [] }

/** Whether the last digit itself is not that of the right answer, so that a slip on the way may be behind it. */
function isOff({ remark }: Agreement): boolean {
  return remark?.kind === 'cut off' || remark?.kind === 'rounded away'
}

/** That the unit is none of the right kind, where the number is not right either. */
function kindRemark(right: Quantity, statement: Statement): Findings['unit'] {
  return statement.dimension === right.dimension ? undefined : remarkOn(statement, right.unit)
}

const fewestFiguresForNearMiss = 3

/** The slips that give the number; a number without a unit is read in that of the right answer. */
function candidatesFor(right: Quantity, statement: Statement, options: FullOptions): readonly Candidate[] {
  const isBare = statement.unit === '1'
  if (statement.dimension !== right.dimension && !isBare) return []
  const unit = statement.dimension === right.dimension && !isBare ? statement.unit : right.unit
  const target = targetOf(right, statement, unit)
  const { context, weights, pairs = false, slips = allSlips } = options
  const answer = { value: target.value, place: target.place }
  const seen = { ...context, given: context, weights, answer }
  const found = findCandidates(calculationOf(right), target, seen, { slips, pairs })
  const isLong = statedFigures(statement) >= fewestFiguresForNearMiss
  return isLong ? found : found.filter(({ fit }) => fit === 'to the digits')
}

/**
 * The right answer of a review as it should be written: the answer on request.
 *
 * @param review - A review of an answer.
 * @returns The number, rounded to the figures that are right, or to those that were stated (three at least) where any are; with its unit.
 * @throws {@link ReviewError} `review/not-an-object`; {@link QuantityError} `quantity/not-a-quantity` for a review that was stored as JSON.
 *
 * @example
 * ```ts
 * import { exact } from 'saltwright/quantity'
 * import { answerOf, reviewAnswer } from 'saltwright/review'
 * import { massFromAmount } from 'saltwright/stoichiometry'
 *
 * answerOf(reviewAnswer(massFromAmount(exact('0.0250 mol'), 'ZnSO4·7H2O'), '4.036 g')) // => '7.1885 g'
 * ```
 */
export function answerOf(review: Review): string {
  const { expected, stated } = checkObject(review) as Review
  const right = nodeOf(expected)
  if (right.significantFigures !== null) return right.toString()
  return roundTo(right, { figures: Math.max(3, nodeOf(stated).significantFigures ?? 0) }).toString()
}
