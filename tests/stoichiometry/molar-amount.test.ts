import { describe, expect, it } from 'vitest'
import { exact, quantity, roundTo } from '../../src/quantity/index.js'
import { amountFromMass, massFromAmount } from '../../src/stoichiometry/index.js'
import { refusal } from '../quantity/refusal.js'

describe('the amount in a mass', () => {
  it.each([
    { mass: '2.00 g', of: 'CuSO4·5H2O', is: '0.00801 mol' },
    { mass: '2.00 g', of: 'CuSO4', is: '0.0125 mol' },
    { mass: '500. mg', of: 'Cu', is: '0.00787 mol' },
    { mass: '1.250 kg', of: 'KOH', is: '22.28 mol' },
    { mass: '0.0000 g', of: 'Al', is: '0.00000 mol' },
  ] as const)('$mass of $of is $is', ({ mass, of, is }) => expect(amountFromMass(mass, of).toString()).toBe(is))

  it('text is measured', () => expect(amountFromMass('2.0 g', 'CuO').significantFigures).toBe(2))
  it('a choice stays exact, so the molar mass decides', () => {
    expect(amountFromMass(exact('2 g'), 'CuO').toString()).toBe('0.025143 mol')
  })
  it('an assay leaves less', () => {
    expect(amountFromMass('5.00 g', 'KOH', { assay: '85.0 %' }).toString()).toBe('0.0758 mol')
  })
})

describe('the mass of an amount', () => {
  it.each([
    { amount: '0.050 mol', of: 'CuO', is: '3.9772 g' }, // common practice, no source: 3.977 g on a balance
    { amount: '0.025 mol', of: 'Al', is: '0.67455 g' },
    { amount: '40.0 mmol', of: 'ZnSO4·7H2O', is: '11.502 g' },
    { amount: '0 mol', of: 'Al', is: '0 g' },
  ] as const)('$amount of $of is $is', ({ amount, of, is }) => expect(massFromAmount(amount, of).toString()).toBe(is))

  it('an assay asks for more', () => {
    const mass = massFromAmount('0.100 mol', 'KOH', { assay: exact('85 %') })
    expect(mass.toString()).toBe('6.6006 g')
    expect(mass.naming.label).toBe('mass of KOH as it is, with its impurities')
  })
  it('other atomic weights give another mass', () => {
    const mass = massFromAmount('0.025 mol', 'Al', { weights: 'standard' })
    expect(mass.toString()).toBe('0.674538460 g')
    expect(roundTo(mass, { place: '0.00001' }).toString()).toBe('0.67454 g') // common practice, no source
    expect(roundTo(mass, { place: '0.001' }).toString()).toBe('0.675 g') // common practice, no source
  })
  it('takes a number for water that the formula leaves open', () => {
    expect(massFromAmount('1 mol', 'Al2O3·xH2O', { x: 3 }).toString()).toBe('156.006 g')
  })
  it('takes all of it where the assay is 100 %', () => {
    expect(massFromAmount('0.025 mol', 'Al', { assay: exact('100 %') }).toString()).toBe('0.67455 g')
    expect(amountFromMass('5.00 g', 'KOH', { assay: exact(1) }).toString()).toBe('0.0891 mol')
  })
  it('undoes the amount in a mass', () => {
    const amount = amountFromMass('2.00 g', 'ZnO', { assay: '98 %' })
    expect(massFromAmount(amount, 'ZnO', { assay: '98 %' }).value.toFixed(20)).toBe('2.00000000000000000000')
  })
})

describe('the graph', () => {
  it('names what goes in and what comes out', () => {
    const amount = amountFromMass('2.00 g', 'CuSO4·5H2O', { assay: '99 %' })
    expect(amount.naming).toEqual({ label: 'amount of CuSO4·5H2O', symbol: 'n', of: 'CuSO4·5H2O', role: 'amount' })
    const [pure, molarMass] = amount.operands
    expect(molarMass?.naming).toMatchObject({ symbol: 'M', role: 'molar mass', of: 'CuSO4·5H2O' })
    const [mass, perOne] = pure?.operands ?? []
    expect(mass?.naming.role).toBe('mass')
    expect(perOne?.operands[0]?.naming).toEqual({
      label: 'assay of CuSO4·5H2O',
      symbol: 'w',
      of: 'CuSO4·5H2O',
      role: 'assay',
    })
  })
  it('keeps the names of the caller', () => {
    const own = quantity('2.00 g', { label: 'crop of Bench 1' })
    expect(amountFromMass(own, 'CuO').operands[0]?.naming).toMatchObject({ label: 'crop of Bench 1', role: 'mass' })
  })
})

describe('what is refused', () => {
  it.each([
    { call: () => amountFromMass('-1.0 g', 'CuO'), code: 'stoichiometry/negative' },
    { call: () => massFromAmount('-1 mol', 'CuO'), code: 'stoichiometry/negative' },
    { call: () => amountFromMass('1.0 g', 'CuO', { assay: '0 %' }), code: 'stoichiometry/not-a-fraction' },
    { call: () => amountFromMass('1.0 g', 'CuO', { assay: '101 %' }), code: 'stoichiometry/not-a-fraction' },
    { call: () => massFromAmount('1 mol', 'CuO', { assay: '-0.5' }), code: 'stoichiometry/not-a-fraction' },
    { call: () => amountFromMass('1.0 mol' as never, 'CuO'), code: 'quantity/wrong-dimension' },
    { call: () => amountFromMass(1 as never, 'CuO'), code: 'quantity/javascript-number' },
    { call: () => massFromAmount(Number.NaN as never, 'CuO'), code: 'quantity/not-a-numeral' },
    { call: () => amountFromMass('1.0 g', 'Cuo'), code: 'formula/unknown-symbol' },
    { call: () => amountFromMass('1.0 g', 'Tc'), code: 'element/no-standard-weight' },
    { call: () => amountFromMass('1.0 g', 'CuSO4·xH2O'), code: 'formula/unknown-water' },
    { call: () => massFromAmount('1 mol', 'e^-'), code: 'formula/no-mass' },
  ])('$code', ({ call, code }) => expect(refusal(call).code).toBe(code))

  it('says of which number it speaks', () => {
    expect(refusal(() => amountFromMass('-1.0 g', 'CuO')).message).toBe('-1.0 g is below zero (mass of CuO).')
    expect(refusal(() => amountFromMass('1.0 g', 'CuO', { assay: '101 %' }))).toMatchObject({
      message: '101 % is not a part of a whole (assay of CuO).',
      found: '101 %',
    })
  })
})
