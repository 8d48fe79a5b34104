import { impossible, underdetermined } from './balance-errors.js'
import { withAllHelpers } from './completion.js'
import type { Equation } from './equation.js'
import { EquationError } from './equation-error.js'
import { independentSolutions } from './solutions.js'
import { allTerms } from './species.js'

/** Why a half-reaction or a whole one has no unique completion. */
export function completionFailure(own: Equation, given: Equation, what: 'half' | 'whole'): EquationError {
  const all = withAllHelpers(own, what === 'half', given)
  const solutions = independentSolutions(
    allTerms(all).map(({ formula }) => formula),
    all.left.length,
  )
  if (solutions.length > 1) return underdetermined(all, solutions)
  return impossible(all)
}

/** Both halves take up electrons, or both give them off. */
export function notRedox(halves: readonly Equation[]): EquationError {
  return new EquationError({
    code: 'equation/not-redox',
    message: `Both half-reactions move electrons the same way: ${halves.map(({ text }) => text).join('; ')}.`,
    expected: 'one oxidation and one reduction',
  })
}
