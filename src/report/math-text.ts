import { splitSymbol } from './symbol.js'

/** Characters that mean something to LaTeX, or are not set in mathematics as they stand. */
const special: ReadonlyMap<string, string> = /* @__PURE__ */ new Map([
  ['\\', '\\textbackslash{}'],
  ['~', '\\textasciitilde{}'],
  ['^', '\\textasciicircum{}'],
  ['{', '\\{'],
  ['}', '\\}'],
  ['&', '\\&'],
  ['%', '\\%'],
  ['$', '\\$'],
  ['#', '\\#'],
  ['_', '\\_'],
  ['·', '$\\cdot$'],
  ['×', '$\\times$'],
  ['°', '\\textdegree{}'],
])

const greek: ReadonlyMap<string, string> = /* @__PURE__ */ new Map([
  ['Δ', '\\Delta '],
  ['α', '\\alpha '],
  ['γ', '\\gamma '],
  ['η', '\\eta '],
  ['ν', '\\nu '],
  ['ξ', '\\xi '],
  ['ρ', '\\rho '],
  ['φ', '\\varphi '],
])

/** Words within mathematics. */
export function mathText(words: string): string {
  return `\\text{${[...words].map((one) => special.get(one) ?? one).join('')}}`
}

/** A symbol within mathematics, with its index if there are several of it. */
export function mathSymbol(symbol: string, index: number | undefined): string {
  const { base, sub, rest } = splitSymbol(symbol)
  const below = [sub === '' ? '' : mathText(sub), index === undefined ? '' : String(index)].filter(Boolean).join(',')
  return `${mathLetters(base)}${below === '' ? '' : `_{${below}}`}${mathLetters(rest)}`
}

function mathLetters(text: string): string {
  const letters = [...text].map((letter) => greek.get(letter) ?? (/^[A-Za-z]$/.test(letter) ? letter : undefined))
  return letters.includes(undefined) ? mathText(text) : letters.join('').trimEnd()
}
