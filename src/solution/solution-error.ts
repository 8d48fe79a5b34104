import { SaltwrightError } from '../errors.js'

/** Everything that can stop a calculation with solutions. */
export type SolutionCode =
  /** Something else stands where an object with named numbers is read. */
  | 'solution/not-an-object'
  /** Nothing says how strong a solution is. */
  | 'solution/no-strength'
  /** A density, volume, concentration or number of equivalents that is not above zero. */
  | 'solution/not-above-zero'
  /** A mass fraction that is not above zero, or above 1. */
  | 'solution/not-a-fraction'
  /** A solution that would hold more solute than it weighs. */
  | 'solution/more-solute-than-solution'
  /** Two formulas that cannot state the strength of the same thing. */
  | 'solution/unrelated-bases'
  /** A normality without a number of equivalents, or one that is not a whole number above zero. */
  | 'solution/bad-equivalents'
  /** A dilution needs three of its four numbers. */
  | 'solution/three-of-four'
  /** A solution cannot be made stronger by adding water. */
  | 'solution/cannot-concentrate'
  /** A reagent that the table of stock solutions does not have. */
  | 'solution/unknown-stock'
  /** A substance without a table of densities. */
  | 'solution/no-density-table'
  /** A mass fraction or density outside its table. */
  | 'solution/outside-table'
  /** A density that two mass fractions share. */
  | 'solution/ambiguous-density'
  /** Glassware, or a size of it, that the tables do not have. */
  | 'solution/unknown-glassware'
  /** Two scales of one size with different tolerances: the smallest division has to be said. */
  | 'solution/division-needed'
  /** A choice of another name. */
  | 'solution/unknown-option'
  /** Something else stands where a quantity is rounded. */
  | 'solution/not-a-quantity'
  /** A vessel with one mark has no scale to read. */
  | 'solution/no-scale'

/**
 * A solution that cannot be calculated.
 *
 * @example
 * ```ts
 * import { dilution, SolutionError } from 'saltwright/solution'
 *
 * try {
 *   dilution({ from: '3 mol/L', to: '6 mol/L', volume: '100 mL' })
 * } catch (error) {
 *   if (error instanceof SolutionError) error.code // => 'solution/cannot-concentrate'
 * }
 * ```
 */
export class SolutionError extends SaltwrightError<SolutionCode> {}
