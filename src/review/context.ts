import type { AtomicWeights } from '../element/index.js'
import type { EquationLike } from '../equation/index.js'
import type { Quantity } from '../quantity/index.js'

/** A reactant that stood on the bench, for slips about what limits. */
export interface ReactantAtHand {
  /** Which, as a formula. */
  readonly of: string
  /** How much of it there was. */
  readonly amount: Quantity<'amount'>
  /** How much product it would give if it alone decided. */
  readonly gives: Quantity<'amount'>
  /** What was weighed of it; absent for what was measured out as a solution. */
  readonly mass?: Quantity<'mass'> | undefined
}

/** What a person had at hand beside the numbers of the calculation, and may have taken by mistake. All of it may be left out. */
export interface ReviewContext {
  /**
   * Numbers at hand, each with its role and of what it is: other tares, the filter paper (a tare whose label says `paper`), earlier
   * weighings (`gross`), strengths of other bottles, excess factors of other reagents, mole ratios of single steps, the aliquot, what a
   * manual prints for another scale (`mass` or `volume`).
   */
  readonly atHand?: readonly Quantity[] | undefined
  /** The reactants. */
  readonly reactants?: readonly ReactantAtHand[] | undefined
  /** The equations at hand, the overall one first. */
  readonly equations?: readonly EquationLike[] | undefined
  /** Formulas at hand: other hydrates, the anhydrous salt, compounds of a similar name. */
  readonly formulas?: readonly string[] | undefined
}

/** A context as slips see it. */
export interface SlipContext extends ReviewContext {
  /** The context that it was made from, as it was handed over. */
  readonly given?: ReviewContext | undefined
  /** Atomic weights for formulas that the calculation itself does not weigh. */
  readonly weights: AtomicWeights | undefined
  /** The answer in the unit of the calculation's result, and the exponent of ten of its last digit; absent where only the slips are asked for. */
  readonly answer?:
    | {
        /** Its number. */
        readonly value: Quantity['value']
        /** Exponent of ten of its last digit. */
        readonly place: number
      }
    | undefined
}
