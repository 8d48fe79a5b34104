import type { Decimal } from '../decimal.js'
import { exact, type Quantity } from '../quantity/index.js'
import type { Recipe, RecipeScale, RecipeSupply } from './recipe.js'

/** What is said of the whole batch needs no more figures than this. */
const figures = 3
/** What is printed of a supply is weighed and measured, so it has more. */
const printedFigures = 6

/** A recipe at another scale: what is printed of supplies, and aids, washes and water for the whole batch, grow or shrink with it. */
export function resized(recipe: Recipe, scale: RecipeScale, factor: Decimal): Recipe {
  const { supplies, auxiliaries, washes, crystallisation } = recipe
  return {
    ...recipe,
    scale,
    supplies: supplies.map((supply) => resizedSupply(supply, factor)),
    ...(auxiliaries && { auxiliaries: auxiliaries.map((each) => ({ ...each, amount: times(each.amount, factor) })) }),
    ...(washes && { washes: washes.map((each) => ({ ...each, volume: times(each.volume, factor) })) }),
    ...(crystallisation && { crystallisation: resizedCooling(crystallisation, factor) }),
  }
}

function resizedSupply(supply: RecipeSupply, factor: Decimal): RecipeSupply {
  if (supply.form === 'unlimited' || supply.asPrinted === undefined) return supply
  return { ...supply, asPrinted: times(supply.asPrinted, factor, printedFigures) }
}

type Cooling = NonNullable<Recipe['crystallisation']>

function resizedCooling({ temperature, water, evaporated }: Cooling, factor: Decimal): Cooling {
  return {
    temperature,
    ...(water && { water: times(water, factor) }),
    ...(evaporated && { evaporated: times(evaporated, factor) }),
  }
}

function times(text: string, factor: Decimal, digits = figures): string {
  if (factor.eq(1)) return text
  const { value, unit } = exact(text) as Quantity
  return `${value.times(factor).toSignificantDigits(digits).toFixed()} ${unit}`
}
