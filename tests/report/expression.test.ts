import { describe, expect, it } from 'vitest'
import type { Expression } from '../../src/quantity/index.js'
import { type Notation, rank, type Written, writeExpression } from '../../src/report/expression.js'

const inLine: Notation = {
  group: (inner) => `(${inner})`,
  plus: ' + ',
  minus: ' - ',
  times: ' * ',
  number: (text) => text,
  fraction: (top, bottom) => `${top} / ${bottom}`,
  hasBar: false,
  power: (base, exponent) => `${base}^${exponent}`,
  root: (of) => `root(${of})`,
  call: (name, of) => `${name}(${of})`,
}
const stacked: Notation = { ...inLine, fraction: (top, bottom) => `{${top}|${bottom}}`, hasBar: true }

const operands: Readonly<Record<string, Written>> = {
  a: { text: 'a', rank: rank.atom },
  '-1': { text: '-1', rank: rank.signed },
  'g/mol': { text: '2 g/mol', rank: rank.compound },
  g: { text: '3 g', rank: rank.tight },
}
const order = Object.keys(operands)

const operand = (key: string): Expression => ({ kind: 'name', operand: order.indexOf(key) })
const [a, negative, molar, mass] = [operand('a'), operand('-1'), operand('g/mol'), operand('g')]
const two: Expression = { kind: 'number', text: '2' }
const sum = (...terms: Expression[]): Expression => ({ kind: 'sum', terms })
const minus = (left: Expression, right: Expression): Expression => ({ kind: 'difference', left, right })
const times = (...factors: Expression[]): Expression => ({ kind: 'product', factors })
const over = (top: Expression, bottom: Expression): Expression => ({ kind: 'fraction', top, bottom })
const raised = (base: Expression, exponent: Expression): Expression => ({ kind: 'power', base, exponent })

describe('an expression with brackets where they are needed', () => {
  it.each([
    { e: sum(a, mass), line: 'a + 3 g' },
    { e: sum(a, negative), line: 'a + (-1)' },
    { e: sum(minus(a, mass), a), line: 'a - 3 g + a' },
    { e: minus(a, mass), line: 'a - 3 g' },
    { e: minus(a, negative), line: 'a - (-1)' },
    { e: minus(a, sum(a, a)), line: 'a - (a + a)' },
    { e: minus(sum(a, a), times(a, a)), line: 'a + a - a * a' },
    { e: minus(a, over(a, mass)), line: 'a - a / 3 g' },
    { e: times(two, molar), line: '2 * 2 g/mol' },
    { e: times(sum(a, a), a), line: '(a + a) * a' },
    { e: times(over(a, mass), a), line: '(a / 3 g) * a' },
    { e: times(negative, a), line: '(-1) * a' },
    { e: over(mass, molar), line: '3 g / (2 g/mol)' },
    { e: over(molar, mass), line: '(2 g/mol) / 3 g' },
    { e: over(times(a, a), times(a, a)), line: 'a * a / (a * a)' },
    { e: over(a, over(a, a)), line: 'a / (a / a)' },
    { e: over(sum(a, a), two), line: '(a + a) / 2' },
    { e: raised(a, two), line: 'a^2' },
    { e: raised(mass, two), line: '(3 g)^2' },
    { e: raised(two, negative), line: '2^(-1)' },
    { e: times(raised(a, two), a), line: 'a^2 * a' },
    { e: over(a, raised(a, two)), line: 'a / a^2' },
    { e: { kind: 'root', of: sum(a, a) }, line: 'root(a + a)' },
    { e: { kind: 'call', name: 'ln', of: minus(a, a) }, line: 'ln(a - a)' },
  ] as { e: Expression; line: string }[])('$line', ({ e, line }) => {
    expect(writeExpression(e, inLine, (index) => operands[order[index] as string] as Written).text).toBe(line)
  })

  it.each([
    { e: over(sum(a, a), over(a, molar)), line: '{a + a|{a|2 g/mol}}' },
    { e: times(over(a, mass), a), line: '{a|3 g} * a' },
    { e: raised(over(a, a), sum(a, two)), line: '{a|a}^a + 2' },
  ])('with fraction bars: $line', ({ e, line }) => {
    expect(writeExpression(e, stacked, (index) => operands[order[index] as string] as Written).text).toBe(line)
  })
})
