import type { Fraction } from '../fraction.js'
import type { Equation, Term } from './equation.js'
import { makeEquation } from './make-equation.js'
import { allTerms } from './species.js'

/**
 * The equation with new coefficients, one for each term in order. A species with a negative one goes to the end of the other
 * side, one with zero leaves.
 */
export function withCoefficients(equation: Equation, values: readonly bigint[]): Equation {
  const placed: Record<Place, Term[]> = { left: [], toLeft: [], right: [], toRight: [] }
  for (const [index, term] of allTerms(equation).entries()) {
    const value = values[index] as bigint
    const place = placeOf(index < equation.left.length, value)
    if (value !== 0n) placed[place].push(withCoefficient(term, { numerator: magnitude(value), denominator: 1n }))
  }
  const { left, toLeft, right, toRight } = placed
  return makeEquation({ left: [...left, ...toLeft], right: [...right, ...toRight], arrow: equation.arrow })
}

/** Where a species ends up: on its side, or moved to the other. */
type Place = 'left' | 'toLeft' | 'right' | 'toRight'

function placeOf(isLeft: boolean, value: bigint): Place {
  if (value > 0n) return isLeft ? 'left' : 'right'
  return isLeft ? 'toRight' : 'toLeft'
}

function magnitude(value: bigint): bigint {
  return value < 0n ? -value : value
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
  return Object.freeze({
    coefficient: Object.freeze(coefficient),
    coefficientWritten,
    formula,
    state,
    position: undefined,
  })
}
