import { exact, type Quantity } from '../quantity/index.js'
import type { Liquor } from './crop-input.js'
import { CrystallisationError } from './crystallisation-error.js'

/**
 * The crystals that separate from a liquor until it is just saturated. All water counts once, that of the crystals included:
 * C = (A - k·W) / (a - k·(1 - a)), with A the dissolved anhydrous salt, W the water, k the solubility in g per g of water and a the
 * mass fraction of the anhydrous salt in the crystals. Below zero where the liquor is not saturated.
 *
 * @source The water balance of a crystalliser: Richardson, Harker and Backhurst, Chemical Engineering, vol. 2, 5th ed. (2002),
 *   section 15.2 and Example 15.3.
 */
export function crystals(liquor: Liquor, solubility: Quantity<'ratio'>): Quantity<'mass'> {
  return asCrystals(surplusOf(liquor, solubility), liquor, solubility)
}

/** The crystals in which so much more salt goes than their own water could hold. */
export function asCrystals(
  salt: Quantity<'mass'>,
  solid: Pick<Liquor, 'fraction' | 'crystal' | 'hydrated'>,
  solubility: Quantity<'ratio'>,
): Quantity<'mass'> {
  return solid.hydrated ? salt.dividedBy(saltBeyondOwnWater(solid, solubility)) : salt
}

/** Salt beyond what the water holds, before the crystals take water away. */
function surplusOf({ saltMass, waterMass, salt }: Liquor, solubility: Quantity<'ratio'>): Quantity<'mass'> {
  const held = waterMass.times(solubility).named({ label: `${salt} that the water holds`, symbol: 'm', of: salt })
  return saltMass.minus(held)
}

/** What a gram of crystals brings beyond what its own water would dissolve. */
function saltBeyondOwnWater(
  { fraction, crystal }: Pick<Liquor, 'fraction' | 'crystal'>,
  solubility: Quantity<'ratio'>,
): Quantity<'ratio'> {
  const beyond = fraction.minus(solubility.times(exact(1).minus(fraction)))
  if (beyond.value.gt(0)) return beyond
  throw new CrystallisationError({
    code: 'crystallisation/no-such-crop',
    message: `At this solubility ${crystal} would dissolve in its own water of crystallisation; no crop can be worked out.`,
    found: `${solubility} g per g of water`,
    expected: 'a solubility below the salt content of the crystals per gram of their water',
  })
}

/** Water of the liquor that the crystals leave. */
export function waterBeside(
  { waterMass, fraction, crystal, hydrated }: Liquor,
  crop: Quantity<'mass'>,
): Quantity<'mass'> {
  if (!hydrated) return waterMass
  const left = waterMass.minus(crop.times(exact(1).minus(fraction)))
  if (left.value.gt(0)) return left.named({ label: 'water left in the liquor', symbol: 'm', of: 'H2O', role: 'water' })
  throw new CrystallisationError({
    code: 'crystallisation/water-used-up',
    message: `There is not enough water for the salt to crystallise as ${crystal}: the crystals would take more than there is.`,
    found: String(waterMass),
    expected: 'more water, or less evaporated',
  })
}
