import { describe, expect, it } from 'vitest'
import { parseFormula, tryParseFormula } from '../../src/formula/index.js'
import { formatFraction } from '../../src/fraction.js'
import { atoms } from './atoms.js'

describe('atoms', () => {
  it.each([
    ['Zn', 'Zn'],
    ['H2O', 'H2 O'],
    ['NaCl', 'Na Cl'],
    ['Co', 'Co'],
    ['CO', 'C O'],
    ['(NH4)2SO4', 'N2 H8 S O4'],
    ['Ca5(PO4)3(OH)', 'Ca5 P3 O13 H'],
    ['CaMg(CO3)2', 'Ca Mg C2 O6'],
    ['KAl3Si3O10(OH)2', 'K Al3 Si3 O12 H2'],
    ['[Co(NH3)6]Cl3', 'Co N6 H18 Cl3'],
    ['[Co(NH3)6]2 (SO4)3', 'Co2 N12 H36 S3 O12'],
    ['K3[Fe(C2O4)3]·3H2O', 'K3 Fe C6 O15 H6'],
    ['Na2[Fe(CN)5NO]·2H2O', 'Na2 Fe C5 N6 O3 H4'],
    ['{[Cu(NH3)4]}SO4', 'Cu N4 H12 S O4'],
    ['((H2)3)2', 'H12'],
    ['(UO2)2(PO4)2·10H2O', 'U2 O22 P2 H20'],
    ['Na2B4O5(OH)4·8H2O', 'Na2 B4 O17 H20'],
    ['CH3COOH', 'C2 H4 O2'],
    ['C2952H4664N812O832S8Fe4', 'C2952 H4664 N812 O832 S8 Fe4'],
    ['Og', 'Og'],
    ['Fe(IICl2)', 'Fe I2 Cl2'],
    ['D2O', 'D2 O'],
    ['HTO', 'H T O'],
    ['(CD3)2CO', 'C3 D6 O'],
  ])('of %s are %s', (text, expected) => expect(atoms(parseFormula(text))).toBe(expected))

  it.each([
    ['Fe0.947O', 'Fe947/1000 O'],
    ['YBa2Cu3O6.93', 'Y Ba2 Cu3 O693/100'],
    ['(Mg0.9Fe0.1)2SiO4', 'Mg9/5 Fe1/5 Si O4'],
    ['Pb(Mg1/3Nb2/3)O3', 'Pb Mg1/3 Nb2/3 O3'],
    ['[Mg0.67Al0.33(OH)2](CO3)0.165·0.5H2O', 'Mg67/100 Al33/100 O599/200 H3 C33/200'],
    ['Fe½O', 'Fe1/2 O'],
    ['Fe1½O', 'Fe3/2 O'],
    ['H1.5H0.5', 'H2'],
    ['(H1.5)2', 'H3'],
    ['(H2O)½', 'H O1/2'],
    ['(H1/3O)3', 'H O3'],
    ['Mg1⁄3O', 'Mg1/3 O'],
    ['Mg1∕3O', 'Mg1/3 O'],
    ['H1000000/3', 'H1000000/3'],
    ['(H999999/2)999', 'H998999001/2'],
    // as many as counts may multiply to
    ['(H1000000)1000', 'H1000000000'],
    ['1000H1000000', 'H1000000000'],
    ['(H1/2O1000000)1000', 'H500 O1000000000'],
    ['(H1/1000000)1/1000', 'H1/1000000000'],
  ])('of %s are exactly %s', (text, expected) => expect(atoms(parseFormula(text))).toBe(expected))

  it('are decimals too, exact where they terminate', () => {
    const { composition } = parseFormula('CdSO4·8/3H2O')
    expect([...composition].map(([symbol, count]) => [symbol, count.toString()])).toEqual([
      ['Cd', '1'],
      ['S', '1'],
      ['O', '6.666666666666666666666666666666667'],
      ['H', '5.333333333333333333333333333333333'],
    ])
    expect(parseFormula('C100H250').composition.get('H')?.toNumber()).toBe(250)
  })
})

describe('parts', () => {
  const shown = (text: string): string[] =>
    parseFormula(text).parts.map(({ times, text: part }) => `${times === null ? '?' : formatFraction(times)} ${part}`)

  it.each([
    ['ZnSO4', ['1 ZnSO4']],
    ['ZnSO4·7H2O', ['1 ZnSO4', '7 H2O']],
    ['2CaSO4·H2O', ['2 CaSO4', '1 H2O']],
    ['3CdSO4·8H2O', ['3 CdSO4', '8 H2O']],
    ['CdSO4·8/3H2O', ['1 CdSO4', '8/3 H2O']],
    ['CaSO4·½H2O', ['1 CaSO4', '1/2 H2O']],
    ['CaSO4·1½H2O', ['1 CaSO4', '3/2 H2O']],
    ['CaSO4·0.5H2O', ['1 CaSO4', '1/2 H2O']],
    ['Al2O3·xH2O', ['1 Al2O3', '? H2O']],
    ['Fe2O3·nH2O', ['1 Fe2O3', '? H2O']],
    ['K2SO4·Al2(SO4)3·24H2O', ['1 K2SO4', '1 Al2(SO4)3', '24 H2O']],
    ['Ba(HSO3)2·C2H2O2·2.5H2O', ['1 Ba(HSO3)2', '1 C2H2O2', '5/2 H2O']],
    ['CoI2·2NH3', ['1 CoI2', '2 NH3']],
    ['2H2O', ['2 H2O']],
    ['½O2', ['1/2 O2']],
    ['[Co(NH3)6]^3+·3Cl^-', ['1 [Co(NH3)6]^3+', '3 Cl^-']],
    ['MgCl2 · 6 H2O', ['1 MgCl2', '6 H2O']],
    ['CuSO4 x 5 H2O', ['1 CuSO4', '5 H2O']],
    ['CaSO4 x ½H2O', ['1 CaSO4', '1/2 H2O']],
    ['NaCl·x(H2O)', ['1 NaCl', '? (H2O)']],
    ['NaCl·yH2O', ['1 NaCl', '? H2O']],
    ['NaCl·zH2O', ['1 NaCl', '? H2O']],
    ['NaCl·mH2O', ['1 NaCl', '? H2O']],
  ])('of %s are %j', (text, expected) => expect(shown(text)).toEqual(expected))

  it('know their atoms and their charge, of one each', () => {
    const [metal, chloride] = parseFormula('[Co(NH3)6]^3+·3Cl^-').parts
    expect([metal?.charge, chloride?.charge]).toEqual([3, -1])
    expect(metal && atoms(metal)).toBe('Co N6 H18')
    expect(chloride && atoms(chloride)).toBe('Cl')
  })

  it('of an addition compound multiply only what follows them, up to the next dot', () => {
    expect(atoms(parseFormula('3CdSO4·8H2O'))).toBe('Cd3 S3 O20 H16')
    expect(atoms(parseFormula('2CaSO4·H2O'))).toBe('Ca2 S2 O9 H2')
  })
})

describe('the dot', () => {
  it.each([
    ...['·', '•', '∙', '⋅', '‧', '・', '●', '*', '×', ':', '.', ' · ', ' x ', ' × ', '\u0387'].map((dot) => [
      `CuSO4${dot}5H2O`,
    ]),
    ['CuSO4 x5 H2O'],
    ['CuSO₄.5H₂O'],
    ['CuSO4. 5H2O'],
    ['CuSO4.5(H2O)'],
    ['5H2O·CuSO4'],
    ['CuSO4·(H2O)5'],
    ['CuSO4·4H2O·H2O'],
  ])('in %s stands before five waters', (text) => {
    expect(parseFormula(text).hydration?.toNumber()).toBe(5)
    expect(parseFormula(text).counts.get('Cu')).toEqual({ numerator: 1n, denominator: 1n })
    expect(parseFormula(text).counts.get('O')).toEqual({ numerator: 9n, denominator: 1n })
  })

  it.each([
    ['Fe0.947O', 'Fe947/1000 O'],
    ['CaSO4.0.5H2O', 'Ca S O9/2 H'],
    ['CaSO4.1/2H2O', 'Ca S O9/2 H'],
    ['CaSO4.½H2O', 'Ca S O9/2 H'],
    ['CaSO4.2½H2O', 'Ca S O13/2 H5'],
    ['CaSO4.H2O', 'Ca S O5 H2'],
    ['Al2(SO4)3.18H2O', 'Al2 S3 O30 H36'],
    ['(NH4)2SO4.FeSO4.6H2O', 'N2 H20 S2 O14 Fe'],
    ['CoI2.2NH3', 'Co I2 N2 H6'],
    ['CuSO4.4NH3.H2O', 'Cu S O5 N4 H14'],
    ['K2SO4.2MgSO4', 'K2 S3 O12 Mg2'],
    ['Al2O3.2SiO2.2H2O', 'Al2 O9 Si2 H4'],
    ['CaCl2.2MgCl2.12H2O', 'Ca Cl6 Mg2 H24 O12'],
    ['La1.85Sr0.15CuO4', 'La37/20 Sr3/20 Cu O4'],
    ['LaNi4.5Al0.5', 'La Ni9/2 Al1/2'],
    ['Na0.3CoO2.1.3H2O', 'Na3/10 Co O33/10 H13/5'],
    ['WO2.05', 'W O41/20'],
    ['Fe₀.₉₄₇O', 'Fe947/1000 O'],
    ['Na2.2Zr1.8Si2O7', 'Na11/5 Zr9/5 Si2 O7'],
    ['Fe.947O', 'Fe947/1000 O'],
    ['Ca.165Al2.33Si3.67O10(OH)2', 'Ca33/200 Al233/100 Si367/100 O12 H2'],
    ['Cu(OH)1.5(CH3COO)0.5', 'Cu O5/2 H3 C'],
    ['NaBr.2H2O', 'Na Br H4 O2'],
    ['KF.2HF', 'K F3 H2'],
    ['KCl.2KBr', 'K3 Cl Br2'],
    ['FeCl3.6H₂O', 'Fe Cl3 H12 O6'],
    ['FeCl3.6H20', 'Fe Cl3 H120'],
    ['CoCl2.2C5H5N', 'Co Cl2 C10 H10 N2'],
    ['ZnCl2.2CH3CN', 'Zn Cl2 C4 H6 N2'],
    ['LiBr.2(C2H5)2O', 'Li Br C8 H20 O2'],
    ['NiCl2.2CHg', 'Ni Cl11/5 C Hg'],
    [`${'NaKLiRbCs'.repeat(8)}SO4.2MgSO4`, 'Na8 K8 Li8 Rb8 Cs8 S2 O41/5 Mg'],
  ])('or the point in %s is told by what follows', (text, expected) => {
    expect(atoms(parseFormula(text))).toBe(expected)
  })

  it('inside a bracket reaches to its end', () => {
    const ettringite = parseFormula('{Ca6[Al(OH)6]2·24H2O}[(SO4)3·2H2O]')
    expect(atoms(ettringite)).toBe('Ca6 Al2 O50 H64 S3')
    expect(ettringite.hydration?.toNumber()).toBe(26)
    expect(parseFormula('(CuSO4·5H2O)2').hydration?.toNumber()).toBe(10)
  })
})

describe('the water of crystallisation', () => {
  it.each([
    ['ZnSO4·7H2O', '7'],
    ['ZnSO4', '0'],
    ['H2O', '0'],
    ['2H2O', '0'],
    ['H2O·H2O', '0'],
    ['Ca(OH)2', '0'],
    ['CaSO4·½H2O', '0.5'],
    ['3CdSO4·8H2O', '8'],
    ['CuSO4·5D2O', '5'],
    ['CuSO4·5T2O', '5'],
    ['CuSO4·HDO', '1'],
    ['K2SO4·Na2O', '0'],
    ['CuSO4·4NH3·H2O', '1'],
    ['Na2CO3·1.5H2O2', '0'],
    ['NaCl·H1.5O0.75', '0'],
    ['NaCl·H2/3O1/3', '0'],
  ])('of %s is %s', (text, expected) => expect(parseFormula(text).hydration?.toString()).toBe(expected))

  it('of unknown number is left out of the atoms', () => {
    const oxide = parseFormula('Fe2O3·xH2O')
    expect(oxide.hydration).toBeNull()
    expect(atoms(oxide)).toBe('Fe2 O3')
    expect(oxide.parts[1]?.times).toBeNull()
    expect(atoms(parseFormula('Fe0.9O·x H2O'))).toBe('Fe9/10 O')
  })
})

describe('the charge', () => {
  it.each([
    ['NaCl', 0],
    ['SO4^2-', -2],
    ['SO4^-2', -2],
    ['SO4^--', -2],
    ['SO4^{2-}', -2],
    ['SO4^(2-)', -2],
    ['SO4(2-)', -2],
    ['SO4²⁻', -2],
    ['SO4⁻²', -2],
    ['SO4²-', -2],
    ['SO4^2−', -2],
    ['SO4^2–', -2],
    ['SO4^2—', -2],
    ['SO4--', -2],
    ['SO4-2', -2],
    ['SO4 2-', -2],
    ['SO4 ^2-', -2],
    ['SO₄2-', -2],
    ['Na+', 1],
    ['Na^+', 1],
    ['Na⁺', 1],
    ['Na++', 2],
    ['H(+)', 1],
    ['Fe+3', 3],
    ['Fe+++', 3],
    ['Fe^0', 0],
    ['Fe⁰', 0],
    ['[Cu(H2O)6]^2+', 2],
    ['[Fe(CN)6]⁴⁻', -4],
    ['Al13O4(OH)24(7+)', 7],
    ['[Fe(CN)6]^4-·3H2O', -4],
    ['2Fe^3+', 6],
    ['½Hg2^2+', 1],
    ['1/3Al^3+', 1],
    ['[Co(NH3)6]^3+·3Cl^-', 0],
    ['Na^+Cl^-', 0],
    ['Na+·2H2O', 1],
    ['Na+.H2O', 1],
    ['ZnO:SO4^2-', -2],
    ['Fe^99+', 99],
    ['Fe^99-', -99],
    ['(NH4^+)2(SO4^2-)', 0],
    ['([Fe(CN)6]^4-)', -4],
    ['K[Fe(CN)6]^3-', -3],
    ['(Na^+)0.5(Cl^-)0.5', 0],
    ['P2O7^4-', -4],
    ['V10O28^6-', -6],
  ])('of %s is %i', (text, expected) => expect(parseFormula(text).charge).toBe(expected))

  it.each([
    // a common ion decides
    ['NH4+', 'N H4', 1],
    ['H3O+', 'H3 O', 1],
    ['NO3-', 'N O3', -1],
    ['HCO3-', 'H C O3', -1],
    ['MnO4-', 'Mn O4', -1],
    ['I3-', 'I3', -1],
    ['S2-', 'S', -2],
    ['SO42-', 'S O4', -2],
    ['NaCl·SO42-', 'Na Cl S O4', -2],
    ['CO32-', 'C O3', -2],
    ['PO43-', 'P O4', -3],
    ['Cr2O72-', 'Cr2 O7', -2],
    ['Hg22+', 'Hg2', 2],
    ['TiO2+', 'Ti O', 2],
    ['FeSCN2+', 'Fe S C N', 2],
    ['Fe(CN)63-', 'Fe C6 N6', -3],
    ['Cu(NH3)42+', 'Cu N4 H12', 2],
    ['SO42⁻', 'S O4', -2],
    ['S O42-', 'S O4', -2],
    ['(SO4)2-', 'S O4', -2],
    ['{PO4}3-', 'P O4', -3],
    ['(Fe(CN)6)3-', 'Fe C6 N6', -3],
    ['(Zr)4+', 'Zr', 4],
    ['(UO2)2+', 'U O2', 2],
    // a square bracket takes all digits as charge
    ['[Fe(CN)6]4-', 'Fe C6 N6', -4],
    ['[Mo7O24]6-', 'Mo7 O24', -6],
    ['[W10O32]10-', 'W10 O32', -10],
    // so does a metal alone
    ['Fe3+', 'Fe', 3],
    ['Cu2+', 'Cu', 2],
    ['Zr4+', 'Zr', 4],
    ['B3+', 'B', 3],
    ['Si4+', 'Si', 4],
    ['As3+', 'As', 3],
    ['Te4+', 'Te', 4],
    ['Hg2+', 'Hg', 2],
    // of two digits behind the ligands of a metal the last is the charge
    ['MnCl42-', 'Mn Cl4', -2],
    ['GeO44-', 'Ge O4', -4],
    ['Mo2O72-', 'Mo2 O7', -2],
    ['CuI22-', 'Cu I2', -2],
    ['ReF82-', 'Re F8', -2],
    ['MoO66-', 'Mo O6', -6],
    ['WO66-', 'W O6', -6],
    ['MoO61-', 'Mo O61', -1],
    ['Fe1.5+', 'Fe3/2', 1],
    ['Rh(NH3)63+', 'Rh N6 H18', 3],
    // otherwise a lone digit is a count
    ['AlF2+', 'Al F2', 1],
    ['Fe(OH)2+', 'Fe O2 H2', 1],
    ['N2+', 'N2', 1],
    ['C3+', 'C3', 1],
    ['S8+', 'S8', 1],
    ['(NH3)(H2O)2+', 'N H7 O2', 1],
    ['Cl2-', 'Cl2', -1],
    ['C60-', 'C60', -1],
    ['H11-', 'H11', -1],
    ['Fe3⁺', 'Fe3', 1],
    ['UO2++', 'U O2', 2],
    ['Fe3+2', 'Fe3', 2],
    ['AlOH+2', 'Al O H', 2],
  ])('of %s without a caret leaves the atoms %s', (text, expected, charge) => {
    expect(atoms(parseFormula(text))).toBe(expected)
    expect(parseFormula(text).charge).toBe(charge)
  })

  it.each(['H', 'D', 'T', 'F', 'Cl', 'Br', 'I', 'N', 'O', 'C', 'S', 'P', 'Se'])(
    'a molecule of %s may lose one',
    (symbol) => {
      expect(atoms(parseFormula(`${symbol}2+`))).toBe(`${symbol}2`)
    },
  )

  it.each(['H', 'D', 'T', 'F', 'Cl', 'Br', 'I'])('a molecule of %s may gain one', (symbol) => {
    expect(atoms(parseFormula(`${symbol}2-`))).toBe(`${symbol}2`)
  })

  it.each([
    ['e^-', -1],
    ['e-', -1],
    ['e⁻', -1],
    ['2e^-', -2],
  ])('of the electron %s is %i, and it has no atoms', (text, charge) => {
    expect(parseFormula(text).charge).toBe(charge)
    expect(atoms(parseFormula(text))).toBe('')
  })
})

describe('the state', () => {
  it.each([
    ['NaCl(s)', 's', 'NaCl'],
    ['H2O (l)', 'l', 'H2O'],
    ['CO2(g) ', 'g', 'CO2'],
    ['SO4^2-(aq)', 'aq', 'SO4^2-'],
    ['ZnSO4·7H2O(s)', 's', 'ZnSO4·7H2O'],
    ['Na+(aq)', 'aq', 'Na+'],
    ['Ca(OH)2', undefined, 'Ca(OH)2'],
  ])('of %s is %s, and is no part of the text', (text, state, rest) => {
    expect(parseFormula(text).state).toBe(state)
    expect(parseFormula(text).text).toBe(rest)
  })
})

describe('spaces', () => {
  it.each([
    [' NaCl '],
    ['\n\tNaCl\r\n'],
    ['Na Cl'],
    ['Na\u00a0Cl'],
    ['Na\u2009Cl'],
    ['Na\u202fCl'],
    ['Na\u3000Cl'],
    ['( Na ) Cl'],
  ])('%j are passed over', (text) => expect(atoms(parseFormula(text))).toBe('Na Cl'))
})

describe('a formula', () => {
  it('writes itself as it was written, without its state', () => {
    const formula = parseFormula(' CuSO4 . 5H2O (s) ')
    expect([formula.text, String(formula), JSON.stringify({ formula })]).toEqual([
      'CuSO4 . 5H2O',
      'CuSO4 . 5H2O',
      '{"formula":"CuSO4 . 5H2O"}',
    ])
  })

  it('does not change, and works each answer out once', () => {
    const formula = parseFormula('ZnSO4·7H2O')
    expect(Object.isFrozen(formula) && Object.isFrozen(formula.parts) && Object.isFrozen(formula.parts[0])).toBe(true)
    expect(formula.parts).toBe(formula.parts)
    expect(formula.counts).toBe(formula.counts)
    expect(formula.composition).toBe(formula.composition)
    expect(formula.hydration).toBe(formula.hydration)
    expect(formula.notes).toBe(formula.notes)
    expect(formula.parts[1]?.times).toBe(formula.parts[1]?.times)
    expect(formula.parts[1]?.counts).toBe(formula.parts[1]?.counts)
    expect(parseFormula('K·xH2O').parts[1]?.times).toBe(null)
  })

  it('shares no decimal that could be changed', () => {
    const count = parseFormula('H2O').composition.get('H')
    expect(Object.isFrozen(count) && Object.isFrozen(count?.d)).toBe(true)
    expect(count?.plus(1).times(3).div(7).sqrt().pow(2).minus(count).toFixed(6)).toBe('-0.714286')
    expect(count?.toNumber()).toBe(2)
  })
})

describe('reading without throwing', () => {
  it('gives the formula or the error that would have been thrown', () => {
    const read = tryParseFormula('ZnO')
    expect(read.ok && read.value.text).toBe('ZnO')
    const refused = tryParseFormula('Zno')
    expect(!refused.ok && refused.error.code).toBe('formula/unknown-symbol')
  })
})
