import { describe, expect, it } from 'vitest'
import { anhydrous, parseFormula, withWater } from '../../src/formula/index.js'

describe('without its water of crystallisation', () => {
  it.each([
    ['ZnSO4·7H2O', 'ZnSO4'],
    ['CuSO4 . 5 H2O', 'CuSO4'],
    ['CuSO4 x 5H2O', 'CuSO4'],
    ['CaSO4.0.5H2O', 'CaSO4'],
    ['Fe2O3·xH2O', 'Fe2O3'],
    ['3CdSO4·8H2O', '3CdSO4'],
    ['5H2O·CuSO4', 'CuSO4'],
    ['H2O·CuSO4·4H2O', 'CuSO4'],
    ['CuSO4·4NH3·H2O', 'CuSO4·4NH3'],
    ['NaCl·H2O·KCl', 'NaCl·KCl'],
    ['NaCl ·H2O·KCl', 'NaCl·KCl'],
    ['[Cu(NH3)4]SO4·H2O', '[Cu(NH3)4]SO4'],
    ['[Fe(CN)6]^4-·3H2O', '[Fe(CN)6]^4-'],
    ['{Ca6[Al(OH)6]2·24H2O}[(SO4)3·2H2O]', '{Ca6[Al(OH)6]2}[(SO4)3]'],
    ['CuSO4·5D2O', 'CuSO4'],
    ['ZnSO4·7H2O(s)', 'ZnSO4'],
  ])('%s is %s', (text, expected) => {
    const dry = anhydrous(text)
    expect(dry.text).toBe(expected)
    expect(dry.hydration?.toNumber()).toBe(0)
    expect(dry.state).toBeUndefined()
  })

  it.each([['ZnSO4'], ['Ca(OH)2'], ['[Cu(H2O)4]^2+'], ['H2O'], ['H2O·H2O'], ['NaCl(aq)']])('%s is itself', (text) => {
    const formula = parseFormula(text)
    expect(anhydrous(formula)).toBe(formula)
  })
})

describe('with another number of waters', () => {
  it.each([
    ['ZnSO4', 7, 'ZnSO4·7H2O'],
    ['ZnSO4·7H2O', 1, 'ZnSO4·H2O'],
    ['ZnSO4·7H2O', 0, 'ZnSO4'],
    ['CaSO4', 0.5, 'CaSO4·0.5H2O'],
    ['CdSO4', '8/3', 'CdSO4·8/3H2O'],
    ['CaSO4', '½', 'CaSO4·½H2O'],
    ['Al2O3', 'x', 'Al2O3·xH2O'],
    ['Al2O3·xH2O', 3, 'Al2O3·3H2O'],
    ['K2SO4·Al2(SO4)3·24H2O', 12, 'K2SO4·Al2(SO4)3·12H2O'],
  ])('%s with %s is %s', (text, water, expected) => expect(withWater(text, water).text).toBe(expected))

  it.each([
    [-1],
    [Number.NaN],
    [Number.POSITIVE_INFINITY],
    [1e-9],
    [1e9],
    ['-2'],
    [''],
    ['abc'],
    ['5Na'],
    ['2H2O·3'],
    ['5(aq)'],
    ['0.0'],
    ['2 '.repeat(9000)],
    [undefined],
    [null],
    [[5]],
  ])('refuses the number %s', (water) => {
    expect(() => withWater('ZnSO4', water as number)).toThrow(
      expect.objectContaining({ code: 'formula/bad-water-number' }),
    )
  })

  it.each([['H2O'], ['H2O·H2O'], ['D2O'], ['2H2O']])('refuses %s, which is water itself', (text) => {
    expect(() => withWater(text, 1)).toThrow(expect.objectContaining({ code: 'formula/only-water' }))
  })
})
