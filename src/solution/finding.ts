import type { Quantity } from '../quantity/index.js'

/** Something about a solution or a vessel that a person should look at, though it can be computed. */
export interface SolutionFinding {
  /** Stable name of what was found. */
  readonly code: 'concentration-inconsistent' | 'beyond-vessel' | 'no-such-mark'
  /** How much it matters: `problem` spoils the result, `doubt` asks for a look, `remark` is worth knowing. */
  readonly severity: 'problem' | 'doubt' | 'remark'
  /** One plain sentence. */
  readonly message: string
  /** The numbers behind it, by name. */
  readonly numbers: Readonly<Record<string, Quantity>>
}
