import type { Token } from './scan.js'

/** How formulas are written. */
export type FormulaStyle = 'plain' | 'unicode' | 'html' | 'latex'

/** A way to write each kind of piece; what is not listed stays as it is. */
type Writers = Partial<Readonly<Record<Token['kind'], (text: string) => string>>>

interface Style {
  readonly write: (token: Token) => string
  /** What goes around the whole. */
  readonly frame: (text: string) => string
}

const subscripts = '₀₁₂₃₄₅₆₇₈₉'
const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹'
/** Fractions that have a character of their own. */
const vulgars: Readonly<Record<string, string>> = { '1/2': '½', '1/3': '⅓', '2/3': '⅔', '1/4': '¼', '3/4': '¾' }

const asIs = (text: string): string => text

const plain: Writers = { charge: (text) => `^${text}` }

const unicode: Writers = {
  count: (text) => inDigits(text, subscripts).replace('/', '⁄'),
  charge: (text) => inDigits(text, superscripts).replace('+', '⁺').replace('-', '⁻'),
  times: (text) => (Object.hasOwn(vulgars, text) ? (vulgars[text] as string) : text),
}

const html: Writers = {
  count: (text) => `<sub>${text}</sub>`,
  charge: (text) => `<sup>${text.replace('-', '−')}</sup>`,
  unknown: (text) => `<i>${text}</i>`,
}

const latex: Writers = {
  count: (text) => `_{${text}}`,
  charge: (text) => `^{${text}}`,
  dot: () => '\\cdot ',
  times: (text) => (text.includes('/') ? `\\tfrac{${text.replace('/', '}{')}}` : text),
  unknown: (text) => `\\mathit{${text}}`,
  open: (text) => (text === '{' ? '\\{' : text),
  close: (text) => (text === '}' ? '\\}' : text),
}

/** The styles, each a table from the kind of a piece to how it is written. */
export const styles: Readonly<Record<FormulaStyle, Style>> = {
  plain: { write: (token) => writeWith(plain, token), frame: asIs },
  unicode: { write: (token) => writeWith(unicode, token), frame: asIs },
  html: { write: (token) => writeWith(html, token), frame: asIs },
  latex: { write: (token) => writeWith(latex, token), frame: (text) => `\\mathrm{${text}}` },
}

function writeWith(writers: Writers, { kind, text }: Token): string {
  return (writers[kind] ?? asIs)(text)
}

/** The text with its digits lowered or raised. */
function inDigits(text: string, digits: string): string {
  return [...text].map((one) => (one >= '0' && one <= '9' ? digits.charAt(Number(one)) : one)).join('')
}
