import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exact, type Quantity, quantity, writeWithUncertainty } from '../../src/quantity/index.js'
import { refusal } from './refusal.js'

const mass = quantity('100.02147 g', { uncertainty: '0.35 mg' })

describe('a quantity with its uncertainty', () => {
  it.each([
    { q: mass, options: {}, is: '100.02147(35) g' },
    { q: mass, options: { form: 'plus-minus' }, is: '(100.02147 ± 0.00035) g' },
    { q: mass, options: { digits: 1 }, is: '100.0215(4) g' },
    { q: mass, options: { digits: 3 }, is: '100.021470(350) g' },
    { q: mass, options: { digits: 'three-digit' }, is: '100.02147(35) g' },
    { q: quantity('0.827(962)'), options: { digits: 'three-digit' }, is: '0.8(10)' },
    { q: quantity('0.827(367)'), options: { digits: 'three-digit' }, is: '0.8(4)' },
    { q: quantity('0.827(100)'), options: { digits: 'three-digit' }, is: '0.83(10)' },
    { q: quantity('0.827(354)'), options: { digits: 'three-digit' }, is: '0.83(35)' },
    { q: quantity('0.827(355)'), options: { digits: 'three-digit' }, is: '0.8(4)' },
    { q: quantity('0.827(949)'), options: { digits: 'three-digit' }, is: '0.8(9)' },
    { q: quantity('0.827(950)'), options: { digits: 'three-digit' }, is: '0.8(10)' },
    { q: quantity('0.827(351)'), options: { digits: 'three-digit', rounding: 'up' }, is: '0.83(36)' },
    { q: quantity('1.0(2)e-5' as string), options: { digits: 1 }, is: '0.000010(2)' },
    { q: quantity('1.0(2)e-6' as string), options: { digits: 1 }, is: '1.0(2)e-6' },
    { q: quantity('1.0(2)e20' as string), options: { digits: 1 }, is: '100000000000000000000(20000000000000000000)' },
    { q: quantity('1.0(2)e21' as string), options: { digits: 1 }, is: '1.0(2)e21' },
    { q: quantity('1(20)'), options: { digits: 1, form: 'plus-minus' }, is: '0 ± 20' },
    // as many digits as are read, and no more: 100 down to the last one of the uncertainty
    { q: quantity('1e80', { uncertainty: '1e-19' }), options: { digits: 1 }, is: `1.${'0'.repeat(99)}(1)e80` },
    { q: mass, options: { uncertainty: quantity('0.79 mg'), form: 'plus-minus' }, is: '(100.02147 ± 0.00079) g' },
    { q: mass, options: { uncertainty: quantity('0.000361 g'), rounding: 'up' }, is: '100.02147(37) g' },
    { q: mass, options: { uncertainty: quantity('0.000996 g') }, is: '100.0215(10) g' },
    { q: mass, options: { uncertainty: quantity('0.000991 g'), rounding: 'up' }, is: '100.0215(10) g' },
    { q: mass, options: { uncertainty: quantity('0 g') }, is: '100.02147 g' },
    { q: quantity('11111.2(123)'), options: { digits: 1 }, is: '11110(10)' },
    { q: quantity('0.20(1)'), options: { digits: 1, form: 'plus-minus' }, is: '0.20 ± 0.01' },
    { q: quantity('25.03(21) °C'), options: {}, is: '25.03(21) °C' },
    { q: quantity('25.03(21) °C'), options: { uncertainty: quantity('0.2 K'), digits: 1 }, is: '25.0(2) °C' },
    { q: quantity('96.0(5) %'), options: { form: 'plus-minus', digits: 1 }, is: '(96.0 ± 0.5) %' },
    { q: quantity('1.50 h', { uncertainty: '36 s' }), options: { digits: 1 }, is: '1.50(1) h' },
    { q: quantity('1.50 h'), options: { uncertainty: quantity('36 s'), digits: 1 }, is: '1.50(1) h' },
    { q: quantity('1.2345(67)e-7 mol'), options: {}, is: '1.2345(67)e-7 mol' },
    { q: quantity('1.2345(67)e-7 mol'), options: { form: 'plus-minus' }, is: '(1.2345 ± 0.0067)e-7 mol' },
    { q: quantity('6.022(5)e23' as string), options: { digits: 1 }, is: '6.022(5)e23' },
    { q: quantity('0.0(4)'), options: { digits: 1 }, is: '0.0(4)' },
    { q: quantity('-0.01(40)'), options: { digits: 1 }, is: '0.0(4)' },
    { q: quantity('0.0(4)e-9 g'), options: { digits: 1 }, is: '0(4)e-10 g' },
    { q: exact('3 g'), options: {}, is: '3 g' },
    { q: quantity('3.98 g'), options: {}, is: '3.98 g' },
    { q: quantity('3.98 g').plus(quantity('0.020(1) g')), options: {}, is: '4.00 g' },
    { q: quantity('3.98 g'), options: { unstated: 'implied' }, is: '3.9800(29) g' },
    { q: quantity('3.98 g'), options: { unstated: 'ignore' }, is: '3.98 g' },
  ] as { q: Quantity; options: object; is: string }[])('$options: $is', ({ q, options, is }) => {
    expect(writeWithUncertainty(q, options)).toBe(is)
  })
})

describe('what is refused', () => {
  it.each([
    { call: () => writeWithUncertainty(5 as never), code: 'quantity/not-a-quantity', path: undefined },
    { call: () => writeWithUncertainty(mass, null as never), code: 'quantity/unknown-option', path: ['options'] },
    {
      call: () => writeWithUncertainty(mass, { form: 'words' as never }),
      code: 'quantity/unknown-option',
      path: ['form'],
    },
    {
      call: () => writeWithUncertainty(mass, { digits: 4 as never }),
      code: 'quantity/unknown-option',
      path: ['digits'],
    },
    {
      call: () => writeWithUncertainty(mass, { rounding: 'down' as never }),
      code: 'quantity/unknown-option',
      path: ['rounding'],
    },
    {
      call: () => writeWithUncertainty(mass, { uncertainty: quantity('0.1 mL') }),
      code: 'quantity/dimensions-differ',
      path: undefined,
    },
    {
      call: () => writeWithUncertainty(quantity('3.98 g'), { unstated: 'reject' }),
      code: 'quantity/uncertainty-not-stated',
      path: undefined,
    },
    {
      call: () => writeWithUncertainty(quantity('1e81', { uncertainty: '1e-19' }), { digits: 1 }),
      code: 'quantity/out-of-range',
      path: undefined,
    },
    {
      call: () => writeWithUncertainty(quantity('(954.5560 ± .97894·10−96) M')),
      code: 'quantity/out-of-range',
      path: undefined,
    },
    {
      call: () => writeWithUncertainty(quantity('-87464e95 g/mol', { uncertainty: '7 g/mol' })),
      code: 'quantity/out-of-range',
      path: undefined,
    },
  ])('$code $path', ({ call, code, path }) => expect(refusal(call)).toMatchObject({ code, path }))
})

it('what is written is read back, and written the same again', () => {
  const number = fc.tuple(
    fc.integer({ min: -999999, max: 999999 }),
    fc.integer({ min: -40, max: 40 }),
    fc.integer({ min: 1, max: 99999 }),
    fc.integer({ min: -3, max: 3 }),
  )
  const choices = fc.record({
    form: fc.constantFrom('parentheses', 'plus-minus'),
    digits: fc.constantFrom(1, 2, 3),
    rounding: fc.constantFrom('nearest', 'up'),
  })
  fc.assert(
    fc.property(number, choices, fc.constantFrom('', ' g', ' °C', ' %'), ([m, e, s, shift], how, unit) => {
      const options = how as Parameters<typeof writeWithUncertainty>[1]
      const uncertainty = `${s}e${e + shift}${unit}`
      const text = writeWithUncertainty(quantity(`${m}e${e}${unit}` as string, { uncertainty }), options)
      const again = quantity(text)
      expect(again.input?.uncertainty).toBeDefined()
      expect(writeWithUncertainty(again, options)).toBe(text)
    }),
    { numRuns: 500 },
  )
})

describe('the most digits', () => {
  it('that are written are those that are read', () => {
    const spread = `1.0e-97`
    const written = writeWithUncertainty(quantity('9.5', { uncertainty: spread }))
    expect(written).toHaveLength('9.'.length + 98 + '(10)'.length)
    expect(quantity(written as '1').toString()).toBe(`9.5${'0'.repeat(97)}`)
    const finer = quantity('9.5', { uncertainty: '1.0e-99' })
    expect(refusal(() => writeWithUncertainty(finer)).found).toBe('101 digits')
  })
})
