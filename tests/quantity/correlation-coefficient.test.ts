import { describe, expect, it } from 'vitest'
import { correlationCoefficient, exact, quantity } from '../../src/quantity/index.js'

describe('the correlation of two results', () => {
  const [x, y] = [quantity('3.0(3)'), quantity('4.0(4)')]
  it.each([
    { what: 'the same', a: x, b: x, r: 1 },
    { what: 'opposites', a: x, b: exact(0).minus(x), r: -1 },
    { what: 'strangers', a: x, b: y, r: 0 },
    { what: 'sum and difference', a: x.plus(y), b: x.minus(y), r: (0.09 - 0.16) / 0.25 },
    { what: 'nothing uncertain', a: x, b: exact(2), r: 0 },
    { what: 'nothing uncertain at all', a: exact(2), b: x, r: 0 },
  ])('$what: $r', ({ a, b, r }) => expect(correlationCoefficient(a, b)).toBeCloseTo(r, 12))

  it('of inputs is what was stated', () => {
    const correlations = [{ between: [x, y] as const, coefficient: 0.25 }]
    expect(correlationCoefficient(x, y, { correlations })).toBeCloseTo(0.25, 12)
    expect(correlationCoefficient(y, x, { correlations })).toBeCloseTo(0.25, 12)
  })
})
