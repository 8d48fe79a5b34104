import { type ErrorDetails, SaltwrightError } from '../errors.js'

/** The codes of what can be wrong with an equation, or with what is asked of it. */
export type EquationCode =
  /** What should be an equation, its text or a list of stages is none. */
  | 'equation/not-text'
  /** There is nothing to read. */
  | 'equation/empty'
  /** Longer than 20 000 characters. */
  | 'equation/too-long'
  /** More than 200 terms to read, or more than 100 to balance. */
  | 'equation/too-many-species'
  /** There is no arrow. */
  | 'equation/missing-arrow'
  /** There is more than one arrow. */
  | 'equation/several-arrows'
  /** A sign that is no arrow, or one that points to the left. */
  | 'equation/unknown-arrow'
  /** Dashes that may be an arrow, or a charge and an arrow. */
  | 'equation/ambiguous-arrow'
  /** Nothing stands on one side. */
  | 'equation/empty-side'
  /** Nothing stands beside a plus. */
  | 'equation/empty-term'
  /** A number without a formula. */
  | 'equation/missing-formula'
  /** Two formulas with only a space between them. */
  | 'equation/missing-plus'
  /** Several plus signs that may be a charge, or a charge and a plus. */
  | 'equation/ambiguous-plus'
  /** A condition or a catalyst in or beside the arrow. */
  | 'equation/condition'
  /** Energy, light, or a collision partner in place of a substance. */
  | 'equation/not-a-substance'
  /** A coefficient or multiplier that is no number. */
  | 'equation/coefficient-unreadable'
  /** A coefficient that is not above zero, or has more than 100 digits. */
  | 'equation/coefficient-out-of-range'
  /** A decimal comma. */
  | 'equation/decimal-comma'
  /** Two states of one species that differ. */
  | 'equation/state-contradicted'
  /** A hydrate with an unknown number of water, whose atoms cannot be counted. */
  | 'equation/unknown-count'
  /** No coefficients balance the equation. */
  | 'equation/impossible'
  /** More than one independent set of coefficients balances it. */
  | 'equation/underdetermined'
  /** It balances only without some of its species. */
  | 'equation/unused-species'
  /** It balances only with some of its species on the other side. */
  | 'equation/wrong-side'
  /** It has to be balanced first. */
  | 'equation/unbalanced'
  /** A species without a state may be one of two. */
  | 'equation/ambiguous-state'
  /** Everything cancels. */
  | 'equation/nothing-left'
  /** A species that stands in none of the equations. */
  | 'equation/unknown-species'
  /** More than 100 stages of a chain. */
  | 'equation/too-many-stages'
  /** However often each stage runs, the stages do not add up as asked. */
  | 'equation/no-multipliers'
  /** The stages add up in more than one way. */
  | 'equation/undetermined-multipliers'
  /** A stage would have to run backwards. */
  | 'equation/reversed-stage'
  /** Which electrolytes are in solution is not known. */
  | 'equation/states-missing'
  /** A dissolved compound that is not in the table of strong electrolytes. */
  | 'equation/unknown-electrolyte'
  /** The equation shows another medium than the one asked for. */
  | 'equation/medium-contradicted'
  /** Both half-reactions take up electrons, or both give them off. */
  | 'equation/not-redox'
  /** An option that does not exist. */
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
  override toJSON(): EquationErrorDetails & {
    /** The name of the class. */
    readonly name: string
  } {
    return { ...super.toJSON(), basis: this.basis }
  }
}
