import { describe, expect, it } from 'vitest'
import { readRatio } from '../../src/product/read-ratio.js'
import { sameEverywhere } from '../../src/product/same-everywhere.js'
import { exact } from '../../src/quantity/index.js'
import { refusal } from '../quantity/refusal.js'

describe('a mole ratio that is written', () => {
  it.each([
    ['1', 1n, 1n],
    ['1000', 1000n, 1n],
    [' 2 / 6 ', 1n, 3n],
    ['1/1000', 1n, 1000n],
    ['0009', 9n, 1n],
  ])('%s', (text, numerator, denominator) => expect(readRatio(text)).toEqual({ numerator, denominator }))

  it.each([
    '',
    ' ',
    '/',
    '1/',
    '/2',
    '0/1',
    '1/0',
    '1:2',
    '1 2',
    '/9',
    '9:',
    '1001',
    '1/1001',
    '00001',
    '1/2/3',
    '1.5',
    '-1',
  ])('"%s" is none', (text) => {
    expect(refusal(() => readRatio(text))).toMatchObject({
      code: 'product/unreadable-ratio',
      found: `"${text}"`,
      expected: 'whole numbers from 1 to 1000: "2" or "1/3"',
    })
  })
})

describe('numbers are the same everywhere', () => {
  it.each([
    { numbers: [9.5, 10.5], same: true }, // apart by a tenth of their mean
    { numbers: [9.4, 10.5], same: false },
    { numbers: [10, 10.2, 9.8], same: true },
    { numbers: [10, 10, 12], same: false },
    { numbers: [10], same: false },
    { numbers: [], same: false },
    { numbers: [0, 0], same: false },
    { numbers: [-10, -10], same: false },
    { numbers: [10, -0.1], same: false },
  ])('$numbers: $same', ({ numbers, same }) => {
    expect(sameEverywhere(numbers.map((number) => exact(number)))).toBe(same)
  })
})
