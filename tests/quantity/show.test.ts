import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Decimal } from '../../src/decimal.js'
import { exact, type Quantity, quantity } from '../../src/quantity/index.js'
import { writeNumber, writeQuantity } from '../../src/quantity/show.js'

const shown = (value: string, place: number | null) => ({
  value: new Decimal(value),
  place,
  unit: '1' as const,
  input: undefined,
})

describe('a number rounded to what is significant', () => {
  it.each([
    { value: '3.97725', place: -3, is: '3.977' },
    { value: '4', place: -2, is: '4.00' },
    { value: '249.6', place: 0, is: '250.' }, // three figures, so a point says that the zero was read
    { value: '251', place: 0, is: '251' },
    { value: '251', place: 1, is: '250' },
    { value: '2500', place: 1, is: '2.50e3' },
    { value: '2499.6', place: 2, is: '2500' },
    { value: '3', place: 0, is: '3' },
    { value: '0.3', place: 0, is: '0' },
    { value: '0', place: -2, is: '0.00' },
    { value: '-0.004', place: -2, is: '0.00' }, // a zero has no sign
    { value: '3', place: 1, is: '0e1' },
    { value: '0.0000123', place: -7, is: '0.0000123' },
    { value: '0.00000123', place: -8, is: '1.23e-6' },
    { value: '0.000001', place: -6, is: '1e-6' },
    { value: '6.02214076e23', place: 21, is: '6.02e23' },
    { value: '6e23', place: 23, is: '6e23' },
    { value: '1e20', place: 20, is: '100000000000000000000' },
    { value: '1e21', place: 21, is: '1e21' },
    { value: '0.00001', place: -5, is: '0.00001' },
    { value: '-3.97725', place: -3, is: '-3.977' },
  ])('$value known to 10^$place is $is', ({ value, place, is }) => {
    expect(writeNumber(shown(value, place))).toBe(is)
  })

  it('ties as named', () => {
    expect(writeNumber(shown('0.145', -2))).toBe('0.14')
    expect(writeNumber(shown('0.145', -2), 'half-up')).toBe('0.15')
  })

  it.each([
    { q: exact('0.0400 mol'), is: '0.0400 mol' },
    { q: exact('2.5'), is: '2.5' },
    { q: exact(250), is: '250' },
    { q: exact('1e30'), is: '1e30' },
    { q: exact('1e20'), is: '100000000000000000000' },
    { q: exact('1e21'), is: '1e21' },
    { q: exact('1.5e-19'), is: '0.00000000000000000015' },
    { q: exact('1.5e-20'), is: '1.5e-20' },
    { q: exact('1e-30'), is: '1e-30' },
    { q: exact(1).dividedBy(exact(3)), is: '0.3333333333' },
    { q: exact(2).times(exact('0.0400 mol')), is: '0.08 mol' },
    { q: exact('123456789012').times(exact(2)), is: '246913578024' },
  ])('an exact number is written as it was, or to ten digits: $is', ({ q, is }) => expect(q.toString()).toBe(is))
})

describe('with its unit', () => {
  it.each([
    ['3.977 g', '3.977 g'],
    ['20.5 degC', '20.5 °C'],
    ['0.50', '0.50'],
    ['96 %', '96 %'],
    ['1.00 µg', '1.00 ug'],
    ['2.0 mol·L⁻¹', '2.0 mol/L'],
  ])('%s is written %s', (text, is) => expect(quantity(text as string).toString()).toBe(is))

  it('ties as named', () => expect(writeQuantity(shown('0.145', -2), 'half-up')).toBe('0.15'))
})

describe('as JSON', () => {
  it.each([
    { q: quantity('3.980 g'), json: { value: '3.980', unit: 'g', significantFigures: 4 } },
    { q: quantity('250 mL'), json: { value: '250', unit: 'mL', significantFigures: 2 } },
    { q: exact('0.0400 mol'), json: { value: '0.0400', unit: 'mol', exact: true } },
    { q: exact(2).times(exact(3)), json: { value: '6', unit: '1', exact: true } },
    {
      q: quantity('1.00 g').dividedBy(quantity('3.0 mL')),
      json: { value: '0.3333333333333333333333333333333333', unit: 'g/mL', significantFigures: 2 },
    },
    {
      q: quantity(`1.${'0'.repeat(20)}` as string),
      json: { value: `1.${'0'.repeat(20)}`, unit: '1', significantFigures: 21 },
    },
    { q: quantity(`1.${'0'.repeat(21)}` as string), json: { value: '1', unit: '1', significantFigures: 22 } },
    {
      q: quantity('25.00 mL', { uncertainty: '0.03 mL' }),
      json: { value: '25.00', unit: 'mL', significantFigures: 4, uncertainty: '0.03' },
    },
  ] as { q: Quantity; json: object }[])('$json', ({ q, json }) => expect(q.toJSON()).toEqual(json))
})

it('what is written reads back as the same number with the same figures', () => {
  const digits = fc.stringMatching(/^[0-9]{1,12}$/)
  fc.assert(
    fc.property(digits, digits, fc.integer({ min: -40, max: 40 }), fc.constantFrom('', '-'), (a, b, exponent, sign) => {
      const first = quantity(`${sign}${a}.${b}e${exponent} g` as string)
      const again = quantity(first.toString())
      expect(again.toString()).toBe(first.toString())
      expect(again.place).toBe(first.place)
      expect(again.value.eq(first.value)).toBe(true)
    }),
    { numRuns: 1000 },
  )
})
