import type { Quantity } from '../quantity/index.js'

/** An amount of a substance. */
export interface Portion {
  /** The substance as a formula. */
  readonly formula: string
  /** Its amount. */
  readonly amount: Quantity<'amount'>
}
