import { describe, expect, it } from 'vitest'
import { quantity } from '../../src/quantity/index.js'
import { equivalents } from '../../src/stoichiometry/index.js'
import { refusal } from '../quantity/refusal.js'

const alum = '2Al + 2KOH + 4H2SO4 + 22H2O -> 2KAl(SO4)2·12H2O + 3H2'
const supplies = { Al: '0.050 mol', KOH: '0.10 mol', H2SO4: '0.090 mol' } as const

describe('equivalents', () => {
  it('by what limits, unless said', () => {
    const all = equivalents(alum, supplies)
    expect(all.map(({ formula, equivalents: ratio }) => `${formula} ${ratio}`)).toEqual([
      'Al 1.111111111',
      'KOH 2.222222222',
      'H2SO4 1',
    ])
  })

  it('by a basis, where what is short has less than one', () => {
    const all = equivalents(alum, supplies, { basis: 'Al' })
    expect(
      all.map(({ formula, equivalents: ratio, percentExcess }) => [formula, `${ratio}`, `${percentExcess}`]),
    ).toEqual([
      ['Al', '1', '0 %'],
      ['KOH', '2', '100 %'],
      ['H2SO4', '0.9', '-10 %'],
    ])
  })

  it('with the other ways of stating an excess', () => {
    const [, , acid] = equivalents(alum, { ...supplies, H2SO4: '0.114 mol' }, { basis: 'Al' })
    expect(acid?.supplied.toString()).toBe('0.114 mol')
    expect(acid?.needed.toString()).toBe('0.1 mol')
    expect(acid?.excessFactor.toString()).toBe('1.14')
    expect(acid?.percentExcess.toString()).toBe('14 %')
    expect(acid?.molesPerMole.toString()).toBe('2.28')
  })

  it('of weighed supplies have their figures', () => {
    const [, sulfate] = equivalents('FeSO4·7H2O + (NH4)2SO4 -> (NH4)2Fe(SO4)2·6H2O + H2O', {
      FeSO4·7H2O: '7.0 g',
      '(NH4)2SO4': '3.5 g',
    })
    expect(sulfate?.equivalents.toString()).toBe('1.1')
    expect(sulfate?.equivalents.value.toFixed(2)).toBe('1.05')
  })

  it('say what they are', () => {
    const [, base] = equivalents(alum, { Al: quantity('0.050 mol'), KOH: quantity('0.10 mol') }, { basis: 'Al' })
    expect(base?.equivalents.naming).toEqual({ label: 'equivalents of KOH', of: 'KOH' })
    expect(base?.excessFactor.naming).toMatchObject({ role: 'excess', symbol: 'f', of: 'KOH' })
    expect(base?.needed.naming.label).toBe('need of KOH')
    expect(base?.molesPerMole.naming.label).toBe('moles of KOH per mole of Al')
  })
})

describe('what is refused', () => {
  it.each([
    { basis: 'H2', code: 'stoichiometry/not-a-reactant' },
    { basis: 'H2O', code: 'stoichiometry/nothing-limits' }, // it reacts, but there is no amount of it
    { basis: 'al', code: 'formula/unknown-symbol' },
  ])('basis $basis: $code', ({ basis, code }) => {
    expect(refusal(() => equivalents(alum, supplies, { basis })).code).toBe(code)
  })
  it('a basis of which there is nothing', () => {
    expect(refusal(() => equivalents(alum, { ...supplies, Al: '0 mol' }))).toMatchObject({
      message: 'There is no Al, so nothing can be counted in its equivalents.',
      found: 'no Al',
      expected: 'an amount or a mass of Al above zero',
    })
  })
})
