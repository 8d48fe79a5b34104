import { describe, expect, it } from 'vitest'
import { type GasEvolved, gasConditions, gasVolume } from '../../src/product/index.js'
import { exact, quantity } from '../../src/quantity/index.js'
import { refusal } from '../quantity/refusal.js'

describe('the volume of an evolved gas', () => {
  it.each([
    { at: '0 °C, 100 kPa', volume: '0.908 L' },
    { at: '0 °C, 1 atm', volume: '0.897 L' },
    { at: '20 °C, 100 kPa', volume: '0.975 L' },
    { at: '25 °C, 100 kPa', volume: '0.992 L' },
    { at: '25 °C, 1 atm', volume: '0.979 L' },
    { at: { temperature: '31.5 degC', pressure: '99.2 kPa' }, volume: '1.02 L' },
    { at: { temperature: '300. K', pressure: '1.00 bar' }, volume: '0.998 L' },
  ] as const)('of 0.0400 mol at $at is $volume', ({ at, volume }) => {
    expect(gasVolume({ gas: 'H2', amount: '0.0400 mol', at }).volume.toString()).toBe(volume)
  })

  it('comes with the mass, the amount, and the state it holds for', () => {
    const { gas, mass, amount, temperature, pressure } = gasVolume({
      gas: 'CO2',
      amount: quantity('25.0 mmol'),
      at: '25 °C, 1 atm',
    })
    expect([gas, mass, amount, temperature, pressure].map(String)).toEqual([
      'CO2',
      '1.10 g',
      '25.0 mmol',
      '25 °C',
      '1 atm',
    ])
  })

  it('names its numbers for a working', () => {
    const { volume } = gasVolume({ gas: 'H2', amount: '0.0400 mol', at: '0 °C, 100 kPa' })
    expect(volume.naming).toEqual({ label: 'volume of H2', symbol: 'V', of: 'H2', role: 'volume' })
  })

  it('uses the exact molar gas constant', () => {
    const one = gasVolume({
      gas: 'N2',
      amount: exact('1 mol'),
      at: { temperature: exact('1 K'), pressure: exact('1 kPa') },
    })
    expect(one.volume.value.toString()).toBe('8.31446261815324')
  })

  it('has a source for every named condition', () => {
    for (const { source } of Object.values(gasConditions)) expect(source.length).toBeGreaterThan(10)
  })

  it('says which conditions have names', () => {
    const named = { gas: 'H2', amount: '0.04 mol', at: 'STP' } as never
    expect(refusal(() => gasVolume(named))).toMatchObject({
      found: '"STP"',
      expected:
        '"0 °C, 100 kPa", "0 °C, 1 atm", "20 °C, 100 kPa", "25 °C, 100 kPa", "25 °C, 1 atm", or { temperature, pressure }',
    })
  })

  const hydrogen = { gas: 'H2', amount: '0.04 mol', at: '0 °C, 1 atm' } as const
  it.each([
    { what: 'nothing', given: undefined, code: 'product/not-an-object' },
    { what: 'no amount', given: { ...hydrogen, amount: '0 mol' }, code: 'product/not-positive' },
    { what: 'unknown conditions', given: { ...hydrogen, at: 'STP' }, code: 'product/unknown-conditions' },
    { what: 'a prototype key', given: { ...hydrogen, at: 'valueOf' }, code: 'product/unknown-conditions' },
    { what: 'no conditions', given: { ...hydrogen, at: null }, code: 'product/not-an-object' },
    {
      what: 'a vacuum',
      given: { ...hydrogen, at: { temperature: '20 degC', pressure: '0 kPa' } },
      code: 'product/not-positive',
    },
    {
      what: 'absolute zero',
      given: { ...hydrogen, at: { temperature: '-273.15 degC', pressure: '1 bar' } },
      code: 'product/not-positive',
    },
    { what: 'a gas that is none', given: { ...hydrogen, gas: 'h2' }, code: 'formula/unknown-symbol' },
  ])('is refused with $what', ({ given, code }) => {
    expect(refusal(() => gasVolume(given as GasEvolved)).code).toBe(code)
  })
})
