import fc from 'fast-check'
import { parseEquation, type Term } from 'saltwright/equation'
import { type Plan, planPreparation, type Recipe, type RecipeScale } from 'saltwright/preparation'
import { exact, type Quantity } from 'saltwright/quantity'
import { describe, expect, it } from 'vitest'
import { anyRecipe, recipes } from './arbitraries.js'

/** What a plan says in numbers, by what it is about, to thirty digits or so. */
function numbersOf(plan: Plan): ReadonlyMap<string, Quantity> {
  const supplies = plan.supplies.flatMap(({ substance, stage, amount, need, exactMeasure, excess }) => [
    [`amount ${substance} ${stage}`, amount] as const,
    [`need ${substance} ${stage}`, need] as const,
    [`measure ${substance} ${stage}`, exactMeasure] as const,
    ...(excess === undefined ? [] : [[`equivalents ${substance} ${stage}`, excess.equivalents] as const]),
  ])
  return new Map<string, Quantity>([
    ...supplies,
    ['theoretical amount', plan.theoretical.amount],
    ['theoretical mass', plan.theoretical.mass],
    ...plan.leftovers.map(({ formula, amount }) => [`left ${formula}`, amount] as const),
  ])
}

function isSame(one: Quantity, other: Quantity): boolean {
  const converted = other.to(one.unit as 'g').value
  return one.value.minus(converted).abs().lte(one.value.abs().times('1e-28').plus('1e-40'))
}

function expectSame(one: Plan, other: Plan, except = /^$/): void {
  const [before, after] = [numbersOf(one), numbersOf(other)]
  expect([...after.keys()].sort()).toEqual([...before.keys()].sort())
  for (const [what, number] of before)
    if (!except.test(what)) expect(isSame(number, after.get(what) as Quantity), what).toBe(true)
}

/** What a plan says in words. */
function wordsOf({ limiting, findings }: Plan): readonly string[] {
  return [...limiting, ...findings.map(({ code }) => code)]
}

/** The same recipe as a manual would print it, with something more of each supply. */
function asPrinted(recipe: Recipe): Recipe {
  const { supplies } = planPreparation(recipe)
  const printed = recipe.supplies.map((supply, index) => {
    const planned = supplies.find((each) => each.index === index)
    if (supply.form === 'unlimited' || planned === undefined) return supply
    const { excessFactor: _, molesPerMole: __, ...rest } = supply
    const amount = planned.amount.to('mol').value.times(1.05 + index / 10)
    return { ...rest, asPrinted: `${amount.toSignificantDigits(6).toFixed()} mol` }
  })
  return { ...recipe, supplies: printed }
}

/** A recipe with each number with its unit written in another unit. */
const otherUnits = { mol: 'mmol', mL: 'L', g: 'mg', 'mol/L': 'mmol/L', '%': '1', 'g/mL': 'g/L' } as const

function inOtherUnit(text: string): string {
  const { unit } = exact(text as '1 g')
  const other = (otherUnits as Readonly<Record<string, string>>)[unit]
  if (other === undefined) return text
  return `${exact(text as '1 g')
    .to(other as 'mg')
    .value.toFixed()} ${other}`
}

const numericKeys = new Set([
  'amount',
  'mass',
  'concentration',
  'excessFactor',
  'assay',
  'density',
  'massFraction',
  'asPrinted',
])

function everyNumber(value: unknown, change: (text: string) => string, key = ''): unknown {
  if (Array.isArray(value)) return value.map((each) => everyNumber(each, change, key))
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, everyNumber(each, change, name)]))
  return typeof value === 'string' && numericKeys.has(key) ? change(value) : value
}

/** An equation with its species in another order and all its numbers times a factor. */
function rewritten(text: string, factor: number, turn: number): string {
  const { left, right } = parseEquation(text)
  const side = (terms: readonly Term[]): string => {
    const from = turn % terms.length
    return [...terms.slice(from), ...terms.slice(0, from)]
      .map(({ coefficient, formula, state }) => {
        const number = `${Number(coefficient.numerator) * factor}/${coefficient.denominator}`
        return `${number} ${formula}${state === undefined ? '' : `(${state})`}`
      })
      .join(' + ')
  }
  return `${side(left)} -> ${side(right)}`
}

describe('a plan does not ask', () => {
  it('in which order the supplies are listed', () => {
    const shuffled = anyRecipe.chain((recipe) =>
      fc.tuple(fc.constant(recipe), fc.shuffledSubarray([...recipe.supplies], { minLength: recipe.supplies.length })),
    )
    fc.assert(
      fc.property(shuffled, ([recipe, supplies]) => {
        expectSame(planPreparation(recipe), planPreparation({ ...recipe, supplies }))
      }),
      { numRuns: 40 },
    )
  })

  it('how the equations are presented: order of the species, a common factor', () => {
    fc.assert(
      fc.property(anyRecipe, fc.integer({ min: 1, max: 7 }), fc.nat(5), (recipe, factor, turn) => {
        const stages = recipe.stages.map((stage, index) => ({
          ...stage,
          equation: changesStates(stage.equation) ? stage.equation : rewritten(stage.equation, factor + index, turn),
        }))
        expectSame(planPreparation(recipe), planPreparation({ ...recipe, stages }))
      }),
      { numRuns: 40 },
    )
  })

  it.each(recipes)('in which units $title is written', (recipe) => {
    const other = everyNumber(recipe, inOtherUnit) as Recipe
    expect(other).not.toEqual(recipe)
    expectSame(planPreparation(recipe), planPreparation(other))
  })

  it('in which units some of the numbers are written', () => {
    const coins = fc.array(fc.boolean(), { minLength: 7, maxLength: 7 })
    fc.assert(
      fc.property(anyRecipe, fc.boolean(), coins, (recipe, isPrinted, toss) => {
        const before = isPrinted ? asPrinted(recipe) : recipe
        let at = 0
        const change = (text: string): string => {
          at += 1
          return toss[at % toss.length] ? inOtherUnit(text) : text
        }
        const [one, other] = [planPreparation(before), planPreparation(everyNumber(before, change) as Recipe)]
        expectSame(one, other)
        expect(wordsOf(other)).toEqual(wordsOf(one))
      }),
      { numRuns: 60 },
    )
  })
})

/** A stage that dissolves or brings down what is there starts from its first species, so its order is part of what it says. */
function changesStates(text: string): boolean {
  const { left, right } = parseEquation(text)
  const names = (terms: readonly Term[]): string => [...terms.map(({ formula }) => formula.text)].sort().join()
  return names(left) === names(right)
}

describe('scaling', () => {
  const scaled = recipes.filter(({ scale }) => scale?.amount !== undefined)

  it('a recipe scales every amount, and leaves every ratio', () => {
    fc.assert(
      fc.property(fc.constantFrom(...scaled), fc.integer({ min: 1, max: 100_000 }), (recipe, hundredths) => {
        const { of, amount } = recipe.scale as RecipeScale
        const factor = hundredths / 100
        const size = exact(amount as '1 mol')
          .value.times(factor)
          .toFixed()
        const [before, after] = [recipe, { ...recipe, scale: { of, amount: `${size} mol` } }].map((each) =>
          numbersOf(planPreparation(each as Recipe)),
        ) as [ReadonlyMap<string, Quantity>, ReadonlyMap<string, Quantity>]
        for (const [what, number] of before) {
          const times = what.startsWith('equivalents') ? 1 : factor
          const expected = number.times(exact(String(times) as '1'))
          expect(isSame(expected, after.get(what) as Quantity), what).toBe(true)
        }
      }),
      { numRuns: 60 },
    )
  })
})

describe('from JSON', () => {
  it.each(recipes)('the plan of $title is made again, the same in every word', (recipe) => {
    const plan = JSON.stringify(planPreparation(recipe))
    expect(JSON.stringify(planPreparation(JSON.parse(plan).recipe))).toBe(plan)
  })
})
