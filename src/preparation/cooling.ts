import { type CropInput, type ExpectedCrop, expectedCrop, washLoss } from '../crystallisation/index.js'
import { attempt } from '../errors.js'
import { exact, type Quantity, sum } from '../quantity/index.js'
import { speciesKey } from '../stoichiometry/index.js'
import type { RecipeFacts } from './facts.js'
import type { Portion } from './portion.js'
import { chosen } from './supply.js'

/** What cooling should give, or why nobody can say. */
export type CoolingEstimate =
  | {
      /** True where it could be worked out. */
      readonly known: true
      /** The crop, the loss, and what they rest on. */
      readonly expected: ExpectedCrop
      /** What filtering five kelvins too warm would cost; absent where the table does not reach that far. */
      readonly tooWarm: TooWarm | undefined
    }
  | {
      /** False where it could not be worked out. */
      readonly known: false
      /** Why, in one sentence. */
      readonly reason: string
    }

/** What filtering too warm would cost. */
export interface TooWarm {
  /** At what temperature. */
  readonly temperature: Quantity<'temperature'>
  /** How much less the crop would be. */
  readonly lessBy: Quantity<'mass'>
}

/** How much too warm a filtration is taken as an example. */
const kelvinsTooWarm = '5 K'

/** What cooling should give, where the recipe says how much water there is and to what temperature it is cooled. */
export function coolingOf(
  facts: RecipeFacts,
  amount: Quantity<'amount'>,
  leftovers: readonly Portion[],
): CoolingEstimate | undefined {
  const { crystallisation } = facts.recipe
  if (crystallisation?.water === undefined || amount.value.lte(0)) return undefined
  const input: CropInput = {
    crystal: facts.product,
    amount,
    water: waterMass(crystallisation.water),
    evaporated: crystallisation.evaporated === undefined ? undefined : waterMass(crystallisation.evaporated),
    temperature: crystallisation.temperature as '0 degC',
    alsoDissolved: leftovers.map(({ formula }) => formula),
    weights: facts.weights,
  }
  const outcome = attempt(() => expectedCrop(input))
  if (!outcome.ok) return { known: false, reason: outcome.error.message }
  return { known: true, expected: outcome.value, tooWarm: tooWarmBy(input, outcome.value) }
}

function tooWarmBy(input: CropInput, { crop }: ExpectedCrop): TooWarm | undefined {
  const temperature = warmer(input.temperature as string)
  const warm = attempt(() => expectedCrop({ ...input, temperature: temperature.toString() as '0 degC' }))
  if (!warm.ok || crop.value.isZero()) return undefined
  return {
    temperature,
    lessBy: crop.minus(warm.value.crop).named({ label: 'less crop', symbol: 'm', of: warm.value.crystal }),
  }
}

/** So many kelvins warmer, in degrees Celsius. */
function warmer(temperature: string): Quantity<'temperature'> {
  const degrees = chosen(temperature, 'temperature').to('K').plus(exact(kelvinsTooWarm)).to('degC').value
  return chosen(`${degrees.toFixed()} degC`, 'temperature')
}

/** The mass of water by mass or by volume; a millilitre is taken as a gram. */
function waterMass(text: string): Quantity<'mass'> {
  const water = exact(text) as Quantity
  if (water.dimension === 'mass') return chosen(text, 'mass')
  return chosen(text, 'volume').times(
    exact('1 g/mL', { label: 'density of water, rounded', role: 'density', of: 'H2O' }),
  )
}

/**
 * What washing with water carries away at most, taken as cold as the crop was filtered; nothing is known where the recipe washes
 * with anything else, or where no solubility is tabulated.
 */
export function washedAwayOf({ recipe, product, weights }: RecipeFacts): Quantity<'mass'> | undefined {
  const { washes = [], crystallisation } = recipe
  const onlyWater = washes.length > 0 && washes.every(({ substance }) => substance !== undefined && isWater(substance))
  if (!onlyWater || crystallisation === undefined) return undefined
  const water = sum(washes.map(({ volume, portions = 1 }) => waterMass(volume).times(exact(portions))))
  const temperature = chosen(crystallisation.temperature, 'temperature')
  const lost = attempt(() => washLoss({ crystal: product, water, temperature, weights }))
  return lost.ok ? lost.value : undefined
}

function isWater(formula: string): boolean {
  return speciesKey(formula) === speciesKey('H2O')
}
