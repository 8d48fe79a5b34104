import { describe, expect, it } from 'vitest'
import { coverageFactor, expandedUncertainty, type Quantity, quantity } from '../../src/quantity/index.js'
import { refusal } from './refusal.js'

const mass = quantity('100.02147(35) g')
const few = (degreesOfFreedom: number): Quantity<'mass'> =>
  quantity('3.00 g', { uncertainty: { standard: '0.10 g', degreesOfFreedom } })

describe('an expanded uncertainty', () => {
  it('by a coverage factor', () => {
    const expanded = expandedUncertainty(mass, { coverageFactor: '2' })
    expect(expanded.expandedUncertainty.toString()).toBe('0.00070 g')
    expect(expanded).toMatchObject({ coverageFactor: 2, level: undefined, degreesOfFreedom: undefined })
  })

  it.each([
    { q: mass, level: 0.95, k: '1.960', degrees: Number.POSITIVE_INFINITY },
    { q: few(4), level: 0.95, k: '2.776', degrees: 4 },
    { q: few(4.9), level: 0.95, k: '2.776', degrees: 4 },
    { q: few(4.9999999999), level: 0.95, k: '2.571', degrees: 5 },
  ])('by a level: k is $k for $degrees degrees of freedom', ({ q, level, k, degrees }) => {
    const expanded = expandedUncertainty(q, { level })
    expect(expanded.coverageFactor.toFixed(3)).toBe(k)
    expect(expanded.degreesOfFreedom).toBe(degrees)
    expect(expanded.level).toBe(level)
  })

  it('keeps a fraction of degrees of freedom if asked to', () => {
    const expanded = expandedUncertainty(few(4.9), { level: 0.95, fractionalDegrees: 'keep' })
    expect(expanded.degreesOfFreedom).toBeCloseTo(4.9, 12)
    expect(expanded.coverageFactor).toBeCloseTo(coverageFactor(0.95, 4.9), 9)
  })

  it('of degrees Celsius is in kelvins', () => {
    expect(expandedUncertainty(quantity('25.0(2) degC'), { coverageFactor: '2' }).expandedUncertainty.unit).toBe('K')
  })
})

describe('what is refused', () => {
  const [a, b] = [few(4), few(9)]
  const correlations = [{ between: [a, b] as const, coefficient: 0.5 }]
  it.each([
    { call: () => expandedUncertainty(mass, null as never), code: 'quantity/bad-coverage' },
    { call: () => expandedUncertainty(mass, {} as never), code: 'quantity/bad-coverage' },
    { call: () => expandedUncertainty(mass, { level: 1 }), code: 'quantity/bad-coverage' },
    { call: () => expandedUncertainty(mass, { level: 0 }), code: 'quantity/bad-coverage' },
    { call: () => expandedUncertainty(mass, { level: 95 }), code: 'quantity/bad-coverage' },
    { call: () => expandedUncertainty(mass, { level: '0.95' as never }), code: 'quantity/bad-coverage' },
    { call: () => expandedUncertainty(mass, { level: Number.NaN }), code: 'quantity/bad-coverage' },
    {
      call: () => expandedUncertainty(mass, { level: 0.95, fractionalDegrees: 'round' as never }),
      code: 'quantity/bad-coverage',
    },
    { call: () => expandedUncertainty(mass, { coverageFactor: 2 as never }), code: 'quantity/javascript-number' },
    { call: () => expandedUncertainty(mass, { coverageFactor: '-2' }), code: 'quantity/bad-uncertainty' },
    { call: () => expandedUncertainty(a.plus(b), { level: 0.95 }, { correlations }), code: 'quantity/bad-coverage' },
    { call: () => expandedUncertainty(few(0.5), { level: 0.95 }), code: 'quantity/bad-coverage' },
    { call: () => expandedUncertainty(1 as never, { level: 0.95 }), code: 'quantity/not-a-quantity' },
    { call: () => coverageFactor(2), code: 'quantity/bad-coverage' },
    { call: () => coverageFactor(0.95, 0), code: 'quantity/bad-coverage' },
    { call: () => coverageFactor(0.95, Number.NaN), code: 'quantity/bad-coverage' },
    { call: () => coverageFactor(0.95, '5' as never), code: 'quantity/bad-coverage' },
  ])('$code', ({ call, code }) => expect(refusal(call).code).toBe(code))
})
