/** One kind of ion of a salt, with its name and number. */
export interface Constituent {
  /** Its formula without charge: `SO4`, `[Fe(CN)6]`. */
  readonly formula: string
  readonly name: string
  readonly charge: number
  readonly count: number
  /** Whether its number is bis, tris ... with brackets around the name: di and tri would be part of another name. */
  readonly isGrouped: boolean
}

/** One way to read a piece of a formula as ions. */
export interface Reading {
  readonly charge: number
  readonly count: number
  readonly name: string
}

/** A piece of a formula before all charges are known. */
export interface Piece {
  readonly formula: string
  /** The ways to read it, where its charge is known; empty where it follows from the rest. */
  readonly readings: readonly Reading[]
  /** How many, where its charge follows from the rest. */
  readonly count: number
  /** Its name at a charge, where its charge follows from the rest; `isUsual` asks for usual charges only. */
  readonly nameAt?: (charge: number, isUsual: boolean) => string | undefined
  readonly isGrouped: boolean
}
