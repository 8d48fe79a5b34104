import { describe, expect, it } from 'vitest'
import { hillFormula } from '../../src/formula/index.js'

const guests = 'H2O (H2O) D2O NH3 (NH3) H2O2 HF HCl HNO3 CO2 SO2 CH3OH C2H5OH H20'.split(' ')

describe('a full stop behind a formula that is no salt', () => {
  it.each(guests)('and before %s begins a part', (guest) => {
    const parts = hillFormula(`XeF2·4${guest}`)
    expect(hillFormula(`XeF2.4${guest}`)).toBe(parts)
    expect(hillFormula(`XeF2.4 ${guest}`)).toBe(parts)
    expect(hillFormula(`[XeF2.4${guest}]2`)).toBe(hillFormula(`[XeF2·4${guest}]2`))
  })

  it.each(['Xe', 'HFe', 'CO22', 'HCl2', 'SO23'])('and before %s is a decimal point', (other) => {
    expect(hillFormula(`XeF2.4${other}`)).toBe(hillFormula(`XeF12/5${other}`))
  })
})

it.each([
  ['FeO1.5', 'FeO1.5'],
  ['Fe0.95O', 'Fe0.95O'],
  ['Fe.95O', 'Fe0.95O'],
  ['FeO2.05', 'FeO2.05'],
  ['FeO₁.₅', 'FeO1.5'],
  ['Fe2.5.5H2O', 'Fe2H11O5.5'],
  ['CuSO4.5H2O.2NH3', 'CuH16N2O9S'],
  ['XeF2.4·H2O', 'F2.4H2OXe'],
  ['MgSO4.2KCl', 'Cl2K2MgO4S'],
  ['MgSO4.2C5H5N', 'C10H10MgN2O4S'],
  ['Fe3.5KCl', 'ClFe3.5K'],
  ['CuSO4.05H2O', 'CuH2O5.05S'],
  ['Fe2.5.H2O', 'Fe5/2H2O'],
  ['MgCl₂.₅C₅H₅N', 'C5H5Cl2.5MgN'],
  ['XeF2.4H2O·KCl', 'ClF2H8KO4Xe'],
  ['XeF2.4H2O · KCl', 'ClF2H8KO4Xe'],
  ['K2SO4.2Ca(NO3)2', 'Ca2K2N4O16S'],
  ['NiCl2.2CSO', 'CCl2.2NiOS'],
  [`${'NaCl·'.repeat(8)}NaCl.2KBr`, 'Br2Cl9K2Na9'],
  // 64 characters on either side are looked through, no more
  [`${'NaCl'.repeat(16)}.2KBr`, 'Br2Cl16K2Na16'],
  [`${'NaCl'.repeat(17)}.2KBr`, 'BrCl16.2KNa17'],
  [`NaCl.2${'NaBr'.repeat(16)}`, 'Br32ClNa33'],
  [`NaCl.2${'NaBr'.repeat(17)}`, 'Br17Cl0.2Na18'],
  ['ZnCl2.2BH3', 'BCl2.2H3Zn'],
])('%s has the atoms %s', (text, atoms) => expect(hillFormula(text)).toBe(atoms))
