import type { Quantity } from '../quantity/index.js'
import type { Given } from '../stoichiometry/given.js'
import { waterBeside } from './balance.js'
import { checkTable } from './check-table.js'
import { type Batch, type Liquor, positive, readLiquor } from './crop-input.js'
import { CrystallisationError } from './crystallisation-error.js'
import { phasesOf } from './find-phase.js'
import { findTable } from './find-table.js'
import { degrees, isNarrow } from './points.js'
import type { PhaseSolubility, SolubilityTable } from './solubility-table.js'
import { tabulated } from './table-value.js'

/** The batch and the crop that is wanted from it. */
export interface WantedCrop extends Batch {
  /** The mass of crystals wanted. */
  readonly crop: Given<'mass'>
  /** The solubilities; the built-in table unless said. */
  readonly table?: SolubilityTable | undefined
}

/**
 * To what temperature a liquor has to be cooled for a wanted crop.
 *
 * @param wanted - The crystals, the dissolved salt by mass or amount, all the water, water evaporated, and the crop. Text is exact.
 * @returns The temperature in degrees Celsius, interpolated in the table as {@link solubilityOf} does.
 * @throws {@link CrystallisationError} `crystallisation/no-such-crop` where the salt does not suffice or no tabulated temperature
 *   of that solid gives the crop; and the codes of {@link expectedCrop}.
 * @source The water balance of {@link expectedCrop}, solved for the solubility: Himmelblau and Riggs, Basic Principles and
 *   Calculations in Chemical Engineering, 7th ed. (2004), Example 8.6.
 *
 * @example
 * ```ts
 * import { temperatureForCrop } from 'saltwright/crystallisation'
 *
 * const wanted = { crystal: 'KNO3', dissolved: '20.0 g', water: '25.0 g', crop: '15.0 g' } as const
 * temperatureForCrop(wanted).toString() // => '8.2 °C'
 * ```
 */
export function temperatureForCrop(wanted: WantedCrop): Quantity<'temperature'> {
  const liquor = readLiquor(wanted)
  const crop = positive(wanted.crop, 'mass', { label: 'wanted crop', symbol: 'm', of: liquor.crystal }, 'crop')
  const table = wanted.table === undefined ? findTable(wanted.crystal) : checkTable(wanted.table)
  const needed = solubilityNeeded(liquor, crop)
  for (const phase of phasesOf(table, wanted.crystal)) {
    const found = temperatureIn(table, phase, needed)
    if (found !== undefined) return found
  }
  throw noSuchCrop(liquor, crop, 'a crop that some tabulated temperature of this solid gives')
}

/** The solubility at which exactly this crop has separated. */
function solubilityNeeded(liquor: Liquor, crop: Quantity<'mass'>): Quantity<'ratio'> {
  const dissolved = liquor.saltMass.minus(crop.times(liquor.fraction))
  if (dissolved.value.gt(0)) return dissolved.dividedBy(waterBeside(liquor, crop))
  throw noSuchCrop(liquor, crop, 'less than all of the salt as crystals')
}

/** Where the solubility of a solid, rising with temperature, reaches a value; undefined where it does not. */
function temperatureIn(
  table: SolubilityTable,
  phase: PhaseSolubility,
  needed: Quantity<'ratio'>,
): Quantity<'temperature'> | undefined {
  const ratios = phase.printed.map((_, index) => tabulated(table, phase, index))
  const low = ratios.findIndex((ratio, index) => holds(ratio, needed, ratios[index + 1]))
  if (low < 0 || !isNarrow(phase.celsius, [low, low + 1])) return undefined
  return along(needed, phase.celsius.slice(low, low + 2), ratios.slice(low, low + 2))
}

function holds(from: Quantity<'ratio'>, needed: Quantity<'ratio'>, to: Quantity<'ratio'> | undefined): boolean {
  return to !== undefined && from.compare(needed) <= 0 && needed.compare(to) < 0
}

function along(
  needed: Quantity<'ratio'>,
  celsius: readonly number[],
  ratios: readonly Quantity<'ratio'>[],
): Quantity<'temperature'> {
  const [from, to] = celsius.map(degrees) as [Quantity<'temperature'>, Quantity<'temperature'>]
  const [low, high] = ratios as [Quantity<'ratio'>, Quantity<'ratio'>]
  const share = needed.minus(low).dividedBy(high.minus(low))
  const temperature = from.plus(to.minus(from).times(share)).to('degC')
  return temperature.named({ label: 'temperature of filtration', symbol: 't', role: 'temperature' })
}

function noSuchCrop({ crystal }: Liquor, crop: Quantity<'mass'>, expected: string): CrystallisationError {
  return new CrystallisationError({
    code: 'crystallisation/no-such-crop',
    message: `No tabulated temperature gives ${crop} of ${crystal} from this liquor.`,
    path: ['crop'],
    found: String(crop),
    expected,
  })
}
