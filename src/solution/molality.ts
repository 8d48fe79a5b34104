import { type FormulaLike, formulaOf, molarMass } from '../formula/index.js'
import { exact, type Quantity } from '../quantity/index.js'
import { type Given, measured } from '../stoichiometry/given.js'
import { molesPerMole, statedFraction } from './basis.js'
import { aboveZero, anObject } from './bounds.js'
import type { OfSubstance } from './concentration.js'
import { noStrength, readConcentration, tooMuchSolute } from './mass-fraction.js'
import { densityNaming, molalityNaming } from './naming.js'

/** What a molality is worked out from. Text is measured. */
export type MolalityFrom =
  | {
      /** Mass of solute by mass of solution. */
      readonly massFraction: Given<'ratio'>
      /** What the mass fraction is stated as, if not as the substance. */
      readonly basis?: FormulaLike | undefined
    }
  | {
      /** Amount concentration of the substance. */
      readonly concentration: Given<'amountConcentration'>
      /** Density of the solution. */
      readonly density: Given<'density'>
    }

/**
 * The molality of a solution, from its mass fraction (b = w / (M (1 - w))) or from its amount concentration and density
 * (b = c / (ρ - c M)).
 *
 * @param solution - The strength, and of what substance; text is measured.
 * @returns Amount of solute by mass of solvent, in mol/kg.
 * @throws {@link SolutionError} `solution/no-strength`, `solution/not-above-zero`, `solution/not-a-fraction`,
 *   `solution/unrelated-bases`, `solution/not-an-object`; `solution/more-solute-than-solution` where no solvent is left;
 *   {@link FormulaError} and {@link QuantityError} for what cannot be read.
 * @source IUPAC, Quantities, Units and Symbols in Physical Chemistry (Green Book), 3rd edition, section 2.10.
 *
 * @example
 * ```ts
 * import { molality } from 'saltwright/solution'
 *
 * molality({ massFraction: '10.09 %', substance: 'KOH' }).toString() // => '2.000 mol/kg'
 * molality({ concentration: '6.00 mol/L', density: '1.10 g/mL', substance: 'HCl' }).toString() // => '6.8 mol/kg'
 * ```
 */
export function molality(solution: MolalityFrom & OfSubstance): Quantity<'molality'> {
  anObject(solution, 'a strength and its substance: { massFraction, substance }')
  const of = formulaOf(solution.substance).text
  return molalityBy(solution, of).to('mol/kg').named(molalityNaming(of))
}

function molalityBy(solution: MolalityFrom & OfSubstance, of: string): Quantity<'molality'> {
  if ('massFraction' in solution) return byMassFraction(solution, of)
  if ('concentration' in solution) return byConcentration(solution, of)
  throw noStrength(solution, of)
}

function byMassFraction(
  solution: Extract<MolalityFrom, { readonly massFraction: unknown }> & OfSubstance,
  of: string,
): Quantity<'molality'> {
  const basis = solution.basis ?? solution.substance
  const w = statedFraction(solution.massFraction, basis)
  const solvent = exact(1).minus(w).named({ label: 'mass fraction of solvent' })
  if (!solvent.value.gt(0)) throw tooMuchSolute(of, `a mass fraction of ${w.toString()}, without any solvent`)
  const b = w.dividedBy(molarMass(basis, { weights: solution.weights })).dividedBy(solvent)
  return solution.basis === undefined ? b : b.times(molesPerMole(solution.substance, basis))
}

function byConcentration(
  solution: Extract<MolalityFrom, { readonly density: unknown }> & OfSubstance,
  of: string,
): Quantity<'molality'> {
  const c = readConcentration(solution.concentration, of)
  const density = aboveZero(measured(solution.density, 'density', densityNaming(of)))
  const solute = c.times(molarMass(solution.substance, { weights: solution.weights }))
  const solvent = density.minus(solute).named({ label: 'mass of solvent by volume of solution' })
  if (!solvent.value.gt(0)) throw tooMuchSolute(of, `${solute.toString()} of solute in ${density.toString()}`)
  return c.dividedBy(solvent)
}
