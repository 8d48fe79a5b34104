import { Decimal } from '../decimal.js'
import { showFound } from '../errors.js'
import type { Recipe, RecipeSupply } from '../preparation/index.js'
import { type Dimension, type Quantity, tryQuantity } from '../quantity/index.js'
import type { Generator } from './generator.js'
import type { QuestionSetOptions, Range } from './question-set-type.js'
import { ReviewError } from './review-error.js'

/** A recipe with the numbers of one variant. */
export function variantOf(recipe: Recipe, options: QuestionSetOptions, random: Generator): Recipe {
  checkSubstances(recipe, options)
  const scaled = options.scale === undefined ? recipe : { ...recipe, scale: scaleIn(recipe, options.scale, random) }
  return { ...scaled, supplies: recipe.supplies.map((supply) => varied(supply, options, random)) }
}

function scaleIn({ scale }: Recipe, range: Range, random: Generator): NonNullable<Recipe['scale']> {
  if (scale === undefined) throw badRange(['scale'], 'the scale', 'a recipe with a scale')
  const text = drawn(range, ['amount', 'mass'], ['scale'], random)
  return { of: scale.of, ...(text.endsWith('mol') ? { amount: text } : { mass: text }) }
}

const places = {
  strengths: { key: 'concentration', dimension: 'amountConcentration' },
  assays: { key: 'assay', dimension: 'ratio' },
  excessFactors: { key: 'excessFactor', dimension: 'ratio' },
} as const

type Place = keyof typeof places

function rangesOf(options: QuestionSetOptions, place: Place): Readonly<Record<string, Range>> {
  return options[place] ?? {}
}

function varied(supply: RecipeSupply, options: QuestionSetOptions, random: Generator): RecipeSupply {
  const changes = (Object.keys(places) as Place[]).flatMap((place) => {
    const range = new Map(Object.entries(rangesOf(options, place))).get(supply.substance)
    const { key, dimension } = places[place]
    if (range === undefined || !canVary(supply, place)) return []
    return [[key, drawn(range, [dimension], [place, supply.substance], random)] as const]
  })
  return { ...supply, ...Object.fromEntries(changes) }
}

/** A strength is varied where the recipe states one; an assay or an excess also where it states none. */
function canVary(supply: RecipeSupply, place: Place): boolean {
  if (place === 'strengths') return supply.form === 'solution'
  if (place === 'assays') return supply.form === 'solid' || supply.form === 'liquid'
  return supply.form !== 'unlimited' && supply.asPrinted === undefined && supply.molesPerMole === undefined
}

function checkSubstances(recipe: Recipe, options: QuestionSetOptions): void {
  for (const place of Object.keys(places) as Place[]) {
    for (const substance of Object.keys(rangesOf(options, place))) {
      const fits = recipe.supplies.filter((supply) => canVary(supply, place))
      if (fits.some((supply) => supply.substance === substance)) continue
      const names = fits.map((supply) => supply.substance).join(', ') || 'none here'
      throw badRange([place, substance], showFound(substance), `a supply that has one: ${names}`)
    }
  }
}

/** A number of a range, in steps of its last digit. */
function drawn(range: Range, dimensions: readonly Dimension[], path: readonly string[], random: Generator): string {
  const [from, to] = [end(range?.from, dimensions, path), end(range?.to, dimensions, path)]
  if (from.unit !== to.unit || from.value.gt(to.value))
    throw badRange(path, `${from} to ${to}`, 'a range in one unit, from less to more')
  const place = Math.min(lastPlace(from), lastPlace(to))
  const step = new Decimal(`1e${place}`)
  const steps = to.value.minus(from.value).div(step).floor().plus(1)
  const value = from.value.plus(steps.times(random()).floor().times(step))
  return `${value.toFixed(Math.max(0, -place))} ${from.unit}`.replace(/ 1$/, '')
}

function lastPlace({ input }: Quantity): number {
  return (input as NonNullable<Quantity['input']>).writtenPlace
}

function end(text: unknown, dimensions: readonly Dimension[], path: readonly string[]): Quantity {
  const read = tryQuantity(text, { wholeNumberZeros: 'significant' })
  if (read.ok && dimensions.includes(read.value.dimension) && read.value.value.gt(0)) return read.value
  throw badRange(path, showFound(text), 'numbers above zero with their unit: { from: "0.0200 mol", to: "0.0600 mol" }')
}

/** That something cannot be varied as asked. */
export function badRange(path: readonly string[], found: string, expected: string): ReviewError {
  return new ReviewError({
    code: 'review/bad-range',
    message: `${path.join('.')}: ${found} cannot be varied or drawn like that.`,
    path,
    found,
    expected,
  })
}
