import type { AtomicWeights } from '../element/index.js'
import { type FormulaLike, formulaOf } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import { chosen, type Given } from '../stoichiometry/given.js'
import { massFromAmount } from '../stoichiometry/molar-amount.js'
import { molesPerMole } from './basis.js'
import { aboveZero, anObject } from './bounds.js'
import { concentrationNaming, soluteNaming, volumeNaming } from './naming.js'

/** A solution to be made from a solid. */
export interface MakeUpRequest {
  /** What the concentration is of: `CuSO4`. */
  readonly substance: FormulaLike
  /** The concentration to make; text is exact. */
  readonly concentration: Given<'amountConcentration'>
  /** The volume to make; text is exact. */
  readonly volume: Given<'volume'>
  /** What goes on the balance, if not the substance itself: its hydrate, `CuSO4·5H2O`. */
  readonly weigh?: FormulaLike | undefined
  /** Mass fraction of that in what is weighed, as on the label; pure unless said. Text is measured. */
  readonly assay?: Given<'ratio'> | undefined
  /** Which atomic weights: `"abridged"` unless said. */
  readonly weights?: AtomicWeights | undefined
}

/** How a solution is made from a solid. */
export interface MakeUp {
  /** What goes on the balance. */
  readonly weigh: string
  /** Amount of the substance in the solution, in mol. */
  readonly amount: Quantity<'amount'>
  /** Mass to weigh, in g. */
  readonly mass: Quantity<'mass'>
  /** Volume to make up to: the solid is dissolved in less water, then water is added up to this volume. */
  readonly volume: Quantity<'volume'>
}

/**
 * The mass of a solid that is weighed, dissolved and made up to a volume of solution. A hydrate can be weighed for a concentration
 * of the salt without its water.
 *
 * @param request - What is to be made, and from what.
 * @returns Mass, amount and the volume to make up to.
 * @throws {@link SolutionError} `solution/unrelated-bases` where what is weighed is not the substance nor a hydrate of it;
 *   `solution/not-above-zero`, `solution/not-an-object`; {@link StoichiometryError} `stoichiometry/not-a-fraction`;
 *   {@link FormulaError} and {@link QuantityError} for what cannot be read.
 * @source OpenStax, Chemistry 2e, section 3.3.
 *
 * @example
 * ```ts
 * import { makeUp } from 'saltwright/solution'
 *
 * const request = { substance: 'CuSO4', weigh: 'CuSO4·5H2O', concentration: '0.50 mol/L', volume: '250 mL' } as const
 * makeUp(request).mass.toString() // => '31.210 g'
 * makeUp({ ...request, weigh: 'CuSO4' }).mass.toString() // => '19.950 g'
 * ```
 */
export function makeUp(request: MakeUpRequest): MakeUp {
  const { substance, weights, assay, ...given } = anObject(request, '{ substance, concentration, volume }')
  const of = formulaOf(substance).text
  const volume = aboveZero(chosen(given.volume, 'volume', volumeNaming('volume to make up to', of)))
  const concentration = aboveZero(chosen(given.concentration, 'amountConcentration', concentrationNaming(of)))
  const amount = concentration.times(volume).named(soluteNaming(of))
  const weighed = given.weigh === undefined ? amount : amount.times(molesPerMole(given.weigh, substance))
  const weigh = formulaOf(given.weigh ?? substance).text
  return { weigh, amount, mass: massFromAmount(weighed.named(soluteNaming(weigh)), weigh, { weights, assay }), volume }
}
