import { describe, expect, it } from 'vitest'
import { constantMass, explainYield, type YieldFacts } from '../../src/product/index.js'
import { exact, quantity } from '../../src/quantity/index.js'
import { refusal } from '../quantity/refusal.js'

const over: YieldFacts = { actual: '12.62 g', theoretical: '11.50 g' }
const codes = (facts: YieldFacts) => explainYield(facts).map(({ code, support }) => `${code}: ${support}`)
const drying = (weighings: readonly `${number} g`[]) => constantMass({ weighings, criterion: 'ph-eur' })

describe('a yield over 100 %', () => {
  it('may have the numbers swapped, water or other salts, where nothing else is known', () => {
    expect(codes(over)).toEqual(['numbers-swapped: possible', 'not-constant-mass: possible', 'other-salts: possible'])
    expect(explainYield(over).map(({ message }) => message)).toEqual([
      'If the two masses are swapped, the yield is 91.13 %.',
      'Nothing shows that the product was dry.',
      'Other salts may have come down with the product.',
    ])
  })

  it('is explained with the numbers behind each explanation', () => {
    const numbers = (facts: YieldFacts) =>
      explainYield(facts).map(
        (each) => `${each.code}: ${Object.entries(each.numbers).map(([name, number]) => `${name} ${number}`)}`,
      )
    expect(numbers({ ...over, mayBeIncluded: ['1.12 g'], drying: drying(['12.7000 g', '12.6200 g']) })).toEqual([
      'not-constant-mass: limit 0.5 mg',
      'weighed-along: mass 1.12 g,yieldWithout 100.0 %',
      'numbers-swapped: inverted 91.13 %',
      'other-salts: surplus 1.12 g',
    ])
  })

  it('may have something weighed along that brings it to 100 % or less', () => {
    const paper = quantity('1.35 g', { label: 'filter paper' })
    const [first, ...others] = explainYield({ ...over, mayBeIncluded: [paper, '0.50 g', '1.12 g'] })
    expect(first?.message).toBe('If filter paper of 1.35 g was weighed along, the yield is 98.00 %.')
    expect(first?.numbers.yieldWithout?.toString()).toBe('98.00 %')
    expect(others[0]?.message).toBe('If something of 1.12 g was weighed along, the yield is 100.0 %.')
  })

  it('is not still wet once it is at constant mass', () => {
    expect(codes({ ...over, drying: drying(['12.6200 g', '12.6198 g']) })).toEqual([
      'numbers-swapped: possible',
      'other-salts: possible',
    ])
  })

  it('is first of all still wet while its mass falls', () => {
    const [first] = explainYield({ ...over, drying: drying(['12.7000 g', '12.6200 g']) })
    expect(first).toMatchObject({ code: 'not-constant-mass', support: 'supported' })
    expect(first?.message).toContain('The mass was falling when it was last weighed')
  })

  it('may be another hydrate or the anhydrous salt, as the tables name them', () => {
    const found = explainYield({ ...over, product: 'CuSO4' }).filter(({ code }) => code === 'other-hydrate')
    expect(found.map(({ message }) => message)).toEqual([
      'If the product is CuSO4·5H2O, the yield is 70.15 %.',
      'If the product is CuSO4·3H2O, the yield is 81.98 %.',
    ])
    expect(found[0]?.numbers.theoreticalYield?.toString()).toBe('17.99 g')
  })

  it('may be one of the alternatives given, as far as these bring it to 100 % or less', () => {
    const facts = { ...over, product: 'CuSO4·5H2O', alternatives: ['CuSO4', 'CuSO4·7H2O'] } as const
    expect(codes(facts).filter((code) => code.startsWith('other-hydrate'))).toEqual(['other-hydrate: possible'])
  })

  it('may be one that brings it to 100 % exactly, by the weights that are chosen', () => {
    // K2SO4 of 120 g/mol: 10 g of it are 15 g of a salt of 180 g/mol
    const weights = { name: 'invented', values: { H: '2', O: '10', S: '20', K: '30', Cu: '50' } }
    const facts = { theoretical: '10 g', product: 'K2SO4', alternatives: ['CuSO4·5H2O'], weights } as const
    expect(codes({ ...facts, actual: '15.0 g' })).toContain('other-hydrate: possible')
    expect(codes({ ...facts, actual: '15.1 g' })).not.toContain('other-hydrate: possible')
  })

  it('has no known forms for a salt without a table', () => {
    expect(codes({ ...over, product: '[Cu(NH3)4]SO4·H2O' })).toHaveLength(3)
  })

  it('with several runs over by the same grams has something weighed along', () => {
    const others = [
      { actual: '24.15 g', theoretical: '23.00 g' },
      { actual: '6.87 g', theoretical: '5.75 g' },
    ] as const
    const [first] = explainYield({ ...over, others })
    expect(first).toMatchObject({ code: 'constant-offset', support: 'supported' })
    expect(first?.message).toContain('All 3 runs are over by about the same grams')
    expect(first?.numbers.surplus?.toString()).toBe('1.12 g')
  })

  it('with several runs over by the same ratio has a slip or another hydrate', () => {
    const [first] = explainYield({ ...over, others: [{ actual: '25.24 g', theoretical: '23.00 g' }] })
    expect(first).toMatchObject({ code: 'constant-ratio', support: 'supported' })
    expect(first?.numbers.ratio?.toString()).toBe('1.097')
  })

  it.each([
    { what: 'of one scale', others: [{ actual: '12.60 g', theoretical: '11.50 g' }] },
    { what: 'that agree in nothing', others: [{ actual: '30.00 g', theoretical: '11.50 g' }] },
    { what: 'of which one is not over', others: [{ actual: '20.00 g', theoretical: '23.00 g' }] },
  ] as const)('with runs $what tells neither offset nor ratio', ({ others }) => {
    expect(codes({ ...over, others })).toHaveLength(3)
  })

  it.each([{ actual: '11.50 g' }, { actual: '7.00 g' }] as const)(
    'is not there at $actual of 11.50 g',
    ({ actual }) => {
      expect(explainYield({ ...over, actual })).toEqual([])
    },
  )

  it.each([
    { what: 'no facts', facts: undefined, code: 'product/not-an-object' },
    { what: 'nothing obtained', facts: { ...over, actual: '0 g' }, code: 'product/not-positive' },
    { what: 'nothing possible', facts: { ...over, theoretical: '0 g' }, code: 'product/not-positive' },
    { what: 'masses that are no list', facts: { ...over, mayBeIncluded: '1 g' }, code: 'product/not-a-list' },
    {
      what: 'a drying that was not judged',
      facts: { ...over, drying: { weighings: [] } },
      code: 'product/not-an-object',
    },
    {
      what: 'a drying that goes nowhere',
      facts: { ...over, drying: { reached: false, trend: Symbol('s'), limit: exact('1 mg') } },
      code: 'product/not-an-object',
    },
    {
      what: 'a drying to a limit that is none',
      facts: { ...over, drying: { reached: false, trend: 'falling', limit: '1 mg' } },
      code: 'product/not-an-object',
    },
    { what: 'a run that is none', facts: { ...over, others: [null] }, code: 'product/not-an-object' },
    { what: 'runs that are no list', facts: { ...over, others: {} }, code: 'product/not-a-list' },
    { what: 'a product that is none', facts: { ...over, product: 'zn' }, code: 'formula/unknown-symbol' },
  ])('is refused with $what', ({ facts, code }) => {
    expect(refusal(() => explainYield(facts as YieldFacts)).code).toBe(code)
  })
})
