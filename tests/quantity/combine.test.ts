import { describe, expect, it } from 'vitest'
import { Decimal } from '../../src/decimal.js'
import { conversionBetween, productOf, quotientOf } from '../../src/quantity/combine.js'
import { productDimension, quotientDimension } from '../../src/quantity/dimension.js'
import { type Unit, units } from '../../src/quantity/unit.js'

const all = Object.keys(units) as Unit[]
const size = (unit: Unit): Decimal => new Decimal(units[unit].factor)

describe('units of a product', () => {
  it.each([
    { left: 'mol', right: 'g/mol', gives: 'g' },
    { left: 'g/mol', right: 'mmol', gives: 'g' }, // the mmol become mol
    { left: 'mol/L', right: 'mL', gives: 'mol' },
    { left: 'mmol/L', right: 'L', gives: 'mmol' },
    { left: 'g/mL', right: 'mL', gives: 'g' },
    { left: 'mg', right: '%', gives: 'mg' },
    { left: '%', right: 'mL', gives: 'mL' },
    { left: '%', right: '%', gives: '%' },
    { left: 'degC', right: '1', gives: 'K' }, // twice 10 °C would mean nothing
    { left: '1', right: 'degC', gives: 'K' },
    { left: 'kPa', right: 'L', gives: 'J' },
    { left: 'g/L', right: 'mol/kg', gives: 'mol/L' },
  ] as const)('$left times $right is in $gives', ({ left, right, gives }) => {
    expect(productOf(left, right)?.unit).toBe(gives)
  })

  it('is none where the dimensions do not go together', () => expect(productOf('g', 'g')).toBeUndefined())
})

describe('units of a quotient', () => {
  it.each([
    { left: 'g', right: 'g/mol', gives: 'mol' },
    { left: 'mg', right: 'g/mol', gives: 'mol' },
    { left: 'mol', right: 'mol/L', gives: 'L' },
    { left: 'mmol', right: 'mmol/L', gives: 'L' },
    { left: 'g', right: 'mL', gives: 'g/mL' },
    { left: 'mg', right: 'mL', gives: 'g/L' },
    { left: 'mmol', right: 'g', gives: 'mol/kg' },
    { left: 'g', right: 'mg', gives: '1' },
    { left: '%', right: '%', gives: '1' },
    { left: 'g', right: '%', gives: 'g' },
    { left: 'degC', right: 'degC', gives: '1' },
    { left: 'degC', right: '1', gives: 'K' },
    { left: 'J', right: 'degC', gives: 'J/K' },
    { left: 'g/mL', right: 'g/mol', gives: 'mol/L' },
  ] as const)('$left divided by $right is in $gives', ({ left, right, gives }) => {
    expect(quotientOf(left, right)?.unit).toBe(gives)
  })

  it('is none where the dimensions do not go together', () => expect(quotientOf('s', 'g')).toBeUndefined())
})

describe('for every pair of units', () => {
  const pairs = all.flatMap((left) => all.map((right) => [left, right] as const))

  it('a product is as large in its unit as the operands say', () => {
    for (const [left, right] of pairs) {
      const plan = productOf(left, right)
      expect(plan?.dimension).toBe(productDimension(units[left].dimension, units[right].dimension))
      if (plan !== undefined) expect(size(plan.left).times(size(plan.right)).eq(size(plan.unit))).toBe(true)
    }
  })

  it('a quotient is as large in its unit as the operands say', () => {
    for (const [left, right] of pairs) {
      const plan = quotientOf(left, right)
      expect(plan?.dimension).toBe(quotientDimension(units[left].dimension, units[right].dimension))
      if (plan !== undefined) expect(size(plan.left).div(size(plan.right)).eq(size(plan.unit))).toBe(true)
    }
  })

  it('operands are converted within their dimension', () => {
    for (const [left, right] of pairs) {
      for (const plan of [productOf(left, right), quotientOf(left, right)]) {
        if (plan === undefined) continue
        expect(units[plan.left].dimension).toBe(units[left].dimension)
        expect(units[plan.right].dimension).toBe(units[right].dimension)
        expect(units[plan.unit].dimension).toBe(plan.dimension)
      }
    }
  })
})

describe('conversions', () => {
  it('are exact, by a factor or its inverse', () => {
    expect(conversionBetween('g', 'kg')).toEqual({ factor: new Decimal('0.001') })
    expect(conversionBetween('s', 'h')).toEqual({ factor: new Decimal(3600), inverse: true })
    expect(conversionBetween('h', 's')).toEqual({ factor: new Decimal(3600) })
    expect(conversionBetween('degC', 'K')).toEqual({ factor: new Decimal(1), offset: new Decimal('273.15') })
    expect(conversionBetween('K', 'degC')).toEqual({ factor: new Decimal(1), offset: new Decimal('-273.15') })
  })

  it('are found once', () => expect(conversionBetween('g', 'mg')).toBe(conversionBetween('g', 'mg')))

  it('there and back is nothing', () => {
    for (const from of all) {
      for (const to of all.filter((unit) => units[unit].dimension === units[from].dimension)) {
        const [there, back] = [conversionBetween(from, to), conversionBetween(to, from)]
        const apply = (
          x: Decimal,
          { factor = new Decimal(1), inverse, offset = new Decimal(0) }: typeof there,
        ): Decimal => (inverse ? x.div(factor) : x.times(factor)).plus(offset)
        expect(
          apply(apply(new Decimal('7.25'), there), back)
            .toSignificantDigits(30)
            .eq('7.25'),
        ).toBe(true)
      }
    }
  })
})
