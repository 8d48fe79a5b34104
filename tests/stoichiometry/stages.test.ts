import { describe, expect, it } from 'vitest'
import { exact, quantity } from '../../src/quantity/index.js'
import { amountOf, amountUsedInAll, runStages, type SpeciesAmount } from '../../src/stoichiometry/index.js'
import { refusal } from '../quantity/refusal.js'

const show = (amounts: readonly SpeciesAmount[]): Record<string, string> =>
  Object.fromEntries(amounts.map(({ formula, amount }) => [formula, amount.toString()]))

const dissolve = { equation: '2Al + 2KOH + 6H2O -> 2K[Al(OH)4] + 3H2' }
const neutralise = { equation: '2KOH + H2SO4 -> K2SO4 + 2H2O' }
const crystallise = { equation: 'K[Al(OH)4] + 2H2SO4 + 8H2O -> KAl(SO4)2·12H2O' }

describe('a stage', () => {
  it('uses, makes and leaves', () => {
    const { stages, after } = runStages([dissolve], { Al: '0.025 mol', KOH: '0.050 mol' })
    const [stage] = stages
    expect(stage).toMatchObject({
      name: 'stage 1',
      equation: dissolve.equation,
      limiting: 'Al',
      practicallyEqual: [],
    })
    expect(stage?.extent.toString()).toBe('0.0125 mol')
    expect(show(stage?.before ?? [])).toEqual({ Al: '0.025 mol', KOH: '0.050 mol' })
    expect(show(stage?.used ?? [])).toEqual({ Al: '0.025 mol', KOH: '0.025 mol', H2O: '0.075 mol' })
    expect(show(stage?.made ?? [])).toEqual({ 'K[Al(OH)4]': '0.025 mol', H2: '0.0375 mol' })
    expect(show(after)).toEqual({ Al: '0 mol', KOH: '0.025 mol', 'K[Al(OH)4]': '0.025 mol', H2: '0.0375 mol' })
    expect(stage?.after).toEqual(after)
  })

  it('names what it changes, and leaves the rest as it was', () => {
    const salt = quantity('1.00 mol', { label: 'salt of Bench 1' })
    const { after } = runStages(
      [{ ...neutralise, name: 'neutralising' }],
      [
        { formula: 'KOH', amount: exact('0.1 mol') },
        { formula: 'H2SO4', amount: exact('0.1 mol') },
        { formula: 'NaCl', amount: salt },
      ],
    )
    expect(amountOf(after, 'H2SO4')?.naming.label).toBe('amount of H2SO4 after neutralising')
    expect(amountOf(after, 'NaCl')?.naming.label).toBe('salt of Bench 1')
  })

  it('counts water where it is told to', () => {
    const { stages, after } = runStages(
      [dissolve],
      { Al: '0.025 mol', KOH: '0.050 mol', H2O: '0.06 mol' },
      { inExcess: [] },
    )
    expect(stages[0]?.limiting).toBe('H2O')
    expect(show(after)).toMatchObject({ H2O: '0 mol', Al: '0.005 mol' })
  })

  it('does not count what is in excess, even where it is supplied', () => {
    const { after } = runStages([dissolve], { Al: '0.025 mol', KOH: '0.050 mol', H2O: '0.001 mol' })
    expect(amountOf(after, 'H2O')).toBeUndefined()
  })

  it('that changes a state only keeps the amount', () => {
    const { after } = runStages([{ equation: 'KNO3(aq) -> KNO3(s)' }], { KNO3: '2.0 mol' })
    expect(show(after)).toEqual({ KNO3: '2 mol' })
  })

  it('of nothing goes nowhere', () => {
    const { stages, after } = runStages([neutralise], { KOH: '0 mol', H2SO4: '0.1 mol' })
    expect(stages[0]?.extent.value.isZero()).toBe(true)
    expect(show(after)).toEqual({ KOH: '0 mol', H2SO4: '0.1 mol', K2SO4: '0 mol' })
  })

  it('finds what is practically used up together', () => {
    const [stage] = runStages([neutralise], { KOH: '0.2 mol', H2SO4: '0.1005 mol' }).stages
    expect(stage).toMatchObject({ limiting: 'KOH', practicallyEqual: ['H2SO4'] })
    const [strict] = runStages(
      [neutralise],
      { KOH: '0.2 mol', H2SO4: '0.1005 mol' },
      { practicallyEqualWithin: 0 },
    ).stages
    expect(strict?.practicallyEqual).toEqual([])
  })
})

describe('a chain', () => {
  it('hands on what it leaves: leftover alkali meets the acid first', () => {
    const run = runStages([dissolve, { ...neutralise, add: { H2SO4: '0.105 mol' } }, crystallise], {
      Al: '1.000 g',
      KOH: '0.075 mol',
    })
    expect(amountOf(run.after, 'KAl(SO4)2·12H2O')?.toString()).toBe('0.03706 mol')
    expect(amountOf(run.after, 'H2SO4')?.toString()).toBe('0.01191 mol')
    expect(run.stages.map(({ limiting }) => limiting)).toEqual(['Al', 'KOH', 'K[Al(OH)4]'])
  })

  it('tells the true need of what is in excess', () => {
    const supplies = { Al: '1.000 g', KOH: '0.075 mol' } as const
    const run = runStages([dissolve, neutralise, crystallise], supplies, { inExcess: ['H2O', 'H2SO4'] })
    const need = amountUsedInAll(run, 'H2SO4')
    expect(need?.toString()).toBe('0.09309 mol')
    // the acid of the sheet, 0.105 mol, is 1.13 of this need and 1.42 of the need of the last stage alone
    expect(
      exact('0.105 mol')
        .dividedBy(need ?? exact('1 mol'))
        .value.toFixed(2),
    ).toBe('1.13')
    const naive = amountOf(run.stages[2]?.used ?? [], 'H2SO4') ?? exact('1 mol')
    expect(exact('0.105 mol').dividedBy(naive).value.toFixed(2)).toBe('1.42')
  })

  it('brings a metal back', () => {
    const run = runStages(
      [
        { equation: 'Cu + 4HNO3 -> Cu(NO3)2 + 2NO2 + 2H2O' },
        { equation: 'HNO3 + NaOH -> NaNO3 + H2O', remove: ['NO2'], add: { NaOH: '0.090 mol' } },
        { equation: 'Cu(NO3)2 + 2NaOH -> Cu(OH)2 + 2NaNO3' },
        { equation: 'Cu(OH)2 -> CuO + H2O' },
        { equation: 'CuO + H2SO4 -> CuSO4 + H2O', remove: ['NaOH', 'NaNO3'], add: { H2SO4: '0.090 mol' } },
        { equation: 'CuSO4 + Zn -> Cu + ZnSO4', add: { Zn: '2.0 g' } },
        { equation: 'Zn + H2SO4 -> ZnSO4 + H2' },
      ],
      { Cu: '0.500 g', HNO3: '0.064 mol' },
    )
    const [start, end] = [amountOf(run.stages[0]?.before ?? [], 'Cu'), amountOf(run.after, 'Cu')]
    expect(
      end
        ?.minus(start ?? exact('1 mol'))
        .value.abs()
        .lt('1e-30'),
    ).toBe(true)
    expect(amountOf(run.after, 'Zn')?.value.isZero()).toBe(true) // the leftover acid takes the rest of the zinc
    expect(amountOf(run.after, 'H2SO4')?.toString()).toBe('0.059 mol')
    expect(amountOf(run.after, 'NO2')).toBeUndefined()
  })

  it('goes on with an aliquot', () => {
    const run = runStages(
      [
        { equation: 'Fe + H2SO4 -> FeSO4 + H2' },
        {
          equation: 'FeSO4 + (NH4)2SO4 + 6H2O -> (NH4)2Fe(SO4)2·6H2O',
          remove: ['Fe'],
          aliquot: '0.5',
          add: { '(NH4)2SO4': '45 g' },
        },
      ],
      { Fe: '40. g', H2SO4: '0.666 mol' },
    )
    expect(run.stages.map(({ limiting }) => limiting)).toEqual(['H2SO4', 'FeSO4'])
    expect(amountOf(run.after, '(NH4)2Fe(SO4)2·6H2O')?.toString()).toBe('0.333 mol')
    const [, before] = run.stages
    const share = amountOf(before?.before ?? [], 'FeSO4')
    expect(share?.naming.label).toBe('amount of FeSO4 in the aliquot')
    expect(share?.operands[1]?.naming).toMatchObject({ role: 'aliquot', symbol: 'a' })
    expect(amountOf(run.after, 'Fe')).toBeUndefined()
  })

  it('takes an addition together with what is there', () => {
    const { stages } = runStages([neutralise, { ...neutralise, add: { KOH: '0.3 mol' } }], {
      KOH: '0.2 mol',
      H2SO4: '0.25 mol',
    })
    expect(show(stages[1]?.before ?? [])).toEqual({ KOH: '0.3 mol', H2SO4: '0.15 mol', K2SO4: '0.1 mol' })
    const more = runStages([neutralise, { ...neutralise, add: { H2SO4: '0.3 mol' } }], {
      KOH: '0.2 mol',
      H2SO4: '0.25 mol',
    })
    expect(show(more.stages[1]?.before ?? [])).toMatchObject({ H2SO4: '0.45 mol' })
  })

  it('begins with nothing but what is added', () => {
    const { after } = runStages([{ ...neutralise, add: { KOH: '0.2 mol', H2SO4: '0.1 mol' } }])
    expect(show(after)).toEqual({ KOH: '0 mol', H2SO4: '0 mol', K2SO4: '0.1 mol' })
  })

  it('keeps the amount of every element that is counted', () => {
    const { stages } = runStages([dissolve, { ...neutralise, add: { H2SO4: '0.105 mol' } }, crystallise], {
      Al: '0.037 mol',
      KOH: '0.075 mol',
    })
    const potassium = (list: readonly SpeciesAmount[]): string =>
      ['KOH', 'K[Al(OH)4]', 'K2SO4', 'K2SO4', 'KAl(SO4)2·12H2O']
        .map((formula) => amountOf(list, formula) ?? exact('0 mol'))
        .reduce((total, amount) => total.plus(amount))
        .toString()
    expect(stages.map(({ after }) => potassium(after))).toEqual(['0.075 mol', '0.075 mol', '0.075 mol'])
  })
})

describe('looking up', () => {
  const run = runStages([neutralise], { KOH: '0.2 mol', H2SO4: '0.15 mol' })
  it('what there is', () => expect(amountOf(run.after, 'H2SO4')?.toString()).toBe('0.05 mol'))
  it('what there is not', () => expect(amountOf(run.after, 'NaCl')).toBeUndefined())
  it('what all stages use', () => {
    expect(amountUsedInAll(run, 'KOH')?.naming.label).toBe('amount of KOH that reacts in all stages')
    expect(amountUsedInAll(run, 'K2SO4')).toBeUndefined()
    const twice = runStages([neutralise, { ...neutralise, add: { KOH: '0.04 mol' } }], {
      KOH: '0.2 mol',
      H2SO4: '0.15 mol',
    })
    expect(amountUsedInAll(twice, 'KOH')?.toString()).toBe('0.24 mol')
    expect(amountUsedInAll(twice, 'H2SO4')?.toString()).toBe('0.12 mol')
  })
  it.each([
    { what: 'no list', call: () => amountOf('KOH' as never, 'KOH'), found: '"KOH"', expected: 'a list of amounts' },
    { what: 'no amount', call: () => amountOf([null] as never, 'KOH'), found: 'null', expected: 'a list of amounts' },
    { what: 'a hole', call: () => amountOf(Array(1), 'KOH'), found: 'undefined', expected: 'a list of amounts' },
    {
      what: 'no run',
      call: () => amountUsedInAll(5 as never, 'KOH'),
      found: '5',
      expected: 'what runStages gives',
    },
    {
      what: 'a run without stages',
      call: () => amountUsedInAll({} as never, 'KOH'),
      found: 'undefined',
      expected: 'the stages that runStages gives',
    },
  ])('in $what is refused', ({ call, found, expected }) => {
    expect(refusal(call)).toMatchObject({ code: 'stoichiometry/not-an-object', found, expected })
  })
})

describe('what is refused', () => {
  const supplies = { KOH: '0.1 mol', H2SO4: '0.1 mol' } as const
  it.each([
    { stages: [], code: 'stoichiometry/bad-stages' },
    { stages: null, code: 'stoichiometry/bad-stages' },
    { stages: 'KOH', code: 'stoichiometry/bad-stages' },
    { stages: [null], code: 'stoichiometry/bad-stages' },
    { stages: ['2KOH + H2SO4 -> K2SO4 + 2H2O'], code: 'stoichiometry/bad-stages' },
    { stages: [{}], code: 'equation/not-text' },
    { stages: [{ ...neutralise, name: Symbol('s') }], code: 'stoichiometry/bad-stages' },
    { stages: [{ ...neutralise, name: 5 }], code: 'stoichiometry/bad-stages' },
    { stages: [{ equation: 'KOH + H2SO4 -> K2SO4 + H2O' }], code: 'stoichiometry/unbalanced-equation' },
    { stages: [dissolve], code: 'stoichiometry/not-supplied' },
    { stages: [neutralise, crystallise], code: 'stoichiometry/not-supplied' },
    { stages: [{ ...neutralise, remove: ['KOH'] }], code: 'stoichiometry/not-supplied' },
    { stages: [{ ...neutralise, remove: 'KOH' }], code: 'stoichiometry/bad-stages' },
    { stages: [{ ...neutralise, remove: ['koh'] }], code: 'formula/unknown-symbol' },
    { stages: [{ ...neutralise, add: 'KOH' }], code: 'stoichiometry/bad-supplies' },
    { stages: [{ ...neutralise, add: { KOH: '1 mL' } }], code: 'stoichiometry/not-a-supply' },
    { stages: [{ ...neutralise, aliquot: 0 }], code: 'stoichiometry/not-a-fraction' },
    { stages: [{ ...neutralise, aliquot: '101 %' }], code: 'stoichiometry/not-a-fraction' },
    { stages: [{ ...neutralise, aliquot: Number.NaN }], code: 'quantity/not-a-numeral' },
    { stages: [{ equation: '2H2O -> 2H2 + O2' }], code: 'stoichiometry/nothing-limits' },
  ])('$stages: $code', ({ stages, code }) => {
    expect(refusal(() => runStages(stages as never, supplies)).code).toBe(code)
  })

  it('supplies and species in excess that are none', () => {
    expect(refusal(() => runStages([neutralise], null as never)).code).toBe('stoichiometry/bad-supplies')
    expect(refusal(() => runStages([neutralise], supplies, { inExcess: 'H2O' as never })).code).toBe(
      'stoichiometry/bad-stages',
    )
  })

  it.each([
    { stages: 'KOH', found: '"KOH"', expected: 'a list of one or more stages' },
    { stages: [7], found: '7', expected: 'a stage: { equation: "..." }' },
    { stages: [{ ...neutralise, remove: 5 }], found: '5', expected: 'a list of formulas' },
  ])('says what stands where $expected belongs', ({ stages, ...told }) => {
    expect(refusal(() => runStages(stages as never, supplies))).toMatchObject(told)
  })

  it('says what is missing in which stage', () => {
    const error = refusal(() => runStages([neutralise, { ...crystallise, name: 'crystallising' }], supplies))
    expect(error.found).toBe('no K[Al(OH)4]')
    expect(refusal(() => runStages([neutralise, crystallise], supplies)).message).toContain('reacts in stage 2')
    expect(error.message).toBe(
      'K[Al(OH)4] reacts in crystallising ("K[Al(OH)4] + 2H2SO4 + 8H2O -> KAl(SO4)2·12H2O") but was neither supplied nor made before.',
    )
  })
})

it('options that are nothing are refused', () => {
  const stages = [{ equation: '2KOH + H2SO4 -> K2SO4 + 2H2O' }]
  expect(() => runStages(stages, { KOH: '1 mol', H2SO4: '1 mol' }, null as never)).toThrow(
    expect.objectContaining({ code: 'stoichiometry/bad-stages' }),
  )
})
