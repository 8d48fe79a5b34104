import { inspect } from 'node:util'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Quantity, quantity, sum } from '../../src/quantity/index.js'
import { type Unit, units } from '../../src/quantity/unit.js'
import { refusal } from './refusal.js'

const q = (text: string): Quantity => quantity(text)

describe('calculating', () => {
  it.each([
    { shown: q('18.632 g').minus(q('11.204 g')), is: '7.428 g' },
    { shown: q('1.00 kg').plus(q('1 mg')), is: '1.00 kg' },
    { shown: q('3.98 g').plus(q('0.02 g')), is: '4.00 g' },
    { shown: q('25 °C').minus(q('20. °C')), is: '5 K' },
    { shown: q('20. °C').plus(q('5 K')), is: '298 K' },
    { shown: q('290 K').plus(q('20. °C')), is: '580 K' },
    { shown: quantity('3.98 g').dividedBy(quantity('79.545 g/mol')), is: '0.0500 mol' },
    { shown: quantity('0.0500 mol').times(quantity('79.545 g/mol')), is: '3.98 g' },
    { shown: quantity('25.0 mL').times(quantity('6.0 mol/L')), is: '0.15 mol' },
    { shown: quantity('4.00 g').times(quantity('50. %')), is: '2.0 g' },
    { shown: q('41.7 mL').to('L'), is: '0.0417 L' },
    { shown: q('1.50 h').to('s'), is: '5.40e3 s' },
  ])('$is', ({ shown, is }) => expect(String(shown)).toBe(is))

  it('keeps every digit', () => {
    const third = quantity('1.00').dividedBy(quantity('3.00'))
    expect(third.toString()).toBe('0.333')
    expect(third.times(quantity('3.00')).value.toFixed(30)).toBe('1.000000000000000000000000000000')
  })

  it('compares across units, unrounded', () => {
    expect(quantity('1.000 g').equals(quantity('1000 mg'))).toBe(true)
    expect(quantity('1.00 g').compare(quantity('1.001 g'))).toBeLessThan(0)
    expect(quantity('20. degC').compare(quantity('293.15 K'))).toBe(0)
  })

  it('changes no unit for nothing', () => {
    const mass = quantity('3.98 g')
    expect(mass.to('g')).toBe(mass)
  })
})

describe('where a quantity came from', () => {
  it('the rule and the very operands', () => {
    const [gross, tare] = [quantity('18.632 g'), quantity('11.204 g')]
    const net = gross.minus(tare)
    expect(net.rule).toBe('difference')
    expect(net.operands).toEqual([gross, tare])
    expect(net.operands[1]).toBe(tare)
    expect(net.input).toBeUndefined()
  })

  it('a renamed input stays the same measurement', () => {
    const mass = quantity('3.98 g', { label: 'oxide', of: 'ZnO' })
    const renamed = mass.named({ label: 'zinc oxide' })
    expect(renamed.naming).toEqual({ label: 'zinc oxide', of: 'ZnO' })
    expect(renamed.input).toBe(mass.input)
    expect(mass.naming.label).toBe('oxide')
  })

  it('cannot be changed', () => {
    const mass = q('3.98 g')
    for (const part of [mass, mass.operands, mass.input, mass.naming]) expect(Object.isFrozen(part)).toBe(true)
    const total = mass.plus(mass)
    expect(Object.isFrozen(total.operands)).toBe(true)
    expect(Reflect.set(total, 'value', 5)).toBe(false)
  })

  it('a sum of a hundred thousand readings one by one still knows its place', () => {
    let total: Quantity<'mass'> = quantity('0.00 g')
    const reading = quantity('0.010 g')
    for (let count = 0; count < 100_000; count += 1) total = total.plus(reading)
    expect(total.toString()).toBe('1000.00 g')
  })
})

describe('what is refused', () => {
  const mass = q('3.98 g')
  it.each([
    { what: 'mass plus volume', call: () => mass.plus(q('1 mL')), code: 'quantity/dimensions-differ' },
    { what: 'mass minus amount', call: () => mass.minus(q('1 mol')), code: 'quantity/dimensions-differ' },
    { what: 'mass against volume', call: () => mass.compare(q('1 mL')), code: 'quantity/dimensions-differ' },
    { what: 'mass equals ratio', call: () => mass.equals(q('1')), code: 'quantity/dimensions-differ' },
    { what: 'mass times mass', call: () => mass.times(mass as never), code: 'quantity/no-such-product' },
    { what: 'time by mass', call: () => q('1 s').dividedBy(mass as never), code: 'quantity/no-such-quotient' },
    { what: 'division by zero', call: () => mass.dividedBy(quantity('0.00')), code: 'quantity/division-by-zero' },
    { what: 'division by 0 degC as K is none', call: () => mass.to('mL' as never), code: 'quantity/wrong-dimension' },
    { what: 'an unknown unit', call: () => mass.to('gm' as never), code: 'quantity/unknown-unit' },
    { what: 'a number as operand', call: () => mass.plus(1 as never), code: 'quantity/not-a-quantity' },
    { what: 'text as operand', call: () => mass.minus('1 g' as never), code: 'quantity/not-a-quantity' },
    { what: 'nothing as operand', call: () => mass.times(undefined as never), code: 'quantity/not-a-quantity' },
    { what: 'null as operand', call: () => mass.dividedBy(null as never), code: 'quantity/not-a-quantity' },
    { what: 'a name that is none', call: () => mass.named({ label: 5 } as never), code: 'quantity/unknown-option' },
    { what: 'no names', call: () => mass.named(null as never), code: 'quantity/unknown-option' },
    { what: 'a < b', call: () => mass < q('4 g'), code: 'quantity/compared-with-operator' },
    { what: 'a * 2', call: () => (mass as never) * 2, code: 'quantity/compared-with-operator' },
    { what: '+a', call: () => Number(mass), code: 'quantity/compared-with-operator' },
    {
      what: 'a result beyond all sizes',
      call: () => q('1e90').times(q('1e60') as never),
      code: 'quantity/out-of-range',
    },
    {
      what: 'a result below all sizes',
      call: () => q('1e-90').dividedBy(q('1e60') as never),
      code: 'quantity/out-of-range',
    },
  ])('$what is $code', ({ call, code }) => {
    const error = refusal(call)
    expect(error.code).toBe(code)
    expect(error.expected).toBeTruthy()
  })

  it('an error of two dimensions names both', () => {
    expect(refusal(() => mass.plus(q('1 mol')))).toMatchObject({
      message: 'a mass and an amount of substance neither add nor compare.',
      found: '1 mol',
      expected: 'a mass, in g, kg, mg, ug',
    })
  })
})

describe('showing', () => {
  it('as text, in a template, in the console and as JSON', () => {
    const mass = quantity('3.980 g', { uncertainty: '0.002 g' })
    expect(`${mass}`).toBe('3.980 g')
    expect(`m = ${mass}`).toBe('m = 3.980 g')
    expect(inspect(mass)).toBe('3.980 g')
    expect(JSON.parse(JSON.stringify({ mass }))).toEqual({
      mass: { value: '3.980', unit: 'g', significantFigures: 4, uncertainty: '0.002' },
    })
  })
})

describe('for all quantities', () => {
  const reading = fc
    .tuple(fc.stringMatching(/^[1-9][0-9]{0,6}$/), fc.stringMatching(/^[0-9]{1,6}$/))
    .map(([whole, decimals]) => `${whole}.${decimals}`)

  it('the order of a sum does not matter', () => {
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 8 }), fc.nat(), (texts, turn) => {
        const terms = texts.map((text) => q(`${text} g`) as Quantity<'mass'>)
        const at = turn % terms.length
        const [a, b] = [sum(terms), sum([...terms.slice(at), ...terms.slice(0, at)])]
        expect(a.equals(b)).toBe(true)
        expect(a.place).toBe(b.place)
      }),
    )
  })

  it('adding one by one is adding all at once', () => {
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 8 }), (texts) => {
        const [first, ...rest] = texts.map((text) => q(`${text} g`) as Quantity<'mass'>)
        const oneByOne = rest.reduce((total, term) => total.plus(term), first as Quantity<'mass'>)
        const all = sum([first as Quantity<'mass'>, ...rest])
        expect(oneByOne.toString()).toBe(all.toString())
      }),
    )
  })

  it('a change of unit keeps the figures', () => {
    const pairs = (Object.keys(units) as Unit[]).flatMap((from) =>
      (Object.keys(units) as Unit[])
        .filter((to) => units[to].dimension === units[from].dimension && from !== 'degC' && to !== 'degC')
        .map((to) => [from, to] as const),
    )
    fc.assert(
      fc.property(reading, fc.constantFrom(...pairs), (text, [from, to]) => {
        const before = q(`${text} ${from}`)
        const after = before.to(to as never)
        expect(after.significantFigures).toBe(before.significantFigures)
        expect(after.to(from as never).toString()).toBe(before.toString())
      }),
      { numRuns: 500 },
    )
  })

  it('multiplying and dividing by the same gives back the value', () => {
    fc.assert(
      fc.property(reading, reading, (a, b) => {
        const [x, y] = [q(a) as Quantity<'ratio'>, q(b) as Quantity<'ratio'>]
        expect(x.times(y).dividedBy(y).value.toSignificantDigits(30).eq(x.value)).toBe(true)
      }),
    )
  })
})
