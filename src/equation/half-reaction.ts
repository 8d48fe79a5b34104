import { completeHalf } from './completion.js'
import { completionFailure } from './completion-errors.js'
import type { Equation } from './equation.js'
import { type EquationLike, equationOf } from './equation-of.js'
import { checkComposition } from './known-composition.js'
import { makeEquation } from './make-equation.js'
import { checkMedium, inMedium, isHelper, type MediumOptions } from './medium.js'

/**
 * Completes a half-reaction: from what is oxidised or reduced and what it becomes, adds electrons, and water with hydrons or
 * hydroxide where they are needed. Water, hydrons, hydroxide and electrons that are already written are found anew.
 *
 * @param equation - The half-reaction or its text; one side may hold nothing but water, hydrons, hydroxide or electrons.
 * @param options - Whether the solution is an acid or a base.
 * @returns The balanced half-reaction, with the smallest whole numbers.
 * @throws {@link EquationError} `equation/impossible` where water, hydrons and electrons do not balance it.
 * @throws {@link EquationError} `equation/underdetermined` where they do in more than one way.
 * @throws {@link EquationError} `equation/medium-contradicted` where the equation shows the other medium.
 * @source OpenStax, Chemistry 2e, section 17.1, the half-reaction method.
 *
 * @example
 * ```ts
 * import { completeHalfReaction } from 'saltwright/equation'
 *
 * completeHalfReaction('MnO4^- -> Mn^2+', { medium: 'acid' }).text
 * // => 'MnO4^- + 8 H^+ + 5 e^- -> Mn^2+ + 4 H2O'
 * completeHalfReaction('Cr(OH)3 -> CrO4^2-', { medium: 'base' }).text
 * // => 'Cr(OH)3 + 5 OH^- -> CrO4^2- + 4 H2O + 3 e^-'
 * completeHalfReaction('Fe^2+ -> Cu', { medium: 'acid' }) // throws equation/impossible
 * ```
 */
export function completeHalfReaction(equation: EquationLike, options: MediumOptions): Equation {
  const given = equationOf(equation)
  checkMedium(given, options)
  checkComposition(given)
  const own = withoutHelpers(given)
  const balanced = completeHalf(own, given)
  if (balanced === undefined) throw completionFailure(own, given, 'half')
  return inMedium(balanced, given, options.medium)
}

/** The equation without water, hydrons, hydroxide and electrons; a side may be empty. */
export function withoutHelpers({ left, right, arrow, text }: Equation): Equation {
  const own = { left: left.filter((term) => !isHelper(term)), right: right.filter((term) => !isHelper(term)) }
  return makeEquation({ ...own, arrow, text })
}
