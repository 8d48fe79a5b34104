import { formulaOf } from '../formula/index.js'
import { exact, type Quantity } from '../quantity/index.js'
import { crystals, waterBeside } from './balance.js'
import { type CropInput, type Liquor, readLiquor } from './crop-input.js'
import { type SolubilityUsed, solubilityFor } from './given-solubility.js'
import { type CrystallisationNote, note } from './note.js'
import { record, texts } from './record.js'

/** What a cooled liquor gives, and what it keeps. An estimate: solubilities are those of pure water. */
export interface ExpectedCrop extends SolubilityUsed {
  /** The crystals: `ZnSO4·7H2O`. */
  readonly crystal: string
  /** Their mass. Zero where the liquor is not saturated. */
  readonly crop: Quantity<'mass'>
  /** Their mass if all the salt crystallised. */
  readonly complete: Quantity<'mass'>
  /** The crop as a share of that, in per cent. */
  readonly share: Quantity<'ratio'>
  /** What stays dissolved, counted as crystals. */
  readonly loss: Quantity<'mass'>
  /** What stays dissolved, as the anhydrous salt. */
  readonly saltLeft: Quantity<'mass'>
  /** The water beside the crystals. */
  readonly waterLeft: Quantity<'mass'>
  /** The liquor that is filtered off, as far as salt and water go. */
  readonly motherLiquor: Quantity<'mass'>
  /** What a person should know about it. */
  readonly notes: readonly CrystallisationNote[]
}

/**
 * The crop that cooling gives: the salt beyond what the water still holds at the temperature of filtration, with the water that the
 * crystals take up and the water that was boiled off.
 *
 * @param input - The crystals, the dissolved salt by mass or amount, all the water, the temperature; water evaporated, a solubility
 *   of your own, other solutes. Text is exact.
 * @returns The crop, the loss to the liquor, what the liquor holds, and remarks.
 * @throws {@link CrystallisationError} `crystallisation/not-an-object`, `crystallisation/not-a-list`; `crystallisation/not-positive` for a mass that is not above zero; the
 *   codes of {@link solubilityOf}; `crystallisation/salt-given-twice`; `crystallisation/water-used-up` where evaporation or the crystals leave no water;
 *   `crystallisation/no-such-crop` where the crystals would dissolve in their own water.
 * @source The water balance of a crystalliser: Richardson, Harker and Backhurst, Chemical Engineering, vol. 2, 5th ed. (2002),
 *   chapter 15, Example 15.3.
 *
 * @example
 * ```ts
 * import { expectedCrop } from 'saltwright/crystallisation'
 *
 * const cooled = expectedCrop({ crystal: 'ZnSO4·7H2O', amount: '0.0400 mol', water: '12.0 g', temperature: '5 degC' })
 * cooled.crop.toString() // => '3.18 g'
 * cooled.complete.toString() // => '11.502 g'
 * cooled.solubility?.others.length // => 2
 * ```
 */
export function expectedCrop(input: CropInput): ExpectedCrop {
  const crystal = formulaOf(record(input, 'what is cooled').crystal)
  const liquor = readLiquor({ ...input, crystal })
  const used = solubilityFor(crystal, input.temperature, input.solubility)
  const separated = crystals(liquor, used.massRatio)
  const saturated = separated.value.gt(0)
  const crop = saturated ? named(separated, liquor, 'expected crop') : nothing(liquor)
  const notes = [...cropNotes(input, liquor, saturated), ...(used.solubility?.notes ?? [])]
  return { ...shares(liquor, crop), ...used, notes }
}

function shares(liquor: Liquor, crop: Quantity<'mass'>): Omit<ExpectedCrop, keyof SolubilityUsed | 'notes'> {
  const { salt, crystal, saltMass, fraction, hydrated } = liquor
  const complete = hydrated ? saltMass.dividedBy(fraction) : saltMass
  const waterLeft = waterBeside(liquor, crop)
  const saltLeft = saltMass.minus(hydrated ? crop.times(fraction) : crop)
  return {
    crystal,
    crop,
    complete: named(complete, liquor, 'all of it as crystals'),
    share: crop.dividedBy(complete).to('%').named({ label: 'share of the salt that crystallises' }),
    loss: named(complete.minus(crop), liquor, 'loss to the mother liquor, as crystals'),
    saltLeft: saltLeft.named({ label: `${salt} left in the mother liquor`, symbol: 'm', of: salt, role: 'mass' }),
    waterLeft,
    motherLiquor: saltLeft.plus(waterLeft).named({ label: 'mother liquor', symbol: 'm', role: 'mass' }),
  }
}

function named(mass: Quantity<'mass'>, { crystal }: Liquor, label: string): Quantity<'mass'> {
  return mass.named({ label, symbol: 'm', of: crystal, role: 'mass' })
}

function nothing({ crystal }: Liquor): Quantity<'mass'> {
  return exact('0 g', { label: 'expected crop', symbol: 'm', of: crystal, role: 'mass' })
}

function cropNotes(input: CropInput, { salt }: Liquor, saturated: boolean): readonly CrystallisationNote[] {
  const others = texts(input.alsoDissolved ?? [], 'formulas')
  const solubility = others.length === 0 ? pureWater() : upperEstimate(salt, others)
  if (saturated) return [solubility]
  return [note('unsaturated', 'At this temperature the water holds all of the salt: nothing crystallises.'), solubility]
}

function pureWater(): CrystallisationNote {
  return note(
    'pure-water',
    'An estimate: the solubility is that in pure water, at equilibrium, with nothing else dissolved.',
  )
}

function upperEstimate(salt: string, others: readonly string[]): CrystallisationNote {
  return note(
    'upper-estimate',
    `The solubility is that in pure water. Where ${others.join(', ')} in the liquor shares an ion with ${salt}, it is an upper estimate of what stays dissolved, and the crop a lower one.`,
  )
}
