import { asDimension, exact, type Quantity } from '../quantity/index.js'
import { roundDecimal } from '../quantity/rounding.js'
import { type Vessel, type VesselOptions, vesselFor } from '../solution/index.js'
import type { Poured } from './course.js'
import type { RecipeFacts, SupplyFacts } from './facts.js'
import type { Excess, PlannedSupply } from './plan-type.js'
import type { Recipe } from './recipe.js'
import { chosen, measureOf } from './supply.js'
import { withinNumerals } from './within-numerals.js'

/** One line of the bench sheet: what was needed, what is taken, and how it is weighed or measured. */
export function plannedSupply(facts: RecipeFacts, { supply, need, amount }: Poured): PlannedSupply {
  const measure = measureOf(supply, facts.weights)
  const taken = takenOf(supply, measure.toTake(amount))
  const vessel = vesselOf(supply, taken)
  const total = need.total as Quantity<'amount'>
  return {
    substance: supply.formula.text,
    name: supply.recipe.name ?? supply.formula.text,
    index: supply.index,
    stage: (facts.stages[supply.stage] as RecipeFacts['stages'][number]).name,
    naiveNeed: need.naive as Quantity<'amount'>,
    need: total,
    left: need.left,
    amount,
    excess: excessOf(amount, total, supply.formula.text),
    by: measure.by,
    taken: measure.substance,
    form: supply.recipe.form,
    assay: measure.assay,
    concentration: measure.concentration,
    exactMeasure: taken,
    vessel,
    measure: shownMeasure(facts.recipe, taken, vessel),
  }
}

/** What to weigh or measure for an amount, as the instrument can show it. */
export function measureToTake(
  { recipe, weights }: RecipeFacts,
  supply: SupplyFacts,
  amount: Quantity<'amount'>,
): PlannedSupply['measure'] {
  const taken = takenOf(supply, measureOf(supply, weights).toTake(amount))
  return withinNumerals('recipe', ['scale'], () => shownMeasure(recipe, taken, vesselOf(supply, taken)))
}

/** What is taken: as the recipe prints it where it prints a mass that is weighed or a volume that is measured. */
function takenOf({ recipe }: SupplyFacts, taken: PlannedSupply['exactMeasure']): PlannedSupply['exactMeasure'] {
  const printed = recipe.asPrinted === undefined ? taken : (exact(recipe.asPrinted) as Quantity)
  if (printed.dimension !== taken.dimension) return taken
  return (printed as Quantity<'mass'>).to(taken.unit as 'g').named(taken.naming)
}

/** Equivalents and per cent excess of what was taken over what was needed; nothing where there is no need to compare with. */
export function excessOf(taken: Quantity<'amount'>, need: Quantity<'amount'>, of: string): Excess | undefined {
  if (need.value.isZero()) return undefined
  const equivalents = taken.dividedBy(need).named({ label: `equivalents of ${of}`, of })
  return {
    equivalents,
    percentExcess: equivalents
      .minus(exact('1'))
      .to('%')
      .named({ label: `excess of ${of}`, of }),
  }
}

/** What can be read off a balance or a cylinder unless the recipe says otherwise. */
export const readability = { mass: '0.001 g', volume: '0.1 mL' } as const

/** What the vessel, or else the balance or the cylinder of the bench, can show of a mass or volume. */
function shownMeasure(
  recipe: Recipe,
  taken: PlannedSupply['exactMeasure'],
  vessel: Vessel | undefined,
): PlannedSupply['measure'] {
  const step = readingStep(recipe, taken, vessel)
  return step === undefined ? taken : shown(taken as Quantity<'mass'>, step as Quantity<'mass'>)
}

/** The step of what a mass or volume is taken with; none where a vessel holds one volume only. */
export function readingStep(
  { instruments }: Recipe,
  taken: PlannedSupply['exactMeasure'],
  vessel: Vessel | undefined,
): PlannedSupply['measure'] | undefined {
  if (vessel !== undefined) return vessel.step
  if (taken.dimension === 'mass') return chosen(instruments?.balance ?? readability.mass, 'mass')
  return chosen(instruments?.cylinder ?? readability.volume, 'volume')
}

/** Fewer digits than are worked with, so that a tie is still one when a mass was divided by its molar mass and multiplied again. */
const settledDigits = 30

/** What a plan says to take is a choice: a multiple of what can be read, and exact. */
function shown<D extends 'mass' | 'volume'>(taken: Quantity<D>, step: Quantity<D>): Quantity<D> {
  const place = step.to(taken.unit as Parameters<Quantity<D>['to']>[0]).value
  const rounded = roundDecimal(taken.value.toSignificantDigits(settledDigits), { step: place, ties: 'half-even' })
  return asDimension(exact(`${rounded.toFixed(place.dp())} ${taken.unit}`, taken.naming), taken.dimension)
}

/** The vessel that a volume is measured with, where the recipe says of which kind. */
function vesselOf({ recipe }: SupplyFacts, taken: PlannedSupply['exactMeasure']): Vessel | undefined {
  if (recipe.vessel === undefined || taken.dimension !== 'volume' || taken.value.isZero()) return undefined
  return vesselFor(taken as Quantity<'volume'>, recipe.vessel as VesselOptions)
}
