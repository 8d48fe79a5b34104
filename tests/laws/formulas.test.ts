import fc from 'fast-check'
import { formatFormula, molarMass, parseFormula } from 'saltwright/formula'
import { describe, expect, it } from 'vitest'
import { addFractions, compareFractions, type Fraction, fractionOf, multiplyFractions } from '../../src/fraction.js'

const symbols = ['H', 'C', 'N', 'O', 'Na', 'S', 'Cl', 'K', 'Ca', 'Fe', 'Co', 'Cu', 'Zn', 'Br', 'Pb'] as const
const count = fc.integer({ min: 2, max: 30 }).map(String)
const atom = fc.tuple(fc.constantFrom(...symbols), fc.oneof(fc.constant(''), count)).map((pair) => pair.join(''))
const plain = fc.array(atom, { minLength: 1, maxLength: 5 }).map((atoms) => atoms.join(''))
const grouped = fc.tuple(plain, plain, count).map(([before, inside, number]) => `${before}(${inside})${number}`)
const formula = fc.oneof(plain, grouped)

type Counts = ReadonlyMap<string, Fraction>
const countsOf = (text: string): Counts => parseFormula(text).counts

function sum(...all: readonly Counts[]): Counts {
  const total = new Map<string, Fraction>()
  for (const counts of all)
    for (const [symbol, one] of counts) total.set(symbol, addFractions(total.get(symbol) ?? fractionOf(0), one))
  return total
}

const times = (counts: Counts, factor: number): Counts =>
  new Map([...counts].map(([symbol, one]) => [symbol, multiplyFractions(one, fractionOf(factor))]))

function expectSame(one: Counts, other: Counts): void {
  expect([...one.keys()].sort()).toEqual([...other.keys()].sort())
  for (const [symbol, each] of one) expect(compareFractions(each, other.get(symbol) as Fraction)).toBe(0)
}

describe('composition is additive', () => {
  it('over what is written side by side', () => {
    fc.assert(
      fc.property(formula, formula, (a, b) => expectSame(countsOf(`(${a})(${b})`), sum(countsOf(a), countsOf(b)))),
    )
  })

  it('over the parts of an addition compound, whatever stands first', () => {
    fc.assert(
      fc.property(formula, formula, fc.integer({ min: 2, max: 12 }), (a, b, number) => {
        expectSame(countsOf(`${a}·${number}${b}`), sum(countsOf(a), times(countsOf(b), number)))
        expectSame(countsOf(`(${b})${number}·${a}`), countsOf(`${a}·${number}${b}`))
      }),
    )
  })

  it('and multiplied by the count of a bracket, of any kind and depth', () => {
    fc.assert(
      fc.property(formula, fc.integer({ min: 2, max: 30 }), fc.integer({ min: 2, max: 9 }), (a, inner, outer) => {
        expectSame(countsOf(`[{${a}}${inner}]${outer}`), times(countsOf(a), inner * outer))
      }),
    )
  })

  it('and so is the molar mass', () => {
    fc.assert(
      fc.property(formula, formula, fc.integer({ min: 2, max: 12 }), (a, b, number) => {
        const whole = molarMass(`${a}·${number}${b}`).value
        expect(whole.eq(molarMass(a).value.plus(molarMass(b).value.times(number)))).toBe(true)
      }),
    )
  })
})

describe('what is written reads back', () => {
  it.each(['plain', 'unicode'] as const)('in the style %s, and is written the same again', (style) => {
    fc.assert(
      fc.property(formula, fc.constantFrom('', '·7H2O', '·½H2O', '^2-', '^+'), (text, end) => {
        const read = parseFormula(text + end)
        const again = parseFormula(formatFormula(read, style))
        expectSame(again.counts, read.counts)
        expect(again.charge).toBe(read.charge)
        expect(formatFormula(again, style)).toBe(formatFormula(read, style))
      }),
    )
  })
})
