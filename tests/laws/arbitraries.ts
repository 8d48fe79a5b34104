import { readdirSync, readFileSync } from 'node:fs'
import fc, { type Arbitrary } from 'fast-check'
import type { Recipe } from 'saltwright/preparation'
import { logarithm, power, type Quantity, quantity, squareRoot, weightedSum } from 'saltwright/quantity'

const examples = new URL('../../docs/examples/recipes/', import.meta.url)
const files = readdirSync(examples).sort()

/** Every recipe of the documentation. */
export const recipes: readonly Recipe[] = files.map((file) => JSON.parse(readFileSync(new URL(file, examples), 'utf8')))

/** Any of them. */
export const anyRecipe: Arbitrary<Recipe> = fc.constantFrom(...recipes)

/** A decimal numeral above zero with one to six digits, from a thousandth to some hundred. */
export const numeral: Arbitrary<string> = fc
  .tuple(fc.integer({ min: 1, max: 999_999 }), fc.integer({ min: 0, max: 4 }))
  .map(([digits, decimals]) => (digits / 10 ** decimals).toFixed(decimals))

/** Inputs of a calculation: ratios with an uncertainty of half to three per cent, each known by its id. */
function inputsOf(count: number): Arbitrary<readonly Quantity<'ratio'>[]> {
  const one = fc.tuple(fc.integer({ min: 1000, max: 9999 }), fc.integer({ min: 5, max: 30 }))
  return fc.array(one, { minLength: count, maxLength: count }).map((list) =>
    list.map(([digits, thousandths], index) => {
      const value = digits / 1000
      const uncertainty = ((value * thousandths) / 1000).toPrecision(3) as '1'
      return quantity(value.toFixed(3) as '1', { id: `x${index}`, label: `x${index}`, uncertainty })
    }),
  )
}

type Step = readonly [kind: number, left: number, right: number]

/** A calculation by chance: each step takes two earlier results, inputs included, and adds one that stays within bounds. */
export const calculation: Arbitrary<{
  readonly inputs: readonly Quantity<'ratio'>[]
  readonly result: Quantity<'ratio'>
}> = fc
  .tuple(inputsOf(4), fc.array(fc.tuple(fc.nat(7), fc.nat(99), fc.nat(99)), { minLength: 1, maxLength: 10 }))
  .map(([inputs, steps]) => ({ inputs, result: steps.reduce(extended, inputs).at(-1) as Quantity<'ratio'> }))

function extended(made: readonly Quantity<'ratio'>[], [kind, left, right]: Step): readonly Quantity<'ratio'>[] {
  const [a, b] = [made[made.length - 1 - (left % made.length)], made[right % made.length]]
  const next = applied(kind, a as Quantity<'ratio'>, b as Quantity<'ratio'>)
  const size = next.value.abs().toNumber()
  return size > 1e-3 && size < 1e6 ? [...made, next] : made
}

function applied(kind: number, a: Quantity<'ratio'>, b: Quantity<'ratio'>): Quantity<'ratio'> {
  const isTame = a.value.gt('0.1') && b.value.abs().gt('0.1')
  if (kind === 0 || !isTame) return a.plus(b)
  if (kind === 1) return a.minus(b)
  if (kind === 2) return a.times(b)
  if (kind === 3) return a.dividedBy(b)
  if (kind === 4) return squareRoot(a)
  if (kind === 5) return power(a, 2)
  if (kind === 6)
    return weightedSum([
      { times: 2, of: a },
      { times: 3, of: b },
    ])
  return logarithm(a).plus(b)
}
