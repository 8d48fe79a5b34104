import { describe, expect, it } from 'vitest'
import {
  type Dimension,
  isDimension,
  nameDimension,
  productDimension,
  products,
  quotientDimension,
  quotients,
} from '../../src/quantity/dimension.js'
import { units } from '../../src/quantity/unit.js'

/** Each dimension as powers of mass, amount, volume, temperature, time and energy. */
const powers: Readonly<Record<Dimension, readonly number[]>> = {
  ratio: [0, 0, 0, 0, 0, 0],
  mass: [1, 0, 0, 0, 0, 0],
  amount: [0, 1, 0, 0, 0, 0],
  volume: [0, 0, 1, 0, 0, 0],
  molarMass: [1, -1, 0, 0, 0, 0],
  amountConcentration: [0, 1, -1, 0, 0, 0],
  density: [1, 0, -1, 0, 0, 0],
  molality: [-1, 1, 0, 0, 0, 0],
  temperature: [0, 0, 0, 1, 0, 0],
  time: [0, 0, 0, 0, 1, 0],
  pressure: [0, 0, -1, 0, 0, 1],
  energy: [0, 0, 0, 0, 0, 1],
  molarEnergy: [0, -1, 0, 0, 0, 1],
  molarVolume: [0, -1, 1, 0, 0, 0],
  molarHeatCapacity: [0, -1, 0, -1, 0, 1],
  specificHeatCapacity: [-1, 0, 0, -1, 0, 1],
  heatCapacity: [0, 0, 0, -1, 0, 1],
}
const all = Object.keys(powers) as Dimension[]

function rows(table: object): readonly (readonly [Dimension, Dimension, Dimension])[] {
  return Object.entries(table).flatMap(([a, row]) =>
    Object.entries(row as object).map(([b, result]) => [a, b, result] as [Dimension, Dimension, Dimension]),
  )
}

describe('the tables of products and quotients', () => {
  it.each(rows(products))('%s times %s is %s', (a, b, result) => {
    expect(powers[result]).toEqual(powers[a].map((power, index) => power + (powers[b][index] as number)))
  })

  it.each(rows(quotients))('%s divided by %s is %s', (a, b, result) => {
    expect(powers[result]).toEqual(powers[a].map((power, index) => power - (powers[b][index] as number)))
  })

  it('a product is known both ways, and undone by division', () => {
    const open = all.flatMap((a) =>
      all.flatMap((b) => {
        const result = productDimension(a, b)
        if (result === undefined) return []
        return productDimension(b, a) === result && quotientDimension(result, b) === a ? [] : [`${a} times ${b}`]
      }),
    )
    expect(open).toEqual([])
  })

  it('a quotient is undone by multiplication', () => {
    const open = all.flatMap((a) =>
      all.flatMap((b) => {
        const result = quotientDimension(a, b)
        return result === undefined || productDimension(result, b) === a ? [] : [`${a} by ${b}`]
      }),
    )
    expect(open).toEqual([])
  })

  it('a ratio changes nothing, and equals make one', () => {
    for (const one of all) {
      expect(productDimension(one, 'ratio')).toBe(one)
      expect(productDimension('ratio', one)).toBe(one)
      expect(quotientDimension(one, 'ratio')).toBe(one)
      expect(quotientDimension(one, one)).toBe('ratio')
    }
  })

  it('says nothing where nothing is meant', () => {
    expect(productDimension('mass', 'mass')).toBeUndefined()
    expect(quotientDimension('time', 'mass')).toBeUndefined()
    expect(productDimension('time', 'mass')).toBeUndefined()
  })

  it('every dimension has a name and a unit', () => {
    for (const one of all) expect(nameDimension(one)).toMatch(/^an? /)
    expect(new Set(Object.values(units).map(({ dimension }) => dimension))).toEqual(new Set(all))
  })

  it.each(['toString', '__proto__', 'length', 5, null, undefined])('%s is no dimension', (value) => {
    expect(isDimension(value)).toBe(false)
  })
})
