import type { AtomicWeights } from '../element/index.js'
import { type FormulaLike, formulaOf, molarMass } from '../formula/index.js'
import { exact, type Quantity } from '../quantity/index.js'
import { type Choice, type Given, measured } from '../stoichiometry/given.js'
import { amountNaming, massNaming } from '../stoichiometry/naming.js'
import { molesPerMole, statedFraction } from './basis.js'
import { aboveZero, anObject } from './bounds.js'
import { concentrationNaming, densityNaming, molalityNaming, volumeNaming } from './naming.js'
import { fromNormality, type Normality } from './normality.js'
import { SolutionError } from './solution-error.js'

/** Strength by mass fraction and density, as on the bottle. Text is measured. */
export interface ByMassFraction {
  /** Mass of solute by mass of solution: `"96 %"`. As on a label, `"90 %"` is read to 1 %. */
  readonly massFraction: Given<'ratio'>
  /** Density of the solution: `"1.84 g/mL"`. It is never guessed. */
  readonly density: Given<'density'>
  /** What the mass fraction is stated as, if not as the substance: `NH4OH` for ammonia. */
  readonly basis?: FormulaLike | undefined
}

/** Strength by molality and density. Text is measured. */
export interface ByMolality {
  /** Amount of solute by mass of solvent. */
  readonly molality: Given<'molality'>
  /** Density of the solution. */
  readonly density: Given<'density'>
}

/** Strength by normality, which means nothing without its number of equivalents. Text is exact. */
export interface ByNormality {
  /** As old manuals write it: `"6 N"`. */
  readonly normality: Normality
  /** Equivalents per mole, a whole number. */
  readonly equivalentsPerMole: Choice
}

/** A solute made up to a volume. Text is measured. */
export interface BySolute {
  /** Mass of solute that was weighed. */
  readonly mass: Given<'mass'>
  /** What was weighed, if not the substance itself: a hydrate of it. */
  readonly weighed?: FormulaLike | undefined
  /** Volume of the solution, not of the water. */
  readonly volume: Given<'volume'>
}

/** An amount of solute in a volume. Text is measured. */
export interface ByAmount {
  /** Amount of solute. */
  readonly amount: Given<'amount'>
  /** Volume of the solution, not of the water. */
  readonly volume: Given<'volume'>
}

/** Everything that can say how strong a solution is. */
export type Strength = ByMassFraction | ByMolality | ByNormality | BySolute | ByAmount

/** Of what the strength is. */
export interface OfSubstance {
  /** The substance whose concentration is meant: `NH3`, not "ammonia". */
  readonly substance: FormulaLike
  /** Which atomic weights: `"abridged"` unless said. */
  readonly weights?: AtomicWeights | undefined
}

/**
 * The amount concentration of a solution, from whatever its label or its making says: mass fraction and density (c = w ρ / M),
 * molality and density (c = b ρ / (1 + b M)), normality and its equivalents per mole, a mass or an amount made up to a volume.
 *
 * @param solution - The strength, and of what substance. Text is measured, but for a normality; where a label's figure is to
 *   count as exact, as in a plan, pass `exact('96 %')`.
 * @returns The amount concentration in mol/L.
 * @throws {@link SolutionError} `solution/no-strength`, `solution/not-a-fraction`, `solution/not-above-zero`,
 *   `solution/unrelated-bases`, `solution/bad-equivalents`, `solution/not-an-object`; {@link FormulaError} and
 *   {@link QuantityError} for what cannot be read.
 * @source IUPAC, Quantities, Units and Symbols in Physical Chemistry (Green Book), 3rd edition, section 2.10.
 *
 * @example
 * ```ts
 * import { amountConcentration } from 'saltwright/solution'
 *
 * amountConcentration({ massFraction: '96.0 %', density: '1.84 g/mL', substance: 'H2SO4' }).toString() // => '18.0 mol/L'
 * amountConcentration({ massFraction: '56.6 %', basis: 'NH4OH', density: '0.900 g/mL', substance: 'NH3' }).toString() // => '14.5 mol/L'
 * amountConcentration({ normality: '6 N', equivalentsPerMole: 2, substance: 'H2SO4' }).toString() // => '3 mol/L'
 * amountConcentration({ mass: '12.48 g', weighed: 'CuSO4·5H2O', volume: '100.0 mL', substance: 'CuSO4' }).toString() // => '0.4998 mol/L'
 * ```
 */
export function amountConcentration(solution: Strength & OfSubstance): Quantity<'amountConcentration'> {
  anObject(solution, 'a strength and its substance: { massFraction, density, substance }')
  const of = formulaOf(solution.substance).text
  return concentrationBy(solution, of).named(concentrationNaming(of))
}

function concentrationBy(solution: Strength & OfSubstance, of: string): Quantity<'amountConcentration'> {
  if ('massFraction' in solution) return byMassFraction(solution, of)
  if ('molality' in solution) return byMolality(solution, of)
  if ('normality' in solution) return fromNormality(solution.normality, { ...solution, substance: of })
  if ('mass' in solution) return bySolute(solution, of)
  if ('amount' in solution) return byAmount(solution, of)
  throw new SolutionError({
    code: 'solution/no-strength',
    message: `Nothing says how strong the solution of ${of} is.`,
    found: Object.keys(solution).join(', '),
    expected:
      'massFraction and density, molality and density, normality and equivalentsPerMole, mass and volume, or amount and volume',
  })
}

function byMassFraction(solution: ByMassFraction & OfSubstance, of: string): Quantity<'amountConcentration'> {
  const basis = solution.basis ?? solution.substance
  const { weights } = solution
  const w = statedFraction(solution.massFraction, basis)
  const stated = readDensity(solution.density, of).times(w).dividedBy(molarMass(basis, { weights }))
  return solution.basis === undefined ? stated : stated.times(molesPerMole(solution.substance, basis))
}

function byMolality(solution: ByMolality & OfSubstance, of: string): Quantity<'amountConcentration'> {
  const b = aboveZero(measured(solution.molality, 'molality', molalityNaming(of)))
  const M = molarMass(solution.substance, { weights: solution.weights })
  const solutionPerSolvent = exact(1).plus(b.times(M)).named({ label: 'mass of solution by mass of solvent' })
  return readDensity(solution.density, of).times(b).dividedBy(solutionPerSolvent)
}

function bySolute(solution: BySolute & OfSubstance, of: string): Quantity<'amountConcentration'> {
  const weighed = solution.weighed ?? solution.substance
  const { text } = formulaOf(weighed)
  const mass = aboveZero(measured(solution.mass, 'mass', massNaming(text)))
  const amount = mass.dividedBy(molarMass(weighed, { weights: solution.weights })).named(amountNaming(text))
  const dissolved = solution.weighed === undefined ? amount : amount.times(molesPerMole(solution.substance, weighed))
  return dissolved.named(amountNaming(of)).dividedBy(madeUpTo(solution, of))
}

function byAmount(solution: ByAmount & OfSubstance, of: string): Quantity<'amountConcentration'> {
  const amount = aboveZero(measured(solution.amount, 'amount', amountNaming(of)))
  return amount.dividedBy(madeUpTo(solution, of))
}

function madeUpTo({ volume }: { readonly volume: Given<'volume'> }, of: string): Quantity<'volume'> {
  return aboveZero(measured(volume, 'volume', volumeNaming('volume of the solution', of)))
}

function readDensity(density: Given<'density'>, of: string): Quantity<'density'> {
  return aboveZero(measured(density, 'density', densityNaming(of)))
}
