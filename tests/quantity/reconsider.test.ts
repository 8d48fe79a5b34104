import { describe, expect, it } from 'vitest'
import { atomicWeight } from '../../src/element/index.js'
import { molarMass } from '../../src/formula/index.js'
import {
  asDimension,
  type Change,
  constant,
  exact,
  type Quantity,
  quantity,
  reconsider,
  weightedSum,
} from '../../src/quantity/index.js'
import { refusal } from './refusal.js'

const [zn, o, h] = [
  constant('65.38 g/mol', { of: 'Zn', role: 'atomic weight' }),
  constant('15.999 g/mol', { of: 'O', role: 'atomic weight' }),
  constant('1.0080 g/mol', { of: 'H', role: 'atomic weight' }),
]
const oxide = weightedSum([
  { times: 1, of: zn },
  { times: 1, of: o },
]).named({ symbol: 'M', of: 'ZnO', role: 'molar mass' })
const water = weightedSum([
  { times: 2, of: h },
  { times: 1, of: o },
]).named({ symbol: 'M', of: 'H2O', role: 'molar mass' })
const tare = quantity('11.204 g', { label: 'tare', role: 'tare' })
const gross = quantity('14.459 g', { label: 'gross', role: 'gross' })
const net = gross.minus(tare).named({ symbol: 'm', of: 'ZnO', role: 'net' })
const amount = net.dividedBy(oxide).named({ symbol: 'n', of: 'ZnO' })
const acid = quantity('3.00 mol/L', { symbol: 'c', of: 'H2SO4', role: 'concentration' })
const volume = amount.dividedBy(acid).to('mL').named({ symbol: 'V', of: 'H2SO4' })

const text = (q: Quantity): string => q.toString()

describe('the same calculation with something changed', () => {
  it.each([
    { what: 'an input by its identity', change: { replace: tare, with: exact('0 g') }, is: '59.2 mL' },
    { what: 'an input by its label', change: { replace: { label: 'tare' }, with: exact('0 g') }, is: '59.2 mL' },
    {
      what: 'an input in another unit',
      change: { replace: { role: 'gross' }, with: quantity('14459 mg') },
      is: '13.3 mL',
    },
    {
      what: 'a result in between',
      change: { replace: { role: 'molar mass' }, with: quantity('90.00 g/mol') },
      is: '12.1 mL',
    },
    { what: 'a function of it', change: { replace: acid, with: (c) => c.times(quantity('2.000')) }, is: '6.67 mL' },
    {
      what: 'what it was made from, the wrong way round',
      change: {
        replace: { symbol: 'n' },
        with: (n) => asDimension(n.operands[0] as Quantity, 'mass').dividedBy(water),
      },
      is: '60.2 mL',
    },
    {
      what: 'every atomic weight',
      change: { replace: { role: 'atomic weight' }, with: (w) => (w.naming.of === 'Zn' ? constant('65.4 g/mol') : w) },
      is: '13.3 mL',
    },
    {
      what: 'a change of unit forgotten',
      change: { conversion: { from: 'L', to: 'mL' }, factor: '1' },
      is: '0.0133 mL',
    },
    { what: 'any change of unit', change: { conversion: {}, factor: '10' }, is: '0.133 mL' },
    { what: 'all rounded on the way', change: { round: 'every intermediate', to: { figures: 2 } }, is: '14 mL' },
    { what: 'one rounded', change: { round: { role: 'molar mass' }, to: { place: '1' } }, is: '13 mL' },
    {
      what: 'two things',
      change: [
        { replace: tare, with: exact('0 g') },
        { replace: { role: 'molar mass' }, with: quantity('90.000 g/mol') },
      ],
      is: '53.6 mL',
    },
  ] as { what: string; change: Change; is: string }[])('$what', ({ change, is }) => {
    expect(text(reconsider(volume, change))).toBe(is)
  })

  it('a replacement keeps its own name, and the unit of what it replaces', () => {
    const changed = reconsider(net, { replace: gross, with: quantity('14459 mg', { label: 'heavier' }) })
    expect(changed.operands[0]).toMatchObject({ unit: 'g', rule: 'conversion' })
    expect(changed.operands[0]?.operands[0]?.naming.label).toBe('heavier')
    expect(changed.naming).toEqual(net.naming)
  })

  it('the result itself can be replaced', () => {
    expect(text(reconsider(volume, { replace: volume, with: quantity('0.0200 L') }))).toBe('20.0 mL')
  })

  it('a function is given what was changed below', () => {
    const double: Change = { replace: { symbol: 'M' }, with: (q) => q.times(exact(2)) }
    const nested = weightedSum([{ times: 1, of: oxide }]).named({ symbol: 'M' })
    expect(reconsider(nested, double).value.eq(oxide.value.times(4))).toBe(true)
  })

  it('the atomic weights of another set', () => {
    const weights: Change = {
      replace: { role: 'atomic weight' },
      with: ({ naming }) => atomicWeight(naming.of as string, 'standard'),
    }
    const mass = quantity('0.0400 mol').times(molarMass('ZnSO4·7H2O'))
    expect(mass.to('mg').value.toFixed(2)).toBe('11501.64')
    const changed = reconsider(mass, weights)
    expect(changed.value.eq(molarMass('ZnSO4·7H2O', { weights: 'standard' }).times(quantity('0.0400 mol')).value)).toBe(
      true,
    )
    expect(reconsider(changed, weights)).toBe(changed) // they are the ones already
  })

  it('degrees Celsius stay so', () => {
    const warm = quantity('25.0 degC', { label: 'bath' })
    const rise = warm.minus(quantity('20.0 degC'))
    expect(text(reconsider(rise, { replace: warm, with: quantity('303.15 K') }))).toBe('10.0 K')
    expect(text(reconsider(rise, { conversion: { from: 'degC' }, factor: '2' }))).toBe('10.0 K')
  })

  it('temperatures forget no zero point with the factor', () => {
    const kelvins = quantity('25.0 degC').to('K')
    expect(text(reconsider(kelvins, { conversion: { to: 'K' }, factor: '1' }))).toBe('298.2 K')
  })
})

describe('what does not depend on the change', () => {
  const changed = reconsider(volume, { replace: tare, with: exact('0 g') })

  it('is shared with the calculation as it was', () => {
    const [quotient] = changed.operands as [Quantity]
    const [newAmount, newAcid] = quotient.operands as [Quantity, Quantity]
    expect(newAmount).not.toBe(amount)
    expect(newAmount.operands[1]).toBe(oxide)
    expect(newAcid).toBe(acid)
  })

  it.each([
    { change: { replace: { label: 'crucible' }, with: exact('0 g') } },
    { change: { replace: tare, with: tare } },
    { change: { replace: { role: 'atomic weight' }, with: (w: Quantity) => w } },
    { change: { round: { role: 'molar mass' }, to: { figures: 30 } } },
    { change: { conversion: { from: 'mL' }, factor: '1' } },
    { change: { conversion: { from: 'L', to: 'mL' }, factor: '1000' } },
    { change: { conversion: { from: ' L', to: 'mL ' }, factor: ' 1000 ' } },
    { change: { conversion: { from: 'L', to: 'L' }, factor: '1' } },
    { change: { conversion: { from: 'mL', to: 'mL' }, factor: '1' } },
    { change: [] },
  ] as { change: Change }[])('$change changes nothing: the very same', ({ change }) => {
    expect(reconsider(volume, change)).toBe(volume)
  })

  it('a shared part is changed once', () => {
    const both = amount.plus(amount.to('mmol').to('mol'))
    const twice = reconsider(both, { replace: tare, with: exact('0 g') })
    expect(twice.operands[0]).toBe(twice.operands[1]?.operands[0]?.operands[0])
  })

  it('of a hundred thousand steps does not exhaust the stack', () => {
    let q: Quantity<'mass'> = tare
    for (let count = 0; count < 100_000; count += 1) q = q.plus(exact('1 g'))
    expect(text(reconsider(q, { replace: tare, with: exact('0 g') }))).toBe('100000 g')
  })
})

describe('rounded on the way', () => {
  it('are neither inputs nor the last result nor changes of unit', () => {
    const third = quantity('1.0000 mol').dividedBy(exact(3))
    const result = third.dividedBy(exact('7 mol/L')).to('mL')
    const early = reconsider(result, { round: 'every intermediate', to: { figures: 2, rule: 'half-up' } })
    expect(early.value.toSignificantDigits(10).toString()).toBe('47.14285714') // 0.33 / 7, the last not rounded
  })
})

describe('what is refused', () => {
  it.each([
    { change: null, code: 'quantity/bad-change' },
    { change: 'tare', code: 'quantity/bad-change' },
    { change: {}, code: 'quantity/bad-change' },
    { change: [null], code: 'quantity/bad-change' },
    { change: { replace: tare }, code: 'quantity/not-a-quantity' },
    { change: { replace: tare, with: '0 g' }, code: 'quantity/not-a-quantity' },
    { change: { replace: tare, with: () => undefined }, code: 'quantity/not-a-quantity' },
    { change: { replace: tare, with: exact('0 mL') }, code: 'quantity/dimensions-differ' },
    { change: { replace: {}, with: tare }, code: 'quantity/bad-change' },
    { change: { round: 'all', to: { figures: 2 } }, code: 'quantity/bad-change' },
    { change: { round: 'every intermediate' }, code: 'quantity/figures-out-of-range' },
    { change: { conversion: 'L', factor: '1' }, code: 'quantity/bad-change' },
    { change: { conversion: { from: 'litre' }, factor: '1' }, code: 'quantity/bad-change' },
    { change: { conversion: { from: 5 }, factor: '1' }, code: 'quantity/bad-change' },
    { change: { conversion: {}, factor: 1 }, code: 'quantity/bad-change' },
    { change: { conversion: {}, factor: '0' }, code: 'quantity/bad-change' },
    { change: { replace: { role: 'molar mass' }, with: exact('0 g/mol') }, code: 'quantity/out-of-range' },
  ])('$change is $code', ({ change, code }) => {
    expect(refusal(() => reconsider(volume, change as never)).code).toBe(code)
  })

  it('only quantities are reconsidered', () => {
    expect(refusal(() => reconsider(5 as never, [])).code).toBe('quantity/not-a-quantity')
  })
})
