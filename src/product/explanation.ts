import type { Quantity } from '../quantity/index.js'

/** Everything that can explain a number that is not as expected. */
export type ExplanationCode =
  | 'weighed-along'
  | 'constant-offset'
  | 'other-hydrate'
  | 'constant-ratio'
  | 'numbers-swapped'
  | 'not-constant-mass'
  | 'other-salts'
  | 'incomplete-ignition'
  | 'water-lost-before'
  | 'damp'
  | 'residue-lost'
  | 'not-pure'

/** One way in which a number may have come about: a candidate with its reason, never a verdict. */
export interface Explanation {
  /** Stable name. */
  readonly code: ExplanationCode
  /** Whether the data speak for it, or just not against it. */
  readonly support: 'supported' | 'possible'
  /** One plain sentence. */
  readonly message: string
  /** The numbers behind it, by name. */
  readonly numbers: Readonly<Record<string, Quantity>>
}

/** A candidate that the data speak for. */
export function supported(code: ExplanationCode, message: string, numbers: Explanation['numbers'] = {}): Explanation {
  return { code, support: 'supported', message, numbers }
}

/** A candidate that the data do not exclude. */
export function possible(code: ExplanationCode, message: string, numbers: Explanation['numbers'] = {}): Explanation {
  return { code, support: 'possible', message, numbers }
}

/** What the data speak for comes first; else the order stays. */
export function ordered(explanations: readonly Explanation[]): readonly Explanation[] {
  const has = (support: Explanation['support']) => explanations.filter((each) => each.support === support)
  return [...has('supported'), ...has('possible')]
}
