import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readQuantityText } from '../../src/quantity/text.js'
import { refusal } from './refusal.js'

describe('a number and its unit', () => {
  it.each([
    { text: '3.977 g', value: '3.977', place: -3, unit: 'g' },
    { text: '  3.977   g ', value: '3.977', place: -3, unit: 'g' },
    { text: '3.977g', value: '3.977', place: -3, unit: 'g' },
    { text: '96%', value: '96', place: 0, unit: '%' },
    { text: '96 % w/w', value: '96', place: 0, unit: '%' },
    { text: '20 °C', value: '20', place: 1, unit: 'degC' },
    { text: '1.5', value: '1.5', place: -1, unit: '1' },
    { text: '1.5 1', value: '1.5', place: -1, unit: '1' },
    { text: '0.500 1', value: '0.5', place: -3, unit: '1' },
    { text: '2.5 × 10^-3 mol·L⁻¹', value: '0.0025', place: -4, unit: 'mol/L' },
    { text: '1 000.5 mL', value: '1000.5', place: -1, unit: 'mL' },
  ])('$text', ({ text, value, place, unit }) => {
    const parts = readQuantityText(text)
    expect(parts.numeral.value.eq(value)).toBe(true)
    expect(parts).toMatchObject({ numeral: { place }, unit, spread: undefined })
  })
})

describe('a number with its uncertainty', () => {
  it.each([
    { text: '3.9772(21) g', value: '3.9772', place: -4, spread: '0.0021', unit: 'g' },
    { text: '100.02147(35) g', value: '100.02147', place: -5, spread: '0.00035', unit: 'g' },
    { text: '100.02147(0.00035) g', value: '100.02147', place: -5, spread: '0.00035', unit: 'g' },
    { text: '(100.02147 ± 0.00035) g', value: '100.02147', place: -5, spread: '0.00035', unit: 'g' },
    { text: '100.02147 ± 0.00035 g', value: '100.02147', place: -5, spread: '0.00035', unit: 'g' },
    { text: '(100.02147+/-0.00035) g', value: '100.02147', place: -5, spread: '0.00035', unit: 'g' },
    { text: '(2.50+-0.02)e-3 mol', value: '0.0025', place: -5, spread: '0.00002', unit: 'mol' },
    { text: '6.022(5) × 10^23', value: '6.022e23', place: 20, spread: '5e20', unit: '1' },
    { text: '250(10) mL', value: '250', place: 0, spread: '10', unit: 'mL' },
    { text: '(250 ± 10) mL', value: '250', place: 0, spread: '10', unit: 'mL' },
    { text: '12.5(0) mL', value: '12.5', place: -1, spread: '0', unit: 'mL' },
  ])('$text', ({ text, value, place, spread, unit }) => {
    const parts = readQuantityText(text, 'reject')
    expect(parts.numeral.value.eq(value)).toBe(true)
    expect(parts.spread?.eq(spread)).toBe(true)
    expect(parts).toMatchObject({ numeral: { place, ambiguous: false }, unit })
  })
})

describe('what is refused', () => {
  it.each([
    { text: '', code: 'quantity/empty', start: 0, hint: undefined },
    { text: '   ', code: 'quantity/empty', start: 0, hint: undefined },
    { text: 'g', code: 'quantity/not-a-numeral', start: 0, hint: undefined },
    { text: '  x g', code: 'quantity/not-a-numeral', start: 2, hint: undefined },
    { text: '  3,977 g', code: 'quantity/decimal-comma', start: 3, hint: '3.977 g' },
    { text: '3.977 gm', code: 'quantity/unknown-unit', start: 6, hint: undefined },
    { text: ' 3.977 ML', code: 'quantity/unknown-unit', start: 7, hint: 'mL' },
    { text: '3.977 __proto__', code: 'quantity/unknown-unit', start: 6, hint: undefined },
    { text: '3.977(21 g', code: 'quantity/bad-uncertainty', start: 8, hint: undefined },
    { text: ' 3.977(21', code: 'quantity/bad-uncertainty', start: 9, hint: undefined },
    { text: '3.977() g', code: 'quantity/not-a-numeral', start: 6, hint: undefined },
    { text: '3.977(-2) g', code: 'quantity/bad-uncertainty', start: 6, hint: undefined },
    { text: '3.977 ± -2 g', code: 'quantity/bad-uncertainty', start: 8, hint: undefined },
    { text: '3.977 ± g', code: 'quantity/not-a-numeral', start: 8, hint: undefined },
    { text: '(3.977 g', code: 'quantity/bad-uncertainty', start: 6, hint: undefined },
    { text: '(3.977 ± 0.002 g', code: 'quantity/bad-uncertainty', start: 14, hint: undefined },
    { text: '(3.977 ± 0,002) g', code: 'quantity/decimal-comma', start: 10, hint: '0.002) g' },
    { text: '(', code: 'quantity/not-a-numeral', start: 1, hint: undefined },
    { text: '1.0(1)e200 g', code: 'quantity/exponent-out-of-range', start: 0, hint: undefined },
    { text: '250 mL', code: 'quantity/ambiguous-zeros', start: 0, hint: '250.' },
  ])('$text is $code at $start', ({ text, code, start, hint }) => {
    const error = refusal(() => readQuantityText(text, 'reject'))
    expect(error.code).toBe(code)
    expect(error.position?.start).toBe(start)
    expect(error.hint).toBe(hint)
  })

  it.each([
    { text: '  x g', start: 2, end: 5, found: 'x g' },
    { text: '3.977 gm', start: 6, end: 8, found: 'gm' },
    { text: ` 3 ${'m'.repeat(99)} `, start: 3, end: 102, found: 'm'.repeat(60) },
    { text: '3.977(21', start: 8, end: 8, found: '' },
    { text: '3.977(21 g', start: 8, end: 9, found: ' g' },
    { text: '(3.977 g', start: 6, end: 7, found: ' g' },
    { text: `(3.977 ${'m'.repeat(99)}`, start: 6, end: 7, found: ` ${'m'.repeat(59)}` },
    { text: '3.977(-2) g', start: 6, end: 8, found: '3.977(-2) g' },
    { text: ' 3.977 ± -2 g', start: 9, end: 11, found: '3.977 ± -2 g' },
    { text: '3,977 g', start: 1, end: 2, found: '3,977 g' },
  ])('in "$text" it stands from $start to $end', ({ text, start, end, found }) => {
    const error = refusal(() => readQuantityText(text))
    expect([error.position, error.found]).toEqual([{ start, end }, found])
  })

  it.each([
    { value: 3.977, code: 'quantity/javascript-number' },
    { value: Number.NaN, code: 'quantity/javascript-number' },
    { value: 5n, code: 'quantity/not-text' },
    { value: null, code: 'quantity/not-text' },
    { value: undefined, code: 'quantity/not-text' },
    { value: Symbol('g'), code: 'quantity/not-text' },
    { value: ['3.977 g'], code: 'quantity/not-text' },
    { value: () => '3.977 g', code: 'quantity/not-text' },
    { value: new String('3.977 g'), code: 'quantity/not-text' },
    { value: Object.create(null), code: 'quantity/not-text' },
  ])('a value that is no text: $code', ({ value, code }) => {
    expect(refusal(() => readQuantityText(value)).code).toBe(code)
  })

  it('takes no time over a million characters', () => {
    const long = 'x'.repeat(1_000_000)
    const start = performance.now()
    for (const text of [
      long,
      `1 ${long}`,
      `1${' '.repeat(1_000_000)}`,
      `(${'('.repeat(1_000_000)}`,
      '1 '.repeat(500_000),
    ]) {
      try {
        readQuantityText(text)
      } catch {} // refused or read, at once
    }
    expect(performance.now() - start).toBeLessThan(1000)
  })
})

it('any text is read or refused, never anything else', () => {
  const near = fc.string({ unit: fc.constantFrom(...'0123456789.,eE+-−×x*· 10^⁻³()±/gmoLlµ%°C', ' g', '+/-') })
  fc.assert(
    fc.property(fc.oneof(fc.string({ unit: 'binary' }), near), (text) => {
      const read = (): string => readQuantityText(text).numeral.value.toString()
      try {
        expect(read()).not.toBe('NaN')
      } catch {
        expect(refusal(read).code).toMatch(/^quantity\//)
      }
    }),
    { numRuns: 2000 },
  )
})
