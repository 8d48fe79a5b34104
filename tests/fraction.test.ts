import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  addFractions,
  compareFractions,
  divideFractions,
  type Fraction,
  formatFraction,
  fraction,
  fractionOf,
  fractionToDecimal,
  greatestCommonDivisor,
  multiplyFractions,
  subtractFractions,
} from '../src/fraction.js'

const [half, third, minusTwo] = [fractionOf(1, 2), fractionOf(1, 3), fractionOf(-2)] as const

describe('a fraction', () => {
  it.each([
    [fraction(4n, 6n), 2n, 3n],
    [fraction(-4n, 6n), -2n, 3n],
    [fraction(4n, -6n), -2n, 3n],
    [fraction(-4n, -6n), 2n, 3n],
    [fraction(0n, -5n), 0n, 1n],
    [fraction(7n), 7n, 1n],
    [fractionOf(9, 12), 3n, 4n],
    [fractionOf(9), 9n, 1n],
  ])('is in lowest terms over a positive number: %#', (made, numerator, denominator) => {
    expect(made).toStrictEqual({ numerator, denominator })
  })

  it('of whole numbers only', () => expect(() => fractionOf(0.5)).toThrow(RangeError))

  it.each([
    ['1/2 + 1/3', addFractions(half, third), '5/6'],
    ['1/2 + 1/2', addFractions(half, half), '1'],
    ['1/2 - 1/3', subtractFractions(half, third), '1/6'],
    ['1/3 - 1/2', subtractFractions(third, half), '-1/6'],
    ['1/2 · -2', multiplyFractions(half, minusTwo), '-1'],
    ['1/2 · 1/3', multiplyFractions(half, third), '1/6'],
    ['1/2 : 1/3', divideFractions(half, third), '3/2'],
    ['1/3 : -2', divideFractions(third, minusTwo), '-1/6'],
  ])('%s', (_, result, written) => expect(formatFraction(result)).toBe(written))

  it.each([
    [third, half, -1],
    [half, third, 1],
    [half, fractionOf(2, 4), 0],
    [minusTwo, third, -1],
    [third, minusTwo, 1],
    [fractionOf(-1, 2), fractionOf(-1, 3), -1],
  ])('compares: %#', (a, b, order) => expect(compareFractions(a, b)).toBe(order))

  it.each([
    [fractionOf(3), '3'],
    [fractionOf(-1, 8), '-0.125'],
    [fractionOf(2, 3), `0.${'6'.repeat(33)}7`],
  ])('is a decimal, rounded after 34 digits: %#', (f, text) => expect(fractionToDecimal(f).toFixed()).toBe(text))

  it.each([
    [12n, 18n, 6n],
    [-12n, 18n, 6n],
    [12n, -18n, 6n],
    [0n, 5n, 5n],
    [-5n, 0n, 5n],
    [0n, 0n, 0n],
    [7n, 9n, 1n],
  ])('%d and %d have the greatest common divisor %d', (a, b, divisor) => {
    expect(greatestCommonDivisor(a, b)).toBe(divisor)
  })

  it('keeps the laws of arithmetic, always in lowest terms', () => {
    const any = fc
      .tuple(fc.integer({ min: -999, max: 999 }), fc.integer({ min: 1, max: 99 }))
      .map(([top, bottom]) => fractionOf(top, bottom))
    const isLowest = ({ numerator, denominator }: Fraction) =>
      denominator > 0n && greatestCommonDivisor(numerator, denominator) === 1n
    fc.assert(
      fc.property(any, any, any, (a, b, c) => {
        expect(subtractFractions(addFractions(a, b), b)).toStrictEqual(a)
        if (b.numerator !== 0n) expect(multiplyFractions(divideFractions(a, b), b)).toStrictEqual(a)
        const spread = addFractions(multiplyFractions(a, c), multiplyFractions(b, c))
        expect(multiplyFractions(addFractions(a, b), c)).toStrictEqual(spread)
        expect([a, spread, subtractFractions(a, c)].every(isLowest)).toBe(true)
        expect(Math.sign(Number(subtractFractions(a, b).numerator))).toBe(compareFractions(a, b))
      }),
    )
  })
})
