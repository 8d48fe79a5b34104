import { describe, expect, it } from 'vitest'
import { parseFormula } from '../../src/formula/index.js'
import { printedMolarMasses } from '../published/data/molar-masses.js'
import { complexes, hydrates, minerals, others, salts } from './data/real-formulas.js'

const notes = (text: string) => parseFormula(text).notes.map(({ code, suggestion }) => [code, suggestion])

describe('legal text that is doubtful is read as written', () => {
  it.each([
    // case slips
    ['CUSO4', 'likely-case-slip', 'CuSO4'],
    ['CUSO4·5H2O', 'likely-case-slip', 'CuSO4·5H2O'],
    ['COI2', 'likely-case-slip', 'CoI2'],
    ['COSO4', 'likely-case-slip', 'CoSO4'],
    ['COCl2·6H2O', 'likely-case-slip', 'CoCl2·6H2O'],
    ['CO(NO3)2', 'likely-case-slip', 'Co(NO3)2'],
    ['CO3O4', 'likely-case-slip', 'Co3O4'],
    ['COCO3', 'likely-case-slip', 'CoCO3'],
    ['NISO4', 'likely-case-slip', 'NiSO4'],
    ['PB(NO3)2', 'likely-case-slip', 'Pb(NO3)2'],
    ['SNO2', 'likely-case-slip', 'SnO2'],
    ['TIO2', 'likely-case-slip', 'TiO2'],
    ['CUO', 'likely-case-slip', 'CuO'],
    ['CU^2+', 'likely-case-slip', 'Cu^2+'],
    ['NI^2+', 'likely-case-slip', 'Ni^2+'],
    ['CO^2+', 'likely-case-slip', 'Co^2+'],
    ['NPO2', 'likely-case-slip', 'NpO2'],
    ['PUO2', 'likely-case-slip', 'PuO2'],
    // digits for letters
    ['H20', 'likely-letter-o', 'H2O'],
    ['Fe203', 'likely-letter-o', 'Fe2O3'],
    ['Fe304', 'likely-letter-o', 'Fe3O4'],
    ['Na20', 'likely-letter-o', 'Na2O'],
    ['K2Cr207', 'likely-letter-o', 'K2Cr2O7'],
    ['P4010', 'likely-letter-o', 'P4O10'],
    ['CuSO4·5H20', 'likely-letter-o', 'CuSO4·5H2O'],
    ['FeCl3.6H20', 'likely-letter-o', 'FeCl3·6H2O'],
    ['C6H1206', 'likely-letter-o', 'C6H12O6'],
    ['C2H50H', 'likely-letter-o', 'C2H5OH'],
    ['NaC1', 'likely-letter-l', 'NaCl'],
    ['CuC12', 'likely-letter-l', 'CuCl2'],
    ['FeC13', 'likely-letter-l', 'FeCl3'],
    ['CC14', 'likely-letter-l', 'CCl4'],
    ['NaCI', 'likely-letter-l', 'NaCl'],
    ['CaCI2', 'likely-letter-l', 'CaCl2'],
    // a slash for the dot
    ['CuSO4/5H2O', 'likely-dot', 'CuSO4·5H2O'],
    ['FeSO4/7H2O', 'likely-dot', 'FeSO4·7H2O'],
    ['BaCl2/2H2O', 'likely-dot', 'BaCl2·2H2O'],
    // numerals and short forms
    ['Cu(I)Cl', 'likely-oxidation-number', 'CuCl'],
    ['NaOAc', 'likely-abbreviation', 'NaC2H3O2'],
    ['Cu(OAc)2', 'likely-abbreviation', 'Cu(C2H3O2)2'],
    // oxoanions
    ['CuSO5', 'odd-oxoanion', 'CuSO4'],
    ['Na2SO5', 'odd-oxoanion', 'Na2SO4'],
    ['Na2SO2', 'odd-oxoanion', 'Na2SO3'],
    ['KNO4', 'odd-oxoanion', 'KNO3'],
    ['CaCO4', 'odd-oxoanion', 'CaCO3'],
    ['Na3PO5', 'odd-oxoanion', 'Na3PO4'],
    ['KClO5', 'odd-oxoanion', 'KClO4'],
    ['MnSO2', 'odd-oxoanion', 'MnSO3'],
    ['Na3SO5Cl', 'odd-oxoanion', 'Na3SO4Cl'],
    ['Al2(SO5)3', 'odd-oxoanion', 'Al2(SO4)3'],
    // charges
    ['NaSO4', 'charges-do-not-add-up', 'Na2SO4'],
    ['Al(SO4)2', 'charges-do-not-add-up', 'Al2(SO4)3'],
    ['NH4SO4', 'charges-do-not-add-up', '(NH4)2SO4'],
    ['NaSO4·10H2O', 'charges-do-not-add-up', 'Na2SO4·10H2O'],
    ['NaCl2', 'charges-do-not-add-up', 'NaCl'],
    ['MgCl', 'charges-do-not-add-up', 'MgCl2'],
    ['Na(OH)2', 'charges-do-not-add-up', 'NaOH'],
    ['Ca(CH3COO)3', 'charges-do-not-add-up', 'Ca(CH3COO)2'],
    ['2NaSO4·H2O', 'charges-do-not-add-up', 'Na2SO4·H2O'],
    ['Fe(SO4)3', 'charges-do-not-add-up', undefined],
    ['Fe2O', 'charges-do-not-add-up', undefined],
    ['K[Fe(CN)6]', 'charges-do-not-add-up', undefined],
    ['Na2HSO4', 'charges-do-not-add-up', 'NaHSO4'],
    ['NaKCl', 'charges-do-not-add-up', undefined],
    ['K[AlCl6]', 'charges-do-not-add-up', undefined],
    ['NaSO4'.repeat(40), 'charges-do-not-add-up', 'Na2SO4'], // 200 characters
    ['KI·I', 'charges-do-not-add-up', undefined],
    ['Cl2Na·H2O', 'charges-do-not-add-up', 'NaCl·H2O'],
    ['Mg2SO4', 'charges-do-not-add-up', 'MgSO4'],
    ['NaF2', 'charges-do-not-add-up', 'NaF'],
    ['NaBr2', 'charges-do-not-add-up', 'NaBr'],
    ['NaI2', 'charges-do-not-add-up', 'NaI'],
    ['D3SO4', 'charges-do-not-add-up', 'D2SO4'],
    ['T3SO4', 'charges-do-not-add-up', 'T2SO4'],
    ['Na3NiCl2', 'charges-do-not-add-up', undefined], // nickel may be of no charge
    ['K4ClS', 'charges-do-not-add-up', undefined], // and so may sulfur
    ['[AlCl4]', 'charges-do-not-add-up', undefined],
    ['{AlCl4}', 'charges-do-not-add-up', undefined],
    ['ND4SO4', 'charges-do-not-add-up', '(ND4)2SO4'],
    ['NaSO5', 'charges-do-not-add-up', undefined],
    ['Na21Cl', 'charges-do-not-add-up', 'NaCl'],
  ])('%s: %s, meant %s', (text, code, suggestion) => expect(notes(text)).toEqual([[code, suggestion]]))

  it('a note says where and what', () => {
    const [slip] = parseFormula(' CUSO4').notes
    expect(slip).toEqual({
      code: 'likely-case-slip',
      message: '"CU" is read as C and U, two elements. Was CuSO4 meant?',
      position: { start: 0, end: 2 },
      suggestion: 'CuSO4',
    })
    const [sum] = parseFormula('NaSO4').notes
    expect(sum?.message).toBe('The usual charges add up to -1, not to zero. Was Na2SO4 meant?')
    expect(parseFormula('Fe2O').notes[0]?.message).toBe('The usual charges add up to +2 to +7.67, not to zero.')
    expect(sum?.position).toEqual({ start: 0, end: 5 })
    expect(Object.isFrozen(sum) && Object.isFrozen(parseFormula('NaSO4').notes)).toBe(true)
  })

  it.each([
    ['AgIO2'],
    ['Ba(BrO2)2'],
    ['(NH2OH)2·H2SO4'],
    ['KI·I2'],
    ['Sm2Fe17N3'],
    ['COCl2'], // phosgene
    ['Pb2SO5'], // PbO·PbSO4
    ['VPO5'], // VO(PO4)
    ['H2SO5'],
    ['C10H22'],
    ['C20H42'],
    ['B20'],
    ['S20'],
    ['Na2S5O6'],
    ['Na0.9SO5'],
    ['C1'],
    ['CI4'],
    ['K2Hg(I)4'],
    ['Pb5(VO4)3(I)'],
    ['Ac2O3'],
    ['CU^+'],
    ['NI^2-'],
    ['CO^2-'],
    ['(SO5)'],
    ['KXeO5'],
    ['Fe0.9O'],
    ['Na^+Cl^-'],
    ['SO5^2-'],
    ['Na'.repeat(101)],
    ['CUSO4'.repeat(41)],
    ['Na2/3CoO2'], // a fraction indeed
    ['CuSO4/5NH3'],
    ['CSO4/5H2O'],
    ['Na1/2H2O'],
    ['CFBr3'], // nobody has californium
    ['CU^3+'],
    ['CH3COOCU'],
    ['KHSO5'],
    ['Na3SO5'],
    ['C60H2'],
    ['Ca10'], // not Ca1O
    ['Fe2003'], // not Fe2O03
    ['V2.05'], // not V2.O5
    ['Zr·20H2O'], // not 2 OH2O
    ['NaSO4^-'],
    ['NaSO4·Cl^-'],
    ['Na22Cl'], // so much that it is an alloy
    ['NaSe'],
    ['Na3ClSe'],
    ['CaHCl'],
    ['KF·F2'],
    ['KCl·Cl2'],
    ['KBr·Br2'],
    ['SO4·2Na'],
    ['Na·1/2SO4'],
    ['CUCl^-'],
    ['CUCl·Cl^-'],
    ['CU^2+SO4^2-'],
    ['SC^2+'],
    // two halogens may be one anion
    ['KICl4'],
    ['NaFCl'],
    ['NaClF'],
    ['NaClBr'],
    ['NaBrI'],
    ['NaIF'],
    ['NaBr3'],
    ['KI5'],
  ])('%s is not doubted', (text) => expect(notes(text)).toEqual([]))
})

describe('real formulas are read without a doubt', () => {
  const published = printedMolarMasses.flatMap(({ rows }) => rows.map(({ formula }) => formula))

  it.each([
    ['salts', salts, 560],
    ['hydrates, double and basic salts', hydrates, 270],
    ['complexes', complexes, 160],
    ['minerals', minerals, 190],
    ['ions, molecules, radicals', others, 300],
    ['formulas with a published molar mass', published, 60],
  ])('%s', (_, list, atLeast) => {
    expect(list.length).toBeGreaterThan(atLeast)
    expect(list.filter((text) => parseFormula(text).notes.length > 0)).toEqual([])
  })
})
