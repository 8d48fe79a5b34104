import { SaltwrightError } from '../errors.js'

/** Everything that can stop a calculation of amounts. */
export type StoichiometryCode =
  /** An equation that does not balance: its mole ratios would be wrong. */
  | 'stoichiometry/unbalanced-equation'
  /** A species that the equation does not have. */
  | 'stoichiometry/not-in-equation'
  /** A species that the equation does not consume. */
  | 'stoichiometry/not-a-reactant'
  /** A species that the equation does not make. */
  | 'stoichiometry/not-a-product'
  /** Supplies that are no object and no list. */
  | 'stoichiometry/bad-supplies'
  /** A supply that is neither an amount of substance nor a mass. */
  | 'stoichiometry/not-a-supply'
  /** No reactant has an amount, so nothing limits. */
  | 'stoichiometry/nothing-limits'
  /** A stage consumes what was neither supplied nor made before. */
  | 'stoichiometry/not-supplied'
  /** A negative amount, mass or factor. */
  | 'stoichiometry/negative'
  /** An aliquot or mass fraction that is zero, negative or above 1. */
  | 'stoichiometry/not-a-fraction'
  /** Stages that are no list of stages. */
  | 'stoichiometry/bad-stages'
  /** Something else stands where an object with named numbers is read. */
  | 'stoichiometry/not-an-object'

/**
 * An amount that cannot be worked out.
 *
 * @example
 * ```ts
 * import { limitingReagent, StoichiometryError } from 'saltwright/stoichiometry'
 *
 * try {
 *   limitingReagent('ZnO + H2SO4 -> ZnSO4 + H2O', { HCl: '0.10 mol' })
 * } catch (error) {
 *   if (error instanceof StoichiometryError) error.code // => 'stoichiometry/not-a-reactant'
 * }
 * ```
 */
export class StoichiometryError extends SaltwrightError<StoichiometryCode> {}
