import { exact, type Quantity, sum } from '../quantity/index.js'
import type { AidLine, ClassOptions } from './class-type.js'
import type { Plan } from './plan-type.js'
import { roundedUp, spareFactor } from './store.js'

type Measure = Quantity<'mass'> | Quantity<'volume'>

/** What the preparation room gets ready beside the supplies: solvents, aids and washes, by what they are called. */
export function aidLines(plans: readonly Plan[], options: ClassOptions): readonly AidLine[] {
  const byName = new Map<string, Measure[]>()
  for (const [name, measure] of plans.flatMap(aidsOf)) {
    const key = `${measure.dimension} ${name}`
    const alike = byName.get(key)
    if (alike === undefined) byName.set(key, [measure])
    else alike.push(measure) // a copy for each bench would take the square of their number
  }
  return [...byName].map(([key, measures]) => aidLine(key.slice(key.indexOf(' ') + 1), measures, plans.length, options))
}

function aidsOf({ recipe: { auxiliaries = [], washes = [] } }: Plan): readonly (readonly [string, Measure])[] {
  return [
    ...auxiliaries.map(({ name, amount }) => [name, exact(amount as '1 mL')] as const),
    ...washes.map(
      ({ with: name, volume, portions = 1 }) => [name, exact(volume as '1 mL').times(exact(portions))] as const,
    ),
  ]
}

function aidLine(name: string, measures: readonly Measure[], benches: number, options: ClassOptions): AidLine {
  const total = sum(measures as readonly Quantity<'mass'>[]).named({ label: `total of ${name}` })
  const withSpare = total.times(spareFactor(options.spare, benches)).named({ label: `total of ${name} with spare` })
  const toPrepare = roundedUp(withSpare, options.containers ?? {}).named({ label: `${name} to prepare` })
  return { name, total, withSpare, toPrepare }
}
