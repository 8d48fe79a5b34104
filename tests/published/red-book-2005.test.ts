import { describe, expect, it } from 'vitest'
import {
  formatFormula,
  formulaFromName,
  parseFormula,
  systematicName,
  tryParseFormula,
} from '../../src/formula/index.js'
import { atoms } from '../formula/atoms.js'

// Nomenclature of Inorganic Chemistry, IUPAC Recommendations 2005, ed. N. G. Connelly, T. Damhus, R. M. Hartshorn, A. T. Hutton,
// RSC Publishing, Cambridge 2005. Pages read in a stored copy; signs that the copy had lost are restored.

describe('IUPAC Red Book 2005, names that are written as printed', () => {
  it.each([
    { at: 'IR-2.6 example 1', formula: 'NaCl', name: 'sodium chloride' },
    { at: 'IR-2.6 example 2', formula: 'NaTl(NO3)2', name: 'sodium thallium(I) dinitrate' },
    { at: 'IR-2.6 example 5', formula: '3CdSO4·8H2O', name: 'cadmium sulfate—water (3/8)' },
    { at: 'IR-2.8.2 example 4', formula: '[Fe(H2O)6]^2+', name: 'hexaaquairon(II)', ion: true },
    { at: 'IR-2.8.2 example 5', formula: '[FeO4]^2-', name: 'tetraoxidoferrate(VI)', ion: true },
    { at: 'IR-5.4.2.1 example 5', formula: 'Ca(NO3)2', name: 'calcium nitrate' },
    { at: 'IR-5.4.2.1 example 10', formula: 'Ca2P2O7', name: 'calcium diphosphate' },
    { at: 'IR-5.5 example 4', formula: 'CaCl2·8NH3', name: 'calcium chloride—ammonia (1/8)' },
    { at: 'IR-5.5 example 7', formula: '2Na2CO3·3H2O2', name: 'sodium carbonate—hydrogen peroxide (2/3)' },
    { at: 'IR-5.5 example 8', formula: 'Co2O3·nH2O', name: 'cobalt(III) oxide—water (1/n)' },
    { at: 'IR-5.5 example 9', formula: 'Na2SO4·10H2O', name: 'sodium sulfate decahydrate' },
    {
      at: 'IR-5.5 example 10',
      formula: 'Al2(SO4)3·K2SO4·24H2O',
      name: 'aluminium sulfate—potassium sulfate—water (1/1/24)',
    },
    { at: 'IR-5.5 example 11', formula: 'AlK(SO4)2·12H2O', name: 'aluminium potassium bis(sulfate) dodecahydrate' },
    { at: 'IR-5.5 example 12', formula: '3CdSO4·8H2O', name: 'cadmium sulfate—water (3/8)' },
    { at: 'IR-9.2.2.4 example 1', formula: 'K4[Fe(CN)6]', name: 'potassium hexacyanidoferrate(II)' },
    { at: 'IR-9.2.2.4 example 2', formula: '[Co(NH3)6]Cl3', name: 'hexaamminecobalt(III) chloride' },
    {
      at: 'IR-9.2.2.4 example 4',
      formula: '[CoCl(NH3)4(NO2)]Cl',
      name: 'tetraamminechloridonitrito-κN-cobalt(III) chloride',
    },
    { at: 'IR-9.2.2.4 example 7', formula: 'K2[PdCl4]', name: 'potassium tetrachloridopalladate(II)' },
  ])('$at: $formula is $name', ({ formula, name, ion = false }) => {
    expect(systematicName(formula)).toBe(ion ? `${name} ion` : name)
  })
})

describe('IUPAC Red Book 2005, names that are read', () => {
  it.each([
    { at: 'IR-2.6 example 2', name: 'sodium thallium(I) dinitrate', formula: 'NaTl(NO3)2' },
    { at: 'IR-5.4.2.1 example 9', name: 'tricalcium bis(phosphate)', formula: 'Ca3(PO4)2' },
    { at: 'IR-5.4.2.1 example 11', name: 'calcium bis(hydrogencarbonate)', formula: 'Ca(HCO3)2' },
    { at: 'IR-5.4.2.2 example 1', name: 'iron(2+) sulfate', formula: 'FeSO4' },
    { at: 'IR-5.4.2.2 example 2', name: 'iron(3+) sulfate', formula: 'Fe2(SO4)3' },
    { at: 'IR-5.4.2.2 example 3', name: 'dioxidouranium(1+) sulfate', formula: '(UO2)2SO4' },
    { at: 'IR-5.4.2.2 example 4', name: 'dioxidouranium(2+) sulfate', formula: 'UO2SO4' },
    { at: 'IR-5.4.2.2 example 5', name: 'potassium hexacyanidoferrate(4−)', formula: 'K4[Fe(CN)6]' },
    { at: 'IR-5.4.2.2 example 6', name: 'hexaamminecobalt(3+) chloride sulfate', formula: '[Co(NH3)6]ClSO4' },
    { at: 'IR-9.2.2.4 example 3', name: 'pentaamminechloridocobalt(2+) chloride', formula: '[CoCl(NH3)5]Cl2' },
    { at: 'IR-9.2.2.4 example 8', name: 'potassium pentachloridonitridoosmate(2−)', formula: 'K2[OsCl5N]' },
    {
      at: 'IR-9.2.2.4 example 9',
      name: 'sodium amminebromidochloridonitrito-κN-platinate(1−)',
      formula: 'Na[PtBrCl(NH3)(NO2)]',
    },
    {
      at: 'IR-9.2.2.4 example 11',
      name: 'tris(ethane-1,2-diamine)cobalt(III) trichloride',
      formula: '[Co(C2H8N2)3]Cl3',
    },
    {
      at: 'IR-5.5 example 10',
      name: 'aluminium sulfate—potassium sulfate—water (1/1/24)',
      formula: 'Al2(SO4)3·K2SO4·24H2O',
    },
  ])('$at: $name is $formula', ({ name, formula }) => expect(formulaFromName(name).text).toBe(formula))
})

describe('IUPAC Red Book 2005, formulas that are read', () => {
  it.each([
    { at: 'IR-2.2, page 21, example 2', formula: '[Te(N3)6]', of: 'Te N18' },
    { at: 'IR-2.2, page 21, example 6', formula: '[Co(NH3)5(ONO)][PF6]2', of: 'Co N6 H15 O2 P2 F12' },
    { at: 'IR-2.2, page 21, example 10', formula: '(Mg)[Cr2]O4', of: 'Mg Cr2 O4' },
    { at: 'IR-2.6 example 4', formula: '[Os3(CO)12]', of: 'Os3 C12 O12' },
    { at: 'IR-2.8.1 example 7', formula: 'Na2CO3·10H2O', of: 'Na2 C O13 H20' },
    { at: 'IR-2.8.1 example 8', formula: '8WO3·9Nb2O5', of: 'W8 O69 Nb18' },
    { at: 'IR-4.4.3.4 example 3', formula: 'FeO(OH)', of: 'Fe O2 H' },
    { at: 'IR-4.4.3.4 example 5', formula: 'Li[H2PO4]', of: 'Li H2 P O4' },
    { at: 'IR-4.4.3.4 example 6', formula: 'NaNH4[HPO4]', of: 'Na N H5 P O4' },
    { at: 'IR-4.4.3.4 example 7', formula: 'Na[HPHO3]', of: 'Na H2 P O3' },
    { at: 'IR-4.4.3.4 example 9', formula: 'K5[CuSb2]', of: 'K5 Cu Sb2' },
    { at: 'IR-4.4.3.4 example 10', formula: 'H[AuCl4]', of: 'H Au Cl4' },
    { at: 'IR-4.4.3.5 example 5', formula: '8H2S·46H2O', of: 'H108 S8 O46' },
    { at: 'IR-4.4.3.5 example 6', formula: 'C6H6·NH3·Ni(CN)2', of: 'C8 H9 N3 Ni' },
    { at: 'IR-4.4.3.5 example 7', formula: 'BF3·2H2O', of: 'B F3 H4 O2' },
    { at: 'IR-5.5 example 2', formula: '8Kr·46H2O', of: 'Kr8 H92 O46' },
    { at: 'IR-7.2 example 13', formula: '[Al(POCl3)6]^3+', of: 'Al P6 O6 Cl18' },
    { at: 'IR-7.2 example 14', formula: '[Al(OH2)6]^3+', of: 'Al O6 H12' },
  ])('$at: $formula holds $of', ({ formula, of }) => {
    expect(atoms(parseFormula(formula))).toBe(of)
    expect(parseFormula(formula).notes).toEqual([])
    expect(formatFormula(formula, 'plain')).toBe(formula)
  })

  it.each([
    { at: 'IR-2.2, page 21, example 9', formula: 'K(Br,Cl)', code: 'formula/alternatives' },
    { at: 'IR-2.2, page 21, example 12', formula: 'LaNi5Hx', code: 'formula/placeholder' },
    { at: 'IR-2.2, page 21, example 7', formula: '[Co(en)3]^3+', code: 'formula/abbreviation' },
    { at: 'IR-2.8.2 example 2', formula: '[Mn^VIIO4]^-', code: 'formula/oxidation-number' },
  ])('$at: $formula has no definite composition here: $code', ({ formula, code }) => {
    const outcome = tryParseFormula(formula)
    expect(!outcome.ok && outcome.error.code).toBe(code)
  })
})
