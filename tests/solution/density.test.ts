import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exact, quantity } from '../../src/quantity/index.js'
import { densityOf, densityTables, massFractionAt } from '../../src/solution/index.js'
import { refusal } from '../quantity/refusal.js'

describe('density by mass fraction', () => {
  it.each([
    { of: 'H2SO4', w: '0.96', is: '1.8355 g/mL' },
    { of: 'H2SO4', w: '1 %', is: '1.0049 g/mL' },
    { of: 'H2SO4', w: '100 %', is: '1.8305 g/mL' },
    { of: 'KOH', w: '38 %', is: '1.3662 g/mL' }, // half way from 1.3444 to 1.3881
    { of: 'KOH', w: quantity('38 %'), is: '1.37 g/mL' }, // measured to 1 % of 4 %, so to 0.01
    { of: 'C2H5OH', w: '95 %', is: '0.8041 g/mL' },
    { of: 'C2H6O', w: '96 %', is: '0.8013 g/mL' },
  ] as const)('$w of $of: $is', ({ of, w, is }) => expect(densityOf(of, w).toString()).toBe(is))
  it('is named', () => {
    expect(densityOf('KOH', '38 %').naming).toEqual({
      label: 'density of the solution of KOH',
      symbol: 'ρ',
      of: 'KOH',
      role: 'density',
    })
  })
})

describe('mass fraction by density', () => {
  it.each([
    { of: 'KOH', density: '1.3500 g/mL', is: '36.51 %' },
    { of: 'KOH', density: '1.0873 g/cm3', is: '10 %' },
    { of: 'KOH', density: exact('1.35 g/mL'), is: '36.51 %' },
    { of: 'H2SO4', density: '1200. g/L', is: '27.6 %' },
    { of: 'H2SO4', density: '1.8240 g/mL', is: '92 %' },
    { of: 'C2H5OH', density: '0.8100 g/mL', is: '92.9 %' },
  ] as const)('$of of $density is $is', ({ of, density, is }) =>
    expect(massFractionAt(of, density).toString()).toBe(is),
  )
  it('is named', () => {
    expect(massFractionAt('KOH', '1.3500 g/mL').naming).toMatchObject({ symbol: 'w', of: 'KOH', role: 'mass fraction' })
  })
})

describe('what is refused', () => {
  it.each([
    { call: () => densityOf('NaOH', '10 %'), code: 'solution/no-density-table' },
    { call: () => densityOf('KOH', '51 %'), code: 'solution/outside-table' },
    { call: () => densityOf('KOH', '0.5 %'), code: 'solution/outside-table' },
    { call: () => densityOf('KOH', '0 %'), code: 'solution/not-a-fraction' },
    { call: () => densityOf('KOH', '101 %'), code: 'solution/not-a-fraction' },
    { call: () => densityOf('KOH', '10 g' as never), code: 'quantity/wrong-dimension' },
    { call: () => densityOf('koh', '10 %'), code: 'formula/unknown-symbol' },
    { call: () => massFractionAt('H2SO4', '1.835 g/mL'), code: 'solution/ambiguous-density' },
    { call: () => massFractionAt('H2SO4', '1.9 g/mL'), code: 'solution/outside-table' },
    { call: () => massFractionAt('C2H5OH', '0.7 g/mL'), code: 'solution/outside-table' },
    { call: () => massFractionAt('KOH', '0 g/mL'), code: 'solution/not-above-zero' },
  ])('$code', ({ call, code }) => expect(refusal(call).code).toBe(code))
  it('says where the table ends, and which two it could be', () => {
    expect(refusal(() => densityOf('KOH', '51 %')).expected).toBe('1 % to 50 %')
    expect(refusal(() => massFractionAt('C2H5OH', '0.7 g/mL')).expected).toBe('0.7893 g/mL to 0.9963 g/mL')
    expect(refusal(() => massFractionAt('H2SO4', '1.8350 g/mL'))).toMatchObject({
      found: '1.8350 g/mL',
      expected: 'a mass fraction: 95.8 % or 98.39 %', // 94 % + 2 % · 38/43, and 98 % + 2 % · 11/56
    })
    expect(refusal(() => densityOf('NaOH', '10 %'))).toMatchObject({ found: 'NaOH', expected: 'H2SO4, KOH, C2H5OH' })
  })
})

describe('laws', () => {
  it('mass fractions of every table ascend', () => {
    for (const { points } of densityTables) {
      const numbers = points.map(([w]) => Number(w.split(' ')[0]))
      expect(numbers).toEqual([...numbers].sort((a, b) => a - b))
    }
  })
  it('a density leads back to its mass fraction where it is the only one', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 499 }), (tenths) => {
        const w = exact(`${tenths}e-1 %` as '1 %')
        const back = massFractionAt('KOH', densityOf('KOH', w))
        expect(back.minus(w).value.abs().lt('1e-25')).toBe(true)
      }),
    )
  })
})

it('a row of the table is the same number wherever it is used', () => {
  for (const [w, again] of [
    ['1 %', '0.01'],
    ['10 %', '10.0 %'],
    ['50 %', '0.5'],
  ] as const) {
    expect(densityOf('KOH', w).input).toBeDefined()
    expect(densityOf('KOH', w).input).toBe(densityOf('KOH', again).input)
  }
})
