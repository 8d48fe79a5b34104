import * as z from 'zod/mini'
import type { CalculationDocument, QuantityDocument } from '../quantity/index.js'

const decimal = () => z.string().check(z.regex(/^-?\d+(?:\.\d+)?(?:e[+-]?\d+)?$/), z.maxLength(200))
const text = () => z.string().check(z.maxLength(2000))
const name = () => z.string().check(z.minLength(1), z.maxLength(2000))
const position = () => z.int().check(z.nonnegative())
const ties = () => z.enum(['half-even', 'half-up'])
const names = () => ({
  label: z.optional(text()),
  symbol: z.optional(text()),
  of: z.optional(text()),
  role: z.optional(text()),
})

const measurement = () =>
  z.strictObject({
    kind: z.enum(['measured', 'exact', 'constant']),
    place: z.int().check(z.gte(-200), z.lte(200)),
    ambiguous: z.optional(z.literal(true)),
    uncertainty: z.optional(
      z.strictObject({
        standard: decimal(),
        distribution: z.enum(['normal', 'rectangular', 'triangular', 'arcsine']),
        degreesOfFreedom: z.optional(z.number().check(z.positive())),
      }),
    ),
    id: z.optional(name()),
  })

const settings = () =>
  z.strictObject({
    factor: z.optional(decimal()),
    inverse: z.optional(z.literal(true)),
    offset: z.optional(decimal()),
    counts: z.optional(z.array(decimal())),
    exponent: z.optional(z.int().check(z.gte(-20), z.lte(20))),
    rounding: z.optional(
      z.union([
        z.strictObject({ figures: z.int().check(z.gte(1), z.lte(30)), ties: ties() }),
        z.strictObject({ step: decimal(), ties: ties() }),
      ]),
    ),
  })

const node = () =>
  z.union([
    z.strictObject({ ...names(), measurement: position(), value: decimal(), unit: name() }),
    z.strictObject({
      ...names(),
      rule: name(),
      operands: z.array(position()),
      settings: z.optional(settings()),
      value: decimal(),
      unit: name(),
    }),
  ])

/**
 * The shape of a quantity as a JSON document, as a schema that other software can compose; `quantityJsonSchema` is the same as JSON
 * Schema. Whether unit and figures make sense, `fromJSON` decides.
 *
 * @example
 * ```ts
 * import { quantitySchema } from 'saltwright/preparation'
 * import { quantity, toJSON } from 'saltwright/quantity'
 *
 * quantitySchema.safeParse(toJSON(quantity('3.980 g'))).success // => true
 * quantitySchema.safeParse({ value: 3.98, unit: 'g' }).success // => false
 * ```
 */
export const quantitySchema: z.ZodMiniType<QuantityDocument> = /* @__PURE__ */ z.lazy(() =>
  z.strictObject({
    format: z.literal('saltwright/quantity@1'),
    value: decimal(),
    unit: name(),
    significantFigures: z.optional(z.int().check(z.gte(0), z.lte(200))),
    place: z.optional(z.int().check(z.gte(-200), z.lte(200))),
    exact: z.optional(z.literal(true)),
    uncertainty: z.optional(decimal()),
  }),
) as never

/**
 * The shape of quantities with their origin as a JSON document; `calculationJsonSchema` is the same as JSON Schema. Whether the rules fit
 * their operands, and give what the document says, `calculationFromJSON` decides.
 *
 * @example
 * ```ts
 * import { calculationSchema } from 'saltwright/preparation'
 * import { calculationToJSON, quantity } from 'saltwright/quantity'
 *
 * const net = quantity('18.632 g').minus(quantity('11.204 g'))
 * calculationSchema.safeParse(calculationToJSON([net])).success // => true
 * ```
 */
export const calculationSchema: z.ZodMiniType<CalculationDocument> = /* @__PURE__ */ z.lazy(() =>
  z.strictObject({
    format: z.literal('saltwright/calculation@1'),
    measurements: z.array(measurement()),
    nodes: z.array(node()).check(z.minLength(1)),
    results: z.array(position()).check(z.minLength(1)),
  }),
) as never

/**
 * The shape of a quantity as JSON Schema, for software in other languages.
 *
 * @returns A JSON Schema (draft 2020-12) as plain data.
 * @throws Never.
 *
 * @example
 * ```ts
 * import { quantityJsonSchema } from 'saltwright/preparation'
 *
 * quantityJsonSchema().type // => 'object'
 * ```
 */
export function quantityJsonSchema(): {
  /** What is described: `object`. */
  readonly type?: string
  /** Everything else that JSON Schema knows. */
  readonly [key: string]: unknown
} {
  return z.toJSONSchema(quantitySchema) as never
}

/**
 * The shape of quantities with their origin as JSON Schema, for software in other languages.
 *
 * @returns A JSON Schema (draft 2020-12) as plain data.
 * @throws Never.
 *
 * @example
 * ```ts
 * import { calculationJsonSchema } from 'saltwright/preparation'
 *
 * calculationJsonSchema().required // => ['format', 'measurements', 'nodes', 'results']
 * ```
 */
export function calculationJsonSchema(): {
  /** What is described: `object`. */
  readonly type?: string
  /** Everything else that JSON Schema knows. */
  readonly [key: string]: unknown
} {
  return z.toJSONSchema(calculationSchema) as never
}
