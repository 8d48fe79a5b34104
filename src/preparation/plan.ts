import { molarMass } from '../formula/index.js'
import { asDimension, exact, type Quantity, roundTo } from '../quantity/index.js'
import { coolingOf } from './cooling.js'
import { type Course, type Need, type Poured, runCourse } from './course.js'
import { type RecipeFacts, readRecipe, type SupplyFacts, writtenAs } from './facts.js'
import { amountOf, nothing } from './form.js'
import { deepFreeze } from './freeze.js'
import { cautionsOf } from './plan-cautions.js'
import { findingsOf } from './plan-findings.js'
import type { Excess, Plan, PlannedStage, PlannedSupply, Portion } from './plan-type.js'
import type { Recipe } from './recipe.js'
import { type Contents, isTrace, type StageRun } from './run.js'
import { gasesOf, heatOf } from './stage-effects.js'
import { chosen, measureOf } from './supply.js'

/**
 * Plans a preparation: what to weigh and measure at the chosen scale, what limits it, what is left over, and how much product
 * there can be at most.
 *
 * The scale and everything the recipe says is a choice and exact; masses and volumes are shown to what the balance and the
 * measuring vessel can read, and kept unrounded beside it. What an earlier stage leaves over is counted in the next one: acid
 * for the alkali left from dissolving a metal is part of the need, and the plan shows the need with and without it.
 *
 * @param recipe - A recipe as plain JSON; `recipeSchema` says its shape.
 * @returns The plan. What contradicts itself but can be computed is in `findings`.
 * @throws {@link PreparationError} `preparation/invalid` with every mistake in `problems`, each with its path;
 *   `preparation/unreadable` for what is no plain JSON.
 * @source Equivalents as amount used over amount needed: common practice, no source.
 *
 * @example
 * ```ts
 * import { planPreparation } from 'saltwright/preparation'
 *
 * const plan = planPreparation({
 *   format: 'saltwright/recipe@1',
 *   title: 'Zinc sulfate heptahydrate',
 *   product: 'ZnSO4·7H2O',
 *   scale: { of: 'ZnSO4·7H2O', amount: '0.0400 mol' },
 *   stages: [
 *     { name: 'dissolve', equation: 'ZnO + H2SO4 -> ZnSO4 + H2O' },
 *     { name: 'crystallise', equation: 'ZnSO4 + 7H2O -> ZnSO4·7H2O' },
 *   ],
 *   supplies: [
 *     { form: 'solid', substance: 'ZnO' },
 *     { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
 *   ],
 * })
 * plan.supplies.map(({ measure }) => measure.toString()) // => ['3.255 g', '14.7 mL']
 * plan.theoretical.mass.toString() // => '11.502 g'
 * ```
 */
export function planPreparation(recipe: Recipe): Plan {
  return planAt(readRecipe(recipe))
}

/** The plan of a recipe that has been read, at its scale. */
export function planAt(facts: RecipeFacts): Plan {
  const scale = scaleOf(facts)
  return planOf(
    facts,
    scale,
    runCourse(facts, scale, (supply, need) => plannedAmount(facts, scale, supply, need)),
  )
}

/** The scale as an amount; nothing where a recipe without one is audited as printed. */
export function scaleOf(facts: RecipeFacts): Quantity<'amount'> | undefined {
  const { scale } = facts.recipe
  if (scale === undefined) return undefined
  const of = writtenAs(facts.stages, facts.scaleKey)
  const names = { role: 'scale', symbol: 'n', of, label: `chosen amount of ${of}` } as const
  if (scale.amount !== undefined) return chosen(scale.amount, 'amount').named(names)
  if (scale.mass !== undefined)
    return chosen(scale.mass, 'mass')
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
      label: `moles of ${substance} per mole of the scale substance`,
    })
    return (scale as Quantity<'amount'>).times(ratio).named(names)
  }
  const total = need.total as Quantity<'amount'>
  if (excessFactor === undefined) return total.named(names)
  const factor = chosen(excessFactor, 'ratio').named({ role: 'excess', of: substance, label: `excess of ${substance}` })
  return total.times(factor).named(names)
}

function printedAmount({ weights }: RecipeFacts, supply: SupplyFacts): Quantity<'amount'> {
  const printed = exact(supply.recipe.asPrinted as string) as Quantity
  const of = supply.formula.text
  if (printed.dimension === 'amount')
    return asDimension(printed, 'amount').named({ symbol: 'n', of, role: 'amount', label: `amount of ${of}` })
  return measureOf(supply, weights).amountIn(printed)
}

/** A plan from how the preparation ran. */
function planOf(facts: RecipeFacts, scale: Quantity<'amount'> | undefined, course: Course): Plan {
  const theoretical = theoreticalOf(facts, course)
  const basis = scale ?? theoretical.amount
  const settled = scale === undefined ? runCourse(facts, basis, (supply) => pouredAmount(course, supply)) : course
  const supplies = settled.poured.map((poured) => plannedSupply(facts, poured))
  const leftovers = leftoversOf(facts, course)
  const draft = {
    format: 'saltwright/plan@1',
    recipe: facts.recipe,
    product: productOf(facts),
    scale: { formula: writtenAs(facts.stages, facts.scaleKey), amount: basis },
    overall: facts.overall,
    stages: facts.stages.map((_, index) => plannedStage(facts, index, course.runs[index] as StageRun)),
    supplies,
    limiting: limitingOf(facts, course),
    theoretical,
    leftovers,
    cooling: coolingOf(facts, theoretical.amount, leftovers),
    atomicWeights: weightsName(facts),
  } as const
  return deepFreeze({ ...draft, cautions: cautionsOf(facts, draft), findings: findingsOf(facts, draft) })
}

function pouredAmount(course: Course, supply: SupplyFacts): Quantity<'amount'> {
  return (course.poured.find((poured) => poured.supply === supply) as Poured).amount
}

/** The most product there can be, as an amount and a mass. */
export function theoreticalOf(facts: RecipeFacts, course: Course): Plan['theoretical'] {
  const of = writtenAs(facts.stages, facts.productKey)
  const names = { of, role: 'theoretical yield' } as const
  const amount = amountOf(course.contents.get(facts.productKey) ?? nothing, of).named({
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

function plannedStage(facts: RecipeFacts, index: number, run: StageRun): PlannedStage {
  const { stages, recipe } = facts
  const stage = stages[index] as RecipeFacts['stages'][number]
  const { steps } = recipe.stages[index] as Recipe['stages'][number]
  return {
    name: stage.name,
    equation: stage.equation,
    steps: steps ?? [],
    extent: amountOf(run.extent, stage.name).named({ symbol: 'ξ', label: `extent of ${stage.name}` }),
    limiting: run.limiting && writtenAs(stages, run.limiting),
    clears: stage.clears && writtenAs(stages, stage.clears),
    removed: portionsOf(facts, run.removed),
    gases: gasesOf(facts, stage, run),
    heat: heatOf(stage, run),
  }
}

function plannedSupply(facts: RecipeFacts, { supply, need, amount }: Poured): PlannedSupply {
  const measure = measureOf(supply, facts.weights)
  const taken = takenOf(supply, measure.toTake(amount))
  const total = need.total as Quantity<'amount'>
  return {
    substance: supply.formula.text,
    name: supply.recipe.name ?? supply.formula.text,
    index: supply.index,
    stage: (facts.stages[supply.stage] as RecipeFacts['stages'][number]).name,
    naiveNeed: need.naive as Quantity<'amount'>,
    need: total,
    amount,
    excess: excessOf(amount, total, supply.formula.text),
    by: measure.by,
    taken: measure.substance,
    form: supply.recipe.form,
    assay: measure.assay,
    concentration: measure.concentration,
    exactMeasure: taken,
    measure: shownMeasure(facts.recipe, taken),
  }
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

/** What the balance or the measuring vessel can show of a mass or volume; a thousandth of a gram and a tenth of a millilitre unless said. */
function shownMeasure(
  { instruments }: Recipe,
  taken: Quantity<'mass'> | Quantity<'volume'>,
): Quantity<'mass'> | Quantity<'volume'> {
  const isMass = taken.dimension === 'mass'
  const readability = isMass ? (instruments?.balance ?? '0.001 g') : (instruments?.cylinder ?? '0.1 mL')
  const step = chosen(readability, taken.dimension as 'mass')
    .to(taken.unit as 'g')
    .value.toFixed()
  return roundTo(taken as Quantity<'mass'>, { place: step })
}

/** The supplies that decide how much product there can be. */
export function limitingOf(facts: RecipeFacts, course: Course): readonly string[] {
  const form = course.contents.get(facts.productKey) ?? nothing
  const sources = new Set(form.map(({ source }) => source.naming.of).filter((of) => of !== undefined))
  return [...sources]
}

/** What is in the liquor beside the product in the end. */
export function leftoversOf(facts: RecipeFacts, { contents }: Course): readonly Portion[] {
  return portionsOf(facts, new Map([...contents].filter(([key]) => key !== facts.productKey)))
}

/** Amounts of what is in a vessel, without gases, traces and what there is always enough of. */
function portionsOf({ stages, unlimited }: RecipeFacts, contents: Contents): readonly Portion[] {
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
