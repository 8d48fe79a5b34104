import type { Quantity } from '../quantity/index.js'
import { namedAmount } from './naming.js'
import { remaining } from './progress.js'
import type { Participant } from './reaction.js'
import { type Portion, type SpeciesAmount, together } from './supplies.js'

/** What is in the vessel, by key. */
export type Pool = ReadonlyMap<string, Portion>

/** Keys of some species. */
export type Keys = ReadonlySet<string>

/** How much there is of a participant. */
export function portionOf({ key, formula }: Participant, amount: Quantity<'amount'>): Portion {
  return { key, formula, amount }
}

/** Adds portions; species that are not counted are left out. */
export function pour(pool: Pool, portions: readonly Portion[], uncounted: Keys): Pool {
  const mixed = new Map(pool)
  for (const portion of portions) {
    if (uncounted.has(portion.key)) continue
    const same = mixed.get(portion.key)
    mixed.set(portion.key, same === undefined ? portion : together(same, portion))
  }
  return mixed
}

/** The same part of everything. */
export function share(pool: Pool, part: Quantity<'ratio'>): Pool {
  return change(pool, (portion) => renamed({ ...portion, amount: portion.amount.times(part) }, 'in the aliquot'))
}

/** Everything but some species. */
export function remove(pool: Pool, keys: Keys): Pool {
  return new Map([...pool].filter(([key]) => !keys.has(key)))
}

/** What is there after a reaction. */
export function afterReaction(
  before: Pool,
  used: readonly Portion[],
  made: readonly Portion[],
  uncounted: Keys,
  stage: string,
): Pool {
  const spent = new Map(used.map(({ key, amount }) => [key, amount]))
  const mixed = pour(
    change(before, (portion) => restOf(portion, spent.get(portion.key))),
    made,
    uncounted,
  )
  const touched = new Set([...used, ...made].map(({ key }) => key))
  return change(mixed, (portion) => (touched.has(portion.key) ? renamed(portion, `after ${stage}`) : portion.amount))
}

function restOf({ amount }: Portion, spent: Quantity<'amount'> | undefined): Quantity<'amount'> {
  return spent === undefined ? amount : remaining(amount, spent)
}

function renamed({ formula, amount }: Portion, when: string): Quantity<'amount'> {
  return namedAmount(amount, formula, `amount of ${formula} ${when}`)
}

function change(pool: Pool, to: (portion: Portion) => Quantity<'amount'>): Pool {
  return new Map([...pool].map(([key, portion]) => [key, { ...portion, amount: to(portion) }]))
}

/** The amounts by key. */
export function amountsIn(pool: Pool): ReadonlyMap<string, Quantity<'amount'>> {
  return new Map([...pool].map(([key, { amount }]) => [key, amount]))
}

/** A pool as a list. */
export function listPool(pool: Pool): readonly SpeciesAmount[] {
  return [...pool.values()].map(withoutKey)
}

/** A portion without its key. */
export function withoutKey({ formula, amount }: Portion): SpeciesAmount {
  return { formula, amount }
}
