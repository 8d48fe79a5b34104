import { describe, expect, expectTypeOf, it } from 'vitest'
import { correlationOfReadings, exact, fromReadings, type Quantity, quantity } from '../../src/quantity/index.js'
import { refusal } from './refusal.js'

describe('a mean of readings', () => {
  it('is one measurement with the uncertainty its scatter shows', () => {
    const mass = fromReadings(['7.4281 g', '7.4279 g', '7.4284 g', '7.4280 g'], { label: 'crop', id: 'w7' })
    expectTypeOf(mass).toEqualTypeOf<Quantity<'mass'>>()
    expect(mass.value.toString()).toBe('7.4281')
    expect(mass.input).toMatchObject({ kind: 'measured', writtenPlace: -4, id: 'w7' })
    expect(mass.input?.uncertainty?.degreesOfFreedom).toBe(3)
    expect(mass.input?.uncertainty?.standard.toSignificantDigits(3).toString()).toBe('0.000108')
    expect(mass.naming.label).toBe('crop')
  })

  it('in the unit of the first, to the coarsest place', () => {
    const mass = fromReadings(['1.000 g', '1002 mg', '1.00 g'])
    expect(mass.toString()).toBe('1.00 g')
    expect(mass.unit).toBe('g')
  })

  it('of quantities, and of temperatures', () => {
    expect(fromReadings([quantity('20.1 degC'), quantity('20.3 degC')]).toString()).toBe('20.2 °C')
  })

  it('of exact numbers is a measurement all the same', () => {
    expect(fromReadings([exact('1 g'), exact('2 g')])).toMatchObject({ place: 0, input: { kind: 'measured' } })
  })

  it('that do not scatter are certain', () => {
    expect(fromReadings(['1.00 g', '1.00 g']).input?.uncertainty?.standard.isZero()).toBe(true)
  })

  it.each([
    { call: () => fromReadings(['1.00 g']), code: 'quantity/too-few-readings' },
    { call: () => fromReadings([] as never), code: 'quantity/too-few-readings' },
    { call: () => fromReadings('1.00 g' as never), code: 'quantity/too-few-readings' },
    { call: () => fromReadings(new Array(3) as never), code: 'quantity/not-a-quantity' },
    { call: () => fromReadings([1, 2] as never), code: 'quantity/not-a-quantity' },
    { call: () => fromReadings(['1.00 g', '1.00 mL'] as never), code: 'quantity/dimensions-differ' },
    { call: () => fromReadings(['1.00 g', '1,00 g'] as never), code: 'quantity/decimal-comma' },
    { call: () => fromReadings(['1.00 g', '1.01 g'], { id: '' }), code: 'quantity/unknown-option' },
    { call: () => fromReadings(['1.00 g', '1.01 g'], null as never), code: 'quantity/unknown-option' },
  ])('refuses $code', ({ call, code }) => expect(refusal(call).code).toBe(code))
})

describe('readings taken together', () => {
  it.each([
    { a: ['1.0', '2.0', '3.0'], b: ['10', '20', '30'], r: 1 },
    { a: ['1.0', '2.0', '3.0'], b: ['3.0', '2.0', '1.0'], r: -1 },
    { a: ['1.0', '2.0', '3.0'], b: ['1.0', '5.0', '1.0'], r: 0 },
    { a: ['1.0', '2.0', '3.0'], b: ['1.0', '1.0', '1.0'], r: 0 },
  ])('$a and $b: $r', ({ a, b, r }) => expect(correlationOfReadings(a, b)).toBeCloseTo(r, 12))

  it('are as many of both', () => {
    expect(refusal(() => correlationOfReadings(['1.0', '2.0'], ['1.0', '2.0', '3.0']))).toMatchObject({
      code: 'quantity/too-few-readings',
      found: '"2 and 3"',
    })
  })
})
