import { type ErrorDetails, SaltwrightError } from '../errors.js'

/** Every mistake the `equation` topic can name. */
export type EquationCode =
  | 'equation/not-text'
  | 'equation/empty'
  | 'equation/too-long'
  | 'equation/too-many-species'
  | 'equation/missing-arrow'
  | 'equation/several-arrows'
  | 'equation/unknown-arrow'
  | 'equation/ambiguous-arrow'
  | 'equation/empty-side'
  | 'equation/empty-term'
  | 'equation/missing-formula'
  | 'equation/missing-plus'
  | 'equation/ambiguous-plus'
  | 'equation/condition'
  | 'equation/not-a-substance'
  | 'equation/coefficient-unreadable'
  | 'equation/coefficient-out-of-range'
  | 'equation/decimal-comma'
  | 'equation/state-contradicted'
  | 'equation/unknown-count'
  | 'equation/impossible'
  | 'equation/underdetermined'
  | 'equation/unused-species'
  | 'equation/wrong-side'
  | 'equation/unbalanced'
  | 'equation/ambiguous-state'
  | 'equation/nothing-left'
  | 'equation/unknown-species'
  | 'equation/no-multipliers'
  | 'equation/undetermined-multipliers'
  | 'equation/reversed-stage'
  | 'equation/states-missing'
  | 'equation/unknown-electrolyte'
  | 'equation/medium-contradicted'
  | 'equation/not-redox'
  | 'equation/unknown-option'

/** What an {@link EquationError} says: the usual details and, where there is more than one answer, a basis of them. */
export interface EquationErrorDetails extends ErrorDetails<EquationCode> {
  /** Independent balanced equations, of which every other answer is a combination. */
  readonly basis?: readonly string[] | undefined
}

/**
 * An equation that cannot be read, balanced, combined or completed.
 *
 * @example
 * ```ts
 * import { tryParseEquation } from 'saltwright/equation'
 *
 * const outcome = tryParseEquation('2 H2 + O2')
 * outcome.ok ? '' : outcome.error.code // => 'equation/missing-arrow'
 * ```
 */
export class EquationError extends SaltwrightError<EquationCode> implements EquationErrorDetails {
  /** Independent balanced equations, of which every other answer is a combination; only with `equation/underdetermined`. */
  readonly basis: readonly string[] | undefined

  /** @param details - The code, the sentence, and where it applies position, found, expected, hint, basis. */
  constructor(details: EquationErrorDetails) {
    super(details)
    this.basis = details.basis
  }

  /** @returns The error as plain data, without a stack: what another program or a log needs. */
  override toJSON(): EquationErrorDetails & { readonly name: string } {
    return { ...super.toJSON(), basis: this.basis }
  }
}
