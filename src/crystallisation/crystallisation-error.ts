import { SaltwrightError } from '../errors.js'

/** Everything that stops a solubility or an expected crop from being worked out. */
export type CrystallisationCode =
  | 'crystallisation/not-an-object'
  | 'crystallisation/not-a-list'
  | 'crystallisation/unknown-salt'
  | 'crystallisation/phase-not-tabulated'
  | 'crystallisation/outside-table'
  | 'crystallisation/points-too-far-apart'
  | 'crystallisation/bad-table'
  | 'crystallisation/solubility-needed'
  | 'crystallisation/not-positive'
  | 'crystallisation/salt-given-twice'
  | 'crystallisation/water-used-up'
  | 'crystallisation/no-such-crop'

/**
 * A solubility that is not known here, or a mass balance that cannot be.
 *
 * @example
 * ```ts
 * import { solubilityOf } from 'saltwright/crystallisation'
 *
 * solubilityOf('LaCl3', '5 degC') // throws crystallisation/unknown-salt
 * solubilityOf('ZnSO4·7H2O', '-10 degC') // throws crystallisation/outside-table
 * ```
 */
export class CrystallisationError extends SaltwrightError<CrystallisationCode> {}
