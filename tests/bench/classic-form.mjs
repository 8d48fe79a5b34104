import * as z from 'zod'

/**
 * A schema of this library in the classic form of the schema library, which compiles its objects to functions; ours are in the small
 * form, which does not, as a web page may forbid that. Every text has the very same readers.
 *
 * @param schema - Made by `zod/mini`.
 * @param readTexts - False for the shape alone: every text passes, whatever it says.
 */
export function classicForm(schema, readTexts = true) {
  const { def } = schema._zod
  const made = makers[def.type](def, (part) => classicForm(part, readTexts))
  return readTexts && def.checks !== undefined ? made.check(...def.checks) : made
}

const makers = {
  string: () => z.string(),
  number: () => z.number(),
  literal: ({ values }) => z.literal(values),
  enum: ({ entries }) => z.enum(entries),
  lazy: ({ getter }, of) => of(getter()),
  optional: ({ innerType }, of) => z.optional(of(innerType)),
  array: ({ element }, of) => z.array(of(element)),
  record: ({ keyType, valueType }, of) => z.record(of(keyType), of(valueType)),
  union: ({ discriminator, options }, of) =>
    discriminator === undefined ? z.union(options.map(of)) : z.discriminatedUnion(discriminator, options.map(of)),
  object: ({ shape }, of) =>
    z.strictObject(Object.fromEntries(Object.entries(shape).map(([key, part]) => [key, of(part)]))),
}
