import { describe, expect, it } from 'vitest'
import { exact, isQuantity, QuantityError, quantity } from '../../src/quantity/index.js'
import { chosen, labelled, measured, told } from '../../src/stoichiometry/given.js'
import { refusal } from '../quantity/refusal.js'

const names = { label: 'amount of KOH', symbol: 'n', of: 'KOH', role: 'amount' } as const

describe('what somebody chose', () => {
  it('is exact as text', () => expect(chosen('0.050 mol', 'amount', names).significantFigures).toBeNull())
  it('is exact as a number', () => expect(chosen(2, 'ratio', { label: 'factor' }).toString()).toBe('2'))
  it('stays measured where a quantity says so', () => {
    expect(chosen(quantity('0.050 mol'), 'amount', names).significantFigures).toBe(2)
  })
})

describe('what somebody measured', () => {
  it('has the figures of its text', () => expect(measured('0.050 mol', 'amount', names).significantFigures).toBe(2))
  it('stays exact where a quantity says so', () => {
    expect(measured(exact('0.050 mol'), 'amount', names).significantFigures).toBeNull()
  })
})

describe('names', () => {
  it('are given where there are none', () => expect(labelled(quantity('1.0 mol'), names).naming).toEqual(names))
  it('of the caller stay', () => {
    const own = quantity('1.0 mol', { label: 'alkali from bench 1' })
    expect(labelled(own, names).naming).toEqual({ ...names, label: 'alkali from bench 1' })
  })
  it('leave the measurement the same', () => {
    const own = quantity('1.0 mol')
    expect(labelled(own, names).input).toBe(own.input)
  })
})

describe('what is refused', () => {
  it.each([
    { value: '0,050 mol', code: 'quantity/decimal-comma' },
    { value: '0.050 mole', code: 'quantity/unknown-unit' },
    { value: '0.050 g', code: 'quantity/wrong-dimension' },
    { value: '', code: 'quantity/empty' },
    { value: undefined, code: 'quantity/not-text' },
    { value: null, code: 'quantity/not-text' },
    { value: {}, code: 'quantity/not-text' },
  ])('$value is $code, and the message says which number it was', ({ value, code }) => {
    for (const read of [chosen, measured]) {
      const error = refusal(() => read(value as never, 'amount', names))
      expect(error).toMatchObject({ code, name: 'QuantityError' })
      expect(error.message).toContain('amount of KOH')
    }
  })

  it('a number where it should have digits', () => {
    expect(refusal(() => measured(0.05 as never, 'amount', names)).code).toBe('quantity/javascript-number')
  })

  it('a bug is no mistake of the reader', () => {
    const bug = new TypeError('a bug')
    expect(() =>
      told('amount', () => {
        throw bug
      }),
    ).toThrow(bug)
  })

  it('keeps what the error knew', () => {
    const error = refusal(() => chosen('0,050 mol' as never, 'amount', names))
    expect(error).toBeInstanceOf(QuantityError)
    expect(error).toMatchObject({ position: { start: 1, end: 2 }, hint: '0.050 mol' })
  })
})

it('a text and a quantity read alike', () => {
  const [text, q] = [chosen('0.25 mol', 'amount', names), chosen(exact('0.25 mol'), 'amount', names)]
  expect(isQuantity(text) && text.equals(q)).toBe(true)
})
