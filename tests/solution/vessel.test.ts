import { describe, expect, it } from 'vitest'
import { exact, quantity } from '../../src/quantity/index.js'
import { balances, beakers, checkCapacity, readTo, vesselFor, volumeToDeliver } from '../../src/solution/index.js'
import { massFromAmount } from '../../src/stoichiometry/index.js'
import { refusal } from '../quantity/refusal.js'

describe('the vessel for a volume', () => {
  it.each([
    {
      volume: '41.7 mL',
      item: 'measuring cylinder',
      standard: 'ISO',
      capacity: '50 mL',
      step: '0.1 mL',
      tolerance: '1 mL',
    },
    {
      volume: '50 mL',
      item: 'measuring cylinder',
      standard: 'ASTM',
      capacity: '50 mL',
      step: '0.1 mL',
      tolerance: '0.50 mL',
    },
    {
      volume: '50.1 mL',
      item: 'measuring cylinder',
      standard: 'ASTM',
      capacity: '100 mL',
      step: '0.1 mL',
      tolerance: '1.00 mL',
    },
    {
      volume: '1.35 mL',
      item: 'measuring cylinder',
      standard: 'ISO',
      capacity: '5 mL',
      step: '0.01 mL',
      tolerance: '0.1 mL',
    },
    {
      volume: '0.6 L',
      item: 'measuring cylinder',
      standard: 'ASTM',
      capacity: '1000 mL',
      step: '1 mL',
      tolerance: '6.00 mL',
    },
    { volume: '22.4 mL', item: 'burette', standard: 'ISO', capacity: '25 mL', step: '0.005 mL', tolerance: '0.05 mL' },
    {
      volume: '25 mL',
      item: 'transfer pipette',
      standard: 'ISO',
      capacity: '25 mL',
      step: undefined,
      tolerance: '0.06 mL',
    },
    {
      volume: '0.25 L',
      item: 'volumetric flask',
      standard: 'ASTM',
      capacity: '250 mL',
      step: undefined,
      tolerance: '0.24 mL',
    },
  ] as const)('$volume in a $item by $standard: $capacity', ({ volume, item, standard, ...expected }) => {
    const vessel = vesselFor(volume, { item, standard })
    expect(vessel.capacity.toString()).toBe(expected.capacity)
    expect(vessel.step?.toString()).toBe(expected.step)
    expect(vessel.tolerance.toString()).toBe(expected.tolerance)
    expect(vessel).toMatchObject({ item, fillings: 1, findings: [] })
  })

  it('of class A has the smaller tolerance', () => {
    const vessel = vesselFor('25 mL', { item: 'transfer pipette', standard: 'ISO', accuracy: 'A' })
    expect(vessel.tolerance.toString()).toBe('0.03 mL')
  })

  it('says where its numbers come from', () => {
    expect(vesselFor('90 mL', { item: 'measuring cylinder', standard: 'ASTM' })).toMatchObject({
      edition: 'ASTM E1272-02(2012)',
      fromMemory: false,
    })
    expect(vesselFor('900 mL', { item: 'measuring cylinder', standard: 'ASTM' }).fromMemory).toBe(true)
  })

  it('is one of those at hand', () => {
    const options = { item: 'measuring cylinder', standard: 'ISO', available: ['100 mL', '25 mL'] } as const
    expect(vesselFor('30 mL', options).capacity.toString()).toBe('100 mL')
    expect(vesselFor('20 mL', options).capacity.toString()).toBe('25 mL')
  })

  it('has to be filled more than once where the volume is beyond it', () => {
    const vessel = vesselFor('60 mL', { item: 'measuring cylinder', standard: 'ISO', available: ['25 mL'] })
    expect(vessel.fillings).toBe(3)
    expect(vessel.findings).toMatchObject([
      {
        code: 'beyond-vessel',
        severity: 'problem',
        message: '60 mL is more than a measuring cylinder of 25 mL holds.',
      },
    ])
  })

  it('beyond all of those at hand is the largest of them', () => {
    const options = { item: 'measuring cylinder', standard: 'ISO', available: ['25 mL', '10 mL'] } as const
    expect(vesselFor('60 mL', options).capacity.toString()).toBe('25 mL')
  })

  it('with one mark measures nothing between', () => {
    const [finding] = vesselFor('24 mL', { item: 'transfer pipette', standard: 'ISO' }).findings
    expect(finding).toMatchObject({ code: 'no-such-mark', severity: 'doubt' })
    expect(finding?.message).toBe('A transfer pipette of 25 mL has one mark, so it does not measure 24 mL.')
    expect(Object.entries(finding?.numbers ?? {}).map(String)).toEqual(['volume,24 mL', 'capacity,25 mL'])
  })

  it('with one mark that is filled twice is a finding once', () => {
    const { findings, fillings } = vesselFor('200 mL', { item: 'transfer pipette', standard: 'ISO' })
    expect(fillings).toBe(2)
    expect(findings.map(({ code }) => code)).toEqual(['beyond-vessel'])
  })
})

describe('whether it fits', () => {
  it.each(['0.1 mL', '250 mL', '0.25 L'] as const)('%s goes into 250 mL', (volume) => {
    expect(checkCapacity(volume, '250 mL')).toEqual([])
  })
  it('no more than a part of it where that is said', () => {
    expect(checkCapacity('180 mL', '250 mL', { vessel: 'beaker', usable: '50 %' })).toMatchObject([
      { message: '180 mL is more than a beaker of 250 mL holds, of which 125 mL may be filled.' },
    ])
    expect(checkCapacity('251 mL', '250 mL')).toMatchObject([
      { message: '251 mL is more than a vessel of 250 mL holds.' },
    ])
  })
  it('with the numbers behind it', () => {
    const [finding] = checkCapacity('180 mL', '250 mL', { usable: '50 %' })
    expect(finding).toMatchObject({ code: 'beyond-vessel', severity: 'problem' })
    expect(Object.entries(finding?.numbers ?? {}).map(String)).toEqual(['volume,180 mL', 'capacity,250 mL'])
    expect(checkCapacity('125 mL', '250 mL', { usable: '50 %' })).toEqual([])
  })
  it('a beaker for a mixture', () => {
    const fits = beakers.capacities.find((size) => checkCapacity('180 mL', size, { usable: 2 / 3 }).length === 0)
    expect(fits).toBe('400 mL')
  })
})

describe('what an instrument can show', () => {
  it.each([
    { q: massFromAmount('0.050 mol', 'CuO'), to: '0.001 g', is: '3.977 g' },
    { q: massFromAmount('0.025 mol', 'Al'), to: '0.001 g', is: '0.675 g' },
    { q: massFromAmount('0.025 mol', 'Al'), to: '0.01 g', is: '0.67 g' },
    { q: massFromAmount('0.025 mol', 'Al'), to: '1 mg', is: '675 mg' },
    { q: quantity('12.47 g'), to: quantity('0.05 g'), is: '12.45 g' },
  ] as const)('$q to $to is $is', ({ q, to, is }) => expect(readTo(q, to).toString()).toBe(is))

  it('of a vessel or a balance', () => {
    const acid = volumeToDeliver('0.25 mol', '6 mol/L')
    expect(readTo(acid, vesselFor(acid, { item: 'measuring cylinder', standard: 'ISO' })).toString()).toBe('41.7 mL')
    const shown = balances.map((balance) => readTo(massFromAmount('0.025 mol', 'Al'), balance).toString())
    expect(shown).toEqual(['0.7 g', '0.67 g', '0.675 g', '0.6746 g', '0.67455 g'])
  })

  it('never shows more than is known', () => expect(readTo(quantity('14 mL'), '0.1 mL').toString()).toBe('14 mL'))
  it('with the rule for a lone 5 that is asked for', () => {
    expect(readTo(exact('0.125 g'), '0.01 g').toString()).toBe('0.12 g')
    expect(readTo(exact('0.125 g'), '0.01 g', 'half-up').toString()).toBe('0.13 g')
  })
})

describe('what is refused', () => {
  const cylinder = { item: 'measuring cylinder', standard: 'ISO' } as const
  const flask = vesselFor('100 mL', { item: 'volumetric flask', standard: 'ISO' })
  it.each([
    { call: () => vesselFor('0 mL', cylinder), code: 'solution/not-above-zero' },
    { call: () => vesselFor('5 g' as never, cylinder), code: 'quantity/wrong-dimension' },
    { call: () => vesselFor('5 mL', null as never), code: 'solution/not-an-object' },
    { call: () => vesselFor('5 mL', {} as never), code: 'solution/unknown-glassware' },
    { call: () => vesselFor('5 mL', { ...cylinder, standard: 'DIN' as never }), code: 'solution/unknown-option' },
    { call: () => vesselFor('5 mL', { ...cylinder, accuracy: 'C' as never }), code: 'solution/unknown-option' },
    { call: () => vesselFor('5 mL', { ...cylinder, available: [] }), code: 'solution/unknown-option' },
    { call: () => vesselFor('5 mL', { ...cylinder, available: '25 mL' as never }), code: 'solution/unknown-option' },
    { call: () => vesselFor('5 mL', { ...cylinder, available: ['30 mL'] }), code: 'solution/unknown-glassware' },
    { call: () => checkCapacity('5 mL', '0 mL'), code: 'solution/not-above-zero' },
    { call: () => checkCapacity('5 mL', '10 mL', { usable: 0 }), code: 'solution/not-a-fraction' },
    { call: () => checkCapacity('5 mL', '1 mL', { vessel: Symbol('s') as never }), code: 'solution/unknown-option' },
    { call: () => checkCapacity('5 mL', '10 mL', { usable: 1.5 }), code: 'solution/not-a-fraction' },
    { call: () => readTo(quantity('5 mL'), flask), code: 'solution/no-scale' },
    { call: () => readTo(quantity('5 mL'), '0 mL'), code: 'solution/not-above-zero' },
    { call: () => readTo(quantity('5 mL'), '1 g' as never), code: 'quantity/wrong-dimension' },
    { call: () => readTo(quantity('5 mL'), null as never), code: 'quantity/not-text' },
    { call: () => readTo('5 mL' as never, '0.1 mL'), code: 'solution/not-a-quantity' },
    { call: () => readTo(null as never, '0.1 mL'), code: 'solution/not-a-quantity' },
    { call: () => readTo(quantity('5 mL'), '0.1 mL', 'up' as never), code: 'quantity/unknown-option' },
  ])('$code', ({ call, code }) => expect(refusal(call).code).toBe(code))
})
