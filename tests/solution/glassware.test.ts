import { describe, expect, it } from 'vitest'
import { glasswareTables, toleranceOf } from '../../src/solution/index.js'
import { refusal } from '../quantity/refusal.js'

describe('tolerances', () => {
  it.each([
    ['volumetric flask', '100 mL', 'A', 'ISO', undefined, '0.1 mL'],
    ['volumetric flask', '100 mL', 'A', 'ASTM', undefined, '0.08 mL'],
    ['volumetric flask', '1 L', 'B', 'ISO', undefined, '0.8 mL'],
    ['transfer pipette', '25 mL', 'A', 'ISO', undefined, '0.03 mL'],
    ['burette', '25 mL', 'A', 'ISO', '0.05 mL', '0.03 mL'],
    ['burette', '25 mL', 'A', 'ISO', '0.1 mL', '0.05 mL'],
    ['burette', '5 mL', 'A', 'ISO', undefined, '0.01 mL'], // two scales of one tolerance
    ['measuring cylinder', '50 mL', 'B', 'ASTM', undefined, '0.50 mL'],
    ['measuring cylinder', '2 L', 'A', 'ASTM', undefined, '6.00 mL'],
  ] as const)('%s, %s, class %s, %s, divisions %s: %s', (item, capacity, accuracy, standard, division, is) => {
    expect(toleranceOf(item, capacity, accuracy, standard, division).toString()).toBe(is)
  })
  it('say by which standard', () => {
    expect(toleranceOf('burette', '50 mL', 'B', 'ISO').naming.label).toBe(
      'tolerance of a burette of 50 mL, class B, ISO 385:2005',
    )
  })
})

describe('the tables', () => {
  it('have a source, and say what is from memory', () => {
    for (const { source, fromMemory } of glasswareTables) expect(source.includes('from memory')).toBe(fromMemory)
  })
  it.each(glasswareTables)('$edition ($item): class A is the better one, and capacities ascend', ({ sizes }) => {
    const number = (text: string): number => Number(text.split(' ')[0])
    for (const { A, B } of sizes) expect(number(A)).toBeLessThan(number(B))
    const capacities = sizes.map(({ capacity }) => number(capacity))
    expect(capacities).toEqual([...capacities].sort((a, b) => a - b))
  })
})

describe('what is refused', () => {
  it.each([
    { call: () => toleranceOf('burette', '25 mL', 'A', 'ISO'), code: 'solution/division-needed' },
    { call: () => toleranceOf('burette', '30 mL', 'A', 'ISO'), code: 'solution/unknown-glassware' },
    { call: () => toleranceOf('burette', '25 mL', 'A', 'ISO', '1 mL'), code: 'solution/unknown-glassware' },
    { call: () => toleranceOf('volumetric flask', '25 mL', 'A', 'ISO', '1 mL'), code: 'solution/unknown-glassware' },
    { call: () => toleranceOf('jam jar' as never, '25 mL', 'A', 'ISO'), code: 'solution/unknown-glassware' },
    { call: () => toleranceOf('burette', '50 mL', 'C' as never, 'ISO'), code: 'solution/unknown-option' },
    { call: () => toleranceOf('burette', '50 mL', 'A', 'DIN' as never), code: 'solution/unknown-option' },
    { call: () => toleranceOf('burette', '50 mL', 'toString' as never, 'ISO'), code: 'solution/unknown-option' },
    { call: () => toleranceOf('burette', '50 g' as never, 'A', 'ISO'), code: 'quantity/wrong-dimension' },
    { call: () => toleranceOf('burette', undefined as never, 'A', 'ISO'), code: 'quantity/not-text' },
  ])('$code', ({ call, code }) => expect(refusal(call).code).toBe(code))
  it('says what it was asked for, and what there is', () => {
    expect(refusal(() => toleranceOf('jam jar' as never, '25 mL', 'A', 'ISO'))).toMatchObject({
      found: '"jam jar"',
      expected: 'volumetric flask, transfer pipette, burette, measuring cylinder',
    })
    expect(refusal(() => toleranceOf('burette', '30 mL', 'A', 'ISO'))).toMatchObject({
      message: 'ISO 385:2005 has no burette of 30 mL with that scale.',
      found: '30 mL',
    })
    expect(refusal(() => toleranceOf('burette', '50 mL', 'C' as never, 'ISO'))).toMatchObject({
      found: '"C"',
      expected: 'A, B',
    })
  })
  it('names the scales there are', () => {
    expect(refusal(() => toleranceOf('burette', '25 mL', 'A', 'ISO')).found).toBe('25 mL in 0.05 mL, 25 mL in 0.1 mL')
    expect(refusal(() => toleranceOf('burette', '30 mL', 'A', 'ASTM')).expected).toBe(
      '10 mL in 0.05 mL, 25 mL in 0.1 mL, 50 mL in 0.1 mL, 100 mL in 0.2 mL',
    )
    expect(refusal(() => toleranceOf('burette', '50 mL', 'A', 'DIN' as never)).expected).toBe('ISO, ASTM')
    expect(refusal(() => toleranceOf('volumetric flask', '30 mL', 'A', 'ISO')).expected).toMatch(/^1 mL, 2 mL, 5 mL, /)
  })
})
