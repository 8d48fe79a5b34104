import type { TextOf } from '../stoichiometry/given.js'

/** One strength in which a reagent is sold, as a source prints it. */
export interface StockStrength {
  /** Mass of substance by mass of solution. */
  readonly massFraction: TextOf<'ratio'>
  /** What the mass fraction is stated as, where that is not the substance. */
  readonly basis?: string
  /** Density of the solution. */
  readonly density: TextOf<'density'>
  /** Amount concentration as the source prints it. */
  readonly printed: TextOf<'amountConcentration'>
  /** Where the three numbers stand. */
  readonly source: string
  /** True where no source could be read. */
  readonly fromMemory?: true
  /** What is odd about them. */
  readonly note?: string
}

/** A concentrated reagent with the strengths in which it is sold. */
export interface StockReagent {
  /** Its usual name. */
  readonly name: string
  /** What the concentration is of. */
  readonly formula: string
  /** Its strengths; the first is the usual one. */
  readonly strengths: readonly StockStrength[]
}
