/** Glassware that measures a volume. */
export type GlasswareItem = 'volumetric flask' | 'transfer pipette' | 'burette' | 'measuring cylinder'

/** Whose tolerances: those of the International Organization for Standardization, or of ASTM International. They differ. */
export type GlasswareStandard = 'ISO' | 'ASTM'

/** The two classes of accuracy, A the better one. */
export type AccuracyClass = 'A' | 'B'

/** A volume as the tables have it. */
export type Millilitres = `${number} mL`

/** One size of a kind of glassware. */
export interface GlasswareSize {
  /** Nominal capacity. */
  readonly capacity: Millilitres
  /** Smallest division of its scale; absent where there is one mark only. */
  readonly division?: Millilitres
  /** Tolerance of class A, plus or minus. */
  readonly A: Millilitres
  /** Tolerance of class B, plus or minus. */
  readonly B: Millilitres
}

/** The sizes of one kind of glassware in one standard. */
export interface GlasswareTable {
  /** What it is. */
  readonly item: GlasswareItem
  /** Whose standard. */
  readonly standard: GlasswareStandard
  /** Which standard, with its year where known. */
  readonly edition: string
  /** Whether the capacity is what it holds or what it delivers. */
  readonly adjusted: 'to contain' | 'to deliver' | 'to contain or to deliver'
  /** Where the numbers were read. */
  readonly source: string
  /** True where no source could be read. */
  readonly fromMemory: boolean
  /** Its sizes, in the order of capacity. */
  readonly sizes: readonly GlasswareSize[]
}

/** One size with what its table says of it. */
export interface GlasswareRow extends Omit<GlasswareTable, 'sizes'>, GlasswareSize {}
