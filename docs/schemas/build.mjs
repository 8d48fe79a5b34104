/** Writes the JSON Schemas of the package into `dist/schemas`; a part of `npm run build`, after the code is built. */
import { mkdirSync, writeFileSync } from 'node:fs'
import * as library from 'saltwright'
import { documentSchemas } from './documents.mjs'

const target = new URL('../../dist/schemas/', import.meta.url)

mkdirSync(target, { recursive: true })
for (const [name, schema] of documentSchemas(library)) {
  writeFileSync(new URL(`${name}.json`, target), `${JSON.stringify(schema, null, 1)}\n`)
}
