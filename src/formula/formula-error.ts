import { SaltwrightError } from '../errors.js'

/** The codes of what can be wrong with a formula, with its name, or with what is asked of it. */
export type FormulaCode =
  /** What should be the text of a formula is no text. */
  | 'formula/not-text'
  /** There is nothing to read, or only a state. */
  | 'formula/empty'
  /** Longer than 10 000 characters. */
  | 'formula/too-long'
  /** More than 32 brackets inside one another. */
  | 'formula/too-deep'
  /** Letters that are no element symbol. */
  | 'formula/unknown-symbol'
  /** A usual short form of a ligand or group, such as en or Et: its formula has to be written. */
  | 'formula/abbreviation'
  /** A bracket that is not closed. */
  | 'formula/unclosed-bracket'
  /** A closing bracket that closes nothing. */
  | 'formula/unopened-bracket'
  /** A bracket closed by another kind of bracket. */
  | 'formula/mismatched-bracket'
  /** Brackets with nothing between them. */
  | 'formula/empty-bracket'
  /** Nothing before, after or between dots. */
  | 'formula/empty-part'
  /** A count of zero. */
  | 'formula/zero-count'
  /** A count that begins with a zero, such as 04. */
  | 'formula/leading-zero'
  /** A count above 1 000 000, more than six decimals, or a product of counts out of bounds. */
  | 'formula/count-out-of-range'
  /** A number that is cut short or divides by zero. */
  | 'formula/bad-number'
  /** A decimal comma. */
  | 'formula/decimal-comma'
  /** A number where none can stand. */
  | 'formula/misplaced-number'
  /** Two numbers side by side: the dot between the parts is missing. */
  | 'formula/missing-dot'
  /** An unknown number or a stand-in for an element, as in polymers, general formulas and doped crystals. */
  | 'formula/placeholder'
  /** Elements that share a place, separated by commas. */
  | 'formula/alternatives'
  /** A sign for an empty site. */
  | 'formula/vacancy'
  /** A range of numbers. */
  | 'formula/range'
  /** A mass number. */
  | 'formula/isotope-label'
  /** A Roman numeral. */
  | 'formula/oxidation-number'
  /** A bond between atoms. */
  | 'formula/bond'
  /** A prefix of a structure, such as cis- or a Greek letter. */
  | 'formula/structure-prefix'
  /** A character that looks like another one. */
  | 'formula/look-alike'
  /** HTML or LaTeX. */
  | 'formula/markup'
  /** An invisible character. */
  | 'formula/control-character'
  /** A character that has no meaning in a formula. */
  | 'formula/unexpected-character'
  /** A whole equation, or a sum of formulas. */
  | 'formula/equation'
  /** A charge that is no charge, or is out of bounds. */
  | 'formula/bad-charge'
  /** A charge that can be read in two ways. */
  | 'formula/ambiguous-charge'
  /** A charge in the middle of uncharged atoms. */
  | 'formula/misplaced-charge'
  /** An electron without its charge. */
  | 'formula/bare-electron'
  /** A state that is none of (s), (l), (g), (aq). */
  | 'formula/unknown-state'
  /** A state that is not at the end. */
  | 'formula/misplaced-state'
  /** An unknown number of water, where the number is needed. */
  | 'formula/unknown-water'
  /** A number of water that cannot be. */
  | 'formula/bad-water-number'
  /** Nothing but water, where a substance with water of crystallisation is needed. */
  | 'formula/only-water'
  /** A mass asked of an electron or of nothing. */
  | 'formula/no-mass'
  /** A style of writing that does not exist. */
  | 'formula/unknown-style'
  /** A formula whose systematic name is outside the tables. */
  | 'formula/not-nameable'
  /** A name that cannot be turned into a formula. */
  | 'formula/unknown-name'

/**
 * A formula that cannot be read, or cannot give what was asked of it. Positions are offsets in the text that was handed over.
 *
 * @example
 * ```ts
 * import { FormulaError, tryParseFormula } from 'saltwright/formula'
 *
 * const outcome = tryParseFormula('Cu(S04)')
 * if (!outcome.ok) outcome.error.hint // => 'Cu(SO4)?'
 * if (!outcome.ok) outcome.error instanceof FormulaError // => true
 * ```
 */
export class FormulaError extends SaltwrightError<FormulaCode> {}
