import { describe, expect, it } from 'vitest'
import { exact, quantity } from '../../src/quantity/index.js'
import { makeUp } from '../../src/solution/index.js'
import { refusal } from '../quantity/refusal.js'

describe('the mass to weigh', () => {
  it.each([
    { request: { substance: 'KOH', concentration: '4 mol/L', volume: '50 mL' }, is: '11.221 g' },
    { request: { substance: 'KOH', concentration: '4 mol/L', volume: '50 mL', assay: '85.0 %' }, is: '13.2 g' },
    {
      request: { substance: 'CuSO4', weigh: 'CuSO4·5H2O', concentration: '0.50 mol/L', volume: '250 mL' },
      is: '31.210 g',
    },
    {
      request: { substance: 'H2C2O4', weigh: 'H2C2O4·2H2O', concentration: '1 mol/L', volume: '25 mL' },
      is: '3.15160 g',
    },
    { request: { substance: 'KOH', weigh: 'K2O', concentration: '1 mol/L', volume: '1 L' }, is: '47.098 g' },
  ] as const)('$request: $is', ({ request, is }) => expect(makeUp(request).mass.toString()).toBe(is))

  it('comes with the amount, what is weighed, and the volume to make up to', () => {
    const solution = makeUp({ substance: 'CuSO4', weigh: 'CuSO4.5H2O', concentration: '0.50 mol/L', volume: '250 mL' })
    expect(solution.amount.toString()).toBe('0.125 mol')
    expect(solution.weigh).toBe('CuSO4.5H2O')
    expect(solution.volume.toString()).toBe('250 mL')
    expect(solution.volume.naming.label).toBe('volume to make up to of CuSO4')
    expect(solution.mass.naming).toMatchObject({ role: 'mass', of: 'CuSO4.5H2O' })
  })

  it('has the figures of a measured volume', () => {
    const solution = makeUp({ substance: 'KOH', concentration: exact('4 mol/L'), volume: quantity('50. mL') })
    expect(solution.mass.toString()).toBe('11 g')
  })
})

it.each([
  { change: { weigh: 'NaCl' }, code: 'solution/unrelated-bases' },
  { change: { volume: '0 mL' }, code: 'solution/not-above-zero' },
  { change: { concentration: '0 mol/L' }, code: 'solution/not-above-zero' },
  { change: { concentration: '4 N' }, code: 'quantity/unknown-unit' },
  { change: { assay: '0 %' }, code: 'stoichiometry/not-a-fraction' },
  { change: { assay: '850 %' }, code: 'stoichiometry/not-a-fraction' },
  { change: { substance: 'koh' }, code: 'formula/unknown-symbol' },
  { change: { volume: undefined }, code: 'quantity/not-text' },
])('$change is refused: $code', ({ change, code }) => {
  const request = { substance: 'KOH', concentration: '4 mol/L', volume: '50 mL', ...change }
  expect(refusal(() => makeUp(request as never)).code).toBe(code)
})

it('refuses what is no request', () => {
  expect(refusal(() => makeUp(null as never)).code).toBe('solution/not-an-object')
})
