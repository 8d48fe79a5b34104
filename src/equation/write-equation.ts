import { type Formula, formatFormula } from '../formula/index.js'
import { type Fraction, formatFraction } from '../fraction.js'
import { writtenArrows } from './arrow-signs.js'
import { isDigit } from './characters.js'
import type { Arrow, Term } from './equation.js'

/** How an equation is written: for a keyboard, with Unicode signs, for a page, for typesetting. */
export type EquationStyle = 'plain' | 'unicode' | 'html' | 'latex'

/** The parts of an equation that are written. */
export interface WritableEquation {
  readonly left: readonly Term[]
  readonly right: readonly Term[]
  readonly arrow: Arrow
}

/** Writes both sides and the arrow in one style. */
export function writeEquation({ left, right, arrow }: WritableEquation, style: EquationStyle): string {
  return `${writeSide(left, style)} ${writeArrow(arrow, style)} ${writeSide(right, style)}`
}

function writeSide(terms: readonly Term[], style: EquationStyle): string {
  return terms.map((term) => writeTerm(term, style)).join(' + ')
}

function writeArrow(arrow: Arrow, style: EquationStyle): string {
  const { plain, sign, latex } = writtenArrows[arrow]
  if (style === 'plain') return plain
  return style === 'latex' ? latex : sign
}

function writeTerm({ coefficient, formula, state }: Term, style: EquationStyle): string {
  const species = formatFormula(formula, style) + writeState(state, style)
  const hasNumber = startsWithNumber(formula)
  if (isOne(coefficient) && !hasNumber) return species
  return `${writeCoefficient(coefficient, style)}${(hasNumber ? signs : gaps)[style]}${species}`
}

const gaps: Readonly<Record<EquationStyle, string>> = { plain: ' ', unicode: ' ', html: ' ', latex: '\\,' }

/** Between a coefficient and a formula that begins with a number of its own: `2·3CdSO4·8H2O`. */
const signs: Readonly<Record<EquationStyle, string>> = { plain: '·', unicode: '·', html: '·', latex: '\\cdot ' }

function startsWithNumber(formula: Formula): boolean {
  const code = formula.text.charCodeAt(0)
  return isDigit(code > 0x7f ? formatFormula(formula, 'plain').charCodeAt(0) : code)
}

function isOne({ numerator, denominator }: Fraction): boolean {
  return numerator === denominator
}

function writeState(state: Term['state'], style: EquationStyle): string {
  if (state === undefined) return ''
  return style === 'latex' ? `\\mathrm{(${state})}` : `(${state})`
}

function writeCoefficient(coefficient: Fraction, style: EquationStyle): string {
  const { numerator, denominator } = coefficient
  if (style === 'latex' && denominator !== 1n) return `\\tfrac{${numerator}}{${denominator}}`
  const text = formatFraction(coefficient)
  return style === 'unicode' ? (vulgar[text] ?? text) : text
}

/** Fractions that have a sign of their own. */
const vulgar: Readonly<Record<string, string>> = { '1/2': '½', '1/3': '⅓', '2/3': '⅔', '1/4': '¼', '3/4': '¾' }
