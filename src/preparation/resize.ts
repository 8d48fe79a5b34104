import type { Decimal } from '../decimal.js'
import { exact, type Quantity } from '../quantity/index.js'
import type { Recipe, RecipeScale } from './recipe.js'

/** What is said of the whole batch needs no more figures than this. */
const figures = 3

/** A recipe at another scale: aids, washes and water, which are said for the whole batch, grow or shrink with it. */
export function resized(recipe: Recipe, scale: RecipeScale, factor: Decimal): Recipe {
  const { auxiliaries, washes, crystallisation } = recipe
  return {
    ...recipe,
    scale,
    ...(auxiliaries && { auxiliaries: auxiliaries.map((each) => ({ ...each, amount: times(each.amount, factor) })) }),
    ...(washes && { washes: washes.map((each) => ({ ...each, volume: times(each.volume, factor) })) }),
    ...(crystallisation && { crystallisation: resizedCooling(crystallisation, factor) }),
  }
}

type Cooling = NonNullable<Recipe['crystallisation']>

function resizedCooling({ temperature, water, evaporated }: Cooling, factor: Decimal): Cooling {
  return {
    temperature,
    ...(water && { water: times(water, factor) }),
    ...(evaporated && { evaporated: times(evaporated, factor) }),
  }
}

function times(text: string, factor: Decimal): string {
  if (factor.eq(1)) return text
  const { value, unit } = exact(text) as Quantity
  return `${value.times(factor).toSignificantDigits(figures).toFixed()} ${unit}`
}
