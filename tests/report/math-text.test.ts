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
    { symbol: 'α', index: undefined, latex: '\\alpha' },
    { symbol: 'γ', index: 1, latex: '\\gamma_{1}' },
    { symbol: 'η', index: undefined, latex: '\\eta' },
    { symbol: 'ν', index: undefined, latex: '\\nu' },
    { symbol: 'φB', index: undefined, latex: '\\varphi_{\\text{B}}' },
    { symbol: '5', index: undefined, latex: '\\text{5}' },
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
  it.each([
    { words: 'mass of dish', latex: '\\text{mass of dish}' },
    { words: '50 % & more_#1', latex: '\\text{50 \\% \\& more\\_\\#1}' },
    { words: '{x}^2 ~ $5', latex: '\\text{\\{x\\}\\textasciicircum{}2 \\textasciitilde{} \\$5}' },
    { words: '\\input', latex: '\\text{\\textbackslash{}input}' },
    { words: 'CuSO4·5H2O at 20 °C', latex: '\\text{CuSO4$\\cdot$5H2O at 20 \\textdegree{}C}' },
    { words: '2 × 3', latex: '\\text{2 $\\times$ 3}' },
  ])('$words', ({ words, latex }) => {
    expect(mathText(words)).toBe(latex)
    expect(compile(latex)).toContain('katex')
  })
})
