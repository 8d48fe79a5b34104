import type { Decimal } from '../decimal.js'
import { showFound } from '../errors.js'
import { type Combination, conversionBetween, productOf, quotientOf } from './combine.js'
import { type Dimension, nameDimension } from './dimension.js'
import type { InputFacts, Naming } from './input.js'
import type { Quantity, QuantityJSON } from './quantity.js'
import { QuantityError } from './quantity-error.js'
import { type Rule, type RuleName, type RuleSettings, rules } from './rules.js'
import { writeQuantity } from './show.js'
import { figuresAt } from './significance.js'
import { findUnit, type Unit, units, unitsOf } from './unit.js'

/** Marks a quantity whichever copy of the library made it: `instanceof` fails between module formats. */
const brand: unique symbol = /* @__PURE__ */ Symbol.for('saltwright.quantity') as never

const noSettings: RuleSettings = {}
const noNames: Naming = {}
const noOperands: readonly Node[] = []

/** The largest power of ten of a result; derivatives of what lies within still fit into a double. */
const largestResult = 140

/** A node of the calculation graph: the one implementation of {@link Quantity}. */
class Node implements Quantity {
  readonly value: Decimal
  readonly unit: Unit
  readonly dimension: Dimension
  readonly rule: RuleName | 'input'
  readonly operands: readonly Node[]
  readonly settings: RuleSettings
  readonly input: InputFacts | undefined
  readonly naming: Naming
  #place: number | null | undefined

  constructor(
    value: Decimal,
    unit: Unit,
    dimension: Dimension,
    rule: RuleName | 'input',
    operands: readonly Node[],
    settings: RuleSettings,
    input: InputFacts | undefined,
    naming: Naming,
  ) {
    this.value = value
    this.unit = unit
    this.dimension = dimension
    this.rule = rule
    this.operands = operands
    this.settings = settings
    this.input = input
    this.naming = naming
    Object.freeze(this)
  }

  get [brand](): true {
    return true
  }

  get place(): number | null {
    if (this.#place === undefined) settlePlaces(this)
    return this.#place as number | null
  }

  get significantFigures(): number | null {
    const { place } = this
    return place === null ? null : figuresAt(this.value, place)
  }

  plus(other: Quantity): Node {
    return join('sum', this, same(this, other))
  }

  minus(other: Quantity): Node {
    return join('difference', this, same(this, other))
  }

  times(other: Quantity): Quantity<never> {
    const right = nodeOf(other)
    const plan = productOf(this.unit, right.unit)
    if (plan === undefined) throw noSuch('product', this, right)
    return combined('product', this, right, plan) as Quantity as Quantity<never>
  }

  dividedBy(other: Quantity): Quantity<never> {
    const right = nodeOf(other)
    const plan = quotientOf(this.unit, right.unit)
    if (plan === undefined) throw noSuch('quotient', this, right)
    if (right.value.isZero()) throw divisionByZero(right)
    return combined('quotient', this, right, plan) as Quantity as Quantity<never>
  }

  to(unit: string): Node {
    return convert(this, unitFor(unit, this.dimension))
  }

  compare(other: Quantity): number {
    return this.value.cmp(same(this, other).value)
  }

  equals(other: Quantity): boolean {
    return this.compare(other) === 0
  }

  named(naming: Naming): Node {
    const merged = Object.freeze({ ...this.naming, ...naming })
    return new Node(this.value, this.unit, this.dimension, this.rule, this.operands, this.settings, this.input, merged)
  }

  toString(): string {
    return writeQuantity(this)
  }

  toJSON(): QuantityJSON {
    const { place, significantFigures } = this
    const digits = place === null ? (this.input?.writtenPlace ?? 0) : place
    const value = this.value.dp() < -digits ? this.value.toFixed(-digits) : this.value.toString()
    const uncertainty = this.input?.uncertainty && { uncertainty: this.input.uncertainty.standard.toString() }
    const known = significantFigures === null ? { exact: true as const } : { significantFigures }
    return { value, unit: this.unit, ...known, ...uncertainty }
  }

  [Symbol.toPrimitive](hint: string): string {
    if (hint !== 'number') return this.toString() // text + quantity prints; only comparing and calculating is refused
    throw new QuantityError({
      code: 'quantity/compared-with-operator',
      message: 'Operators such as < and * do not know units; use compare, plus, minus, times or dividedBy.',
      found: this.toString(),
      expected: 'a method: a.compare(b) < 0, a.times(b)',
    })
  }

  [Symbol.for('nodejs.util.inspect.custom')](): string {
    return this.toString()
  }

  /** Works out the place of this node, whose operands have theirs. */
  settle(): void {
    const rule: Rule | undefined = this.rule === 'input' ? undefined : rules[this.rule]
    this.#place = rule === undefined ? inputPlace(this) : rule.place(this.operands, this.value, this.settings)
  }

  get settled(): boolean {
    return this.#place !== undefined
  }
}

export type { Node }

function inputPlace({ input }: Node): number | null {
  const facts = input as InputFacts
  return facts.kind === 'exact' ? null : facts.writtenPlace
}

/** Settles a whole graph without recursion, so that a sum of a hundred thousand readings does not exhaust the stack. */
function settlePlaces(node: Node): void {
  const open: Node[] = [node]
  while (open.length > 0) {
    const top = open[open.length - 1] as Node
    const waiting = top.operands.filter((operand) => !operand.settled)
    if (waiting.length > 0) {
      for (const operand of waiting) open.push(operand)
    } else {
      top.settle()
      open.pop()
    }
  }
}

/** An input of the graph. */
export function inputNode(value: Decimal, unit: Unit, facts: InputFacts, naming: Naming = noNames): Node {
  return new Node(
    value,
    unit,
    units[unit].dimension,
    'input',
    noOperands,
    noSettings,
    Object.freeze(facts),
    Object.freeze(naming),
  )
}

/** The result of a rule. */
export function derivedNode(
  rule: RuleName,
  operands: readonly Node[],
  unit: Unit,
  settings: RuleSettings = noSettings,
  naming: Naming = noNames,
): Node {
  const value = rules[rule].evaluate(operands, settings)
  if (!(Math.abs(value.e) <= largestResult)) throw outOfRange(value)
  return new Node(value, unit, units[unit].dimension, rule, Object.freeze(operands), settings, undefined, naming)
}

/** The quantity in another unit of its dimension; itself where nothing changes. */
export function convert(node: Node, unit: Unit): Node {
  if (node.unit === unit) return node
  return derivedNode('conversion', [node], unit, conversionBetween(node.unit, unit))
}

/** Whether a value is a quantity, of this or another copy of the library. */
export function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && (value as { readonly [brand]?: unknown })[brand] === true
}

/** The node behind a quantity. */
export function nodeOf(value: unknown): Node {
  if (isNode(value)) return value
  throw new QuantityError({
    code: 'quantity/not-a-quantity',
    message: `${showFound(value)} is not a quantity.`,
    found: showFound(value),
    expected: 'a quantity: quantity("3.977 g") or exact("2")',
  })
}

/** The unit a text names, if it measures the dimension. */
export function unitFor(text: unknown, dimension: Dimension): Unit {
  const unit = typeof text === 'string' ? findUnit(text.trim()) : undefined
  const expected = unitsOf(dimension).join(', ')
  if (unit === undefined) {
    throw new QuantityError({
      code: 'quantity/unknown-unit',
      message: `${showFound(text)} is not a unit.`,
      found: showFound(text),
      expected,
    })
  }
  if (units[unit].dimension === dimension) return unit
  throw new QuantityError({
    code: 'quantity/wrong-dimension',
    message: `${unit} is a unit of ${nameDimension(units[unit].dimension)}, not of ${nameDimension(dimension)}.`,
    found: unit,
    expected,
  })
}

function combined(rule: 'product' | 'quotient', left: Node, right: Node, plan: Combination): Node {
  return derivedNode(rule, [convert(left, plan.left), convert(right, plan.right)], plan.unit)
}

function join(rule: 'sum' | 'difference', left: Node, right: Node): Node {
  if (left.unit !== 'degC') return derivedNode(rule, [left, right], left.unit)
  return derivedNode(rule, [convert(left, 'K'), convert(right, 'K')], 'K')
}

function same(node: Node, other: unknown): Node {
  const right = nodeOf(other)
  if (right.dimension === node.dimension) return convert(right, node.unit)
  throw new QuantityError({
    code: 'quantity/dimensions-differ',
    message: `${nameDimension(node.dimension)} and ${nameDimension(right.dimension)} neither add nor compare.`,
    found: right.toString(),
    expected: `${nameDimension(node.dimension)}, in ${unitsOf(node.dimension).join(', ')}`,
  })
}

function noSuch(what: 'product' | 'quotient', left: Node, right: Node): QuantityError {
  const words = what === 'product' ? 'times' : 'divided by'
  return new QuantityError({
    code: `quantity/no-such-${what}`,
    message: `${nameDimension(left.dimension)} ${words} ${nameDimension(right.dimension)} is no quantity known here.`,
    found: `${left.toString()} ${words} ${right.toString()}`,
    expected: 'dimensions that go together, such as a mass and a molar mass',
  })
}

function divisionByZero(right: Node): QuantityError {
  return new QuantityError({
    code: 'quantity/division-by-zero',
    message: 'A number is divided by zero.',
    found: right.toString(),
    expected: 'a divisor other than zero',
  })
}

function outOfRange(value: Decimal): QuantityError {
  return new QuantityError({
    code: 'quantity/out-of-range',
    message: `A result has a power of ten beyond ${largestResult}.`,
    found: value.toString(),
    expected: `a power of ten between -${largestResult} and ${largestResult}`,
  })
}
