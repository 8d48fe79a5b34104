import type { Span } from '../errors.js'
import type { Formula, State } from '../formula/index.js'
import type { Fraction } from '../fraction.js'

/**
 * What stands between the two sides, by its meaning: `=` a stoichiometric relation, `->` a net forward reaction, `<->` a
 * reaction in both directions, `<=>` an equilibrium.
 *
 * @source IUPAC, Quantities, Units and Symbols in Physical Chemistry (Green Book), 3rd edition, section 2.10.1, from memory.
 */
export type Arrow = 'stoichiometric' | 'forward' | 'both-directions' | 'equilibrium'

/** One species of an equation with the number before it. */
export interface Term {
  /** How many of the species, exactly and above zero. */
  readonly coefficient: Fraction
  /** Whether the number was written; without one it is 1. */
  readonly coefficientWritten: boolean
  /** The species. */
  readonly formula: Formula
  /** Its physical state, where one was written: `(s)`, `(l)`, `(g)`, `(aq)`, or `↓` and `↑` for a solid and a gas. */
  readonly state: State | undefined
  /** Where the term stands in the text; nothing for a term that was calculated. */
  readonly position: Span | undefined
}

/** A chemical equation, read once. Every function that takes an `Equation` also takes its text. */
export interface Equation {
  /** The equation as written, or as calculated in plain notation. */
  readonly text: string
  /** The species before the arrow, in order. */
  readonly left: readonly Term[]
  /** The species after the arrow, in order. */
  readonly right: readonly Term[]
  /** The meaning of the sign between the sides. */
  readonly arrow: Arrow
  /** @returns The text of the equation. */
  toString(): string
  /** @returns The text of the equation: what JSON carries. */
  toJSON(): string
}
