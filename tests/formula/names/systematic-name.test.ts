import { describe, expect, it } from 'vitest'
import { systematicName, trySystematicName } from '../../../src/formula/index.js'
import { bothWays } from './both-ways.js'

describe('the systematic name', () => {
  it.each(bothWays)('of %s is %s', (formula, name) => expect(systematicName(formula)).toBe(name))

  it.each([
    // oxoanions that do not join, and that do
    ['KMg(NO3)3', 'magnesium potassium trinitrate'],
    ['KMg(NO2)3', 'magnesium potassium trinitrite'],
    ['KMg(ClO3)3', 'magnesium potassium trichlorate'],
    ['KMg(ClO4)3', 'magnesium potassium triperchlorate'],
    ['KMg(BrO3)3', 'magnesium potassium tribromate'],
    ['KMg(IO3)3', 'magnesium potassium triiodate'],
    ['KMg(HCOO)3', 'magnesium potassium triformate'],
    ['KMg(CH3COO)3', 'magnesium potassium triacetate'],
    ['KMg(SCN)3', 'magnesium potassium trithiocyanate'],
    ['KAl(SO4)2', 'aluminium potassium bis(sulfate)'],
    // cations and anions with oxygen
    ['UO2SO4', 'dioxidouranium(VI) sulfate'],
    ['NpO2Cl2', 'dioxidoneptunium(VI) chloride'],
    ['PuO2Cl2', 'dioxidoplutonium(VI) chloride'],
    ['VOSO4', 'oxidovanadium(IV) sulfate'],
    ['TiOSO4', 'oxidotitanium(IV) sulfate'],
    ['ZrOCl2', 'oxidozirconium(IV) chloride'],
    ['NaOBr', 'sodium hypobromite'],
    ['NaOI', 'sodium hypoiodite'],
    ['CrOCl', 'chromium(III) chloride oxide'],
    ['InOBr', 'indium(III) bromide oxide'],
    ['CuOCl', 'copper(I) hypochlorite'],
    ['Ca(OCl)2', 'calcium hypochlorite'],
    ['VO2Cl', 'dioxidovanadium(V) chloride'],
    ['(UO2)3(PO4)2', 'dioxidouranium(VI) phosphate'],
    ['(VO)2P2O7', 'oxidovanadium(IV) diphosphate'],
    // several atoms of one element
    ['NaN3', 'sodium azide'],
    ['KO3', 'potassium ozonide'],
    ['K2O4', 'potassium superoxide'],
    ['K2S3', 'potassium trisulfide'],
    ['K2S5', 'potassium pentasulfide'],
    ['CsBr3', 'caesium tribromide'],
    ['CsI3', 'caesium triiodide'],
    ['K3Fe(CN)6', 'potassium hexacyanidoferrate(III)'],
    ['Fe(CN)6K4', 'iron(II) tetrapotassium hexacyanide'],
    // other ways to write the same
    ['CuSO4.5H2O', 'copper(II) sulfate pentahydrate'],
    ['NaC2H3O2', 'sodium acetate'],
    ['CH3COONa', 'sodium acetate'],
    ['AlNH4(SO4)2·12H2O', 'aluminium ammonium bis(sulfate) dodecahydrate'],
    ['Fe(SO4)2NH4·12H2O', 'ammonium iron(III) bis(sulfate) dodecahydrate'],
    ['K4Fe(CN)6', 'potassium hexacyanidoferrate(II)'],
    ['Na2[Fe(CN)5NO]', 'sodium pentacyanidonitrosylferrate(III)'],
    ['Na2[FeNO(CN)5]', 'sodium pentacyanidonitrosylferrate(III)'],
    ['[NH4]Cl', 'ammonium chloride'],
    ['[Cr(H2O)4Cl2]Cl', 'tetraaquadichloridochromium(III) chloride'],
    ['[Ni(NH2CH2CH2NH2)3]Cl2', 'tris(ethane-1,2-diamine)nickel(II) chloride'],
    ['[CoCl(NH3)4Cl]Cl', 'tetraamminedichloridocobalt(III) chloride'],
    ['Hg2(NO3)2·2H2O', 'mercury(I) nitrate dihydrate'],
    ['[Ru(C10H8N2)(NH3)4]Cl2', "tetraammine(2,2'-bipyridine)ruthenium(II) chloride"],
    ['BiOCl', 'bismuth(III) chloride oxide'],
    ['NaOCl', 'sodium hypochlorite'],
    ['NaCl·KCl', 'sodium chloride—potassium chloride (1/1)'],
    ['CdSO4·8/3H2O', 'cadmium sulfate—water (3/8)'],
    ['UO2SO4·2.5H2O', 'dioxidouranium(VI) sulfate—water (2/5)'],
    ['CaSO4·0.5H2O', 'calcium sulfate hemihydrate'],
    ['CaSO4·1.25H2O', 'calcium sulfate—water (4/5)'],
    ['2CaSO4·H2O', 'calcium sulfate—water (2/1)'],
    ['SO4^2-(aq)', 'sulfate ion'],
    ['Cu(OH)Cl', 'copper(II) chloride hydroxide'],
    ['Na2S4', 'sodium tetrasulfide'],
    ['FeNaS2', 'iron(III) sodium bis(sulfide)'],
  ])('of %s is %s', (formula, name) => {
    const outcome = trySystematicName(formula)
    expect(outcome.ok ? outcome.value : undefined).toBe(name)
  })

  it.each([
    ['H2SO4'], // an acid
    ['CO2'],
    ['O2'],
    ['Zn'],
    ['Fe3O4'], // two oxidation numbers of one metal
    ['Fe4[Fe(CN)6]3'], // two metals of unknown oxidation number
    ['[Co(NH3)6][Cr(CN)6]'],
    ['LiFeCoO2'],
    ['Fe0.947O'],
    ['C6H12O6'],
    ['Na(C5H5)'],
    ['[Fe(C5H5)2]'],
    ['[Fe2(CN)6]'],
    ['[FeCo(CN)6]'],
    ['[Ag(C2H4)]Cl'],
    ['[Co(NH3)31]Cl3'],
    ['[Co(C2H8N2)11]Cl3'],
    ['K15[FeCl6]'],
    ['Mg2[Fe(CN)6]Cl2(SO4)'], // no iron(VI)
    ['K31Mg(PO4)11'],
    ['[Fe(H2O)6]^20+'],
    ['Na^+Cl^-'],
    ['NaCl^+'],
    ['SO4^3-'],
    ['e^-'],
    ['H2O^+'], // no longer water
    ['NH3^-·NaCl'],
    ['ND4Cl'], // no isotopes
    ['NaOD'],
    ['Cu(NH3)4SO4'],
    ['Na2S6'],
    ['NOBF4'],
    ['ZnSO4·CO2'],
    ['NaSO4'],
    ['XeF2'],
  ])('of %s is outside the tables', (formula) => {
    expect(() => systematicName(formula)).toThrow(
      expect.objectContaining({
        code: 'formula/not-nameable',
        found: formula,
        expected: expect.stringContaining('salt'),
      }),
    )
    expect(trySystematicName(formula).ok).toBe(false)
  })

  it('asks for a formula that can be read', () => {
    expect(() => systematicName('Zno')).toThrow(expect.objectContaining({ code: 'formula/unknown-symbol' }))
  })
})
