import type { Calculation } from './calculation.js'
import type { SlipContext } from './context.js'
import type { Replacement } from './replacement.js'

/**
 * What is known of a slip, the best known first. None of it is a measured frequency. Shown: education research saw this slip. Reported: it
 * stands in reports or questions of students. Related: research covers the difficulty, not this form of it. Printed: teaching or reference
 * material warns of it, or makes it. Inferred: it follows from the calculation, no source was found.
 */
export type Evidence = 'shown' | 'reported' | 'related' | 'printed' | 'inferred'

/** Kinds of evidence, the best first. */
export const evidenceOrder: readonly Evidence[] = ['shown', 'reported', 'related', 'printed', 'inferred']

/** What slips are about. */
export type SlipGroup =
  | 'hydrate water'
  | 'reading formulas'
  | 'mole ratio'
  | 'limiting reagent'
  | 'excess'
  | 'units'
  | 'dividing'
  | 'weighing'
  | 'rounding'
  | 'yield'
  | 'solutions'
  | 'gas'
  | 'purity'
  | 'copying'

/** One way in which a slip may have changed a calculation. */
export interface SlipChange {
  /** What is replaced; `reconsider` takes it as it is. */
  readonly change: readonly Replacement[]
  /** Why it applies, naming the number it is about. */
  readonly reason: string
}

/** A slip: a named guess at what somebody did, as data. */
export interface Slip {
  /** A short name of our own that stays the same. */
  readonly name: string
  /** What it is about. */
  readonly group: SlipGroup
  /** What the person did, for whoever teaches. */
  readonly did: string
  /** What to look at, for whoever did it: one plain sentence that does not give the answer away. */
  readonly advice: string
  /** What is known of it. */
  readonly evidence: Evidence
  /** Where it was seen. */
  readonly source: string
  /** True where its ways depend on the answer, not on the calculation alone. */
  readonly readsAnswer?: true
  /** @returns The ways in which it may have changed a calculation; none where it does not apply. */
  changes(calculation: Calculation, context: SlipContext): readonly SlipChange[]
}
