import { describe, expect, it } from 'vitest'
import { lossAccount } from '../../src/product/index.js'
import { quantity } from '../../src/quantity/index.js'
import { refusal } from '../quantity/refusal.js'

const facts = { theoretical: '11.502 g', recovered: '7.428 g', leftInLiquor: '3.18 g', washedAway: '0.50 g' } as const
const lines = (given: Parameters<typeof lossAccount>[0]) =>
  lossAccount(given).map(({ item, mass, share }) => `${item}: ${mass}, ${share}`)

describe('a loss account', () => {
  it('goes from the theoretical yield to what nobody can explain, in grams and per cent', () => {
    expect(lines(facts)).toEqual([
      'theoretical: 11.502 g, 100.00 %',
      'left in liquor: 3.18 g, 27.6 %',
      'washed away: 0.50 g, 4.3 %',
      'recovered: 7.428 g, 64.58 %',
      'unexplained: 0.39 g, 3.4 %',
    ])
  })

  it('says which lines are estimates', () => {
    expect(lossAccount(facts).map(({ kind }) => kind)).toEqual([
      'calculated',
      'estimate',
      'estimate',
      'measured',
      'remainder',
    ])
  })

  it('leaves a line open where nothing is known, which is not zero', () => {
    const account = lossAccount({ theoretical: '11.502 g', recovered: '7.428 g' })
    expect(account[1]).toEqual({ item: 'left in liquor', kind: 'estimate', mass: undefined, share: undefined })
    expect(account[4]?.mass?.toString()).toBe('4.074 g')
  })

  it('is below zero where more is accounted for than there was', () => {
    expect(lines({ ...facts, recovered: '9.000 g' })[4]).toBe('unexplained: -1.18 g, -10.2 %')
  })

  it('keeps the names that numbers have, and gives them to those that have none', () => {
    const recovered = quantity('7.428 g', { label: 'vial 7' })
    const account = lossAccount({ ...facts, recovered })
    expect(account.map(({ mass }) => mass?.naming.label)).toEqual([
      'theoretical',
      'left in liquor',
      'washed away',
      'vial 7',
      'unexplained',
    ])
  })

  it.each([
    { what: 'nothing', given: null, code: 'product/not-an-object' },
    { what: 'nothing possible', given: { ...facts, theoretical: '0 g' }, code: 'product/not-positive' },
    { what: 'an amount recovered', given: { ...facts, recovered: '0.1 mol' }, code: 'quantity/wrong-dimension' },
  ])('is refused with $what', ({ given, code }) => {
    expect(refusal(() => lossAccount(given as never)).code).toBe(code)
  })
})
