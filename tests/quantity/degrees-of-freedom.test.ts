import { describe, expect, it } from 'vitest'
import { degreesOfFreedomFromReliability, effectiveDegreesOfFreedom } from '../../src/quantity/index.js'
import { refusal } from './refusal.js'

describe('effective degrees of freedom', () => {
  const one = { standard: 0.2, degreesOfFreedom: 7 }
  it.each([
    { what: 'of one component are its own', components: [one], is: 7 },
    { what: 'of two alike are twice as many', components: [one, one], is: 14 },
    { what: 'do not mind the sign', components: [one, { standard: -0.2, degreesOfFreedom: 7 }], is: 14 },
    { what: 'of unlimited ones are unlimited', components: [{ standard: 1 }], is: Number.POSITIVE_INFINITY },
    {
      what: 'of none that contributes are unlimited',
      components: [{ standard: 0, degreesOfFreedom: 3 }],
      is: Number.POSITIVE_INFINITY,
    },
    { what: 'of nothing are unlimited', components: [], is: Number.POSITIVE_INFINITY },
  ])('$what', ({ components, is }) => expect(effectiveDegreesOfFreedom(components)).toBeCloseTo(is, 9))

  it('from a combined uncertainty that was rounded', () => {
    expect(effectiveDegreesOfFreedom([one], 0.4)).toBeCloseTo(7 * 16, 9)
  })

  it('from the reliability of a judgement', () => {
    expect(degreesOfFreedomFromReliability(0.25)).toBe(8)
    expect(degreesOfFreedomFromReliability(0.5)).toBe(2)
  })

  it.each([
    { call: () => effectiveDegreesOfFreedom(null as never) },
    { call: () => effectiveDegreesOfFreedom([null] as never) },
    { call: () => effectiveDegreesOfFreedom([{ standard: Number.NaN }]) },
    { call: () => effectiveDegreesOfFreedom([{ standard: '1' as never }]) },
    { call: () => effectiveDegreesOfFreedom([{ standard: 1, degreesOfFreedom: 0 }]) },
    { call: () => effectiveDegreesOfFreedom([{ standard: 1, degreesOfFreedom: Number.NaN }]) },
    { call: () => effectiveDegreesOfFreedom([one], 0) },
    { call: () => effectiveDegreesOfFreedom([one], Number.NaN) },
    { call: () => degreesOfFreedomFromReliability(0) },
    { call: () => degreesOfFreedomFromReliability('25 %' as never) },
  ])('refuses $call', ({ call }) => expect(refusal(call).code).toBe('quantity/bad-coverage'))
})
