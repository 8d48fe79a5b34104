import { describe, expect, it } from 'vitest'
import { hillFormula } from '../../src/formula/index.js'

describe('the Hill formula', () => {
  it.each([
    // carbon first, hydrogen second, the rest by the alphabet
    ['CH3COOH', 'C2H4O2'],
    ['KHC8H4O4', 'C8H5KO4'],
    ['Cu(CH3COO)2·H2O', 'C4H8CuO5'],
    ['CCl4', 'CCl4'],
    ['CBr2Cl2', 'CBr2Cl2'],
    // no carbon: by the alphabet
    ['(NH4)2Fe(SO4)2·6H2O', 'FeH20N2O14S2'],
    ['NaOH', 'HNaO'],
    ['HBr', 'BrH'],
    ['ZnSO4·7H2O', 'H14O11SZn'],
    // isotopes are symbols of their own
    ['CD3OH', 'CHD3O'],
    ['D2O', 'D2O'],
    // counts that are not whole
    ['Fe0.947O', 'Fe0.947O'],
    ['CdSO4·8/3H2O', 'CdH16/3O20/3S'],
    ['CaSO4·½H2O', 'CaHO4.5S'],
    ['Cr9/2H2O', 'Cr9/2H2O'],
    ['(H1/1000000)1/1000', 'H0.000000001'],
    // charges, electrons, unknown water
    ['SO4^2-', 'O4S^2-'],
    ['NH4+', 'H4N^+'],
    ['e-', 'e^-'],
    ['2e-', '2e^-'],
    ['Al2O3·xH2O', 'Al2O3·xH2O'],
  ])('of %s is %s', (text, expected) => expect(hillFormula(text)).toBe(expected))
})
