import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { overallYield, percentRecovery, percentYield } from '../../src/product/index.js'
import { exact, quantity } from '../../src/quantity/index.js'
import { refusal } from '../quantity/refusal.js'

describe('a percent yield', () => {
  it.each([
    { actual: '0.392 g', theoretical: '0.5072 g', percent: '77.3 %' },
    { actual: '0.0200 mol', theoretical: '0.0250 mol', percent: '80.0 %' },
    { actual: '20.0 mmol', theoretical: '0.0250 mol', percent: '80.0 %' },
    { actual: '4.57 g', theoretical: '2.83 g', percent: '161 %' },
    { actual: '0.000 g', theoretical: '2.83 g', percent: '0.0 %' },
    { actual: '-0.010 g', theoretical: '2.83 g', percent: '-0.35 %' },
  ] as const)('of $actual in $theoretical is $percent', ({ actual, theoretical, percent }) => {
    expect(percentYield<'mass' | 'amount'>(actual as '1 g', theoretical as '1 g').toString()).toBe(percent)
  })

  it('takes amounts as quantities', () => {
    expect(percentYield(quantity('0.0200 mol'), exact('0.0250 mol')).toString()).toBe('80.0 %')
  })

  it.each([
    { actual: ' 0.0200 mol ', theoretical: '0.0250 mol', percent: '80.0 %' },
    { actual: ' 0.0200 g ', theoretical: '0.0250 g', percent: '80.0 %' },
  ])('reads text with spaces around it: $actual', ({ actual, theoretical, percent }) => {
    expect(percentYield(actual as '1 g', theoretical as '1 g').toString()).toBe(percent)
  })

  it('counts only what is pure', () => {
    expect(percentYield('9.113 g', '11.501 g', { purity: '98.0 %' }).toString()).toBe('77.7 %')
    expect(percentYield('9.113 g', '11.501 g', { purity: exact(1) }).toString()).toBe('79.24 %')
  })

  it('gives its parts their roles', () => {
    const found = percentYield(quantity('9.113 g', { label: 'vial 7', role: 'net' }), '11.501 g', { purity: '98.0 %' })
    expect(found.naming).toMatchObject({ label: 'percent yield', role: 'percent yield' })
    const roles = JSON.stringify(rolesOf(found))
    for (const role of ['actual yield', 'theoretical yield', 'purity']) expect(roles).toContain(role)
  })

  it('is independent of the unit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10_000 }), fc.integer({ min: 1, max: 10_000 }), (a, b) => {
        const grams = percentYield(exact(`${a} g`), exact(`${b} g`))
        expect(percentYield(exact(`${a} g`), exact(`${b} g`).to('mg')).equals(grams)).toBe(true)
      }),
    )
  })

  it.each([
    { what: 'nothing possible', call: () => percentYield('1 g', '0 g'), code: 'product/not-positive' },
    { what: 'no purity', call: () => percentYield('1 g', '2 g', { purity: '0 %' }), code: 'product/not-positive' },
    { what: 'two bases', call: () => percentYield('1 g', '2 mol' as never), code: 'quantity/wrong-dimension' },
    { what: 'volumes', call: () => percentYield('1 mL' as never, '2 mL' as never), code: 'quantity/wrong-dimension' },
    { what: 'nothing', call: () => percentYield(undefined as never, '2 g'), code: 'quantity/not-text' },
    { what: 'a bare number', call: () => percentYield(5 as never, '2 g'), code: 'quantity/javascript-number' },
    {
      what: 'options that are none',
      call: () => percentYield('1 g', '2 g', '98 %' as never),
      code: 'product/not-an-object',
    },
  ])('is refused for $what', ({ call, code }) => expect(refusal(call).code).toBe(code))
})

function rolesOf(q: ReturnType<typeof percentYield> | { naming: object; operands: readonly unknown[] }): unknown {
  return [q.naming, ...(q.operands as readonly { naming: object; operands: readonly unknown[] }[]).map(rolesOf)]
}

describe('a recovery', () => {
  it.each([
    { recovered: '0.0672 g', start: '0.0856 g', percent: '78.5 %' },
    { recovered: '0.0100 mol', start: '0.0125 mol', percent: '80.0 %' },
  ] as const)('of $recovered from $start is $percent', ({ recovered, start, percent }) => {
    expect(percentRecovery<'mass' | 'amount'>(recovered as '1 g', start as '1 g').toString()).toBe(percent)
  })

  it('is refused where there was nothing', () => {
    expect(refusal(() => percentRecovery('1 g', '0 g')).code).toBe('product/not-positive')
  })
})

describe('an overall yield', () => {
  it('says where nothing is to take it from', () => {
    expect(refusal(() => overallYield([])).found).toBe('an empty list')
  })

  it.each([
    { steps: ['92.1 %'], percent: '92.1 %' },
    { steps: ['92.1 %', '75.0 %'], percent: '69.1 %' },
    { steps: ['0.900', '0.900', '0.900'], percent: '72.9 %' },
  ] as const)('of $steps is $percent', ({ steps, percent }) => expect(overallYield(steps).toString()).toBe(percent))

  it.each([
    { what: 'no step', steps: [], code: 'product/nothing-weighed' },
    { what: 'no list', steps: '92 %', code: 'product/not-a-list' },
  ])('is refused with $what', ({ steps, code }) => {
    expect(refusal(() => overallYield(steps as never)).code).toBe(code)
  })
})
