import * as z from 'zod/mini'
import { attempt } from '../errors.js'
import { readJson } from '../preparation/read-json.js'
import { words } from '../preparation/schema-parts.js'
import { ReviewError } from './review-error.js'
import type { FilledWorksheet } from './worksheet.js'

/** Longest answer that is read, in characters. */
const longest = 200

/**
 * The shape of a filled worksheet.
 *
 * @example
 * ```ts
 * import { filledWorksheetSchema } from 'saltwright/review'
 *
 * filledWorksheetSchema.safeParse({ format: 'saltwright/worksheet@1', answers: { 'mass-of-ZnO': '3.255 g' } }).success // => true
 * ```
 */
export const filledWorksheetSchema: z.ZodMiniType<FilledWorksheet> = /* @__PURE__ */ z.lazy(() =>
  z.strictObject({
    format: z.literal('saltwright/worksheet@1'),
    bench: z.optional(words()),
    answers: z.record(z.string().check(z.maxLength(longest)), z.string().check(z.maxLength(longest))),
  }),
) as never

/**
 * The shape of a filled worksheet as JSON Schema, for other software.
 *
 * @returns A JSON Schema, draft 2020-12.
 * @throws Never.
 *
 * @example
 * ```ts
 * import { filledWorksheetJsonSchema } from 'saltwright/review'
 *
 * filledWorksheetJsonSchema().type // => 'object'
 * ```
 */
export function filledWorksheetJsonSchema(): {
  /** What is described: `object`. */
  readonly type?: string
  /** Everything else that JSON Schema knows. */
  readonly [key: string]: unknown
} {
  return z.toJSONSchema(filledWorksheetSchema) as never
}

/** Reads a filled worksheet; every mistake is in the one error. */
export function readFilledWorksheet(input: unknown): FilledWorksheet {
  const read = attempt(() => readJson(filledWorksheetSchema, input, 'worksheet'))
  if (read.ok) return read.value
  const code = read.error.code === 'preparation/unreadable' ? 'review/unreadable' : 'review/invalid'
  throw new ReviewError({ ...read.error.toJSON(), code })
}
