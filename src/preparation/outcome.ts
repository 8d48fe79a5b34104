import { molarMass } from '../formula/index.js'
import { changesStatesOnly, type StageChemistry, startOf, uses } from './chemistry.js'
import type { Course } from './course.js'
import { type RecipeFacts, writtenAs } from './facts.js'
import { amountOf, type Form } from './form.js'
import type { Plan } from './plan-type.js'
import type { Portion } from './portion.js'
import { type Contents, isTrace, type StageRun } from './run.js'

/** The most product there can be, as an amount and a mass. */
export function theoreticalOf(facts: RecipeFacts, course: Course): Plan['theoretical'] {
  const of = writtenAs(facts.stages, facts.productKey)
  const names = { of, role: 'theoretical yield' } as const
  const amount = amountOf(productForm(facts, course), of).named({
    ...names,
    symbol: 'n',
    label: `theoretical amount of ${of}`,
  })
  const mass = amount
    .times(molarMass(of, { weights: facts.weights }))
    .named({ ...names, symbol: 'm', label: `theoretical yield of ${of}` })
  return { amount, mass }
}

/** The product in every respect. */
export function productOf({ recipe, product, stages, productKey, weights }: RecipeFacts): Plan['product'] {
  const formula = writtenAs(stages, productKey)
  return { formula, name: recipe.productName ?? product.text, molarMass: molarMass(formula, { weights }) }
}

/** The supplies that decide how much product there can be: on which its amount depends, and which run out. */
export function limitingOf(facts: RecipeFacts, course: Course): readonly string[] {
  const deciding = new Set(productForm(facts, course).map(({ source }) => source.naming.of as string))
  const gone = goneOnTheWay(facts, course.runs)
  return [...deciding].filter((formula) => gone.has(formula))
}

/**
 * The supplies that ran out on the way to the product: where a stage made it, what ran out there; where that was made itself, what
 * ran out on the way to it, from the last stage to the first.
 */
function goneOnTheWay({ stages, supplies, productKey }: RecipeFacts, runs: readonly StageRun[]): ReadonlySet<string> {
  const keys = new Set([productKey])
  for (let index = stages.length - 1; index >= 0; index -= 1) {
    const stage = stages[index] as StageChemistry
    const limiting = changesStatesOnly(stage) ? startOf(stage).key : (runs[index] as StageRun).limiting
    const isOnTheWay = [...keys].some((key) => stage.changes.has(key) && !uses(stage, key))
    if (isOnTheWay && limiting !== undefined) keys.add(limiting)
  }
  return new Set(supplies.filter(({ key }) => keys.has(key)).map(({ formula }) => formula.text))
}

/** How much of the product there is in the end; a stage makes it, so it is there, if only as nothing. */
function productForm({ productKey }: RecipeFacts, { contents }: Course): Form {
  return contents.get(productKey) as Form
}

/** What is in the liquor beside the product in the end. */
export function leftoversOf(facts: RecipeFacts, { contents }: Course): readonly Portion[] {
  return portionsOf(facts, new Map([...contents].filter(([key]) => key !== facts.productKey)))
}

/** Amounts of what is in a vessel, without gases, traces and what there is always enough of. */
export function portionsOf({ stages, unlimited }: RecipeFacts, contents: Contents): readonly Portion[] {
  const gases = new Set(stages.flatMap(({ changes }) => [...changes].filter(([, { gas }]) => gas).map(([key]) => key)))
  return [...contents]
    .filter(([key, form]) => !unlimited.has(key) && !gases.has(key) && !isTrace(form))
    .map(([key, form]) => {
      const formula = writtenAs(stages, key)
      const names = { symbol: 'n', of: formula, label: `amount of ${formula} left` } as const
      return { formula, amount: amountOf(form, formula).named(names) }
    })
}

/** What results call the atomic weights they were worked out with. */
export function weightsName({ weights }: RecipeFacts): string {
  return typeof weights === 'string' ? weights : weights.name
}
