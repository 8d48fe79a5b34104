import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type FormulaError, parseFormula, tryParseFormula } from '../../src/formula/index.js'

function refusal(text: string): FormulaError {
  const outcome = tryParseFormula(text)
  if (outcome.ok) throw new Error(`${text} was read`)
  return outcome.error
}

/** Text, code, where, what was found, hint. */
type Row = readonly [text: string, code: string, start: number, end: number, found: string, hint?: string]

const rows: readonly Row[] = [
  // letters that are no symbol
  ['cuso4', 'formula/unknown-symbol', 0, 4, 'cuso', 'CuSO4?'],
  ['NAcl', 'formula/unknown-symbol', 1, 4, 'Acl', 'NaCl?'],
  ['CuSo4', 'formula/unknown-symbol', 2, 4, 'So', 'CuSO4?'],
  ['NACL', 'formula/unknown-symbol', 1, 2, 'A', 'NaCl?'],
  ['MGSO4·7H2O', 'formula/unknown-symbol', 0, 1, 'M', 'MgSO4·7H2O?'],
  ['AL2(SO4)3', 'formula/unknown-symbol', 0, 1, 'A', 'Al2(SO4)3?'],
  ['h2so4', 'formula/unknown-symbol', 0, 1, 'h', 'H2SO4?'],
  ['caco3', 'formula/unknown-symbol', 0, 4, 'caco', 'CaCO3?'],
  ['co2', 'formula/unknown-symbol', 0, 2, 'co', 'CO2?'],
  ['naoh', 'formula/unknown-symbol', 0, 4, 'naoh', 'NaOH?'],
  ['c6h12o6', 'formula/unknown-symbol', 0, 1, 'c', 'C6H12O6?'],
  ['k4[fe(cn)6]·3h2o', 'formula/unknown-symbol', 0, 1, 'k', 'K4[Fe(CN)6]·3H2O?'],
  ['znso4·xh2o', 'formula/unknown-symbol', 0, 4, 'znso', 'ZnSO4·xH2O?'],
  ['mgcl2(aq)', 'formula/unknown-symbol', 0, 4, 'mgcl', 'MgCl2(aq)?'],
  ['so4^2-', 'formula/unknown-symbol', 0, 2, 'so', 'SO4^2-?'],
  ['fe3+', 'formula/unknown-symbol', 0, 2, 'fe', 'Fe3+?'],
  ['zn', 'formula/unknown-symbol', 0, 2, 'zn', 'Zn?'],
  ['Kl', 'formula/unknown-symbol', 0, 2, 'Kl', 'KI?'],
  ['Pbl2', 'formula/unknown-symbol', 0, 3, 'Pbl', 'PbI2?'],
  ['AICl3', 'formula/unknown-symbol', 0, 1, 'A', 'AlCl3?'],
  ['Foo', 'formula/unknown-symbol', 0, 3, 'Foo'],
  ['NaQ', 'formula/unknown-symbol', 2, 3, 'Q'],
  ['Uuo', 'formula/unknown-symbol', 0, 3, 'Uuo'],
  ['NaClsalt', 'formula/unknown-symbol', 2, 8, 'Clsalt'],
  ['abcdefghijklmnopqrstuvwxyzab', 'formula/unknown-symbol', 0, 28, 'abcdefghijklmnopqrstuvwxyzab'],
  [`${'na'.repeat(45)}`, 'formula/unknown-symbol', 0, 90, 'na'.repeat(45)],
  ['[Ni(en)3]Cl2', 'formula/abbreviation', 4, 6, 'en', '[Ni(C2H8N2)3]Cl2?'],
  ['MeOH', 'formula/abbreviation', 0, 2, 'Me', 'CH3OH?'],
  ['(en)', 'formula/abbreviation', 1, 3, 'en', '(C2H8N2)?'],
  ['PbEt4', 'formula/abbreviation', 2, 4, 'Et', 'Pb(C2H5)4?'],
  ['Et₂O', 'formula/abbreviation', 0, 2, 'Et', '(C2H5)₂O?'],
  ['cl2', 'formula/unknown-symbol', 0, 2, 'cl', 'Cl2?'],
  ['o2', 'formula/unknown-symbol', 0, 1, 'o', 'O2?'],
  // numbers
  ['Cu(S04)', 'formula/leading-zero', 4, 6, '04', 'Cu(SO4)?'],
  ['Al(S04)3', 'formula/leading-zero', 4, 6, '04', 'Al(SO4)3?'],
  ['(NH4)2S04·6H20', 'formula/leading-zero', 7, 9, '04', '(NH4)2SO4·6H2O?'],
  ['H2S04(aq)', 'formula/leading-zero', 3, 5, '04', 'H2SO4(aq)?'],
  ['Na0H', 'formula/zero-count', 2, 3, '0', 'NaOH?'],
  ['Fe0', 'formula/zero-count', 2, 3, '0', 'FeO?'],
  ['Fe0.0O', 'formula/zero-count', 2, 5, '0.0'],
  ['Fe.0O', 'formula/zero-count', 2, 4, '.0'],
  ['CaSO4·0H2O', 'formula/zero-count', 6, 7, '0'],
  ['H₀O', 'formula/zero-count', 1, 2, '₀'],
  ['Fe00.5O', 'formula/leading-zero', 2, 6, '00.5'],
  ['Ca(0H)2', 'formula/misplaced-number', 3, 4, '0', 'Ca(OH)2?'],
  ['(½H2O)', 'formula/misplaced-number', 1, 2, '½'],
  ['CuSO4·5.H2O', 'formula/misplaced-number', 6, 7, '5'],
  ['[2CaSO4·H2O]', 'formula/misplaced-number', 1, 2, '2'],
  ['(13C)H4', 'formula/misplaced-number', 1, 3, '13'],
  ['5', 'formula/misplaced-number', 0, 1, '5'],
  ['NaCl·2', 'formula/misplaced-number', 5, 6, '2'],
  ['H2₂', 'formula/misplaced-number', 2, 3, '₂'],
  ['₂H', 'formula/misplaced-number', 0, 1, '₂'],
  ['H1000001', 'formula/count-out-of-range', 1, 8, '1000001'],
  ['H1.1234567', 'formula/count-out-of-range', 1, 10, '1.1234567'],
  ['H1/1000001', 'formula/count-out-of-range', 1, 10, '1/1000001'],
  ['(H100000)100000', 'formula/count-out-of-range', 0, 15, '(H100000)100000'],
  ['(H0.000001)0.000001', 'formula/count-out-of-range', 0, 19, '(H0.000001)0.000001'],
  ['(H1.5)1000000)', 'formula/unopened-bracket', 13, 14, ')', '(H1.5)1000000?'],
  ['1000000H100000', 'formula/count-out-of-range', 0, 14, '1000000H100000'],
  ['H1/999983H1/999979H1/999961', 'formula/count-out-of-range', 0, 27, 'H1/999983H1/999979H1/999961'],
  ['(H1000000)1001', 'formula/count-out-of-range', 0, 14, '(H1000000)1001'],
  ['1001H1000000', 'formula/count-out-of-range', 0, 12, '1001H1000000'],
  ['(H1/2O1000000)1001', 'formula/count-out-of-range', 0, 18, '(H1/2O1000000)1001'],
  ['(H1/1000000)1/1001', 'formula/count-out-of-range', 0, 18, '(H1/1000000)1/1001'],
  ['1/0H', 'formula/bad-number', 0, 3, '1/0'],
  ['Fe1/0', 'formula/bad-number', 2, 5, '1/0'],
  ['Fe0,95O', 'formula/decimal-comma', 2, 6, '0,95', 'Fe0.95O?'],
  ['Fe₀,95O', 'formula/decimal-comma', 2, 6, '₀,95'],
  ['CaSO4·0,5H2O', 'formula/decimal-comma', 6, 9, '0,5', 'CaSO4·0.5H2O?'],
  ['CuSO4 5H2O', 'formula/missing-dot', 6, 7, '5', 'CuSO4·5H2O?'],
  ['H 2 O', 'formula/missing-dot', 2, 3, '2', 'H2O?'],
  ['CuSO 4 ·5H 2 O', 'formula/missing-dot', 5, 6, '4', 'CuSO4·5H2O?'],
  ['2NaCl 5H2O', 'formula/missing-dot', 6, 7, '5', '2NaCl·5H2O?'],
  ['CuSO4·5 7H2O', 'formula/missing-dot', 8, 9, '7'],
  // dots
  ['CuSO4··5H2O', 'formula/empty-part', 6, 7, '·', 'CuSO4·5H2O?'],
  ['CuSO4..5H2O', 'formula/empty-part', 6, 7, '.', 'CuSO4.0.5H2O?'],
  ['CuSO4·.5H2O', 'formula/empty-part', 6, 7, '.', 'CuSO4·0.5H2O?'],
  ['.5H2O', 'formula/empty-part', 0, 1, '.', '5H2O?'],
  ['CuSO4·', 'formula/empty-part', 6, 6, 'the end', 'CuSO4?'],
  ['CuSO4 · · ', 'formula/empty-part', 8, 9, '·', 'CuSO4?'],
  ['·CuSO4', 'formula/empty-part', 0, 1, '·', 'CuSO4?'],
  ['·OH', 'formula/empty-part', 0, 1, '·', 'OH?'],
  ['·', 'formula/empty-part', 0, 1, '·'],
  ['(NaCl·)', 'formula/empty-bracket', 0, 7, '(NaCl·)'],
  // brackets
  ['Zn(SO4', 'formula/unclosed-bracket', 2, 3, '(', 'Zn(SO4)?'],
  ['Zn(', 'formula/unclosed-bracket', 2, 3, '('],
  ['Zn[ ', 'formula/unclosed-bracket', 2, 3, '['],
  ['Zn[ ·H2O]', 'formula/unclosed-bracket', 2, 3, '['],
  ['[Cu(NH3)4', 'formula/unclosed-bracket', 0, 1, '[', '[Cu(NH3)4]?'],
  ['Zn(SO4]', 'formula/mismatched-bracket', 6, 7, ']', 'Zn(SO4)?'],
  ['{NaCl)', 'formula/mismatched-bracket', 5, 6, ')', '{NaCl}?'],
  ['ZnSO4)', 'formula/unopened-bracket', 5, 6, ')', 'ZnSO4?'],
  [')', 'formula/unopened-bracket', 0, 1, ')'],
  ['NaCl·)', 'formula/unopened-bracket', 5, 6, ')'],
  ['Zn()', 'formula/empty-bracket', 2, 4, '()'],
  ['Zn{}', 'formula/empty-bracket', 2, 4, '{}'],
  ['Zn[]', 'formula/vacancy', 2, 4, '[]'],
  [`${'('.repeat(33)}H${')'.repeat(33)}`, 'formula/too-deep', 32, 33, '('],
  // what has no definite composition
  ['(C2H4)n', 'formula/placeholder', 6, 7, 'n'],
  ['(NaPO3)x', 'formula/placeholder', 7, 8, 'x'],
  ['NOx', 'formula/placeholder', 2, 3, 'x'],
  ['LixCoO2', 'formula/placeholder', 2, 3, 'x'],
  ['NaxCoO2', 'formula/placeholder', 2, 3, 'x'],
  ['CnH2n+2', 'formula/placeholder', 4, 5, 'n'],
  ['Fe1-xO', 'formula/placeholder', 4, 5, 'x'],
  ['YBa2Cu3O7-δ', 'formula/placeholder', 10, 11, 'δ'],
  ['xNaCl', 'formula/unknown-symbol', 0, 1, 'x'],
  ['M(OH)2', 'formula/placeholder', 0, 1, 'M'],
  ['LnCl3', 'formula/placeholder', 0, 2, 'Ln'],
  ['HX', 'formula/placeholder', 1, 2, 'X'],
  ['MO', 'formula/unknown-symbol', 0, 1, 'M', 'Mo?'],
  ['ZnS:Ag', 'formula/placeholder', 3, 6, ':Ag'],
  ['Y3Al5O12:Ce3+', 'formula/placeholder', 8, 13, ':Ce3+'],
  ['Y2O3:Eu^3+', 'formula/placeholder', 4, 10, ':Eu^3+'],
  ['Y2O3:V^3+', 'formula/placeholder', 4, 9, ':V^3+'],
  ['NaI: Tl', 'formula/placeholder', 3, 7, ': Tl'],
  ['NaCl·xNH3', 'formula/placeholder', 5, 6, 'x'],
  ['NaCl·y(NH3)', 'formula/placeholder', 5, 6, 'y'],
  ['NaCl·x', 'formula/placeholder', 5, 6, 'x'],
  ['(NaCl·xH2O)2', 'formula/placeholder', 6, 7, 'x'],
  ['MnSO4 x H2O', 'formula/placeholder', 6, 7, 'x'],
  ['(Mg,Fe)2SiO4', 'formula/alternatives', 3, 4, ','],
  ['(Mg;Fe)2SiO4', 'formula/alternatives', 3, 4, ';'],
  ['Mg6Al2[(OH)16|CO3]·4H2O', 'formula/alternatives', 13, 14, '|'],
  ['□Fe2O3', 'formula/vacancy', 0, 1, '□'],
  ['Fe0.84-0.95O', 'formula/range', 2, 11, '0.84-0.95'],
  ['CuSO4·5-7H2O', 'formula/range', 6, 9, '5-7'],
  ['CuSO4·10-12H2O', 'formula/range', 6, 11, '10-12'],
  ['CuSO4·5-7.H2O', 'formula/range', 6, 9, '5-7'],
  ['5-7H2O', 'formula/range', 0, 3, '5-7'],
  ['CuSO4·~5H2O', 'formula/range', 6, 7, '~'],
  ['CuSO4-5H2O', 'formula/range', 4, 7, '4-5', 'CuSO4·5H2O?'],
  ['CuSO4_5H2O', 'formula/markup', 5, 6, '_', 'CuSO4·5H2O?'],
  ['CuSO4 + 5 H2O', 'formula/equation', 6, 7, '+', 'CuSO4·5 H2O?'],
  ['¹³CO2', 'formula/isotope-label', 0, 2, '¹³'],
  ['¹⁰BF3', 'formula/isotope-label', 0, 2, '¹⁰'],
  ['²H2O', 'formula/isotope-label', 0, 1, '²'],
  ['^13CO2', 'formula/isotope-label', 0, 3, '^13'],
  ['^{13}CO2', 'formula/isotope-label', 0, 4, '^{13'],
  ['[13C]H4', 'formula/isotope-label', 1, 3, '13'],
  ['H2¹⁸O', 'formula/isotope-label', 2, 4, '¹⁸'],
  ['H²O', 'formula/isotope-label', 1, 2, '²', 'H2O?'],
  ['H³O⁺', 'formula/isotope-label', 1, 2, '³', 'H3O⁺?'],
  ['CuSO₄·5H²O', 'formula/isotope-label', 8, 9, '²', 'CuSO₄·5H2O?'],
  ['Fe(II)SO4', 'formula/oxidation-number', 2, 6, '(II)', 'FeSO4?'],
  ['Fe^{III}Cl3', 'formula/oxidation-number', 2, 7, '^{III', 'FeCl3?'],
  ['Fe^IIICl3', 'formula/oxidation-number', 2, 6, '^III', 'FeCl3?'],
  ['Fe^III', 'formula/oxidation-number', 2, 6, '^III', 'Fe?'],
  ['Pb(IV)O2', 'formula/oxidation-number', 2, 6, '(IV)', 'PbO2?'],
  ['Cr(VI)O3', 'formula/oxidation-number', 2, 6, '(VI)', 'CrO3?'],
  ['Fe(XII)O6', 'formula/oxidation-number', 2, 7, '(XII)', 'FeO6?'],
  ['Fe[II)Cl2', 'formula/mismatched-bracket', 5, 6, ')', 'Fe[II]Cl2?'],
  ['CH3-CH3', 'formula/bond', 3, 4, '-', 'CH3CH3?'],
  ['CH3-(CH2)2', 'formula/bond', 3, 4, '-', 'CH3(CH2)2?'],
  [`CH3-${'CH2'.repeat(30)}`, 'formula/bond', 3, 4, '-', `CH3${'CH2'.repeat(30)}?`],
  [`CH3-(${'CH2'.repeat(30)})2`, 'formula/bond', 3, 4, '-', `CH3(${'CH2'.repeat(30)})2?`],
  ['SO4--Na', 'formula/bond', 3, 5, '--'],
  ['SO4--2', 'formula/bond', 3, 5, '--'],
  ['SO4 2-Na', 'formula/bond', 5, 6, '-'],
  ['CH3-CH2-OH', 'formula/bond', 3, 4, '-', 'CH3CH2OH?'],
  ['CH3-CH2-(CH2)2', 'formula/bond', 3, 4, '-', 'CH3CH2(CH2)2?'],
  ['CH2=CH2', 'formula/bond', 3, 4, '=', 'CH2CH2?'],
  ['HC≡CH', 'formula/bond', 2, 3, '≡', 'HCCH?'],
  ['SO4=', 'formula/bond', 3, 4, '=', 'SO4^2-?'],
  ['=H2O', 'formula/bond', 0, 1, '=', 'H2O?'],
  ['PO4≡', 'formula/bond', 3, 4, '≡', 'PO4^3-?'],
  ['Na-^', 'formula/bond', 2, 3, '-'],
  ['cis-[Pt(NH3)2Cl2]', 'formula/structure-prefix', 0, 4, 'cis-', '[Pt(NH3)2Cl2]?'],
  ['α-Al2O3', 'formula/structure-prefix', 0, 1, 'α', 'Al2O3?'],
  ['(η5-C5H5)2Fe', 'formula/structure-prefix', 1, 2, 'η', '(C5H5)2Fe?'],
  ['ω-Al2O3', 'formula/structure-prefix', 0, 1, 'ω', 'Al2O3?'],
  ['μSO4', 'formula/structure-prefix', 0, 1, 'μ', 'SO4?'],
  ['alpha-Al2O3', 'formula/structure-prefix', 0, 6, 'alpha-', 'Al2O3?'],
  ['n-C4H10', 'formula/structure-prefix', 0, 2, 'n-', 'C4H10?'],
  // characters
  ['СuSO4', 'formula/look-alike', 0, 1, 'С', 'CuSO4?'],
  ['CuSО4', 'formula/look-alike', 3, 4, 'О', 'CuSO4?'],
  ['ΝaCl', 'formula/look-alike', 0, 1, 'Ν', 'NaCl?'],
  ['\u212aCl', 'formula/look-alike', 0, 1, '\u212a', 'KCl?'],
  ['Ｃａ（ＯＨ）２', 'formula/look-alike', 0, 1, 'Ｃ', 'Ca(OH)2?'],
  ['𝐍𝐚Cl', 'formula/look-alike', 0, 2, '𝐍', 'NaCl?'],
  ['SO<sub>4</sub><sup>2-</sup>', 'formula/markup', 2, 3, '<', 'SO4^2-?'],
  ['Na_{2}SO_{4}', 'formula/markup', 2, 3, '_', 'Na2SO4?'],
  ['\\ce{CuSO4}', 'formula/markup', 0, 1, '\\', 'CuSO4?'],
  ['$H_2O$', 'formula/markup', 0, 1, '$', 'H2O?'],
  ['Cu\u200bSO4', 'formula/control-character', 2, 3, '\u200b', 'CuSO4?'],
  ['Cu\u{e0020}SO4', 'formula/control-character', 2, 4, '\u{e0020}', 'CuSO4?'],
  ['Cu\u3164SO4', 'formula/control-character', 2, 3, '\u3164', 'CuSO4?'],
  ['Cu\u0000SO4', 'formula/control-character', 2, 3, '\u0000', 'CuSO4?'],
  ['Na\tCl', 'formula/control-character', 2, 3, '\t', 'NaCl?'],
  ['Na\u202eCl', 'formula/control-character', 2, 3, '\u202e', 'NaCl?'],
  ['Na\ud800Cl', 'formula/control-character', 2, 3, '\ud800', 'NaCl?'],
  ['Na！', 'formula/look-alike', 2, 3, '！'],
  ['Na～', 'formula/look-alike', 2, 3, '～'],
  ['Na?', 'formula/unexpected-character', 2, 3, '?', 'Na?'],
  ['NaCl!', 'formula/unexpected-character', 4, 5, '!', 'NaCl?'],
  ['Na\u0301Cl', 'formula/unexpected-character', 2, 3, '\u0301', 'NaCl?'],
  ['H⃗2O', 'formula/unexpected-character', 1, 2, '⃗', 'H2O?'],
  ['ÅgCl', 'formula/look-alike', 0, 1, 'Å', 'AgCl?'],
  ['ʜ2O', 'formula/look-alike', 0, 1, 'ʜ', 'H2O?'],
  ['CuSO4∘5H2O', 'formula/look-alike', 5, 6, '∘', 'CuSO4·5H2O?'],
  ['Cl¯', 'formula/look-alike', 2, 3, '¯', 'Cl-?'],
  ['Cl₋', 'formula/look-alike', 2, 3, '₋', 'Cl-?'],
  ['“H2O”', 'formula/markup', 0, 1, '“', 'H2O?'],
  ['<b>H2O</b>', 'formula/markup', 0, 1, '<', 'H2O?'],
  ['Na!Cl', 'formula/unexpected-character', 2, 3, '!'],
  ['Na😀', 'formula/unexpected-character', 2, 4, '😀'],
  ['Na٣', 'formula/unexpected-character', 2, 3, '٣'],
  ['H2/O', 'formula/unexpected-character', 2, 3, '/'],
  ['H1/₂O', 'formula/unexpected-character', 2, 3, '/', 'H1/2O?'],
  ['NaCl/KCl', 'formula/unexpected-character', 4, 5, '/'],
  // equations
  ['NaCl + KCl', 'formula/equation', 5, 6, '+'],
  ['2H2 + O2 -> 2H2O', 'formula/equation', 4, 5, '+'],
  ['Na+.5H2O', 'formula/equation', 2, 3, '+'],
  ['Na+Cl-', 'formula/equation', 2, 3, '+'],
  ['Na+-', 'formula/equation', 2, 3, '+'],
  ['KFe3+3(SO4)2(OH)6', 'formula/equation', 4, 5, '+', 'KFe3(SO4)2(OH)6?'],
  ['NaFe3+[Si2O6]', 'formula/equation', 5, 6, '+', 'NaFe[Si2O6]?'],
  ['NaV3+[Si2O6]', 'formula/equation', 4, 5, '+', 'NaV[Si2O6]?'],
  // charges that iron and silver are known with, and others
  ['NaFe1+[Si2O6]', 'formula/equation', 5, 6, '+'],
  ['NaFe2+[Si2O6]', 'formula/equation', 5, 6, '+', 'NaFe[Si2O6]?'],
  ['NaFe4+[Si2O6]', 'formula/equation', 5, 6, '+', 'NaFe[Si2O6]?'],
  ['NaFe5+[Si2O6]', 'formula/equation', 5, 6, '+'],
  ['NaAg1+[Si2O6]', 'formula/equation', 5, 6, '+'],
  ['CuSO4 + H2O', 'formula/equation', 6, 7, '+'],
  ['K2+Cl', 'formula/equation', 2, 3, '+'],
  ['H2+Cl2', 'formula/equation', 2, 3, '+'],
  ['NaCl → Na', 'formula/equation', 5, 6, '→'],
  ['Na +', 'formula/equation', 3, 4, '+'],
  // charges
  ['SO4^2', 'formula/bad-charge', 3, 5, '^2', 'SO4^2-?'],
  ['Na^', 'formula/bad-charge', 2, 3, '^', 'Na^+?'],
  ['Na^Cl', 'formula/bad-charge', 2, 3, '^'],
  ['SO4^₂-', 'formula/bad-charge', 3, 5, '^₂'],
  ['Fe^00', 'formula/bad-charge', 2, 5, '^00'],
  ['SO4^2-0', 'formula/bad-charge', 3, 7, '^2-0'],
  ['Na^+^+', 'formula/bad-charge', 4, 6, '^+'],
  ['(Na^+)^+', 'formula/bad-charge', 6, 8, '^+'],
  ['SO4^', 'formula/bad-charge', 3, 4, '^', 'SO4^2-?'],
  ['Zr^{4}', 'formula/bad-charge', 2, 5, '^{4', 'Zr^{4+}?'],
  ['C6H12O6¹', 'formula/bad-charge', 7, 8, '¹'],
  ['Zn^2', 'formula/bad-charge', 2, 4, '^2', 'Zn^2+?'],
  ['Zn²', 'formula/bad-charge', 2, 3, '²', 'Zn²+?'],
  ['SO4^2--', 'formula/bad-charge', 3, 7, '^2--'],
  ['SO4^2-2', 'formula/bad-charge', 3, 7, '^2-2'],
  ['Fe^100+', 'formula/bad-charge', 2, 7, '^100+'],
  ['Fe-0', 'formula/bad-charge', 2, 4, '-0'],
  ['SO4^{2-', 'formula/bad-charge', 3, 6, '^{2'],
  ['(Na^+)0.5', 'formula/bad-charge', 0, 9, '(Na^+)0.5'],
  ['½Na^+', 'formula/bad-charge', 0, 5, '½Na^+'],
  ['O2-', 'formula/ambiguous-charge', 0, 3, 'O2-', 'O^2- or O2^-?'],
  ['N3-', 'formula/ambiguous-charge', 0, 3, 'N3-', 'N^3- or N3^-?'],
  ['VO2+', 'formula/ambiguous-charge', 0, 4, 'VO2+', 'VO^2+ or VO2^+?'],
  ['Fe2-', 'formula/ambiguous-charge', 0, 4, 'Fe2-', 'Fe^2- or Fe2^-?'],
  ['Zr34+', 'formula/ambiguous-charge', 0, 5, 'Zr34+', 'Zr3^4+ or Zr34^+?'],
  ['He2+', 'formula/ambiguous-charge', 0, 4, 'He2+', 'He^2+ or He2^+?'],
  ['(H2O)2+', 'formula/ambiguous-charge', 0, 7, '(H2O)2+', '(H2O)^2+ or (H2O)2^+?'],
  ['(Mo2O7)2-', 'formula/ambiguous-charge', 0, 9, '(Mo2O7)2-', '(Mo2O7)^2- or (Mo2O7)2^-?'],
  ['XeO64-', 'formula/ambiguous-charge', 0, 6, 'XeO64-', 'XeO6^4- or XeO64^-?'],
  ['TiH22+', 'formula/ambiguous-charge', 0, 6, 'TiH22+', 'TiH2^2+ or TiH22^+?'],
  ['MnO92-', 'formula/ambiguous-charge', 0, 6, 'MnO92-', 'MnO9^2- or MnO92^-?'],
  ['MnO12-', 'formula/ambiguous-charge', 0, 6, 'MnO12-', 'MnO1^2- or MnO12^-?'],
  ['MoO67-', 'formula/ambiguous-charge', 0, 6, 'MoO67-', 'MoO6^7- or MoO67^-?'],
  ['MnO28-', 'formula/ambiguous-charge', 0, 6, 'MnO28-', 'MnO2^8- or MnO28^-?'],
  ['B12H122-', 'formula/ambiguous-charge', 0, 8, 'B12H122-', 'B12H12^2- or B12H122^-?'],
  ['Fe^2+Fe2O4', 'formula/misplaced-charge', 2, 5, '^2+'],
  ['Fe²⁺Fe2O4', 'formula/misplaced-charge', 2, 5, '²⁺F'],
  ['(Na^+)Cl', 'formula/misplaced-charge', 0, 3, '(Na'],
  ['^2-', 'formula/misplaced-charge', 0, 1, '^'],
  ['-', 'formula/misplaced-charge', 0, 1, '-'],
  ['(2-)', 'formula/misplaced-charge', 0, 1, '('],
  ['5^2-', 'formula/misplaced-charge', 1, 2, '^'],
  ['2-', 'formula/misplaced-charge', 1, 2, '-'],
  ['NaCl·+', 'formula/misplaced-charge', 5, 6, '+'],
  ['⁻', 'formula/misplaced-charge', 0, 1, '⁻'],
  ['e', 'formula/bare-electron', 0, 1, 'e', 'e^-?'],
  ['CuSO4·1e3H2O', 'formula/bare-electron', 7, 8, 'e'],
  ['e^+', 'formula/bare-electron', 0, 3, 'e^+', 'e^-?'],
  ['e^2-', 'formula/bare-electron', 0, 4, 'e^2-', 'e^-?'],
  ['e^-Na', 'formula/bare-electron', 0, 3, 'e^-', 'e^-?'],
  // states
  ['NaCl(cr)', 'formula/unknown-state', 4, 8, '(cr)', 'NaCl(s)?'],
  ['H2O(liq)', 'formula/unknown-state', 3, 8, '(liq)', 'H2O(l)?'],
  ['Na(x)', 'formula/unknown-state', 2, 5, '(x)'],
  ['C(graphite)', 'formula/unknown-state', 1, 11, '(graphite)'],
  ['CO2,g', 'formula/alternatives', 3, 4, ',', 'CO2(g)?'],
  ['CO2, g', 'formula/alternatives', 3, 4, ',', 'CO2(g)?'],
  ['NaCl aq', 'formula/unknown-symbol', 5, 7, 'aq', 'NaCl(aq)?'],
  ['NH3;', 'formula/alternatives', 3, 4, ';', 'NH3?'],
  ['NaCl(aq)·H2O', 'formula/misplaced-state', 4, 8, '(aq)'],
  ['H2O(l)Na', 'formula/misplaced-state', 3, 6, '(l)'],
  ['CO2(g)H2O', 'formula/misplaced-state', 3, 6, '(g)'],
  ['NaClaq)', 'formula/unknown-symbol', 2, 6, 'Claq'],
  ['Na(Xy)', 'formula/unknown-symbol', 3, 5, 'Xy'],
  ['H2O(s)(g)', 'formula/misplaced-state', 3, 6, '(s)'],
  ['Na(aq)+', 'formula/misplaced-state', 2, 6, '(aq)'],
  ['NaCl(cr)Na', 'formula/unknown-symbol', 5, 7, 'cr'],
]

const refused = rows.map(([text, code, start, end, found, hint]) => ({ text, code, start, end, found, hint }))

describe('what is refused', () => {
  it.each(refused)(
    '$text: $code from $start to $end, found $found, hint $hint',
    ({ text, code, start, end, found, hint }) => {
      const error = refusal(text)
      expect([error.code, error.position, error.found, error.hint]).toEqual([code, { start, end }, found, hint])
      expect(error.expected).toMatch(/\w/)
      expect(error.message).toMatch(/ at character \d+/)
      expect(error.message).not.toMatch(/undefined|NaN/)
    },
  )

  it.each(refused.filter(({ found }) => found !== 'the end'))(
    '$text: the position is that of what was found',
    ({ text, start, end, found }) => expect(text.slice(start, end)).toBe(found),
  )

  it('is found at its place in the text that was handed over, spaces in front included', () => {
    expect(refusal('  \tCuSo4').position).toEqual({ start: 5, end: 7 })
  })

  it('names the code point of what cannot be seen or looks like something else', () => {
    expect(refusal('Cu\u200bSO4').message).toContain('"\\u{200B}" at character 3 is an invisible character (U+200B)')
    expect(refusal('CuSО4').message).toContain('(U+041E) looks like "O", but is a Cyrillic character')
    expect(refusal('ʜ2O').message).toContain('(U+029C) looks like "H", but is a special Latin character')
    expect(refusal('Ｃu').message).toContain('(U+FF23) looks like "C", but is a wide or ornamented character')
    expect(refusal('ÅgCl').message).toContain('looks like "A", but is a marked character')
    expect(refusal('Na٣').message).toContain('(U+0663)')
  })

  it.each([
    ['Na\u0000', '\\u{0000}'],
    ['Na\u001f', '\\u{001F}'],
    ['Na\u007f', '\\u{007F}'],
    ['Na\u0080', '\\u{0080}'],
    ['Na\u009f', '\\u{009F}'],
    ['NaI: Tl', ': Tl'],
    ['NaI:\u00a0Tl', ':\u00a0Tl'],
    ['Na!', '!'],
    ['Na~', '~'],
  ])('%j: the message quotes "%s"', (text, quoted) => expect(refusal(text).message).toContain(`"${quoted}" at`))

  it('is shortened in the message where it is longer than 40 characters', () => {
    expect(refusal('x'.repeat(40)).message).toContain(`"${'x'.repeat(40)}"`)
    expect(refusal('x'.repeat(41)).message).toContain(`"${'x'.repeat(37)}..."`)
  })
})

describe('whatever is refused', () => {
  const pieces = [
    ...'SO4·()[]^+x.,a₄²⁻{ -:=*',
    'Cu',
    'H2O',
    '2-',
    'cl',
    'NA',
    '1/2',
    'SO4',
    '(aq)',
    'Ac',
    'Me',
    'co',
    '0',
    'Fe',
  ]
  const texts = fc.array(fc.constantFrom(...pieces), { minLength: 1, maxLength: 6 }).map((all) => all.join(''))

  it('what is found is what stands at the place that is named, and what is suggested can be read', () => {
    fc.assert(
      fc.property(texts, (text) => {
        const outcome = tryParseFormula(text)
        if (outcome.ok) return
        const { code, found, hint = '', position: { start, end } = { start: 0, end: 0 } } = outcome.error
        if (end > start && code !== 'formula/empty') expect([text, found]).toEqual([text, text.slice(start, end)])
        if (/^\S+\?$/.test(hint)) expect([hint, tryParseFormula(hint.slice(0, -1)).ok]).toEqual([hint, true])
      }),
      { numRuns: 3000 },
    )
  })
})

describe('texts that are none, or too long', () => {
  it.each([[''], [' '], ['\n'], ['\u3000']])('%j is empty', (text) => {
    const { code, found, position } = refusal(text)
    expect([code, found, position]).toEqual(['formula/empty', 'nothing', { start: 0, end: text.length }])
  })

  it('a state alone is empty too', () => {
    expect(refusal('(aq)').code).toBe('formula/empty')
    expect(refusal(' (aq) ').found).toBe('(aq)')
    expect(refusal('(aq)').message).toContain('state')
    expect(refusal('').message).not.toContain('state')
  })

  it.each([
    [undefined],
    [null],
    [5],
    [Number.NaN],
    [10n],
    [true],
    [Symbol('x')],
    [{}],
    [[]],
    [() => 'NaCl'],
    [new String('NaCl')],
    [new Map()],
  ])('%s is not text', (value) => {
    expect(() => parseFormula(value as unknown as string)).toThrow(
      expect.objectContaining({ code: 'formula/not-text', expected: expect.stringContaining('as text') }),
    )
  })

  it('10 000 characters are read, one more is refused', () => {
    expect(parseFormula('H'.repeat(10_000)).composition.get('H')?.toNumber()).toBe(10_000)
    const { code, found } = refusal('H'.repeat(10_001))
    expect([code, found]).toEqual(['formula/too-long', '10001 characters'])
  })
})
