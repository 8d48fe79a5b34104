import { describe, expect, it } from 'vitest'
import { type Formula, formulaOf, isFormula, molarMass, parseFormula } from '../../src/formula/index.js'

/** What a formula looks like that another copy of the library has read. */
function foreign(text: string): Formula {
  const { parts, counts, composition, hydration, notes, charge, state, text: written } = parseFormula(text)
  return {
    text: written,
    charge,
    parts,
    counts,
    composition,
    hydration,
    notes,
    state,
    toString: () => written,
    toJSON: () => written,
  }
}

describe('what is a formula', () => {
  it.each([['ZnSO4'], ['e^-'], ['SO4^2-(aq)']])('%s, once it was read', (text) => {
    expect(isFormula(parseFormula(text))).toBe(true)
    expect(isFormula(foreign(text))).toBe(true)
  })

  it.each([
    ['ZnSO4'],
    [undefined],
    [null],
    [5],
    [[]],
    [{}],
    [{ text: 'ZnSO4' }],
    [{ text: 5, charge: 0, composition: new Map(), parts: [] }],
    [{ text: 'ZnSO4', charge: '0', composition: new Map(), parts: [] }],
    [{ text: 'ZnSO4', charge: 0, composition: new Map(), parts: 'none' }],
    [{ text: 'ZnSO4', charge: 0, parts: [] }],
  ])('%j is none', (value) => expect(isFormula(value)).toBe(false))
})

describe('the formula of what may be one', () => {
  it('is the same object where it was read here', () => {
    const salt = parseFormula('ZnSO4')
    expect(formulaOf(salt)).toBe(salt)
  })

  it('is read from text, and again from a formula of another copy, with its state', () => {
    expect(formulaOf('ZnSO4').text).toBe('ZnSO4')
    expect(formulaOf(foreign('ZnSO4(aq)'))).toMatchObject({ text: 'ZnSO4', state: 'aq' })
    expect(formulaOf(foreign('Fe0.947O')).counts).toEqual(parseFormula('Fe0.947O').counts)
    expect(molarMass(foreign('ZnSO4·7H2O')).toString()).toBe('287.54 g/mol')
  })

  it.each([[undefined], [null], [7], [{}], [[]], [{ text: 'NaCl' }]])('%j is refused', (value) => {
    expect(() => formulaOf(value as unknown as string)).toThrow(expect.objectContaining({ code: 'formula/not-text' }))
  })
})
