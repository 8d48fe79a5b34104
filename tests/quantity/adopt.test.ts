import { describe, expect, it, vi } from 'vitest'
import { isQuantity, mean, quantity, weightedSum } from '../../src/quantity/index.js'
import { refusal } from './refusal.js'

/** A second copy of the library, as a program gets it that loads the package in two module formats. */
async function anotherCopy(): Promise<typeof import('../../src/quantity/index.js')> {
  vi.resetModules()
  return import('../../src/quantity/index.js')
}

describe('a quantity of another copy of the library', () => {
  it('is a quantity, and calculates with ours', async () => {
    const other = await anotherCopy()
    const foreign = other.quantity('11.204 g', { label: 'tare' })
    expect(other.quantity).not.toBe(quantity)
    expect(isQuantity(foreign)).toBe(true)
    const net = quantity('18.632 g').minus(foreign)
    expect(net.toString()).toBe('7.428 g')
    expect(net.operands[1]?.naming).toEqual({ label: 'tare' })
  })

  it('stays the same measurement, wherever it is used', async () => {
    const other = await anotherCopy()
    const foreign = other.quantity('11.204 g')
    const [a, b] = [quantity('18.632 g').minus(foreign), quantity('19.027 g').minus(foreign)]
    expect(a.operands[1]).toBe(b.operands[1])
    expect(a.operands[1]?.input).toBe(foreign.input)
  })

  it('brings its whole calculation with it', async () => {
    const other = await anotherCopy()
    const molar = other.weightedSum([
      { times: 2, of: other.constant('1.0080 g/mol') },
      { times: 1, of: other.constant('15.999 g/mol') },
    ])
    const amount = other.quantity('1.8015 g').dividedBy(molar)
    const rounded = other.roundTo(other.mean([amount.to('mmol'), amount.to('mmol')]), { figures: 3 })
    const ours = mean([rounded])
    expect(ours.toString()).toBe(rounded.toString())
    expect(ours.value.eq(rounded.value)).toBe(true)
    expect(ours.significantFigures).toBe(3)
  })
})

const brand = Symbol.for('saltwright.quantity')
const input = { kind: 'measured', writtenPlace: -1, ambiguous: false, uncertainty: undefined, id: undefined }
const fake = { [brand]: true, value: 1.5, unit: 'g', rule: 'input', operands: [], settings: {}, input, naming: {} }
const ring: Record<string | symbol, unknown> = { ...fake, rule: 'sum' }
ring.operands = [ring]

describe('whatever only looks like a quantity', () => {
  it.each([
    ['nothing but the mark', { [brand]: true }],
    ['an unknown unit', { ...fake, unit: 'gm' }],
    ['a unit from the prototype', { ...fake, unit: 'toString' }],
    ['no number', { ...fake, value: Number.NaN }],
    ['an infinite number', { ...fake, value: Number.POSITIVE_INFINITY }],
    ['a text', { ...fake, value: 'much' }],
    ['no facts', { ...fake, input: undefined }],
    ['facts of an unknown kind', { ...fake, input: { ...input, kind: 'guessed' } }],
    ['facts without a place', { ...fake, input: { ...input, writtenPlace: 'last' } }],
    ['names that are none', { ...fake, naming: { label: 5 } }],
    ['an unknown rule', { ...fake, rule: 'guess' }],
    ['a rule from the prototype', { ...fake, rule: 'constructor' }],
    ['an operand that is none', { ...fake, rule: 'sum', operands: [5] }],
    ['no operands', { ...fake, rule: 'sum', operands: undefined }],
    ['too few operands', { ...fake, rule: 'difference', operands: [fake] }],
    ['settings that are missing', { ...fake, rule: 'conversion', operands: [fake] }],
    ['itself as its operand', ring],
    [
      'a getter that throws',
      {
        ...fake,
        get value() {
          throw new Error('no')
        },
      },
    ],
  ])('%s is refused', (_, value) => {
    expect(refusal(() => quantity('1.0 g').plus(value as never)).code).toBe('quantity/not-a-quantity')
  })

  it('one that is complete in every part is one', () => {
    expect(
      quantity('1.0 g')
        .plus(fake as never)
        .toString(),
    ).toBe('2.5 g')
  })

  it('a child of a quantity is a copy of it', () => {
    const own = quantity('1.0 g')
    expect(own.plus(Object.create(own) as typeof own).toString()).toBe('2.0 g')
  })

  it('a proxy that answers nothing is none', () => {
    const silent = new Proxy(
      {},
      {
        get() {
          throw new Error('no')
        },
      },
    )
    expect(isQuantity(silent)).toBe(false)
    expect(refusal(() => weightedSum([{ times: 1, of: silent as never }])).code).toBe('quantity/not-a-quantity')
  })
})
