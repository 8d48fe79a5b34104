import { describe, expect, it } from 'vitest'
import { theoreticalYield } from '../../src/stoichiometry/index.js'
import { refusal } from '../quantity/refusal.js'

const zincSulfate = 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O'
const alum = '2Al + 2KOH + 4H2SO4 + 22H2O -> 2KAl(SO4)2·12H2O + 3H2'

describe('the most that can be made', () => {
  it.each([
    {
      equation: zincSulfate,
      product: 'ZnSO4·7H2O',
      supplies: { ZnO: '3.98 g', H2SO4: '0.060 mol' },
      amount: '0.0489 mol',
      mass: '14.1 g',
      limiting: 'ZnO',
    },
    {
      equation: zincSulfate,
      product: 'ZnSO4.7H2O',
      supplies: { ZnO: '0.060 mol', H2SO4: '0.040 mol' },
      amount: '0.04 mol',
      mass: '11.502 g',
      limiting: 'H2SO4',
    },
    {
      equation: alum,
      product: 'H2',
      supplies: { Al: '0.025 mol' },
      amount: '0.0375 mol',
      mass: '0.075600 g',
      limiting: 'Al',
    },
    {
      equation: alum,
      product: 'KAl(SO4)2·12H2O',
      supplies: { Al: '1.000 g' },
      amount: '0.03706 mol',
      mass: '17.58 g',
      limiting: 'Al',
    },
  ] as const)('$product from $supplies is $mass', ({ equation, product, supplies, amount, mass, limiting }) => {
    const found = theoreticalYield(equation, product, supplies)
    expect(found.amount.toString()).toBe(amount)
    expect(found.mass.toString()).toBe(mass)
    expect(found.limiting).toBe(limiting)
  })

  it('is named as the product stands in the equation', () => {
    expect(theoreticalYield(zincSulfate, 'ZnSO4.7H2O', { ZnO: '1 mol' }).formula).toBe('ZnSO4·7H2O')
  })

  it('of a species that is on both sides counts what is made', () => {
    expect(theoreticalYield('KNO3(aq) -> KNO3(s)', 'KNO3', { KNO3: '2 mol' }).amount.toString()).toBe('2 mol')
  })

  it('remembers ratio, molar mass and roles', () => {
    const { mass } = theoreticalYield(zincSulfate, 'ZnSO4·7H2O', { ZnO: '3.98 g' })
    expect(mass.naming).toEqual({
      label: 'theoretical yield of ZnSO4·7H2O',
      symbol: 'm',
      of: 'ZnSO4·7H2O',
      role: 'theoretical yield',
    })
    const [amount, molarMass] = mass.operands
    expect(molarMass?.naming.role).toBe('molar mass')
    expect(amount?.naming).toEqual({
      label: 'theoretical amount of ZnSO4·7H2O',
      symbol: 'n',
      of: 'ZnSO4·7H2O',
      role: 'amount',
    })
    expect(amount?.operands.map(({ naming }) => naming.role)).toEqual(['amount', 'mole ratio'])
  })

  it('goes by the atomic weights it is told to use', () => {
    const { mass } = theoreticalYield(zincSulfate, 'ZnSO4·7H2O', { ZnO: '1 mol' }, { weights: 'standard' })
    expect(mass.toString()).toBe('287.55 g')
    expect(mass.value.toString()).toBe('287.55255') // by the midpoints of the intervals of H, O and S
  })
})

describe('what is refused', () => {
  it.each([
    { product: 'H2O', code: 'stoichiometry/not-a-product' },
    { product: 'ZnO', code: 'stoichiometry/not-a-product' },
    { product: 'ZnSO4', code: 'stoichiometry/not-a-product' },
    { product: 'znso4', code: 'formula/unknown-symbol' },
    { product: undefined, code: 'formula/not-text' },
  ])('$product: $code', ({ product, code }) => {
    expect(refusal(() => theoreticalYield(zincSulfate, product as never, { ZnO: '1 mol' })).code).toBe(code)
  })
  it('with the products that there are', () => {
    expect(refusal(() => theoreticalYield(alum, 'Al', { Al: '1 mol' }))).toMatchObject({
      message: `The equation "${alum}" does not make Al.`,
      found: 'Al',
      expected: 'KAl(SO4)2·12H2O, H2',
    })
  })
  it('nothing to react', () => {
    expect(refusal(() => theoreticalYield(zincSulfate, 'ZnSO4·7H2O', {})).code).toBe('stoichiometry/nothing-limits')
  })
})
