import { fileURLToPath } from 'node:url'
import ts from 'typescript'
import { schemasOf } from './schema-of-type.mjs'

const root = new URL('../../', import.meta.url)
const path = (name) => fileURLToPath(new URL(name, root))

/** What the library makes: a schema follows from the type of what it returns. */
const made = [
  { name: 'quantity', title: 'A quantity', type: 'QuantityDocument', face: 'src/quantity/index.ts' },
  { name: 'plan', title: 'The plan of a preparation', type: 'Plan', face: 'src/preparation/index.ts' },
  { name: 'class-plan', title: 'The plan of a class', type: 'ClassPlan', face: 'src/preparation/index.ts' },
  {
    name: 'assessment',
    title: 'The assessment of a preparation',
    type: 'Assessment',
    face: 'src/preparation/index.ts',
  },
  { name: 'review', title: 'The review of an answer', type: 'Review', face: 'src/review/index.ts' },
]

/**
 * The JSON Schemas of all documents that go in or come out, by the name of their file.
 *
 * @param {object} readers - The functions of the library that give the schemas of what it reads.
 * @param {() => object} readers.recipeJsonSchema - That of a recipe.
 * @param {() => object} readers.recordsJsonSchema - That of records.
 * @returns {Map<string, object>} Plain data, draft 2020-12.
 */
export function documentSchemas({ recipeJsonSchema, recordsJsonSchema }) {
  return new Map([
    ['recipe', headed('recipe', 'A recipe', recipeJsonSchema())],
    ['records', headed('records', 'What a bench recorded', recordsJsonSchema())],
    ...made.map(({ name, title, type, face }) => [name, headed(name, title, schemasOf(path(face), options())(type))]),
  ])
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
