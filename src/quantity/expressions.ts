import type { Expression } from './rule.js'

/** An expression with its operands put in, written as a person would: no sum within a sum, no fraction over a fraction, no factor 1. */
export function putIn(expression: Expression, operand: (index: number) => Expression): Expression {
  const within = (part: Expression): Expression => putIn(part, operand)
  switch (expression.kind) {
    case 'name':
      return operand(expression.operand)
    case 'number':
      return expression
    case 'sum':
      return sumOf(expression.terms.map(within))
    case 'difference':
      return { kind: 'difference', left: within(expression.left), right: within(expression.right) }
    case 'product':
      return productOf(expression.factors.map(within))
    case 'fraction':
      return fractionOf(within(expression.top), within(expression.bottom))
    case 'power':
      return { kind: 'power', base: within(expression.base), exponent: within(expression.exponent) }
    case 'root':
      return { kind: 'root', of: within(expression.of) }
    case 'call':
      return { kind: 'call', name: expression.name, of: within(expression.of) }
  }
}

function sumOf(terms: readonly Expression[]): Expression {
  return { kind: 'sum', terms: terms.flatMap((term) => (term.kind === 'sum' ? term.terms : [term])) }
}

function productOf(parts: readonly Expression[]): Expression {
  const factors = parts
    .flatMap((part) => (part.kind === 'product' ? part.factors : [part]))
    .filter((factor) => !isOne(factor))
  const [first, second] = factors
  if (first === undefined) return { kind: 'number', text: '1' }
  return second === undefined ? first : { kind: 'product', factors }
}

function fractionOf(top: Expression, bottom: Expression): Expression {
  if (isOne(bottom)) return top
  if (top.kind !== 'fraction') return { kind: 'fraction', top, bottom }
  return { kind: 'fraction', top: top.top, bottom: productOf([top.bottom, bottom]) }
}

function isOne(expression: Expression): boolean {
  return expression.kind === 'number' && expression.text === '1'
}
