import { type FormulaLike, formulaOf, molarMass } from '../formula/index.js'
import { exact, type Quantity } from '../quantity/index.js'
import { type Given, measured } from '../stoichiometry/given.js'
import { aboveZero, anObject } from './bounds.js'
import type { OfSubstance } from './concentration.js'
import { concentrationNaming, densityNaming, massFractionNaming, molalityNaming } from './naming.js'
import { SolutionError } from './solution-error.js'

/** What a mass fraction is worked out from. Text is measured. */
export type MassFractionFrom =
  | {
      /** Amount concentration of the substance. */
      readonly concentration: Given<'amountConcentration'>
      /** Density of the solution. */
      readonly density: Given<'density'>
    }
  | {
      /** Molality of the substance. */
      readonly molality: Given<'molality'>
    }

/**
 * The mass fraction of a solution, from its amount concentration and density (w = c M / ρ) or from its molality
 * (w = b M / (1 + b M)).
 *
 * @param solution - The strength, and of what substance; text is measured.
 * @returns Mass of solute by mass of solution, in per cent.
 * @throws {@link SolutionError} `solution/no-strength`, `solution/not-above-zero`, `solution/not-an-object`;
 *   `solution/more-solute-than-solution` where the result is above 100 %; {@link FormulaError} and {@link QuantityError} for what
 *   cannot be read.
 * @source IUPAC, Quantities, Units and Symbols in Physical Chemistry (Green Book), 3rd edition, section 2.10.
 *
 * @example
 * ```ts
 * import { massFraction } from 'saltwright/solution'
 *
 * massFraction({ concentration: '6.00 mol/L', density: '1.10 g/mL', substance: 'HCl' }).toString() // => '19.9 %'
 * massFraction({ molality: '2.000 mol/kg', substance: 'KOH' }).toString() // => '10.09 %'
 * ```
 */
export function massFraction(solution: MassFractionFrom & OfSubstance): Quantity<'ratio'> {
  anObject(solution, 'a strength and its substance: { concentration, density, substance }')
  const of = formulaOf(solution.substance).text
  const M = molarMass(solution.substance, { weights: solution.weights })
  const w = fractionBy(solution, M, of).to('%').named(massFractionNaming(of))
  if (w.value.lte(100)) return w
  throw tooMuchSolute(of, `a mass fraction of ${w.toString()}`)
}

function fractionBy(solution: MassFractionFrom & OfSubstance, M: Quantity<'molarMass'>, of: string): Quantity<'ratio'> {
  if ('molality' in solution) return byMolality(solution.molality, M, of)
  if (!('concentration' in solution)) throw noStrength(solution, of)
  const c = readConcentration(solution.concentration, of)
  return c.times(M).dividedBy(aboveZero(measured(solution.density, 'density', densityNaming(of))))
}

function byMolality(molality: Given<'molality'>, M: Quantity<'molarMass'>, of: string): Quantity<'ratio'> {
  const solute = aboveZero(measured(molality, 'molality', molalityNaming(of)))
    .times(M)
    .named({ label: 'mass of solute by mass of solvent' })
  return solute.dividedBy(exact(1).plus(solute))
}

/** An amount concentration as it was stated. */
export function readConcentration(
  concentration: Given<'amountConcentration'>,
  of: string,
): Quantity<'amountConcentration'> {
  return aboveZero(measured(concentration, 'amountConcentration', concentrationNaming(of)))
}

/** Nothing says how strong the solution is. */
export function noStrength(found: object, of: FormulaLike): SolutionError {
  return new SolutionError({
    code: 'solution/no-strength',
    message: `Nothing here says how strong the solution of ${of} is.`,
    found: Object.keys(found).join(', '),
    expected: 'one complete statement of strength, such as concentration and density',
  })
}

/** The numbers contradict one another. */
export function tooMuchSolute(of: string, found: string): SolutionError {
  return new SolutionError({
    code: 'solution/more-solute-than-solution',
    message: `By these numbers the solution of ${of} has ${found}.`,
    found,
    expected: 'less solute than solution',
    hint: 'Check the density and the concentration: one of them belongs to another solution.',
  })
}
