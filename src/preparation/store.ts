import { asDimension, exact, type Quantity, sum } from '../quantity/index.js'
import type { ClassOptions, StoreLine } from './class-type.js'
import type { RecipeFacts, SupplyFacts } from './facts.js'
import { makingOf } from './making.js'
import type { Plan, PlannedSupply } from './plan-type.js'
import { readability } from './planned-supply.js'
import type { Recipe } from './recipe.js'
import { chosen, measureOf } from './supply.js'

/** What the preparation room gets ready: one line for each supply, over all benches. */
export function storeLines(facts: RecipeFacts, plans: readonly Plan[], options: ClassOptions): readonly StoreLine[] {
  return facts.supplies.map((supply) => {
    const taken = plans.map((plan) => plan.supplies.find(({ index }) => index === supply.index) as PlannedSupply)
    return storeLine(facts, supply, taken, options)
  })
}

function storeLine(
  facts: RecipeFacts,
  supply: SupplyFacts,
  taken: readonly PlannedSupply[],
  options: ClassOptions,
): StoreLine {
  const [first] = taken as readonly [PlannedSupply]
  const total = sum(taken.map(({ measure }) => measure as Quantity<'mass'>)).named({ label: `total of ${first.name}` })
  const withSpare = total
    .times(spareFactor(options.spare, taken.length))
    .named({ label: `total of ${first.name} with spare` })
  const toPrepare = roundedUp(withSpare, options, facts.recipe).named({ label: `${first.name} to prepare` })
  return {
    substance: first.substance,
    name: first.name,
    taken: first.taken,
    form: first.form,
    concentration: first.concentration,
    total,
    withSpare,
    toPrepare,
    amount: measureOf(supply, facts.weights).amountIn(toPrepare),
    making: makingOf(facts, supply, first, toPrepare),
  }
}

/** What totals are multiplied by for the spare. */
export function spareFactor(spare: ClassOptions['spare'], benches: number): Quantity<'ratio'> {
  const names = { label: 'total with spare', role: 'excess' } as const
  if (spare === undefined) return exact('1', names)
  if ('percent' in spare) return exact('1').plus(chosen(spare.percent, 'ratio')).named(names)
  return exact(benches + spare.benches)
    .dividedBy(exact(benches))
    .named(names)
}

/** The next whole number of containers; without their size, the next step that the balance or the cylinder of the recipe shows. */
export function roundedUp(
  total: Quantity<'mass'>,
  { containers }: ClassOptions,
  { instruments }: Recipe,
): Quantity<'mass'> {
  const size =
    total.dimension === 'mass'
      ? (containers?.mass ?? instruments?.balance ?? readability.mass)
      : (containers?.volume ?? instruments?.cylinder ?? readability.volume)
  const step = chosen(size, total.dimension).to(total.unit as 'g')
  const count = total.dividedBy(step).value.ceil().toString()
  return asDimension(step, total.dimension).times(exact(count as `${number}`, { label: 'containers' }))
}
