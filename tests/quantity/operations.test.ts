import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Decimal } from '../../src/decimal.js'
import { asDimension, constant, exact, mean, quantity, sum, weightedSum } from '../../src/quantity/index.js'
import { refusal } from './refusal.js'

describe('sum', () => {
  it.each([
    { q: sum([quantity('1.0023 g'), quantity('4.383 g')]), is: '5.385 g' },
    { q: sum([quantity('1.00 g'), quantity('500. mg')]), is: '1.50 g' },
    { q: sum([quantity('3.98 g')]), is: '3.98 g' },
    { q: sum([quantity('20. °C'), quantity('10. °C')]), is: '576 K' },
  ])('$is', ({ q, is }) => expect(q.toString()).toBe(is))
})

describe('mean', () => {
  it.each([
    { q: mean([quantity('0.2628 g'), quantity('0.2623 g'), quantity('0.2626 g')]), is: '0.2626 g' },
    { q: mean([quantity('20.0 °C'), quantity('21.0 °C'), quantity('294 K')]), is: '21 °C' },
    { q: mean([quantity('1.00 g'), quantity('1001 mg')]), is: '1.00 g' },
    { q: mean([exact(1), exact(2)]), is: '1.5' },
  ])('$is', ({ q, is }) => expect(q.toString()).toBe(is))
})

describe('counted terms', () => {
  it.each([
    { times: 2, is: '2.0160 g/mol' },
    { times: 2.5, is: '2.5200 g/mol' }, // five figures, as a product keeps them
    { times: new Decimal('0.5'), is: '0.50400 g/mol' },
    { times: 0, is: '0.0000 g/mol' },
    { times: -1, is: '-1.0080 g/mol' },
  ])('hydrogen $times times is $is', ({ times, is }) => {
    expect(weightedSum([{ times, of: constant('1.0080 g/mol') }]).toString()).toBe(is)
  })

  it('exact terms make an exact sum', () => {
    expect(weightedSum([{ times: 2.5, of: exact('2 g') }]).significantFigures).toBeNull()
  })

  it('in the unit of the first, temperatures from absolute zero', () => {
    expect(
      weightedSum([
        { times: 1, of: quantity('1.00 g') },
        { times: 2, of: quantity('500. mg') },
      ]).toString(),
    ).toBe('2.00 g')
    expect(weightedSum([{ times: 2, of: quantity('20. degC') }]).unit).toBe('K')
  })
})

describe('the value of a weighted sum', () => {
  const number = fc.oneof(
    fc.tuple(fc.integer({ min: -9_999_999, max: 9_999_999 }), fc.integer({ min: -9, max: 3 })),
    fc.tuple(fc.integer({ min: 1, max: 400_000 }), fc.constant(-3)),
  )
  const decimals = number.map(([digits, power]) => new Decimal(`${digits}e${power}`))
  const counts = fc.oneof(fc.integer({ min: -3, max: 60 }), fc.constantFrom(0.5, 2.25, 1e7, 1e12))

  it('is the sum of the products, to the last digit and in the same words', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(counts, decimals), { minLength: 1, maxLength: 8 }), (terms) => {
        const [first, ...rest] = terms.map(([times, value]) => value.times(times)) as [Decimal, ...Decimal[]]
        const wanted = rest.reduce((total, value) => total.plus(value), first)
        const got = weightedSum(terms.map(([times, value]) => ({ times, of: exact(value.toString() as '1') })))
        expect(got.value).toStrictEqual(wanted)
      }),
      { numRuns: 500 },
    )
  })

  it.each([
    [
      [1, '3'],
      [-3, '1'],
    ],
    [
      [1, '9999999'],
      [9_999_999, '9999999.9999999'],
    ],
  ] as const)('also where terms cancel, or are large: %s and %s', (...terms) => {
    const values = terms.map(([times, text]) => new Decimal(text).times(times))
    const got = weightedSum(terms.map(([times, text]) => ({ times, of: exact(text as '1') })))
    expect(got.value).toStrictEqual((values[0] as Decimal).plus(values[1] as Decimal))
  })
})

describe('what is refused', () => {
  const mass = quantity('1.0 g')
  const volume = quantity('1.0 mL')
  it.each([
    { call: () => sum([]), code: 'quantity/nothing-to-average' },
    { call: () => mean([]), code: 'quantity/nothing-to-average' },
    { call: () => weightedSum([]), code: 'quantity/nothing-to-average' },
    { call: () => sum(null as never), code: 'quantity/not-a-quantity' },
    { call: () => sum(mass as never), code: 'quantity/not-a-quantity' },
    { call: () => sum('1.0 g' as never), code: 'quantity/not-a-quantity' },
    { call: () => mean([1] as never), code: 'quantity/not-a-quantity' },
    { call: () => mean(new Array(3) as never), code: 'quantity/not-a-quantity' },
    { call: () => sum([mass, volume] as never), code: 'quantity/dimensions-differ' },
    { call: () => weightedSum({} as never), code: 'quantity/not-a-quantity' },
    { call: () => weightedSum([null] as never), code: 'quantity/not-a-count' },
    { call: () => weightedSum([{ of: mass }] as never), code: 'quantity/not-a-count' },
    { call: () => weightedSum([{ times: '2', of: mass }] as never), code: 'quantity/not-a-count' },
    { call: () => weightedSum([{ times: Number.NaN, of: mass }]), code: 'quantity/not-a-count' },
    { call: () => weightedSum([{ times: Number.POSITIVE_INFINITY, of: mass }]), code: 'quantity/not-a-count' },
    { call: () => weightedSum([{ times: 1e16, of: mass }]), code: 'quantity/not-a-count' },
    { call: () => weightedSum([{ times: 1, of: 1 }] as never), code: 'quantity/not-a-quantity' },
    {
      call: () =>
        weightedSum([
          { times: 1, of: mass },
          { times: 1, of: volume },
        ] as never),
      code: 'quantity/dimensions-differ',
    },
    { call: () => asDimension(mass, 'amount'), code: 'quantity/wrong-dimension' },
    { call: () => asDimension(mass, 'weight' as never), code: 'quantity/unknown-option' },
    { call: () => asDimension(mass, 'constructor' as never), code: 'quantity/unknown-option' },
    { call: () => asDimension(5 as never, 'mass'), code: 'quantity/not-a-quantity' },
  ])('$code', ({ call, code }) => expect(refusal(call).code).toBe(code))
})

it('a dimension is made sure of without changing the quantity', () => {
  const mass = quantity('1.0 g' as string)
  expect(asDimension(mass, 'mass')).toBe(mass)
})
