import { withSummary } from '../display.js'
import { attempt, type ErrorDetails, showFound } from '../errors.js'
import { asDimension, exact, type Quantity, sum } from '../quantity/index.js'
import { aidLines } from './aids.js'
import { scaleOf } from './amounts.js'
import { classListSchema } from './class-schema.js'
import type { Bench, BenchPlan, ClassOptions, ClassPlan } from './class-type.js'
import type { RecipeFacts } from './facts.js'
import { deepFreeze } from './freeze.js'
import { planAt } from './plan.js'
import type { Plan } from './plan-type.js'
import { type Path, problem } from './problem.js'
import { problemsError, readJson, writePath } from './read-json.js'
import { readRecipe } from './read-recipe.js'
import type { Recipe } from './recipe.js'
import { resized } from './resize.js'
import { storeLines } from './store.js'
import { classPlanSummary } from './summaries.js'
import { metalWaste } from './waste.js'
import { withinNumerals } from './within-numerals.js'

/**
 * Plans a class: every bench at its own scale, and one list for the preparation room with totals, spare and the solutions to make.
 *
 * @param recipe - The recipe; its own scale says of which substance the benches' scales are, unless they say so.
 * @param benches - The benches in order, each with an amount or a mass.
 * @param options - Spare, and the sizes that totals are rounded up to.
 * @returns The plan of the class.
 * @throws {@link PreparationError} `preparation/invalid` with every mistake in `problems`, each with its path.
 * @source Preparing for more benches than there are and rounding up to containers: common practice, no source.
 *
 * @example
 * ```ts
 * import { planClass, type Recipe } from 'saltwright/preparation'
 *
 * const recipe: Recipe = {
 *   format: 'saltwright/recipe@1',
 *   title: 'Zinc sulfate heptahydrate',
 *   product: 'ZnSO4·7H2O',
 *   scale: { of: 'ZnO', amount: '0.0400 mol' },
 *   stages: [{ name: 'Dissolve and crystallise', equation: 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O' }],
 *   supplies: [
 *     { form: 'solid', substance: 'ZnO' },
 *     { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
 *   ],
 * }
 * const plan = planClass(
 *   recipe,
 *   [
 *     { name: 'Bench 1', scale: { amount: '0.0400 mol' } },
 *     { name: 'Bench 2', scale: { amount: '0.0500 mol' } },
 *   ],
 *   { spare: { percent: '20 %' }, containers: { volume: '10 mL' } },
 * )
 * plan.store.map(({ toPrepare }) => toPrepare.toString()) // => ['8.789 g', '40 mL']
 * ```
 */
export function planClass(recipe: Recipe, benches: readonly Bench[], options: ClassOptions = {}): ClassPlan {
  const facts = readRecipe(recipe)
  const list = readJson(classListSchema, { benches, options }, 'class')
  const own = withinNumerals('recipe', ['scale'], () => planAt(facts))
  const plans = list.benches.map((bench, index) => benchPlan(facts, own, bench, index))
  return classPlanOf(facts, plans, list.options)
}

/**
 * Plans a class of any size bench by bench, keeping nothing: for thousands of benches, or to show progress.
 *
 * @param recipe - The recipe.
 * @param benches - The benches, from anything that can be iterated.
 * @returns An iterator of the plan of each bench, in order.
 * @throws {@link PreparationError} as {@link planClass}, when the bench concerned is reached.
 *
 * @example
 * ```ts
 * import { planBenches, type Recipe } from 'saltwright/preparation'
 *
 * const recipe: Recipe = {
 *   format: 'saltwright/recipe@1',
 *   title: 'Barium sulfate',
 *   product: 'BaSO4',
 *   scale: { of: 'BaSO4', amount: '0.0100 mol' },
 *   stages: [{ name: 'Precipitate', equation: 'BaCl2 + Na2SO4 -> BaSO4 + 2NaCl' }],
 *   supplies: [
 *     { form: 'solid', substance: 'BaCl2', weighedAs: 'BaCl2·2H2O' },
 *     { form: 'solution', substance: 'Na2SO4', concentration: '0.500 mol/L', excessFactor: '1.05' },
 *   ],
 * }
 * const masses = [...planBenches(recipe, [{ name: 'Bench 1', scale: { amount: '0.0200 mol' } }])]
 * masses.map(({ plan }) => plan.supplies[0]?.measure.toString()) // => ['4.885 g']
 * ```
 */
export function* planBenches(recipe: Recipe, benches: Iterable<Bench>): Generator<BenchPlan, void, undefined> {
  const facts = readRecipe(recipe)
  const own = withinNumerals('recipe', ['scale'], () => planAt(facts))
  let index = 0
  for (const bench of iterated(benches)) {
    yield Object.freeze(benchPlan(facts, own, readBench(bench, index), index))
    index += 1
  }
}

function iterated(benches: Iterable<Bench>): Iterable<Bench> {
  if (typeof (benches as Partial<Iterable<Bench>> | undefined | null)?.[Symbol.iterator] === 'function') return benches
  const found = showFound(benches)
  const expected = 'a list of benches, or anything else that can be iterated'
  throw problemsError('class', [
    problem('preparation/wrong-type', ['benches'], `benches: ${found} is not ${expected}.`, found, expected),
  ])
}

/** One bench of those that are planned one by one; a mistake tells which. */
function readBench(bench: Bench, index: number): Bench {
  const outcome = attempt(() => readJson(classListSchema, { benches: [bench], options: {} }, 'class'))
  if (outcome.ok) return outcome.value.benches[0] as Bench
  const { problems } = outcome.error
  throw problems === undefined
    ? outcome.error
    : problemsError(
        'class',
        problems.map((each) => inBench(each, index, 2)),
      )
}

/** A mistake at its place in the list of benches, in the place of the first parts of its path. */
function inBench(mistake: ErrorDetails, index: number, parts: number): ErrorDetails {
  const path = mistake.path as Path
  const at = ['benches', index, ...path.slice(parts)]
  return { ...mistake, path: at, message: mistake.message.replace(writePath(path), writePath(at)) }
}

function benchPlan(facts: RecipeFacts, own: Plan, bench: Bench, index: number): BenchPlan {
  const plan = (): Plan => planAt(factsAt(facts, own, bench, index))
  return { name: bench.name, plan: withinNumerals('class', ['benches', index, 'scale'], plan) }
}

/** The recipe at the scale of one bench. A new substance to scale by is checked as a new recipe. */
function factsAt(facts: RecipeFacts, own: Plan, { scale }: Bench, index: number): RecipeFacts {
  const ownScale = facts.recipe.scale?.of ?? facts.recipe.product
  const of = scale.of ?? ownScale
  const recipe = { ...facts.recipe, scale: { ...scale, of } }
  const isOwn = of === ownScale
  if (!isOwn && facts.supplies.some((supply) => supply.recipe.asPrinted !== undefined))
    throw problemsError('class', [printedAtOneScale(of, ownScale, index)])
  const at = isOwn ? { ...facts, recipe } : readAt(recipe, index)
  const times = isOwn
    ? (scaleOf(at) as Quantity<'amount'>).dividedBy(own.scale.amount)
    : planAt(at).theoretical.amount.dividedBy(own.theoretical.amount)
  const sized = resized(facts.recipe, recipe.scale, times.value)
  const supplies = at.supplies.map((supply) => ({
    ...supply,
    recipe: sized.supplies[supply.index] as typeof supply.recipe,
  }))
  return { ...at, recipe: sized, supplies }
}

/** What is printed grows with the scale it was printed at, and with no other. */
function printedAtOneScale(of: string, own: string, index: number): ErrorDetails {
  const path = ['benches', index, 'scale', 'of']
  const message = `${writePath(path)}: what is printed of the supplies can be scaled by ${own}, not by ${of}.`
  return problem('preparation/printed-at-one-scale', path, message, of, own)
}

/** A recipe that is scaled by another substance; what is wrong with it is wrong with the bench. */
function readAt(recipe: Recipe, index: number): RecipeFacts {
  const outcome = attempt(() => readRecipe(recipe))
  if (outcome.ok) return outcome.value
  const problems = outcome.error.problems as readonly ErrorDetails[]
  throw problemsError(
    'class',
    problems.map((each) => inBench(each, index, 0)),
  )
}

function classPlanOf(facts: RecipeFacts, benches: readonly BenchPlan[], options: ClassOptions): ClassPlan {
  const plans = benches.map(({ plan }) => plan)
  const store = storeLines(facts, plans, options)
  const volumes = store.flatMap(({ total }) => (total.dimension === 'volume' ? [asDimension(total, 'volume')] : []))
  const classPlan: ClassPlan = {
    format: 'saltwright/class-plan@1',
    title: facts.recipe.title,
    benches,
    store,
    aids: aidLines(facts.recipe, plans, options),
    waste: metalWaste(plans),
    liquidWaste: volumes.length === 0 ? exact('0 mL') : sum(volumes).to('mL'),
    findings: findingsByBench(benches),
  }
  return deepFreeze(withSummary(classPlan, classPlanSummary))
}

/** What a person should see of each bench, with the bench in front of the path. */
function findingsByBench(benches: readonly BenchPlan[]): ClassPlan['findings'] {
  return benches.flatMap(({ name, plan }, index) =>
    plan.findings
      .filter(({ severity }) => severity !== 'remark')
      .map((finding) => ({
        ...finding,
        message: `${name}: ${finding.message}`,
        path: ['benches', index, ...finding.path],
      })),
  )
}
