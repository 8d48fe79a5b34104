import { describe, expect, it } from 'vitest'
import { coherentUnit, findUnit, type Unit, type UnitInfo, units, unitsOf } from '../../src/quantity/unit.js'

describe('units', () => {
  it.each([
    { text: 'g', unit: 'g' },
    { text: 'µg', unit: 'ug' }, // micro sign
    { text: 'μg', unit: 'ug' }, // Greek mu
    { text: 'dm³', unit: 'L' },
    { text: 'cm3', unit: 'mL' },
    { text: 'ml', unit: 'mL' },
    { text: 'M', unit: 'mol/L' },
    { text: 'mM', unit: 'mmol/L' },
    { text: 'mol·L⁻¹', unit: 'mol/L' },
    { text: 'mol L^-1', unit: 'mol/L' },
    { text: 'mol/m3', unit: 'mmol/L' },
    { text: 'g mol⁻¹', unit: 'g/mol' },
    { text: 'g/cm³', unit: 'g/mL' },
    { text: 'kg/m3', unit: 'g/L' },
    { text: '% w/w', unit: '%' },
    { text: '', unit: '1' },
    { text: '°C', unit: 'degC' },
    { text: '℃', unit: 'degC' },
    { text: '\u212A', unit: 'K' },
    { text: 'J mol^-1 K^-1', unit: 'J/(mol K)' },
  ])('$text is read as $unit', ({ text, unit }) => expect(findUnit(text)).toBe(unit))

  it.each(['gm', 'G', 'Mol', 'ML', 'mol /L', 'toString', '__proto__', 'constructor', '%%', ' '])(
    '%s is no unit',
    (text) => expect(findUnit(text)).toBeUndefined(),
  )

  it('every spelling belongs to one unit', () => {
    const all = Object.values(units).flatMap(({ symbol, spellings }) => [symbol, ...spellings])
    expect(all.length).toBe(new Set(all).size)
  })

  it('what is written is the key of the row', () => {
    const rows: Readonly<Record<Unit, UnitInfo>> = units // every row has what a unit needs
    for (const [key, { symbol }] of Object.entries(rows)) expect(symbol).toBe(key)
  })

  it('a coherent unit is the size of one', () => {
    for (const [dimension, unit] of Object.entries(coherentUnit)) {
      expect(units[unit]).toMatchObject({ dimension, factor: '1' })
    }
  })

  it('only a temperature has another zero, and its degree is a kelvin', () => {
    const shifted = (Object.keys(units) as Unit[]).filter((unit) => 'offset' in units[unit])
    expect(shifted).toEqual(['degC'])
    expect(units.degC.factor).toBe(units.K.factor)
  })

  it('lists the units of a dimension', () => {
    expect(unitsOf('amount')).toEqual(['mol', 'mmol', 'umol'])
  })
})
