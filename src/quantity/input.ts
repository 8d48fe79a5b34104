import type { Decimal } from '../decimal.js'

/** How an input came to be: read off an instrument, chosen or counted, or taken from a table of constants. */
export type InputKind = 'measured' | 'exact' | 'constant'

/** The shape of what is known about an input: JCGM 100:2008, 4.3 (rectangular, triangular, arcsine) or normal. */
export type Distribution = 'normal' | 'rectangular' | 'triangular' | 'arcsine'

/** A stated uncertainty, in the unit of its input. */
export interface StatedUncertainty {
  /** Standard uncertainty. */
  readonly standard: Decimal
  /** What the statement was. */
  readonly distribution: Distribution
  /** Degrees of freedom; absent means unlimited. */
  readonly degreesOfFreedom?: number
}

/** What is known of an input. The object itself is the identity of the measurement. */
export interface InputFacts {
  /** Measured, exact or constant. */
  readonly kind: InputKind
  /** Exponent of ten of the last digit as written. */
  readonly writtenPlace: number
  /** True where trailing zeros of a whole number left its figures open. */
  readonly ambiguous: boolean
  /** The uncertainty stated for it. */
  readonly uncertainty: StatedUncertainty | undefined
  /** A name that stays the same wherever this measurement is saved; two inputs with one are the same measurement. */
  readonly id: string | undefined
}

/** What a quantity plays in a calculation; a review looks for slips by these. */
export type Role =
  | 'atomic weight'
  | 'molar mass'
  | 'mole ratio'
  | 'excess'
  | 'amount'
  | 'mass'
  | 'gross'
  | 'tare'
  | 'net'
  | 'volume'
  | 'concentration'
  | 'density'
  | 'mass fraction'
  | 'assay'
  | 'purity'
  | 'scale'
  | 'theoretical yield'
  | 'actual yield'
  | 'percent yield'
  | 'equivalence factor'
  | 'aliquot'
  | 'solubility'
  | 'water'
  | 'temperature'
  | 'pressure'

/** What a quantity is called. All of it is for people and for finding it again; nothing of it changes a number. */
export interface Naming {
  /** In words: `mass of zinc oxide`. */
  readonly label?: string
  /** Its symbol by the IUPAC Green Book: `m`, `n`, `M`, `c`, `V`, `w`. */
  readonly symbol?: string
  /** Of what: a formula, `ZnO`. */
  readonly of?: string
  /** What it plays in the calculation. */
  readonly role?: Role
}
