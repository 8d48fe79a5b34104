import { withSummary } from '../display.js'
import { type Explanation, explainYield, type LossLine, lossAccount } from '../product/index.js'
import type { Quantity } from '../quantity/index.js'
import { plannedAmount, scaleOf } from './amounts.js'
import { usedFindings, yieldFindings } from './assess-findings.js'
import type { Assessment, UsedSupply } from './assessment-type.js'
import { coolingOf, washedAwayOf } from './cooling.js'
import { type Course, type Poured, pouredAmount, runCourse } from './course.js'
import type { RecipeFacts } from './facts.js'
import { deepFreeze } from './freeze.js'
import { limitFindings } from './limit-findings.js'
import { leftoversOf, limitingOf, productOf, theoreticalOf, weightsName } from './outcome.js'
import type { Plan } from './plan-type.js'
import { excessOf, measureToTake } from './planned-supply.js'
import { problem } from './problem.js'
import { problemsError, readJson } from './read-json.js'
import { readRecipe } from './read-recipe.js'
import type { Records } from './records.js'
import { recordsSchema } from './records-schema.js'
import { assessmentSummary } from './summaries.js'
import { reading } from './supply.js'
import { readSupplyRecords, type SupplyReadings, type Taken } from './supply-records.js'
import { type ProductWeighing, weighProduct } from './weighing.js'

/**
 * Assesses a preparation from what a bench wrote down: theoretical yield from what was really used, actual yield by difference,
 * percent yield with the figures the weighings allow.
 *
 * @param plan - The plan, or the recipe it was made from.
 * @param records - Weighings and readings as plain JSON; `recordsSchema` says their shape. What is not recorded counts as planned.
 * @returns The assessment. A yield over 100 % is given as found, with its possible reasons in `findings`.
 * @throws {@link PreparationError} `preparation/invalid` with every mistake in `problems`, each with its path: there
 *   `preparation/unknown-supply`, `preparation/unknown-stage`, `preparation/nothing-weighed`, `preparation/no-product-possible`.
 * @source Percent yield: OpenStax, Chemistry 2e, section 4.4.
 *
 * @example
 * ```ts
 * import { assessPreparation, type Recipe } from 'saltwright/preparation'
 *
 * const recipe: Recipe = {
 *   format: 'saltwright/recipe@1',
 *   title: 'Zinc sulfate heptahydrate',
 *   product: 'ZnSO4·7H2O',
 *   scale: { of: 'ZnO', amount: '0.0400 mol' },
 *   stages: [{ name: 'dissolve and crystallise', equation: 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O' }],
 *   supplies: [
 *     { form: 'solid', substance: 'ZnO' },
 *     { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
 *   ],
 * }
 * const assessment = assessPreparation(recipe, {
 *   format: 'saltwright/records@1',
 *   supplies: [{ substance: 'ZnO', mass: '3.255 g' }],
 *   product: { gross: '20.317 g', tare: '11.204 g' },
 * })
 * assessment.actual.mass.toString() // => '9.113 g'
 * assessment.percentYield.toString() // => '79.24 %'
 * ```
 */
export function assessPreparation(plan: Plan | Plan['recipe'], records: Records): Assessment {
  const facts = readRecipe(recipeIn(plan))
  const read = readJson(recordsSchema, records, 'records')
  const { taken, findings } = readSupplyRecords(facts, read)
  const product = weighProduct(read.product)
  const scale = scaleOf(facts)
  const planned = runCourse(facts, scale, (supply, need) => plannedAmount(facts, scale, supply, need))
  const course = runCourse(facts, scale, (supply) => taken.get(supply)?.amount ?? pouredAmount(planned, supply))
  const draft = draftOf(facts, read, course, taken, product)
  const purity = read.product.purity === undefined ? undefined : reading(read.product.purity, 'ratio')
  const assessment: Assessment = {
    ...draft,
    correctedYield: purity && correctedYield(draft, purity),
    findings: [
      ...findings,
      ...product.findings,
      ...yieldFindings(draft),
      ...usedFindings(draft),
      ...limitFindings(limitingOf(facts, planned), draft),
    ],
  }
  return deepFreeze(withSummary(assessment, assessmentSummary))
}

/** The recipe of a plan; what is no plan is read as a recipe itself, and refused there if it is none. */
function recipeIn(plan: unknown): unknown {
  try {
    return (plan as Partial<Plan>).recipe ?? plan
  } catch {
    return plan
  }
}

type Draft = Omit<Assessment, 'findings' | 'correctedYield'>

function draftOf(
  facts: RecipeFacts,
  records: Records,
  course: Course,
  taken: SupplyReadings['taken'],
  weighed: ProductWeighing,
): Draft {
  const theoretical = theoreticalOf(facts, course)
  if (theoretical.amount.value.isZero()) throw noProductPossible(course)
  const product = productOf(facts)
  const { mass, constancy } = weighed
  return {
    format: 'saltwright/assessment@1',
    records,
    bench: records.bench,
    title: facts.recipe.title,
    product,
    used: course.poured.map((poured) => usedSupply(facts, poured, taken.get(poured.supply))),
    limiting: limitingOf(facts, course),
    theoretical,
    actual: {
      mass,
      amount: mass.dividedBy(product.molarMass).named({ symbol: 'n', of: product.formula, label: 'amount obtained' }),
    },
    percentYield: percentOf(mass, theoretical.mass),
    constancy,
    explanations: explanationsOf(facts, records, theoretical.mass, weighed),
    losses: lossesOf(facts, course, theoretical, mass),
    atomicWeights: weightsName(facts),
  }
}

/** Actual over theoretical yield in per cent, as found. */
function percentOf(actual: Quantity<'mass'>, theoretical: Quantity<'mass'>): Quantity<'ratio'> {
  return actual.dividedBy(theoretical).to('%').named({ role: 'percent yield', label: 'percent yield' })
}

function explanationsOf(
  facts: RecipeFacts,
  { product }: Records,
  theoretical: Quantity<'mass'>,
  { mass, constancy }: ProductWeighing,
): readonly Explanation[] {
  if (mass.compare(theoretical) <= 0) return []
  return explainYield({
    actual: mass,
    theoretical,
    product: facts.product,
    drying: constancy,
    mayBeIncluded: product.mayBeIncluded?.map((text) => reading(text, 'mass')),
    weights: facts.weights,
  })
}

function lossesOf(
  facts: RecipeFacts,
  course: Course,
  theoretical: Plan['theoretical'],
  recovered: Quantity<'mass'>,
): readonly LossLine[] {
  const cooling = coolingOf(facts, theoretical.amount, leftoversOf(facts, course))
  const leftInLiquor = cooling?.known === true ? cooling.expected.loss : undefined
  const washedAway = washedAwayOf(facts)
  return lossAccount({ theoretical: theoretical.mass, recovered, leftInLiquor, washedAway })
}

function correctedYield({ actual, theoretical }: Draft, purity: Quantity<'ratio'>): Quantity<'ratio'> {
  const named = purity.named({ role: 'purity', symbol: 'w', label: 'purity of the product' })
  return percentOf(actual.mass.times(named), theoretical.mass)
}

function usedSupply(facts: RecipeFacts, { supply, need, amount }: Poured, taken: Taken | undefined): UsedSupply {
  const total = need.total ?? amount
  return {
    substance: supply.formula.text,
    name: supply.recipe.name ?? supply.formula.text,
    stage: (facts.stages[supply.stage] as RecipeFacts['stages'][number]).name,
    recorded: taken !== undefined,
    measure: taken?.measure ?? measureToTake(facts, supply, amount),
    amount,
    excess: excessOf(amount, total, supply.formula.text),
  }
}

/** Nothing can be a share of nothing. */
function noProductPossible({ poured }: Course): Error {
  const missing = poured.filter(({ amount }) => amount.value.isZero()).map(({ supply }) => supply.formula.text)
  return problemsError('records', [
    problem(
      'preparation/no-product-possible',
      ['supplies'],
      'supplies: no product can form from what was used, so there is no percent yield.',
      `nothing of ${missing.join(', ')}`,
      'some of every supply',
    ),
  ])
}
