import { describe, expect, it } from 'vitest'
import { warmFiltration } from '../../src/crystallisation/index.js'
import { refusal } from '../quantity/refusal.js'

const planned = { crystal: 'KNO3', dissolved: '20.0 g', water: '25.0 g', temperature: '5 degC' } as const

describe('filtering at another temperature than planned', () => {
  it.each([
    { at: '10 degC', lessBy: '0.97 g', share: '6.2 %' },
    { at: '5 degC', lessBy: '0.00 g', share: '0.0 %' },
    { at: '0 degC', lessBy: '-0.97 g', share: '-6.2 %' },
  ] as const)('at $at costs $lessBy', ({ at, lessBy, share }) => {
    const warm = warmFiltration(planned, { temperature: at })
    expect(warm.lessBy.toString()).toBe(lessBy)
    expect(warm.lessByShare.toString()).toBe(share)
    expect(warm.lessBy.naming).toMatchObject({ label: 'less crop', of: 'KNO3' })
  })

  it('gives the crop at that temperature', () => {
    expect(warmFiltration(planned, { temperature: '10 degC' }).crop.crop.toString()).toBe('14.66 g')
  })

  it('takes a second solubility where the first was a number', () => {
    const known = { ...planned, solubility: '0.175' } as const
    expect(warmFiltration(known, { temperature: '10 degC', solubility: '0.214' }).lessBy.toString()).toBe('0.975 g')
  })

  it.each([
    {
      what: 'one solubility for two temperatures',
      input: { ...planned, solubility: '0.175' },
      code: 'crystallisation/solubility-needed',
    },
    { what: 'nothing planned', input: { ...planned, water: '300 g' }, code: 'crystallisation/no-such-crop' },
  ] as const)('is refused with $what', ({ input, code }) => {
    expect(refusal(() => warmFiltration(input, { temperature: '10 degC' })).code).toBe(code)
  })
})
