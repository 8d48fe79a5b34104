import { fileURLToPath } from 'node:url'
import ts from 'typescript'
import { schemasOf } from './schema-of-type.mjs'

const root = new URL('../../', import.meta.url)
const path = (name) => fileURLToPath(new URL(name, root))

/** What the library reads: the schema that reads it. */
const read = [
  { name: 'recipe', title: 'A recipe', schema: 'recipeJsonSchema' },
  { name: 'records', title: 'What a bench recorded', schema: 'recordsJsonSchema' },
  { name: 'worksheet', title: 'A filled worksheet', schema: 'filledWorksheetJsonSchema' },
  { name: 'quantity', title: 'A quantity', schema: 'quantityJsonSchema' },
  { name: 'calculation', title: 'Quantities with all that they were made from', schema: 'calculationJsonSchema' },
]

/** What the library makes: the type of what it returns. */
const made = [
  { name: 'plan', title: 'The plan of a preparation', type: 'Plan', topic: 'preparation' },
  { name: 'class-plan', title: 'The plan of a class', type: 'ClassPlan', topic: 'preparation' },
  { name: 'assessment', title: 'The assessment of a preparation', type: 'Assessment', topic: 'preparation' },
  { name: 'review', title: 'The review of an answer', type: 'Review', topic: 'review' },
  { name: 'worksheet-review', title: 'The review of a worksheet', type: 'WorksheetReview', topic: 'review' },
  { name: 'class-review', title: 'The review of a class', type: 'ClassReview', topic: 'review' },
  { name: 'question-set', title: 'A set of questions', type: 'QuestionSet', topic: 'review' },
]

/**
 * The JSON Schemas of all documents that go in or come out, by the name of their file.
 *
 * @param {Record<string, () => object>} library - The front door, for the schemas of what it reads.
 * @returns {Map<string, object>} Plain data, draft 2020-12.
 */
export function documentSchemas(library) {
  const faces = new Map([...new Set(made.map(({ topic }) => topic))].map((topic) => [topic, schemasOfTopic(topic)]))
  return new Map([
    ...read.map(({ name, title, schema }) => [name, headed(name, title, library[schema]())]),
    ...made.map(({ name, title, type, topic }) => [name, headed(name, title, faces.get(topic)(type))]),
  ])
}

function schemasOfTopic(topic) {
  return schemasOf(path(`src/${topic}/index.ts`), options())
}

function headed(name, title, schema) {
  const { $schema = 'https://json-schema.org/draft/2020-12/schema', ...rest } = schema
  return { $schema, $id: `urn:saltwright:schema:${name}:1`, title, ...rest }
}

function options() {
  const file = path('src/tsconfig.json')
  const { config } = ts.readConfigFile(file, ts.sys.readFile)
  return ts.parseJsonConfigFileContent(config, ts.sys, path('src')).options
}
