import { describe, expect, it } from 'vitest'
import {
  atomsCountedOnce,
  bracketsCountedOnce,
  bracketsOnLastAtom,
  counterIonsMiscounted,
  formulaFacts,
  type Misreading,
} from '../../src/review/formula-facts.js'
import { formulaAtHand, formulasAtHand } from '../../src/review/formulas-at-hand.js'

const shown = (readings: readonly Misreading[]) =>
  readings.map(({ of, atoms }) => `${of}: ${[...atoms].map(([symbol, count]) => `${symbol} ${count}`).join(', ')}`)

describe('what can be misread in a formula', () => {
  it.each([
    { text: 'ZnSO4·7H2O', water: 7, once: [], last: [], atoms: ['O4: O -3'], ions: [] },
    {
      text: '(NH4)2Fe(SO4)2·6H2O',
      water: 6,
      once: ['(NH4)2: N -1, H -4', '(SO4)2: S -1, O -4'],
      last: ['(NH4)2: N -1', '(SO4)2: S -1'],
      atoms: ['H4: H -6', 'O4: O -6'],
      ions: ['(NH4)2: N 1, H 4', '(NH4)2: N -1, H -4'],
    },
    { text: 'K3[Fe(C2O4)3]·3H2O', water: 3, ions: ['K3: K 1', 'K3: K -1'] },
    { text: 'K2C2O4', water: 0, atoms: ['K2: K -1', 'C2: C -1', 'O4: O -3'], ions: ['K2: K 1', 'K2: K -1'] },
    { text: 'KOH', water: 0, once: [], last: [], atoms: [], ions: [] },
    { text: 'Na2', water: 0, ions: [] },
    { text: '(CH3)2O', water: 0, ions: [] },
    { text: 'H2O', water: 0, atoms: [] },
    { text: 'Mg(OH)2', water: 0, once: ['(OH)2: O -1, H -1'], last: ['(OH)2: O -1'] },
    { text: '(I)3', water: 0, once: ['(I)3: I -2'], last: [] },
    { text: 'Ca3(PO4)2·0.5H2O', water: 0.5, once: [] },
    { text: '3CdSO4·8H2O', water: 8, atoms: ['O4: O -9'] },
  ])('$text', ({ text, water, once, last, atoms, ions }) => {
    const facts = formulaFacts(text)!
    expect(facts.water).toBe(water)
    if (once) expect(shown(bracketsCountedOnce(facts))).toEqual(once)
    if (last) expect(shown(bracketsOnLastAtom(facts))).toEqual(last)
    if (atoms) expect(shown(atomsCountedOnce(facts))).toEqual(atoms)
    if (ions) expect(shown(counterIonsMiscounted(facts))).toEqual(ions)
  })

  it.each(['Li', 'Na', 'K', 'Rb', 'Cs', 'Ag', 'Tl'])('%s balances a charge', (symbol) => {
    const of = `${symbol}2`
    expect(shown(counterIonsMiscounted(formulaFacts(`${of}CrO4`)!))).toEqual([
      `${of}: ${symbol} 1`,
      `${of}: ${symbol} -1`,
    ])
  })

  it.each(['Cu2O', 'Al2(SO4)3', '(NH4O)2S', '(NH3)2SO4', '(CH4)2SO4', 'KCl', '(OH)2Zn'])(
    '%s begins with no counter-ions to miscount',
    (text) => expect(counterIonsMiscounted(formulaFacts(text)!)).toEqual([]),
  )

  it.each([
    ['ZnSO4·H2O', ['SO4']],
    ['ZnSO4·H2O2', ['SO4', 'HO']],
    ['ZnSO4·HO', ['SO4', 'HO']],
    ['ZnSO4·H2S', ['SO4', 'HS']],
    ['ZnSO4·H2ON', ['SO4', 'HON']],
    ['CuSO4·4NH3·H2O', ['SO4', 'NH']],
  ])('%s: only water counts as water', (text, parts) => {
    expect(formulaFacts(text)?.branches).toHaveLength(parts.length)
  })

  it('brackets within brackets count as often as what they stand in', () => {
    const facts = formulaFacts('[Co(NH3)6]2(SO4)3')!
    expect(shown(bracketsCountedOnce(facts))).toEqual([
      '(Co(NH3)6)2: Co -1, N -6, H -18',
      '(NH3)6: N -10, H -30',
      '(SO4)3: S -2, O -8',
    ])
    expect(shown(bracketsOnLastAtom(facts))).toEqual(['(Co(NH3)6)2: Co -1', '(NH3)6: N -10', '(SO4)3: S -2'])
    expect(shown(atomsCountedOnce(facts))).toEqual(['H3: H -24', 'O4: O -9'])
  })

  it.each(['zinc vitriol', 'Al2O3·xH2O', ''])('%s says nothing', (text) => {
    expect(formulaFacts(text)).toBeUndefined()
    expect(formulaAtHand(text)).toEqual([])
  })

  it('formulas at hand are read once, those that cannot be read left out', () => {
    const list = ['ZnSO4·7H2O', 'nonsense', 'Fe2(SO4)3·9H2O']
    expect(formulasAtHand(list)).toEqual([
      { text: 'ZnSO4·7H2O', water: 7, salt: 'ZnSO4', elements: 'O S Zn' },
      { text: 'Fe2(SO4)3·9H2O', water: 9, salt: 'Fe2(SO4)3', elements: 'Fe O S' },
    ])
    expect(formulasAtHand(list)).toBe(formulasAtHand(list))
  })
})
