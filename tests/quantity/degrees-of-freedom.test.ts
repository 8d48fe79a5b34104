import { describe, expect, it } from 'vitest'
import { combinedDegrees } from '../../src/quantity/degrees-of-freedom.js'

describe('effective degrees of freedom', () => {
  it('of one component are its own', () => {
    expect(combinedDegrees([{ standard: 0.2, degreesOfFreedom: 7 }])).toBeCloseTo(7, 12)
  })

  it('of two alike are twice as many', () => {
    const one = { standard: 0.2, degreesOfFreedom: 7 }
    expect(combinedDegrees([one, one])).toBeCloseTo(14, 12)
  })

  it('are unlimited where no component is limited, or none contributes', () => {
    expect(combinedDegrees([{ standard: 1, degreesOfFreedom: undefined }])).toBe(Number.POSITIVE_INFINITY)
    expect(combinedDegrees([{ standard: 0, degreesOfFreedom: 3 }])).toBe(Number.POSITIVE_INFINITY)
    expect(combinedDegrees([])).toBe(Number.POSITIVE_INFINITY)
  })
})
