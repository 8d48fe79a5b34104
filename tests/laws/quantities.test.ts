import fc from 'fast-check'
import { isSaltwrightError } from 'saltwright'
import {
  calculationFromJSON,
  calculationToJSON,
  constant,
  exact,
  fromJSON,
  type Quantity,
  quantity,
  reconsider,
  standardUncertainty,
  sum,
  toJSON,
  working,
  writeWithUncertainty,
} from 'saltwright/quantity'
import { describe, expect, it } from 'vitest'
import { calculation, numeral } from './arbitraries.js'

const stored = (json: unknown): unknown => JSON.parse(JSON.stringify(json))

describe('what is written reads back', () => {
  it('a reading, with its figures', () => {
    fc.assert(
      fc.property(numeral, fc.constantFrom('g', 'mol', 'mL', '%', 'degC'), (text, unit) => {
        const read = quantity(`${text} ${unit}` as '1 g')
        const again = quantity(read.toString() as '1 g')
        expect([again.value.toString(), again.unit, again.place]).toEqual([
          read.value.toString(),
          read.unit,
          read.place,
        ])
      }),
    )
  })

  it('a result, rounded to its figures', () => {
    fc.assert(
      fc.property(calculation, ({ result }) => {
        const again = quantity(result.toString() as '1')
        expect(again.toString()).toBe(result.toString())
      }),
    )
  })

  it('a number with its uncertainty', () => {
    fc.assert(
      fc.property(calculation, ({ result }) => {
        const standard = standardUncertainty(result).value
        const text = writeWithUncertainty(result)
        const again = quantity(text as '1')
        if (standard.isZero()) expect(text).toBe(result.toString())
        else expect(again.input?.uncertainty?.standard.div(standard).toNumber()).toBeCloseTo(1, 1)
        expect(writeWithUncertainty(again)).toBe(text)
      }),
    )
  })
})

describe('from JSON', () => {
  it.each([
    {
      what: 'rounds up to the next power of ten',
      number: quantity('9.99975').plus(quantity('0.000')),
      shown: '10.000',
    },
    { what: 'rounds up from below its last place', number: quantity('6').plus(quantity('0e1')), shown: '10' },
    { what: 'has nothing left of its figures', number: quantity('1.23').minus(quantity('1.2')), shown: '0.0' },
  ])('a number that $what is shown as it was', ({ number, shown }) => {
    expect(number.toString()).toBe(shown)
    expect(fromJSON(stored(number)).toString()).toBe(shown)
    expect(toJSON(fromJSON(stored(toJSON(number))))).toEqual(toJSON(number))
  })

  it('a number is the same number', () => {
    fc.assert(
      fc.property(calculation, ({ result }) => {
        expect(fromJSON(stored(result)).toString()).toBe(result.toString())
        expect(toJSON(fromJSON(stored(toJSON(result))))).toEqual(toJSON(result))
      }),
    )
  })

  it('a calculation is the same calculation: value, figures, uncertainty, last line of the working', () => {
    fc.assert(
      fc.property(calculation, ({ result, inputs }) => {
        const saved = calculationToJSON([result, ...inputs])
        const [again] = calculationFromJSON(stored(saved)) as readonly [Quantity<'ratio'>]
        expect(again.toString()).toBe(result.toString())
        expect(standardUncertainty(again).value.toString()).toBe(standardUncertainty(result).value.toString())
        expect(lastLine(again)).toEqual(lastLine(result))
        expect(calculationToJSON(calculationFromJSON(stored(saved)))).toEqual(saved)
      }),
    )
  })
})

const lastLine = (q: Quantity): unknown => working(q).steps.at(-1)?.shown

describe('propagation', () => {
  it('equals numerical differentiation', () => {
    fc.assert(
      fc.property(calculation, ({ inputs, result }) => {
        const squares = inputs.map((input, index) => {
          const standard = input.input?.uncertainty?.standard.toNumber() ?? 0
          return (derivative(result, `x${index}`, input) * standard) ** 2
        })
        const numerical = Math.sqrt(squares.reduce((total, square) => total + square, 0))
        const propagated = standardUncertainty(result).value.toNumber()
        expect(Math.abs(propagated - numerical)).toBeLessThanOrEqual(1e-9 * (propagated + 1e-3))
      }),
    )
  })

  /** The slope between two neighbours of an input, worked out by doing the calculation again for each. */
  function derivative(result: Quantity<'ratio'>, id: string, input: Quantity<'ratio'>): number {
    const step = input.value.times('1e-10')
    const at = (value: typeof step) =>
      reconsider(result, { replace: { id }, with: exact(value.toFixed() as '1') }).value
    return at(input.value.plus(step))
      .minus(at(input.value.minus(step)))
      .div(step.times(2))
      .toNumber()
  }
})

/** Another number may take a calculation out of range; then there is nothing to compare. */
function possible<T>(calculate: () => T): T {
  try {
    return calculate()
  } catch (error) {
    fc.pre(!(isSaltwrightError(error) && error.code === 'quantity/out-of-range'))
    throw error
  }
}

describe('reconsideration', () => {
  it('with no change is the same quantity', () => {
    fc.assert(
      fc.property(calculation, ({ inputs, result }) => {
        expect(reconsider(result, { replace: { label: 'nothing here' }, with: exact('1') })).toBe(result)
        expect(reconsider(result, [])).toBe(result)
        for (const [index, input] of inputs.entries())
          expect(reconsider(result, { replace: { id: `x${index}` }, with: input })).toBe(result)
      }),
    )
  })

  it('there and back again has the same value', () => {
    fc.assert(
      fc.property(calculation, ({ inputs, result }) => {
        const [first] = inputs as readonly [Quantity<'ratio'>]
        const other = constant('2.5', { id: 'other' })
        const there = possible(() => reconsider(result, { replace: { id: 'x0' }, with: other }))
        expect(reconsider(there, { replace: { id: 'other' }, with: first }).value.eq(result.value)).toBe(true)
      }),
    )
  })
})

describe('the order', () => {
  const terms = fc
    .array(numeral, { minLength: 2, maxLength: 8 })
    .chain((list) => fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length })))
  const grams = (list: readonly string[]): readonly Quantity<'mass'>[] =>
    list.map((text) => quantity(`${text} g` as '1 g'))

  it('of a sum changes neither its value nor its figures', () => {
    fc.assert(
      fc.property(terms, ([list, shuffled]) => {
        const [one, other] = [sum(grams(list)), sum(grams(shuffled))]
        expect(other.toString()).toBe(one.toString())
        const chain = grams(shuffled).reduce((total, each) => total.plus(each))
        expect(chain.toString()).toBe(one.toString())
      }),
    )
  })

  it('of a product changes neither', () => {
    fc.assert(
      fc.property(terms, ([list, shuffled]) => {
        const product = (texts: readonly string[]): Quantity<'ratio'> =>
          texts.map((text) => quantity(text as '1')).reduce((total, each) => total.times(each))
        const [one, other] = [product(list), product(shuffled)]
        expect(other.value.minus(one.value).abs().lte(one.value.times('1e-30'))).toBe(true)
        expect(other.significantFigures).toBe(one.significantFigures)
      }),
    )
  })
})

describe('a change of unit', () => {
  it.each([
    { from: 'g', to: 'mg' },
    { from: 'mL', to: 'L' },
    { from: 'mol', to: 'umol' },
    { from: '%', to: '1' },
    { from: 'degC', to: 'K' },
    { from: 'kJ/mol', to: 'J/mol' },
  ] as const)('from $from to $to and back keeps value and place', ({ from, to }) => {
    fc.assert(
      fc.property(numeral, (text) => {
        const read = quantity(`${text} ${from}` as '1 g')
        const back = read.to(to as 'mg').to(from as 'g')
        expect(back.value.eq(read.value)).toBe(true)
        expect(back.toString()).toBe(read.toString())
        expect(back.equals(read)).toBe(true)
      }),
    )
  })

  it('does not change an amount worked out from it', () => {
    fc.assert(
      fc.property(numeral, numeral, (mass, molarMass) => {
        const one = quantity(`${mass} g` as '1 g').dividedBy(quantity(`${molarMass} g/mol` as '1 g/mol'))
        const other = quantity(`${mass} g` as '1 g')
          .to('mg')
          .dividedBy(quantity(`${molarMass} g/mol` as '1 g/mol').to('kg/mol'))
          .to('mol')
        expect(other.value.minus(one.value).abs().lte(one.value.times('1e-30'))).toBe(true)
        expect(other.significantFigures).toBe(one.significantFigures)
      }),
    )
  })
})
