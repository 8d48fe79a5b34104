import {
  addFractions,
  type Fraction,
  formatFraction,
  fraction,
  multiplyFractions,
  subtractFractions,
} from '../fraction.js'
import type { Equation, Term } from './equation.js'

/** What one element, or the charge, amounts to on each side. */
export interface SideTotals {
  /** On the left, with the coefficients as written. */
  readonly left: Fraction
  /** On the right. */
  readonly right: Fraction
  /** Right minus left: zero where it is balanced. */
  readonly difference: Fraction
}

/** One element with what it amounts to on each side. */
export interface ElementTotals extends SideTotals {
  /** The symbol of the element; D and T are elements of their own. */
  readonly symbol: string
}

/** {@link SideTotals} as plain data: whole numbers and fractions as text. */
export interface SideTotalsData {
  /** On the left: `4`, `3/2`. */
  readonly left: string
  /** On the right. */
  readonly right: string
  /** Right minus left. */
  readonly difference: string
}

/** {@link ElementTotals} as plain data. */
export interface ElementTotalsData extends SideTotalsData {
  /** The symbol of the element. */
  readonly symbol: string
}

const nothing: Fraction = { numerator: 0n, denominator: 1n }

/** Every element of the equation, in the order in which they first stand in it. */
export function elementTotals({ left, right }: Equation): readonly ElementTotals[] {
  const [atLeft, atRight] = [sideAtoms(left), sideAtoms(right)]
  const symbols = new Set([...atLeft.keys(), ...atRight.keys()])
  return [...symbols].map((symbol) => ({ symbol, ...totals(atLeft.get(symbol), atRight.get(symbol)) }))
}

/** The charge of both sides, in elementary charges. */
export function chargeTotals({ left, right }: Equation): SideTotals {
  return totals(sideCharge(left), sideCharge(right))
}

/** Whether every element and the charge are the same on both sides. */
export function isBalanced(equation: Equation): boolean {
  const all: readonly SideTotals[] = [...elementTotals(equation), chargeTotals(equation)]
  return all.every(({ difference }) => difference.numerator === 0n)
}

function totals(left: Fraction = nothing, right: Fraction = nothing): SideTotals {
  return { left, right, difference: subtractFractions(right, left) }
}

function sideAtoms(terms: readonly Term[]): Map<string, Fraction> {
  const atoms = new Map<string, Fraction>()
  for (const { coefficient, formula } of terms) {
    for (const [symbol, count] of formula.counts) {
      atoms.set(symbol, addFractions(atoms.get(symbol) ?? nothing, multiplyFractions(count, coefficient)))
    }
  }
  return atoms
}

function sideCharge(terms: readonly Term[]): Fraction {
  const charges = terms.map(({ coefficient, formula }) =>
    multiplyFractions(coefficient, fraction(BigInt(formula.charge))),
  )
  return charges.reduce(addFractions, nothing)
}

/** Totals with their fractions as text. */
export function sideTotalsData({ left, right, difference }: SideTotals): SideTotalsData {
  return { left: formatFraction(left), right: formatFraction(right), difference: formatFraction(difference) }
}

/** Totals of an element with their fractions as text. */
export function elementTotalsData(element: ElementTotals): ElementTotalsData {
  return { symbol: element.symbol, ...sideTotalsData(element) }
}
