import { describe, expect, it } from 'vitest'
import { exact, quantity, roundTo } from '../../src/quantity/index.js'
import { amountConcentration, amountInVolume, volumeToDeliver } from '../../src/solution/index.js'
import { refusal } from '../quantity/refusal.js'

describe('the volume that delivers an amount', () => {
  it.each([
    { amount: '0.25 mol', concentration: '6 mol/L', is: '41.7 mL' }, // common practice, no source
    { amount: '0.050 mol', concentration: '2 M', is: '25.0 mL' }, // common practice, no source
    { amount: '40.0 mmol', concentration: '3.00 mol/L', is: '13.3 mL' },
    { amount: '0 mol', concentration: '2 mol/L', is: '0.0 mL' },
  ] as const)('$amount at $concentration is $is', ({ amount, concentration, is }) => {
    const volume = volumeToDeliver(amount, concentration).to('mL')
    expect(roundTo(volume, { place: '0.1' }).toString()).toBe(is)
  })
  it('is exact where all was chosen', () => {
    expect(volumeToDeliver('0.25 mol', '6 mol/L').significantFigures).toBeNull()
  })
  it('has the figures of what was measured', () => {
    expect(volumeToDeliver(quantity('0.0250 mol'), quantity('0.1024 mol/L')).to('mL').toString()).toBe('244 mL')
  })
  it('says of what, where one of the two does', () => {
    const c = amountConcentration({ normality: '6 N', equivalentsPerMole: 2, substance: 'H2SO4' })
    expect(volumeToDeliver('0.25 mol', c).naming).toEqual({
      label: 'volume of the solution of H2SO4',
      symbol: 'V',
      of: 'H2SO4',
      role: 'volume',
    })
    expect(volumeToDeliver('0.25 mol', '6 mol/L').naming).toEqual({
      label: 'volume of the solution',
      symbol: 'V',
      role: 'volume',
    })
  })
})

describe('the amount in a volume', () => {
  it.each([
    { volume: '25 mL', concentration: '2 mol/L', is: '0.05 mol' },
    { volume: quantity('24.85 mL'), concentration: quantity('0.1024 mol/L'), is: '0.002545 mol' },
    { volume: '0 L', concentration: '2 mol/L', is: '0 mol' },
  ] as const)('$volume at $concentration is $is', ({ volume, concentration, is }) => {
    expect(amountInVolume(volume, concentration).toString()).toBe(is)
  })
  it('undoes the volume', () => {
    const volume = volumeToDeliver('0.25 mol', '7 mol/L')
    expect(amountInVolume(volume, '7 mol/L').minus(exact('0.25 mol')).value.abs().lt('1e-30')).toBe(true)
  })
})

it.each([
  { call: () => volumeToDeliver('0.25 mol', '0 mol/L'), code: 'solution/not-above-zero' },
  { call: () => volumeToDeliver('-0.25 mol', '6 mol/L'), code: 'stoichiometry/negative' },
  { call: () => volumeToDeliver('0.25 g' as never, '6 mol/L'), code: 'quantity/wrong-dimension' },
  { call: () => volumeToDeliver('0.25 mol', '6 N' as never), code: 'quantity/unknown-unit' },
  { call: () => volumeToDeliver(undefined as never, '6 mol/L'), code: 'quantity/not-text' },
  { call: () => amountInVolume('-1 mL', '6 mol/L'), code: 'stoichiometry/negative' },
  { call: () => amountInVolume('1 mL', '-6 mol/L'), code: 'solution/not-above-zero' },
  { call: () => amountInVolume('1e200 mL', '6 mol/L'), code: 'quantity/exponent-out-of-range' },
])('$code', ({ call, code }) => expect(refusal(call).code).toBe(code))
