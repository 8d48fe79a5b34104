import { describe, expect, it } from 'vitest'
import { compositionFromAssays } from '../../src/product/index.js'
import { refusal } from '../quantity/refusal.js'

describe('a composition from several assays', () => {
  const ferrioxalate = [
    { of: 'Fe^3+', massFraction: '11.3 %' },
    { of: 'C2O4^2-', massFraction: '53.9 %' },
    { of: 'H2O', massFraction: '11.0 %' },
  ] as const

  it('gives amounts in 100 g and mole ratios to the least', () => {
    const { constituents } = compositionFromAssays(ferrioxalate)
    expect(constituents.map(({ of }) => of)).toEqual(['Fe^3+', 'C2O4^2-', 'H2O'])
    expect(constituents.map(({ amount }) => amount.toString())).toEqual(['0.202 mol', '0.612 mol', '0.611 mol'])
    expect(constituents.map(({ ratio }) => ratio.toString())).toEqual(['1.00', '3.03', '3.02'])
    expect(constituents[1]?.ratio.naming.label).toBe('moles of C2O4^2- per mole of Fe^3+')
  })

  it('finds the least wherever it stands', () => {
    const { constituents } = compositionFromAssays([...ferrioxalate].reverse())
    expect(constituents.map(({ ratio }) => ratio.toString())).toEqual(['3.02', '3.03', '1.00'])
  })

  it('leaves the remainder as it is', () => {
    const { total, remainder } = compositionFromAssays(ferrioxalate)
    expect([total, remainder].map(String)).toEqual(['76.2 %', '23.8 %'])
    const over = compositionFromAssays([
      { of: 'Zn', massFraction: '0.60' },
      { of: 'S', massFraction: '0.45' },
    ])
    expect(over.remainder.toString()).toBe('-5 %')
  })

  it('takes other atomic weights', () => {
    expect(compositionFromAssays(ferrioxalate, { weights: 'standard' }).constituents[1]?.ratio.toString()).toBe('3.03')
  })

  it('is refused with options that are none', () => {
    expect(refusal(() => compositionFromAssays(ferrioxalate, 5 as never)).code).toBe('product/not-an-object')
  })

  it.each([
    { what: 'no list', findings: {}, code: 'product/not-a-list' },
    { what: 'no finding', findings: [], code: 'product/nothing-weighed' },
    { what: 'a finding that is none', findings: ['11 %'], code: 'product/not-an-object' },
    { what: 'nothing found', findings: [{ of: 'Fe', massFraction: '0 %' }], code: 'product/not-positive' },
    { what: 'a mass', findings: [{ of: 'Fe', massFraction: '1 g' }], code: 'quantity/wrong-dimension' },
  ])('is refused with $what', ({ findings, code }) => {
    expect(refusal(() => compositionFromAssays(findings as never)).code).toBe(code)
  })
})
