import { showFound } from '../errors.js'
import { type Fraction, fractionOf } from '../fraction.js'
import type { Equation, Term } from './equation.js'
import { EquationError } from './equation-error.js'
import { type EquationLike, equationOf } from './equation-of.js'
import { makeEquation } from './make-equation.js'
import { type Multiplier, readMultiplier } from './multiplier.js'
import { type NetAmount, netAmounts, statesIn, sumAmounts } from './net-amounts.js'
import { withCoefficient } from './place-solution.js'

/** One stage of a chain, and how many times it runs. */
export interface EquationStage {
  /** The equation of the stage. */
  readonly equation: EquationLike
  /** How many times it runs: 1 unless said otherwise; a negative number runs it backwards. */
  readonly times?: Multiplier | undefined
}

/**
 * The overall equation of a chain of stages: each stage times its multiplier, and what one stage makes and another uses
 * cancelled. Exact arithmetic; coefficients are left as they come out, see {@link lowestTerms}. The stages need not be
 * balanced.
 *
 * A species is the same where its formula is and its states do not differ: `(s)` and `(aq)` of one formula are two
 * species, one without a state is the one whose state is written elsewhere in the chain.
 *
 * @param stages - The stages, in order.
 * @returns What all stages together use and make, in the order in which the species first stand in them.
 * @throws {@link EquationError} `equation/nothing-left` where everything cancels, or there is no stage.
 * @throws {@link EquationError} `equation/empty-side` where everything on one side cancels.
 * @throws {@link EquationError} `equation/ambiguous-state` where a species without a state may be one of two.
 * @throws {@link EquationError} `equation/coefficient-unreadable` where a multiplier is no exact number.
 * @source Common practice, no source.
 *
 * @example
 * ```ts
 * import { combine } from 'saltwright/equation'
 *
 * const dissolving = 'Zn(s) + H2SO4(aq) -> ZnSO4(aq) + H2(g)'
 * const crystallising = 'ZnSO4(aq) + 7 H2O(l) -> ZnSO4·7H2O(s)'
 * const overall = combine([{ equation: dissolving }, { equation: crystallising }])
 * overall.text // => 'Zn(s) + H2SO4(aq) + 7 H2O(l) -> H2(g) + ZnSO4·7H2O(s)'
 * combine([{ equation: dissolving }, { equation: dissolving, times: -1 }]) // throws equation/nothing-left
 * ```
 */
export function combine(stages: readonly EquationStage[]): Equation {
  if (!Array.isArray(stages)) throw notStages(stages)
  const given = stages.map((stage): Partial<EquationStage> => Object(stage))
  const equations = given.map(({ equation }) => equationOf(equation as EquationLike))
  return combined(
    equations,
    given.map(({ times }, index) => (times === undefined ? fractionOf(1) : readMultiplier(times, [index, 'times']))),
  )
}

/** The overall equation of some equations, each with its exact multiplier; `nothing` is the error where all cancels. */
export function combined(
  equations: readonly Equation[],
  times: readonly Fraction[],
  nothing: () => EquationError = nothingLeft,
): Equation {
  const table = statesIn(equations)
  const amounts = equations.map((equation, index) => netAmounts(equation, times[index] as Fraction, table))
  const all = [...sumAmounts(amounts).values()]
  const left = all.filter(({ net }) => net.numerator < 0n).map(toTerm)
  const right = all.filter(({ net }) => net.numerator > 0n).map(toTerm)
  const arrow = commonArrow(equations)
  if (left.length + right.length === 0) throw nothing()
  if (left.length === 0 || right.length === 0) throw emptySide(left.length === 0 ? 'left' : 'right')
  return makeEquation({ left, right, arrow })
}

function toTerm({ formula, state, net }: NetAmount): Term {
  const coefficient = net.numerator < 0n ? { ...net, numerator: -net.numerator } : net
  const term = { coefficient, coefficientWritten: true, formula, state, position: undefined }
  return withCoefficient(term, coefficient)
}

/** The arrow that all stages have; a plain one where they differ. */
function commonArrow(equations: readonly Equation[]): Equation['arrow'] {
  const [kind = 'forward', ...others] = new Set(equations.map(({ arrow }) => arrow))
  return others.length === 0 ? kind : 'forward'
}

function nothingLeft(): EquationError {
  return new EquationError({
    code: 'equation/nothing-left',
    message: 'The stages cancel one another completely.',
    expected: 'stages that together use and make something',
  })
}

function emptySide(side: 'left' | 'right'): EquationError {
  return new EquationError({
    code: 'equation/empty-side',
    message: `The stages together leave nothing on the ${side}.`,
    expected: 'balanced stages',
  })
}

function notStages(found: unknown): EquationError {
  return new EquationError({
    code: 'equation/not-text',
    message: `A list of stages was expected, not ${showFound(found)}.`,
    found: showFound(found),
    expected: 'a list of { equation, times }',
  })
}
