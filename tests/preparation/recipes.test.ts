import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import {
  assessPreparation,
  type Plan,
  type PlannedSupply,
  planClass,
  planPreparation,
  type Recipe,
  type RecipeScale,
  type Records,
  recipeSchema,
  recordsSchema,
} from 'saltwright/preparation'
import { exact, isQuantity, type Quantity } from 'saltwright/quantity'
import { benchSheet } from 'saltwright/report'
import { describe, expect, it } from 'vitest'

const examples = new URL('../../docs/examples/', import.meta.url)

function namesIn(folder: string): readonly string[] {
  const files = readdirSync(new URL(folder, examples)).filter((file) => file.endsWith('.json'))
  return files.map((file) => file.slice(0, -'.json'.length))
}

const readJson = (path: string): unknown => JSON.parse(readFileSync(new URL(`${path}.json`, examples), 'utf8'))
const recipeNamed = (name: string): Recipe => readJson(`recipes/${name}`) as Recipe
const recipes = namesIn('recipes/').map((name) => ({ name, recipe: recipeNamed(name) }))
const records = namesIn('records/').map((name) => ({ name, recipe: name.replace(/-bench-\d+$/, '') }))

/** The recipe at so many times its scale. */
function scaledBy(recipe: Recipe, factor: string): Recipe {
  const { of, amount } = recipe.scale as RecipeScale
  const { value, unit } = exact(amount as '1 mol').times(exact(factor as '1'))
  return { ...recipe, scale: { of, amount: `${value.toFixed()} ${unit}` } }
}

/** Whether one quantity is so many times another, but for the last of its thirty-odd digits. */
function isTimes(q: Quantity, factor: string, other: Quantity): boolean {
  const expected = other.value.times(factor)
  return q.unit === other.unit && q.value.minus(expected).abs().lte(expected.abs().times('1e-28'))
}

/** Everything in a plan that grows with its scale. */
const extensive = ({ supplies, theoretical, leftovers, stages }: Plan): readonly Quantity[] => [
  ...supplies.flatMap(({ amount, need, naiveNeed, exactMeasure }) => [amount, need, naiveNeed, exactMeasure]),
  theoretical.amount,
  theoretical.mass,
  ...[...leftovers, ...stages.flatMap(({ removed, gases }) => [...removed, ...gases])].map(({ amount }) => amount),
  ...stages.map(({ extent }) => extent),
]

/** Masses and volumes that a recipe says for the whole batch. */
function wholeBatch({ auxiliaries = [], washes = [], crystallisation }: Recipe): readonly Quantity<'mass'>[] {
  const { water, evaporated } = crystallisation ?? {}
  const said = [...auxiliaries.map(({ amount }) => amount), ...washes.map(({ volume }) => volume), water, evaporated]
  return said.filter((text) => text !== undefined).map((text) => exact(text as '1 g'))
}

/** What a supply amounts to, whatever its place in the recipe. */
const toTake = ({ supplies }: Plan): readonly string[] =>
  supplies.map(({ name, stage, measure, excess }) => `${name}, ${stage}: ${measure}, ${excess?.equivalents}`).sort()

describe('the recipes of the documentation', () => {
  it('are at least ten, each with records of a bench', () => {
    expect(recipes.length).toBeGreaterThanOrEqual(10)
    expect(new Set(records.map(({ recipe }) => recipe))).toEqual(new Set(recipes.map(({ name }) => name)))
  })

  describe.each(recipes)('$name', ({ recipe }) => {
    const plan = planPreparation(recipe)

    it('has the shape of a recipe and says where it is from', () => {
      expect(recipeSchema.safeParse(recipe).success).toBe(true)
      expect(recipe.source).toMatch(/^(?:Common practice, no source|Adapted from )/)
    })

    it('tells what to do in every stage, how to wash and how to dry', () => {
      expect(recipe.stages.filter(({ steps = [] }) => steps.length === 0)).toEqual([])
      expect(recipe.washes?.length).toBeGreaterThan(0)
      expect(recipe.drying).toBeTruthy()
    })

    it('plans without a problem or a doubt', () => {
      expect(plan.findings.filter(({ severity }) => severity !== 'remark')).toEqual([])
    })

    it('is limited by one substance, which it is scaled by or leads to', () => {
      expect(plan.limiting).toHaveLength(1)
      expect([...plan.limiting, plan.product.formula]).toContain(plan.scale.formula)
    })

    it('has nothing in its sheet that is not a number or not there', () => {
      expect(benchSheet(plan)).not.toMatch(/NaN(?!O)|undefined|null|Infinity|\[object/)
    })

    it('scales every planned amount with its scale', () => {
      const own = extensive(plan)
      fc.assert(
        fc.property(fc.integer({ min: 1, max: 1_000_000 }), (thousandths) => {
          const factor = String(thousandths / 1000)
          const other = extensive(planPreparation(scaledBy(recipe, factor)))
          return other.length === own.length && other.every((q, index) => isTimes(q, factor, own[index] as Quantity))
        }),
        { numRuns: 10, examples: [[2000]] },
      )
    })

    it('scales what is said for the whole batch with a bench', () => {
      const { scale } = scaledBy(recipe, '2')
      const [bench] = planClass(recipe, [{ name: 'Bench 1', scale: scale as RecipeScale }]).benches
      const doubled = wholeBatch(recipe).map((q) => q.times(exact('2')).value.toFixed())
      expect(wholeBatch(bench?.plan.recipe as Recipe).map(({ value }) => value.toFixed())).toEqual(doubled)
    })

    it('gives the same whatever order its supplies are in', () => {
      const taken = toTake(plan)
      fc.assert(
        fc.property(fc.shuffledSubarray([...recipe.supplies], { minLength: recipe.supplies.length }), (supplies) => {
          const other = planPreparation({ ...recipe, supplies })
          expect(toTake(other)).toEqual(taken)
          expect(other.theoretical.mass.equals(plan.theoretical.mass)).toBe(true)
          expect(other.limiting).toEqual(plan.limiting)
        }),
        { numRuns: 10 },
      )
    })

    it('keeps every value in JSON, and its recipe gives the same plan again', () => {
      const text = JSON.stringify(plan)
      expectKept(plan, JSON.parse(text))
      expect(JSON.stringify(planPreparation(JSON.parse(text).recipe))).toBe(text)
    })
  })
})

/** Everything of a value is in its JSON: numbers with their unit, texts as they are, what writes itself as it writes itself. */
function expectKept(value: unknown, json: unknown): void {
  if (isQuantity(value)) expect(json).toMatchObject({ unit: value.unit, value: digitsOf(value) })
  else if (value === null || typeof value !== 'object') expect(json).toEqual(value)
  else if ('toJSON' in value && typeof value.toJSON === 'function') expect(json).toEqual(value.toJSON())
  else for (const [key, inner] of Object.entries(value)) expectKept(inner, (json as Record<string, unknown>)[key])
}

/** The digits of a quantity as it writes them, checked to be its whole value. */
function digitsOf(q: Quantity): string {
  const { value } = q.toJSON()
  expect(q.value.eq(value)).toBe(true)
  return value
}

describe('the records of the documentation', () => {
  it.each(records)('$name assesses, and says that it is invented', ({ name, recipe }) => {
    const given = readJson(`records/${name}`) as Records
    expect(recordsSchema.safeParse(given).success).toBe(true)
    expect(given.notes).toContain('Invented for this documentation.')
    const { percentYield, used } = assessPreparation(recipeNamed(recipe), given)
    expect(percentYield.value.gt(50) && percentYield.value.lt(105)).toBe(true)
    expect(used.every(({ recorded }) => recorded)).toBe(true)
  })

  it.each(records.filter(({ name }) => name.endsWith('-bench-1')))('$name is an ordinary bench', ({ name, recipe }) => {
    const { percentYield, findings } = assessPreparation(recipeNamed(recipe), readJson(`records/${name}`) as Records)
    expect(percentYield.value.lt(100)).toBe(true)
    expect(findings).toEqual([])
  })

  it.each(records.filter(({ name }) => name.endsWith('-bench-1')))(
    '$name has no more than can crystallise',
    ({ name, recipe }) => {
      const { cooling } = planPreparation(recipeNamed(recipe))
      const { actual } = assessPreparation(recipeNamed(recipe), readJson(`records/${name}`) as Records)
      if (cooling?.known === true) expect(actual.mass.compare(cooling.expected.crop)).toBeLessThan(0)
    },
  )

  it.each([
    { name: 'zinc-sulfate-bench-2', codes: ['not-constant-mass', 'yield-over-100'] },
    { name: 'ammonium-iron-ii-sulfate-bench-2', codes: ['other-limits'] },
  ])('$name has something to look at', ({ name, codes }) => {
    const recipe = recipeNamed(name.replace('-bench-2', ''))
    const { findings } = assessPreparation(recipe, readJson(`records/${name}`) as Records)
    expect(findings.map(({ code }) => code).sort()).toEqual(codes)
  })
})

describe('common practice, no source', () => {
  const measures = (recipe: Recipe): Readonly<Record<string, string>> =>
    Object.fromEntries(planPreparation(recipe).supplies.map(({ substance, measure }) => [substance, `${measure}`]))

  it('potash alum: two moles of alkali and three of water dissolve a mole of aluminium', () => {
    const dissolving: Recipe = {
      format: 'saltwright/recipe@1',
      title: 'Dissolving aluminium',
      product: 'K[Al(OH)4]',
      scale: { of: 'Al', amount: '0.025 mol' },
      stages: [{ name: 'Dissolve', equation: '2Al + 2KOH + 6H2O -> 2K[Al(OH)4] + 3H2(g)' }],
      supplies: [
        { form: 'solid', substance: 'Al' },
        { form: 'solution', substance: 'KOH', concentration: '2 mol/L', molesPerMole: '2' },
        { form: 'liquid', substance: 'H2O', density: '1.00 g/mL', molesPerMole: '3' },
      ],
      instruments: { cylinder: '0.01 mL' },
    }
    expect(measures(dissolving)).toEqual({ Al: '0.675 g', KOH: '25.00 mL', H2O: '1.35 mL' })
    const planned = planPreparation(dissolving)
    expect(planned.supplies.map(({ excess }) => excess?.equivalents.toString())).toEqual(['1', '2', '1'])
  })

  it('the recipe takes the same metal and alkali, and acid for the alkali that is left', () => {
    const planned = planPreparation(recipeNamed('potassium-aluminium-sulfate'))
    expect(measures(planned.recipe)).toMatchObject({ Al: '0.675 g', KOH: '25.0 mL' })
    const acid = planned.supplies.find(({ substance }) => substance === 'H2SO4') as PlannedSupply
    expect([acid.naiveNeed, acid.need].map((q) => q.value.toFixed())).toEqual(['0.05', '0.0625'])
  })

  it('copper(II) oxide in five times its amount of sulfuric acid, 6 mol/L', () => {
    const recipe = recipeNamed('copper-ii-sulfate')
    const supplies: Recipe['supplies'] = [
      { form: 'solid', substance: 'CuO' },
      { form: 'solution', substance: 'H2SO4', concentration: '6 mol/L', molesPerMole: '5' },
    ]
    expect(measures({ ...recipe, supplies })).toEqual({ CuO: '3.977 g', H2SO4: '41.7 mL' })
  })

  it.each(recipes.filter(({ recipe }) => recipe.crystallisation?.water !== undefined && recipe.stages.length > 1))(
    '$name: filtering five kelvins too warm costs a few per cent',
    ({ recipe }) => {
      const { cooling } = planPreparation(recipe)
      if (cooling?.known !== true || cooling.tooWarm === undefined) throw new Error('no estimate')
      const share = cooling.tooWarm.lessBy.dividedBy(cooling.expected.complete).to('%').value
      expect(share.gt(1) && share.lt(8)).toBe(true)
    },
  )
})
