import type { ConstantMassCriterionName } from '../product/index.js'

/** What was weighed or measured of one supply. Give a mass by difference, a mass, or a volume. */
export interface SupplyRecord {
  /** The substance, as in the equations. */
  readonly substance: string
  /** The stage it went into, where the same substance goes into several; the first that has no record yet unless said. */
  readonly stage?: string
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

/** A vessel with some of the product. */
export interface VesselRecord {
  /** Vessel and crystals together. */
  readonly gross: string
  /** The empty vessel; or vial, cap, label and filter paper one by one. */
  readonly tare: string | readonly string[]
}

/** When two weighings count as the same: a criterion of `constantMassCriteria`, or within so much of each other. */
export type ConstancyRecord =
  | ConstantMassCriterionName
  | {
      /** The largest difference between the last two weighings, with its unit. */
      readonly within: string
    }

/** What was weighed of the product. Give a mass; a gross and a tare; a series and a tare; or several vessels. */
export interface ProductRecord {
  /** Vial and crystals together, at the last weighing. */
  readonly gross?: string
  /** The empty vial; or vial, cap, label and filter paper one by one. */
  readonly tare?: string | readonly string[]
  /** The mass itself, from a tared balance. */
  readonly mass?: string
  /** Gross masses in the order they were weighed while the crystals dried; the last one counts. */
  readonly series?: readonly string[]
  /** When the series counts as constant; not judged unless said. A criterion per gram goes by the substance at the first weighing, less its tare. */
  readonly constancy?: ConstancyRecord
  /** Several vessels that hold the product together. */
  readonly vessels?: readonly VesselRecord[]
  /** Masses that may have been weighed along unawares, such as a filter paper: used to explain a yield over 100 %. */
  readonly mayBeIncluded?: readonly string[]
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
