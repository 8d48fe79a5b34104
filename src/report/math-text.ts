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
  const { base, sub } = splitSymbol(symbol)
  const known = [...base].every((letter) => greek.has(letter) || /^[A-Za-z]$/.test(letter))
  const letters = known ? [...base].map((letter) => greek.get(letter) ?? letter).join('') : mathText(base)
  const below = [...(sub === '' ? [] : [mathText(sub)]), ...(index === undefined ? [] : [String(index)])].join(',')
  return below === '' ? letters.trimEnd() : `${letters.trimEnd()}_{${below}}`
}
