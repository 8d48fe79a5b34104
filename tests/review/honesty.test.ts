import { describe, expect, it } from 'vitest'
import { measure, totalOf } from './honesty.js'
import { honestyPage } from './honesty-page.js'

const measured = measure()

describe('over all recipes at random scales', () => {
  it.each([
    { figures: 4, least: 0.95 },
    { figures: 3, least: 0.85 },
  ] as const)('a slip stated to $figures figures is found in at least $least of the cases', ({ figures, least }) => {
    const { tied, simulated } = totalOf(measured.at[figures].slips.values())
    expect(simulated).toBeGreaterThan(1000)
    expect(tied / simulated).toBeGreaterThanOrEqual(least)
  })

  it.each([
    { figures: 4, most: 0.01 },
    { figures: 3, most: 0.05 },
  ] as const)(
    'a number that means nothing, stated to $figures figures, is put down to a slip in at most $most',
    (row) => {
      const { blamed, stated } = measured.at[row.figures].random
      expect(stated).toBeGreaterThan(1000)
      expect(blamed / stated).toBeLessThanOrEqual(row.most)
    },
  )

  it('a right answer is never faulted, rounded by either rule', () => {
    expect(measured.right.faulted).toEqual([])
  })

  it('the page of the documentation is current', async () => {
    await expect(honestyPage(measured)).toMatchFileSnapshot('../../docs/honesty.md')
  })
})
