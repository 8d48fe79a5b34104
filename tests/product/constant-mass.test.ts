import { describe, expect, it } from 'vitest'
import { constantMass, constantMassCriteria, type MassSeries } from '../../src/product/index.js'
import { exact, quantity } from '../../src/quantity/index.js'
import { refusal } from '../quantity/refusal.js'

const falling = ['14.4496 g', '14.4487 g', '14.4485 g'] as const

describe('constant mass', () => {
  it.each([
    { criterion: 'analytical-balance', weighings: falling, reached: true },
    { criterion: 'analytical-balance', weighings: falling.slice(0, 2), reached: false },
    { criterion: 'chp', weighings: ['1.0000 g', '1.0003 g'], reached: true },
    { criterion: 'crucible', weighings: ['1.0000 g', '1.0003 g'], reached: false },
    { criterion: 'ph-eur', weighings: ['1.0000 g', '0.9995 g'], reached: true },
    { criterion: 'ph-eur', weighings: ['1.0000 g', '0.9994 g'], reached: false },
    { criterion: 'school-balance', weighings: ['1.00 g', '0.99 g'], reached: true },
    { criterion: 'two-milligrams', weighings: ['2.000 g', '1.997 g'], reached: false },
    { criterion: { within: '1 mg', source: 'ours' }, weighings: ['2.000 g', '1.999 g'], reached: true },
    { criterion: { within: exact('1 mg'), source: 'ours' }, weighings: ['2000.0 mg', '1998.0 mg'], reached: false },
  ] as const)('by $criterion of $weighings: $reached', ({ reached, ...series }) => {
    expect(constantMass(series as MassSeries).reached).toBe(reached)
  })

  it('per gram passes the same 1.5 mg on 5 g that 0.5 mg fails', () => {
    const weighings = ['25.0000 g', '24.9985 g'] as const
    expect(constantMass({ weighings, criterion: 'usp', taken: '5.00 g' }).reached).toBe(true)
    expect(constantMass({ weighings, criterion: 'ph-eur' }).reached).toBe(false)
    expect(constantMass({ weighings, criterion: 'usp', taken: '5.00 g' }).limit.toString()).toBe('2.50 mg')
  })

  it('by one per cent of the net mass', () => {
    const series = { weighings: ['2.00 g', '1.99 g'], criterion: 'one-per-cent' } as const
    expect(constantMass({ ...series, taken: '1.99 g' }).reached).toBe(true)
    expect(constantMass({ ...series, taken: '0.90 g' }).reached).toBe(false)
  })

  it('gives every change, the trend and the criterion with its source', () => {
    const { changes, trend, criterion, limit } = constantMass({ weighings: falling, criterion: 'analytical-balance' })
    expect(changes.map(String)).toEqual(['-0.0009 g', '-0.0002 g'])
    expect(trend).toBe('falling')
    expect(criterion.source).toContain('Talbot')
    expect(limit.toString()).toBe('0.3 mg')
  })

  it.each([
    { weighings: ['1.000 g', '1.001 g'], trend: 'rising' },
    { weighings: ['1.001 g', '1.000 g'], trend: 'falling' },
    { weighings: ['1.000 g', '1.000 g'], trend: 'steady' },
  ] as const)('of $weighings is $trend', ({ weighings, trend }) => {
    expect(constantMass({ weighings, criterion: 'ph-eur' }).trend).toBe(trend)
  })

  it('goes on with the last weighing, or with the mean of the last two where that is chosen', () => {
    const series = { weighings: falling, criterion: 'analytical-balance' } as const
    expect(constantMass(series).mass.toString()).toBe('14.4485 g')
    expect(constantMass({ ...series, take: 'mean' }).mass.toString()).toBe('14.4486 g')
    expect(constantMass({ ...series, take: 'mean' }).mass.naming).toMatchObject({ label: 'weighing', role: 'gross' })
  })

  it('keeps names that the weighings have', () => {
    const weighings = falling.map((text) => quantity(text, { label: 'crucible 3', role: 'net' }))
    expect(constantMass({ weighings, criterion: 'analytical-balance' }).mass.naming).toMatchObject({
      label: 'crucible 3',
      role: 'net',
    })
  })

  it('has no criterion without a source', () => {
    for (const { source, within, perGram } of Object.values(constantMassCriteria)) {
      expect(source.length).toBeGreaterThan(10)
      expect([within, perGram].filter((limit) => limit !== undefined)).toHaveLength(1)
    }
  })

  it('says of what weighings and what criterion it speaks', () => {
    const one = { weighings: ['1.00 g'], criterion: 'ph-eur' } as const
    expect(refusal(() => constantMass(one)).found).toBe('1')
    const strange = { weighings: falling, criterion: 'dry' } as never
    expect(refusal(() => constantMass(strange))).toMatchObject({
      found: '"dry"',
      expected: Object.keys(constantMassCriteria).join(', '),
    })
    expect(refusal(() => constantMass({ weighings: falling, criterion: { source: 'x' } })).found).toBe('an object')
  })

  const good = { weighings: falling, criterion: 'analytical-balance' } as const
  it.each([
    { what: 'no series', given: undefined, code: 'product/not-an-object' },
    { what: 'no list', given: { ...good, weighings: '1 g' }, code: 'product/not-a-list' },
    { what: 'no weighing', given: { ...good, weighings: [] }, code: 'product/too-few-weighings' },
    { what: 'one weighing', given: { ...good, weighings: ['1.00 g'] }, code: 'product/too-few-weighings' },
    { what: 'an unknown criterion', given: { ...good, criterion: 'dry' }, code: 'product/unknown-criterion' },
    { what: 'a prototype key', given: { ...good, criterion: 'toString' }, code: 'product/unknown-criterion' },
    { what: 'no criterion', given: { weighings: falling }, code: 'product/unknown-criterion' },
    { what: 'no criterion at all', given: { ...good, criterion: null }, code: 'product/unknown-criterion' },
    { what: 'an empty criterion', given: { ...good, criterion: { source: 'x' } }, code: 'product/unknown-criterion' },
    {
      what: 'a criterion without a source',
      given: { ...good, criterion: { within: '1 mg' } },
      code: 'product/unknown-criterion',
    },
    {
      what: 'a function for a criterion',
      given: { ...good, criterion: () => 'usp' },
      code: 'product/unknown-criterion',
    },
    { what: 'another weighing to take', given: { ...good, take: 'average' }, code: 'product/unknown-option' },
    { what: 'no mass taken', given: { ...good, criterion: 'usp' }, code: 'product/mass-taken-needed' },
    { what: 'nothing taken', given: { ...good, criterion: 'usp', taken: '0 g' }, code: 'product/not-positive' },
  ])('is refused with $what', ({ given, code }) => {
    expect(refusal(() => constantMass(given as MassSeries)).code).toBe(code)
  })
})
