import { readdirSync, readFileSync } from 'node:fs'
import Ajv from 'ajv/dist/2020.js'
import * as library from 'saltwright'
import {
  assessPreparation,
  calculationFromJSON,
  calculationToJSON,
  fromJSON,
  planClass,
  planPreparation,
  quantity,
  questionSet,
  reviewAnswer,
  reviewClass,
  reviewWorksheet,
  toJSON,
} from 'saltwright'
import { describe, expect, it } from 'vitest'
import { documentSchemas } from '../../docs/schemas/documents.mjs'

const examples = new URL('../../docs/examples/', import.meta.url)
const schemas = documentSchemas(library)
const ajv = new Ajv({ allErrors: true, strict: true, allowUnionTypes: true })
const validators = new Map([...schemas].map(([name, schema]) => [name, ajv.compile(schema)]))

/** What a schema says against a document, after it was stored and read. */
function complaints(name, document) {
  const validate = validators.get(name)
  return validate(JSON.parse(JSON.stringify(document)))
    ? []
    : validate.errors.map((error) => `${error.instancePath} ${error.message}`)
}

function examplesIn(folder) {
  return readdirSync(new URL(folder, examples)).map((file) => [
    file,
    JSON.parse(readFileSync(new URL(`${folder}${file}`, examples), 'utf8')),
  ])
}

const recipes = examplesIn('recipes/')
const records = examplesIn('records/')

/** The recipe that a bench followed. */
function recipeOf(file) {
  return recipes.find(([name]) => file.startsWith(name.replace('.json', '')))[1]
}

describe('the schemas', () => {
  it('are those of every document', () => {
    expect([...schemas.keys()].sort()).toEqual([
      'assessment',
      'calculation',
      'class-plan',
      'class-review',
      'plan',
      'quantity',
      'question-set',
      'recipe',
      'records',
      'review',
      'worksheet',
      'worksheet-review',
    ])
  })

  it.each([...schemas.keys()])('%s has a name, a title and a draft', (name) => {
    const { $id, $schema, title } = schemas.get(name)
    expect($id).toBe(`urn:saltwright:schema:${name}:1`)
    expect($schema).toBe('https://json-schema.org/draft/2020-12/schema')
    expect(title).toMatch(/\w/)
  })
})

describe.each(recipes)('%s', (_, recipe) => {
  const plan = planPreparation(recipe)

  it('is a recipe', () => expect(complaints('recipe', recipe)).toEqual([]))

  it('gives a plan that the schema knows', () => expect(complaints('plan', plan)).toEqual([]))

  it('comes back from its plan, and gives the same plan', () => {
    const stored = JSON.parse(JSON.stringify(plan))
    expect(JSON.stringify(planPreparation(stored.recipe))).toBe(JSON.stringify(plan))
  })

  it('gives the plan of a class that the schema knows', () => {
    const benches = [
      { name: 'Bench 1', scale: recipe.scale },
      { name: 'Bench 2', scale: recipe.scale },
    ]
    expect(complaints('class-plan', planClass(recipe, benches))).toEqual([])
  })
})

describe.each(records)('%s', (file, recorded) => {
  const assessment = assessPreparation(recipeOf(file), recorded)

  it('are records', () => expect(complaints('records', recorded)).toEqual([]))

  it('give an assessment that the schema knows', () => expect(complaints('assessment', assessment)).toEqual([]))

  it('come back from the assessment, and give the same one', () => {
    const stored = JSON.parse(JSON.stringify(assessment))
    expect(JSON.stringify(assessPreparation(recipeOf(file), stored.records))).toBe(JSON.stringify(assessment))
  })
})

describe('a quantity', () => {
  it.each(['3.270 g', '25.00(3) mL', '1.0e-7 mol/L', '96 %', '250 mL'])('%s comes back as it was', (text) => {
    const document = JSON.parse(JSON.stringify(toJSON(quantity(text))))
    expect(complaints('quantity', document)).toEqual([])
    expect(fromJSON(document).toString()).toBe(quantity(text).toString())
  })
})

describe('a calculation', () => {
  const tare = quantity('11.204(1) g')
  const crops = [quantity('18.616(1) g').minus(tare), quantity('19.305(1) g').minus(tare)]

  it('comes back with what its results share', () => {
    const document = JSON.parse(JSON.stringify(calculationToJSON(crops)))
    expect(complaints('calculation', document)).toEqual([])
    const [one, other] = calculationFromJSON(document)
    expect(`${one} ${other}`).toBe('7.412 g 8.101 g')
    expect(one.operands[1].input).toBe(other.operands[1].input)
  })
})

describe('a worksheet and its reviews', () => {
  const plan = planPreparation(recipeOf('zinc-sulfate'))
  const filled = { format: 'saltwright/worksheet@1', bench: 'Bench 1', answers: { 'theoretical-yield': '6.458 g' } }

  it('are known to the schemas', () => {
    expect(complaints('worksheet', filled)).toEqual([])
    expect(complaints('worksheet-review', reviewWorksheet(plan, filled))).toEqual([])
    expect(
      complaints(
        'class-review',
        reviewClass([
          { plan, filled },
          { plan, filled: {} },
        ]),
      ),
    ).toEqual([])
  })

  it('come back and give the same review', () => {
    const stored = JSON.parse(JSON.stringify(filled))
    expect(JSON.stringify(reviewWorksheet(plan, stored))).toBe(JSON.stringify(reviewWorksheet(plan, filled)))
  })

  it('a set of questions is known to the schema', () => {
    expect(complaints('question-set', questionSet(recipeOf('zinc-sulfate'), { seed: 1, variants: 2 }))).toEqual([])
  })
})

describe('a review', () => {
  const expected = planPreparation(recipes[0][1]).theoretical.mass

  it.each(['1.00 g', '1 mol', expected.toString(), `${expected.value.times(2).toPrecision(4)} g`])(
    'of %s is known to the schema',
    (stated) => expect(complaints('review', reviewAnswer(expected, stated))).toEqual([]),
  )
})

describe('what is not such a document is refused', () => {
  const [, recipe] = recipes[0]
  const plan = JSON.parse(JSON.stringify(planPreparation(recipe)))

  it.each([
    ['recipe', 'a misspelt key', { ...recipe, suplies: recipe.supplies }],
    ['recipe', 'a number without its unit', { ...recipe, scale: { of: 'ZnO', amount: 0.04 } }],
    ['recipe', 'another version', { ...recipe, format: 'saltwright/recipe@2' }],
    ['records', 'a recipe', recipe],
    ['plan', 'a plan without its supplies', { ...plan, supplies: undefined }],
    ['plan', 'a quantity without its unit', { ...plan, theoretical: { ...plan.theoretical, mass: { value: '1.00' } } }],
    ['quantity', 'a bare number', 3.27],
    ['assessment', 'a plan', plan],
    ['review', 'nothing', {}],
  ])('%s: %s', (name, _, document) => expect(complaints(name, document)).not.toEqual([]))
})
