import type { Fraction } from '../fraction.js'
import type { Equation, Term } from './equation.js'
import { makeEquation } from './make-equation.js'
import { allTerms } from './species.js'

/** The equation with new coefficients, one for each term in order; a negative one changes sides, a zero one leaves. */
export function withCoefficients(equation: Equation, values: readonly bigint[]): Equation {
  const left: Term[] = []
  const right: Term[] = []
  for (const [index, term] of allTerms(equation).entries()) {
    const value = values[index] as bigint
    const stays = value > 0n
    const side = index < equation.left.length === stays ? left : right
    if (value !== 0n) side.push(withCoefficient(term, { numerator: stays ? value : -value, denominator: 1n }))
  }
  return makeEquation({ left, right, arrow: equation.arrow })
}

/** A solution with the sign that moves fewer species; of two the one that leaves the first where it is. */
export function oriented(values: readonly bigint[]): readonly bigint[] {
  const [below, above] = [values.filter((value) => value < 0n).length, values.filter((value) => value > 0n).length]
  const first = values.find((value) => value !== 0n) as bigint
  const turn = below > above || (below === above && first < 0n)
  return turn ? values.map((value) => -value) : values
}

/** A term with another coefficient. */
export function withCoefficient({ formula, state }: Term, coefficient: Fraction): Term {
  const coefficientWritten = coefficient.numerator !== coefficient.denominator
  return Object.freeze({ coefficient, coefficientWritten, formula, state, position: undefined })
}
