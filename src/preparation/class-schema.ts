import * as z from 'zod/mini'
import type { Bench, ClassOptions } from './class-type.js'
import { formulaText, numberOf, shareText, words } from './schema-parts.js'

const scale = () =>
  z
    .strictObject({
      of: z.optional(formulaText()),
      amount: z.optional(numberOf('amount')),
      mass: z.optional(numberOf('mass')),
    })
    .check(
      z.check((context) => {
        const { amount, mass } = context.value
        if ((amount === undefined) !== (mass === undefined)) return
        const params = {
          code: mass === undefined ? 'preparation/no-amount-rule' : 'preparation/two-amount-rules',
          found: mass === undefined ? 'neither' : 'amount and mass',
          expected: 'an amount or a mass, one of the two',
        }
        context.issues.push({
          code: 'custom',
          input: context.value,
          message: `${params.found}; expected ${params.expected}.`,
          params,
        })
      }),
    )

/** The benches of a class and how it is planned. */
export interface ClassList {
  /** The benches, in order. */
  readonly benches: readonly Bench[]
  /** Spare and containers. */
  readonly options: ClassOptions
}

/** The shape of the benches of a class. */
export const classListSchema: z.ZodMiniType<ClassList> = /* @__PURE__ */ z.lazy(() =>
  z.strictObject({
    benches: z.array(z.strictObject({ name: words(), scale: scale() })).check(z.minLength(1), z.maxLength(100_000)),
    options: z.strictObject({
      spare: z.optional(
        z.union([
          z.strictObject({ benches: z.int().check(z.nonnegative(), z.lte(1000)) }),
          z.strictObject({ percent: shareText() }),
        ]),
      ),
      containers: z.optional(
        z.strictObject({ volume: z.optional(numberOf('volume')), mass: z.optional(numberOf('mass')) }),
      ),
    }),
  }),
) as never
