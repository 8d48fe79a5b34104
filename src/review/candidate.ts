import type { Quantity } from '../quantity/index.js'
import type { Evidence, SlipGroup } from './slip.js'
import type { Fit } from './target.js'

/** A slip that would give the stated answer: a guess with its reason, never a verdict. */
export interface Candidate {
  /** The name of the slip; two names where only the two together give it. */
  readonly slips: readonly [string] | readonly [string, string]
  /** What the slip, or the first of the two, is about. */
  readonly group: SlipGroup
  /** What was done, for whoever teaches. */
  readonly did: string
  /** Why it applies here, naming the number that it is about. */
  readonly reason: string
  /** What to look at, for whoever did it. */
  readonly advice: string
  /** What is known of the slip; of two, of the lesser known. */
  readonly evidence: Evidence
  /** What comes out with the slip, unrounded; its working can be written out. */
  readonly value: Quantity
  /** How well that fits the answer. */
  readonly fit: Fit
  /** Names of the other candidates that fit as well: at the stated digits they cannot be told apart. */
  readonly alike: readonly string[]
}

/** What is known of a candidate before it is compared with the others. */
export type Found = Omit<Candidate, 'alike'>

/** Candidates that cannot be told apart at the stated digits. */
export interface CandidateGroup {
  /** Their names, in order of rank; two names with a plus between them for two slips together. */
  readonly slips: readonly string[]
  /** Whether an answer with more digits could tell them apart; false where all of them always give the same number. */
  readonly moreDigitsTell: boolean
}

/** The name of a candidate. */
export function nameOf({ slips }: Pick<Candidate, 'slips'>): string {
  return slips.join(' + ')
}
