import { asDimension, type Quantity } from '../quantity/index.js'
import type { Making } from './class-type.js'
import type { RecipeFacts, SupplyFacts } from './facts.js'
import type { PlannedSupply } from './plan-type.js'
import type { MadeFrom, RecipeSupply } from './recipe.js'
import { chosen, measureOf } from './supply.js'

/** How so much of a solution is made, where the recipe says from what. */
export function makingOf(
  facts: RecipeFacts,
  supply: SupplyFacts,
  planned: PlannedSupply,
  toPrepare: Quantity,
): Making | undefined {
  const { recipe } = supply
  if (recipe.form !== 'solution' || recipe.madeFrom === undefined || planned.concentration === undefined)
    return undefined
  const makeUpTo = asDimension(toPrepare, 'volume')
  const amount = planned.concentration.times(makeUpTo)
  const source = measureOf({ ...supply, recipe: sourceOf(recipe.substance, recipe.madeFrom) }, facts.weights)
  return {
    from: source.substance,
    strength: strengthOf(recipe.madeFrom),
    take: source.toTake(amount),
    makeUpTo,
    stockIntoWater: 'massFraction' in recipe.madeFrom,
  }
}

/** What a solution is made from, as a supply of its own. */
export function sourceOf(substance: string, from: MadeFrom): Exclude<RecipeSupply, { readonly form: 'unlimited' }> {
  if ('solid' in from)
    return { form: 'solid', substance, weighedAs: from.solid, ...(from.assay && { assay: from.assay }) }
  return 'massFraction' in from ? { form: 'stock', substance, ...from } : { form: 'solution', substance, ...from }
}

function strengthOf(from: MadeFrom): readonly Quantity[] {
  if ('solid' in from) return from.assay === undefined ? [] : [chosen(from.assay, 'ratio')]
  if ('massFraction' in from) return [chosen(from.massFraction, 'ratio'), chosen(from.density, 'density')]
  return [chosen(from.concentration, 'amountConcentration')]
}
