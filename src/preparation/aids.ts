import { exact, type Quantity, sum } from '../quantity/index.js'
import type { AidLine, ClassOptions } from './class-type.js'
import type { Plan } from './plan-type.js'
import type { Recipe } from './recipe.js'
import { roundedUp, spareFactor } from './store.js'

type Measure = Quantity<'mass'> | Quantity<'volume'>

/** What the preparation room gets ready beside the supplies: solvents, aids and washes, by what they are called. */
export function aidLines(recipe: Recipe, plans: readonly Plan[], options: ClassOptions): readonly AidLine[] {
  const byName = new Map<string, Measure[]>()
  for (const [name, measure] of plans.flatMap(aidsOf)) {
    const key = `${measure.dimension} ${name}`
    const alike = byName.get(key)
    if (alike === undefined) byName.set(key, [measure])
    else alike.push(measure) // a copy for each bench would take the square of their number
  }
  return [...byName].map(([key, measures]) => {
    const name = key.slice(key.indexOf(' ') + 1)
    const total = sum(measures as readonly Quantity<'mass'>[]).named({ label: `total of ${name}` })
    const spare = spareFactor(options.spare, plans.length)
    const withSpare = total.times(spare).named({ label: `total of ${name} with spare` })
    const toPrepare = roundedUp(withSpare, options, recipe).named({ label: `${name} to prepare` })
    return { name, total, withSpare, toPrepare }
  })
}

function aidsOf({ recipe: { auxiliaries = [], washes = [] } }: Plan): readonly (readonly [string, Measure])[] {
  return [
    ...auxiliaries.map(({ name, amount }) => [name, exact(amount as '1 mL')] as const),
    ...washes.map(
      ({ with: name, volume, portions = 1 }) => [name, exact(volume as '1 mL').times(exact(portions))] as const,
    ),
  ]
}
