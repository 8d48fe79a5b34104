import { type Quantity, reconsider, type TieRule } from 'saltwright/quantity'
import { type Review, reviewAnswer, slips } from 'saltwright/review'
import type { Decimal } from '../../src/decimal.js'
import { calculationOf } from '../../src/review/calculation.js'
import { generatorFrom } from '../../src/review/generator.js'
import { guessesAt } from '../../src/review/guesses.js'
import { recompute } from '../../src/review/recompute.js'
import { type Case, casesFrom } from './cases.js'

/** The seeds of the measurement: of the scales and records, and of the wrong numbers. */
export const seeds = { cases: 1, numbers: 2 } as const
const scalesPerRecipe = 2
const numbersPerQuestion = 4
export const figuresMeasured = [3, 4] as const
export type Figures = (typeof figuresMeasured)[number]

/** How often a slip was simulated, and how the review took it. */
export interface Score {
  simulated: number
  first: number
  tied: number
  alike: number
  rough: number
}

/** What is measured at so many figures. */
interface Measured {
  readonly slips: Map<string, Score>
  readonly random: { stated: number; blamed: number; blamedToTheDigits: number }
}

export interface Measurement {
  readonly recipes: number
  readonly questions: number
  readonly at: Readonly<Record<Figures, Measured>>
  readonly right: { readonly stated: number; readonly faulted: readonly string[] }
}

/** A number as a person would write it, with so many figures. */
function written({ value, unit }: Quantity, figures: number, tie: TieRule = 'half-even'): string {
  return withUnit(value.toPrecision(figures, tie === 'half-even' ? 6 : 4), unit)
}

function withUnit(number: string, unit: string): string {
  return unit === '1' ? number : `${number} ${unit}`
}

export function measure(): Measurement {
  const cases = casesFrom(seeds.cases, scalesPerRecipe)
  const at = { 3: blank(), 4: blank() }
  const random = generatorFrom(seeds.numbers)
  const right = cases.flatMap(reviewRight)
  for (const one of cases) {
    for (const figures of figuresMeasured) {
      simulateSlips(one, figures, at[figures].slips)
      for (let time = 0; time < numbersPerQuestion; time += 1) stateAtRandom(one, figures, random(), at[figures].random)
    }
  }
  return {
    recipes: new Set(cases.map(({ recipe }) => recipe)).size,
    questions: cases.length,
    at,
    right: { stated: right.length, faulted: right.filter(({ isFaulted }) => isFaulted).map(({ about }) => about) },
  }
}

function blank(): Measured {
  return { slips: new Map(), random: { stated: 0, blamed: 0, blamedToTheDigits: 0 } }
}

/** Every slip that applies to a question, in the first of its ways, stated to so many figures. */
function simulateSlips({ expected, context }: Case, figures: Figures, scores: Map<string, Score>): void {
  const calculation = calculationOf(expected)
  const done = new Set<string>()
  for (const { slip, way } of guessesAt(calculation, { ...context, weights: undefined }, slips)) {
    const result = recompute(calculation, way.change)
    if (done.has(slip.name) || result === undefined || written(result, figures) === written(expected, figures)) continue
    done.add(slip.name)
    const score = scores.get(slip.name) ?? { simulated: 0, first: 0, tied: 0, alike: 0, rough: 0 }
    scores.set(slip.name, score)
    count(score, slip.name, reviewAnswer(expected, written(result, figures), { context }))
    const onTheWay = reconsider(result, { round: 'every intermediate', to: { figures: figures + 1 } })
    const rough = reviewAnswer(expected, written(onTheWay, figures), { context })
    if (rough.candidates.some(({ slips: [name] }) => name === slip.name)) score.rough += 1
  }
}

function count(score: Score, slip: string, { candidates }: Review): void {
  const [best] = candidates
  const fitting = candidates.filter(({ fit }) => fit === best?.fit).map(({ slips: [name] }) => name)
  score.simulated += 1
  score.alike += fitting.length
  if (fitting[0] === slip) score.first += 1
  if (fitting.includes(slip)) score.tied += 1
}

/** A number that has nothing to do with the question, within a factor of ten of the right one. */
function stateAtRandom({ expected, context }: Case, figures: Figures, draw: number, tally: Measured['random']): void {
  const number = expected.value.times(10 ** (2 * draw - 1)) as Decimal
  const stated = withUnit(number.toPrecision(figures), expected.unit)
  const { verdict, candidates } = reviewAnswer(expected, stated, { context })
  tally.stated += 1
  if (verdict !== 'slip') return
  tally.blamed += 1
  if (candidates[0]?.fit === 'to the digits') tally.blamedToTheDigits += 1
}

/** The right answer by both rules for a lone 5, at three, four and the justified figures. */
function reviewRight({ recipe, question, expected, context }: Case) {
  const figures = new Set([3, 4, expected.significantFigures ?? 5])
  return [...figures].flatMap((each) =>
    (['half-even', 'half-up'] as const).map((tie) => {
      const stated = written(expected, Math.max(1, each), tie)
      const { verdict, rounding } = reviewAnswer(expected, stated, { context })
      const isOff = rounding !== undefined && !['too many figures', 'too few figures'].includes(rounding.kind)
      const isFaulted = isOff || (verdict !== 'agrees' && verdict !== 'rounding')
      return { about: `${recipe} ${question} ${stated}: ${verdict}`, isFaulted }
    }),
  )
}

/** All slips together. */
export function totalOf(scores: Iterable<Score>): Score {
  const total = { simulated: 0, first: 0, tied: 0, alike: 0, rough: 0 }
  for (const score of scores) for (const key of Object.keys(total) as (keyof Score)[]) total[key] += score[key]
  return total
}
