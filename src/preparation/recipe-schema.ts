import * as z from 'zod/mini'
import { operations } from '../cautions/facts.js'
import { type GasConditionsName, gasConditions } from '../product/index.js'
import type { Recipe } from './recipe.js'
import { equationText, formulaText, numberOf, readingOf, shareText, words } from './schema-parts.js'

const common = () => ({
  substance: formulaText(),
  name: z.optional(words()),
  stage: z.optional(words()),
  excessFactor: z.optional(numberOf('ratio')),
  molesPerMole: z.optional(numberOf('ratio')),
  asPrinted: z.optional(numberOf('mass', 'volume', 'amount')),
  vessel: z.optional(
    z.strictObject({
      item: z.enum(['volumetric flask', 'transfer pipette', 'burette', 'measuring cylinder']),
      standard: z.enum(['ISO', 'ASTM']),
      accuracy: z.optional(z.enum(['A', 'B'])),
      available: z.optional(z.array(numberOf('volume')).check(z.minLength(1), z.maxLength(100))),
    }),
  ),
})

const madeFrom = () =>
  z.union([
    z.strictObject({ concentration: numberOf('amountConcentration') }),
    z.strictObject({
      massFraction: shareText(),
      density: numberOf('density'),
      statedAs: z.optional(formulaText()),
    }),
    z.strictObject({ solid: formulaText(), assay: z.optional(shareText()) }),
  ])

const supply = () =>
  z.discriminatedUnion('form', [
    z.strictObject({
      ...common(),
      form: z.literal('solid'),
      weighedAs: z.optional(formulaText()),
      assay: z.optional(shareText()),
    }),
    z.strictObject({
      ...common(),
      form: z.literal('solution'),
      concentration: numberOf('amountConcentration'),
      madeFrom: z.optional(madeFrom()),
    }),
    z.strictObject({
      ...common(),
      form: z.literal('stock'),
      massFraction: shareText(),
      density: numberOf('density'),
      statedAs: z.optional(formulaText()),
      printedConcentration: z.optional(numberOf('amountConcentration')),
    }),
    z.strictObject({
      ...common(),
      form: z.literal('molal'),
      molality: numberOf('molality'),
      density: numberOf('density'),
    }),
    z.strictObject({
      ...common(),
      form: z.literal('normal'),
      normality: numberOf('amountConcentration'),
      equivalentsPerMole: numberOf('ratio'),
    }),
    z.strictObject({
      ...common(),
      form: z.literal('liquid'),
      density: numberOf('density'),
      assay: z.optional(shareText()),
    }),
    z.strictObject({
      form: z.literal('unlimited'),
      substance: formulaText(),
      name: z.optional(words()),
      stage: z.optional(words()),
    }),
  ])

const stage = () =>
  z.strictObject({
    name: words(),
    equation: equationText(),
    steps: z.optional(z.array(words())),
    clears: z.optional(formulaText()),
    aliquot: z.optional(shareText()),
    removes: z.optional(z.array(formulaText())),
  })

const auxiliary = () =>
  z.strictObject({
    name: words(),
    amount: numberOf('mass', 'volume'),
    stage: z.optional(words()),
    substance: z.optional(formulaText()),
  })

const wash = () =>
  z.strictObject({
    with: words(),
    volume: numberOf('volume'),
    portions: z.optional(z.int().check(z.positive())),
    substance: z.optional(formulaText()),
  })

const weights = () =>
  z.union([
    z.enum(['abridged', 'standard']),
    z.strictObject({
      name: words(),
      values: z.record(z.string(), words()),
      extends: z.optional(z.enum(['abridged', 'standard'])),
    }),
  ])

/**
 * The shape of a recipe as JSON, as a schema that other software can compose; `recipeJsonSchema` is the same as JSON Schema.
 *
 * @example
 * ```ts
 * import { recipeSchema } from 'saltwright/preparation'
 *
 * recipeSchema.safeParse({ format: 'something else' }).success // => false
 * ```
 */
export const recipeSchema: z.ZodMiniType<Recipe> = /* @__PURE__ */ z.lazy(() =>
  z.strictObject({
    format: z.literal('saltwright/recipe@1'),
    title: words(),
    source: z.optional(words()),
    notes: z.optional(z.array(words())),
    product: formulaText(),
    productName: z.optional(words()),
    stages: z.array(stage()).check(z.minLength(1), z.maxLength(50)),
    supplies: z.array(supply()).check(z.minLength(1), z.maxLength(100)),
    auxiliaries: z.optional(z.array(auxiliary())),
    scale: z.optional(
      z.strictObject({ of: formulaText(), amount: z.optional(numberOf('amount')), mass: z.optional(numberOf('mass')) }),
    ),
    instruments: z.optional(
      z.strictObject({
        balance: z.optional(numberOf('mass')),
        cylinder: z.optional(numberOf('volume')),
        cylinderCapacity: z.optional(numberOf('volume')),
      }),
    ),
    crystallisation: z.optional(
      z.strictObject({
        temperature: numberOf('temperature'),
        water: z.optional(numberOf('volume', 'mass')),
        evaporated: z.optional(numberOf('volume', 'mass')),
      }),
    ),
    washes: z.optional(z.array(wash())),
    operations: z.optional(z.array(z.enum(operations))),
    drying: z.optional(words()),
    gasAt: z.optional(z.enum(Object.keys(gasConditions) as [GasConditionsName])),
    claims: z.optional(
      z.array(
        z.strictObject({
          of: formulaText(),
          limiting: z.optional(z.literal(true)),
          excess: z.optional(readingOf('ratio')),
        }),
      ),
    ),
    atomicWeights: z.optional(weights()),
  }),
) as never

/**
 * The shape of a recipe as JSON Schema (draft 2020-12), for editors and for software in other languages.
 *
 * @returns The schema as plain data. Numbers are text with units, which JSON Schema cannot check further.
 * @throws Never.
 *
 * @example
 * ```ts
 * import { recipeJsonSchema } from 'saltwright/preparation'
 *
 * recipeJsonSchema().type // => 'object'
 * ```
 */
export function recipeJsonSchema(): {
  /** What is described: `object`. */
  readonly type?: string
  /** Everything else that JSON Schema knows. */
  readonly [key: string]: unknown
} {
  return z.toJSONSchema(recipeSchema) as never
}
