import * as z from 'zod/mini'
import { type ConstantMassCriterionName, constantMassCriteria } from '../product/index.js'
import type { Records } from './records.js'
import { formulaText, readingOf, shareReading, words } from './schema-parts.js'

const mass = () => z.optional(readingOf('mass'))
const tare = () => z.union([readingOf('mass'), z.array(readingOf('mass')).check(z.minLength(1), z.maxLength(100))])

/**
 * The shape of records as JSON, as a schema that other software can compose; `recordsJsonSchema` is the same as JSON Schema.
 *
 * @example
 * ```ts
 * import { recordsSchema } from 'saltwright/preparation'
 *
 * recordsSchema.safeParse({ format: 'saltwright/records@1', product: { mass: '8.1 g' } }).success // => true
 * ```
 */
export const recordsSchema: z.ZodMiniType<Records> = /* @__PURE__ */ z.lazy(() =>
  z.strictObject({
    format: z.literal('saltwright/records@1'),
    bench: z.optional(words()),
    notes: z.optional(z.array(words())),
    supplies: z.optional(
      z.array(
        z.strictObject({
          substance: formulaText(),
          stage: z.optional(words()),
          gross: mass(),
          tare: mass(),
          mass: mass(),
          volume: z.optional(readingOf('volume')),
          assay: z.optional(shareReading()),
          concentration: z.optional(readingOf('amountConcentration')),
        }),
      ),
    ),
    product: z.strictObject({
      gross: mass(),
      tare: z.optional(tare()),
      mass: mass(),
      series: z.optional(z.array(readingOf('mass')).check(z.minLength(1), z.maxLength(100))),
      constancy: z.optional(
        z.union([
          z.enum(Object.keys(constantMassCriteria) as [ConstantMassCriterionName]),
          z.strictObject({ within: readingOf('mass') }),
        ]),
      ),
      vessels: z.optional(
        z.array(z.strictObject({ gross: readingOf('mass'), tare: tare() })).check(z.minLength(1), z.maxLength(100)),
      ),
      mayBeIncluded: z.optional(z.array(readingOf('mass'))),
      purity: z.optional(shareReading()),
    }),
  }),
) as never

/**
 * The shape of records as JSON Schema (draft 2020-12).
 *
 * @returns The schema as plain data.
 * @throws Never.
 *
 * @example
 * ```ts
 * import { recordsJsonSchema } from 'saltwright/preparation'
 *
 * recordsJsonSchema().type // => 'object'
 * ```
 */
export function recordsJsonSchema(): {
  /** What is described: `object`. */
  readonly type?: string
  /** Everything else that JSON Schema knows. */
  readonly [key: string]: unknown
} {
  return z.toJSONSchema(recordsSchema) as never
}
