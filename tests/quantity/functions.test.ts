import { describe, expect, it } from 'vitest'
import {
  antilogarithm,
  cosine,
  exact,
  exponential,
  logarithm,
  naturalLogarithm,
  power,
  type Quantity,
  quantity,
  sine,
  squareRoot,
} from '../../src/quantity/index.js'
import { refusal } from './refusal.js'

const ratio = (text: string): Quantity<'ratio'> => quantity(text) as Quantity<'ratio'>

describe('functions of a ratio', () => {
  it.each([
    { q: power(ratio('1.20'), 2), is: '1.44' },
    { q: power(ratio('1.20'), 0), is: '1.00' },
    { q: power(ratio('2.00'), -1), is: '0.500' },
    { q: power(ratio('50. %'), 2), is: '0.25' },
    { q: squareRoot(ratio('2.25')), is: '1.50' },
    { q: squareRoot(ratio('0.00')), is: '0.00' },
    { q: squareRoot(exact(2)), is: '1.414213562' },
    { q: logarithm(ratio('1.0e-7')), is: '-7.00' },
    { q: logarithm(exact(100)), is: '2' },
    { q: antilogarithm(ratio('-6.52')), is: '3.0e-7' },
    { q: antilogarithm(exact(2)), is: '100' },
    { q: antilogarithm(ratio('3')), is: '0e4' }, // no decimal, no figure
    { q: naturalLogarithm(ratio('2.00')), is: '0.693' },
    { q: exponential(ratio('0.693')), is: '2.00' },
    { q: sine(ratio('0.5236')), is: '0.5000' },
    { q: cosine(ratio('1.0472')), is: '0.50000' },
    { q: cosine(ratio('1000000')), is: '0.9' },
  ])('$is', ({ q, is }) => expect(q.toString()).toBe(is))
})

describe('what is refused', () => {
  it.each([
    { call: () => power(ratio('2.0'), 0.5), code: 'quantity/not-a-whole-power' },
    { call: () => power(ratio('2.0'), 21), code: 'quantity/not-a-whole-power' },
    { call: () => power(ratio('2.0'), '2' as never), code: 'quantity/not-a-whole-power' },
    { call: () => power(ratio('2.0'), Number.NaN), code: 'quantity/not-a-whole-power' },
    { call: () => power(ratio('0.0'), -1), code: 'quantity/division-by-zero' },
    { call: () => power(ratio('1e90'), 2), code: 'quantity/out-of-range' },
    { call: () => power(quantity('2.0 g') as never, 2), code: 'quantity/wrong-dimension' },
    { call: () => power(null as never, 2), code: 'quantity/not-a-quantity' },
    { call: () => squareRoot(ratio('-1.0')), code: 'quantity/root-of-negative' },
    { call: () => squareRoot(quantity('2.0 g') as never), code: 'quantity/wrong-dimension' },
    { call: () => logarithm(ratio('0.0')), code: 'quantity/logarithm-of-non-positive' },
    { call: () => logarithm(ratio('-1.0')), code: 'quantity/logarithm-of-non-positive' },
    { call: () => logarithm('10' as never), code: 'quantity/not-a-quantity' },
    { call: () => antilogarithm(ratio('141')), code: 'quantity/out-of-range' },
    { call: () => antilogarithm(ratio('-1e90')), code: 'quantity/out-of-range' },
    { call: () => naturalLogarithm(ratio('0.0')), code: 'quantity/logarithm-of-non-positive' },
    { call: () => exponential(ratio('323')), code: 'quantity/out-of-range' },
    { call: () => exponential(ratio('-323')), code: 'quantity/out-of-range' },
    { call: () => sine(ratio('1e90')), code: 'quantity/out-of-range' },
    { call: () => cosine(ratio('-1000001')), code: 'quantity/out-of-range' },
    { call: () => sine(quantity('1.0 g') as never), code: 'quantity/wrong-dimension' },
    { call: () => antilogarithm(5 as never), code: 'quantity/not-a-quantity' },
  ])('$code', ({ call, code }) => {
    const error = refusal(call)
    expect(error.code).toBe(code)
    expect(error.expected).toBeTruthy()
  })
})
