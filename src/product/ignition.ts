import type { AtomicWeights } from '../element/index.js'
import { anhydrous, type FormulaLike, molarMass } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import type { Given } from '../stoichiometry/given.js'
import type { ConstantMass } from './constant-mass.js'
import { type Explanation, ordered } from './explanation.js'
import { positive, record } from './guard.js'
import { type HydrateCandidate, hydrateCandidates } from './hydrate-candidates.js'
import { explainWater } from './ignition-explanations.js'
import { statedUncertainty, toleranceOf } from './stated-uncertainty.js'

/** A salt weighed before and after its water was driven off; text is measured. */
export interface Ignition {
  /** Mass of the hydrate, before. */
  readonly hydrate: Given<'mass'>
  /** Mass of what is left, after. */
  readonly residue: Given<'mass'>
  /** What is left: the anhydrous salt. */
  readonly anhydrous: FormulaLike
  /** The hydrate it should have been, of the same salt; in a doubled formula too. */
  readonly expected?: FormulaLike | undefined
  /** How far x may lie from the number of a hydrate and still count as that hydrate; see {@link waterOfCrystallisation}. */
  readonly tolerance?: Given<'ratio'> | undefined
  /** The weighings while igniting. */
  readonly igniting?: ConstantMass | undefined
  /** The weighings while drying, before the ignition. */
  readonly drying?: ConstantMass | undefined
  /** Atomic weights; `"abridged"` unless said. */
  readonly weights?: AtomicWeights | undefined
}

/** The water of a hydrate. */
export interface WaterOfCrystallisation {
  /** Mass of the water driven off. */
  readonly water: Quantity<'mass'>
  /** Its mass fraction in the hydrate, in per cent. */
  readonly waterFraction: Quantity<'ratio'>
  /** Moles of water per mole of the anhydrous salt. */
  readonly x: Quantity<'ratio'>
  /** Standard uncertainty of x; undefined where no uncertainty of the masses is stated. */
  readonly uncertainty: Quantity<'ratio'> | undefined
  /** How far x may lie from a hydrate that still counts as consistent with it. */
  readonly tolerance: Quantity<'ratio'>
  /** The hydrates next to x and the expected one, nearest first. */
  readonly candidates: readonly HydrateCandidate[]
  /** What can explain an x that is not the expected number, or not any hydrate's. Empty where all agrees. */
  readonly explanations: readonly Explanation[]
}

/**
 * The water of crystallisation from the loss on ignition: x in `CuSO4·xH2O`, the hydrates that agree with it, and what else can
 * explain it: damp, water lost before, an ignition broken off, as far as the data tell them apart.
 *
 * The hydrates that are looked at are those with the whole numbers of water next to x, up to 2.5 also the one with the half between
 * them (hemi- and sesquihydrates), and the expected one with whatever number it has: 8/3 of `3CdSO4·8H2O` is exact. Water counts per
 * formula unit of the anhydrous salt as it is given, so that `K2SO4·Al2(SO4)3·24H2O` is expected to hold 12 per KAl(SO4)2.
 *
 * @param ignition - The masses before and after, the anhydrous salt; the expected hydrate, series of weighings, tolerance.
 * @returns Water, its fraction, x, its uncertainty where the masses state theirs, hydrates nearest first, explanations. A hydrate
 *   agrees if it lies within the tolerance: the one given; else twice the standard uncertainty; else one in the last figure of x.
 * @throws {@link ProductError} `product/not-positive` for a mass or a tolerance that is not above zero; `product/no-mole-ratio` for an
 *   expected formula that is no hydrate of the anhydrous salt; `product/not-an-object`.
 * @source Experiment as in general chemistry manuals: common practice, no source. Coverage factor 2: JCGM 100:2008, 6.3.3.
 *
 * @example
 * ```ts
 * import { waterOfCrystallisation } from 'saltwright/product'
 *
 * const ignited = { hydrate: '0.5000 g', residue: '0.2721 g', anhydrous: 'KAl(SO4)2' } as const
 * const { x, candidates } = waterOfCrystallisation(ignited)
 * x.toString() // => '12.00'
 * candidates[0]?.formula // => 'KAl(SO4)2·12H2O'
 * candidates[0]?.consistent // => true
 * ```
 */
export function waterOfCrystallisation(ignition: Ignition): WaterOfCrystallisation {
  const { weights } = record(ignition, 'an ignition')
  const salt = anhydrous(ignition.anhydrous)
  const before = positive(ignition.hydrate, 'mass', { label: 'mass before ignition', symbol: 'm', role: 'mass' })
  const after = positive(ignition.residue, 'mass', { label: 'mass after ignition', symbol: 'm', of: salt.text })
  const water = before.minus(after).named({ label: 'water driven off', symbol: 'm', of: 'H2O', role: 'water' })
  const moles = water.dividedBy(molarMass('H2O', { weights })).dividedBy(after.dividedBy(molarMass(salt, { weights })))
  const x = moles.to('1').named({ label: `water per mole of ${salt.text}`, symbol: 'x', of: 'H2O', role: 'water' })
  const uncertainty = statedUncertainty(x)
  const tolerance = toleranceOf(x, uncertainty, ignition.tolerance)
  const candidates = hydrateCandidates(salt, x, tolerance, ignition.expected, weights)
  return {
    water,
    waterFraction: water.dividedBy(before).to('%').named({ label: 'mass fraction of water', symbol: 'w', of: 'H2O' }),
    x,
    uncertainty,
    tolerance,
    candidates,
    explanations: ordered(explainWater(x, candidates, ignition)),
  }
}
