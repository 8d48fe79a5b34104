import fc from 'fast-check'
import { balance, checkBalance, type Equation, formatEquation, parseEquation, type Term } from 'saltwright/equation'
import { formatFormula } from 'saltwright/formula'
import { describe, expect, it } from 'vitest'
import { type Fraction, formatFraction, fractionOf, multiplyFractions } from '../../src/fraction.js'
import { knownEquations } from '../equation/known-equations.js'

const anyEquation = fc.constantFrom(...Object.values(knownEquations).flat())
const number = fc.tuple(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 1, max: 9 }))

const bare = ({ formula, state }: Term): string =>
  `${formatFormula(formula, 'plain')}${state === undefined ? '' : `(${state})`}`

/** An equation with a number in front of each species. */
function withNumbers({ left, right }: Equation, numbers: readonly (readonly [number, number])[]): string {
  const written = (terms: readonly Term[], from: number): string =>
    terms.map((term, index) => `${(numbers[from + index] ?? [1, 1]).join('/')} ${bare(term)}`).join(' + ')
  return `${written(left, 0)} -> ${written(right, left.length)}`
}

const coefficients = ({ left, right }: Equation): ReadonlyMap<string, string> =>
  new Map([
    ...left.map((term) => [`left ${bare(term)}`, formatFraction(term.coefficient)] as const),
    ...right.map((term) => [`right ${bare(term)}`, formatFraction(term.coefficient)] as const),
  ])

describe('balancing', () => {
  it('gives an answer that checks, in lowest terms', () => {
    fc.assert(
      fc.property(anyEquation, (text) => {
        const check = checkBalance(balance(text))
        expect(check.balanced && check.lowestTerms).toBe(true)
      }),
    )
  })

  it('of a balanced equation changes nothing', () => {
    fc.assert(
      fc.property(anyEquation, (text) => {
        const once = balance(text)
        expect(balance(once).text).toBe(once.text)
        expect(balance(once.text).text).toBe(once.text)
      }),
    )
  })

  it('does not ask what numbers stood there before', () => {
    fc.assert(
      fc.property(anyEquation, fc.array(number, { minLength: 30, maxLength: 30 }), (text, numbers) => {
        expect(coefficients(balance(withNumbers(parseEquation(text), numbers)))).toEqual(coefficients(balance(text)))
      }),
    )
  })

  it('of all coefficients times a number gives the same', () => {
    fc.assert(
      fc.property(anyEquation, fc.integer({ min: 2, max: 999 }), (text, factor) => {
        const { left, right } = balance(text)
        const numbers = [...left, ...right].map(({ coefficient }): readonly [number, number] => [
          Number(coefficient.numerator) * factor,
          1,
        ])
        expect(coefficients(balance(withNumbers(balance(text), numbers)))).toEqual(coefficients(balance(text)))
      }),
    )
  })

  it('does not ask for the order of the species', () => {
    const shuffled = anyEquation.chain((text) => {
      const { left, right } = parseEquation(text)
      const order = (terms: readonly Term[]) => fc.shuffledSubarray(terms.map(bare), { minLength: terms.length })
      return fc.tuple(fc.constant(text), order(left), order(right))
    })
    fc.assert(
      fc.property(shuffled, ([text, left, right]) => {
        const turned = balance(`${left.join(' + ')} -> ${right.join(' + ')}`)
        expect(coefficients(turned)).toEqual(coefficients(balance(text)))
      }),
    )
  })
})

describe('checking', () => {
  it('finds no difference times any number, and one where a single coefficient is changed', () => {
    fc.assert(
      fc.property(anyEquation, fc.nat(29), fc.integer({ min: 2, max: 9 }), (text, place, factor) => {
        const { left, right } = balance(text)
        const terms = [...left, ...right]
        const scaled = (only: number | undefined) =>
          terms.map(({ coefficient }, index): readonly [number, number] => {
            const each = only === undefined || only === index ? times(coefficient, factor) : coefficient
            return [Number(each.numerator), Number(each.denominator)]
          })
        expect(checkBalance(withNumbers(balance(text), scaled(undefined))).balanced).toBe(true)
        expect(checkBalance(withNumbers(balance(text), scaled(place % terms.length))).balanced).toBe(false)
      }),
    )
  })
})

const times = (f: Fraction, factor: number): Fraction => multiplyFractions(f, fractionOf(factor))

describe('what is written reads back', () => {
  it.each(['plain', 'unicode'] as const)('in the style %s, and from JSON', (style) => {
    fc.assert(
      fc.property(anyEquation, fc.array(number, { minLength: 30, maxLength: 30 }), (text, numbers) => {
        const equation = parseEquation(withNumbers(parseEquation(text), numbers))
        expect(coefficients(parseEquation(formatEquation(equation, style)))).toEqual(coefficients(equation))
        expect(coefficients(parseEquation(JSON.parse(JSON.stringify(equation))))).toEqual(coefficients(equation))
      }),
    )
  })
})
