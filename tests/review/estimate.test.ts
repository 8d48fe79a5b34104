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
  roundTo,
  sine,
  squareRoot,
  sum,
  weightedSum,
} from 'saltwright/quantity'
import { describe, expect, it } from 'vitest'
import { calculationOf } from '../../src/review/calculation.js'
import { estimate } from '../../src/review/estimate.js'
import { guessesAt } from '../../src/review/guesses.js'
import { roundedNumber } from '../../src/review/numeric-rules.js'
import { recompute } from '../../src/review/recompute.js'
import { instead, timesNumber } from '../../src/review/replacement.js'
import { slips } from '../../src/review/slips.js'
import { casesFrom } from './cases.js'

const x = exact('0.7')
const gram = exact('2.345 g')

describe('on doubles a changed calculation gives what it gives on decimals', () => {
  it.each<{ rule: string; result: Quantity; of: Quantity }>([
    { rule: 'sum', result: sum([gram, exact('1 g')]), of: gram },
    { rule: 'difference', result: gram.minus(exact('1 g')), of: gram },
    { rule: 'product', result: gram.times(x), of: gram },
    { rule: 'quotient', result: exact('1 g').dividedBy(gram), of: gram },
    { rule: 'conversion', result: gram.to('mg'), of: gram },
    { rule: 'conversion to a larger unit', result: exact('25 mL').to('L'), of: exact('25 mL') },
    { rule: 'conversion that divides', result: exact('90 min').to('h'), of: exact('90 min') },
    { rule: 'conversion back', result: exact('5 %').to('1'), of: exact('5 %') },
    { rule: 'conversion with an offset', result: exact('22 degC').to('K'), of: exact('22 degC') },
    { rule: 'mean', result: mean([gram, exact('1 g')]), of: gram },
    { rule: 'weightedSum', result: weightedSum([{ times: 2, of: gram }]), of: gram },
    { rule: 'power', result: power(x, 3), of: x },
    { rule: 'squareRoot', result: squareRoot(x), of: x },
    { rule: 'logarithm', result: logarithm(x), of: x },
    { rule: 'antilogarithm', result: antilogarithm(x), of: x },
    { rule: 'naturalLogarithm', result: naturalLogarithm(x), of: x },
    { rule: 'exponential', result: exponential(x), of: x },
    { rule: 'sine', result: sine(x), of: x },
    { rule: 'cosine', result: cosine(x), of: x },
    { rule: 'rounded to figures', result: roundTo(gram, { figures: 2 }), of: gram },
    { rule: 'rounded to a place', result: roundTo(gram, { place: '0.05' }), of: gram },
  ])('by the rule: $rule', ({ result, of }) => {
    const calculation = calculationOf(result)
    const [input] = calculation.quantities.filter((q) => q.value.eq(of.value))
    const change = [of.unit === 'degC' ? instead(input!, exact('30 degC')) : timesNumber(input!, '1.25')]
    const changed = recompute(calculation, change)!.value.toNumber()
    expect(estimate(calculation, change)).toBeCloseTo(changed, 10)
    expect(estimate(calculation, [])).toBeCloseTo(result.value.toNumber(), 10)
  })

  it('by every slip, in every question on every recipe', () => {
    const off: string[] = []
    for (const { recipe, question, expected, context } of casesFrom(3, 1)) {
      const calculation = calculationOf(expected)
      for (const { slip, way, value } of guessesAt(calculation, { ...context, weights: undefined }, slips)) {
        const exactly = recompute(calculation, way.change)?.value.toNumber()
        if (exactly === undefined || Math.abs(value / exactly - 1) < 1e-9) continue
        off.push(`${recipe} ${question} ${slip.name} ${way.reason}: ${value}, not ${exactly}`)
      }
    }
    expect(off).toEqual([])
  })

  it('a double that is none is not rounded', () => {
    expect(roundedNumber(Number.NaN, 3)).toBeNaN()
    expect(roundedNumber(Number.POSITIVE_INFINITY, 3)).toBe(Number.POSITIVE_INFINITY)
    expect(roundedNumber(0.0355, 2)).toBe(0.036)
  })
})
