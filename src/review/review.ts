import type { Quantity } from '../quantity/index.js'
import type { RoundingRemark } from './agreement.js'
import type { Candidate, CandidateGroup } from './candidate.js'
import type { UnitRemark } from './other-unit.js'

/**
 * What a review finds. Agrees: right, at its own digits. Rounding: the value is right, its figures or its rounding are not as they should
 * be. Unit: the number is right, its unit is missing or another. Slip: a known slip gives this number. Unexplained: none does.
 */
export type Verdict = 'agrees' | 'rounding' | 'unit' | 'slip' | 'unexplained'

/** A review of one answer. `JSON.stringify` gives the whole of it. */
export interface Review {
  /** What it finds. */
  readonly verdict: Verdict
  /** The right answer, unrounded, with all that it was made from. */
  readonly expected: Quantity
  /** The answer as it was stated. */
  readonly stated: Quantity
  /** What is to be said of its digits, where the value is right. */
  readonly rounding: RoundingRemark | undefined
  /** What is to be said of its unit. */
  readonly unit: UnitRemark | undefined
  /** Slips that would give this answer, the best first; those that miss it by one in the last digit, as rounding on the way does, come last. */
  readonly candidates: readonly Candidate[]
  /** The same, those together that cannot be told apart at the stated digits. */
  readonly groups: readonly CandidateGroup[]
  /** What to look at, in a plain sentence or two that do not give the answer away. */
  readonly advice: string
}
