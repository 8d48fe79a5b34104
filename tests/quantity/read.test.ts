import fc from 'fast-check'
import { describe, expect, expectTypeOf, it } from 'vitest'
import { constant, exact, isQuantity, type Quantity, quantity, tryQuantity } from '../../src/quantity/index.js'
import { refusal } from './refusal.js'

describe('an input', () => {
  it('measured: its digits limit what follows', () => {
    const mass = quantity('3.977 g', { label: 'mass of oxide', symbol: 'm', of: 'CuO', role: 'mass', id: 'w1' })
    expect(mass).toMatchObject({ unit: 'g', dimension: 'mass', rule: 'input', operands: [], significantFigures: 4 })
    expect(mass.naming).toEqual({ label: 'mass of oxide', symbol: 'm', of: 'CuO', role: 'mass' })
    expect(mass.input).toEqual({
      kind: 'measured',
      writtenPlace: -3,
      ambiguous: false,
      uncertainty: undefined,
      id: 'w1',
    })
  })

  it('chosen: exact, whatever its digits', () => {
    expect(exact('0.0400 mol')).toMatchObject({ significantFigures: null, place: null, input: { kind: 'exact' } })
    expect(exact(250).input?.ambiguous).toBe(false)
    expect(exact(0.5).value.toString()).toBe('0.5')
    expect(exact(1e21).value.toString()).toBe('1e+21')
  })

  it('constant: as a reading', () => {
    expect(constant('15.999 g/mol')).toMatchObject({ significantFigures: 5, input: { kind: 'constant' } })
  })

  it('whole numbers say that their zeros were open', () => {
    expect(quantity('250 mL').input?.ambiguous).toBe(true)
    expect(quantity('250 mL').significantFigures).toBe(2)
    expect(quantity('250 mL', { wholeNumberZeros: 'significant' }).significantFigures).toBe(3)
  })

  it.each([
    { q: quantity('25.00 mL', { uncertainty: '0.03 mL' }), standard: '0.03' },
    { q: quantity('25.00(3) mL'), standard: '0.03' },
    { q: quantity('25.00(6) mL', { coverageFactor: '2' }), standard: '0.03' },
    { q: quantity('(25.00 ± 0.06) mL', { coverageFactor: '2' }), standard: '0.03' },
    { q: constant('25.00 mL', { uncertainty: ['0.03 mL', '0.04 mL'] }), standard: '0.05' },
  ])('an uncertainty in the text or beside it: $standard', ({ q, standard }) => {
    expect(q.input?.uncertainty?.standard.toString()).toBe(standard)
  })

  it('has its dimension in its type', () => {
    expectTypeOf(quantity('3.98 g')).toEqualTypeOf<Quantity<'mass'>>()
    expectTypeOf(quantity('96 % w/w')).toEqualTypeOf<Quantity<'ratio'>>()
    expectTypeOf(quantity('96%')).toEqualTypeOf<Quantity<'ratio'>>()
    expectTypeOf(quantity('1.50')).toEqualTypeOf<Quantity<'ratio'>>()
    expectTypeOf(quantity('250.')).toEqualTypeOf<Quantity<'ratio'>>()
    expectTypeOf(quantity('0.20(1)')).toEqualTypeOf<Quantity<'ratio'>>()
    expectTypeOf(quantity('3.9772(21) g')).toEqualTypeOf<Quantity<'mass'>>()
    expectTypeOf(quantity('(3.9772 ± 0.0021) g')).toEqualTypeOf<Quantity<'mass'>>()
    expectTypeOf(quantity('18.4 mol L^-1')).toEqualTypeOf<Quantity<'amountConcentration'>>()
    expectTypeOf(exact(2)).toEqualTypeOf<Quantity<'ratio'>>()
    const unknown: string = '3.98 g'
    expectTypeOf(quantity(unknown)).toEqualTypeOf<Quantity>()
  })
})

describe('what is refused', () => {
  it.each([
    { call: () => quantity(3.977 as never), code: 'quantity/javascript-number' },
    { call: () => quantity(null as never), code: 'quantity/not-text' },
    { call: () => quantity({ toString: () => '1 g' } as never), code: 'quantity/not-text' },
    { call: () => constant([] as never), code: 'quantity/not-text' },
    { call: () => quantity('' as never), code: 'quantity/empty' },
    { call: () => quantity('3,98 g' as never), code: 'quantity/decimal-comma' },
    { call: () => quantity('3.98 gm' as never), code: 'quantity/unknown-unit' },
    { call: () => exact(Number.NaN), code: 'quantity/not-a-numeral' },
    { call: () => exact(Number.POSITIVE_INFINITY), code: 'quantity/not-a-numeral' },
    { call: () => exact(1e300), code: 'quantity/exponent-out-of-range' },
    { call: () => exact(true as never), code: 'quantity/not-text' },
    { call: () => exact('25.00(3) mL'), code: 'quantity/bad-uncertainty' },
    { call: () => exact('25.00 mL', { uncertainty: '0.03 mL' }), code: 'quantity/bad-uncertainty' },
    { call: () => quantity('25.00(3) mL', { uncertainty: '0.03 mL' }), code: 'quantity/bad-uncertainty' },
    { call: () => quantity('25.00(3) mL', { coverageFactor: '0' }), code: 'quantity/bad-uncertainty' },
    { call: () => quantity('25.00 mL', { uncertainty: '0.03 g' }), code: 'quantity/wrong-dimension' },
    { call: () => quantity('25 mL', null as never), code: 'quantity/unknown-option' },
    { call: () => quantity('25 mL', 'significant' as never), code: 'quantity/unknown-option' },
    { call: () => quantity('250 mL', { wholeNumberZeros: 'both' as never }), code: 'quantity/unknown-option' },
    { call: () => quantity('250 mL', { wholeNumberZeros: 'reject' }), code: 'quantity/ambiguous-zeros' },
    { call: () => quantity('25 mL', { id: 5 as never }), code: 'quantity/unknown-option' },
    { call: () => quantity('25 mL', { id: '' }), code: 'quantity/unknown-option' },
    { call: () => quantity('25 mL', { label: 5 as never }), code: 'quantity/unknown-option' },
  ])('$code', ({ call, code }) => expect(refusal(call).code).toBe(code))

  it('comes back as data, if asked for', () => {
    expect(tryQuantity('3.98 g')).toMatchObject({ ok: true })
    expect(tryQuantity('3,98 g')).toMatchObject({ ok: false, error: { code: 'quantity/decimal-comma' } })
    expect(tryQuantity({})).toMatchObject({ ok: false, error: { code: 'quantity/not-text' } })
    expect(tryQuantity('1 g', null as never)).toMatchObject({ ok: false, error: { code: 'quantity/unknown-option' } })
  })

  it('whatever comes in', () => {
    fc.assert(
      fc.property(fc.anything(), fc.anything(), (text, options) => {
        const outcome = tryQuantity(text, options as never)
        if (!outcome.ok) expect(outcome.error.code).toMatch(/^quantity\//)
      }),
      { numRuns: 1000 },
    )
  })
})

it.each([null, undefined, 1, '1.00 g', {}, [], () => 1, Symbol('q')])(
  'a value that is no quantity is none',
  (value) => {
    expect(isQuantity(value)).toBe(false)
  },
)
