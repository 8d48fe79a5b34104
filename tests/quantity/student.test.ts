import { describe, expect, it } from 'vitest'
import { studentQuantile } from '../../src/quantity/student.js'

/** Closed forms of the share within t either side for one, two and four degrees of freedom. */
const closed: Readonly<Record<number, (t: number) => number>> = {
  1: (t) => (2 / Math.PI) * Math.atan(t),
  2: (t) => t / Math.sqrt(2 + t * t),
  4: (t) => {
    const cosine = 2 / Math.sqrt(4 + t * t)
    const sine = t / Math.sqrt(4 + t * t)
    return sine * (1 + cosine ** 2 / 2)
  },
}

describe('the two-sided quantile of Student’s t', () => {
  it.each([1, 2, 4])('undoes the closed form for %s degrees of freedom', (degrees) => {
    for (const level of [0.001, 0.1, 0.5, 0.6827, 0.9, 0.95, 0.99, 0.9973, 0.9999]) {
      expect(closed[degrees]?.(studentQuantile(level, degrees))).toBeCloseTo(level, 13)
    }
  })

  it.each([
    { level: 0.95, z: 1.959963984540054 },
    { level: 0.99, z: 2.5758293035489004 },
    { level: 0.5, z: 0.6744897501960817 },
  ])('is $z for a normal distribution at $level', ({ level, z }) => {
    expect(studentQuantile(level, Number.POSITIVE_INFINITY)).toBeCloseTo(z, 12)
  })

  it('is continuous where the expansion takes over', () => {
    for (const level of [0.5, 0.95, 0.9999, 0.999999]) {
      const [below, above] = [studentQuantile(level, 1000), studentQuantile(level, 1000.000001)]
      expect(Math.abs(below - above)).toBeLessThan(1e-8)
    }
  })

  it('falls with the degrees of freedom', () => {
    const falling = [1, 1.5, 2, 3.7, 10, 100, 999, 1001, 1e6, 1e300, Number.POSITIVE_INFINITY]
    const factors = falling.map((degrees) => studentQuantile(0.95, degrees))
    expect([...factors].sort((a, b) => b - a)).toEqual(factors)
  })

  it('is a number at the very ends', () => {
    for (const level of [1e-300, 1 - 2 ** -53]) {
      for (const degrees of [1, 5, 1000, 1e9, Number.POSITIVE_INFINITY]) {
        expect(studentQuantile(level, degrees)).toBeGreaterThanOrEqual(0)
      }
    }
  })
})
