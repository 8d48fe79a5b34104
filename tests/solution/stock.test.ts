import { describe, expect, it } from 'vitest'
import { exact } from '../../src/quantity/index.js'
import { amountConcentration, stockFor, stockReagent, stockReagents } from '../../src/solution/index.js'
import { refusal } from '../quantity/refusal.js'

const stock = { massFraction: '96.0 %', density: '1.84 g/mL' } as const
const request = { substance: 'H2SO4', concentration: '3 mol/L', volume: '500 mL', stock } as const

describe('how much of the bottle on the shelf', () => {
  it('by volume and by mass', () => {
    const acid = stockFor(request)
    expect(acid.stock.toString()).toBe('83.3 mL')
    expect(acid.mass.toString()).toBe('153 g')
    expect(acid.mass.naming).toEqual({ label: 'mass of stock of H2SO4', symbol: 'm', of: 'H2SO4', role: 'mass' })
    expect(acid.from.toString()).toBe('18.0 mol/L')
    expect(acid.order).toBe('acid into water')
  })

  it('to more digits where the label counts as exact', () => {
    const exactly = { massFraction: exact('96 %'), density: exact('1.84 g/mL') }
    expect(stockFor({ ...request, stock: exactly }).stock.toString()).toBe('83.28 mL')
  })

  it('on the basis that the label states', () => {
    const ammonia = { massFraction: '56.6 %', basis: 'NH4OH', density: '0.900 g/mL' } as const
    const made = stockFor({ substance: 'NH3', concentration: '6 mol/L', volume: '100 mL', stock: ammonia })
    expect(made.stock.toString()).toBe('41.3 mL')
    expect(made.order).toBe('alkali into water')
  })

  it('from a strength of the table', () => {
    const [usual] = stockReagent('HCl').strengths
    const made = stockFor({ substance: 'HCl', concentration: '2 mol/L', volume: '1 L', stock: usual ?? stock })
    expect(made.stock.to('mL').toString()).toBe('166 mL')
  })
})

describe('the table of stock reagents', () => {
  it.each(['sulfuric acid', 'H2SO4'])('knows %s', (name) => expect(stockReagent(name).formula).toBe('H2SO4'))
  it('names the source of every strength, and what is from memory', () => {
    const strengths = stockReagents.flatMap((reagent) => reagent.strengths)
    expect(strengths.length).toBe(48)
    expect(strengths.every(({ source }) => source.length > 20)).toBe(true)
    const remembered = strengths.filter(({ source }) => source.includes('from memory'))
    expect(remembered).toEqual(strengths.filter(({ fromMemory }) => fromMemory))
  })
  it('has strengths that can be calculated', () => {
    for (const { formula, strengths } of stockReagents)
      for (const strength of strengths)
        expect(amountConcentration({ ...strength, substance: formula }).value.gt(5)).toBe(true)
  })
})

describe('what is refused', () => {
  it.each([
    { change: { concentration: '20 mol/L' }, code: 'solution/cannot-concentrate' },
    { change: { stock: { massFraction: '96 %' } }, code: 'quantity/not-text' },
    { change: { stock: { ...stock, density: '0 g/mL' } }, code: 'solution/not-above-zero' },
    { change: { stock: null }, code: 'solution/not-an-object' },
    { change: { volume: '-5 mL' }, code: 'solution/not-above-zero' },
    { change: { substance: '' }, code: 'formula/empty' },
  ])('$change: $code', ({ change, code }) => {
    expect(refusal(() => stockFor({ ...request, ...change } as never)).code).toBe(code)
  })
  it('a reagent that is not in the table, with those that are', () => {
    expect(refusal(() => stockReagent('aqua fortis'))).toMatchObject({
      found: '"aqua fortis"',
      expected: expect.stringMatching(/^H2SO4, HCl, /),
    })
  })
  it('no request', () => expect(refusal(() => stockFor(undefined as never)).code).toBe('solution/not-an-object'))
  it.each(['aqua fortis', '', '__proto__', 'toString', null, 5])('a reagent called %s', (name) => {
    expect(refusal(() => stockReagent(name as never)).code).toBe('solution/unknown-stock')
  })
})
