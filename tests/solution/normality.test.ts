import { describe, expect, it } from 'vitest'
import { exact, quantity } from '../../src/quantity/index.js'
import { fromNormality, toNormality } from '../../src/solution/index.js'
import { refusal } from '../quantity/refusal.js'

describe('the concentration behind a normality', () => {
  it.each([
    { normality: '6 N', z: 2, is: '3 mol/L' },
    { normality: '6 N', z: 1, is: '6 mol/L' },
    { normality: '0.1 N', z: 5, is: '0.02 mol/L' },
    { normality: '6 eq/L', z: '2', is: '3 mol/L' },
    { normality: '6 mol/L', z: exact(2), is: '3 mol/L' },
    { normality: ' 6 N ', z: 2, is: '3 mol/L' },
    { normality: quantity('0.1024 mol/L'), z: 2, is: '0.05120 mol/L' },
  ] as const)('$normality with $z equivalents per mole is $is', ({ normality, z, is }) => {
    expect(fromNormality(normality as '6 N', { equivalentsPerMole: z }).toString()).toBe(is)
  })

  it('222 mL of 6 N sulfuric acid hold 0.666 mol', () => {
    const c = fromNormality('6 N', { equivalentsPerMole: 2, substance: 'H2SO4' })
    expect(c.times(exact('222 mL')).toString()).toBe('0.666 mol')
  })

  it('is a concentration of the substance, and remembers the equivalents', () => {
    const c = fromNormality('6 N', { equivalentsPerMole: 2, substance: 'H2SO4' })
    expect(c.naming).toEqual({
      label: 'amount concentration of H2SO4',
      symbol: 'c',
      of: 'H2SO4',
      role: 'concentration',
    })
    expect(c.operands[1]?.naming).toEqual({ label: 'equivalents per mole', symbol: 'z', role: 'equivalence factor' })
    expect(fromNormality('6 N', { equivalentsPerMole: 2 }).naming.of).toBeUndefined()
  })

  it('and back', () => {
    expect(toNormality('3 mol/L', { equivalentsPerMole: 2 }).toString()).toBe('6 mol/L')
    expect(toNormality('3 mol/L', { equivalentsPerMole: 2 }).naming.symbol).toBe('N')
  })
})

describe('what is refused', () => {
  it.each([
    { normality: '6 N', per: undefined, code: 'solution/not-an-object' },
    { normality: '6 N', per: 2, code: 'solution/not-an-object' },
    { normality: '6 N', per: {}, code: 'quantity/not-text' },
    { normality: '6 N', per: { equivalentsPerMole: 0 }, code: 'solution/bad-equivalents' },
    { normality: '6 N', per: { equivalentsPerMole: -2 }, code: 'solution/bad-equivalents' },
    { normality: '6 N', per: { equivalentsPerMole: 0.5 }, code: 'solution/bad-equivalents' }, // that is the factor
    { normality: '6 N', per: { equivalentsPerMole: '2 mol' }, code: 'quantity/wrong-dimension' },
    { normality: '0 N', per: { equivalentsPerMole: 2 }, code: 'solution/not-above-zero' },
    { normality: '6N', per: { equivalentsPerMole: 2 }, code: 'quantity/unknown-unit' },
    { normality: '6 %', per: { equivalentsPerMole: 2 }, code: 'quantity/wrong-dimension' },
    { normality: '6,0 N', per: { equivalentsPerMole: 2 }, code: 'quantity/decimal-comma' },
    { normality: 6, per: { equivalentsPerMole: 2 }, code: 'quantity/wrong-dimension' },
    { normality: null, per: { equivalentsPerMole: 2 }, code: 'quantity/not-text' },
  ])('$normality with $per: $code', ({ normality, per, code }) => {
    expect(refusal(() => fromNormality(normality as never, per as never)).code).toBe(code)
  })
  it('says what is no number of equivalents, and keeps the rest of a text', () => {
    expect(refusal(() => fromNormality('6 N', { equivalentsPerMole: 0.5 })).found).toBe('0.5')
    expect(refusal(() => fromNormality('6 eq/mL' as never, { equivalentsPerMole: 2 })).found).toContain('eq/mL')
  })
  it('a concentration of nothing has no normality', () => {
    expect(refusal(() => toNormality('0 mol/L', { equivalentsPerMole: 2 })).code).toBe('solution/not-above-zero')
  })
})
