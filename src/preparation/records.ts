/** What was weighed or measured of one supply. Give a mass by difference, a mass, or a volume. */
export interface SupplyRecord {
  /** The substance, as in the equations. */
  readonly substance: string
  /** Vessel and substance together: `27.455 g`. */
  readonly gross?: string
  /** The empty vessel: `24.200 g`. */
  readonly tare?: string
  /** The mass itself, from a tared balance. */
  readonly mass?: string
  /** The volume. */
  readonly volume?: string
  /** Assay of this very bottle, where it was measured. */
  readonly assay?: string
  /** Concentration of this very solution, where it was measured. */
  readonly concentration?: string
}

/** What was weighed of the product. */
export interface ProductRecord {
  /** Vial and crystals together, at the last weighing. */
  readonly gross?: string
  /** The empty vial, with its cap and label if they are weighed too. */
  readonly tare?: string
  /** The mass itself, from a tared balance. */
  readonly mass?: string
  /** Gross masses in the order they were weighed while the crystals dried; the last one counts. */
  readonly series?: readonly string[]
  /** When two weighings count as the same: within so much of each other. */
  readonly constantWithin?: string
  /** Mass fraction of the product, where it was assayed. */
  readonly purity?: string
}

/** What one bench wrote down: weighings and readings, with their digits. */
export interface Records {
  /** `saltwright/records@1`. */
  readonly format: 'saltwright/records@1'
  /** Whose they are: `Bench 1`. */
  readonly bench?: string
  /** Anything else a reader should know. */
  readonly notes?: readonly string[]
  /** What went in. A supply that is not listed counts as planned. */
  readonly supplies?: readonly SupplyRecord[]
  /** What came out. */
  readonly product: ProductRecord
}
