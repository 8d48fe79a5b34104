import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Decimal } from '../../src/decimal.js'
import { quantity } from '../../src/quantity/index.js'
import { coarsestPlace, fewestFigures, figuresAt, placeAt } from '../../src/quantity/significance.js'

const at = (value: string, place: number | null) => ({ value: new Decimal(value), place })

describe('figures and the place of the last of them', () => {
  it.each([
    { value: '3.977', place: -3, figures: 4 },
    { value: '9.96', place: -1, figures: 3 }, // shown as 10.0
    { value: '9.94', place: -1, figures: 2 }, // shown as 9.9
    { value: '99.96', place: -1, figures: 4 },
    { value: '0.05', place: -4, figures: 3 },
    { value: '250', place: 1, figures: 2 },
    { value: '0', place: -4, figures: 1 },
    { value: '6', place: 1, figures: 1 }, // rounds up to 10
    { value: '5', place: 1, figures: 0 }, // a tie, and 0 is even
    { value: '4', place: 1, figures: 0 },
    { value: '96', place: 3, figures: 0 },
    { value: '-9.96', place: -1, figures: 3 },
  ])('$value known to 10^$place has $figures', ({ value, place, figures }) => {
    expect(figuresAt(new Decimal(value), place)).toBe(figures)
  })

  it.each([
    { value: '3.977', figures: 4, place: -3 },
    { value: '9.96', figures: 2, place: 0 }, // shown as 10.
    { value: '9.94', figures: 2, place: -1 },
    { value: '0.0999', figures: 2, place: -2 },
    { value: '250', figures: 1, place: 2 },
    { value: '250', figures: 0, place: 3 },
  ])('$value with $figures figures is known to 10^$place', ({ value, figures, place }) => {
    expect(placeAt(new Decimal(value), figures)).toBe(place)
  })

  it('a number shown to so many figures has so many', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-30, max: 1e30, noNaN: true }), fc.integer({ min: 1, max: 20 }), (x, figures) => {
        const value = new Decimal(x)
        expect(figuresAt(value, placeAt(value, figures))).toBe(figures)
      }),
    )
  })
})

describe('the classroom rules', () => {
  it('a sum is known to the coarsest place of its terms', () => {
    expect(coarsestPlace([at('1.0023', -4), at('4.383', -3)])).toBe(-3)
    expect(coarsestPlace([at('486', 0), at('421.23', -2), at('1', null)])).toBe(0)
    expect(coarsestPlace([at('1', null)])).toBeNull()
    expect(coarsestPlace([])).toBeNull()
  })

  it('a product has the fewest figures of its factors', () => {
    expect(fewestFigures([at('2.00', -2), at('3.1', -1)], new Decimal('6.2'))).toBe(-1)
    expect(fewestFigures([at('2', null), at('3.1', -1)], new Decimal('6.2'))).toBe(-1)
    expect(fewestFigures([at('2', null), at('3', null)], new Decimal('6'))).toBeNull()
  })

  it('a product keeps one figure where a factor is below its own last place', () => {
    expect(fewestFigures([at('4', 1), at('3', null)], new Decimal('12'))).toBe(1)
    expect(fewestFigures([at('4', 1), at('2.00', -2)], new Decimal('2'))).toBe(0)
    const lost = quantity('30 g').minus(quantity('26 g')) // to tens, as 30 has one figure
    expect(lost.toString()).toBe('0e1 g')
    expect(lost.dividedBy(quantity('2.00 mL')).toString()).toBe('2 g/mL')
    expect(quantity('13 g').dividedBy(lost).to('%').toString()).toBe('300 %')
  })

  it('a product of zero is as finely known as the zero, times the size of the other factor', () => {
    expect(fewestFigures([at('0', -2), at('31', 0)], new Decimal(0))).toBe(-1)
    expect(fewestFigures([at('0', -2), at('0', -3)], new Decimal(0))).toBe(-5)
    expect(fewestFigures([at('0', null), at('31', 0)], new Decimal(0))).toBeNull()
  })
})
