import { describe, expect, it } from 'vitest'
import {
  type ChainOptions,
  combine,
  lowestTerms,
  overallEquation,
  parseEquation,
  stageMultipliers,
} from '../../src/equation/index.js'
import { parseFormula } from '../../src/formula/index.js'
import { formatFraction } from '../../src/fraction.js'
import { refusal } from './refusal.js'

const oxalate = [
  '(NH4)2Fe(SO4)2·6H2O + H2C2O4 -> FeC2O4·2H2O + (NH4)2SO4 + H2SO4 + 4 H2O',
  '6 FeC2O4·2H2O + 3 H2O2 + 6 K2C2O4 -> 4 K3[Fe(C2O4)3] + 2 Fe(OH)3 + 12 H2O',
  '2 Fe(OH)3 + 3 K2C2O4 + 3 H2C2O4 -> 2 K3[Fe(C2O4)3] + 6 H2O',
]
const alum = [
  '2 Al(s) + 2 KOH(aq) + 6 H2O(l) -> 2 K[Al(OH)4](aq) + 3 H2(g)',
  '2 K[Al(OH)4](aq) + H2SO4(aq) -> 2 Al(OH)3(s) + K2SO4(aq) + 2 H2O(l)',
  '2 Al(OH)3(s) + 3 H2SO4(aq) -> Al2(SO4)3(aq) + 6 H2O(l)',
  'K2SO4(aq) + Al2(SO4)3(aq) + 24 H2O(l) -> 2 KAl(SO4)2·12H2O(s)',
]
const mohr = [
  'Fe(s) + H2SO4(aq) -> FeSO4(aq) + H2(g)',
  'FeCO3(s) + H2SO4(aq) -> FeSO4(aq) + CO2(g) + H2O(l)',
  'FeSO4(aq) + (NH4)2SO4(aq) + 6 H2O(l) -> (NH4)2Fe(SO4)2·6H2O(s)',
]
const direct = 'Fe(s) + H2SO4(aq) + (NH4)2SO4(aq) + 6 H2O(l) -> (NH4)2Fe(SO4)2·6H2O(s) + H2(g)'

describe('multipliers', () => {
  it.each<[string, readonly string[], ChainOptions, string]>([
    ['cancel the intermediates that are named', oxalate, { cancel: ['FeC2O4·2H2O', 'Fe(OH)3'] }, '2, 1/3, 1/3'],
    ['find the intermediates', oxalate, {}, '2, 1/3, 1/3'],
    [
      'take formulas as well',
      oxalate,
      { cancel: [parseFormula('FeC2O4·2H2O'), parseFormula('Fe(OH)3')] },
      '2, 1/3, 1/3',
    ],
    ['do not count water as an intermediate', alum, {}, '1, 1, 1, 1'],
    ['lead to a given overall equation', mohr, { overall: direct }, '1, 0, 1'],
    [
      'and to a multiple of it',
      mohr,
      { overall: direct.replaceAll(/(^|-> | \+ )(?=[(FH])/g, '$12 ').replace('6 H2O', '12 H2O') },
      '2, 0, 2',
    ],
    [
      'of two half-reactions cancel the electrons, in either order',
      ['MnO4^- + 8 H^+ + 5 e^- -> Mn^2+ + 4 H2O', 'Fe^2+ -> Fe^3+ + e^-'],
      {},
      '1, 5',
    ],
    ['of one stage bring it to its lowest terms', ['2 H2 + 2 I2 -> 4 HI'], {}, '1/2'],
    [
      'name states where one formula has two',
      ['NaNO3(aq) + KCl(aq) -> KNO3(aq) + NaCl(s)', 'KNO3(aq) -> KNO3(s)'],
      { cancel: ['KNO3(aq)'] },
      '1, 1',
    ],
    [
      'see what is used up as what it was made as',
      ['Cu + 2 Ag^+ -> Cu^2+ + 2 Ag', 'Ag + 2 HNO3 -> AgNO3 + NO2 + H2O'],
      { cancel: ['Ag'] },
      '1, 2',
    ],
  ])('%s', (_, stages, options, times) => {
    expect(stageMultipliers(stages, options).map(formatFraction).join(', ')).toBe(times)
  })

  it('give the overall equation in lowest terms', () => {
    const times = stageMultipliers(oxalate)
    const overall = combine(oxalate.map((equation, index) => ({ equation, times: times[index] })))
    expect(overall.text).toBe(lowestTerms(overall).text)
    expect(overallEquation(oxalate).text).toBe(overall.text)
    expect(overall.text).toBe(
      '2 (NH4)2Fe(SO4)2·6H2O + 3 H2C2O4 + H2O2 + 3 K2C2O4 -> 2 (NH4)2SO4 + 2 H2SO4 + 14 H2O + 2 K3[Fe(C2O4)3]',
    )
  })

  it('take equations', () => {
    expect(overallEquation(alum.map(parseEquation)).text).toBe(
      '2 Al(s) + 2 KOH(aq) + 22 H2O(l) + 4 H2SO4(aq) -> 3 H2(g) + 2 KAl(SO4)2·12H2O(s)',
    )
  })
})

describe('refusals', () => {
  it('a chain of more than 100 stages', () => {
    const chain = Array.from({ length: 101 }, (_, index) => `C${index + 1}H4 -> C${index + 2}H4`)
    const error = refusal(() => overallEquation(chain))
    expect([error.code, error.found]).toEqual(['equation/too-many-stages', '101 stages'])
    expect(stageMultipliers(chain.slice(1))).toHaveLength(100)
  })

  it.each<[readonly string[], ChainOptions, string, string | undefined]>([
    [mohr, {}, 'equation/undetermined-multipliers', 'Name more'],
    [['H2 -> 2 H', 'O2 -> 2 O'], {}, 'equation/undetermined-multipliers', 'Name more'],
    [['H2 -> 2 H', 'O2 -> 2 O'], { cancel: ['H'] }, 'equation/no-multipliers', 'Stage 1 would have to be left out.'],
    [['H2 -> 2 H'], { cancel: ['H'] }, 'equation/no-multipliers', undefined],
    [
      ['C + O2 -> CO2', 'S + O2 -> SO2'],
      { cancel: ['O2'] },
      'equation/reversed-stage',
      'Write stage 2 the other way round.',
    ],
    [['Fe^2+ -> Fe^3+ + e^-', 'Zn -> Zn^2+ + 2 e^-'], { cancel: ['e^-'] }, 'equation/reversed-stage', 'stage 2'],
    [['CO2 -> C + O2', 'CO -> C + O'], { overall: 'C + O2 -> CO2' }, 'equation/reversed-stage', 'stage 1'],
    [mohr, { overall: 'Fe + S -> FeS' }, 'equation/no-multipliers', undefined],
    [
      ['H2 -> 2 H', '2 H -> H2'],
      { overall: 'C + O2 -> CO2' },
      'equation/no-multipliers',
      'The stages cancel one another.',
    ],
    [
      ['C + O2 -> CO2', '2 C + 2 O2 -> 2 CO2'],
      { overall: 'C + O2 -> CO2' },
      'equation/undetermined-multipliers',
      undefined,
    ],
    [mohr, { cancel: 'FeSO4' as never }, 'equation/unknown-option', undefined],
    [mohr, { cancel: new Array(1) }, 'formula/not-text', undefined],
    [mohr, { cancel: ['NaCl'] }, 'equation/unknown-species', undefined],
    [mohr, { cancel: ['FeSO4(s)'] }, 'equation/unknown-species', undefined],
    [mohr, { cancel: ['Xx'] }, 'formula/unknown-symbol', undefined],
    [mohr, { cancel: ['FeSO4'], overall: direct }, 'equation/unknown-option', undefined],
    [['I2(s) -> I2(g)'], { cancel: ['I2'] }, 'equation/ambiguous-state', undefined],
    [['H2 -> 2 H', '2 H -> H2'], { cancel: ['H'] }, 'equation/nothing-left', undefined],
    [mohr, null as never, 'equation/unknown-option', undefined],
    ['H2 -> 2 H' as never, {}, 'equation/not-text', undefined],
    [['H2'], {}, 'equation/missing-arrow', undefined],
  ])('%j, %j: %s', (stages, options, code, hint) => {
    const error = refusal(() => stageMultipliers(stages, options))
    expect(error.code).toBe(code)
    expect(error.hint ?? '').toContain(hint ?? '')
  })

  it('of an overall equation are the same', () => {
    expect(refusal(() => overallEquation(mohr)).code).toBe('equation/undetermined-multipliers')
    expect(refusal(() => overallEquation(mohr, 5 as never)).code).toBe('equation/unknown-option')
  })

  it('name the stage that would run backwards', () => {
    const error = refusal(() => stageMultipliers(['C + O2 -> CO2', 'S + O2 -> SO2'], { cancel: ['O2'] }))
    expect(error.path).toEqual([1])
  })
})
