import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseEquation, tryParseEquation } from '../../src/equation/index.js'
import { isSaltwrightError } from '../../src/errors.js'
import { formatFraction } from '../../src/fraction.js'
import { elementaryReactions, knownEquations } from './known-equations.js'
import { pointedAt, refusal } from './refusal.js'

/** Every term as number, formula, charge and state. */
function terms(text: string): string {
  const { left, right } = parseEquation(text)
  const side = (all: typeof left): string =>
    all
      .map(
        ({ coefficient, formula, state }) =>
          `${formatFraction(coefficient)}|${formula}|${formula.charge}|${state ?? ''}`,
      )
      .join(' ')
  return `${side(left)} / ${side(right)}`
}

describe('arrows', () => {
  it.each([
    ['->', 'forward'],
    ['-->', 'forward'],
    ['---->', 'forward'],
    ['–>', 'forward'],
    ['—>', 'forward'],
    ['−>', 'forward'],
    ['=>', 'forward'],
    ['==>', 'forward'],
    ['→', 'forward'],
    ['⟶', 'forward'],
    ['⇒', 'forward'],
    ['➔', 'forward'],
    ['⇾', 'forward'],
    ['=', 'stoichiometric'],
    ['==', 'stoichiometric'],
    ['====', 'stoichiometric'],
    ['＝', 'stoichiometric'],
    ['<->', 'both-directions'],
    ['<-->', 'both-directions'],
    ['<–>', 'both-directions'],
    ['⇄', 'both-directions'],
    ['⇆', 'both-directions'],
    ['↔', 'both-directions'],
    ['⟷', 'both-directions'],
    ['<=>', 'equilibrium'],
    ['<==>', 'equilibrium'],
    ['⇌', 'equilibrium'],
    ['⇋', 'equilibrium'],
  ])('%s means %s, with and without spaces', (arrow, kind) => {
    expect(parseEquation(`H2 + I2 ${arrow} 2HI`).arrow).toBe(kind)
    expect(parseEquation(`H2+I2${arrow}2HI`).arrow).toBe(kind)
    expect(parseEquation(`H2+I2${arrow}2HI`).right).toHaveLength(1)
  })

  it.each([
    ['2Cl^--> Cl2 + 2e^-', '2|Cl^-|-1| / 1|Cl2|0| 2|e^-|-1|'],
    ['SO4^2--->S2O8^2-+2e^-', '1|SO4^2-|-2| / 1|S2O8^2-|-2| 2|e^-|-1|'],
    ['Zn^2++2e-->Zn', '1|Zn^2+|2| 2|e-|-1| / 1|Zn|0|'],
    ['Fe^2+ -> Fe^3+ + e^-', '1|Fe^2+|2| / 1|Fe^3+|3| 1|e^-|-1|'],
  ])('the first dash of %s is a charge', (text, read) => expect(terms(text)).toBe(read))
})

describe('charges and pluses', () => {
  it.each([
    ['Na+ + Cl- -> NaCl', '1|Na+|1| 1|Cl-|-1| / 1|NaCl|0|'],
    ['Fe^3+ + e^- -> Fe^2+', '1|Fe^3+|3| 1|e^-|-1| / 1|Fe^2+|2|'],
    ['Fe^3++e^-->Fe^2+', '1|Fe^3+|3| 1|e^-|-1| / 1|Fe^2+|2|'],
    ['Fe³⁺ + e⁻ → Fe²⁺', '1|Fe³⁺|3| 1|e⁻|-1| / 1|Fe²⁺|2|'],
    ['H+(aq) + OH-(aq) -> H2O(l)', '1|H+|1|aq 1|OH-|-1|aq / 1|H2O|0|l'],
    ['H+ (aq) + OH- (aq) = H2O (l)', '1|H+|1|aq 1|OH-|-1|aq / 1|H2O|0|l'],
    ['H2+O2=H2O2', '1|H2|0| 1|O2|0| / 1|H2O2|0|'],
    ['H2+ O2 -> H2O2', '1|H2|0| 1|O2|0| / 1|H2O2|0|'],
    ['H2 +O2 -> H2O2', '1|H2|0| 1|O2|0| / 1|H2O2|0|'],
    ['CO+2H2->CH3OH', '1|CO|0| 2|H2|0| / 1|CH3OH|0|'],
    ['H2+0.5O2->H2O', '1|H2|0| 1/2|O2|0| / 1|H2O|0|'],
    ['H2+1/2O2->H2O', '1|H2|0| 1/2|O2|0| / 1|H2O|0|'],
    ['H2+½O2->H2O', '1|H2|0| 1/2|O2|0| / 1|H2O|0|'],
    ['NaCl+(NH4)HCO3->NaHCO3+NH4Cl', '1|NaCl|0| 1|(NH4)HCO3|0| / 1|NaHCO3|0| 1|NH4Cl|0|'],
    ['Ca+2 + CO3-2 = CaCO3', '1|Ca+2|2| 1|CO3-2|-2| / 1|CaCO3|0|'],
    ['CaCO3=Ca+2+CO3-2', '1|CaCO3|0| / 1|Ca+2|2| 1|CO3-2|-2|'],
    ['Fe+3(aq)+e-=Fe+2(aq)', '1|Fe+3|3|aq 1|e-|-1| / 1|Fe+2|2|aq'],
    ['[Cu(NH3)4]2+ + 2 e− ⇌ Cu(s) + 4 NH3', '1|[Cu(NH3)4]2+|2| 2|e−|-1| / 1|Cu|0|s 4|NH3|0|'],
    ['H2 ＋ I2 -> 2 HI', '1|H2|0| 1|I2|0| / 2|HI|0|'],
    ['Zn^2+ + S^2-=ZnS', '1|Zn^2+|2| 1|S^2-|-2| / 1|ZnS|0|'],
    // before a formula the last plus separates
    ['H2O=H++OH-', '1|H2O|0| / 1|H+|1| 1|OH-|-1|'],
    ['2Fe3++Cu=2Fe2++Cu2+', '2|Fe3+|3| 1|Cu|0| / 2|Fe2+|2| 1|Cu2+|2|'],
    ['AgCl+2NH3=[Ag(NH3)2]++Cl-', '1|AgCl|0| 2|NH3|0| / 1|[Ag(NH3)2]+|1| 1|Cl-|-1|'],
    ['Ca^+++2Cl^- -> CaCl2', '1|Ca^++|2| 2|Cl^-|-1| / 1|CaCl2|0|'],
    ['Na^++Cl^- -> NaCl', '1|Na^+|1| 1|Cl^-|-1| / 1|NaCl|0|'],
    // before anything else all of them are a charge
    ['Cu++ + 2e- -> Cu', '1|Cu++|2| 2|e-|-1| / 1|Cu|0|'],
    ['Cu++ (aq) + 2e- -> Cu', '1|Cu++|2|aq 2|e-|-1| / 1|Cu|0|'],
    ['CaHPO4·2H2O = Ca++ + HPO4-- + 2 H2O', '1|CaHPO4·2H2O|0| / 1|Ca++|2| 1|HPO4--|-2| 2|H2O|0|'],
    ['Ca^++ + 2Cl^- -> CaCl2', '1|Ca^++|2| 2|Cl^-|-1| / 1|CaCl2|0|'],
    ['Fe -> Fe+++', '1|Fe|0| / 1|Fe+++|3|'],
    // what was raised stands apart
    ['SO4 2- + Ba 2+ -> BaSO4', '1|SO4 2-|-2| 1|Ba 2+|2| / 1|BaSO4|0|'],
    ['Hg2 2+ (aq) + 2 Cl- -> Hg2Cl2', '1|Hg2 2+|2|aq 2|Cl-|-1| / 1|Hg2Cl2|0|'],
    ['Hg2 2+(aq) + 2 Cl- -> Hg2Cl2', '1|Hg2 2+|2|aq 2|Cl-|-1| / 1|Hg2Cl2|0|'],
  ])('%s', (text, read) => expect(terms(text)).toBe(read))
})

describe('coefficients', () => {
  it.each([
    ['2H2O', '2'],
    ['2 H2O', '2'],
    ['2\u00a0H2O', '2'],
    ['2\u2009H2O', '2'],
    ['12 H2O', '12'],
    ['0.5 H2O', '1/2'],
    ['.5 H2O', '1/2'],
    ['2.50 H2O', '5/2'],
    ['2.5H2O', '5/2'],
    ['1/2 H2O', '1/2'],
    ['13/2H2O', '13/2'],
    ['1⁄2 H2O', '1/2'],
    ['½ H2O', '1/2'],
    ['½H2O', '1/2'],
    ['1½ H2O', '3/2'],
    ['⅓H2O', '1/3'],
    ['1 1/2 H2O', '3/2'],
    ['(1/2) H2O', '1/2'],
    ['(2)H2O', '2'],
    ['2×H2O', '2'],
    ['2·H2O', '2'],
    ['2 * H2O', '2'],
    ['4/2 H2O', '2'],
    ['123456789012345678901234567890 H2O', '123456789012345678901234567890'],
    [`${'9'.repeat(100)} H2O`, '9'.repeat(100)],
    [`1/${'9'.repeat(100)} H2O`, `1/${'9'.repeat(100)}`],
    [`0.${'0'.repeat(97)}1 H2O`, `1/1${'0'.repeat(98)}`],
  ])('%s has the coefficient %s', (term, coefficient) => {
    const [first] = parseEquation(`${term} -> H2`).left
    expect(formatFraction(first!.coefficient)).toBe(coefficient)
    expect([first!.formula.text, first!.coefficientWritten]).toEqual(['H2O', true])
  })

  it.each([
    ['CuSO4·5H2O -> CuSO4 + 5H2O', '1|CuSO4·5H2O|0| / 1|CuSO4|0| 5|H2O|0|'],
    ['2CuSO4·5H2O -> 2CuSO4 + 10H2O', '2|CuSO4·5H2O|0| / 2|CuSO4|0| 10|H2O|0|'],
    ['CuSO4 · 5 H2O -> CuSO4 + 5 H2O', '1|CuSO4 · 5 H2O|0| / 1|CuSO4|0| 5|H2O|0|'],
    ['CaSO4 ·½ H2O -> CaSO4', '1|CaSO4 ·½ H2O|0| / 1|CaSO4|0|'],
    ['CaSO4 · 1/2 H2O -> CaSO4', '1|CaSO4 · 1/2 H2O|0| / 1|CaSO4|0|'],
    ['CuSO4 x 5 H2O -> CuSO4', '1|CuSO4 x 5 H2O|0| / 1|CuSO4|0|'],
    ['2(NH4)2SO4 -> 4NH3 + 2H2SO4', '2|(NH4)2SO4|0| / 4|NH3|0| 2|H2SO4|0|'],
    ['2[Fe(CN)6]^3- + 2e^- -> 2[Fe(CN)6]^4-', '2|[Fe(CN)6]^3-|-3| 2|e^-|-1| / 2|[Fe(CN)6]^4-|-4|'],
    ['(NH4)2CO3 -> 2NH3 + H2O + CO2', '1|(NH4)2CO3|0| / 2|NH3|0| 1|H2O|0| 1|CO2|0|'],
    ['CdSO4·8/3H2O -> CdSO4 + 8/3H2O', '1|CdSO4·8/3H2O|0| / 1|CdSO4|0| 8/3|H2O|0|'],
  ])('numbers inside a formula stay there: %s', (text, read) => expect(terms(text)).toBe(read))

  it.each([
    ...[...'½⅓¼⅕⅙⅛'].map((sign, index) => [sign, `1/${[2, 3, 4, 5, 6, 8][index]}`] as const),
    ['⅔', '2/3'],
    ['¾', '3/4'],
    ['⅖', '2/5'],
    ['⅗', '3/5'],
    ['⅘', '4/5'],
    ['⅚', '5/6'],
    ['⅜', '3/8'],
    ['⅝', '5/8'],
    ['⅞', '7/8'],
  ] as const)('%s of one character are %s, also right behind a plus', (sign, fraction) => {
    expect(terms(`H2+${sign}O2->H2O`)).toBe(`1|H2|0| ${fraction}|O2|0| / 1|H2O|0|`)
  })

  it('is 1, and not written, where there is none', () => {
    expect(parseEquation('H2O -> H2').left[0]).toMatchObject({
      coefficientWritten: false,
      coefficient: { numerator: 1n },
    })
  })
})

describe('states', () => {
  it.each([
    ['BaCl2 + Na2SO4 -> BaSO4↓ + 2NaCl', 's'],
    ['CaCO3 -> CO2↑ + CaO', 'g'],
    ['CaCO3 -> CO2 ↑ + CaO', 'g'],
    ['CaCO3 -> CO2(g)↑ + CaO', 'g'],
    ['CaCO3 -> CO2(g) + CaO(s)', 'g'],
    ['CaCO3 -> CO2 (g) + CaO', 'g'],
  ])('the first product of %s is (%s)', (text, state) => expect(parseEquation(text).right[0]?.state).toBe(state))
})

describe('an equation', () => {
  it('keeps its text, and says it as a string and in JSON', () => {
    const text = ' 2H2 +  O2 → 2H2O'
    const equation = parseEquation(text)
    expect([equation.text, `${equation}`, JSON.stringify({ equation })]).toEqual([text, text, `{"equation":"${text}"}`])
  })

  it('cannot be changed', () => {
    const equation = parseEquation('H2 + I2 -> 2HI')
    for (const part of [equation, equation.left, equation.right, equation.left[0]])
      expect(Object.isFrozen(part)).toBe(true)
  })

  it('knows where its terms stand', () => {
    const text = '2 H2 + O2  -> 2H2O(g) '
    const { left, right } = parseEquation(text)
    expect([...left, ...right].map(({ position }) => text.slice(position!.start, position!.end))).toEqual([
      '2 H2',
      'O2',
      '2H2O(g)',
    ])
  })

  it.each([...Object.values(knownEquations).flat(), ...elementaryReactions])('%s is read', (text) => {
    expect(tryParseEquation(text).ok).toBe(true)
    expect(terms(text.replaceAll(' + ', '+').replaceAll(' -> ', '->').replaceAll('+e', ' + e'))).not.toBe('')
  })
})

describe('refusals', () => {
  it.each([
    // text, code, what the position points at, a piece of the hint
    ['', 'equation/empty', '', undefined],
    [' \n ', 'equation/empty', '', undefined],
    ['H2 + O2', 'equation/missing-arrow', 'H2 + O2', undefined],
    ['H2 + O2 gives H2O', 'equation/missing-arrow', 'H2 + O2 gives H2O', '"gives"'],
    ['H2 + O2 &rarr; H2O', 'equation/missing-arrow', 'H2 + O2 &rarr; H2O', 'markup'],
    ['H2 + O2 \\rightarrow H2O', 'equation/missing-arrow', 'H2 + O2 \\rightarrow H2O', 'typesetting'],
    ['H2O', 'equation/missing-arrow', 'H2O', undefined],
    ['H2 - O2', 'equation/missing-arrow', 'H2 - O2', undefined],
    ['H2 -> H -> H2', 'equation/several-arrows', '->', 'each stage'],
    ['H2 = H = H2', 'equation/several-arrows', '=', 'each stage'],
    ['CH2=CH2 + H2 -> C2H6', 'equation/several-arrows', '->', 'C2H4'],
    ['C2H6 -> CH2=CH2 + H2', 'equation/several-arrows', '=', 'C2H4'],
    ['H2 + O2 > H2O', 'equation/unknown-arrow', '>', '->'],
    ['H2 ->> H', 'equation/unknown-arrow', '->>', '->'],
    ['H2 =>> H', 'equation/unknown-arrow', '=>>', '->'],
    ['H2 <- H', 'equation/unknown-arrow', '<-', 'reactants on the left'],
    ['H2 <= H', 'equation/unknown-arrow', '<=', 'reactants on the left'],
    ['H2 ← H', 'equation/unknown-arrow', '←', 'reactants on the left'],
    ['H<sub>2</sub> -> H', 'equation/unknown-arrow', '<', 'markup'],
    ['Cl^->Cl2', 'equation/unknown-arrow', '>', 'space'],
    ['2Cl--> Cl2 + 2e-', 'equation/ambiguous-arrow', '-->', 'Cl^- ->'],
    ['-> H2', 'equation/empty-side', '', undefined],
    ['H2 -> ', 'equation/empty-side', ' ', undefined],
    ['->', 'equation/empty-side', '', undefined],
    ['H2 + + O2 -> H2O', 'equation/empty-term', '+', 'extra plus'],
    ['H2 ++ O2 -> H2O', 'equation/empty-term', '+', 'extra plus'],
    ['+ H2 -> H', 'equation/empty-term', '+', 'extra plus'],
    ['H2 + -> H', 'equation/empty-term', '+', 'extra plus'],
    ['H2 -> H +', 'equation/empty-term', '+', 'extra plus'],
    ['2 -> H2', 'equation/missing-formula', '2', undefined],
    ['H2 + 2 -> H2', 'equation/missing-formula', '2', undefined],
    ['0.5 -> H2', 'equation/missing-formula', '0.5', undefined],
    ['Zn^2+++2e^- -> Zn', 'equation/empty-term', '+', 'extra plus'],
    ['Na++ Cl- -> NaCl', 'equation/ambiguous-plus', '++', 'Na^+ + Cl^-'],
    ['Al+++3Cl- -> AlCl3', 'equation/ambiguous-plus', '+++', 'Ca^2+'],
    ['H2, O2 -> H2O', 'equation/missing-plus', ' ', 'H2 + O2?'],
    ['H2 and O2 -> H2O', 'equation/missing-plus', ' ', 'H2 + O2?'],
    ['CuSO4 (5 H2O) -> CuSO4', 'equation/missing-plus', ' ', undefined],
    ['NaCl HCl -> H2', 'equation/missing-plus', ' ', 'NaCl + HCl?'],
    ['2 NaCl  3HCl -> H2', 'equation/missing-plus', '  ', 'NaCl + 3HCl?'],
    ['H2O -> H2 O2', 'equation/missing-plus', ' ', 'H2 + O2?'],
    ['CaCO3 -Δ-> CaO + CO2', 'equation/condition', '-Δ', 'bare'],
    ['CaCO3-Δ-> CaO + CO2', 'equation/condition', 'CaCO3-Δ', 'bare'],
    ['CaCO3 --heat--> CaO + CO2', 'equation/condition', '--heat', 'bare'],
    ['CaCO3 ->[heat] CaO + CO2', 'equation/condition', '[heat]', 'bare'],
    ['CaCO3 -> [500 °C] CaO + CO2', 'equation/condition', '[500 °C]', 'bare'],
    ['CaCO3 →(Δ) CaO + CO2', 'equation/condition', '(Δ)', 'bare'],
    ['CaCO3 →(Δ)CaO + CO2', 'equation/condition', '(Δ)CaO', 'bare'],
    ['CaCO3 =Δ= CaO + CO2', 'equation/condition', '=Δ=', 'bare'],
    ['CaCO3 ==heat==> CaO + CO2', 'equation/condition', '==heat==>', 'bare'],
    ['C2H6O ->[H2SO4] C2H4 + H2O', 'equation/condition', '[H2SO4]', 'bare'],
    ['NH3 + O2 (cat.) -> NO + H2O', 'equation/condition', '(cat.)', 'bare'],
    ['NO2 + hν -> NO + O', 'equation/not-a-substance', 'hν', 'energy'],
    ['NO2 + hv -> NO + O', 'equation/not-a-substance', 'hv', 'energy'],
    ['N2 + 3H2 -> 2NH3 + 92 kJ', 'equation/not-a-substance', 'kJ', 'energy'],
    ['CaCO3 + heat -> CaO + CO2', 'equation/not-a-substance', 'heat', 'energy'],
    ['H + O2 + M -> HO2 + M', 'equation/not-a-substance', 'M', 'third body'],
    ['H+O2(+M)=HO2(+M)', 'equation/not-a-substance', '(+', 'third body'],
    ['H2O2 -> H2O + O2 (cat. MnO2)', 'equation/condition', '(cat. MnO2)', 'bare'],
    ['Fe + S -> FeS (in the presence of heat)', 'equation/condition', '(in the presence of heat)', 'bare'],
    ['n CO2 -> C', 'equation/coefficient-unreadable', 'n', 'numbers'],
    ['nCO2 -> C', 'equation/coefficient-unreadable', 'n', 'numbers'],
    ['? H2 + ? O2 -> H2O', 'equation/coefficient-unreadable', '?', 'numbers'],
    ['__ H2 -> H', 'equation/coefficient-unreadable', '__', 'numbers'],
    ['_Fe -> Fe', 'equation/coefficient-unreadable', '_', 'numbers'],
    ['2 mol H2 -> H', 'equation/coefficient-unreadable', 'mol', 'Leave out mol'],
    ['Zn - 2e- -> Zn2+', 'equation/coefficient-out-of-range', '- 2e-', 'other side'],
    ['Zn – 2 e– → Zn2+', 'equation/coefficient-out-of-range', '– 2 e–', 'other side'],
    ['2 3H2O -> H2', 'equation/coefficient-unreadable', '2 3', 'product'],
    ['2 3/2 O2 -> O3', 'equation/coefficient-unreadable', '2 3/2', 'product'],
    ['1/ O2 -> O3', 'equation/coefficient-unreadable', '1/', undefined],
    ['1/0 O2 -> O3', 'equation/coefficient-unreadable', '1/0', undefined],
    ['0 O2 -> O3', 'equation/coefficient-out-of-range', '0', 'Leave'],
    ['0.0 O2 -> O3', 'equation/coefficient-out-of-range', '0.0', 'Leave'],
    ['-2 O2 -> O3', 'equation/coefficient-out-of-range', '-2 O2', 'other side'],
    ['−2 O2 -> O3', 'equation/coefficient-out-of-range', '−2 O2', 'other side'],
    [`${'9'.repeat(101)} O2 -> O3`, 'equation/coefficient-out-of-range', '9'.repeat(101), undefined],
    [`1.${'9'.repeat(101)} O2 -> O3`, 'equation/coefficient-out-of-range', `1.${'9'.repeat(101)}`, undefined],
    [`1/${'9'.repeat(101)} O2 -> O3`, 'equation/coefficient-out-of-range', `1/${'9'.repeat(101)}`, undefined],
    ['0,5 O2 -> O3', 'equation/decimal-comma', '0,5', '0.5'],
    ['1,000 O2 -> O3', 'equation/decimal-comma', '1,000', '1.000'],
    ['CO2(s)↑ -> CO2', 'equation/state-contradicted', 'CO2(s)↑', undefined],
    ['H2 + Xx -> H2O', 'formula/unknown-symbol', 'Xx', undefined],
    ['cO2 -> H2O', 'formula/unknown-symbol', 'c', undefined],
    ['C (graphite) -> C', 'formula/unknown-state', '(graphite)', undefined],
    ['H2 + 2 cuso4 -> H2O', 'formula/unknown-symbol', 'cuso', undefined],
    ['Zn + Cu(OH2 -> H2O', 'formula/unclosed-bracket', '(', undefined],
    ['(2H2O) -> H2', 'formula/misplaced-number', '2', undefined],
    ['H2 + O0 -> H2O', 'formula/zero-count', '0', undefined],
    ['↑ -> H2O', 'formula/empty', '', undefined],
  ])('%s: %s', (text, code, at, hint) => {
    const error = refusal(() => parseEquation(text))
    expect([error.code, pointedAt(text, error)]).toEqual([code, at])
    if (code.startsWith('equation/')) expect(error.hint ?? '').toContain(hint === 'bare' ? 'arrow alone' : (hint ?? ''))
    if (hint === undefined && code.startsWith('equation/')) expect(error.hint).toBeUndefined()
  })

  it.each([undefined, null, 12, {}, [], true, 12n, Symbol('x')])('%s is no text', (value) => {
    expect(refusal(() => parseEquation(value as never)).code).toBe('equation/not-text')
  })

  it('shows in its message what a screen would not', () => {
    const error = refusal(() => parseEquation('Cu\u202eS\u0007\ud800\u2066\ufeffO4 -> H2'))
    expect(error.message).toContain(
      'In "Cu\\u{202E}S\\u{0007}\\u{D800}\\u{2066}\\u{FEFF}O4": "\\u{202E}" at character 3 is',
    )
  })

  it('a slash with nothing behind it, and one with zero', () => {
    expect(refusal(() => parseEquation('1/ O2 -> O3')).expected).toBe('a number after the slash')
    expect(refusal(() => parseEquation('1/0 O2 -> O3')).expected).toBe('a number above 0 after the slash')
  })

  it('a long number by its beginning', () => {
    expect(refusal(() => parseEquation(`${'9'.repeat(101)} O2 -> O3`)).found).toBe(`${'9'.repeat(20)}...`)
  })

  it('an empty side by its name', () => {
    expect(refusal(() => parseEquation('-> H2')).expected).toContain('left')
    expect(refusal(() => parseEquation('H2 ->')).expected).toContain('right')
  })

  it('what is just not too long, or just not too many, is read', () => {
    expect(parseEquation('H2 -> H2'.padEnd(20_000)).left).toHaveLength(1)
    expect(refusal(() => parseEquation('H2 -> H2'.padEnd(20_001))).code).toBe('equation/too-long')
    expect(parseEquation(`${Array(199).fill('H2').join('+')} -> H2`).left).toHaveLength(199)
  })

  it('a text that is too long, at once', () => {
    const error = refusal(() => parseEquation('H2 + '.repeat(300_000)))
    expect([error.code, error.found]).toEqual(['equation/too-long', '1500000 characters'])
  })

  it('a formula that is too long, with its place', () => {
    const text = `${'H'.repeat(10_001)} -> H2`
    const error = refusal(() => parseEquation(text))
    expect([error.code, error.position]).toEqual(['formula/too-long', { start: 0, end: 10_001 }])
  })

  it('too many terms', () => {
    const error = refusal(() => parseEquation(`${Array(200).fill('H2').join('+')} -> H2`))
    expect([error.code, error.found]).toEqual(['equation/too-many-species', '201 terms'])
  })

  it('a refusal is data for those who ask for it', () => {
    const outcome = tryParseEquation('H2 +')
    expect(outcome.ok ? undefined : outcome.error.code).toBe('equation/missing-arrow')
    expect(outcome.ok ? undefined : outcome.error.toJSON()).toMatchObject({
      name: 'EquationError',
      code: 'equation/missing-arrow',
    })
  })
})

describe('whatever comes in', () => {
  const pieces = [
    'H2',
    'O',
    'Fe',
    '+',
    '-',
    '>',
    '<',
    '=',
    '→',
    ' ',
    '(',
    ')',
    '[',
    ']',
    '^',
    '2',
    '.',
    ',',
    '½',
    '·',
    'e',
    'Δ',
    '↑',
    '(aq)',
  ]

  it('is read or refused with one of our errors', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(fc.constantFrom(...pieces)).map((all) => all.join('')),
        ),
        (text) => {
          const outcome = tryParseEquation(text)
          expect(outcome.ok || isSaltwrightError(outcome.error)).toBe(true)
        },
      ),
      { numRuns: 2000 },
    )
  })

  it('what is found is what stands at the place that is named', () => {
    const side = fc.array(fc.constantFrom(...pieces, 'Cu', 'SO4', '^2-', ' + ', 'n', '?', '__', '1/2', ', ', 'heat'), {
      maxLength: 5,
    })
    fc.assert(
      fc.property(side, side, (left, right) => {
        const text = `${left.join('')} -> ${right.join('')}`
        const outcome = tryParseEquation(text)
        if (outcome.ok || outcome.error.found === undefined) return
        const { code, found, position: { start, end } = { start: 0, end: 0 } } = outcome.error
        if (!/empty(-side|-part)?$|missing-plus/.test(code))
          expect([text, found]).toEqual([text, text.slice(start, end)])
      }),
      { numRuns: 2000 },
    )
  })

  it('takes time in proportion to its length', () => {
    for (const unit of ['+ ', '-', '=', '1', '(', ' ', '< ', '^', 'H + ', '2/', '·1 ', '1 ']) {
      const start = performance.now()
      tryParseEquation(unit.repeat(20_000 / unit.length))
      expect(performance.now() - start).toBeLessThan(200)
    }
  })
})
