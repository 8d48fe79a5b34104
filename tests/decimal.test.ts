import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Decimal, scaledDecimal, smallWhole, tenMillionths } from '../src/decimal.js'

/** The same number by way of text, which is what decimal.js documents. */
function fromText(whole: number, power: number): Decimal {
  return new Decimal(`${Object.is(whole, -0) ? '-0' : whole}e${power}`)
}

describe('a decimal put together from a whole number and a power of ten', () => {
  it.each([
    [203174, -4],
    [1, 0],
    [10, 0],
    [9999999, 0],
    [10000000, 0],
    [10000000, -7],
    [100000000000000, 6],
    [999999999999999, -8],
    [5, -100],
    [5, 100],
    [-14007, -3],
    [0, -3],
    [-0, 0],
  ])('%d times ten to the power of %d is what is read from text', (whole, power) => {
    expect(scaledDecimal(whole, power)).toStrictEqual(fromText(whole, power))
  })

  it('is kept in the very words of what is read from text, whatever the number', () => {
    const whole = fc.oneof(
      fc.integer({ min: -999_999_999_999_999, max: 999_999_999_999_999 }),
      fc.integer({ min: -99_999, max: 99_999 }),
    )
    fc.assert(
      fc.property(whole, fc.integer({ min: -120, max: 120 }), (digits, power) => {
        expect(scaledDecimal(digits, power)).toStrictEqual(fromText(digits, power))
      }),
      { numRuns: 1000 },
    )
  })
})

describe('a decimal as a whole number', () => {
  it.each([
    ['14.007', 140_070_000],
    ['1', 10_000_000],
    ['9999999.9999999', 99_999_999_999_999],
    ['-1.0000001', -10_000_001],
    ['0', 0],
    ['0.5', undefined],
    ['10000000', undefined],
    ['22.98976928', undefined],
  ])('%s is %s ten-millionths', (text, whole) => expect(tenMillionths(new Decimal(text))).toBe(whole))

  it.each([
    ['12', 12],
    ['-9999999', -9_999_999],
    ['0', 0],
    ['10000000', undefined],
    ['0.5', undefined],
    ['2.5', undefined],
  ])('%s is the small whole number %s', (text, whole) => expect(smallWhole(new Decimal(text))).toBe(whole))
})
