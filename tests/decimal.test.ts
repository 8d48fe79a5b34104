import { Decimal as Shared } from 'decimal.js'
import fc from 'fast-check'
import { describe, expect, it, vi } from 'vitest'
import { Decimal, mostDigits, scaledDecimal, smallWhole, tenMillionth, tenMillionths } from '../src/decimal.js'

/** The same number by way of text, which is what decimal.js documents. */
function fromText(whole: number, power: number): Decimal {
  return new Decimal(`${Object.is(whole, -0) ? '-0' : whole}e${power}`)
}

describe('a decimal', () => {
  it.each([
    ['2', `0.${'6'.repeat(33)}7`],
    ['1', `0.${'3'.repeat(34)}`],
  ])('has 34 digits: %s over 3', (top, text) => expect(new Decimal(top).div(3).toFixed()).toBe(text))

  it.each([
    [`1${'0'.repeat(32)}2.5`, `1${'0'.repeat(32)}2`],
    [`1${'0'.repeat(32)}3.5`, `1${'0'.repeat(32)}4`],
    [`-1${'0'.repeat(32)}2.5`, `-1${'0'.repeat(32)}2`],
  ])('is rounded to the even digit where two are as near: %s', (text, rounded) => {
    expect(new Decimal(text).plus(0).toFixed()).toBe(rounded)
  })

  it.each([
    ['0.000001', '0.000001'],
    ['0.0000001', '1e-7'],
    ['1e20', '100000000000000000000'],
    ['1e21', '1e+21'],
  ])('%s is written %s', (text, written) => expect(new Decimal(text).toString()).toBe(written))

  it('takes nothing over from whoever reconfigured the shared one before', async () => {
    Shared.set({ maxE: 5 })
    vi.resetModules()
    const fresh = await import('../src/decimal.js')
    Shared.set({ defaults: true })
    expect(new fresh.Decimal('1e20').isFinite()).toBe(true)
  })

  it('is none of those that anybody else can reconfigure', () => {
    Shared.set({ precision: 5, toExpPos: 2 })
    expect(new Decimal(1).div(3).precision()).toBe(34)
    expect(new Decimal(12345).toString()).toBe('12345')
    Shared.set({ defaults: true })
  })
})

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

it('takes as many digits as a number holds for certain, and counts in ten-millionths', () => {
  expect(10 ** mostDigits).toBeLessThan(Number.MAX_SAFE_INTEGER)
  expect(10 ** (mostDigits + 1)).toBeGreaterThan(Number.MAX_SAFE_INTEGER)
  expect(scaledDecimal(tenMillionths(new Decimal('14.007')) as number, tenMillionth).toString()).toBe('14.007')
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
    ['1000000', 10_000_000_000_000],
    ['1.00000001', undefined],
    ['100000000000000', undefined],
  ])('%s is %s ten-millionths', (text, whole) => expect(tenMillionths(new Decimal(text))).toBe(whole))

  it.each([
    ['12', 12],
    ['-9999999', -9_999_999],
    ['0', 0],
    ['10000000', undefined],
    ['0.5', undefined],
    ['2.5', undefined],
    ['1', 1],
    ['1000000', 1_000_000],
    ['100000000000000', undefined],
  ])('%s is the small whole number %s', (text, whole) => expect(smallWhole(new Decimal(text))).toBe(whole))
})
