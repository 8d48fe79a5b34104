import type { AtomicWeights } from '../element/index.js'
import { type FormulaLike, formulaOf } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import type { Given } from '../stoichiometry/given.js'
import { asCrystals } from './balance.js'
import { positive } from './crop-input.js'
import { solubilityFor } from './given-solubility.js'
import { record } from './record.js'
import type { SolubilityTable } from './solubility-table.js'
import { anhydrousFraction } from './table-value.js'

/** A wash with water; text is exact. */
export interface WaterWash {
  /** The crystals that are washed. */
  readonly crystal: FormulaLike
  /** The water of all portions together. */
  readonly water: Given<'mass'>
  /** Its temperature. */
  readonly temperature: Given<'temperature'>
  /** Grams of the anhydrous salt per gram of water at that temperature, or a table; the built-in table unless said. */
  readonly solubility?: Given<'ratio'> | SolubilityTable | undefined
  /** Atomic weights; `"abridged"` unless said. */
  readonly weights?: AtomicWeights | undefined
}

/**
 * The most that washing with water can carry away: what the wash water dissolves if it leaves saturated. A quick wash takes less.
 *
 * @param wash - The crystals, the water, its temperature.
 * @returns The mass of crystals, an upper estimate.
 * @throws {@link CrystallisationError} `crystallisation/not-positive`; `crystallisation/no-such-crop` where the crystals would
 *   dissolve in their own water; the codes of {@link solubilityOf}.
 * @source The water balance of {@link expectedCrop}, with nothing dissolved to begin with.
 *
 * @example
 * ```ts
 * import { washLoss } from 'saltwright/crystallisation'
 *
 * washLoss({ crystal: 'KNO3', water: '5.0 g', temperature: '0 degC' }).toString() // => '0.682 g'
 * ```
 */
export function washLoss(wash: WaterWash): Quantity<'mass'> {
  const crystal = formulaOf(record(wash, 'a wash').crystal)
  const water = positive(wash.water, 'mass', { label: 'wash water', symbol: 'm', of: 'H2O', role: 'water' }, 'water')
  const fraction = anhydrousFraction(crystal, wash.weights)
  const { massRatio } = solubilityFor(crystal, wash.temperature, wash.solubility)
  const solid = { fraction, crystal: crystal.text, hydrated: fraction.value.lt(1) }
  const lost = asCrystals(water.times(massRatio), solid, massRatio)
  return lost.named({ label: 'washed away at most', symbol: 'm', of: crystal.text, role: 'mass' })
}
