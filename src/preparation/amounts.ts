import { molarMass } from '../formula/index.js'
import { asDimension, exact, type Quantity } from '../quantity/index.js'
import type { Need } from './course.js'
import { type RecipeFacts, type SupplyFacts, writtenAs } from './facts.js'
import { chosen, measureOf } from './supply.js'

/** The scale as an amount; nothing where a recipe without one is audited as printed. */
export function scaleOf(facts: RecipeFacts): Quantity<'amount'> | undefined {
  const { scale } = facts.recipe
  if (scale === undefined) return undefined
  const of = writtenAs(facts.stages, facts.scaleKey)
  const names = { role: 'scale', symbol: 'n', of, label: `chosen amount of ${of}` } as const
  if (scale.amount !== undefined) return chosen(scale.amount, 'amount').named(names)
  if (scale.mass !== undefined)
    return chosen(scale.mass, 'mass')
      .named({ symbol: 'm', of, label: `chosen mass of ${of}` })
      .dividedBy(molarMass(of, { weights: facts.weights }))
      .named(names)
  const supply = facts.supplies.find(
    ({ key, recipe }) => key === facts.scaleKey && recipe.asPrinted !== undefined,
  ) as SupplyFacts
  return printedAmount(facts, supply)
}

/** How much of a supply is taken by the recipe's rule for it. */
export function plannedAmount(
  facts: RecipeFacts,
  scale: Quantity<'amount'> | undefined,
  supply: SupplyFacts,
  need: Need,
): Quantity<'amount'> {
  const { substance, molesPerMole, excessFactor, asPrinted } = supply.recipe
  const names = { symbol: 'n', of: supply.formula.text, role: 'amount', label: `amount of ${substance}` } as const
  if (asPrinted !== undefined) return printedAmount(facts, supply)
  if (molesPerMole !== undefined) {
    const ratio = chosen(molesPerMole, 'ratio').named({
      role: 'mole ratio',
      of: substance,
      label: `chosen moles of ${substance} per mole of ${writtenAs(facts.stages, facts.scaleKey)}`,
    })
    return (scale as Quantity<'amount'>).times(ratio).named(names)
  }
  const total = need.total as Quantity<'amount'>
  if (excessFactor === undefined) return total.named(names)
  const factor = chosen(excessFactor, 'ratio').named({
    role: 'excess',
    symbol: 'f',
    of: substance,
    label: `excess of ${substance}`,
  })
  return total.times(factor).named(names)
}

function printedAmount({ weights }: RecipeFacts, supply: SupplyFacts): Quantity<'amount'> {
  const printed = exact(supply.recipe.asPrinted as string) as Quantity
  const of = supply.formula.text
  if (printed.dimension === 'amount')
    return asDimension(printed, 'amount').named({ symbol: 'n', of, role: 'amount', label: `amount of ${of}` })
  const { amountIn, substance } = measureOf(supply, weights)
  const symbol = printed.dimension === 'mass' ? 'm' : 'V'
  return amountIn(printed.named({ symbol, of: substance, label: `printed ${printed.dimension} of ${substance}` }))
}
