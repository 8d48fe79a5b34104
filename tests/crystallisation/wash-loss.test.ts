import { describe, expect, it } from 'vitest'
import { massRatioFromFraction, washLoss } from '../../src/crystallisation/index.js'
import { refusal } from '../quantity/refusal.js'

describe('what a wash with water carries away at most', () => {
  it.each([
    { crystal: 'KNO3', water: '5.0 g', temperature: '0 degC', lost: '0.682 g' },
    { crystal: 'KAl(SO4)2·12H2O', water: '5.0 g', temperature: '0 degC', lost: '0.279 g' },
    { crystal: 'ZnSO4·7H2O', water: '5.0 g', temperature: '0 degC', lost: '5.38 g' },
  ] as const)('of $crystal at $temperature is $lost', ({ lost, ...wash }) => {
    const mass = washLoss(wash)
    expect(mass.toString()).toBe(lost)
    expect(mass.naming).toMatchObject({ label: 'washed away at most', of: wash.crystal })
  })

  it('takes a solubility of one’s own', () => {
    const wash = { crystal: 'KNO3', water: '5.0 g', temperature: '0 degC', solubility: '0.133' } as const
    expect(washLoss(wash).toString()).toBe('0.665 g')
  })

  it.each([
    { what: 'no water', change: { water: '0 g' }, code: 'crystallisation/not-positive' },
    { what: 'crystals that melt', change: { solubility: '2' }, code: 'crystallisation/no-such-crop' },
    { what: 'a salt without a table', change: { crystal: 'LaCl3' }, code: 'crystallisation/unknown-salt' },
  ] as const)('is refused with $what', ({ change, code }) => {
    const wash = { crystal: 'ZnSO4·7H2O', water: '5.0 g', temperature: '0 degC', ...change } as const
    expect(refusal(() => washLoss(wash)).code).toBe(code)
  })
})

describe('a mass ratio from a mass fraction', () => {
  it.each([
    { fraction: '24.5 %', shown: '0.325' },
    { fraction: '0.245', shown: '0.325' },
    { fraction: '50.0 %', shown: '1.00' },
  ] as const)('of $fraction is $shown', ({ fraction, shown }) => {
    expect(massRatioFromFraction(fraction).toString()).toBe(shown)
  })

  it.each(['0 %', '100 %', '-5 %', '120 %'] as const)('is refused for %s', (fraction) => {
    expect(refusal(() => massRatioFromFraction(fraction)).code).toBe('crystallisation/not-positive')
  })
})
