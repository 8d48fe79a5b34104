import { describe, expect, it } from 'vitest'
import {
  checkBalance,
  ionicEquation,
  netIonicEquation,
  saltAnions,
  saltCations,
  strongAcids,
  weakSalts,
} from '../../src/equation/index.js'
import { ionsOfSalt } from '../../src/equation/salt-ions.js'
import { parseFormula } from '../../src/formula/index.js'
import { refusal } from './refusal.js'

describe('the complete ionic equation', () => {
  it.each([
    [
      'BaCl2(aq) + ZnSO4(aq) -> BaSO4(s) + ZnCl2(aq)',
      'Ba^2+(aq) + 2 Cl^-(aq) + Zn^2+(aq) + SO4^2-(aq) -> BaSO4(s) + Zn^2+(aq) + 2 Cl^-(aq)',
    ],
    [
      '(NH4)2SO4(aq) + BaCl2(aq) -> BaSO4(s) + 2 NH4Cl(aq)',
      '2 NH4^+(aq) + SO4^2-(aq) + Ba^2+(aq) + 2 Cl^-(aq) -> BaSO4(s) + 2 NH4^+(aq) + 2 Cl^-(aq)',
    ],
    [
      'CH3COONa(aq) + HCl(aq) -> CH3COOH(aq) + NaCl(aq)',
      'CH3COO^-(aq) + Na^+(aq) + H^+(aq) + Cl^-(aq) -> CH3COOH(aq) + Na^+(aq) + Cl^-(aq)',
    ],
    [
      'K4[Fe(CN)6](aq) + 2 ZnSO4(aq) -> Zn2[Fe(CN)6](s) + 2 K2SO4(aq)',
      '4 K^+(aq) + [Fe(CN)6]^4-(aq) + 2 Zn^2+(aq) + 2 SO4^2-(aq) -> Zn2[Fe(CN)6](s) + 4 K^+(aq) + 2 SO4^2-(aq)',
    ],
    [
      '[Co(NH3)6]Cl3(aq) + 3 AgNO3(aq) -> [Co(NH3)6](NO3)3(aq) + 3 AgCl(s)',
      '[Co(NH3)6]^3+(aq) + 3 Cl^-(aq) + 3 Ag^+(aq) + 3 NO3^-(aq) -> [Co(NH3)6]^3+(aq) + 3 NO3^-(aq) + 3 AgCl(s)',
    ],
    [
      'CuSO4·5H2O(aq) + BaCl2(aq) -> BaSO4(s) + CuCl2(aq) + 5 H2O(l)',
      'Cu^2+(aq) + SO4^2-(aq) + 5 H2O(l) + Ba^2+(aq) + 2 Cl^-(aq) -> BaSO4(s) + Cu^2+(aq) + 2 Cl^-(aq) + 5 H2O(l)',
    ],
    [
      '(NH4)2Fe(SO4)2(aq) + 2 NaOH(aq) -> Fe(OH)2(s) + Na2SO4(aq) + (NH4)2SO4(aq)',
      '2 NH4^+(aq) + Fe^2+(aq) + 2 SO4^2-(aq) + 2 Na^+(aq) + 2 OH^-(aq) -> Fe(OH)2(s) + 2 Na^+(aq) + 2 SO4^2-(aq) + 2 NH4^+(aq)',
    ],
    ['Ag^+(aq) + NaBr(aq) -> AgBr(s) + Na^+(aq)', 'Ag^+(aq) + Na^+(aq) + Br^-(aq) -> AgBr(s) + Na^+(aq)'],
    ['Ag^+ + NaCl(aq) -> AgCl(s) + Na^+', 'Ag^+ + Na^+(aq) + Cl^-(aq) -> AgCl(s) + Na^+'],
  ])('%s', (text, ionic) => {
    expect(ionicEquation(text).text).toBe(ionic)
    expect(checkBalance(ionicEquation(text)).balanced).toBe(true)
  })

  it('keeps the second hydron of sulfuric acid where asked to', () => {
    const text = 'ZnO(s) + 2 H2SO4(aq) -> Zn(HSO4)2(aq) + H2O(l)'
    expect(netIonicEquation(text, { sulfuricAcid: 'first' }).text).toBe('ZnO(s) + 2 H^+(aq) -> Zn^2+(aq) + H2O(l)')
    expect(netIonicEquation(text, { sulfuricAcid: 'both' }).text).toBe(
      'ZnO(s) + 4 H^+(aq) + 2 SO4^2-(aq) -> Zn^2+(aq) + 2 HSO4^-(aq) + H2O(l)',
    )
  })
})

describe('the net ionic equation', () => {
  it.each([
    ['HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)', 'H^+(aq) + OH^-(aq) -> H2O(l)'],
    ['H2SO4(aq) + 2 KOH(aq) -> K2SO4(aq) + 2 H2O', 'H^+(aq) + OH^-(aq) -> H2O'],
    ['CH3COOH(aq) + NaOH(aq) -> CH3COONa(aq) + H2O(l)', 'CH3COOH(aq) + OH^-(aq) -> CH3COO^-(aq) + H2O(l)'],
    ['NH3(aq) + HCl(aq) -> NH4Cl(aq)', 'NH3(aq) + H^+(aq) -> NH4^+(aq)'],
    ['NH4OH(aq) + HCl(aq) -> NH4Cl(aq) + H2O(l)', 'NH4OH(aq) + H^+(aq) -> NH4^+(aq) + H2O(l)'],
    ['Zn(s) + CuSO4(aq) -> ZnSO4(aq) + Cu(s)', 'Zn(s) + Cu^2+(aq) -> Zn^2+(aq) + Cu(s)'],
    ['Zn + 2 HCl(aq) -> ZnCl2(aq) + H2', 'Zn + 2 H^+(aq) -> Zn^2+(aq) + H2'],
    ['CaCO3(s) + 2 HNO3(aq) -> Ca(NO3)2(aq) + CO2(g) + H2O(l)', 'CaCO3(s) + 2 H^+(aq) -> Ca^2+(aq) + CO2(g) + H2O(l)'],
    ['2 FeCl3(aq) + 3 Na2S(aq) -> Fe2S3(s) + 6 NaCl(aq)', '2 Fe^3+(aq) + 3 S^2-(aq) -> Fe2S3(s)'],
    ['Hg2(NO3)2(aq) + 2 NaCl(aq) -> Hg2Cl2(s) + 2 NaNO3(aq)', 'Hg2^2+(aq) + 2 Cl^-(aq) -> Hg2Cl2(s)'],
    ['Hg(NO3)2(aq) + 2 NaCl(aq) -> HgCl2(aq) + 2 NaNO3(aq)', 'Hg^2+(aq) + 2 Cl^-(aq) -> HgCl2(aq)'],
    [
      '2 Na[Al(OH)4](aq) + H2SO4(aq) -> 2 Al(OH)3(s) + Na2SO4(aq) + 2 H2O(l)',
      '[Al(OH)4]^-(aq) + H^+(aq) -> Al(OH)3(s) + H2O(l)',
    ],
    ['[Cu(NH3)4](OH)2(aq) + 2 HCl(aq) -> [Cu(NH3)4]Cl2(aq) + 2 H2O(l)', 'OH^-(aq) + H^+(aq) -> H2O(l)'],
    ['UO2(NO3)2(aq) + 2 NaOH(aq) -> UO2(OH)2(s) + 2 NaNO3(aq)', 'UO2^2+(aq) + 2 OH^-(aq) -> UO2(OH)2(s)'],
    [
      '(CH3COO)2Ca(aq) + H2C2O4(aq) -> CaC2O4(s) + 2 CH3COOH(aq)',
      '2 CH3COO^-(aq) + Ca^2+(aq) + H2C2O4(aq) -> CaC2O4(s) + 2 CH3COOH(aq)',
    ],
    ['3 MgCl2(aq) + 2 K3PO4(aq) -> Mg3(PO4)2(s) + 6 KCl(aq)', '3 Mg^2+(aq) + 2 PO4^3-(aq) -> Mg3(PO4)2(s)'],
    [
      'Pb(CH3COO)2(aq) + H2S(g) -> PbS(s) + 2 CH3COOH(aq)',
      'Pb^2+(aq) + 2 CH3COO^-(aq) + H2S(g) -> PbS(s) + 2 CH3COOH(aq)',
    ],
    ['Al(OH)3(aq) + 3 HCl(aq) -> AlCl3(aq) + 3 H2O(l)', 'Al(OH)3(aq) + 3 H^+(aq) -> Al^3+(aq) + 3 H2O(l)'],
    ['C12H22O11(aq) + H2O(l) -> 4 C2H5OH(aq) + 4 CO2(g)', 'C12H22O11(aq) + H2O(l) -> 4 C2H5OH(aq) + 4 CO2(g)'],
  ])('%s', (text, net) => {
    expect(netIonicEquation(text).text).toBe(net)
    expect(checkBalance(netIonicEquation(text)).balanced).toBe(true)
  })
})

describe('refusals', () => {
  it.each([
    ['KCl(aq) + NaNO3(aq) -> KNO3(aq) + NaCl(aq)', 'equation/nothing-left', 'nothing reacts'],
    ['BaCl2(aq) + ZnSO4(aq) -> BaSO4(s) + Zn^2+(aq) + Cl^-(aq)', 'equation/unbalanced', 'not balanced'],
    ['BaCl2 + ZnSO4 -> BaSO4 + ZnCl2', 'equation/states-missing', 'BaCl2, ZnSO4, BaSO4 and ZnCl2 has no state'],
    ['HCl + NaOH(aq) -> NaCl(aq) + H2O', 'equation/states-missing', 'HCl has no state'],
    ['CaCO3(s) -> CaO(s) + CO2(g)', 'equation/states-missing', 'Nothing is marked as dissolved'],
    ['NaAlO2(aq) + HCl(aq) + H2O(l) -> Al(OH)3(s) + NaCl(aq)', 'equation/unknown-electrolyte', 'NaAlO2(aq)'],
    ['Ce2(CO3)3(aq) + 6 HCl(aq) -> 2 CeCl3(aq) + 3 H2O(l) + 3 CO2(g)', undefined, ''],
    [
      '[Co(NH3)6][Cr(CN)6](aq) + 3 NaCl(aq) -> [Co(NH3)6]Cl3(aq) + Na3[Cr(CN)6](aq)',
      'equation/unknown-electrolyte',
      '[Co(NH3)6][Cr(CN)6](aq)',
    ],
    ['Fe[Co(CN)6](aq) + H2O(l) -> Fe[Co(CN)6]·H2O(s)', 'equation/unknown-electrolyte', 'Fe[Co(CN)6](aq)'],
    ['CoI2·2NH3(aq) -> CoI2(aq) + 2 NH3(aq)', 'equation/unknown-electrolyte', 'CoI2·2NH3(aq)'],
    ['ZnSO4·xH2O(s) -> ZnSO4(aq) + H2O(l)', 'equation/unknown-count', 'xH2O'],
    ['H2', 'equation/missing-arrow', 'arrow'],
  ])('%s: %s', (text, code, message) => {
    if (code === undefined) return expect(ionicEquation(text).text).toContain('Ce^3+')
    const error = refusal(() => netIonicEquation(text))
    expect(error.code).toBe(code)
    expect(error.message).toContain(message)
  })

  it('suggest the balanced equation', () => {
    const error = refusal(() => ionicEquation('HCl(aq) + Ba(OH)2(aq) -> BaCl2(aq) + H2O(l)'))
    expect(error.hint).toBe('2 HCl(aq) + Ba(OH)2(aq) -> BaCl2(aq) + 2 H2O(l)')
  })

  it.each([{ sulfuricAcid: 'none' }, null, 'both'])('options %j', (options) => {
    expect(refusal(() => ionicEquation('H -> H', options as never)).code).toBe('equation/unknown-option')
  })
})

describe('the ions of a salt', () => {
  it.each([
    ['NaCl', 'Na^+, Cl^-'],
    ['Na2SO4', '2 Na^+, SO4^2-'],
    ['Al2(SO4)3', '2 Al^3+, 3 SO4^2-'],
    ['KAl(SO4)2', 'K^+, Al^3+, 2 SO4^2-'],
    ['FeCl2', 'Fe^2+, 2 Cl^-'],
    ['FeCl3', 'Fe^3+, 3 Cl^-'],
    ['CeCl3', 'Ce^3+, 3 Cl^-'],
    ['K2Cr2O7', '2 K^+, Cr2O7^2-'],
    ['CrCl3', 'Cr^3+, 3 Cl^-'],
    ['KMnO4', 'K^+, MnO4^-'],
    ['VOSO4', 'VO^2+, SO4^2-'],
    ['NH4NO3', 'NH4^+, NO3^-'],
    ['NH4VO3', 'NH4^+, VO3^-'],
    ['NaHCO3', 'Na^+, HCO3^-'],
    ['K3[Fe(C2O4)3]', '3 K^+, [Fe(C2O4)3]^3-'],
    ['[Cr(H2O)6]Cl3', '[Cr(H2O)6]^3+, 3 Cl^-'],
    ['HCOOK', 'HCOO^-, K^+'],
    ['CH3COONH4', 'CH3COO^-, NH4^+'],
    ['H2O', 'none'],
    ['NaOO', 'none'],
    ['FeCl', 'none'],
    ['Fe3O4', 'none'],
    ['Na', 'none'],
    ['NaCl2', 'none'],
    ['(NaCl)2', 'none'],
    ['(Na', 'none'],
    ['Zn(OH)2', 'none'],
    ['Na(SO4', 'none'],
    ['Ca(SO4', 'none'],
    ['Ca(SO4]', 'none'],
    ['K3[Fe(C2O4)3]2', 'none'],
    ['[Fe(CN)6]Cl0', 'none'],
  ])('%s: %s', (salt, ions) => {
    const found = ionsOfSalt(salt)?.map(({ ion, count }) => `${count === 1 ? '' : `${count} `}${ion}`)
    expect(found?.join(', ') ?? 'none').toBe(ions)
  })
})

describe('the tables', () => {
  it('have a source on every row, no row twice, and formulas that can be read', () => {
    const rows = [...strongAcids, ...saltCations, ...saltAnions, ...weakSalts]
    expect(rows.filter(({ source }) => source.length < 10)).toEqual([])
    for (const table of [saltCations, saltAnions]) {
      const written = table.map((row) => row.written)
      expect(new Set(written).size).toBe(written.length)
    }
    for (const { formula } of [...strongAcids, ...weakSalts]) expect(parseFormula(formula).charge).toBe(0)
    for (const { anion } of strongAcids) expect(parseFormula(anion).charge).toBeLessThan(0)
  })

  it('balance every strong acid', () => {
    for (const { formula, anion, hydrons } of strongAcids) {
      expect(checkBalance(`${formula} -> ${hydrons} H^+ + ${anion}`).balanced).toBe(true)
    }
  })

  it('find every salt of a cation and an anion', () => {
    for (const { written, charges, strongBase } of saltCations) {
      for (const { written: anion, charge } of saltAnions.filter((row) => strongBase || row.written !== 'OH')) {
        const [plus] = charges as readonly [number]
        const of = (ion: string, count: number): string => (count === 1 ? ion : `(${ion})${count}`)
        const ions = ionsOfSalt(`${of(written, -charge)}${of(anion, plus)}`)
        expect(ions?.map(({ count }) => count)).toEqual([-charge, plus])
      }
    }
  })
})
