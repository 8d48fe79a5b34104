import katex from 'katex'
import { describe, expect, it } from 'vitest'
import { mathSymbol, mathText } from '../../src/report/math-text.js'

const compile = (latex: string): string => katex.renderToString(latex, { throwOnError: true, strict: 'error' })

describe('symbols within mathematics', () => {
  it.each([
    { symbol: 'm', index: undefined, latex: 'm' },
    { symbol: 'm', index: 2, latex: 'm_{2}' },
    { symbol: 'Ar', index: undefined, latex: 'A_{\\text{r}}' },
    { symbol: 'Ar', index: 1, latex: 'A_{\\text{r},1}' },
    { symbol: 'ρ', index: undefined, latex: '\\rho' },
    { symbol: 'Δm', index: undefined, latex: '\\Delta m' },
    { symbol: 'ΔrH', index: undefined, latex: '\\Delta_{\\text{r}}H' },
    { symbol: 'ξ', index: 3, latex: '\\xi_{3}' },
    { symbol: 'loss', index: undefined, latex: 'loss' },
    { symbol: '%', index: undefined, latex: '\\text{\\%}' },
    { symbol: '\\evil{', index: undefined, latex: '\\text{\\textbackslash{}evil\\{}' },
  ])('$symbol', ({ symbol, index, latex }) => {
    expect(mathSymbol(symbol, index)).toBe(latex)
    expect(compile(latex)).toContain('katex')
  })
})

describe('words within mathematics', () => {
  it.each(['mass of dish', '50 % & more_#1', '{x}^2 ~ $5', '\\input{secret}', 'CuSO4·5H2O at 20 °C', '2 × 3'])(
    '%s',
    (words) => {
      const latex = mathText(words)
      expect(latex.startsWith('\\text{')).toBe(true)
      expect(compile(latex)).toContain('katex')
    },
  )
})
