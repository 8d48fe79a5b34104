import { describe, expect, it } from 'vitest'
import { checkBalance } from '../../src/equation/index.js'
import { knownEquations } from './known-equations.js'
import { refusal } from './refusal.js'

describe('an equation that is balanced', () => {
  it.each(Object.values(knownEquations).flat())('%s', (text) => {
    const check = checkBalance(text)
    expect(String(check)).toBe('Balanced, in lowest terms.')
    expect([check.balanced, check.lowestTerms, check.suggestion, check.missing]).toEqual([
      true,
      true,
      undefined,
      undefined,
    ])
  })

  it.each([
    ['H2 + 1/2 O2 -> H2O', '2 H2 + O2 -> 2 H2O'],
    ['H2 + 0.5 O2 -> H2O', '2 H2 + O2 -> 2 H2O'],
    ['1/2 C + 1/2 O2 -> 1/2 CO2', 'C + O2 -> CO2'],
    ['2 Zn + 4 H^+ -> 2 Zn^2+ + 2 H2', 'Zn + 2 H^+ -> Zn^2+ + H2'],
    ['3 N2 + 9 H2 -> 6 NH3', 'N2 + 3 H2 -> 2 NH3'],
    ['2 P4O10 + 14 C -> 2 P4 + 8 CO + 6 CO2', 'P4O10 + 7 C -> P4 + 4 CO + 3 CO2'],
    ['1/3 Fe2O3 + CO -> 2/3 Fe + CO2', 'Fe2O3 + 3 CO -> 2 Fe + 3 CO2'],
    ['0.165 Ca^2+ + 0.33 Cl^- -> 0.165 CaCl2', 'Ca^2+ + 2 Cl^- -> CaCl2'],
  ])('but not in lowest terms: %s', (text, suggestion) => {
    const check = checkBalance(text)
    expect([check.balanced, check.lowestTerms, check.suggestion?.text]).toEqual([true, false, suggestion])
    expect(String(check)).toBe(`Balanced, not in lowest terms. Right would be: ${suggestion}`)
  })
})

describe('an equation that is not balanced', () => {
  it.each([
    ['H2 + O2 -> H2O', 'O has 2 on the left and 1 on the right', '2 H2 + O2 -> 2 H2O'],
    [
      'Al + HCl -> AlCl3 + H2',
      'H has 1 on the left and 2 on the right, Cl has 1 on the left and 3 on the right',
      '2 Al + 6 HCl -> 2 AlCl3 + 3 H2',
    ],
    ['Zn + Ag^+ -> Zn^2+ + Ag', 'the charge is +1 on the left and +2 on the right', 'Zn + 2 Ag^+ -> Zn^2+ + 2 Ag'],
    [
      'S^2- + I2 -> S + I^-',
      'I has 2 on the left and 1 on the right, the charge is -2 on the left and -1 on the right',
      'S^2- + I2 -> S + 2 I^-',
    ],
    [
      'CuSO4·5H2O -> CuSO4 + 4 H2O',
      'O has 9 on the left and 8 on the right, H has 10 on the left and 8 on the right',
      'CuSO4·5H2O -> CuSO4 + 5 H2O',
    ],
    [
      'CdSO4·8/3H2O -> CdSO4 + H2O',
      'O has 20/3 on the left and 5 on the right, H has 16/3 on the left and 2 on the right',
      '3 CdSO4·8/3H2O -> 3 CdSO4 + 8 H2O',
    ],
    [
      'CH4 + 2O2 -> CO2 + H2O',
      'H has 4 on the left and 2 on the right, O has 4 on the left and 3 on the right',
      'CH4 + 2 O2 -> CO2 + 2 H2O',
    ],
  ])('%s: %s', (text, faults, suggestion) => {
    expect(String(checkBalance(text))).toBe(`Not balanced: ${faults}. Right would be: ${suggestion}`)
    expect(checkBalance(text)).toMatchObject({ balanced: false, missing: undefined })
  })

  it.each([
    // equation, what is missing where, the completed equation
    ['Cu(OH)2 -> CuO', '1 H2O right', 'Cu(OH)2 -> CuO + H2O'],
    ['SO3 -> H2SO4', '1 H2O left', 'SO3 + H2O -> H2SO4'],
    ['CuSO4 -> CuSO4·5H2O', '5 H2O left', 'CuSO4 + 5 H2O -> CuSO4·5H2O'],
    ['Al(OH)3 -> Al2O3', '3 H2O right', '2 Al(OH)3 -> Al2O3 + 3 H2O'],
    ['P4O10 -> H3PO4', '6 H2O left', 'P4O10 + 6 H2O -> 4 H3PO4'],
    ['Fe^2+ -> Fe^3+', '1 e^- right', 'Fe^2+ -> Fe^3+ + e^-'],
    ['Cu^2+ -> Cu', '2 e^- left', 'Cu^2+ + 2 e^- -> Cu'],
    ['Cl^- -> Cl2', '2 e^- right', '2 Cl^- -> Cl2 + 2 e^-'],
    ['NH3 -> NH4^+', '1 H^+ left', 'NH3 + H^+ -> NH4^+'],
    ['HSO4^- -> SO4^2-', '1 H^+ right', 'HSO4^- -> SO4^2- + H^+'],
    ['CO2 -> HCO3^-', '1 OH^- left', 'CO2 + OH^- -> HCO3^-'],
    ['Mg(OH)2 -> Mg^2+', '2 OH^- right', 'Mg(OH)2 -> Mg^2+ + 2 OH^-'],
    ['CuO(s) + 2 HNO3(aq) -> Cu(NO3)2(aq)', '1 H2O(l) right', 'CuO(s) + 2 HNO3(aq) -> Cu(NO3)2(aq) + H2O(l)'],
    ['Fe^2+(aq) -> Fe^3+(aq)', '1 e^- right', 'Fe^2+(aq) -> Fe^3+(aq) + e^-'],
    ['Cr2O7^2- + 2 OH^- -> 2 CrO4^2-', '1 H2O right', 'Cr2O7^2- + 2 OH^- -> 2 CrO4^2- + H2O'],
    ['3 Cu + 8 HNO3 -> 3 Cu(NO3)2 + 2 NO', '4 H2O right', '3 Cu + 8 HNO3 -> 3 Cu(NO3)2 + 2 NO + 4 H2O'],
  ])('%s lacks %s', (text, lacking, completed) => {
    const check = checkBalance(text)
    const { formula, side, coefficient, equation } = check.missing!
    const [species] = [...equation.left, ...equation.right].filter((term) => term.formula.text === formula.text)
    const state = species?.state === undefined ? '' : `(${species.state})`
    expect(`${coefficient.numerator} ${formula}${state} ${side}`).toBe(lacking)
    expect([equation.text, check.suggestion]).toEqual([completed, undefined])
    expect(String(check)).toContain(` ${formula} is missing on the ${side}: ${completed}`)
    expect(checkBalance(equation).balanced).toBe(true)
  })

  it.each([
    'MnO4^- + Fe^2+ -> Mn^2+ + Fe^3+',
    'Na + H2O -> NaOH',
    'NaCl -> KCl',
    'P4O10 + C -> P4 + CO + CO2',
    'H^+ -> OH^-',
  ])('%s has no single thing that would put it right', (text) => {
    expect(checkBalance(text)).toMatchObject({ balanced: false, suggestion: undefined, missing: undefined })
    expect(String(checkBalance(text))).toMatch(/^Not balanced: .*\.$/)
  })
})

describe('a check', () => {
  it('counts every element and the charge on both sides, exactly', () => {
    const { elements, charge } = checkBalance('2 MnO4^- + 1/2 H2O -> MnO2 + 2 K^+')
    const counted = elements.map(({ symbol, left, right, difference }) => [symbol, left, right, difference])
    const of = (numerator: bigint, denominator = 1n): unknown => ({ numerator, denominator })
    expect(counted).toEqual([
      ['Mn', of(2n), of(1n), of(-1n)],
      ['O', of(17n, 2n), of(2n), of(-13n, 2n)],
      ['H', of(1n), of(0n), of(-1n)],
      ['K', of(0n), of(2n), of(2n)],
    ])
    expect(charge).toEqual({ left: of(-2n), right: of(2n), difference: of(4n) })
  })

  it('is plain data in JSON', () => {
    expect(JSON.parse(JSON.stringify(checkBalance('Fe^2+ -> Fe^3+')))).toEqual({
      balanced: false,
      elements: [{ symbol: 'Fe', left: '1', right: '1', difference: '0' }],
      charge: { left: '2', right: '3', difference: '1' },
      lowestTerms: true,
      missing: { formula: 'e^-', side: 'right', coefficient: '1', equation: 'Fe^2+ -> Fe^3+ + e^-' },
    })
    expect(JSON.parse(JSON.stringify(checkBalance('H2 + O2 -> H2O')))).toMatchObject({
      suggestion: '2 H2 + O2 -> 2 H2O',
    })
  })

  it('cannot be changed', () => {
    const check = checkBalance('H2 + O2 -> H2O')
    expect([check, check.elements].every(Object.isFrozen)).toBe(true)
  })

  it('is refused where atoms cannot be counted, or there is no equation', () => {
    expect(refusal(() => checkBalance('ZnSO4·xH2O -> ZnSO4 + H2O')).code).toBe('equation/unknown-count')
    expect(refusal(() => checkBalance(undefined as never)).code).toBe('equation/not-text')
  })
})
