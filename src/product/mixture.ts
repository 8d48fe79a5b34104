import type { Quantity } from '../quantity/index.js'
import type { Given } from '../stoichiometry/given.js'
import { measured } from '../stoichiometry/given.js'
import { list, positive, record } from './guard.js'
import { ProductError } from './product-error.js'

/** A mixture of two substances that is turned into something else; text is measured. */
export interface TwoComponents {
  /** Mass of the mixture. */
  readonly total: Given<'mass'>
  /** Mass of what it is turned into. */
  readonly converted: Given<'mass'>
  /** Grams that a gram of the first substance, and of the second, is turned into: two gravimetric factors. */
  readonly factors: readonly [Given<'ratio'>, Given<'ratio'>]
}

/**
 * An indirect analysis: how much there is of each of two substances, from the mass of the mixture and of what it is turned into.
 * It is only as good as the two factors lie apart: small errors of weighing grow by one over their difference.
 *
 * @param mixture - Both masses, and what a gram of each substance is turned into.
 * @returns The masses of the first and the second. One below zero says that the numbers do not fit the mixture.
 * @throws {@link ProductError} `product/cannot-tell-apart` where the two factors are the same, or not two; `product/not-positive`;
 *   `product/not-an-object`.
 * @source Harvey, Analytical Chemistry 2.0, chapter 8, Example 8.3 and following.
 *
 * @example
 * ```ts
 * import { componentMasses, gravimetricFactor } from 'saltwright/product'
 *
 * const [limestone, inert] = componentMasses({
 *   total: '1.000 g',
 *   converted: '0.604 g',
 *   factors: [gravimetricFactor({ weighed: 'CaCO3', sought: 'CaO' }), '1.0000'],
 * })
 * limestone.toString() // => '0.901 g'
 * inert.toString() // => '0.099 g'
 * ```
 */
export function componentMasses(mixture: TwoComponents): readonly [Quantity<'mass'>, Quantity<'mass'>] {
  const { factors } = record(mixture, 'a mixture of two')
  const total = positive(mixture.total, 'mass', { label: 'mass of the mixture', symbol: 'm' })
  const converted = positive(mixture.converted, 'mass', { label: 'mass it is turned into', symbol: 'm' })
  const [a, b, ...others] = list(factors, 'two factors').map((factor) =>
    measured(factor, 'ratio', { label: 'factor', symbol: 'F' }).to('1'),
  )
  if (a === undefined || b === undefined || others.length > 0) throw notTwo(factors.length)
  if (a.equals(b)) throw cannotTell(`${a} for both`)
  const first = converted.minus(total.times(b)).dividedBy(a.minus(b)).named({ label: 'mass of the first', symbol: 'm' })
  return [first, total.minus(first).named({ label: 'mass of the second', symbol: 'm' })]
}

function notTwo(count: number): ProductError {
  return cannotTell(count === 0 ? 'no factor' : `a list of ${count}`)
}

function cannotTell(found: string): ProductError {
  return new ProductError({
    code: 'product/cannot-tell-apart',
    message: 'Two substances can only be told apart by two factors that differ.',
    found,
    expected: 'two factors that differ',
  })
}
