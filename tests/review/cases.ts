import { readdirSync, readFileSync } from 'node:fs'
import { assessPreparation, type Plan, planPreparation, type Recipe } from 'saltwright/preparation'
import { exact, type Quantity } from 'saltwright/quantity'
import { contextOf, type QuantityQuestion, type ReviewContext, worksheetOf } from 'saltwright/review'
import { type Generator, generatorFrom } from '../../src/review/generator.js'

/** A question with its right answer and what was at hand. */
export interface Case {
  readonly recipe: string
  readonly question: string
  readonly expected: Quantity
  readonly context: ReviewContext
}

const folders = ['../../docs/examples/recipes/', '../published/data/preparations/'] as const

/** Every recipe of the documentation and of the published checks. */
function allRecipes(): readonly { readonly name: string; readonly recipe: Recipe }[] {
  return folders.flatMap((folder) => {
    const url = new URL(folder, import.meta.url)
    const names = readdirSync(url).filter((name) => name.endsWith('.json'))
    return names
      .sort()
      .map((name) => ({ name, recipe: JSON.parse(readFileSync(new URL(name, url), 'utf8')) as Recipe }))
  })
}

/** Every recipe at some random scales, with records of a bench that are made up. */
export function casesFrom(seed: number, scales: number): readonly Case[] {
  const random = generatorFrom(seed)
  return allRecipes().flatMap(({ name, recipe }) =>
    Array.from({ length: scales }, () => casesOf(name, planPreparation(atRandomScale(recipe, random)), random)).flat(),
  )
}

/** The recipe at between a third and three times its scale; as it is where it is printed without one. */
function atRandomScale(recipe: Recipe, random: Generator): Recipe {
  const { scale } = recipe
  const key = scale?.amount === undefined ? 'mass' : 'amount'
  const text = scale?.[key]
  if (scale === undefined || text === undefined) return recipe
  const { value, unit } = exact(text as '1 mol')
  const factor = 3 ** (2 * random() - 1)
  return { ...recipe, scale: { ...scale, [key]: `${value.times(factor).toSignificantDigits(3).toFixed()} ${unit}` } }
}

function casesOf(recipe: string, plan: Plan, random: Generator): readonly Case[] {
  const assessment = assessPreparation(plan, recordsFor(plan, random))
  const context = contextOf(plan, { assessment })
  return worksheetOf(plan, { assessment })
    .questions.filter((question): question is QuantityQuestion => question.kind === 'quantity')
    .filter(({ expected }) => expected.value.gt(0))
    .map(({ id, expected }) => ({ recipe, question: id, expected, context }))
}

/** What a bench may have written down: what it weighed first, three weighings of the product. */
function recordsFor(plan: Plan, random: Generator) {
  const tare = 10 + 5 * random()
  const crop = plan.theoretical.mass.value.toNumber() * (0.4 + 0.5 * random())
  const series = [1.08, 1.01, 1].map((wet) => grams(tare + crop * wet))
  const weighed = plan.supplies.find(({ by }) => by === 'weigh')
  const boat = 2 + random()
  const supplies = weighed === undefined ? [] : [weighingOf(weighed, boat)]
  return { format: 'saltwright/records@1', supplies, product: { tare: grams(tare), series } } as const
}

function weighingOf({ substance, stage, exactMeasure }: Plan['supplies'][number], boat: number) {
  return { substance, stage, gross: grams(boat + exactMeasure.value.toNumber()), tare: grams(boat) }
}

function grams(mass: number): string {
  return `${mass.toFixed(3)} g`
}
