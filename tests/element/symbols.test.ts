import { describe, expect, it } from 'vitest'
import { elements } from '../../src/element/index.js'
import { symbolPlace, symbols } from '../../src/element/symbols.js'

const place = (symbol: string): number => symbolPlace(symbol.charCodeAt(0), symbol.charCodeAt(1) || 0)

describe('the place of a symbol', () => {
  it('is the atomic number for an element, and behind them for D and T', () => {
    expect(elements.map(({ symbol }) => place(symbol))).toEqual(elements.map(({ number }) => number))
    expect([place('D'), place('T')]).toEqual([119, 120])
    expect(symbols.map(place)).toEqual(symbols.map((_, index) => index + 1))
  })

  it.each([['Q'], ['J'], ['Xx'], ['So'], ['Hh'], ['5'], ['a'], ['']])('is 0 for %j', (text) =>
    expect(place(text)).toBe(0),
  )
})
