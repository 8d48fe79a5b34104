import type { Quantity } from '../quantity/index.js'

/** How much a finding matters: `problem` spoils the result, `doubt` asks for a look, `remark` is worth knowing. */
export type Severity = 'problem' | 'doubt' | 'remark'

/** What a person should see; what cannot be computed at all is an error instead. */
export interface Finding {
  /** Stable name: `supply-short`. */
  readonly code: FindingCode
  /** How much it matters. */
  readonly severity: Severity
  /** One plain sentence. */
  readonly message: string
  /** The numbers behind it, by name. */
  readonly numbers: Readonly<Record<string, Quantity>>
  /** Where to look, as keys and indices from the root of the recipe or the records. */
  readonly path: readonly (string | number)[]
}

/** Every finding there is. */
export type FindingCode =
  | 'supply-short'
  | 'supply-not-needed'
  | 'practically-equal'
  | 'not-the-scale-limits'
  | 'alkali-or-acid-cleared'
  | 'below-readability'
  | 'beyond-vessel'
  | 'no-such-mark'
  | 'concentration-inconsistent'
  | 'rounded-visibly'
  | 'claim-does-not-hold'
  | 'claim-holds'
  | 'gross-below-tare'
  | 'nothing-obtained'
  | 'yield-over-100'
  | 'not-constant-mass'
  | 'criterion-below-readability'
  | 'supply-not-recorded'
  | 'other-limits'
  | 'solubility-unknown'
  | 'much-stays-dissolved'

/** What a finding is called where it is shown, the gravest first. */
export const severityWords: Readonly<Record<Finding['severity'], string>> = {
  problem: 'Problem',
  doubt: 'To check',
  remark: 'Note',
}
