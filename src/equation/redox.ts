import { fraction } from '../fraction.js'
import { combined } from './combine.js'
import { completeHalf, completeWhole } from './completion.js'
import { completionFailure, notRedox } from './completion-errors.js'
import type { Equation, Term } from './equation.js'
import { type EquationLike, equationOf } from './equation-of.js'
import { withoutHelpers } from './half-reaction.js'
import { helperOf } from './helper-species.js'
import { leastCommonMultiple } from './integers.js'
import { checkComposition } from './known-composition.js'
import { lowestTerms } from './lowest-terms.js'
import { checkMedium, inMedium, type Medium, type MediumOptions } from './medium.js'
import { splitHalves } from './redox-halves.js'

/** A redox reaction completed by {@link completeRedox}. */
export interface RedoxCompletion {
  /** The balanced equation. */
  readonly equation: Equation
  /** The half-reaction that gives off electrons; nothing where the reaction could not be taken apart. */
  readonly oxidation: Equation | undefined
  /** The half-reaction that takes up electrons; nothing where the reaction could not be taken apart. */
  readonly reduction: Equation | undefined
  /** Electrons transferred as the equation is written; nothing where the reaction could not be taken apart. */
  readonly electrons: number | undefined
}

/**
 * Completes a redox equation by the half-reaction method: takes it apart into oxidation and reduction, completes each with
 * water, hydrons and electrons, and adds them up so that the electrons cancel; in a base hydrons become hydroxide. Where it
 * cannot be taken apart (one species oxidises and forms a salt, as in copper and nitric acid), it is balanced as a whole.
 *
 * @param equation - The skeleton or its text: what is oxidised, what is reduced, and what they become. Water, hydrons,
 * hydroxide and electrons that are already written are found anew.
 * @param options - Whether the solution is an acid or a base.
 * @returns The balanced equation in lowest terms, its half-reactions and the electrons transferred.
 * @throws {@link EquationError} `equation/impossible` where water, hydrons and electrons do not balance it.
 * @throws {@link EquationError} `equation/underdetermined` where they do in more than one way.
 * @throws {@link EquationError} `equation/not-redox` where both halves give off, or both take up, electrons.
 * @throws {@link EquationError} `equation/medium-contradicted` where the equation shows the other medium.
 * @source OpenStax, Chemistry 2e, section 17.1, the half-reaction method.
 *
 * @example
 * ```ts
 * import { completeRedox } from 'saltwright/equation'
 *
 * const titration = completeRedox('MnO4^- + Fe^2+ -> Mn^2+ + Fe^3+', { medium: 'acid' })
 * titration.equation.text // => 'MnO4^- + 5 Fe^2+ + 8 H^+ -> Mn^2+ + 5 Fe^3+ + 4 H2O'
 * titration.oxidation?.text // => 'Fe^2+ -> Fe^3+ + e^-'
 * titration.electrons // => 5
 * completeRedox('Cl2 -> Cl^- + ClO3^-', { medium: 'base' }).equation.text
 * // => '3 Cl2 + 6 OH^- -> 5 Cl^- + ClO3^- + 3 H2O'
 * ```
 */
export function completeRedox(equation: EquationLike, options: MediumOptions): RedoxCompletion {
  const given = equationOf(equation)
  checkMedium(given, options)
  checkComposition(given)
  const own = withoutHelpers(given)
  const halves = splitHalves(own)?.map((half) => completeHalf(half, given))
  const [first, second] = halves ?? []
  if (first !== undefined && second !== undefined) return joined(first, second, given, options.medium)
  const whole = completeWhole(own, given)
  if (whole === undefined) throw completionFailure(own, given, 'whole')
  return {
    equation: inMedium(whole, given, options.medium),
    oxidation: undefined,
    reduction: undefined,
    electrons: undefined,
  }
}

/** Oxidation and reduction added up so that the electrons cancel. */
function joined(first: Equation, second: Equation, given: Equation, medium: Medium): RedoxCompletion {
  const [oxidation, reduction] = electronsIn(first.right) > 0n ? [first, second] : [second, first]
  const [released, taken] = [electronsIn(oxidation.right), electronsIn(reduction.left)]
  if (released === 0n || taken === 0n) throw notRedox([first, second])
  const electrons = leastCommonMultiple(released, taken)
  const sum = combined([reduction, oxidation], [fraction(electrons, taken), fraction(electrons, released)])
  const lowest = lowestTerms(sum)
  return {
    equation: inMedium(lowest, given, medium),
    oxidation: inMedium(oxidation, given, medium),
    reduction: inMedium(reduction, given, medium),
    electrons: Number((electrons * firstCoefficient(lowest)) / firstCoefficient(sum)),
  }
}

function electronsIn(terms: readonly Term[]): bigint {
  return terms.find(({ formula }) => helperOf(formula) === 'e^-')?.coefficient.numerator ?? 0n
}

function firstCoefficient({ left }: Equation): bigint {
  return (left[0] as Term).coefficient.numerator
}
