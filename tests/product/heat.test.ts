import { describe, expect, it } from 'vitest'
import { isStrongAcid, isStrongBase, neutralisationEnthalpy, neutralisationHeat } from '../../src/product/index.js'
import { exact, standardUncertainty } from '../../src/quantity/index.js'
import { refusal } from '../quantity/refusal.js'

describe('strong acids and bases', () => {
  it.each(['HCl', 'HBr', 'HI', 'HNO3', 'HClO4', 'H2SO4'])('%s is a strong acid', (acid) => {
    expect(isStrongAcid(acid)).toBe(true)
  })

  it.each(['H3PO4', 'CH3COOH', 'H2C2O4', 'NH4Cl', 'KOH'])('%s is none', (acid) =>
    expect(isStrongAcid(acid)).toBe(false),
  )

  it.each(['KOH', 'NaOH', 'LiOH', 'Ba(OH)2', 'Ca(OH)2'])('%s is a strong base', (base) => {
    expect(isStrongBase(base)).toBe(true)
  })

  it.each(['NH3', 'Al(OH)3', 'Na2CO3', 'HCl'])('%s is none', (base) => expect(isStrongBase(base)).toBe(false))
})

describe('the enthalpy of neutralisation', () => {
  it('is that of water from its ions for a strong acid and a strong base', () => {
    const enthalpy = neutralisationEnthalpy('HCl', 'NaOH')
    expect(enthalpy?.toString()).toBe('-55.815 kJ/mol')
    expect(enthalpy && standardUncertainty(enthalpy).toString()).toBe('0.057 kJ/mol')
    expect(enthalpy?.operands.map(({ input }) => input?.id)).toEqual(['CODATA 1989: H2O(l)', 'CODATA 1989: OH-(aq)'])
  })

  it.each([
    { acid: 'HCl', base: 'NH3' },
    { acid: 'CH3COOH', base: 'NaOH' },
  ])('of $acid with $base is not given', ({ acid, base }) => expect(neutralisationEnthalpy(acid, base)).toBeUndefined())
})

describe('the heat of a neutralisation', () => {
  it('follows from the amount of water, the rise from the mass of the solution', () => {
    const { heat, temperatureRise } = neutralisationHeat({
      water: '0.100 mol',
      enthalpy: '-55.8 kJ/mol',
      solution: '75 g',
    })
    expect(heat.toString()).toBe('5.58 kJ')
    expect(temperatureRise?.toString()).toBe('18 K')
    expect(temperatureRise?.naming.label).toBe('temperature rise at most')
  })

  it('has no rise where the mass is not known', () => {
    expect(neutralisationHeat({ water: '0.100 mol', enthalpy: '-55.8 kJ/mol' }).temperatureRise).toBeUndefined()
  })

  it('takes another specific heat capacity', () => {
    const facts = { water: '0.100 mol', enthalpy: '-55.8 kJ/mol', solution: '100 g' } as const
    const rise = neutralisationHeat({ ...facts, specificHeatCapacity: exact('3.72 J/(g K)') }).temperatureRise
    expect(rise?.value.toFixed(10)).toBe('15.0000000000')
  })

  it('is below zero where heat is taken up', () => {
    expect(neutralisationHeat({ water: '1 mol', enthalpy: '5.0 kJ/mol' }).heat.toString()).toBe('-5 kJ')
  })

  it.each([
    { what: 'nothing', given: 1, code: 'product/not-an-object' },
    { what: 'no water formed', given: { water: '0 mol', enthalpy: '-55 kJ/mol' }, code: 'product/not-positive' },
    {
      what: 'no solution',
      given: { water: '1 mol', enthalpy: '-55 kJ/mol', solution: '0 g' },
      code: 'product/not-positive',
    },
    {
      what: 'no heat capacity',
      given: { water: '1 mol', enthalpy: '-55 kJ/mol', solution: '1 g', specificHeatCapacity: '0 J/(g K)' },
      code: 'product/not-positive',
    },
    { what: 'an energy', given: { water: '1 mol', enthalpy: '-55 kJ' }, code: 'quantity/wrong-dimension' },
  ])('is refused with $what', ({ given, code }) => {
    expect(refusal(() => neutralisationHeat(given as never)).code).toBe(code)
  })
})
