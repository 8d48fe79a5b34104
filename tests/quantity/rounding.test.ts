import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Decimal } from '../../src/decimal.js'
import { roundDecimal, roundingPlace, roundToPlace } from '../../src/quantity/rounding.js'

describe('rounding by magnitude, once', () => {
  it.each([
    { value: '0.145', figures: 2, ties: 'half-even', shown: '0.14' },
    { value: '0.145', figures: 2, ties: 'half-up', shown: '0.15' },
    { value: '0.1451', figures: 2, ties: 'half-even', shown: '0.15' },
    { value: '-0.145', figures: 2, ties: 'half-up', shown: '-0.15' },
    { value: '2.5', figures: 1, ties: 'half-even', shown: '2' },
    { value: '1.347', figures: 2, ties: 'half-even', shown: '1.3' },
    { value: '9.96', figures: 2, ties: 'half-even', shown: '10' },
  ] as const)('$value to $figures figures, $ties, is $shown', ({ value, figures, ties, shown }) => {
    expect(roundDecimal(new Decimal(value), { figures, ties }).toString()).toBe(shown)
  })

  it.each([
    { value: '12.475', step: '0.05', ties: 'half-even', shown: '12.5', place: -2 },
    { value: '12.425', step: '0.05', ties: 'half-even', shown: '12.4', place: -2 },
    { value: '12.425', step: '0.05', ties: 'half-up', shown: '12.45', place: -2 },
    { value: '1234', step: '10', ties: 'half-even', shown: '1230', place: 1 },
    { value: '1235', step: '10', ties: 'half-even', shown: '1240', place: 1 },
    { value: '62.5', step: '25', ties: 'half-even', shown: '50', place: 0 },
    { value: '62.5', step: '25', ties: 'half-up', shown: '75', place: 0 },
    { value: '-0.05', step: '0.1', ties: 'half-even', shown: '0', place: -1 },
    {
      value: '0.0450000000000000000000000000000000000000001',
      step: '0.03',
      ties: 'half-even',
      shown: '0.06',
      place: -2,
    },
  ] as const)('$value to a multiple of $step, $ties, is $shown', ({ value, step, ties, shown, place }) => {
    const rounding = { step: new Decimal(step), ties }
    expect(roundDecimal(new Decimal(value), rounding).abs().eq(new Decimal(shown).abs())).toBe(true)
    expect(roundingPlace(new Decimal(value), rounding)).toBe(place)
  })

  it('a number of digits more than a calculation keeps does not become a tie', () => {
    const value = new Decimal(`25${'0'.repeat(50)}1`)
    expect(roundToPlace(value, 52, 'half-even').eq('3e52')).toBe(true)
  })

  it('to a place is to a multiple of a power of ten', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, min: -1e20, max: 1e20 }), fc.integer({ min: -10, max: 10 }), (x, place) => {
        const step = new Decimal(`1e${place}`)
        const [a, b] = [
          roundToPlace(new Decimal(x), place, 'half-even'),
          roundDecimal(new Decimal(x), { step, ties: 'half-even' }),
        ]
        expect(a.eq(b)).toBe(true)
      }),
    )
  })

  it('figures leave the place of the last of them', () => {
    expect(roundingPlace(new Decimal('9.96'), { figures: 2, ties: 'half-even' })).toBe(0)
  })
})
