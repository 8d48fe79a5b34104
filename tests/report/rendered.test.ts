import { readFileSync } from 'node:fs'
import { assessPreparation, planClass, planPreparation, type Recipe, type Records } from 'saltwright/preparation'
import { working } from 'saltwright/quantity'
import {
  assessmentSheet,
  benchSheet,
  classCsv,
  classReviewCsv,
  classReviewSheet,
  dryingPicture,
  lossPicture,
  preparationRoomSheet,
  questionPackage,
  questionSheet,
  reviewSheet,
  solubilityPicture,
  writeWorking,
  yieldsPicture,
} from 'saltwright/report'
import { questionSet, reviewClass, reviewWorksheet } from 'saltwright/review'
import { describe, expect, it } from 'vitest'
import { allRight, filledIn } from '../review/worksheets.js'

/*
 * Whole documents, as they stand: read the difference before you accept a new one with `vitest -u`.
 */
const examples = new URL('../../docs/examples/', import.meta.url)
const read = (path: string): unknown => JSON.parse(readFileSync(new URL(`${path}.json`, examples), 'utf8'))

const recipe = read('recipes/zinc-sulfate') as Recipe
const plan = planPreparation(recipe)
const assessments = [1, 2].map((bench) =>
  assessPreparation(plan, read(`records/zinc-sulfate-bench-${bench}`) as Records),
)
const [assessment] = assessments as [(typeof assessments)[0]]
const room = planClass(recipe, [
  { name: 'Bench 1', scale: { amount: '0.0400 mol' } },
  { name: 'Bench 2', scale: { amount: '0.0300 mol' } },
])
const answers = { ...allRight, 'theoretical-yield': '6.457 g', 'mass-of-ZnO': '3,255 g', 'amount-of-H2SO4': '' }
const review = reviewWorksheet(plan, filledIn(answers, 'Bench 1'))
const reviews = reviewClass([
  { plan, filled: filledIn(answers, 'Bench 1') },
  { plan, filled: filledIn({ 'theoretical-yield': '6.457 g', 'molar-mass-of-product': '179.45 g/mol' }, 'Bench 2') },
])
const questions = questionSet(recipe, { seed: 1, distractors: 3 })

describe.each(['text', 'markdown', 'html', 'latex'] as const)('as %s', (format) => {
  it.each([
    ['bench-sheet', () => benchSheet(plan, format)],
    ['assessment', () => assessmentSheet(assessment, format)],
    ['preparation-room', () => preparationRoomSheet(room, format)],
    ['review', () => reviewSheet(review, format)],
    ['review-for-a-teacher', () => reviewSheet(review, format, { readBy: 'teacher' })],
    ['review-of-a-class', () => classReviewSheet(reviews, format)],
    ['questions', () => questionSheet(questions, format)],
    ['working', () => writeWorking(working(assessment.percentYield), format, { given: true })],
  ] as const)('%s', async (name, write) => {
    await expect(write()).toMatchFileSnapshot(`documents/${name}.${format}.txt`)
  })
})

/* A recipe with stages that only clear, gases, what is taken away, and supplies as needed. */
it('a bench sheet of many stages', async () => {
  const path = '../published/data/preparations/copper-cycle-through-nitrate-hydroxide-oxide-and-sulfate.json'
  const cycle = JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8')) as Recipe
  const sheet = benchSheet(planPreparation({ ...cycle, auxiliaries: [{ name: 'boiling chips', amount: '2 g' }] }))
  await expect(sheet).toMatchFileSnapshot('documents/bench-sheet-of-many-stages.text.txt')
})

it.each([
  ['class.csv', () => classCsv(room)],
  ['review-of-a-class.csv', () => classReviewCsv(reviews)],
  [
    'questions.xml',
    () =>
      questionPackage(questions)
        .map(({ path, text }) => `${path}\n${text}`)
        .join('\n'),
  ],
  [
    'drying',
    () => drawn(dryingPicture({ weighings: ['18.771 g', '18.618 g', '18.616 g'], criterion: 'two-milligrams' })),
  ],
  ['loss', () => drawn(lossPicture(assessment.losses))],
  ['yields', () => drawn(yieldsPicture(assessments))],
  [
    'solubility',
    () =>
      drawn(
        solubilityPicture({
          crystal: 'ZnSO4·7H2O',
          amount: '0.0400 mol',
          water: '12.0 g',
          from: '25 degC',
          temperature: '5 degC',
        }),
      ),
  ],
] as const)('%s', async (name, write) => {
  await expect(write()).toMatchFileSnapshot(`documents/${name}.txt`)
})

/** A picture as data, its numbers to ten digits: the last ones of a double differ between machines. */
function drawn(picture: object): string {
  return JSON.stringify(picture, (_, value) => (typeof value === 'number' ? Number(value.toPrecision(10)) : value), 1)
}
