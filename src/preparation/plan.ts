import { withSummary } from '../display.js'
import type { Quantity } from '../quantity/index.js'
import { plannedAmount, scaleOf } from './amounts.js'
import { coolingOf } from './cooling.js'
import { type Course, pouredAmount, runCourse } from './course.js'
import { type RecipeFacts, writtenAs } from './facts.js'
import { amountOf } from './form.js'
import { deepFreeze } from './freeze.js'
import { leftoversOf, limitingOf, portionsOf, productOf, theoreticalOf, weightsName } from './outcome.js'
import { cautionsOf } from './plan-cautions.js'
import { findingsOf } from './plan-findings.js'
import type { Plan, PlannedStage } from './plan-type.js'
import { plannedSupply } from './planned-supply.js'
import { readRecipe } from './read-recipe.js'
import type { Recipe } from './recipe.js'
import type { StageRun } from './run.js'
import { gasesOf, heatOf } from './stage-effects.js'
import { planSummary } from './summaries.js'
import { withinNumerals } from './within-numerals.js'

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
  const facts = readRecipe(recipe)
  return withinNumerals('recipe', ['scale'], () => planAt(facts))
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
  const plan: Plan = { ...draft, cautions: cautionsOf(facts, draft), findings: findingsOf(facts, draft) }
  return deepFreeze(withSummary(plan, planSummary))
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
