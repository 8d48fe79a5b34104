import { formulaOf } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import { type Choice, chosen, type Given, measured } from '../stoichiometry/given.js'
import { aboveZero } from './bounds.js'
import { amountConcentration, type ByMassFraction, type OfSubstance } from './concentration.js'
import type { SolutionFinding } from './finding.js'
import { concentrationNaming } from './naming.js'

/** A label or a row of a table that states one strength twice. Text is measured. */
export interface StatedTwice extends ByMassFraction, OfSubstance {
  /** The amount concentration that is printed beside mass fraction and density. */
  readonly printed: Given<'amountConcentration'>
  /** How far the two may be apart, of the printed one; 1 % unless said. Text is exact. */
  readonly within?: Choice | undefined
}

/** Whether a label agrees with itself. */
export interface ConcentrationCheck {
  /** The amount concentration from mass fraction and density, in mol/L. */
  readonly calculated: Quantity<'amountConcentration'>
  /** The amount concentration as printed. */
  readonly printed: Quantity<'amountConcentration'>
  /** Calculated minus printed, in per cent of the printed one. */
  readonly deviation: Quantity<'ratio'>
  /** Whether the two are within the limit. */
  readonly agrees: boolean
  /** What a person should look at: empty where they agree. */
  readonly findings: readonly SolutionFinding[]
}

/**
 * Compares a printed amount concentration with the mass fraction and the density printed beside it: c = w ρ / M. Tables of stock
 * reagents have slipped rows, and labels carry numbers of different batches.
 *
 * @param label - What is printed, and of what substance.
 * @returns Both concentrations, how far they are apart, and a finding where that is too far.
 * @throws {@link SolutionError} `solution/not-above-zero` and the other codes of `amountConcentration`; {@link FormulaError} and
 *   {@link QuantityError} for what cannot be read.
 * @source The limit of 1 %: common practice, no source.
 *
 * @example
 * ```ts
 * import { checkConcentration } from 'saltwright/solution'
 *
 * const formic = { substance: 'HCOOH', massFraction: '90 %', density: '1.13 g/mL', printed: '23.6 mol/L' } as const
 * checkConcentration(formic).agrees // => false
 * checkConcentration(formic).deviation.toString() // => '-6 %'
 * ```
 */
export function checkConcentration(label: StatedTwice): ConcentrationCheck {
  const calculated = amountConcentration(label)
  const of = formulaOf(label.substance).text
  const printed = aboveZero(
    measured(label.printed, 'amountConcentration', concentrationNaming(of, 'printed amount concentration')),
  )
  const within = aboveZero(chosen(label.within ?? '1 %', 'ratio', { label: 'limit of deviation' })).to('%')
  const deviation = calculated.minus(printed).dividedBy(printed).to('%').named({ label: 'deviation', of })
  const agrees = deviation.value.abs().lte(within.value)
  return { calculated, printed, deviation, agrees, findings: agrees ? [] : [inconsistent(calculated, printed, of)] }
}

function inconsistent(
  calculated: Quantity<'amountConcentration'>,
  printed: Quantity<'amountConcentration'>,
  of: string,
): SolutionFinding {
  return {
    code: 'concentration-inconsistent',
    severity: 'doubt',
    message: `${printed.toString()} is printed for ${of}, but mass fraction and density give ${calculated.toString()}: one of the three belongs to another solution.`,
    numbers: { printed, calculated },
  }
}
