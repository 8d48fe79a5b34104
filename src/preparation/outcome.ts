import { molarMass } from '../formula/index.js'
import type { Course } from './course.js'
import { type RecipeFacts, writtenAs } from './facts.js'
import { amountOf, type Form } from './form.js'
import type { Plan } from './plan-type.js'
import type { Portion } from './portion.js'
import { type Contents, isTrace } from './run.js'

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

/** The supplies that decide how much product there can be. */
export function limitingOf(facts: RecipeFacts, course: Course): readonly string[] {
  return [...new Set(productForm(facts, course).map(({ source }) => source.naming.of as string))]
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
