import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  CrystallisationError,
  solidsOf,
  solubilityOf,
  solubilityTables,
  trySolubilityOf,
} from '../../src/crystallisation/index.js'
import { exact, quantity, standardUncertainty } from '../../src/quantity/index.js'
import { namesIn } from '../quantity/names.js'
import { refusal } from '../quantity/refusal.js'

describe('a solubility', () => {
  it.each([
    { salt: 'ZnSO4', at: '0 degC', crystal: 'ZnSO4·7H2O', shown: '0.410', interpolated: false },
    { salt: 'ZnSO4', at: '5 degC', crystal: 'ZnSO4·7H2O', shown: '0.441', interpolated: true },
    { salt: 'ZnSO4', at: '278.15 K', crystal: 'ZnSO4·7H2O', shown: '0.441', interpolated: true },
    { salt: 'ZnSO4·7H2O', at: '30 degC', crystal: 'ZnSO4·7H2O', shown: '0.618', interpolated: false },
    { salt: 'ZnSO4', at: '45 degC', crystal: 'ZnSO4·6H2O', shown: '0.729', interpolated: true },
    { salt: 'ZnSO4·H2O', at: '100 degC', crystal: 'ZnSO4·H2O', shown: '0.603', interpolated: false },
    { salt: '(NH4)2Fe(SO4)2', at: '5 degC', crystal: '(NH4)2Fe(SO4)2·6H2O', shown: '0.14', interpolated: true },
    { salt: 'K2SO4·Al2(SO4)3·24H2O', at: '20 degC', crystal: 'KAl(SO4)2·12H2O', shown: '0.0601', interpolated: false },
    { salt: 'CH3COONa', at: '20 degC', crystal: 'NaC2H3O2·3H2O', shown: '0.466', interpolated: false },
    { salt: 'K3[Fe(C2O4)3]·3H2O', at: '0 degC', crystal: 'K3[Fe(C2O4)3]·3H2O', shown: '0.042', interpolated: false },
    { salt: 'CuSO4', at: '100 degC', crystal: 'CuSO4·3H2O', shown: '0.770', interpolated: false },
  ] as const)(
    'of $salt at $at is $shown g per g of water, over $crystal',
    ({ salt, at, crystal, shown, interpolated }) => {
      const found = solubilityOf(salt, at)
      expect(found.massRatio.toString()).toBe(shown)
      expect(found.crystal).toBe(crystal)
      expect(found.interpolated).toBe(interpolated)
    },
  )

  it('says its source, its range and where the name of the solid comes from', () => {
    const { source, range, evidence, salt, temperature } = solubilityOf('ZnSO4', exact('5 degC'))
    expect(source).toContain('CRC Handbook')
    expect(range.map(String)).toEqual(['0 °C', '30 °C'])
    expect(evidence).toBe('solid-phase column')
    expect(salt).toBe('ZnSO4')
    expect(temperature.toString()).toBe('5 °C')
  })

  it('has the printed number as its input, named and with the part it plays', () => {
    const { massRatio } = solubilityOf('ZnSO4', '0 degC')
    expect(massRatio.naming).toEqual({
      label: 'solubility of ZnSO4, g per g of water',
      symbol: 's',
      of: 'ZnSO4',
      role: 'solubility',
    })
    const [printed] = massRatio.operands
    expect(printed?.toString()).toBe('29.1 g')
    expect(printed?.naming.label).toBe('ZnSO4 per 100 g of solution at 0 °C')
    expect(printed?.input?.kind).toBe('constant')
  })

  it('takes figures from a measured temperature, also where it is tabulated', () => {
    expect(solubilityOf('KNO3', quantity('5 degC')).massRatio.toString()).toBe('0.17')
    expect(solubilityOf('KNO3', quantity('10.0 degC')).interpolated).toBe(true)
    expect(solubilityOf('KNO3', quantity('100.0 degC')).interpolated).toBe(true)
    expect(solubilityOf('CuSO4', quantity('100 degC')).interpolated).toBe(false)
    expect(solubilityOf('K3[Fe(C2O4)3]', quantity('0 degC')).interpolated).toBe(false)
  })

  it('passes the uncertainty of the temperature on', () => {
    const measured = quantity('20.0 degC', { uncertainty: '0.5 degC' })
    const { massRatio } = solubilityOf('KNO3', measured)
    const u = standardUncertainty(massRatio, { unstated: 'ignore' })
    expect(u.value.gt(0)).toBe(true)
  })

  it('uses the same tabulated number as the same measurement', () => {
    const ids = [solubilityOf('KNO3', '0 degC'), solubilityOf('KNO3', '0 degC')].map(
      ({ massRatio }) => massRatio.operands[0]?.input?.id,
    )
    expect(ids[0]).toBe(ids[1])
    expect(ids[0]).toContain('KNO3 at 0 °C')
  })

  it('compares other tables that cover the same solid', () => {
    const { others, notes } = solubilityOf('CuSO4', '80 degC')
    expect(others.map(({ massRatio }) => massRatio.toString())).toEqual(['0.55'])
    expect(others[0]?.difference.toString()).toBe('-3 %')
    expect(notes.map(({ code }) => code)).toEqual(['solid-from-memory', 'about-the-table', 'tables-differ'])
    expect(notes[2]?.message).toMatch(/^Another table has 0\.55 g per g of water \(-3 %\): Physico-chemical tables/)
  })

  it.each([
    { salt: 'KCr(SO4)2', at: '25 degC', codes: ['table-from-memory', 'solid-from-memory', 'about-the-table'] },
    { salt: 'KNO3', at: '0 degC', codes: [] },
    { salt: 'FeSO4', at: '20 degC', codes: ['solid-from-memory', 'tables-differ'] },
  ] as const)('of $salt carries the remarks $codes', ({ salt, at, codes }) => {
    expect(solubilityOf(salt, at).notes.map(({ code }) => code)).toEqual(codes)
  })

  it('says a difference upwards with a plus', () => {
    expect(solubilityOf('FeSO4', '20 degC').notes[1]?.message).toContain('(+10 %)')
  })

  it('does not compare tables that reach beyond the solid, or whose points lie too far apart', () => {
    expect(solubilityOf('ZnSO4', '28 degC').others.map(({ source }) => source.slice(0, 9))).toEqual(['Wikipedia'])
    expect(solubilityOf('NaCl', '25 degC').others).toHaveLength(2)
    expect(solubilityOf('CoSO4', '35 degC').others).toHaveLength(1)
    expect(solubilityOf('K2SO4', '50 degC').others).toHaveLength(1)
  })
})

describe('a solubility is refused', () => {
  it.each([
    {
      of: () => solubilityOf('LaCl3', '5 degC'),
      code: 'crystallisation/unknown-salt',
      found: 'LaCl3',
      hint: 'Pass a solubility, or a table of your own with its source.',
    },
    {
      of: () => solubilityOf('e^-', '5 degC'),
      code: 'crystallisation/unknown-salt',
      found: 'e^-',
      hint: 'Pass a solubility, or a table of your own with its source.',
    },
    {
      of: () => solubilityOf('ZnSO4·5H2O', '5 degC'),
      code: 'crystallisation/phase-not-tabulated',
      found: 'ZnSO4·5H2O',
      hint: undefined,
    },
    {
      of: () => solubilityOf('ZnSO4·7H2O', '35 degC'),
      code: 'crystallisation/outside-table',
      found: '35 °C',
      hint: undefined,
    },
    {
      of: () => solubilityOf('ZnSO4·7H2O', '40 degC'),
      code: 'crystallisation/outside-table',
      found: '40 °C',
      hint: 'At 40 °C the stable solid is ZnSO4·6H2O.',
    },
    {
      of: () => solubilityOf('ZnSO4', '-5 degC'),
      code: 'crystallisation/outside-table',
      found: '-5 °C',
      hint: undefined,
    },
    {
      of: () => solubilityOf('ZnSO4', '300 degC'),
      code: 'crystallisation/outside-table',
      found: '300 °C',
      hint: undefined,
    },
    {
      of: () => solubilityOf('K3[Fe(C2O4)3]', '5 degC'),
      code: 'crystallisation/points-too-far-apart',
      found: '5 °C',
      hint: undefined,
    },
    {
      of: () => solubilityOf('H2C2O4', '40 degC'),
      code: 'crystallisation/points-too-far-apart',
      found: '40 °C',
      hint: undefined,
    },
    { of: () => solubilityOf('ZnSO', '5 g' as never), code: 'quantity/wrong-dimension', found: '5 g', hint: undefined },
    { of: () => solubilityOf('zn', '5 degC'), code: 'formula/unknown-symbol', found: 'zn', hint: 'Zn?' },
  ])('$code for $found', ({ of, code, found, hint }) => {
    expect(refusal(of)).toMatchObject({ code, found, hint })
  })

  it('with the ranges that there are', () => {
    expect(refusal(() => solubilityOf('ZnSO4', '35 degC')).expected).toBe(
      '0 to 30 °C for ZnSO4·7H2O, 40 to 50 °C for ZnSO4·6H2O, 60 to 100 °C for ZnSO4·H2O',
    )
  })

  it('as data, by the twin that does not throw', () => {
    const outcome = trySolubilityOf('LaCl3', '5 degC')
    expect(outcome.ok).toBe(false)
    expect(!outcome.ok && outcome.error).toBeInstanceOf(CrystallisationError)
    expect(trySolubilityOf('KNO3', '5 degC').ok).toBe(true)
  })
})

describe('the tables', () => {
  it('hold each salt once, by whatever formula it is asked for', () => {
    const salts = solubilityTables().map(({ salt }) => salt)
    expect(new Set(salts).size).toBe(salts.length)
    for (const table of solubilityTables()) {
      for (const { crystal, celsius } of table.phases)
        expect(solubilityOf(crystal, `${celsius[0] as number} degC`).salt).toBe(table.salt)
    }
  })

  it('say which solids they have, where another is asked for', () => {
    expect(refusal(() => solubilityOf('ZnSO4·5H2O', '5 degC')).expected).toBe('ZnSO4·7H2O or ZnSO4·6H2O or ZnSO4·H2O')
  })

  it('name what was weighed: the crystals where the table says so, else the salt', () => {
    const weighed = (salt: string): readonly string[] => namesIn(solubilityOf(salt, '25 degC').massRatio)
    expect(weighed('KCr(SO4)2')).toContain('m, solubility, KCr(SO4)2·12H2O')
    expect(weighed('ZnSO4')).toContain('m, solubility, ZnSO4')
  })

  it('name the solids of a salt', () => {
    expect(solidsOf('Na2CO3·10H2O')).toEqual(['Na2CO3·10H2O', 'Na2CO3·H2O'])
    expect(solidsOf('LaCl3')).toEqual([])
  })

  it('have as many numbers as temperatures, rising', () => {
    for (const { phases } of solubilityTables())
      for (const { celsius, printed } of phases) {
        expect(printed).toHaveLength(celsius.length)
        expect([...celsius].sort((a, b) => a - b)).toEqual(celsius)
      }
  })

  it('give a value between the neighbours, wherever they give one', () => {
    const zinc = fc.double({ min: 0, max: 30, noNaN: true })
    fc.assert(
      fc.property(zinc, (t) => {
        const value = solubilityOf('ZnSO4', `${Number(t.toFixed(3))} degC`).massRatio.value.toNumber()
        expect(value).toBeGreaterThanOrEqual(0.41 - 1e-3)
        expect(value).toBeLessThanOrEqual(0.62)
      }),
      { numRuns: 50 },
    )
  })
})
