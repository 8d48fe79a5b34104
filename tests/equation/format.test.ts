import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { balance, formatEquation, parseEquation } from '../../src/equation/index.js'
import { formatFraction } from '../../src/fraction.js'
import { knownEquations } from './known-equations.js'
import { refusal } from './refusal.js'

const all = Object.values(knownEquations).flat()

describe('styles', () => {
  it.each([
    ['plain', 'Zn(s) + 2 H^+(aq) -> Zn^2+(aq) + H2(g)'],
    ['unicode', 'Zn(s) + 2 H⁺(aq) → Zn²⁺(aq) + H₂(g)'],
    ['html', 'Zn(s) + 2 H<sup>+</sup>(aq) → Zn<sup>2+</sup>(aq) + H<sub>2</sub>(g)'],
    [
      'latex',
      '\\mathrm{Zn}\\mathrm{(s)} + 2\\,\\mathrm{H^{+}}\\mathrm{(aq)} \\rightarrow \\mathrm{Zn^{2+}}\\mathrm{(aq)} + \\mathrm{H_{2}}\\mathrm{(g)}',
    ],
  ] as const)('%s', (style, written) => {
    expect(formatEquation('Zn(s) + 2H+(aq) → Zn2+(aq) + H2(g)', style)).toBe(written)
  })

  it.each([
    ['2·3CdSO4·8H2O = CdSO4', '2·3CdSO4·8H2O = CdSO4'],
    ['2·½Cl2 = Cl2', '2·1/2Cl2 = Cl2'],
    ['Cl₂ = Cl2', 'Cl2 = Cl2'],
  ])('of %s: a formula with a number of its own keeps its coefficient apart', (text, written) => {
    expect(formatEquation(text)).toBe(written)
  })

  it.each([
    ['->', '->', '→', '\\rightarrow'],
    ['=', '=', '=', '='],
    ['<->', '<->', '⇄', '\\rightleftarrows'],
    ['⇌', '<=>', '⇌', '\\rightleftharpoons'],
  ])('the arrow %s', (arrow, plain, sign, latex) => {
    const text = `H ${arrow} H`
    expect(formatEquation(text)).toBe(`H ${plain} H`)
    expect(formatEquation(text, 'unicode')).toBe(`H ${sign} H`)
    expect(formatEquation(text, 'html')).toBe(`H ${sign} H`)
    expect(formatEquation(text, 'latex')).toBe(`\\mathrm{H} ${latex} \\mathrm{H}`)
  })

  it.each([
    ['1/2', '½', '\\tfrac{1}{2}'],
    ['0.75', '¾', '\\tfrac{3}{4}'],
    ['3/2', '3/2', '\\tfrac{3}{2}'],
    ['8/3', '8/3', '\\tfrac{8}{3}'],
    ['12', '12', '12'],
  ])('the coefficient %s', (number, unicode, latex) => {
    expect(formatEquation(`${number} O2 -> O`, 'unicode')).toBe(`${unicode} O₂ → O`)
    expect(formatEquation(`${number} O2 -> O`, 'latex')).toBe(`${latex}\\,\\mathrm{O_{2}} \\rightarrow \\mathrm{O}`)
  })

  it.each(['markdown', '', null, 5, 'constructor'])('%s is none', (style) => {
    expect(refusal(() => formatEquation('H -> H', style as never)).code).toBe('equation/unknown-option')
  })
})

describe('what is written can be read', () => {
  const number = fc.tuple(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 1, max: 9 })).map(([a, b]) => `${a}/${b} `)

  it.each(['plain', 'unicode'] as const)('in the style %s, with the same meaning', (style) => {
    fc.assert(
      fc.property(fc.constantFrom(...all), fc.array(number, { minLength: 20, maxLength: 20 }), (text, numbers) => {
        let next = 0
        const given = parseEquation(
          text.replace(/(^|-> | \+ )(?:\d+ )?(?=\S)/g, (_, before) => before + numbers[next++]),
        )
        const again = parseEquation(formatEquation(given, style))
        expect(formatEquation(again, 'plain')).toBe(formatEquation(given, 'plain'))
        expect(again.left.map(({ coefficient }) => formatFraction(coefficient))).toEqual(
          given.left.map(({ coefficient }) => formatFraction(coefficient)),
        )
      }),
    )
  })

  it.each(all)('%s', (text) => {
    expect(formatEquation(text)).toBe(text)
    expect(formatEquation(formatEquation(text, 'unicode'))).toBe(text)
    expect(balance(formatEquation(text, 'unicode')).text).toBe(text)
  })
})
