import { describe, expect, it } from 'vitest'
import { elementInfo, elements } from '../../src/element/index.js'

describe('the elements', () => {
  it('are 118, numbered from 1 without a gap', () => {
    expect(elements.map(({ number }) => number)).toEqual(Array.from({ length: 118 }, (_, index) => index + 1))
  })

  it('have symbols and names of their own', () => {
    expect(new Set(elements.map(({ symbol }) => symbol)).size).toBe(118)
    expect(new Set(elements.map(({ name }) => name)).size).toBe(118)
  })

  it('have the spellings of IUPAC', () => {
    const names = elements.map(({ name }) => name)
    expect(names).toEqual(expect.arrayContaining(['aluminium', 'caesium', 'sulfur']))
    expect(names).not.toEqual(expect.arrayContaining(['sulphur']))
  })
})

describe('what is known of an element', () => {
  it.each([
    { symbol: 'H', number: 1, name: 'hydrogen' },
    { symbol: 'D', number: 1, name: 'deuterium' },
    { symbol: 'T', number: 1, name: 'tritium' },
    { symbol: 'Zn', number: 30, name: 'zinc' },
    { symbol: 'Og', number: 118, name: 'oganesson' },
  ])('$symbol is number $number, $name', ({ symbol, number, name }) => {
    expect(elementInfo(symbol)).toEqual({ number, symbol, name })
  })

  it.each([
    { symbol: 'ZN', hint: 'Zn?' },
    { symbol: 'copper', hint: 'Cu?' },
    { symbol: 'Uuo', hint: undefined },
    { symbol: undefined, hint: undefined },
  ])('$symbol is refused', ({ symbol, hint }) => {
    expect(() => elementInfo(symbol as string)).toThrow(
      expect.objectContaining({ code: 'element/unknown-symbol', expected: 'the symbol of an element: "Cu"', hint }),
    )
  })
})
