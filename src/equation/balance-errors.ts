import type { Equation, Term } from './equation.js'
import { EquationError } from './equation-error.js'
import { extremeSolutions, independentVectors } from './extreme-solutions.js'
import { findMissing } from './missing-species.js'
import { withCoefficients } from './place-solution.js'
import { brief, quote } from './quote.js'
import { elementTotals } from './side-totals.js'
import { allTerms, isSameSpecies, joinWords, listSpecies } from './species.js'

/** No coefficients balance the equation. */
export function impossible(equation: Equation): EquationError {
  return new EquationError({
    code: 'equation/impossible',
    message: `No coefficients balance ${quote(equation.text)}.`,
    found: equation.text,
    expected: 'the same elements, and a charge that can be the same, on both sides',
    hint: lacking(equation),
  })
}

/** What is missing: an element on one side, or a helper species. */
function lacking(equation: Equation): string | undefined {
  const lonely = elementTotals(equation).filter(({ left, right }) => left.numerator === 0n || right.numerator === 0n)
  if (lonely.length > 0) return `On one side only: ${joinWords(lonely.map(({ symbol }) => symbol))}.`
  const missing = findMissing(equation)
  return missing === undefined
    ? undefined
    : `${missing.formula} on the ${missing.side} would balance it: ${missing.equation}`
}

/** The only answer has zeros. */
export function unusedSpecies(equation: Equation, unused: readonly Term[]): EquationError {
  const found = brief(listSpecies(unused))
  return new EquationError({
    code: 'equation/unused-species',
    message: `${quote(equation.text)} balances only without ${found}.`,
    position: unused[0]?.position,
    found,
    expected: 'only species that take part',
    hint: `Leave out ${found}, or write what becomes of it.`,
  })
}

/** The only answer has negative numbers. */
export function wrongSide(equation: Equation, wrong: readonly Term[]): EquationError {
  const found = brief(listSpecies(wrong))
  return new EquationError({
    code: 'equation/wrong-side',
    message: `${quote(equation.text)} balances only with ${found} on the other side.`,
    position: wrong[0]?.position,
    found,
    expected: 'every reactant on the left and every product on the right',
    hint: "Write it on the other side, or pass the option wrongSide: 'move'.",
  })
}

/** More than one independent answer, or several that each leave a species out. */
export function severalSolutions(equation: Equation, solutions: readonly (readonly bigint[])[]): EquationError {
  const terms = allTerms(equation)
  const rays = extremeSolutions(
    terms.map(({ formula }) => formula),
    equation.left.length,
  )
  if (rays === undefined) return underdetermined(equation, solutions)
  if (rays.length === 0) return noneUpright(equation, solutions)
  const unused = terms.filter((_, index) => rays.every((ray) => ray[index] === 0n))
  if (unused.length > 0) return unusedSpecies(equation, unused)
  return underdetermined(equation, independentVectors(rays))
}

/** More than one independent answer, with some of them as a basis. */
export function underdetermined(equation: Equation, vectors: readonly (readonly bigint[])[]): EquationError {
  const basis = vectors.map((vector) => withCoefficients(equation, vector).text)
  return new EquationError({
    code: 'equation/underdetermined',
    message: `${quote(equation.text)} has more than one independent answer: ${brief(basis.join('; '))}.`,
    found: equation.text,
    expected: 'an equation of one reaction',
    hint: spectatorHint(equation) ?? 'Write the reactions one by one, or leave a species out.',
    basis,
  })
}

function spectatorHint({ left, right }: Equation): string | undefined {
  const spectators = left.filter((term) => right.some((other) => isSameSpecies(term, other)))
  if (spectators.length === 0) return undefined
  return `Leave out what stands on both sides: ${listSpecies(spectators)}.`
}

function noneUpright(equation: Equation, vectors: readonly (readonly bigint[])[]): EquationError {
  const basis = vectors.map((vector) => withCoefficients(equation, vector).text)
  return new EquationError({
    code: 'equation/wrong-side',
    message: `${quote(equation.text)} balances only with species on the other side: ${brief(basis.join('; '))}.`,
    found: equation.text,
    expected: 'every reactant on the left and every product on the right',
    hint: 'Write the reactions one by one.',
    basis,
  })
}
