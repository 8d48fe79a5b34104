import { showFound } from '../errors.js'
import { deepFreeze } from '../preparation/freeze.js'
import { type Plan, planPreparation, type Recipe } from '../preparation/index.js'
import { type Quantity, working } from '../quantity/index.js'
import { roundToPlace } from '../quantity/rounding.js'
import { type Shown, unitText, writeQuantity } from '../quantity/show.js'
import { placeAt } from '../quantity/significance.js'
import { checkObject } from './check-options.js'
import type { ReviewContext } from './context.js'
import { distractorsFor } from './distractors.js'
import { generatorFrom } from './generator.js'
import { givenFor, givenForChoice, isChosenMass } from './given.js'
import { contextOf } from './plan-context.js'
import type {
  PosedQuestion,
  PosedStage,
  QuestionSet,
  QuestionSetOptions,
  QuestionVariant,
} from './question-set-type.js'
import { ReviewError } from './review-error.js'
import { badRange, variantOf } from './variants.js'
import type { ChoiceQuestion, QuantityQuestion, Question } from './worksheet.js'
import { worksheetOf } from './worksheet-of.js'

/**
 * Questions on a recipe in variants that a seed decides: other scales, strengths, assays and excess factors within stated ranges. Each has
 * its answer with the right figures, a worked solution, and the wrong answers that slips give.
 *
 * @param recipe - A recipe as plain JSON.
 * @param options - The seed, how many variants, what is varied, which questions, how many wrong answers.
 * @returns The questions: the same for the same recipe, options and release.
 * @throws {@link ReviewError} `review/bad-range` for a range, a seed, a number of variants or a list of questions that says nothing, and for a substance that has
 *   nothing to vary; `review/unknown-question`; `review/not-an-object`. {@link PreparationError} `preparation/invalid` for the recipe.
 *
 * @example
 * ```ts
 * import { questionSet } from 'saltwright/review'
 *
 * const set = questionSet(
 *   {
 *     format: 'saltwright/recipe@1',
 *     title: 'Zinc sulfate heptahydrate',
 *     product: 'ZnSO4·7H2O',
 *     scale: { of: 'ZnO', amount: '0.0400 mol' },
 *     stages: [{ name: 'dissolve and crystallise', equation: 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O' }],
 *     supplies: [
 *       { form: 'solid', substance: 'ZnO' },
 *       { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
 *     ],
 *   },
 *   { seed: 1, variants: 2, scale: { from: '0.0200 mol', to: '0.0600 mol' }, questions: ['theoretical-yield'] },
 * )
 * set.variants.length // => 2
 * set.variants[0]?.questions[0]?.distractors[0]?.slip // => 'excess-reagent-limits'
 * ```
 */
export function questionSet(recipe: Recipe, options: QuestionSetOptions): QuestionSet {
  const checked = checkedOptions(options)
  const { seed, variants = 1 } = checked
  return deepFreeze({
    format: 'saltwright/question-set@1',
    title: planPreparation(recipe).recipe.title,
    seed,
    variants: Array.from({ length: variants }, (_, index) => variant(recipe, checked, index + 1)),
  })
}

const mostVariants = 1000
const greatestSeed = 1_000_000
const mostDistractors = 20

function checkedOptions(given: QuestionSetOptions): QuestionSetOptions {
  const options = checkObject(given) as QuestionSetOptions
  const { seed, variants = 1, distractors = 3, questions } = options
  checkWhole('seed', seed, 0, greatestSeed)
  checkWhole('variants', variants, 1, mostVariants)
  checkWhole('distractors', distractors, 0, mostDistractors)
  if (questions !== undefined && !Array.isArray(questions))
    throw badRange(['questions'], showFound(questions), 'a list of names of questions')
  return options
}

function checkWhole(name: string, value: unknown, least: number, most: number): void {
  if (Number.isInteger(value) && (value as number) >= least && (value as number) <= most) return
  throw badRange([name], showFound(value), `a whole number from ${least} to ${most}`)
}

function variant(recipe: Recipe, options: QuestionSetOptions, number: number): QuestionVariant {
  const plan = planPreparation(variantOf(recipe, options, generatorFrom(options.seed, number)))
  const questions = wanted(plan, options.questions)
  const scene: Scene = { plan, questions, context: contextOf(plan), most: options.distractors ?? 3 }
  return {
    number,
    recipe: plan.recipe,
    equation: plan.overall,
    stages: posedStages(plan),
    questions: questions.map((question) => posed(question, scene)),
  }
}

function posedStages({ stages, recipe }: Plan): readonly PosedStage[] {
  return stages.map(({ name, equation, clears }, index) => {
    const { aliquot, removes = [] } = recipe.stages[index] as Recipe['stages'][number]
    return { name, equation, clears, aliquot, removes }
  })
}

/** What all questions of a variant share. */
interface Scene {
  readonly plan: Plan
  readonly questions: readonly Question[]
  readonly context: ReviewContext
  readonly most: number
}

/** What is given already is not asked for, unless it is named. */
function needsWork(question: Question, plan: Plan): boolean {
  if (question.kind === 'choice') return true
  return question.expected.rule !== 'input' && !isChosenMass(question.expected, plan)
}

function wanted(plan: Plan, names: readonly string[] | undefined): readonly Question[] {
  const { questions } = worksheetOf(plan)
  if (names === undefined) return questions.filter((question) => needsWork(question, plan))
  return Array.from(names, (name) => {
    const found = questions.find(({ id }) => id === name)
    if (found !== undefined) return found
    throw new ReviewError({
      code: 'review/unknown-question',
      message: `questions: there is no question ${showFound(name)}.`,
      path: ['questions'],
      found: showFound(name),
      expected: questions.map(({ id }) => id).join(', '),
    })
  })
}

function posed(question: Question, scene: Scene): PosedQuestion {
  return question.kind === 'choice' ? posedChoice(question, scene) : posedNumber(question, scene)
}

function posedChoice({ id, asks, choices, right }: ChoiceQuestion, { plan, questions, most }: Scene): PosedQuestion {
  const advice = 'How far does each of them let the reaction go?'
  const others = choices.filter(({ formula }) => !right.includes(formula))
  const distractors = others
    .slice(0, most)
    .map(({ formula }) => ({ text: formula, value: undefined, slip: undefined, advice }))
  const given = givenForChoice(plan, questions)
  return { id, asks, given, answer: right.join(', '), numeric: undefined, working: undefined, distractors }
}

function posedNumber(
  { id, asks, expected, readableTo }: QuantityQuestion,
  { plan, context, most }: Scene,
): PosedQuestion {
  const shown = shownAs(expected, expected, readableTo)
  return {
    id,
    asks,
    given: givenFor(plan, expected),
    answer: writeQuantity(shown),
    numeric: { value: plainNumber(shown), unit: unitText(shown.unit), tolerance: `1e${shown.place}` },
    working: working(expected),
    distractors: distractorsFor(expected, context, (q) => writtenTwice(shownAs(q, expected, readableTo)), most),
  }
}

/** A number with its unit for people, and alone for a program. */
function writtenTwice(shown: Shown): { readonly text: string; readonly value: string } {
  return { text: writeQuantity(shown), value: plainNumber(shown) }
}

function plainNumber({ value, place }: Shown): string {
  return roundToPlace(value, place as number, 'half-even').toString()
}

const customaryFigures = 4

/** A number as it is written in an answer: to what the instrument shows, or to the figures of the right one. */
function shownAs(q: Quantity, expected: Quantity, readableTo: number | undefined): Shown {
  const figures = Math.max(1, expected.significantFigures ?? customaryFigures)
  return { value: q.value, unit: q.unit, place: readableTo ?? placeAt(q.value, figures), input: undefined }
}
