import type { Fraction } from '../fraction.js'
import type { Equation, Term } from './equation.js'
import { makeEquation } from './make-equation.js'
import { allTerms } from './species.js'

/** The equation with new coefficients, one for each term in order; a negative one changes sides, a zero one leaves. */
export function withCoefficients(equation: Equation, values: readonly bigint[]): Equation {
  const count = equation.left.length
  const terms = allTerms(equation)
  const onLeft = terms.map((_, index) => index < count === (values[index] as bigint) > 0n)
  const placed = terms.map((term, index) => withCoefficient(term, magnitude(values[index] as bigint)))
  const side = (left: boolean) => placed.filter((_, index) => onLeft[index] === left && values[index] !== 0n)
  return makeEquation({ left: side(true), right: side(false), arrow: equation.arrow })
}

/** A solution with the sign that moves fewer species; of two the one that leaves the first where it is. */
export function oriented(values: readonly bigint[]): readonly bigint[] {
  const [below, above] = [values.filter((value) => value < 0n).length, values.filter((value) => value > 0n).length]
  const first = values.find((value) => value !== 0n) as bigint
  const turn = below > above || (below === above && first < 0n)
  return turn ? values.map((value) => -value) : values
}

/** A term with another coefficient. */
export function withCoefficient(term: Term, coefficient: Fraction): Term {
  const coefficientWritten = coefficient.numerator !== coefficient.denominator
  return Object.freeze({ ...term, coefficient, coefficientWritten, position: undefined })
}

function magnitude(value: bigint): Fraction {
  return { numerator: value < 0n ? -value : value, denominator: 1n }
}
