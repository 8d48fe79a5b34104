import { impossible, severalSolutions, unusedSpecies, wrongSide } from './balance-errors.js'
import type { Equation } from './equation.js'
import { EquationError } from './equation-error.js'
import { type EquationLike, equationOf } from './equation-of.js'
import { checkComposition } from './known-composition.js'
import { checkChoice, checkOptions } from './options.js'
import { oriented, withCoefficients } from './place-solution.js'
import { independentSolutions } from './solutions.js'
import { allTerms } from './species.js'
import { uprightAnswer, withoutRepeats } from './upright-answer.js'

/** The most terms that are balanced. */
const maxTerms = 100

/** How {@link balance} treats what it was not asked for in so many words. */
export interface BalanceOptions {
  /** What happens to a species whose coefficient would be negative: `'refuse'` (default) or `'move'` to the other side. */
  readonly wrongSide?: 'refuse' | 'move'
}

/**
 * Balances an equation: the smallest whole numbers that make every element and the charge the same on both sides. The
 * coefficients already written count for nothing. Exact arithmetic throughout.
 *
 * @param equation - An equation or its text, of at most 100 terms.
 * @param options - What to do with a species on the wrong side.
 * @returns The balanced equation, in the order of species and with the states and the arrow of the one given.
 * @throws {@link EquationError} `equation/impossible` where no coefficients balance it.
 * @throws {@link EquationError} `equation/underdetermined` where there is more than one independent answer; its `basis`
 * lists independent balanced equations.
 * @throws {@link EquationError} `equation/unused-species` where a species would have the coefficient zero.
 * @throws {@link EquationError} `equation/wrong-side` where a species would have a negative one, unless it may be moved.
 * @throws {@link EquationError} `equation/unknown-count` for a hydrate with an unknown number of water.
 * @throws {@link EquationError} `equation/too-many-species` beyond 100 terms.
 * @source OpenStax, Chemistry 2e, section 4.1, Balancing Equations: equal numbers of atoms, smallest whole numbers.
 *
 * @example
 * ```ts
 * import { balance } from 'saltwright/equation'
 *
 * balance('Al + H^+ -> Al^3+ + H2').text // => '2 Al + 6 H^+ -> 2 Al^3+ + 3 H2'
 * balance('ZnSO4 + H2O -> ZnSO4·7H2O').text // => 'ZnSO4 + 7 H2O -> ZnSO4·7H2O'
 * balance('Zn + H2 -> Zn^2+') // throws equation/impossible
 * balance('Fe + O2 + H2O -> Fe2O3', { wrongSide: 'move' }) // throws equation/unused-species
 * ```
 */
export function balance(equation: EquationLike, options: BalanceOptions = {}): Equation {
  const given = equationOf(equation)
  checkOptions(options)
  checkChoice('wrongSide', options.wrongSide, ['refuse', 'move'])
  checkCount(allTerms(given).length)
  checkComposition(given)
  return uprightAnswer(given) ?? moved(withoutRepeats(given), options.wrongSide ?? 'refuse')
}

/** The answer that moves species, or the error that says why there is none. */
function moved(equation: Equation, wrongSides: 'refuse' | 'move'): Equation {
  const formulas = allTerms(equation).map(({ formula }) => formula)
  const solutions = independentSolutions(formulas, equation.left.length)
  const [only] = solutions
  if (only === undefined) throw impossible(equation)
  if (solutions.length > 1) throw severalSolutions(equation, solutions)
  return withCoefficients(equation, checked(equation, oriented(only), wrongSides))
}

/** Where every species can stay on its side, the answer was found before: here one is on the wrong side, or has no part. */
function checked(equation: Equation, values: readonly bigint[], wrongSides: 'refuse' | 'move'): readonly bigint[] {
  const terms = allTerms(equation)
  const unused = terms.filter((_, index) => values[index] === 0n)
  if (unused.length > 0) throw unusedSpecies(equation, unused)
  if (wrongSides === 'move') return values
  throw wrongSide(
    equation,
    terms.filter((_, index) => (values[index] as bigint) < 0n),
  )
}

function checkCount(count: number): void {
  if (count <= maxTerms) return
  throw new EquationError({
    code: 'equation/too-many-species',
    message: `An equation of ${count} terms is not balanced.`,
    found: `${count} terms`,
    expected: `at most ${maxTerms} terms`,
  })
}
