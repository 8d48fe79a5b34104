import { describe, expect, it } from 'vitest'
import { putIn } from '../../src/quantity/expressions.js'
import type { Expression } from '../../src/quantity/rule.js'

const name = (operand: number): Expression => ({ kind: 'name', operand })
const one: Expression = { kind: 'number', text: '1' }
const [a, b, c] = [name(0), name(1), name(2)]
const sum = (...terms: Expression[]): Expression => ({ kind: 'sum', terms })
const product = (...factors: Expression[]): Expression => ({ kind: 'product', factors })
const fraction = (top: Expression, bottom: Expression): Expression => ({ kind: 'fraction', top, bottom })
const difference = (left: Expression, right: Expression): Expression => ({ kind: 'difference', left, right })

/** Operands that are put in for the positions 0, 1, 2. */
const as =
  (...operands: Expression[]) =>
  (index: number): Expression =>
    operands[index] as Expression

describe('an expression with its operands put in', () => {
  it.each([
    { what: 'a sum in a sum', rule: sum(a, b), operands: [sum(a, b), c], is: sum(a, b, c) },
    { what: 'a product in a product', rule: product(a, b), operands: [a, product(b, c)], is: product(a, b, c) },
    { what: 'a factor of one', rule: product(a, b), operands: [one, b], is: b },
    { what: 'nothing but factors of one', rule: product(a, b), operands: [one, one], is: one },
    { what: 'over one', rule: fraction(a, b), operands: [a, one], is: a },
    { what: 'one over something', rule: fraction(a, b), operands: [one, b], is: fraction(one, b) },
    {
      what: 'a fraction over something',
      rule: fraction(a, b),
      operands: [fraction(a, b), c],
      is: fraction(a, product(b, c)),
    },
    {
      what: 'something over a fraction',
      rule: fraction(a, b),
      operands: [a, fraction(b, c)],
      is: fraction(a, fraction(b, c)),
    },
    { what: 'a difference', rule: difference(a, b), operands: [sum(a, b), c], is: difference(sum(a, b), c) },
    {
      what: 'a power',
      rule: { kind: 'power', base: a, exponent: { kind: 'number', text: '2' } },
      operands: [b],
      is: { kind: 'power', base: b, exponent: { kind: 'number', text: '2' } },
    },
    { what: 'a root', rule: { kind: 'root', of: a }, operands: [b], is: { kind: 'root', of: b } },
    {
      what: 'a function',
      rule: { kind: 'call', name: 'ln', of: a },
      operands: [b],
      is: { kind: 'call', name: 'ln', of: b },
    },
  ] as { what: string; rule: Expression; operands: Expression[]; is: Expression }[])(
    '$what',
    ({ rule, operands, is }) => expect(putIn(rule, as(...operands))).toEqual(is),
  )
})
