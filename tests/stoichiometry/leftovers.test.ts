import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exact, quantity } from '../../src/quantity/index.js'
import { leftovers } from '../../src/stoichiometry/index.js'
import { refusal } from '../quantity/refusal.js'

const aluminium = '2Al + 6HCl -> 2AlCl3 + 3H2'

describe('what is left', () => {
  it('of each supply', () => {
    const all = leftovers(aluminium, { HCl: '0.20 mol', Al: '0.05 mol' })
    expect(
      all.map(({ formula, supplied, used, left }) => [formula, String(supplied), String(used), String(left)]),
    ).toEqual([
      ['Al', '0.05 mol', '0.05 mol', '0 mol'],
      ['HCl', '0.20 mol', '0.15 mol', '0.05 mol'],
    ])
  })

  it('of measured supplies has their places', () => {
    const [, acid] = leftovers(aluminium, { Al: quantity('0.0500 mol'), HCl: quantity('0.200 mol') })
    expect(acid?.used.toString()).toBe('0.150 mol')
    expect(acid?.left.toString()).toBe('0.050 mol')
  })

  it('is nothing where thirds leave crumbs of the last digits', () => {
    const [acid, metal] = leftovers('6HCl + 2Al -> 2AlCl3 + 3H2', {
      HCl: '0.07 mol',
      Al: exact('0.07 mol').dividedBy(exact(3)),
    })
    expect(acid?.left.value.isZero()).toBe(true)
    expect(metal?.left.value.isZero()).toBe(true)
  })

  it('is named', () => {
    const [, acid] = leftovers(aluminium, { HCl: '0.20 mol', Al: '0.05 mol' })
    expect(acid?.used.naming.label).toBe('amount of HCl that reacts')
    expect(acid?.left.naming).toEqual({ label: 'amount of HCl left over', symbol: 'n', of: 'HCl', role: 'amount' })
    expect(acid?.used.operands.map(({ naming }) => naming.role)).toEqual(['amount', 'mole ratio'])
  })
})

describe('laws', () => {
  const amount = fc.integer({ min: 0, max: 100_000 }).map((n) => exact(`${n} umol` as '1 umol'))
  it('something is used up, and nothing is left below zero', () => {
    fc.assert(
      fc.property(amount, amount, (Al, HCl) => {
        const all = leftovers(aluminium, { Al, HCl })
        expect(all.some(({ left }) => left.value.isZero())).toBe(true)
        expect(all.every(({ left }) => !left.value.lt(0))).toBe(true)
      }),
    )
  })
})

it('nothing to react is refused', () => {
  expect(refusal(() => leftovers(aluminium, {})).code).toBe('stoichiometry/nothing-limits')
})
