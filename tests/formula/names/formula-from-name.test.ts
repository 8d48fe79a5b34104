import { describe, expect, it } from 'vitest'
import {
  formulaFromName,
  hillFormula,
  systematicName,
  tryFormulaFromName,
  trySystematicName,
} from '../../../src/formula/index.js'
import { complexes, hydrates, minerals, others, salts } from '../data/real-formulas.js'
import { bothWays } from './both-ways.js'

describe('the formula of a name', () => {
  it.each(bothWays)('is %s for %s', (formula, name) => expect(formulaFromName(name).text).toBe(formula))

  it.each([
    // double salts without numbers
    ['ammonium iron(II) sulfate hexahydrate', '(NH4)2Fe(SO4)2·6H2O'],
    ['potassium aluminium sulfate dodecahydrate', 'KAl(SO4)2·12H2O'],
    ['ammonium magnesium phosphate', 'NH4MgPO4'],
    ['lead(II) carbonate hydroxide', 'Pb2CO3(OH)2'],
    ['sodium aluminium triphosphate', 'Na2AlP3O10'], // not NaAl3(P3O10)2
    // numbers that are said, also where they need not be
    ['disodium hydrogen phosphate', 'Na2HPO4'],
    ['dialuminium tris(sulfate)', 'Al2(SO4)3'],
    ['iron(II) dichloride', 'FeCl2'],
    // other spellings
    ['sodium hydrogen carbonate', 'NaHCO3'],
    ['potassium dihydrogen phosphate', 'KH2PO4'],
    ['ammonium sodium hydrogen phosphate', 'NH4NaHPO4'],
    ['lithium sodium potassium rubidium sulfate', 'KLiNaRb(SO4)2'],
    ['sodium bicarbonate', 'NaHCO3'],
    ['Copper(II) sulphate pentahydrate', 'CuSO4·5H2O'],
    ['copper (II) sulfate', 'CuSO4'],
    ['Zinc Sulfate Heptahydrate', 'ZnSO4·7H2O'],
    [' zinc  sulfate ', 'ZnSO4'],
    ['\tzinc sulfate\n', 'ZnSO4'],
    [`${' '.repeat(285)}sodium chloride`, 'NaCl'], // 300 characters
    ['aluminum chloride', 'AlCl3'],
    ['cesium sulphate', 'Cs2SO4'],
    ['caesium sulfate', 'Cs2SO4'],
    ['zinc sulfate, anhydrous', 'ZnSO4'],
    ['zinc sulfate anhydrous', 'ZnSO4'],
    ['zinc oxide—water (1/x)', 'ZnO·xH2O'],
    ['zinc oxide—water (1/n)', 'ZnO·nH2O'],
    ['zinc oxide—water (1/y)', 'ZnO·yH2O'],
    ['zinc oxide—water (1/z)', 'ZnO·zH2O'],
    ['zinc oxide—water (1/m)', 'ZnO·mH2O'],
    ['cadmium sulfate -- water (3/8)', '3CdSO4·8H2O'],
    ['cadmium sulfate – water (3/8)', '3CdSO4·8H2O'],
    ['cadmium chloride hemipentahydrate', 'CdCl2·5/2H2O'],
    // charge numbers, older ligand names
    ['iron(3+) chloride', 'FeCl3'],
    ['potassium hexacyanoferrate(III)', 'K3[Fe(CN)6]'],
    ['potassium hexacyanidoferrate(4-)', 'K4[Fe(CN)6]'],
    ['potassium hexacyanidoferrate(4−)', 'K4[Fe(CN)6]'],
    ['pentaamminechloridocobalt(2+) chloride', '[CoCl(NH3)5]Cl2'],
    ['potassium trioxalatoferrate(III)', 'K3[Fe(C2O4)3]'],
    ['potassium tetrahydroxidoaluminate', 'K[Al(OH)4]'],
    ['iron(II) hexacyanidoferrate(III)', 'Fe3[Fe(CN)6]2'],
    ['uranyl nitrate', 'UO2(NO3)2'],
    ['sodium tetracarbonylferrate(−II)', 'Na2[Fe(CO)4]'],
    ['sodium peroxodisulfate', 'Na2S2O8'],
    // ions and complexes alone
    ['sulfate', 'SO4^2-'],
    ['iron(III)', 'Fe^3+'],
    ['hexaamminecobalt(III)', '[Co(NH3)6]^3+'],
    ['water', 'H2O'],
    ['ammonia', 'NH3'],
  ])('%s is %s', (name, formula) => expect(formulaFromName(name).text).toBe(formula))

  it.each([
    ['ferrous sulfate', 'ferrous', 0, 7, 'iron(II)?'],
    ['anhydrous cupric chloride', 'anhydrous', 0, 9, undefined],
    ['cupric chloride', 'cupric', 0, 6, 'copper(II)?'],
    ['sodium unobtainate', 'unobtainate', 7, 18, undefined],
    ['Sodium Unobtainate', 'unobtainate', 7, 18, undefined],
    ['iron sulfate', 'iron', 0, 4, undefined],
    ['zinc(II sulfate', 'zinc(II', 0, 7, undefined],
    ['neon(I) chloride', 'neon(I)', 0, 7, undefined],
    ['iron(0) chloride', 'iron(0)', 0, 7, undefined],
    ['iron(IX) chloride', 'iron(IX)', 0, 8, undefined],
    ['sulfuric acid', 'sulfuric', 0, 8, undefined],
    ['copper(II) sulfate hydrate', 'hydrate', 19, 26, undefined],
    ['copper(II) sulfate manyhydrate', 'manyhydrate', 19, 30, undefined],
    ['hydrate', 'hydrate', 0, 7, undefined],
    ['potassium hexacyanidoferrate', 'hexacyanidoferrate', 10, 28, undefined],
    ['potassium hexacyanidoferrate(IX)', 'hexacyanidoferrate(IX)', 10, 32, undefined],
    [`${' '.repeat(286)}sodium chloride`, ' '.repeat(40), 0, 40, undefined],
    ['hexacyanidoferrate(3+) chloride', 'hexacyanidoferrate(3+)', 0, 22, undefined],
    ['hexaamminecobaltIII) chloride', 'hexaamminecobaltIII)', 0, 20, undefined],
    ['hexaamminecobalt(III chloride', 'hexaamminecobalt(III', 0, 20, undefined],
    ['hexaamminecobalt(+) chloride', 'hexaamminecobalt(+)', 0, 19, undefined],
    ['ion', 'ion', 0, 3, undefined],
    ['hexacyanidoiron(5)', 'hexacyanidoiron(5)', 0, 18, undefined],
    ['hexa', 'hexa', 0, 4, undefined],
    ['zinc sulfate—water', 'sulfate—water', 5, 18, undefined],
    ['zinc sulfate—water (1/0)', 'sulfate—water(1/0)', 0, 18, undefined],
    ['zinc sulfate—water (1/1/7)', 'sulfate—water(1/1/7)', 0, 20, undefined],
    ['', '', 0, 0, undefined],
    ['   ', '', 0, 0, undefined],
    // ions that make no neutral salt
    ['sodium zinc', 'sodium zinc', 0, 11, undefined],
    ['sulfate chloride', 'sulfate chloride', 0, 16, undefined],
    ['disodium chloride', 'disodium chloride', 0, 17, undefined],
    ['tripotassium sodium sulfate', 'tripotassium sodium sulfate', 0, 27, undefined],
    ['sodium chloride ion', 'sodium chloride ion', 0, 19, undefined],
    ['disulfate(2) ion', 'disulfate(2)', 0, 12, undefined],
    ['bis(sulfate)', 'bis(sulfate)', 0, 12, undefined],
    ['tetracarbonylnickel(0) chloride', 'tetracarbonylnickel(0) chloride', 0, 31, undefined],
    [
      'lithium sodium potassium rubidium caesium sulfate',
      'lithium sodium potassium rubidium caesium sulfate',
      0,
      49,
      undefined,
    ],
  ])('%j is refused at %j', (name, found, start, end, hint) => {
    const outcome = tryFormulaFromName(name)
    expect(outcome.ok).toBe(false)
    const error = outcome.ok ? undefined : outcome.error
    expect([error?.code, error?.found, error?.position, error?.hint]).toEqual([
      'formula/unknown-name',
      found,
      { start, end },
      hint,
    ])
  })

  it.each([[undefined], [5], [null], [['zinc', 'sulfate']]])('%j is not text', (value) => {
    expect(() => formulaFromName(value as unknown as string)).toThrow(
      expect.objectContaining({ code: 'formula/not-text' }),
    )
  })

  it.each([
    ['x'.repeat(301)],
    ['di'.repeat(150)],
    ['tetra'.repeat(60)],
    ['aqua'.repeat(75)],
    ['sodium '.repeat(42)],
    ['tris('.repeat(60)],
  ])('%# hostile names are refused soon', (name) => {
    const start = performance.now()
    expect(() => formulaFromName(name)).toThrow(expect.objectContaining({ code: 'formula/unknown-name' }))
    expect(performance.now() - start).toBeLessThan(500)
  })
})

describe('every real formula that has a name', () => {
  const named = [...salts, ...hydrates, ...complexes, ...minerals, ...others].filter(
    (text) => trySystematicName(text).ok,
  )

  it('are most of them', () => expect(named.length).toBeGreaterThan(1300))

  it('has the same atoms, or the same name, when the name is read', () => {
    const other = named.filter((text) => {
      const read = formulaFromName(systematicName(text))
      return hillFormula(read) !== hillFormula(text) && systematicName(read) !== systematicName(text)
    })
    expect(other).toEqual([])
  })
})
