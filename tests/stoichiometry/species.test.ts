import { describe, expect, it } from 'vitest'
import { parseFormula } from '../../src/formula/index.js'
import { speciesKey } from '../../src/stoichiometry/index.js'
import { refusal } from '../quantity/refusal.js'

describe('one species', () => {
  it.each([
    ['CuSO4·5H2O', 'CuSO4.5H2O', 'the dots people type'],
    ['CuSO4·5H2O', 'CuSO₄∙5H₂O', 'subscripts'],
    ['K[Al(OH)4]', 'KAl(OH)4', 'brackets'],
    ['CH3COOH', 'C2H4O2', 'how the atoms are grouped'],
    ['HNO3', 'O3NH', 'the order of the atoms'],
    ['SO4^2-', 'SO4²⁻', 'the charge'],
    ['ZnO', 'ZnO(s)', 'the state'],
    ['Al2O3·xH2O', 'Al2O3.nH2O', 'the letter of an unknown number'],
  ])('%s and %s: %s makes no difference', (one, other) => expect(speciesKey(one)).toBe(speciesKey(other)))
})

describe('two species', () => {
  it.each([
    ['CuSO4', 'CuSO4·5H2O', 'water of crystallisation'],
    ['FeSO4·7H2O', 'FeSO4·4H2O', 'its number'],
    ['KAl(SO4)2·12H2O', 'K2SO4·Al2(SO4)3·24H2O', 'half as much of the same'],
    ['Fe^2+', 'Fe^3+', 'charge'],
    ['Fe', 'Fe^2+', 'no charge'],
    ['[Fe(H2O)6]SO4·H2O', 'FeSO4·7H2O', 'water that is not of crystallisation'],
    ['D2O', 'H2O', 'isotopes'],
    ['Al2O3·xH2O', 'Al2O3', 'an unknown number of water'],
    ['CO', 'Co', 'case'],
  ])('%s and %s: %s', (one, other) => expect(speciesKey(one)).not.toBe(speciesKey(other)))
})

it('takes a formula that was read', () => expect(speciesKey(parseFormula('ZnO'))).toBe(speciesKey('ZnO')))

it.each([
  ['cuso4', 'formula/unknown-symbol'],
  ['', 'formula/empty'],
  [null, 'formula/not-text'],
  [{}, 'formula/not-text'],
  ['__proto__', 'formula/markup'],
])('%s is refused', (text, code) => expect(refusal(() => speciesKey(text as never)).code).toBe(code))

it('remembers texts only up to a limit, and is the same with and without', () => {
  const texts = Array.from({ length: 3000 }, (_, index) => `C${index + 1}H4`)
  const first = texts.map((text) => speciesKey(text))
  expect(texts.map((text) => speciesKey(parseFormula(text)))).toEqual(first)
  expect(texts.map((text) => speciesKey(text))).toEqual(first)
})
