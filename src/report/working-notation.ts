import { escapeHtml } from '../display.js'
import { formatFormula, tryParseFormula } from '../formula/index.js'
import type { WorkingName, WorkingNumber } from '../quantity/index.js'
import type { Notation } from './expression.js'
import { mathSymbol, mathText } from './math-text.js'
import type { SheetFormat } from './sheet.js'
import { splitSymbol } from './symbol.js'
import { lineAsMarkdown } from './write-markdown.js'

/** How the lines of a calculation are written in one format. */
export interface WorkingNotation {
  /** How expressions are put together. */
  readonly expression: Notation
  /** The sign between names that are multiplied; between numbers it is a cross. */
  readonly dot: string
  /** The name of a quantity. */
  readonly name: (name: WorkingName) => string
  /** A number with its unit. */
  readonly value: (value: WorkingNumber) => string
}

const subscripts = '₀₁₂₃₄₅₆₇₈₉'
const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹'

const lowered = (index: number | undefined): string =>
  [...String(index ?? '')].map((digit) => subscripts.charAt(Number(digit))).join('')
const raised = (exponent: string): string =>
  [...exponent].map((one) => (one === '-' ? '⁻' : superscripts.charAt(Number(one)))).join('')
const signed = (text: string): string => text.replace('-', '−')

/** A number with its power of ten and its unit, as the format writes these. */
function numberWith(power: (exponent: string) => string, unit: (unit: string) => string): WorkingNotation['value'] {
  return (value) => {
    const [digits = '', exponent] = value.number.split('e')
    const scaled = exponent === undefined ? digits : `${digits} × ${power(exponent)}`
    return value.unit === '' ? signed(scaled) : `${signed(scaled)} ${unit(value.unit)}`
  }
}

/** A name from its symbol and what it is of; in words where it has no symbol. */
function nameWith(symbol: (symbol: string, index: number | undefined) => string, words: (text: string) => string) {
  return ({ symbol: letters, index, of, label }: WorkingName, substance: (of: string) => string): string => {
    if (letters === undefined) return words(index === undefined ? `${label}` : `${label} (${index})`)
    return of === undefined ? symbol(letters, index) : `${symbol(letters, index)}(${substance(of)})`
  }
}

const inLine: Notation = {
  group: (inner) => `(${inner})`,
  plus: ' + ',
  minus: ' − ',
  times: ' × ',
  number: signed,
  fraction: (top, bottom) => `${top} / ${bottom}`,
  hasBar: false,
  power: (base, exponent) => `${base}^${exponent}`,
  root: (of) => `√(${of})`,
  call: (name, of) => `${name}(${of})`,
}

const isFormulaText = (of: string): boolean => tryParseFormula(of).ok

const textName = nameWith(
  (symbol, index) => symbol + lowered(index),
  (words) => words,
)
const markdownName = nameWith(
  (symbol, index) => `*${lineAsMarkdown(symbol)}*${lowered(index)}`,
  (words) => lineAsMarkdown(words),
)
const slanted = (letters: string): string => (letters === '' ? '' : `<i>${escapeHtml(letters)}</i>`)
const htmlName = nameWith(
  (symbol, index) => {
    const { base, sub, rest } = splitSymbol(symbol)
    const below = [sub, String(index ?? '')].filter(Boolean).map(escapeHtml).join(',')
    return slanted(base) + (below === '' ? '' : `<sub>${below}</sub>`) + slanted(rest)
  },
  (words) => escapeHtml(words),
)
const latexName = nameWith(
  (symbol, index) => mathSymbol(symbol, index),
  (words) => mathText(words),
)

/** How workings are written in each format. */
export const workingNotations: Readonly<Record<SheetFormat, WorkingNotation>> = {
  text: {
    expression: inLine,
    dot: ' · ',
    name: (name) => textName(name, (of) => of),
    value: numberWith(
      (exponent) => `10${raised(exponent)}`,
      (unit) => unit,
    ),
  },
  markdown: {
    expression: inLine,
    dot: ' · ',
    name: (name) => markdownName(name, (of) => lineAsMarkdown(isFormulaText(of) ? { formula: of } : of)),
    value: numberWith(
      (exponent) => `10${raised(exponent)}`,
      (unit) => lineAsMarkdown(unit),
    ),
  },
  html: {
    expression: {
      ...inLine,
      power: (base, exponent) => `${base}<sup>${exponent}</sup>`,
      call: (name, of) => `${name.replace('10', '<sub>10</sub>')}(${of})`,
    },
    dot: ' · ',
    name: (name) => htmlName(name, (of) => (isFormulaText(of) ? formatFormula(of, 'html') : escapeHtml(of))),
    value: numberWith((exponent) => `10<sup>${signed(exponent)}</sup>`, escapeHtml),
  },
  latex: {
    expression: {
      group: (inner) => `\\left(${inner}\\right)`,
      plus: ' + ',
      minus: ' - ',
      times: ' \\times ',
      number: (text) => text,
      fraction: (top, bottom) => `\\frac{${top}}{${bottom}}`,
      hasBar: true,
      power: (base, exponent) => `${base}^{${exponent}}`,
      root: (of) => `\\sqrt{${of}}`,
      call: (name, of) => `${functions.get(name) ?? `\\${name}`}\\left(${of}\\right)`,
    },
    dot: ' \\cdot ',
    name: (name) => latexName(name, (of) => (isFormulaText(of) ? formatFormula(of, 'latex') : mathText(of))),
    value: ({ number, unit }) => latexNumber(number) + latexUnit(unit),
  },
}

/** Functions that LaTeX knows under another name. */
const functions: ReadonlyMap<string, string> = /* @__PURE__ */ new Map([['log10', '\\log_{10}']])

function latexNumber(number: string): string {
  const [digits = '', exponent] = number.split('e')
  return exponent === undefined ? digits : `${digits} \\times 10^{${exponent}}`
}

function latexUnit(unit: string): string {
  if (unit === '') return ''
  if (unit === '°C') return '\\,{}^{\\circ}\\mathrm{C}'
  return `\\,\\mathrm{${unit.replaceAll('%', '\\%').replaceAll(' ', '\\,')}}`
}
