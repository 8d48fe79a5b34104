import type { Equation, Term } from './equation.js'
import { makeEquation } from './make-equation.js'
import { oriented, withCoefficients } from './place-solution.js'
import { independentSolutions } from './solutions.js'
import { allTerms, isSameSpecies } from './species.js'

/** The balanced equation where there is one answer, and it leaves every species where it stands; otherwise nothing. */
export function uprightAnswer(equation: Equation): Equation | undefined {
  const [values, another] = independentSolutions(
    allTerms(equation).map(({ formula }) => formula),
    equation.left.length,
  )
  if (values === undefined) return undefined
  if (another !== undefined) return answerWithoutRepeats(equation)
  const turned = oriented(values)
  return turned.every((value) => value > 0n) ? withCoefficients(equation, turned) : undefined
}

function answerWithoutRepeats(equation: Equation): Equation | undefined {
  const merged = withoutRepeats(equation)
  return allTerms(merged).length < allTerms(equation).length ? uprightAnswer(merged) : undefined
}

/** The equation with every species once on each side; the coefficients are not added up. */
export function withoutRepeats({ left, right, arrow, text }: Equation): Equation {
  return makeEquation({ left: distinct(left), right: distinct(right), arrow, text })
}

function distinct(terms: readonly Term[]): readonly Term[] {
  return terms.filter((term, index) => terms.findIndex((other) => isSameSpecies(term, other)) === index)
}
