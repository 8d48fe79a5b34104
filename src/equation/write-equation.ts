import { formatFormula } from '../formula/index.js'
import { type Fraction, formatFraction } from '../fraction.js'
import { writtenArrows } from './arrow-signs.js'
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
  return isOne(coefficient) ? species : `${writeCoefficient(coefficient, style)}${gaps[style]}${species}`
}

const gaps: Readonly<Record<EquationStyle, string>> = { plain: ' ', unicode: ' ', html: ' ', latex: '\\,' }

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
