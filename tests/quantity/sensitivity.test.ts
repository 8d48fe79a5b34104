import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  antilogarithm,
  cosine,
  exact,
  exponential,
  logarithm,
  mean,
  naturalLogarithm,
  power,
  type Quantity,
  quantity,
  reconsider,
  sine,
  squareRoot,
  sum,
  uncertaintyBudget,
  weightedSum,
} from '../../src/quantity/index.js'

type Ratio = Quantity<'ratio'>

/** One number from one or two others, kept between 0.1 and 1000 or so, where every function is smooth. */
const operations: readonly ((a: Ratio, b: Ratio) => Ratio)[] = [
  (a, b) => a.plus(b),
  (a, b) => a.minus(b),
  (a, b) => a.times(b),
  (a, b) => a.dividedBy(power(b, 2).plus(exact(1))),
  (a, b) => sum([a, b, a]),
  (a, b) => mean([a, b]),
  (a, b) =>
    weightedSum([
      { times: 3, of: a },
      { times: 0.25, of: b },
    ]),
  (a) => power(a, 2),
  (a) => squareRoot(power(a, 2).plus(exact(1))),
  (a) => logarithm(power(a, 2).plus(exact(1))),
  (a) => naturalLogarithm(power(a, 2).plus(exact(1))),
  (a) => sine(tamed(a)),
  (a) => cosine(tamed(a)),
  (a) => exponential(sine(tamed(a))),
  (a) => antilogarithm(cosine(tamed(a))),
  (a, b) => a.to('%').plus(b).to('1'),
]

/** Between -1 and 1, so that a graph of many steps stays within bounds. */
const tamed = (a: Ratio): Ratio => a.dividedBy(squareRoot(power(a, 2).plus(exact(1))))

const plan = fc.record({
  inputs: fc.array(fc.double({ min: 0.5, max: 3, noNaN: true }), { minLength: 2, maxLength: 5 }),
  steps: fc.array(fc.tuple(fc.nat(), fc.nat(), fc.nat()), { minLength: 1, maxLength: 12 }),
})

function graphOf({
  inputs,
  steps,
}: {
  inputs: readonly number[]
  steps: readonly (readonly [number, number, number])[]
}) {
  const numbers = inputs.map((value) => quantity(value.toFixed(6) as '1', { uncertainty: '0.001' }) as Ratio)
  const all = [...numbers]
  for (const [operation, a, b] of steps) {
    const make = operations[operation % operations.length] as (a: Ratio, b: Ratio) => Ratio
    const made = make(all[a % all.length] as Ratio, all[b % all.length] as Ratio)
    all.push(made.value.abs().gt(1000) ? tamed(made) : made)
  }
  return { numbers, result: all.at(-1) as Ratio }
}

/** The derivative by the difference of two results, the whole calculation made anew with one input moved a little either way. */
function numericalSlope(result: Ratio, input: Ratio): number {
  const step = '1e-11'
  const moved = (by: Ratio): Ratio => reconsider(result, { replace: input, with: input.plus(by) })
  const rise = moved(exact(step)).value.minus(moved(exact(`-${step}` as '-1')).value)
  return rise.div(step).div(2).toNumber()
}

describe('the sensitivities of a random calculation', () => {
  it('are those that come out when each input is moved a little', () => {
    fc.assert(
      fc.property(plan, (planned) => {
        const { numbers, result } = graphOf(planned)
        const { contributions } = uncertaintyBudget(result)
        for (const input of numbers) {
          const found = contributions.find((one) => one.input === input)?.sensitivity ?? 0
          const numerical = numericalSlope(result, input)
          expect(Math.abs(found - numerical)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(numerical)))
        }
      }),
      { numRuns: 150 },
    )
  })
})
