import { describe, expect, it } from 'vitest'
import { expectedCrop, type SolubilityTable, temperatureForCrop } from '../../src/crystallisation/index.js'
import { refusal } from '../quantity/refusal.js'

const batch = { crystal: 'KNO3', dissolved: '20.0 g', water: '25.0 g' } as const

describe('the temperature for a crop', () => {
  it('is that at which the crop is expected', () => {
    const temperature = temperatureForCrop({ ...batch, crop: '15.0 g' })
    expect(temperature.toString()).toBe('8.2 °C')
    const back = expectedCrop({ ...batch, temperature }).crop
    expect(back.value.toFixed(15)).toBe('15.000000000000000')
  })

  it('is found for a hydrate with water boiled off', () => {
    const input = { crystal: 'CuSO4·5H2O', amount: '0.0500 mol', water: '20.0 g', evaporated: '5.0 g' } as const
    const temperature = temperatureForCrop({ ...input, crop: '9.0 g' })
    expect(expectedCrop({ ...input, temperature }).crop.value.toFixed(15)).toBe('9.000000000000000')
  })

  it('may be the lowest of the table', () => {
    const { crop } = expectedCrop({ ...batch, temperature: '0 degC' })
    expect(temperatureForCrop({ ...batch, crop }).value.toFixed(10)).toBe('0.0000000000')
  })

  it.each([
    { what: 'more than the salt', input: { ...batch, crop: '20.1 g' }, code: 'crystallisation/no-such-crop' },
    { what: 'more than the coldest gives', input: { ...batch, crop: '18 g' }, code: 'crystallisation/no-such-crop' },
    {
      what: 'points too far apart',
      input: { crystal: 'H2C2O4·2H2O', dissolved: '20 g', water: '40 g', crop: '10 g' },
      code: 'crystallisation/no-such-crop',
    },
    {
      what: 'a solubility that falls',
      input: { crystal: 'ZnSO4·H2O', dissolved: '20 g', water: '25 g', crop: '2 g' },
      code: 'crystallisation/no-such-crop',
    },
    { what: 'nothing wanted', input: { ...batch, crop: '0 g' }, code: 'crystallisation/not-positive' },
    {
      what: 'a solid the table has not',
      input: { ...batch, crystal: 'KNO3·H2O', crop: '1 g' },
      code: 'crystallisation/phase-not-tabulated',
    },
    {
      what: 'a table that is none',
      input: { ...batch, crop: '15 g', table: {} as SolubilityTable },
      code: 'crystallisation/bad-table',
    },
  ] as const)('is refused with $what', ({ input, code }) => {
    expect(refusal(() => temperatureForCrop(input)).code).toBe(code)
  })
})
