import { readdirSync, readFileSync } from 'node:fs'
import { type Plan, planPreparation, type Recipe } from 'saltwright/preparation'
import { exact, type Quantity } from 'saltwright/quantity'
import { type QuantityQuestion, reviewAnswer, reviewWorksheet, worksheetOf } from 'saltwright/review'
import { describe, expect, it } from 'vitest'
import { quantityText } from '../../src/report/sheet.js'
import { generatorFrom } from '../../src/review/generator.js'
import { alum, doubleSaltAsPrinted, zincSulfate } from '../preparation/recipes.js'
import { filledIn } from './worksheets.js'

const folder = new URL('../../docs/examples/recipes/', import.meta.url)
const recipes: readonly Recipe[] = [
  zincSulfate,
  alum,
  doubleSaltAsPrinted,
  ...readdirSync(folder).map((name) => JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as Recipe),
]
const benches = [
  { balance: '0.01 g', cylinder: '0.1 mL' },
  { balance: '0.5 g', cylinder: '0.2 mL' },
  { balance: '0.01 g', cylinder: '0.5 mL' },
  { balance: '0.5 g', cylinder: '2 mL' },
  { balance: '0.0001 g', cylinder: '20 mL' },
] as const

/** The recipe at half to ten times its scale, where it has one. */
function scaled(recipe: Recipe, draw: number): Recipe {
  const key = recipe.scale?.amount === undefined ? 'mass' : 'amount'
  const text = recipe.scale?.[key]
  if (recipe.scale === undefined || text === undefined) return recipe
  const { value, unit } = exact(text as '1 mol')
  const size = value.times(0.5 * 20 ** draw).toSignificantDigits(3)
  return { ...recipe, scale: { ...recipe.scale, [key]: `${size.toFixed()} ${unit}` } }
}

/** What the bench sheet says to take, as it is printed, under the names of the questions. */
function copied(plan: Plan): Readonly<Record<string, string>> {
  const ids = worksheetOf(plan)
    .questions.map(({ id }) => id)
    .filter((id) => /^(mass|volume)-of-/.test(id))
  return Object.fromEntries(
    plan.supplies.map(({ measure }, index) => [ids[index], quantityText({ quantity: measure })]),
  )
}

/** Magnesium carbonate in 2.0 mol/L acid, 2 % more than needed: 25.4053 mL. */
const magnesium: Recipe = {
  format: 'saltwright/recipe@1',
  title: 'Magnesium sulfate',
  product: 'MgSO4·7H2O',
  scale: { of: 'MgCO3', mass: '4.20 g' },
  stages: [{ name: 'dissolve', equation: 'MgCO3 + H2SO4 + 6H2O -> MgSO4·7H2O + CO2' }],
  supplies: [
    { form: 'solid', substance: 'MgCO3' },
    { form: 'solution', substance: 'H2SO4', concentration: '2.0 mol/L', excessFactor: '1.02' },
  ],
}

function acidAt(cylinder: string, stated: string) {
  const plan = planPreparation({ ...magnesium, instruments: { cylinder } })
  const { answers } = reviewWorksheet(plan, filledIn({ 'volume-of-H2SO4': stated }))
  const { status, review } = answers.find(({ question }) => question === 'volume-of-H2SO4')!
  return `${status}${review?.rounding === undefined ? '' : `, ${review.rounding.kind}`}`
}

describe('what an instrument shows', () => {
  it.each(benches)('every number of the bench sheet is right ($balance, $cylinder)', (instruments) => {
    const random = generatorFrom(3)
    const benchesOf = recipes.flatMap((recipe) => [recipe, scaled(recipe, random()), scaled(recipe, random())])
    for (const recipe of benchesOf) {
      const plan = planPreparation({ ...recipe, instruments })
      const answers = copied(plan)
      const reviewed = reviewWorksheet(plan, filledIn(answers)).answers.filter(({ question }) => question in answers)
      expect(reviewed).toHaveLength(plan.supplies.length)
      for (const { question, stated, status } of reviewed)
        expect(`${recipe.title}, ${question} ${stated}: ${status}`).toMatch(/: right$/)
    }
  })

  it.each([
    { cylinder: '0.5 mL', stated: '25.5 mL', found: 'right' },
    { cylinder: '0.5 mL', stated: '0.0255 L', found: 'right' },
    { cylinder: '0.5 mL', stated: '25.4 mL', found: 'right' },
    { cylinder: '0.5 mL', stated: '25.41 mL', found: 'right' },
    { cylinder: '0.5 mL', stated: '25.50 mL', found: 'rounding, too many figures' },
    { cylinder: '0.5 mL', stated: '25 mL', found: 'rounding, too few figures' },
    { cylinder: '0.5 mL', stated: '25.0 mL', found: 'wrong' },
    { cylinder: '0.5 mL', stated: '25.5', found: 'unit' },
    { cylinder: '2 mL', stated: '26 mL', found: 'right' },
    { cylinder: '2 mL', stated: '26.0 mL', found: 'rounding, too many figures' },
    { cylinder: '2 mL', stated: '24 mL', found: 'wrong' },
    { cylinder: '20 mL', stated: '20 mL', found: 'right' },
    { cylinder: '0.05 mL', stated: '25.40 mL', found: 'right' },
  ])('of 25.4053 mL, read to $cylinder, $stated is $found', ({ cylinder, stated, found }) => {
    expect(acidAt(cylinder, stated)).toBe(found)
  })

  it('counts where the bench rounds by another rule than the plan, and not where the course asks for a place', () => {
    const plan = planPreparation({
      ...magnesium,
      scale: { of: 'MgCO3', mass: '4.25 g' },
      instruments: { balance: '0.5 g' },
    })
    const answered = (stated: string, options = {}) =>
      reviewWorksheet(plan, filledIn({ 'mass-of-MgCO3': stated }), options).answers[1]
    expect(plan.supplies[0]?.measure.toString()).toBe('4.0 g') // 8.5 steps of half a gram
    expect(answered('4.5 g', { ties: 'half-even' })?.status).toBe('right')
    expect(answered('4.5 g', { figures: { place: '0.01' } })?.status).toBe('wrong')
    expect(answered('4.5 g', { figures: { figures: 2 } })?.status).toBe('wrong')
  })

  it('is not known of a question of one’s own', () => {
    const [, mass] = worksheetOf(planPreparation(magnesium)).questions as readonly QuantityQuestion[]
    const { step: _, ...own } = mass!
    const worksheet = { title: 'Own', questions: [own], context: {} }
    expect(reviewWorksheet(worksheet, filledIn({ [own.id]: '4.200 g' })).answers[0]?.status).toBe('right')
  })
})

describe('a place that is no power of ten', () => {
  const mass = exact('2.365 g') as Quantity
  it.each([
    { place: '0.05', stated: '2.35 g', found: 'agrees' }, // 47.3 steps
    { place: '0.05', stated: '2.37 g', found: 'rounding, not a multiple' },
    { place: '0.05', stated: '2.36 g', found: 'rounding, not a multiple' },
    { place: '0.05', stated: '2.4 g', found: 'rounding, too few figures' },
    { place: '0.05', stated: '2.365 g', found: 'rounding, too many figures' },
    { place: '0.05', stated: '2.350 g', found: 'rounding, too many figures' },
    { place: '0.2', stated: '2.4 g', found: 'agrees' },
    { place: '0.01', stated: '2.37 g', found: 'agrees' },
    { place: '0.01', stated: '2.35 g', found: 'unexplained' },
    { place: '0.01', ties: 'half-even', stated: '2.37 g', found: 'rounding, other tie rule' },
  ] as const)('$place of 2.365 g: $stated is found to be $found', ({ place, stated, found, ...options }) => {
    const { verdict, rounding } = reviewAnswer(mass, stated, { figures: { place }, slips: [], ...options })
    expect(`${verdict}${rounding === undefined ? '' : `, ${rounding.kind}`}`).toBe(found)
  })

  it('half a step is rounded by either rule, unless one is required', () => {
    const between = exact('2.325 g') as Quantity // 46.5 steps
    const found = (stated: string, ties?: 'half-even' | 'half-up') =>
      reviewAnswer(between, stated, { figures: { place: '0.05' }, slips: [], ties })
    expect(found('2.30 g').verdict).toBe('agrees')
    expect(found('2.35 g').verdict).toBe('agrees')
    expect(found('2.35 g', 'half-up').verdict).toBe('agrees')
    expect(found('2.30 g', 'half-up').rounding).toEqual({
      kind: 'other tie rule',
      stated: 3,
      right: 3,
      rule: 'half-even',
    })
  })
})
