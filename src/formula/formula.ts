import type { Decimal } from '../decimal.js'
import type { Span } from '../errors.js'
import type { Fraction } from '../fraction.js'

/** A physical state as written behind a formula. */
export type State = 's' | 'l' | 'g' | 'aq'

/** One part of a formula between the dots of an addition compound: `CuSO4` and `5H2O` in `CuSO4·5H2O`. */
export interface Part {
  /** The part as written, without its leading number, with its charge. */
  readonly text: string
  /** How many of it, exactly; `null` where the number is unknown (`xH2O`). */
  readonly times: Fraction | null
  /** Atoms in one of it: element symbol to exact count. */
  readonly counts: ReadonlyMap<string, Fraction>
  /** Charge of one of it, in elementary charges. */
  readonly charge: number
}

/** What can be doubtful in legal text. */
export type FormulaNoteCode =
  /** Two capitals that are one element: `CUSO4`. */
  | 'likely-case-slip'
  /** A digit zero for the letter O: `Fe203`. */
  | 'likely-letter-o'
  /** A capital I or a digit one for the letter l: `NaCI`, `NaC1`. */
  | 'likely-letter-l'
  /** A slash for the dot before the water: `CuSO4/5H2O`. */
  | 'likely-dot'
  /** The letter I or V in brackets behind a metal: `Cu(I)Cl`. */
  | 'likely-oxidation-number'
  /** Ac behind oxygen is actinium, not acetyl: `NaOAc`. */
  | 'likely-abbreviation'
  /** An oxoanion with an unusual number of oxygen atoms: `CuSO5`. */
  | 'odd-oxoanion'
  /** Usual ions whose usual charges do not add up to zero: `NaSO4`. */
  | 'charges-do-not-add-up'

/** Something legal that is probably not what was meant. */
export interface FormulaNote {
  /** Stable name of the doubt. */
  readonly code: FormulaNoteCode
  /** One sentence for a person. */
  readonly message: string
  /** Where in the `text` of the formula. */
  readonly position: Span
  /** What was probably meant, as a formula. */
  readonly suggestion: string | undefined
}

/** A chemical formula, read once. Every function that takes a `Formula` also takes its text. */
export interface Formula {
  /** The formula as written, without a state. */
  readonly text: string
  /** Net charge in elementary charges; the electron `e^-` has -1. */
  readonly charge: number
  /** The parts between the dots, in order. */
  readonly parts: readonly Part[]
  /**
   * Moles of water of crystallisation per mole of the whole formula unit: what stands between dots and is water, inside brackets
   * too. 0 for an anhydrous formula and for water itself, `null` where unknown (`·xH2O`).
   */
  readonly hydration: Decimal | null
  /** Atoms per formula unit, in order of appearance. Water of unknown number is left out. A map of its own for each formula. */
  readonly composition: ReadonlyMap<string, Decimal>
  /** The same, exactly: 8/3 stays 8/3. */
  readonly counts: ReadonlyMap<string, Fraction>
  /** The state, where one was written. */
  readonly state: State | undefined
  /** Doubts about legal text; empty for most formulas. */
  readonly notes: readonly FormulaNote[]
  /** @returns The formula as written. */
  toString(): string
  /** @returns The formula as written: what JSON carries. */
  toJSON(): string
}
