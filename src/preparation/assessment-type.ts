import type { ConstantMass, Explanation, LossLine } from '../product/index.js'
import type { Quantity } from '../quantity/index.js'
import type { Finding } from './finding.js'
import type { Excess, Plan } from './plan-type.js'
import type { Records } from './records.js'

/** What was used of one supply. */
export interface UsedSupply {
  /** The substance, as in the equations. */
  readonly substance: string
  /** What it is called. */
  readonly name: string
  /** The stage it went into. */
  readonly stage: string
  /** Whether it was weighed or measured by the bench; otherwise it counts as planned. */
  readonly recorded: boolean
  /** The mass or volume that was used. */
  readonly measure: Quantity<'mass'> | Quantity<'volume'>
  /** The amount that is. */
  readonly amount: Quantity<'amount'>
  /** How it compares with the need; absent where nothing of it is needed. */
  readonly excess: Excess | undefined
}

/** What came of a preparation, from the weighings. `JSON.stringify` gives the whole of it. */
export interface Assessment {
  /** `saltwright/assessment@1`. */
  readonly format: 'saltwright/assessment@1'
  /** The records it was made from. */
  readonly records: Records
  /** Whose it is. */
  readonly bench: string | undefined
  /** What was to be made. */
  readonly title: string
  /** The product. */
  readonly product: Plan['product']
  /** What went in. */
  readonly used: readonly UsedSupply[]
  /** The supplies that decided how much product there could be. */
  readonly limiting: readonly string[]
  /** The most product there could be, from what was really used. */
  readonly theoretical: Plan['theoretical']
  /** What was obtained. */
  readonly actual: {
    /** Its mass. */
    readonly mass: Quantity<'mass'>
    /** The amount that it is, taken as pure product. */
    readonly amount: Quantity<'amount'>
  }
  /** Actual over theoretical yield, in per cent, as found: never cut off at 100 %. */
  readonly percentYield: Quantity<'ratio'>
  /** The same, counting only the pure part of the product; absent where its purity was not measured. */
  readonly correctedYield: Quantity<'ratio'> | undefined
  /** How the drying series came to rest; absent where there is none or no criterion. */
  readonly constancy: ConstantMass | undefined
  /** Why the yield may be over 100 %, the best supported first; empty up to 100 %. */
  readonly explanations: readonly Explanation[]
  /** Where the theoretical yield went, as far as anybody knows; never made to add up. */
  readonly losses: readonly LossLine[]
  /** Which atomic weights were used. */
  readonly atomicWeights: string
  /** What a person should see. */
  readonly findings: readonly Finding[]
}
