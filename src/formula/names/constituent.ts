/** One kind of ion of a salt, with its name and number. */
export interface Constituent {
  /** Its formula without charge: `SO4`, `[Fe(CN)6]`. */
  readonly formula: string
  readonly name: string
  readonly charge: number
  readonly count: number
}

/** One way to read a piece of a formula as ions. */
export interface Reading {
  readonly charge: number
  readonly count: number
  readonly name: string
}

/** A piece of a formula before all charges are known; with neither readings nor names it is beyond the tables. */
export interface Piece {
  readonly formula: string
  /** The ways to read it, where its charge is known; empty where it follows from the rest. */
  readonly readings: readonly Reading[]
  /** How many, where its charge follows from the rest. */
  readonly count: number
  /** Its name at a charge, where its charge follows from the rest; `isUsual` asks for usual charges only. */
  readonly nameAt?: (charge: number, isUsual: boolean) => string | undefined
}
