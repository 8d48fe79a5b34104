import { describe, expect, it } from 'vitest'
import { checkBalance, combine, type EquationStage, parseEquation } from '../../src/equation/index.js'
import { fractionOf } from '../../src/fraction.js'
import { refusal } from './refusal.js'

/** Stages from pairs of text and multiplier. */
function stages(...pairs: readonly (readonly [string, EquationStage['times']?])[]): readonly EquationStage[] {
  return pairs.map(([equation, times]) => ({ equation, times }))
}

describe('combining', () => {
  it.each<[string, readonly EquationStage[], string]>([
    [
      'an intermediate cancels',
      stages(['Zn(s) + H2SO4(aq) -> ZnSO4(aq) + H2(g)'], ['ZnSO4(aq) + 7 H2O(l) -> ZnSO4·7H2O(s)']),
      'Zn(s) + H2SO4(aq) + 7 H2O(l) -> H2(g) + ZnSO4·7H2O(s)',
    ],
    ['what is left of it stays', stages(['C + O2 -> CO2', 3], ['CO2 + C -> 2 CO', 2]), '5 C + 3 O2 -> CO2 + 4 CO'],
    [
      'water on both sides is counted once',
      stages(['CuO + H2SO4 -> CuSO4 + H2O'], ['CuSO4 + 5 H2O -> CuSO4·5H2O']),
      'CuO + H2SO4 + 4 H2O -> CuSO4·5H2O',
    ],
    [
      'fractions stay exact',
      stages(['H2 + O2 -> H2O2', '1/3'], ['N2 + 3 H2 -> 2 NH3', '2/9']),
      'H2 + 1/3 O2 + 2/9 N2 -> 1/3 H2O2 + 4/9 NH3',
    ],
    ['decimals too', stages(['2 H2 + O2 -> 2 H2O', '0.5']), 'H2 + 1/2 O2 -> H2O'],
    ['a fraction may be given as such', stages(['2 H2 + O2 -> 2 H2O', fractionOf(-1, 2)]), 'H2O -> H2 + 1/2 O2'],
    [
      'a negative multiplier runs a stage backwards',
      stages(['C + O2 -> CO2'], ['2 CO + O2 -> 2 CO2', '-1/2']),
      'C + 1/2 O2 -> CO',
    ],
    ['zero leaves it out', stages(['C + O2 -> CO2'], ['S + O2 -> SO2', 0]), 'C + O2 -> CO2'],
    ['electrons cancel', stages(['Zn -> Zn^2+ + 2 e^-'], ['Ag^+ + e^- -> Ag', 2]), 'Zn + 2 Ag^+ -> Zn^2+ + 2 Ag'],
    [
      'spellings of one formula are one species',
      stages(['CuO + H2SO4 -> CuSO4 + H2O'], ['CuSO₄ + 5 H₂O -> CuSO4.5H2O']),
      'CuO + H2SO4 + 4 H2O -> CuSO4·5H2O',
    ],
    [
      'the arrow stays where all stages have it',
      stages(['N2O4 <=> 2 NO2'], ['2 NO2 <=> 2 NO + O2']),
      'N2O4 <=> 2 NO + O2',
    ],
    ['and is a plain one where they differ', stages(['N2O4 <=> 2 NO2'], ['2 NO2 -> 2 NO + O2']), 'N2O4 -> 2 NO + O2'],
    ['the same species twice in a stage is added up', stages(['C + O2 + O2 -> CO2 + O2']), 'C + O2 -> CO2'],
  ])('%s', (_, all, overall) => expect(combine(all).text).toBe(overall))

  it('takes equations as well as their texts', () => {
    expect(combine([{ equation: parseEquation('H2 + I2 -> 2 HI'), times: 2 }]).text).toBe('2 H2 + 2 I2 -> 4 HI')
  })

  it('keeps a sum of balanced equations balanced', () => {
    expect(checkBalance(combine(stages(['C + O2 -> CO2', '7/3'], ['CO2 + C -> 2 CO', '5/7']))).balanced).toBe(true)
  })
})

describe('states', () => {
  it.each([
    ['differ: two species', 'KNO3(aq) + NaCl -> KNO3(s) + NaCl', 'KNO3(aq) -> KNO3(s)'],
    ['agree: one species', 'NaCl(s) + KBr(aq) + 2 H2O -> NaCl(aq) + KBr(aq) + 2 H2O', 'NaCl(s) -> NaCl(aq)'],
    ['are missing once: the one that is written', 'Zn + CuSO4(aq) -> ZnSO4 + Cu', 'Zn + CuSO4(aq) -> ZnSO4 + Cu'],
  ])('%s', (_, text, net) => expect(combine([{ equation: text }]).text).toBe(net))

  it('written in one stage hold for the other', () => {
    const overall = combine(stages(['Fe + H2SO4 -> FeSO4 + H2'], ['FeSO4(aq) + 7 H2O(l) -> FeSO4·7H2O(s)']))
    expect(overall.text).toBe('Fe + H2SO4 + 7 H2O(l) -> H2 + FeSO4·7H2O(s)')
  })

  it('that may be either of two are refused', () => {
    const error = refusal(() => combine(stages(['I2(s) -> I2(g)'], ['I2 + H2 -> 2 HI'])))
    expect([error.code, error.found, error.hint]).toEqual([
      'equation/ambiguous-state',
      'I2',
      'Write I2(s) and I2(g) wherever it stands.',
    ])
  })
})

describe('refusals', () => {
  it.each<[string, readonly EquationStage[], string]>([
    ['no stage', [], 'equation/nothing-left'],
    ['a stage and its reverse', stages(['H2 -> 2 H'], ['2 H -> H2']), 'equation/nothing-left'],
    ['no run of any stage', stages(['H2 -> 2 H', 0]), 'equation/nothing-left'],
    ['only products left', stages(['2 H -> H2'], ['H2 -> 3 H']), 'equation/empty-side'],
    ['only reactants left', stages(['3 H -> H2'], ['H2 -> 2 H']), 'equation/empty-side'],
    ['a division by zero', stages(['H2 -> H', '1/0']), 'equation/coefficient-unreadable'],
    ['a word', stages(['H2 -> H', 'twice']), 'equation/coefficient-unreadable'],
    ['an empty text', stages(['H2 -> H', '']), 'equation/coefficient-unreadable'],
    ['a text that goes on', stages(['H2 -> H', '2x']), 'equation/coefficient-unreadable'],
    ['a decimal number', stages(['H2 -> H', 0.5]), 'equation/coefficient-unreadable'],
    ['no number', stages(['H2 -> H', Number.NaN]), 'equation/coefficient-unreadable'],
    [
      'a fraction of zeroth',
      stages(['H2 -> H', { numerator: 1n, denominator: 0n }]),
      'equation/coefficient-unreadable',
    ],
    [
      'a fraction of numbers',
      stages(['H2 -> H', { numerator: 1, denominator: 2 } as never]),
      'equation/coefficient-unreadable',
    ],
    ['half a fraction', stages(['H2 -> H', { numerator: 1n } as never]), 'equation/coefficient-unreadable'],
    ['nothing', stages(['H2 -> H', null as never]), 'equation/coefficient-unreadable'],
    ['a decimal comma', stages(['H2 -> H', '0,5']), 'equation/decimal-comma'],
    ['half an equation', stages(['H2']), 'equation/missing-arrow'],
    ['a text', 'H2 -> H' as never, 'equation/not-text'],
    ['null', null as never, 'equation/not-text'],
    ['a list of null', [null as never], 'equation/not-text'],
    ['a list of texts', ['H2 -> H' as never], 'equation/not-text'],
  ])('%s', (_, all, code) => expect(refusal(() => combine(all)).code).toBe(code))

  it('name the side on which nothing is left', () => {
    expect(refusal(() => combine(stages(['2 H -> H2'], ['H2 -> 3 H']))).message).toContain('on the left')
    expect(refusal(() => combine(stages(['3 H -> H2'], ['H2 -> 2 H']))).message).toContain('on the right')
  })

  it('name the multiplier that cannot be read', () => {
    const error = refusal(() => combine(stages(['H2 -> H'], ['H -> H2', 0.1])))
    expect([error.path, error.found]).toEqual([[1, 'times'], '0.1'])
  })
})
