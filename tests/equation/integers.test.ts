import { describe, expect, it } from 'vitest'
import { smallCommonDivisor, withoutCommonDivisor } from '../../src/equation/integers.js'

describe('whole numbers', () => {
  it.each([
    [0, 0, 0],
    [12, 18, 6],
    [-12, 18, 6],
    [7, 0, 7],
    // at the bounds of 32 bits, and above
    [6, 2 ** 31, 2],
    [2 ** 31, 6, 2],
    [2 ** 31 - 1, 2 ** 31 - 1, 2 ** 31 - 1],
    [2 ** 40, 3 * 2 ** 20, 2 ** 20],
    [6, 2 ** 40, 2],
  ])('%i and %i share %i', (a, b, divisor) => expect(smallCommonDivisor(a, b)).toBe(divisor))

  it.each([
    { values: [6n, -4n, 0n], without: [3n, -2n, 0n] },
    { values: [2n, 3n], without: [2n, 3n] },
    { values: [0n, 0n], without: [0n, 0n] },
    { values: [], without: [] },
  ])('$values without what they share are $without', ({ values, without }) => {
    expect(withoutCommonDivisor(values)).toEqual(without)
  })
})
