import { describe, expect, it } from 'vitest'
import { exact, quantity } from '../../src/quantity/index.js'
import { molesPerMole } from '../../src/solution/basis.js'
import { convertBasis } from '../../src/solution/index.js'
import { refusal } from '../quantity/refusal.js'

describe('the same strength on another basis', () => {
  it.each([
    { massFraction: '28.0 %', from: 'NH3', to: 'NH4OH', is: '57.6 %' },
    { massFraction: '57.6 %', from: 'NH4OH', to: 'NH3', is: '28.0 %' },
    { massFraction: '57.6 %', from: 'NH3·H2O', to: 'NH3', is: '28.0 %' },
    { massFraction: '85.0 %', from: 'H3PO4', to: 'P2O5', is: '61.6 %' },
    { massFraction: '0.250', from: 'CuSO4·5H2O', to: 'CuSO4', is: '0.160' },
    { massFraction: '12.0 %', from: 'Na2CO3', to: 'Na2CO3·10H2O', is: '32.4 %' },
    { massFraction: '20.0 %', from: 'H2SO4', to: 'SO3', is: '16.3 %' },
    { massFraction: '20.0 %', from: 'HCl', to: 'HCl', is: '20.0 %' },
    { massFraction: '30.0 %', from: 'H2O2', to: 'H2O2', is: '30.0 %' },
  ] as const)('$massFraction as $from is $is as $to', ({ is, ...change }) => {
    expect(convertBasis(change).toString()).toBe(is)
  })

  it('names what it is of, and remembers the ratio', () => {
    const w = convertBasis({ massFraction: '85.0 %', from: 'H3PO4', to: 'P2O5' })
    expect(w.naming).toEqual({ label: 'mass fraction of P2O5', symbol: 'w', of: 'P2O5', role: 'mass fraction' })
    expect(molesPerMole('P2O5', 'H3PO4').toString()).toBe('0.5')
    expect(molesPerMole('P2O5', 'H3PO4').naming).toMatchObject({ role: 'mole ratio', of: 'P2O5' })
  })
})

describe('what is refused', () => {
  it.each([
    { change: { massFraction: '28.0 %', from: 'NH3', to: 'HCl' }, code: 'solution/unrelated-bases' },
    { change: { massFraction: '28.0 %', from: 'K2C2O4', to: 'H2C2O4' }, code: 'solution/unrelated-bases' },
    { change: { massFraction: '28.0 %', from: 'NaH2PO4', to: 'Na2HPO4' }, code: 'solution/unrelated-bases' },
    { change: { massFraction: '28.0 %', from: 'H2O2', to: 'H2O' }, code: 'solution/unrelated-bases' },
    { change: { massFraction: '0 %', from: 'NH3', to: 'NH4OH' }, code: 'solution/not-a-fraction' },
    { change: { massFraction: '100.1 %', from: 'NH3', to: 'NH4OH' }, code: 'solution/not-a-fraction' },
    { change: { massFraction: '28 g', from: 'NH3', to: 'NH4OH' }, code: 'quantity/wrong-dimension' },
    { change: { massFraction: '28 %', from: 'nh3', to: 'NH4OH' }, code: 'formula/unknown-symbol' },
    { change: { from: 'NH3', to: 'NH4OH' }, code: 'quantity/not-text' },
    { change: {}, code: 'formula/not-text' },
    { change: null, code: 'solution/not-an-object' },
    { change: '28 %', code: 'solution/not-an-object' },
  ])('$change: $code', ({ change, code }) => expect(refusal(() => convertBasis(change as never)).code).toBe(code))
})

it('two substances that have nothing in common are named', () => {
  expect(refusal(() => convertBasis({ massFraction: '28.0 %', from: 'NH3', to: 'HCl' })).found).toBe('NH3 and HCl')
})

it('there and back again is where one was', () => {
  const w = exact('0.25')
  const there = convertBasis({ massFraction: w, from: 'CuSO4', to: 'CuSO4·5H2O' })
  const back = convertBasis({ massFraction: there, from: 'CuSO4·5H2O', to: 'CuSO4' })
  expect(back.minus(w).value.abs().lt('1e-30')).toBe(true)
  expect(convertBasis({ massFraction: quantity('25 %'), from: 'CuSO4', to: 'CuSO4' }).significantFigures).toBe(2)
})
