import { describe, expect, it } from 'vitest'
import { atomicWeight, atomicWeightSet } from '../../src/element/index.js'
import { massFractions, molarMass, parseFormula, waterFraction } from '../../src/formula/index.js'
import { sum } from '../../src/quantity/index.js'

describe('the molar mass', () => {
  it.each([
    ['CuSO4·5H2O', '249.68 g/mol'],
    ['ZnSO4·7H2O', '287.54 g/mol'],
    ['(NH4)2Fe(SO4)2·6H2O', '392.12 g/mol'],
    ['KAl(SO4)2·12H2O', '474.37 g/mol'],
    ['3CdSO4·8H2O', '769.52 g/mol'],
    ['CdSO4·8/3H2O', '256.51 g/mol'],
    ['SO4^2-', '96.06 g/mol'],
    ['D2O', '20.027 g/mol'],
  ])('of %s is %s', (text, expected) => expect(molarMass(text).toString()).toBe(expected))

  it('is the sum of its atomic weights, each one term and always the same quantity', () => {
    const mass = molarMass('ZnSO4·7H2O')
    expect(mass.operands).toEqual(['Zn', 'S', 'O', 'H'].map((symbol) => atomicWeight(symbol)))
    expect(mass.operands[0]).toBe(molarMass('ZnO').operands[0])
    expect(mass.naming).toEqual({
      label: 'molar mass of ZnSO4·7H2O',
      symbol: 'M',
      of: 'ZnSO4·7H2O',
      role: 'molar mass',
    })
  })

  it('is worked out with the atomic weights that are asked for', () => {
    const wall = atomicWeightSet({ name: 'wall chart', values: { Zn: '65.39' }, extends: 'abridged' })
    expect(molarMass('ZnO', { weights: wall }).toString()).toBe('81.39 g/mol')
    expect(molarMass('ZnO', { weights: 'standard' }).toString()).toBe('81.38 g/mol')
    expect(() => molarMass('TcO2')).toThrow(expect.objectContaining({ code: 'element/no-standard-weight' }))
  })

  it('of water of unknown number asks for the number', () => {
    expect(() => molarMass('Al2O3·xH2O')).toThrow(
      expect.objectContaining({
        code: 'formula/unknown-water',
        found: 'Al2O3·xH2O',
        hint: expect.stringContaining('x:'),
      }),
    )
    expect(molarMass('Al2O3·xH2O', { x: 3 }).equals(molarMass('Al2O3·3H2O'))).toBe(true)
    expect(molarMass('Al2O3·3H2O', { x: 5 }).equals(molarMass('Al2O3·3H2O'))).toBe(true)
    expect(() => molarMass('Al2O3·xH2O', { x: 'x' })).toThrow(
      expect.objectContaining({ code: 'formula/unknown-water' }),
    )
    expect(() => molarMass('Al2O3·xH2O', { x: -1 })).toThrow(
      expect.objectContaining({ code: 'formula/bad-water-number' }),
    )
  })

  it('of an electron is refused', () => {
    expect(() => molarMass('e^-')).toThrow(expect.objectContaining({ code: 'formula/no-mass' }))
    expect(() => massFractions('e^-')).toThrow(expect.objectContaining({ code: 'formula/no-mass' }))
  })
})

describe('options that are nothing', () => {
  it('are no options, whatever kind of nothing', () => {
    expect(molarMass('ZnO', null as never).toString()).toBe('81.38 g/mol')
    expect(() => molarMass('CuSO4·xH2O', null as never)).toThrow(
      expect.objectContaining({ code: 'formula/unknown-water' }),
    )
  })
})

describe('mass fractions', () => {
  it('stand for every element in order, and add up to one', () => {
    const fractions = massFractions(parseFormula('ZnSO4·7H2O'))
    expect([...fractions].map(([symbol, w]) => `${symbol} ${w}`)).toEqual([
      'Zn 0.2274',
      'S 0.1115',
      'O 0.61205',
      'H 0.049078',
    ])
    expect(sum([...fractions.values()]).value.toFixed(20)).toBe('1.00000000000000000000')
    expect(fractions.get('Zn')?.naming).toEqual({
      label: 'mass fraction of Zn in ZnSO4·7H2O',
      symbol: 'w',
      of: 'Zn',
      role: 'mass fraction',
    })
  })
})

describe('the mass fraction of water', () => {
  it.each([
    ['ZnSO4·7H2O', '0.43856'],
    ['CuSO4·5H2O', '0.36077'],
    ['2CaSO4·H2O', '0.062060'],
    ['CaSO4·½H2O', '0.062060'],
    ['Zn(OH)2', '0'],
    ['[Cu(H2O)4]SO4·H2O', '0.072153'],
    ['CuSO4·5D2O', '0.38553'],
  ])('in %s is %s', (text, expected) => expect(waterFraction(text).toString()).toBe(expected))

  it('is an exact zero where there is none', () => {
    expect(waterFraction('ZnSO4').significantFigures).toBeNull()
    expect(waterFraction('ZnSO4').naming.label).toBe('mass fraction of water of crystallisation in ZnSO4')
  })

  it('of an unknown number asks for it', () => {
    expect(() => waterFraction('Al2O3·xH2O')).toThrow(expect.objectContaining({ code: 'formula/unknown-water' }))
    expect(waterFraction('Al2O3·xH2O', { x: 1 }).equals(waterFraction('Al2O3·H2O'))).toBe(true)
  })
})
