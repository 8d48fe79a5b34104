import type { Fraction } from '../fraction.js'
import type { Equation } from './equation.js'
import { type EquationLike, equationOf } from './equation-of.js'
import { smallestWholeNumbers } from './integers.js'
import { withCoefficients } from './place-solution.js'
import { allTerms } from './species.js'

/** Whether the coefficients are whole numbers without a common divisor. */
export function isInLowestTerms(equation: Equation): boolean {
  const coefficients = allTerms(equation).map(({ coefficient }) => coefficient)
  const smallest = smallestWholeNumbers(coefficients)
  return coefficients.every((coefficient, index) => isWholeNumber(coefficient, smallest[index]))
}

function isWholeNumber({ numerator, denominator }: Fraction, value: bigint | undefined): boolean {
  return denominator === 1n && numerator === value
}

/**
 * The same equation with the smallest whole numbers that keep the ratio of its coefficients. It need not be balanced.
 *
 * @param equation - An equation or its text.
 * @returns The equation in lowest terms.
 * @throws {@link EquationError} `equation/not-text` for anything else, and whatever {@link parseEquation} throws for a text.
 * @source OpenStax, Chemistry 2e, section 4.1, Balancing Equations: fractions are cleared, common factors divided out.
 *
 * @example
 * ```ts
 * import { lowestTerms } from 'saltwright/equation'
 *
 * lowestTerms('H2 + 1/2 O2 -> H2O').text // => '2 H2 + O2 -> 2 H2O'
 * lowestTerms('2 Zn + 4 H^+ -> 2 Zn^2+ + 2 H2').text // => 'Zn + 2 H^+ -> Zn^2+ + H2'
 * ```
 */
export function lowestTerms(equation: EquationLike): Equation {
  const given = equationOf(equation)
  return withCoefficients(given, smallestWholeNumbers(allTerms(given).map(({ coefficient }) => coefficient)))
}
