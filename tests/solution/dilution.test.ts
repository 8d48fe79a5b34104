import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exact, quantity, roundTo } from '../../src/quantity/index.js'
import { dilution } from '../../src/solution/index.js'
import { refusal } from '../quantity/refusal.js'

describe('three numbers give the fourth', () => {
  it.each([
    { given: { from: '15.7 mol/L', to: '8 mol/L', volume: '50 mL' }, missing: 'stock', is: '25.47770701 mL' },
    { given: { from: '12.1 mol/L', to: '6.05 mol/L', volume: '100 mL' }, missing: 'stock', is: '50 mL' },
    { given: { from: '6 mol/L', to: '500 mmol/L', stock: '10 mL' }, missing: 'volume', is: '120 mL' },
    { given: { from: '6 mol/L', stock: '10 mL', volume: '250 mL' }, missing: 'to', is: '0.24 mol/L' },
    { given: { to: '0.24 mol/L', stock: '10 mL', volume: '250 mL' }, missing: 'from', is: '6 mol/L' },
    { given: { from: '6 mol/L', to: '6 mol/L', volume: '50 mL' }, missing: 'stock', is: '50 mL' },
    { given: { from: '6 mol/L', to: '3 mol/L', volume: '2 L' }, missing: 'stock', is: '1 L' },
  ] as const)('$given: $missing is $is', ({ given, missing, is }) =>
    expect(dilution(given)[missing].toString()).toBe(is),
  )

  it('with the water that is about needed, and the factor', () => {
    const { water, dilutionFactor } = dilution({ from: '12 mol/L', to: '3 mol/L', volume: '200 mL' })
    expect(water.toString()).toBe('150 mL')
    expect(water.naming.label).toBe('volume of water, about')
    expect(dilutionFactor.toString()).toBe('4')
  })

  it('has the figures of readings', () => {
    const { to } = dilution({
      from: quantity('0.1024 mol/L'),
      stock: quantity('10.00 mL'),
      volume: quantity('250.0 mL'),
    })
    expect(to.toString()).toBe('0.004096 mol/L')
  })

  it('goes by the amount of solute, which does not change', () => {
    const { stock } = dilution({ from: '12 mol/L', to: '3 mol/L', volume: '200 mL', substance: 'HCl' })
    expect(stock.naming).toMatchObject({ label: 'volume of the stock of HCl', role: 'volume', of: 'HCl' })
    const litres = stock.operands[0]
    expect(litres?.operands.map(({ naming }) => naming.label)).toEqual([
      'amount of HCl',
      'concentration of the stock of HCl',
    ])
  })
})

describe('mixing with water', () => {
  it.each([
    ...['H2SO4', 'HCl', 'HNO3', 'H3PO4', 'CH3COOH', 'C2H4O2', 'HClO4', 'HF', 'HBr', 'HI', 'HCOOH'].map(
      (acid) => [acid, 'acid into water'] as const,
    ),
    ...['NaOH', 'KOH', 'LiOH', 'NH3', 'NH4OH'].map((alkali) => [alkali, 'alkali into water'] as const),
    ['CuSO4', 'stock into water'],
    [undefined, 'stock into water'],
  ] as const)('%s: %s', (substance, order) => {
    const mixed = dilution({ from: '2 mol/L', to: '1 mol/L', volume: '10 mL', substance })
    expect(mixed.order).toBe(order)
    expect(mixed.caution).toMatch(/^Add the (acid|alkali|stock solution) slowly to most of the water/)
    expect(mixed.caution).toContain('local rules, the supplier’s safety data sheet and qualified supervision')
  })
})

describe('what is refused', () => {
  it.each([
    { given: { from: '3 mol/L', to: '6 mol/L', volume: '50 mL' }, code: 'solution/cannot-concentrate' },
    { given: { from: '3 mol/L', stock: '60 mL', volume: '50 mL' }, code: 'solution/cannot-concentrate' },
    { given: { from: '3 mol/L', to: '1 mol/L' }, code: 'solution/three-of-four' },
    { given: {}, code: 'solution/three-of-four' },
    { given: { from: '3 mol/L', to: '1 mol/L', stock: '1 mL', volume: '3 mL' }, code: 'solution/three-of-four' },
    { given: { from: '0 mol/L', to: '1 mol/L', volume: '3 mL' }, code: 'solution/not-above-zero' },
    { given: { from: '3 mol/L', to: '-1 mol/L', volume: '3 mL' }, code: 'solution/not-above-zero' },
    { given: { from: '3 mol/L', to: '1 mol/L', volume: '0 mL' }, code: 'solution/not-above-zero' },
    { given: { from: '3 mol/L', to: '1 mol/L', volume: '3 g' }, code: 'quantity/wrong-dimension' },
    { given: { from: 3, to: '1 mol/L', volume: '3 mL' }, code: 'quantity/wrong-dimension' },
    { given: { from: '3 mol/L', to: '1 mol/L', volume: '3 mL', substance: 'h2so4' }, code: 'formula/unknown-symbol' },
    { given: null, code: 'solution/not-an-object' },
    { given: undefined, code: 'solution/not-an-object' },
  ])('$given: $code', ({ given, code }) => expect(refusal(() => dilution(given as never)).code).toBe(code))

  it('any but three of the four numbers', () => {
    const four = Object.entries({ from: '6 mol/L', to: '3 mol/L', stock: '1 mL', volume: '2 mL' })
    for (let choice = 0; choice < 16; choice += 1) {
      const given = four.filter((_, index) => (choice >> index) % 2 === 1)
      if (given.length === 3) continue
      const error = refusal(() => dilution(Object.fromEntries(given)))
      expect(error.found).toBe(given.map(([name]) => name).join(', ') || 'none')
    }
  })

  it('says what it found of the four', () => {
    expect(refusal(() => dilution({ from: '3 mol/L', volume: '1 L' })).message).toBe(
      'A dilution follows from three of from, to, stock and volume; given are from, volume.',
    )
    expect(refusal(() => dilution({}))).toMatchObject({ found: 'none', expected: 'three of from, to, stock, volume' })
    expect(refusal(() => dilution({ from: '3 mol/L', volume: '1 L' })).found).toBe('from, volume')
    expect(refusal(() => dilution({ from: '3 mol/L', to: '6 mol/L', volume: '50 mL' }))).toMatchObject({
      message: 'Water does not turn 3 mol/L into 6 mol/L.',
      found: '6 mol/L',
      expected: 'at most 3 mol/L',
    })
  })
})

describe('laws', () => {
  const tenths = fc.integer({ min: 1, max: 200 })
  it('stock and water are the volume, and the amounts before and after agree', () => {
    fc.assert(
      fc.property(tenths, tenths, tenths, (a, b, v) => {
        const [from, to] = [Math.max(a, b), Math.min(a, b)].map((n) => exact(`${n}e-1 mol/L` as '1 mol/L'))
        const mixed = dilution({ from, to, volume: exact(`${v} mL` as '1 mL') })
        const rest = mixed.from.times(mixed.stock).minus(mixed.to.times(mixed.volume))
        expect(rest.value.abs().lt('1e-30')).toBe(true)
        expect(roundTo(mixed.stock.plus(mixed.water), { figures: 25 }).equals(mixed.volume)).toBe(true)
        expect(mixed.water.value.lt(0)).toBe(false)
      }),
    )
  })
})
