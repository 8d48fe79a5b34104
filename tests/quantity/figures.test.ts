import { describe, expect, it } from 'vitest'
import { countFigures, exact, quantity, roundTo } from '../../src/quantity/index.js'
import { refusal } from './refusal.js'

describe('rounding a quantity', () => {
  it.each([
    { q: roundTo(quantity('0.90275 g'), { figures: 4 }), is: '0.9028 g' },
    { q: roundTo(quantity('0.90265 g'), { figures: 4, rule: 'half-up' }), is: '0.9027 g' },
    { q: roundTo(quantity('12.47 mL'), { place: '0.05' }), is: '12.45 mL' },
    { q: roundTo(quantity('12.4 mL'), { place: '0.01' }), is: '12.4 mL' }, // no more figures than it had
    { q: roundTo(quantity('1234 g'), { place: '10' }), is: '1230 g' },
    { q: roundTo(quantity('1234 g'), { place: ' 10 ' }), is: '1230 g' },
    { q: roundTo(quantity('0.90275 g'), { figures: 1 }), is: '0.9 g' },
    { q: roundTo(exact(1).dividedBy(exact(3)), { figures: 30 }), is: `0.${'3'.repeat(30)}` },
    { q: roundTo(exact(1).dividedBy(exact(3)), { figures: 3 }), is: '0.333' },
    { q: roundTo(exact('3.97725 g'), { place: '0.001' }), is: '3.977 g' },
  ])('$is', ({ q, is }) => expect(q.toString()).toBe(is))

  it('keeps the names and what it was made from', () => {
    const mass = quantity('3.97725 g', { label: 'oxide' })
    const rounded = roundTo(mass, { figures: 4 })
    expect(rounded.naming.label).toBe('oxide')
    expect(rounded.operands[0]).toBe(mass)
  })

  it.each([
    { to: { figures: 0 }, code: 'quantity/figures-out-of-range' },
    { to: { figures: 31 }, code: 'quantity/figures-out-of-range' },
    { to: { figures: 2.5 }, code: 'quantity/figures-out-of-range' },
    { to: { figures: '3' }, code: 'quantity/figures-out-of-range' },
    { to: { place: '0' }, code: 'quantity/figures-out-of-range' },
    { to: { place: '-1' }, code: 'quantity/figures-out-of-range' },
    { to: { place: 0.01 }, code: 'quantity/figures-out-of-range' },
    { to: { place: 'ten' }, code: 'quantity/not-a-numeral' },
    { to: {}, code: 'quantity/figures-out-of-range' },
    { to: null, code: 'quantity/figures-out-of-range' },
    { to: 3, code: 'quantity/figures-out-of-range' },
    { to: { figures: 3, rule: 'half-down' }, code: 'quantity/unknown-option' },
  ])('$to is $code', ({ to, code }) => {
    expect(refusal(() => roundTo(quantity('1.0 g'), to as never)).code).toBe(code)
  })

  it('only of quantities', () => {
    expect(refusal(() => roundTo(1.5 as never, { figures: 1 })).code).toBe('quantity/not-a-quantity')
  })
})

describe('counting figures', () => {
  it.each([
    { text: '0.0500', figures: 3, ambiguous: false },
    { text: ' 250 ', figures: 2, ambiguous: true },
    { text: '250.', figures: 3, ambiguous: false },
    { text: '2.50e2', figures: 3, ambiguous: false },
    { text: '0', figures: 1, ambiguous: false },
    { text: '0.00', figures: 1, ambiguous: false },
    { text: '-1000', figures: 1, ambiguous: true },
  ])('$text has $figures', ({ text, figures, ambiguous }) => {
    expect(countFigures(text)).toEqual({ figures, ambiguous })
  })

  it('zeros as asked for', () => {
    expect(countFigures('250', { wholeNumberZeros: 'significant' })).toEqual({ figures: 3, ambiguous: true })
  })

  it.each([
    { call: () => countFigures(250 as never), code: 'quantity/not-text' },
    { call: () => countFigures('250 mL'), code: 'quantity/not-a-numeral' },
    { call: () => countFigures('250', null as never), code: 'quantity/unknown-option' },
    { call: () => countFigures('250', { wholeNumberZeros: 'no' as never }), code: 'quantity/unknown-option' },
    { call: () => countFigures('250', { wholeNumberZeros: 'reject' }), code: 'quantity/ambiguous-zeros' },
  ])('$code', ({ call, code }) => expect(refusal(call).code).toBe(code))
})
