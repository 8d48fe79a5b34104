import { describe, expect, it } from 'vitest'
import { constant, exact, type Quantity, quantity } from '../../src/quantity/index.js'
import { nodeOf } from '../../src/quantity/node.js'
import { testOf } from '../../src/quantity/select.js'
import { refusal } from './refusal.js'

const mass = quantity('3.98 g', { label: 'oxide', symbol: 'm', of: 'ZnO', role: 'mass', id: 'w1' })
const molar = constant('81.379 g/mol', { symbol: 'M', of: 'ZnO', role: 'molar mass' })
const amount = mass.dividedBy(molar)

describe('which quantities are meant', () => {
  it.each<{ which: unknown; meant: Quantity; not: Quantity }>([
    { which: { label: 'oxide' }, meant: mass, not: molar },
    { which: { symbol: 'M', of: 'ZnO' }, meant: molar, not: mass },
    { which: { role: 'mass' }, meant: mass, not: amount },
    { which: { id: 'w1' }, meant: mass, not: molar },
    { which: { kind: 'constant' }, meant: molar, not: mass },
    { which: { kind: 'measured', of: 'ZnO' }, meant: mass, not: molar },
    { which: { rule: 'quotient' }, meant: amount, not: mass },
    { which: { rule: 'input', label: undefined }, meant: molar, not: amount },
    { which: (q: { unit: string }) => q.unit === 'g/mol', meant: molar, not: mass },
    { which: mass, meant: mass.named({ label: 'again' }), not: quantity('3.98 g') },
    { which: mass, meant: quantity('3.98 g', { id: 'w1' }), not: amount },
    { which: amount, meant: amount.named({ symbol: 'n' }), not: mass.dividedBy(molar) },
  ])('$which', ({ which, meant, not }) => {
    const isMeant = testOf(which)
    expect(isMeant(nodeOf(meant))).toBe(true)
    expect(isMeant(nodeOf(not))).toBe(false)
  })

  it('two numbers that look the same are two', () => expect(testOf(exact(2))(nodeOf(exact(2)))).toBe(false))

  it.each<unknown>([null, undefined, 'oxide', 5, {}, { label: undefined }, { name: 'oxide' }, { constructor: 'x' }])(
    '%j says nothing',
    (which) => expect(refusal(() => testOf(which)).code).toBe('quantity/bad-change'),
  )
})
