import { describe, expect, it } from 'vitest'
import { checkBalance, completeHalfReaction, completeRedox, type Medium } from '../../src/equation/index.js'
import { refusal } from './refusal.js'

describe('half-reactions', () => {
  it.each<[string, Medium, string]>([
    ['MnO4^- -> Mn^2+', 'acid', 'MnO4^- + 8 H^+ + 5 e^- -> Mn^2+ + 4 H2O'],
    ['MnO4^- -> MnO2', 'base', 'MnO4^- + 2 H2O + 3 e^- -> MnO2 + 4 OH^-'],
    ['MnO4^- -> MnO4^2-', 'base', 'MnO4^- + e^- -> MnO4^2-'],
    ['Cr2O7^2- -> Cr^3+', 'acid', 'Cr2O7^2- + 14 H^+ + 6 e^- -> 2 Cr^3+ + 7 H2O'],
    ['Cr(OH)3 -> CrO4^2-', 'base', 'Cr(OH)3 + 5 OH^- -> CrO4^2- + 4 H2O + 3 e^-'],
    ['Fe(OH)2 -> Fe(OH)3', 'base', 'Fe(OH)2 + OH^- -> Fe(OH)3 + e^-'],
    ['Fe^2+ -> Fe^3+', 'acid', 'Fe^2+ -> Fe^3+ + e^-'],
    ['Cl^- -> Cl2', 'acid', '2 Cl^- -> Cl2 + 2 e^-'],
    ['S2O3^2- -> S4O6^2-', 'acid', '2 S2O3^2- -> S4O6^2- + 2 e^-'],
    ['H2C2O4 -> CO2', 'acid', 'H2C2O4 -> 2 CO2 + 2 H^+ + 2 e^-'],
    ['C2H5OH -> CH3COOH', 'acid', 'C2H5OH + H2O -> CH3COOH + 4 H^+ + 4 e^-'],
    ['C2H5OH -> CO2', 'base', 'C2H5OH + 12 OH^- -> 2 CO2 + 9 H2O + 12 e^-'],
    ['NO3^- -> NH4^+', 'acid', 'NO3^- + 10 H^+ + 8 e^- -> NH4^+ + 3 H2O'],
    ['NO3^- -> NH3', 'base', 'NO3^- + 6 H2O + 8 e^- -> NH3 + 9 OH^-'],
    ['H2O2 -> O2', 'acid', 'H2O2 -> O2 + 2 H^+ + 2 e^-'],
    ['H2O2 -> O2', 'base', 'H2O2 + 2 OH^- -> O2 + 2 H2O + 2 e^-'],
    ['H2O2 -> H2O', 'acid', 'H2O2 + 2 H^+ + 2 e^- -> 2 H2O'],
    ['O2 -> H2O', 'acid', 'O2 + 4 H^+ + 4 e^- -> 2 H2O'],
    ['O2 -> OH^-', 'base', 'O2 + 2 H2O + 4 e^- -> 4 OH^-'],
    ['OH^- -> O2', 'base', '4 OH^- -> O2 + 2 H2O + 4 e^-'],
    ['H2O -> O2', 'acid', '2 H2O -> O2 + 4 H^+ + 4 e^-'],
    ['H^+ -> H2', 'acid', '2 H^+ + 2 e^- -> H2'],
    ['H2O -> H2', 'base', '2 H2O + 2 e^- -> H2 + 2 OH^-'],
    ['H2 -> H^+', 'acid', 'H2 -> 2 H^+ + 2 e^-'],
    ['H3O^+ -> H2', 'acid', '2 H3O^+ + 2 e^- -> H2 + 2 H2O'],
    ['MnO2 + H3O^+ -> Mn^2+ + H2O', 'acid', 'MnO2 + 4 H3O^+ + 2 e^- -> Mn^2+ + 6 H2O'],
    ['e^- + PbO2 + SO4^2- -> PbSO4', 'acid', '2 e^- + PbO2 + SO4^2- + 4 H^+ -> PbSO4 + 2 H2O'],
    ['MnO4^-(aq) -> Mn^2+(aq)', 'acid', 'MnO4^-(aq) + 8 H^+(aq) + 5 e^- -> Mn^2+(aq) + 4 H2O(l)'],
    ['MnO4^-(aq) -> MnO2(s)', 'base', 'MnO4^-(aq) + 2 H2O(l) + 3 e^- -> MnO2(s) + 4 OH^-(aq)'],
    ['IO3^- <=> I2', 'acid', '2 IO3^- + 12 H^+ + 10 e^- <=> I2 + 6 H2O'],
  ])('%s in %s: %s', (skeleton, medium, completed) => {
    const half = completeHalfReaction(skeleton, { medium })
    expect(half.text).toBe(completed)
    expect(checkBalance(half)).toMatchObject({ balanced: true, lowestTerms: true })
    expect(completeHalfReaction(half, { medium }).text).toBe(completed)
  })
})

describe('redox equations', () => {
  it.each<[string, Medium, string, number | undefined]>([
    ['MnO4^- + Fe^2+ -> Mn^2+ + Fe^3+', 'acid', 'MnO4^- + 5 Fe^2+ + 8 H^+ -> Mn^2+ + 5 Fe^3+ + 4 H2O', 5],
    ['Cr2O7^2- + Fe^2+ -> Cr^3+ + Fe^3+', 'acid', 'Cr2O7^2- + 6 Fe^2+ + 14 H^+ -> 2 Cr^3+ + 6 Fe^3+ + 7 H2O', 6],
    ['MnO4^- + H2C2O4 -> Mn^2+ + CO2', 'acid', '2 MnO4^- + 5 H2C2O4 + 6 H^+ -> 2 Mn^2+ + 10 CO2 + 8 H2O', 10],
    ['MnO4^- + H2O2 -> Mn^2+ + O2', 'acid', '2 MnO4^- + 5 H2O2 + 6 H^+ -> 2 Mn^2+ + 5 O2 + 8 H2O', 10],
    ['MnO4^- + CN^- -> MnO2 + CNO^-', 'base', '2 MnO4^- + 3 CN^- + H2O -> 2 MnO2 + 3 CNO^- + 2 OH^-', 6],
    ['Cr(OH)3 + ClO^- -> CrO4^2- + Cl^-', 'base', '2 Cr(OH)3 + 3 ClO^- + 4 OH^- -> 2 CrO4^2- + 3 Cl^- + 5 H2O', 6],
    ['Zn + NO3^- -> [Zn(OH)4]^2- + NH3', 'base', '4 Zn + NO3^- + 6 H2O + 7 OH^- -> 4 [Zn(OH)4]^2- + NH3', 8],
    [
      'As2S3 + NO3^- -> H3AsO4 + SO4^2- + NO',
      'acid',
      '3 As2S3 + 28 NO3^- + 4 H2O + 10 H^+ -> 6 H3AsO4 + 9 SO4^2- + 28 NO',
      84,
    ],
    ['Ag + CN^- + O2 -> [Ag(CN)2]^-', 'base', '4 Ag + 8 CN^- + O2 + 2 H2O -> 4 [Ag(CN)2]^- + 4 OH^-', 4],
    ['NO3^- + H2 -> NO', 'base', '2 NO3^- + 3 H2 -> 2 NO + 2 H2O + 2 OH^-', 6],
    ['SO3^2- + Cu(OH)2 -> SO4^2- + CuOH', 'base', 'SO3^2- + 2 Cu(OH)2 -> SO4^2- + 2 CuOH + H2O', 2],
    // one species oxidises and reduces itself, or two meet in one
    ['Cl2 -> Cl^- + ClO3^-', 'base', '3 Cl2 + 6 OH^- -> 5 Cl^- + ClO3^- + 3 H2O', 5],
    ['MnO4^2- -> MnO4^- + MnO2', 'acid', '3 MnO4^2- + 4 H^+ -> 2 MnO4^- + MnO2 + 2 H2O', 2],
    ['P4 -> PH3 + H2PO2^-', 'base', 'P4 + 3 H2O + 3 OH^- -> PH3 + 3 H2PO2^-', 3],
    ['IO3^- + I^- -> I2', 'acid', 'IO3^- + 5 I^- + 6 H^+ -> 3 I2 + 3 H2O', 5],
    ['MnO4^- + Mn^2+ -> MnO2', 'base', '2 MnO4^- + 3 Mn^2+ + 4 OH^- -> 5 MnO2 + 2 H2O', 6],
    // cannot be taken apart
    ['Cu + HNO3 -> Cu(NO3)2 + NO', 'acid', '3 Cu + 8 HNO3 -> 3 Cu(NO3)2 + 2 NO + 4 H2O', undefined],
    ['KMnO4 + HCl -> MnCl2 + Cl2 + KCl', 'acid', '2 KMnO4 + 16 HCl -> 2 MnCl2 + 5 Cl2 + 2 KCl + 8 H2O', undefined],
    ['H2O2 -> O2', 'acid', '2 H2O2 -> O2 + 2 H2O', undefined],
    ['NO2 -> NO3^- + NO', 'acid', '3 NO2 + H2O -> 2 NO3^- + NO + 2 H^+', 2],
    ['H3O^+ + Zn -> Zn^2+ + H2', 'acid', '2 H3O^+ + Zn -> Zn^2+ + H2 + 2 H2O', 2],
    [
      'MnO4^-(aq) + Fe^2+(aq) -> Mn^2+(aq) + Fe^3+(aq)',
      'acid',
      'MnO4^-(aq) + 5 Fe^2+(aq) + 8 H^+(aq) -> Mn^2+(aq) + 5 Fe^3+(aq) + 4 H2O(l)',
      5,
    ],
  ])('%s in %s', (skeleton, medium, completed, electrons) => {
    const redox = completeRedox(skeleton, { medium })
    expect([redox.equation.text, redox.electrons]).toEqual([completed, electrons])
    expect(checkBalance(redox.equation)).toMatchObject({ balanced: true, lowestTerms: true })
    expect(completeRedox(redox.equation, { medium }).equation.text).toBe(completed)
  })

  it('come with their half-reactions, in the medium', () => {
    const { oxidation, reduction } = completeRedox('Cr(OH)3 + ClO^- -> CrO4^2- + Cl^-', { medium: 'base' })
    expect(oxidation?.text).toBe('Cr(OH)3 + 5 OH^- -> CrO4^2- + 4 H2O + 3 e^-')
    expect(reduction?.text).toBe('ClO^- + H2O + 2 e^- -> Cl^- + 2 OH^-')
    const whole = completeRedox('Cu + HNO3 -> Cu(NO3)2 + NO', { medium: 'acid' })
    expect([whole.oxidation, whole.reduction]).toEqual([undefined, undefined])
  })
})

describe('refusals', () => {
  it.each<[string, Medium, string]>([
    ['Fe^2+ -> Cu', 'acid', 'equation/impossible'],
    ['Fe -> Fe', 'acid', 'equation/impossible'],
    ['O3 -> O2', 'acid', 'equation/underdetermined'],
    ['MnO4^- + NO2 -> Mn^2+ + NO', 'acid', 'equation/underdetermined'],
    ['OH^- + MnO4^- -> Mn^2+', 'acid', 'equation/medium-contradicted'],
    ['H^+ + MnO4^- -> Mn^2+', 'base', 'equation/medium-contradicted'],
    ['H3O^+ + MnO4^- -> Mn^2+', 'base', 'equation/medium-contradicted'],
    ['MnO4^- -> Mn^2+', 'neutral' as never, 'equation/unknown-option'],
    ['MnO4^- -> Mn^2+', undefined as never, 'equation/unknown-option'],
    ['CuSO4·xH2O -> Cu', 'acid', 'equation/unknown-count'],
    ['MnO4^-', 'acid', 'equation/missing-arrow'],
    ['H2O -> OH^-', 'base', 'equation/impossible'],
  ])('half-reaction %s in %s: %s', (skeleton, medium, code) => {
    expect(refusal(() => completeHalfReaction(skeleton, { medium })).code).toBe(code)
  })

  it.each<[string, Medium, string]>([
    ['MnO4^- + Fe^3+ -> Mn^2+ + Fe^2+', 'acid', 'equation/not-redox'],
    ['Zn + Fe^2+ -> Zn^2+ + Fe^3+', 'acid', 'equation/not-redox'],
    ['MnO4^- + Fe^2+ + Cl^- -> Mn^2+ + Fe^3+ + Cl2', 'acid', 'equation/underdetermined'],
    ['MnO4^- + Fe^2+ -> Mn^2+', 'acid', 'equation/impossible'],
    ['ClO2 -> Cl^- + ClO3^- + ClO4^-', 'base', 'equation/underdetermined'],
    ['Cl^- + ClO3^- + ClO4^- -> Cl2', 'acid', 'equation/underdetermined'],
    ['Cl2 + ClO2 -> Cl^- + ClO3^-', 'base', 'equation/underdetermined'],
    ['OH^- + Cl2 -> Cl^- + ClO^-', 'acid', 'equation/medium-contradicted'],
    ['Cl2 -> Cl^- + ClO^-', 'neutral' as never, 'equation/unknown-option'],
    ['ZnSO4·xH2O -> Zn', 'acid', 'equation/unknown-count'],
    ['Cl2', 'acid', 'equation/missing-arrow'],
  ])('redox %s in %s: %s', (skeleton, medium, code) => {
    expect(refusal(() => completeRedox(skeleton, { medium })).code).toBe(code)
  })

  it.each([undefined, null, 'acid'])('options %s', (options) => {
    expect(refusal(() => completeHalfReaction('O2 -> H2O', options as never)).code).toBe('equation/unknown-option')
    expect(refusal(() => completeRedox('O2 -> H2O', options as never)).code).toBe('equation/unknown-option')
  })

  it('of a half-reaction speak of electrons, of a whole one they do not', () => {
    const half = refusal(() => completeHalfReaction('O3 -> O2', { medium: 'acid' }))
    expect(half.found).toBe('O3 -> O2 + H2O + H^+ + e^-')
    const whole = refusal(() => completeRedox('O3 -> O2 + NaCl', { medium: 'acid' }))
    expect(whole.found).toBe('O3 -> O2 + NaCl + H2O + H^+')
  })

  it('name both half-reactions where electrons move one way', () => {
    const { message } = refusal(() => completeRedox('MnO4^- + Fe^3+ -> Mn^2+ + Fe^2+', { medium: 'acid' }))
    expect(message).toContain('MnO4^- + 8 H^+ + 5 e^- -> Mn^2+ + 4 H2O; Fe^3+ + e^- -> Fe^2+')
  })

  it('show the medium that fits', () => {
    const error = refusal(() => completeHalfReaction('OH^- -> O2', { medium: 'acid' }))
    expect([error.found, error.hint, error.path]).toEqual(['OH^-', "medium: 'base'", ['medium']])
    expect(refusal(() => completeHalfReaction('H^+ -> H2', { medium: 'base' })).hint).toBe("medium: 'acid'")
  })
})
