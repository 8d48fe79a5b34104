import { calculationJsonSchema, quantityJsonSchema, recipeJsonSchema, recordsJsonSchema } from 'saltwright/preparation'
import { expect, it } from 'vitest'

/* What other programs write against: read the difference before you accept a new one with `vitest -u`. */
it.each([
  { name: 'recipe', schema: recipeJsonSchema() },
  { name: 'records', schema: recordsJsonSchema() },
  { name: 'quantity', schema: quantityJsonSchema() },
  { name: 'calculation', schema: calculationJsonSchema() },
])('the shape of a $name as JSON Schema is as before', async ({ name, schema }) => {
  await expect(`${JSON.stringify(schema, null, 1)}\n`).toMatchFileSnapshot(`documents/schema-${name}.txt`)
})
