import { expect, it } from 'vitest'
import { parseFormula, tryParseFormula } from '../../src/formula/index.js'

/** What was probably meant by a text that cannot be read. */
const meant: readonly (readonly [text: string, hint: string | undefined])[] = [
  ['cuso<sub>4</sub>', 'CuSO4?'],
  ['cuso\u00074', 'CuSO4?'],
  ['сuso4', 'CuSO4?'],
  ['K2S04', 'K2SO4?'],
  ['CaC03', 'CaCO3?'],
  ['Na0H', 'NaOH?'],
  ['H2S04·7H20', 'H2SO4·7H2O?'],
  ['cuso4·5h2o', 'CuSO4·5H2O?'],
  ['CuS04.5H20', 'CuSO4.5H2O?'],
  ['(NH4)2S04', '(NH4)2SO4?'],
  ['C02', 'CO2?'],
  ['AICI3', 'AlCl3?'],
  ['·CuSO4·', 'CuSO4?'],
  ['CuSO4·', 'CuSO4?'],
  ['CuSO4··5H2O', 'CuSO4·5H2O?'],
  ['[Cu(NH3)4', '[Cu(NH3)4]?'],
  ['Cu(NH3]4', 'Cu(NH3)4?'],
  ['CuSO4)', 'CuSO4?'],
  ['Fe(OH3', 'Fe(OH3)?'],
  ['CO2(gas)', 'CO2(g)?'],
  ['H2O(liq)', 'H2O(l)?'],
  ['NaCl aq', 'NaCl(aq)?'],
  ['NaCl, aq', 'NaCl(aq)?'],
  ['α-Fe2O3', 'Fe2O3?'],
  ['cis-PtCl2(NH3)2', 'PtCl2(NH3)2?'],
  ['Cu-SO4', 'CuSO4?'],
  ['H-O-H', 'HOH?'],
  ['CuSO4 5H2O', 'CuSO4·5H2O?'],
  ['CuSO4+5H2O', 'CuSO4·5H2O?'],
  ['NaCl!', 'NaCl?'],
  ['NaCl?', 'NaCl?'],
  ['SO₄²', 'SO₄²-?'],
  ['S2O3=', 'S2O3^2-?'],
  ['e', 'e^-?'],
  ['PhOH', 'C6H5OH?'],
  ['EtOH', 'C2H5OH?'],
  ['O2-', 'O^2- or O2^-?'],
  ['N3-', 'N^3- or N3^-?'],
  ['_5H2O', '5H2O?'],
  ...['s', 'l', 'g', 'aq'].flatMap((state) =>
    [`NaCl, ${state}`, `NaCl,${state}`, `NaCl ${state}`].map((text) => [text, `NaCl(${state})?`] as const),
  ),
  ['PO4^', 'PO4^3-?'],
  ['ac2o3', 'Ac2O3?'],
  ['[Cu(NH3', '[Cu(NH3)]?'],
  ['CuSO4 (H2O) 5', 'CuSO4(H2O)5?'],
  ['nh2ch2ch2nh2', 'NH2CH2CH2NH2?'],
  ...['(s)', '(l)', '(g)', '(aq)'].map((state) => [`nacl${state}`, `NaCl${state}?`] as const),
  ['fe203·0.5h2o', 'Fe2O3·0.5H2O?'],
  ['fe203·1.05h2o', 'Fe2O3·1.05H2O?'],
  ['h+', 'H+?'],
  // the fewest changes of letters, and no nobelium
  ['co', 'Co?'],
  ['no', 'NO?'],
  ['COcl2', 'COCl2?'],
  ['Cocl2', 'CoCl2?'],
  ['ch'.repeat(12), `${'CH'.repeat(12)}?`],
  ['zr4+', 'Zr4+?'],
  ['(ch3)2co', '(CH3)2CO?'],
  ...['NH2', 'SH', 'F', 'Cl', 'Br', 'I', 'OH'].map((group) => [`ch3${group.toLowerCase()}`, `CH3${group}?`] as const),
  ['no3^-', 'NO3^-?'],
  ...['F2', 'Cl2', 'Br2', 'I2', 'O', 'S', 'Se', 'Te'].map(
    (anion) => [`ca${anion.toLowerCase()}`, `Ca${anion}?`] as const,
  ),
  [`cuso4${'·5h2o'.repeat(15)}`, `CuSO4${'·5H2O'.repeat(15)}?`],
  // nothing is likely
  ...['F3', 'Cl3', 'Br3', 'I3', 'O2', 'S2', 'Se2', 'Te2'].map(
    (anion) => [`ca${anion.toLowerCase()}`, undefined] as const,
  ),
  ['nai3', undefined],
  ['zr5+', undefined],
  [`${'ch'.repeat(12)}c`, undefined], // more than 24 letters
  ['C 1 9H40', undefined],
  ['C 1  9H40', undefined],
  ['Na.0H', undefined],
  ['C 1 0H22', undefined],
  ['so4^3-', undefined],
  ['ch4ne', undefined],
  [`cuso4${'·5h2o'.repeat(14)}·12h2o`, undefined], // more than 80 characters
  ['me2co', undefined],
  ['NO3 -', undefined],
  ['Na+Cl-', undefined],
  ['2+Ca', undefined],
  ['M2O', undefined],
  ['K00', undefined],
  ['CuSO4(', undefined],
  ['{}', undefined],
]

it.each(meant)('%j: %s', (text, hint) => {
  const outcome = tryParseFormula(text)
  expect(outcome.ok ? 'read' : outcome.error.hint).toBe(hint)
})

/** What looks like a slip in a text that can be read. */
it.each([
  ['NaOAc', 'likely-abbreviation', 'NaC2H3O2'],
  ['Cu(I)Cl', 'likely-oxidation-number', 'CuCl'],
  ['KCu(I)Cl2', 'likely-oxidation-number', 'KCuCl2'],
  ['C6H1503P', 'likely-letter-o', 'C6H15O3P'],
  ['V(V)Cl', 'likely-oxidation-number', 'VCl'],
  ['C12', 'likely-letter-l', 'Cl2'],
  ['HC1', 'likely-letter-l', 'HCl'],
  ['NaC1', 'likely-letter-l', 'NaCl'],
  ['NaCI', 'likely-letter-l', 'NaCl'],
  ['CaC12', 'likely-letter-l', 'CaCl2'],
  ['Fe203', 'likely-letter-o', 'Fe2O3'],
  ['P205', 'likely-letter-o', 'P2O5'],
  ['C6H1206', 'likely-letter-o', 'C6H12O6'],
  ['H20', 'likely-letter-o', 'H2O'],
  ['H202', 'likely-letter-o', 'H2O2'],
])('%s: %s, %s', (text, code, suggestion) => {
  expect(parseFormula(text).notes.map((note) => [note.code, note.suggestion])).toEqual([[code, suggestion]])
})

it.each([
  'Fe(I)2',
  'Fe[I]2',
  'Fe(I',
  'C2H2',
  'CI',
  'C1',
  'CH1',
  'PbI2',
  '(I)Cl',
  'H(I)Cl',
  'NaC2',
  'Cu[I]Cl',
  'Fe(O)Cl',
  'Cu(I2)2',
  'LaAcO3',
])('%s looks like no slip of letters', (text) => {
  const outcome = tryParseFormula(text)
  const codes = outcome.ok ? outcome.value.notes.map(({ code }) => code) : []
  expect(codes.filter((code) => code.startsWith('likely-'))).toEqual([])
})
