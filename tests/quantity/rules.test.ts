import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Decimal } from '../../src/decimal.js'
import type { Expression, Rule, RuleSettings } from '../../src/quantity/rule.js'
import { type RuleName, rules } from '../../src/quantity/rules.js'

/** Settings and operands with which a rule can be tried: as many values as it takes, all above zero. */
interface Trial {
  readonly settings: RuleSettings
  readonly count: number
  readonly largest?: number
}

const trials: Readonly<Record<RuleName, readonly Trial[]>> = {
  sum: [{ settings: {}, count: 3 }],
  difference: [{ settings: {}, count: 2 }],
  product: [{ settings: {}, count: 2 }],
  quotient: [{ settings: {}, count: 2 }],
  conversion: [
    { settings: { factor: new Decimal(60) }, count: 1 },
    { settings: { factor: new Decimal(3600), inverse: true }, count: 1 },
    { settings: { factor: new Decimal(1), offset: new Decimal('273.15') }, count: 1 },
  ],
  mean: [{ settings: {}, count: 4 }],
  weightedSum: [{ settings: { counts: [new Decimal(2), new Decimal('0.5'), new Decimal(-1)] }, count: 3 }],
  power: [
    { settings: { exponent: 3 }, count: 1 },
    { settings: { exponent: -2 }, count: 1 },
    { settings: { exponent: 0 }, count: 1 },
  ],
  squareRoot: [{ settings: {}, count: 1 }],
  logarithm: [{ settings: {}, count: 1 }],
  antilogarithm: [{ settings: {}, count: 1, largest: 3 }],
  naturalLogarithm: [{ settings: {}, count: 1 }],
  exponential: [{ settings: {}, count: 1, largest: 3 }],
  sine: [{ settings: {}, count: 1, largest: 6 }],
  cosine: [{ settings: {}, count: 1, largest: 6 }],
  rounded: [],
}
const table = Object.entries(trials).flatMap(([name, list]) => list.map((trial) => ({ name: name as RuleName, trial })))

const evaluate = (rule: Rule, values: readonly Decimal[], settings: RuleSettings): Decimal =>
  rule.evaluate(
    values.map((value) => ({ value, place: null })),
    settings,
  )

/** By the difference of two values close by, in 34 digits. */
function numericalPartial(rule: Rule, values: readonly Decimal[], settings: RuleSettings, index: number): number {
  const step = (values[index] as Decimal).times('1e-10')
  const moved = (by: Decimal): Decimal =>
    evaluate(
      rule,
      values.map((value, position) => (position === index ? value.plus(by) : value)),
      settings,
    )
  return moved(step).minus(moved(step.neg())).div(step.times(2)).toNumber()
}

describe('the derivatives in the table are those of the function', () => {
  it.each(table)('$name $trial.settings', ({ name, trial: { settings, count, largest = 100 } }) => {
    const rule: Rule = rules[name]
    const value = fc.double({ min: 0.1, max: largest, noNaN: true })
    fc.assert(
      fc.property(fc.array(value, { minLength: count, maxLength: count }), (numbers) => {
        const values = numbers.map((number) => new Decimal(number))
        const result = evaluate(rule, values, settings).toNumber()
        const partials = rule.partials(numbers, result, settings)
        expect(partials.length).toBe(count)
        partials.forEach((partial, index) => {
          const numerical = numericalPartial(rule, values, settings, index)
          expect(Math.abs(partial - numerical)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(numerical)))
        })
      }),
      { numRuns: 50 },
    )
  })

  it('a rounded number stands for the one it was made from', () => {
    expect(rules.rounded.partials([1.26], 1.3, {})).toEqual([1])
  })

  it('the zeroth power of zero does not depend on it', () => {
    expect(rules.power.partials([0], 1, { exponent: 0 })).toEqual([0])
  })
})

const at = (value: string, place: number | null) => ({ value: new Decimal(value), place })
const half = new Decimal('0.5')
const figures = { figures: 2, ties: 'half-even' } as const

describe('the last significant place', () => {
  it.each([
    { rule: 'sum', operands: [at('1.1', -1), at('2.22', -2)], settings: {}, place: -1 },
    { rule: 'difference', operands: [at('5', null), at('2.22', -2)], settings: {}, place: -2 },
    { rule: 'product', operands: [at('2.0', -1), at('3.00', -2)], settings: {}, place: -1 },
    { rule: 'quotient', operands: [at('6.0', -1), at('3.00', -2)], settings: {}, place: -1 },
    { rule: 'quotient', operands: [at('0', -2), at('31', 0)], settings: {}, place: -3 },
    { rule: 'quotient', operands: [at('0', null), at('31', 0)], settings: {}, place: null },
    { rule: 'conversion', operands: [at('1.50', -2)], settings: { factor: new Decimal(1000) }, place: 1 },
    { rule: 'conversion', operands: [at('1.50', -2)], settings: { factor: new Decimal(60) }, place: -1 },
    { rule: 'conversion', operands: [at('0.0', -1)], settings: { factor: new Decimal(60) }, place: 0 },
    { rule: 'conversion', operands: [at('0', 0)], settings: { factor: new Decimal(60), inverse: true }, place: -1 },
    { rule: 'conversion', operands: [at('50', 0)], settings: { factor: new Decimal(10), inverse: true }, place: -1 },
    { rule: 'conversion', operands: [at('5', null)], settings: { factor: new Decimal(60) }, place: null },
    { rule: 'conversion', operands: [at('20', 0)], settings: { factor: new Decimal(1), offset: half }, place: 0 },
    { rule: 'mean', operands: [at('1.1', -1), at('2.2', -1)], settings: {}, place: -1 },
    { rule: 'weightedSum', operands: [at('1.008', -3)], settings: { counts: [new Decimal(12)] }, place: -3 },
    { rule: 'weightedSum', operands: [at('1.008', -3)], settings: { counts: [half] }, place: -4 },
    { rule: 'power', operands: [at('1.2', -1)], settings: { exponent: 3 }, place: -1 },
    { rule: 'squareRoot', operands: [at('2.25', -2)], settings: {}, place: -2 },
    { rule: 'logarithm', operands: [at('0.00000010', -8)], settings: {}, place: -2 },
    { rule: 'logarithm', operands: [at('100', null)], settings: {}, place: null },
    { rule: 'antilogarithm', operands: [at('-6.52', -2)], settings: {}, place: -8 },
    { rule: 'antilogarithm', operands: [at('2', null)], settings: {}, place: null },
    { rule: 'naturalLogarithm', operands: [at('2.00', -2)], settings: {}, place: -3 },
    { rule: 'naturalLogarithm', operands: [at('2', null)], settings: {}, place: null },
    { rule: 'exponential', operands: [at('0.693', -3)], settings: {}, place: -2 },
    { rule: 'exponential', operands: [at('2', null)], settings: {}, place: null },
    { rule: 'sine', operands: [at('1.233', -3)], settings: {}, place: -4 },
    { rule: 'cosine', operands: [at('1.233', -3)], settings: {}, place: -4 },
    { rule: 'rounded', operands: [at('1.234', -3)], settings: { rounding: figures }, place: -1 },
    { rule: 'rounded', operands: [at('12', 1)], settings: { rounding: figures }, place: 1 },
    { rule: 'rounded', operands: [at('1.234', null)], settings: { rounding: figures }, place: -1 },
  ] as const)('$rule of $operands: 10^$place', ({ rule, operands, settings, place }) => {
    const row: Rule = rules[rule]
    expect(row.place(operands, row.evaluate(operands, settings), settings)).toBe(place)
  })
})

/** An expression in one line, operands as a, b, c. */
function line(e: Expression): string {
  switch (e.kind) {
    case 'name':
      return 'abc'[e.operand] as string
    case 'number':
      return e.text
    case 'sum':
      return e.terms.map(line).join(' + ')
    case 'difference':
      return `${line(e.left)} - ${line(e.right)}`
    case 'product':
      return e.factors.map(line).join(' · ')
    case 'fraction':
      return `(${line(e.top)}) / (${line(e.bottom)})`
    case 'power':
      return `${line(e.base)}^${line(e.exponent)}`
    case 'root':
      return `√${line(e.of)}`
    case 'call':
      return `${e.name}(${line(e.of)})`
  }
}

describe('how a rule is written', () => {
  const counts = [new Decimal(1), new Decimal(2)]
  it.each([
    { rule: 'sum', count: 3, settings: {}, is: 'a + b + c' },
    { rule: 'difference', count: 2, settings: {}, is: 'a - b' },
    { rule: 'product', count: 2, settings: {}, is: 'a · b' },
    { rule: 'quotient', count: 2, settings: {}, is: '(a) / (b)' },
    { rule: 'conversion', count: 1, settings: { factor: new Decimal(60) }, is: 'a' },
    { rule: 'mean', count: 2, settings: {}, is: '(a + b) / (2)' },
    { rule: 'weightedSum', count: 2, settings: { counts }, is: 'a + 2 · b' },
    { rule: 'power', count: 1, settings: { exponent: 3 }, is: 'a^3' },
    { rule: 'squareRoot', count: 1, settings: {}, is: '√a' },
    { rule: 'logarithm', count: 1, settings: {}, is: 'log10(a)' },
    { rule: 'antilogarithm', count: 1, settings: {}, is: '10^a' },
    { rule: 'naturalLogarithm', count: 1, settings: {}, is: 'ln(a)' },
    { rule: 'exponential', count: 1, settings: {}, is: 'exp(a)' },
    { rule: 'sine', count: 1, settings: {}, is: 'sin(a)' },
    { rule: 'cosine', count: 1, settings: {}, is: 'cos(a)' },
    { rule: 'rounded', count: 1, settings: { rounding: figures }, is: 'a' },
  ] as const)('$rule: $is', ({ rule, count, settings, is }) => {
    const row: Rule = rules[rule]
    expect(line(row.write(count, settings))).toBe(is)
  })
})

describe('which units go into a rule and come out', () => {
  const factor = new Decimal('0.001')
  const counts = [new Decimal(1), new Decimal(2)]
  it.each([
    { rule: 'sum', units: ['g', 'g'], result: 'g', settings: {}, fits: true },
    { rule: 'sum', units: ['g', 'mg'], result: 'g', settings: {}, fits: false },
    { rule: 'sum', units: [], result: 'g', settings: {}, fits: false },
    { rule: 'difference', units: ['g', 'g'], result: 'g', settings: {}, fits: true },
    { rule: 'difference', units: ['g'], result: 'g', settings: {}, fits: false },
    { rule: 'difference', units: ['g', 'g', 'g'], result: 'g', settings: {}, fits: false },
    { rule: 'product', units: ['mol', 'g/mol'], result: 'g', settings: {}, fits: true },
    { rule: 'product', units: ['mol', 'g/mol'], result: 'mg', settings: {}, fits: false },
    { rule: 'product', units: ['mmol', 'g/mol'], result: 'g', settings: {}, fits: false },
    { rule: 'product', units: ['g/mol', 'mmol'], result: 'g', settings: {}, fits: false },
    { rule: 'product', units: ['g', 'g'], result: 'g', settings: {}, fits: false },
    { rule: 'product', units: ['g'], result: 'g', settings: {}, fits: false },
    { rule: 'product', units: [], result: 'g', settings: {}, fits: false },
    { rule: 'product', units: ['g', '1', '1'], result: 'g', settings: {}, fits: false },
    { rule: 'quotient', units: ['g', 'g/mol'], result: 'mol', settings: {}, fits: true },
    { rule: 'quotient', units: ['mg', 'g/mol'], result: 'mol', settings: {}, fits: false },
    { rule: 'conversion', units: ['g'], result: 'kg', settings: { factor }, fits: true },
    { rule: 'conversion', units: ['g'], result: 'kg', settings: {}, fits: false },
    { rule: 'conversion', units: ['g'], result: 'L', settings: { factor }, fits: false },
    { rule: 'conversion', units: ['g', 'g'], result: 'kg', settings: { factor }, fits: false },
    { rule: 'conversion', units: [], result: 'kg', settings: { factor }, fits: false },
    { rule: 'mean', units: ['degC', 'degC'], result: 'degC', settings: {}, fits: true },
    { rule: 'weightedSum', units: ['g/mol', 'g/mol'], result: 'g/mol', settings: { counts }, fits: true },
    { rule: 'weightedSum', units: ['g/mol'], result: 'g/mol', settings: { counts }, fits: false },
    { rule: 'weightedSum', units: ['g/mol'], result: 'g/mol', settings: {}, fits: false },
    { rule: 'weightedSum', units: ['g/mol', 'g'], result: 'g/mol', settings: { counts }, fits: false },
    { rule: 'power', units: ['1'], result: '1', settings: { exponent: 2 }, fits: true },
    { rule: 'power', units: ['1'], result: '1', settings: {}, fits: false },
    { rule: 'power', units: ['g'], result: '1', settings: { exponent: 2 }, fits: false },
    { rule: 'squareRoot', units: ['1'], result: '1', settings: {}, fits: true },
    { rule: 'squareRoot', units: ['1', '1'], result: '1', settings: {}, fits: false },
    { rule: 'logarithm', units: ['1'], result: '%', settings: {}, fits: false },
    { rule: 'rounded', units: ['g'], result: 'g', settings: { rounding: figures }, fits: true },
    { rule: 'rounded', units: ['g'], result: 'mg', settings: { rounding: figures }, fits: false },
    { rule: 'rounded', units: ['g', 'g'], result: 'g', settings: { rounding: figures }, fits: false },
    { rule: 'rounded', units: ['g'], result: 'g', settings: {}, fits: false },
  ] as const)('$rule of $units in $result with $settings: $fits', ({ rule, units, result, settings, fits }) => {
    const row: Rule = rules[rule]
    expect(row.fits(units, result, settings)).toBe(fits)
  })
})
