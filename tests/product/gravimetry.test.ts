import { describe, expect, it } from 'vitest'
import { componentMasses, gravimetricAssay, gravimetricFactor } from '../../src/product/index.js'
import { exact } from '../../src/quantity/index.js'
import { refusal } from '../quantity/refusal.js'

describe('a gravimetric factor', () => {
  it.each([
    { weighed: 'BaSO4', sought: 'SO3', factor: '0.3430' },
    { weighed: 'Fe2O3', sought: 'Fe', factor: '0.69943' },
    { weighed: 'Mg2P2O7', sought: 'MgO', factor: '0.36220' },
    { weighed: 'KAl(SO4)2·12H2O', sought: 'Al2O3', factor: '0.10747' },
    { weighed: 'BaSO4', sought: 'KAl(SO4)2·12H2O', factor: '1.0163' },
    { weighed: 'BaSO4', sought: 'SO4^2-', factor: '0.4116' },
  ])('of $sought in $weighed is $factor', ({ weighed, sought, factor }) => {
    expect(gravimetricFactor({ weighed, sought }).toString()).toBe(factor)
  })

  it('takes a mole ratio that the formulas do not give', () => {
    expect(gravimetricFactor({ weighed: 'AgBr', sought: 'Ga', ratio: '1/3' }).toString()).toBe('0.12377')
    expect(gravimetricFactor({ weighed: 'H2O', sought: 'HCl', ratio: ' 2 ' }).toString()).toBe('4.048')
  })

  it('has an exact mole ratio in it, in its role', () => {
    const factor = gravimetricFactor({ weighed: 'MnO2', sought: 'Mn3O4' })
    const ratio = factor.operands[0]?.operands[0]
    expect(ratio?.naming).toMatchObject({ role: 'mole ratio', label: 'moles of Mn3O4 per mole of MnO2' })
    expect(ratio?.significantFigures).toBeNull()
    expect(factor.naming).toMatchObject({ symbol: 'F', of: 'Mn3O4', role: 'mass fraction' })
  })

  it.each([
    { what: 'nothing in common', pair: { weighed: 'AgBr', sought: 'Ga' }, found: 'no element in common' },
    { what: 'only water in common', pair: { weighed: 'H2O', sought: 'H2O2' }, found: 'no element in common' },
    { what: 'elements that disagree', pair: { weighed: 'K2SO4', sought: 'KHSO4' }, found: 'K, S: they disagree' },
  ])('is refused with $what', ({ pair, found }) => {
    expect(refusal(() => gravimetricFactor(pair))).toMatchObject({ code: 'product/no-mole-ratio', found })
  })

  it.each(['', '0', '1/0', '-1', '1.5', '1/2/3', 'two', '1e3', '1001', '00001', 2, null, {}])(
    'is refused with the ratio %j',
    (ratio) => {
      const pair = { weighed: 'AgBr', sought: 'Ga', ratio: ratio as string }
      expect(refusal(() => gravimetricFactor(pair)).code).toBe('product/unreadable-ratio')
    },
  )

  it('is refused without an object', () => {
    expect(refusal(() => gravimetricFactor(undefined as never)).code).toBe('product/not-an-object')
  })
})

describe('a gravimetric assay', () => {
  const sulfate = { sample: '0.4550 g', precipitate: '0.6168 g', weighed: 'BaSO4', sought: 'MgSO4' } as const

  it('gives mass and mass fraction', () => {
    const { mass, massFraction } = gravimetricAssay(sulfate)
    expect([mass, massFraction].map(String)).toEqual(['0.3181 g', '69.91 %'])
    expect(massFraction.naming).toMatchObject({ symbol: 'w', of: 'MgSO4', role: 'purity' })
  })

  it.each([
    { what: 'no sample', change: { sample: '0 g' } },
    { what: 'no precipitate', change: { precipitate: '0 g' } },
  ] as const)('is refused with $what', ({ change }) => {
    expect(refusal(() => gravimetricAssay({ ...sulfate, ...change })).code).toBe('product/not-positive')
  })
})

describe('an indirect analysis', () => {
  it('tells two substances apart, which add up', () => {
    const factors = [gravimetricFactor({ weighed: 'CaCO3', sought: 'CaO' }), '1.0000'] as const
    const [limestone, inert] = componentMasses({ total: '1.000 g', converted: '0.604 g', factors })
    expect([limestone, inert].map(String)).toEqual(['0.901 g', '0.099 g'])
    expect(limestone.plus(inert).value.toFixed(20)).toBe('1.00000000000000000000')
  })

  it('gives a mass below zero where the numbers do not fit', () => {
    const [, second] = componentMasses({ total: '1.000 g', converted: '2.5 g', factors: [exact(2), exact(1)] })
    expect(second.toString()).toBe('-0.5 g')
  })

  it.each([
    { what: 'the same factor twice', given: { factors: ['0.5', '0.50'] }, code: 'product/cannot-tell-apart' },
    { what: 'one factor', given: { factors: ['0.5'] }, code: 'product/cannot-tell-apart' },
    { what: 'three factors', given: { factors: ['0.5', '1', '2'] }, code: 'product/cannot-tell-apart' },
    { what: 'no factor', given: { factors: [] }, code: 'product/cannot-tell-apart' },
    { what: 'factors that are no list', given: { factors: '0.5' }, code: 'product/not-a-list' },
    { what: 'no mixture', given: { total: '0 g', factors: ['0.5', '1'] }, code: 'product/not-positive' },
  ])('is refused with $what', ({ given, code }) => {
    const mixture = { total: '1 g', converted: '0.5 g', ...given }
    expect(refusal(() => componentMasses(mixture as never)).code).toBe(code)
  })

  it('says which factor does not tell', () => {
    const given = { total: '1 g', converted: '0.5 g' } as const
    expect(refusal(() => componentMasses({ ...given, factors: ['0.5', '0.50'] })).found).toBe('0.5 for both')
    expect(refusal(() => componentMasses({ ...given, factors: [] as never })).found).toBe('no factor')
  })

  it('is refused without an object', () => {
    expect(refusal(() => componentMasses('1 g' as never)).code).toBe('product/not-an-object')
  })
})
