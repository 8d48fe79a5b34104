import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readLeadingNumeral, readNumeral, readPowerOfTen, zerosChoice } from '../../src/quantity/numeral.js'
import { refusal } from './refusal.js'

describe('a numeral as people write it', () => {
  it.each([
    { text: '3.977', value: '3.977', place: -3 },
    { text: '0.0500', value: '0.05', place: -4 },
    { text: '+1.0', value: '1', place: -1 },
    { text: '-1.0', value: '-1', place: -1 },
    { text: '−1.0', value: '-1', place: -1 },
    { text: '.5', value: '0.5', place: -1 },
    { text: '250.', value: '250', place: 0 },
    { text: '007', value: '7', place: 0 },
    { text: '0', value: '0', place: 0 },
    { text: '000', value: '0', place: 0 },
    { text: '0.00', value: '0', place: -2 },
    { text: '2.50e2', value: '250', place: 0 },
    { text: '2.50E+2', value: '250', place: 0 },
    { text: '1e-3', value: '0.001', place: -3 },
    { text: '250e1', value: '2500', place: 1 },
    { text: '6.02 × 10^23', value: '6.02e23', place: 21 },
    { text: '6.02×10^−3', value: '0.00602', place: -5 },
    { text: '6.02 x 10-3', value: '0.00602', place: -5 },
    { text: '6.02x10+3', value: '6020', place: 1 },
    { text: '6.02*10^3', value: '6020', place: 1 },
    { text: '6.02·10⁻³', value: '0.00602', place: -5 },
    { text: '6.02⋅10^⁺³', value: '6020', place: 1 },
    { text: '6.02×10²³', value: '6.02e23', place: 21 },
    { text: '100 021.47', value: '100021.47', place: -2 },
    { text: '1\u2009234\u202f567', value: '1234567', place: 0 },
    { text: '0.123 45', value: '0.12345', place: -5 },
    { text: '0.123 456 78', value: '0.12345678', place: -8 },
    { text: '1e0000000000003', value: '1000', place: 3 },
    { text: '1×10⁰⁰⁰⁰⁰⁰⁰⁰⁰⁰⁰⁻'.slice(0, -1), value: '1', place: 0 },
    { text: '1000e97', value: '1e100', place: 97 },
    { text: '0.001e-97', value: '1e-100', place: -100 },
    { text: '1 234', value: '1234', place: 0 },
    { text: '12 345 678', value: '12345678', place: 0 },
    { text: '0.123 456', value: '0.123456', place: -6 },
    { text: `1e100`, value: '1e100', place: 100 },
    { text: `1e-100`, value: '1e-100', place: -100 },
  ])('$text is $value, known to 10^$place', ({ text, value, place }) => {
    const numeral = readNumeral(text)
    expect(numeral.value.eq(value)).toBe(true)
    expect(numeral.place).toBe(place)
    expect(numeral.ambiguous).toBe(false)
  })

  it.each([
    { text: '250', zeros: 'placeholders', place: 1 },
    { text: '250', zeros: 'significant', place: 0 },
    { text: '1000', zeros: 'placeholders', place: 3 },
    { text: '1000', zeros: 'significant', place: 0 },
    { text: '-1 000', zeros: 'placeholders', place: 3 },
  ] as const)('trailing zeros of $text as $zeros: known to 10^$place, and open', ({ text, zeros, place }) => {
    expect(readNumeral(text, zeros)).toMatchObject({ place, ambiguous: true })
  })

  it('keeps a hundred digits', () => {
    const text = `1.${'0123456789'.repeat(9)}123456789`
    expect(readNumeral(text).value.toFixed()).toBe(text)
  })

  it('stops at what does not belong to it', () => {
    expect(readLeadingNumeral('25.00 mL').end).toBe(5)
    expect(readLeadingNumeral('0.500 1').end).toBe(5) // a ratio with its unit, not 0.5001
    expect(readLeadingNumeral('1234 567').end).toBe(4) // no groups of three
    expect(readLeadingNumeral('3.97 500').end).toBe(4)
    expect(readLeadingNumeral('1 23').end).toBe(1)
    expect(readLeadingNumeral('1 2345').end).toBe(1)
    expect(readLeadingNumeral('1  234').end).toBe(1)
    expect(readLeadingNumeral('0.12 345').end).toBe(4)
    expect(readLeadingNumeral('0.123 45 678').end).toBe(8) // a group of two is the last
    expect(readLeadingNumeral('0.123 4567').end).toBe(5)
    expect(readLeadingNumeral('5 x 1000').end).toBe(1) // not 5 × 10^00
    expect(readLeadingNumeral('5 x 10').end).toBe(1)
    expect(readLeadingNumeral('5 x 20').end).toBe(1)
    expect(readLeadingNumeral('5e').end).toBe(1)
    expect(readLeadingNumeral('5×10^').end).toBe(1)
    expect(readLeadingNumeral('5×10-').end).toBe(1)
  })

  it('finds a power of ten behind something else', () => {
    expect(readPowerOfTen('(5)e-3', 3, 0)).toEqual({ exponent: -3, end: 6 })
    expect(readPowerOfTen('(5) g', 3, 0)).toBeUndefined()
    expect(refusal(() => readPowerOfTen('(5)e-101', 3, 0)).code).toBe('quantity/exponent-out-of-range')
  })
})

describe('what is no numeral', () => {
  it.each([
    { text: '', code: 'quantity/not-a-numeral', start: 0, hint: undefined },
    { text: '.', code: 'quantity/not-a-numeral', start: 0, hint: undefined },
    { text: '-', code: 'quantity/not-a-numeral', start: 1, hint: undefined },
    { text: 'e5', code: 'quantity/not-a-numeral', start: 0, hint: undefined },
    { text: '1.2.3', code: 'quantity/not-a-numeral', start: 3, hint: undefined },
    { text: '3.977g', code: 'quantity/not-a-numeral', start: 5, hint: undefined },
    { text: '0x10', code: 'quantity/not-a-numeral', start: 1, hint: undefined },
    { text: 'NaN', code: 'quantity/not-a-numeral', start: 0, hint: undefined },
    { text: 'Infinity', code: 'quantity/not-a-numeral', start: 0, hint: undefined },
    { text: '1_000', code: 'quantity/not-a-numeral', start: 1, hint: undefined },
    { text: '１２', code: 'quantity/not-a-numeral', start: 0, hint: undefined },
    { text: '3,977', code: 'quantity/decimal-comma', start: 1, hint: '3.977' },
    { text: '1,000.5', code: 'quantity/decimal-comma', start: 1, hint: '1.000.5' },
    { text: '1.000,5', code: 'quantity/decimal-comma', start: 5, hint: '1.000.5' },
    { text: '1e101', code: 'quantity/exponent-out-of-range', start: 0, hint: undefined },
    { text: '1e-101', code: 'quantity/exponent-out-of-range', start: 0, hint: undefined },
    { text: '1e99999999999999999999', code: 'quantity/exponent-out-of-range', start: 0, hint: undefined },
    { text: '1×10⁻⁹⁹⁹⁹⁹⁹⁹⁹⁹⁹⁹⁹', code: 'quantity/exponent-out-of-range', start: 0, hint: undefined },
    { text: '0.0001e-97', code: 'quantity/exponent-out-of-range', start: 0, hint: undefined },
    { text: '1e10000000000', code: 'quantity/exponent-out-of-range', start: 0, hint: undefined },
    { text: '1000e98', code: 'quantity/exponent-out-of-range', start: 0, hint: undefined },
    { text: '1'.repeat(101), code: 'quantity/too-long', start: 0, hint: undefined },
    { text: `0.${'1'.repeat(1_000_000)}`, code: 'quantity/too-long', start: 0, hint: undefined },
  ])('$text is $code at $start', ({ text, code, start, hint }) => {
    const error = refusal(() => readNumeral(text))
    expect(error.code).toBe(code)
    expect(error.position?.start).toBe(start)
    expect(error.hint).toBe(hint)
    expect(error.message.length).toBeLessThan(200)
  })

  it('shows no more than the beginning of a long text', () => {
    const { found, hint } = refusal(() => readNumeral(`1,${'5'.repeat(200)}`))
    expect([found, hint]).toEqual([`1,${'5'.repeat(98)}`, `1.${'5'.repeat(98)}`])
  })

  it('refuses open zeros where that was asked for', () => {
    const error = refusal(() => readNumeral('250', 'reject'))
    expect(error).toMatchObject({ code: 'quantity/ambiguous-zeros', hint: '250.', position: { start: 0, end: 3 } })
    expect(readNumeral('250.', 'reject').place).toBe(0)
    expect(readNumeral('0', 'reject').place).toBe(0)
  })

  it.each(['yes', null, 1, 'toString', '__proto__'])('%s is no choice for trailing zeros', (given) => {
    expect(refusal(() => zerosChoice(given)).code).toBe('quantity/unknown-option')
  })
})

describe('for every numeral', () => {
  const digits = fc.stringMatching(/^[0-9]{1,15}$/)

  it('the digits that were written come back', () => {
    fc.assert(
      fc.property(digits, digits, fc.integer({ min: -60, max: 60 }), (whole, decimals, exponent) => {
        const numeral = readNumeral(`${whole}.${decimals}e${exponent}`)
        expect(numeral.value.eq(`${whole}.${decimals}e${exponent}`)).toBe(true)
        expect(numeral.place).toBe(exponent - decimals.length)
      }),
    )
  })

  it('any text is read or refused, never anything else', () => {
    const near = fc.string({ unit: fc.constantFrom(...'0123456789.,eE+-−×x*· 10^⁻³()g') })
    fc.assert(
      fc.property(fc.oneof(fc.string(), near), (text) => {
        const read = (): string => readNumeral(text).value.toString()
        try {
          expect(read()).not.toBe('NaN')
        } catch {
          expect(refusal(read).code).toMatch(/^quantity\//)
        }
      }),
      { numRuns: 1000 },
    )
  })
})
