/**
 * What the numbers of a table count: grams of the anhydrous salt in 100 g of solution; grams of the anhydrous salt for 100 g of
 * all the water, that of the crystals included; or grams of the crystals as weighed for 100 g of added water.
 */
export type SolubilityBasis = '100 g of solution' | '100 g of water' | '100 g of water, weighed as crystals'

/** Where the name of the solid comes from: the source names it, marks the change of phase, heads the row with it; or memory. */
export type PhaseEvidence = 'solid-phase column' | 'phase-change mark' | 'formula of the row' | 'from memory'

/** Solubilities over the range of temperature in which one solid is the stable one. */
export interface PhaseSolubility {
  /** The solid that crystallises: `ZnSO4·7H2O`. */
  readonly crystal: string
  /** Where its name comes from; unsaid in a table of one's own. */
  readonly evidence?: PhaseEvidence
  /** Temperatures in degrees Celsius, ascending. */
  readonly celsius: readonly number[]
  /** What is printed for each, with its digits, in grams on the basis of the table. */
  readonly printed: readonly string[]
}

/** Printed solubilities of one salt in pure water. Plain data, so that a table of one's own can stand in a file. */
export interface SolubilityTable {
  /** The anhydrous salt: `ZnSO4`. */
  readonly salt: string
  /** Its name: `zinc sulfate`. */
  readonly name: string
  /** What the numbers count. */
  readonly per: SolubilityBasis
  /** Where they are printed. */
  readonly source: string
  /** What is worth knowing about them. */
  readonly note?: string
  /** True where nobody looked them up again in the source. */
  readonly fromMemory?: true
  /** One entry per solid, by rising temperature. */
  readonly phases: readonly PhaseSolubility[]
}
