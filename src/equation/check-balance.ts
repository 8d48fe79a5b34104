import { balanceSentence } from './balance-sentence.js'
import type { Equation } from './equation.js'
import { type EquationLike, equationOf } from './equation-of.js'
import { checkComposition } from './known-composition.js'
import { isInLowestTerms, lowestTerms } from './lowest-terms.js'
import { findMissing, type MissingSpecies, type MissingSpeciesData, missingData } from './missing-species.js'
import {
  chargeTotals,
  type ElementTotals,
  type ElementTotalsData,
  elementTotals,
  elementTotalsData,
  type SideTotals,
  type SideTotalsData,
  sideTotalsData,
} from './side-totals.js'
import { uprightAnswer } from './upright-answer.js'

/** Whether an equation is balanced, and if not, by how much and how it could be. */
export interface BalanceCheck {
  /** Whether every element and the charge are the same on both sides. */
  readonly balanced: boolean
  /** Every element with both sides and the difference, in the order in which they first stand in the equation. */
  readonly elements: readonly ElementTotals[]
  /** The charge of both sides and the difference, in elementary charges. */
  readonly charge: SideTotals
  /** Whether the coefficients are whole numbers without a common divisor. */
  readonly lowestTerms: boolean
  /** The equation with the smallest whole numbers that balance it; nothing where it has them already, or none are found. */
  readonly suggestion: Equation | undefined
  /** The one species that would balance it, where other coefficients alone do not. */
  readonly missing: MissingSpecies | undefined
  /** @returns One or two sentences that say what was found. */
  toString(): string
  /** @returns The check as plain data, with numbers and equations as text. */
  toJSON(): BalanceCheckData
}

/** A {@link BalanceCheck} as plain data: fractions and equations as text. */
export interface BalanceCheckData {
  /** Whether every element and the charge are the same on both sides. */
  readonly balanced: boolean
  /** Every element with both sides and the difference. */
  readonly elements: readonly ElementTotalsData[]
  /** The charge of both sides and the difference. */
  readonly charge: SideTotalsData
  /** Whether the coefficients are whole numbers without a common divisor. */
  readonly lowestTerms: boolean
  /** The suggested equation. */
  readonly suggestion: string | undefined
  /** The missing species, its side, its number and the equation with it. */
  readonly missing: MissingSpeciesData | undefined
}

/** What was found, without the methods. */
type Findings = Omit<BalanceCheck, 'toString' | 'toJSON'>

class FinishedCheck implements BalanceCheck {
  readonly balanced: boolean
  readonly elements: readonly ElementTotals[]
  readonly charge: SideTotals
  readonly lowestTerms: boolean
  readonly suggestion: Equation | undefined
  readonly missing: MissingSpecies | undefined

  constructor(findings: Findings) {
    this.balanced = findings.balanced
    this.elements = Object.freeze(findings.elements)
    this.charge = findings.charge
    this.lowestTerms = findings.lowestTerms
    this.suggestion = findings.suggestion
    this.missing = findings.missing
    Object.freeze(this)
  }

  toString(): string {
    return balanceSentence(this)
  }

  toJSON(): BalanceCheckData {
    return {
      balanced: this.balanced,
      elements: this.elements.map(elementTotalsData),
      charge: sideTotalsData(this.charge),
      lowestTerms: this.lowestTerms,
      suggestion: this.suggestion?.text,
      missing: this.missing === undefined ? undefined : missingData(this.missing),
    }
  }
}

/**
 * Checks an equation as written: every element and the charge on both sides, exactly; whether the coefficients are in
 * lowest terms; and what would be right.
 *
 * @param equation - An equation or its text.
 * @returns The totals of both sides, and where the equation is not balanced or not in lowest terms the smallest whole
 * numbers that are right; or the one species (water, hydron, hydroxide, electron) that is missing.
 * @throws {@link EquationError} `equation/unknown-count` for a hydrate with an unknown number of water.
 * @source OpenStax, Chemistry 2e, section 4.1, Balancing Equations, and Equations for Ionic Reactions (charge).
 *
 * @example
 * ```ts
 * import { checkBalance } from 'saltwright/equation'
 *
 * const check = checkBalance('Al + H^+ -> Al^3+ + H2')
 * check.balanced // => false
 * String(check) // => 'Not balanced: H has 1 on the left and 2 on the right, the charge is +1 on the left and +3 on the right. Right would be: 2 Al + 6 H^+ -> 2 Al^3+ + 3 H2'
 * checkBalance('Fe^2+ -> Fe^3+').missing?.equation.text // => 'Fe^2+ -> Fe^3+ + e^-'
 * ```
 */
export function checkBalance(equation: EquationLike): BalanceCheck {
  const given = equationOf(equation)
  checkComposition(given)
  const [elements, charge] = [elementTotals(given), chargeTotals(given)]
  const balanced = [...elements, charge].every(({ difference }) => difference.numerator === 0n)
  const smallest = isInLowestTerms(given)
  const suggestion = balanced ? reduced(given, smallest) : uprightAnswer(given)
  const missing = balanced || suggestion !== undefined ? undefined : findMissing(given)
  return new FinishedCheck({ balanced, elements, charge, lowestTerms: smallest, suggestion, missing })
}

function reduced(equation: Equation, isReduced: boolean): Equation | undefined {
  return isReduced ? undefined : lowestTerms(equation)
}
