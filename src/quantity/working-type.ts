import type { Quantity } from './quantity.js'
import type { Expression } from './rule.js'

/** What a quantity is called in a worked line: by its symbol, or in words where it has none. */
export interface WorkingName {
  /** Its symbol, such as `n`; undefined where it only has words. */
  readonly symbol: string | undefined
  /** Tells several of one name apart, from 1; undefined where there is one. */
  readonly index: number | undefined
  /** Of what: a formula, or words. */
  readonly of: string | undefined
  /** In words: `amount of zinc oxide`. */
  readonly label: string | undefined
}

/** A number as it stands in a worked line. */
export interface WorkingNumber {
  /** Its digits. */
  readonly number: string
  /** Its unit; empty for a plain ratio. */
  readonly unit: string
}

/** A quantity in a formula: what it is called, and what is put in for it. */
export interface WorkingTerm {
  /** Its name; undefined for a number that only the formula has. */
  readonly name: WorkingName | undefined
  /** What is put in, in the unit that it is needed in. */
  readonly value: WorkingNumber
  /** The quantity itself, as it is put in. */
  readonly quantity: Quantity
}

/** A quantity that was known from the start. */
export interface WorkingGiven extends WorkingTerm {
  /** Its name. */
  readonly name: WorkingName
}

/** One worked line: what is sought, the formula, the numbers, the result. */
export interface WorkingStep {
  /** What is sought; undefined for a last result without a name. */
  readonly name: WorkingName | undefined
  /** The formula; its names are positions in `terms`. */
  readonly formula: Expression
  /** The quantities of the formula. */
  readonly terms: readonly WorkingTerm[]
  /** The result before it is rounded, with guard digits. */
  readonly unrounded: WorkingNumber
  /** The result rounded to what is significant. */
  readonly shown: WorkingNumber
  /** Whether the number shown is not the very result. */
  readonly rounded: boolean
  /** The result itself. */
  readonly quantity: Quantity
}

/** A calculation as it is written down. */
export interface Working {
  /** What was known from the start and has a name, in the order in which it is needed. */
  readonly given: readonly WorkingGiven[]
  /** The lines, each after those it needs; the last is the result. */
  readonly steps: readonly WorkingStep[]
}
