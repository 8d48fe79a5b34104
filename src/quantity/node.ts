import type { Decimal } from '../decimal.js'
import { showing } from '../display.js'
import { adopt } from './adopt.js'
import { type Combination, conversionBetween, productOf, quotientOf } from './combine.js'
import type { Dimension } from './dimension.js'
import { formsOf } from './forms.js'
import {
  comparedWithOperator,
  dimensionsDiffer,
  divisionByZero,
  largestResult,
  noSuch,
  notAQuantity,
  outOfRange,
  wrongDimension,
} from './graph-error.js'
import type { InputFacts, Naming } from './input.js'
import { none, readNaming } from './naming.js'
import type { Quantity, QuantityJSON } from './quantity.js'
import type { Rule, RuleSettings } from './rule.js'
import { type RuleName, rules } from './rules.js'
import { quantityJSON, writeQuantity } from './show.js'
import { figuresAt } from './significance.js'
import { type Unit, units } from './unit.js'
import { unitFor } from './unit-text.js'
import { walk } from './walk.js'

/** Marks a quantity whichever copy of the library made it: `instanceof` fails between module formats. */
const brand: unique symbol = /* @__PURE__ */ Symbol.for('saltwright.quantity') as never

const noSettings: RuleSettings = /* @__PURE__ */ Object.freeze({})
const noOperands: readonly GraphNode[] = /* @__PURE__ */ Object.freeze([])

/** A node of the calculation graph: a quantity that was made from nodes of ours. */
export interface Node extends Quantity {
  readonly operands: readonly Node[]
}

/**
 * The one implementation of {@link Quantity}. Only what is declared of it above leaves this file. A method may be called with any
 * `this`, so each makes sure of it.
 */
class GraphNode implements Node {
  // what a walk looks at stands first: in a large graph it is most of the work to fetch it from memory
  /** Where it stands in the list that it was put into last. */
  #position = 0
  readonly operands: readonly GraphNode[]
  readonly value: Decimal
  readonly rule: RuleName | 'input'
  readonly input: InputFacts | undefined
  readonly unit: Unit
  readonly dimension: Dimension
  readonly settings: RuleSettings
  readonly naming: Naming
  #place: number | null | undefined

  constructor(
    value: Decimal,
    unit: Unit,
    rule: RuleName | 'input',
    operands: readonly GraphNode[],
    settings: RuleSettings,
    input: InputFacts | undefined,
    naming: Naming,
  ) {
    this.value = value
    this.unit = unit
    this.dimension = units[unit].dimension
    this.rule = rule
    this.operands = operands
    this.settings = settings
    this.input = input
    this.naming = naming
    Object.freeze(this)
  }

  /** Whether a value was made by this copy of the library: nothing else has the private field. */
  static made(value: unknown): value is GraphNode {
    return typeof value === 'object' && value !== null && #place in value
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
    return join('sum', nodeOf(this), other)
  }

  minus(other: Quantity): Node {
    return join('difference', nodeOf(this), other)
  }

  times(other: Quantity): Quantity<never> {
    const [left, right] = [nodeOf(this), nodeOf(other)]
    const plan = productOf(left.unit, right.unit)
    if (plan === undefined) throw noSuch('product', left, right)
    return combined('product', left, right, plan) as Quantity as Quantity<never>
  }

  dividedBy(other: Quantity): Quantity<never> {
    const [left, right] = [nodeOf(this), nodeOf(other)]
    const plan = quotientOf(left.unit, right.unit)
    if (plan === undefined) throw noSuch('quotient', left, right)
    if (right.value.isZero()) throw divisionByZero(right)
    return combined('quotient', left, right, plan) as Quantity as Quantity<never>
  }

  to(unit: string): Node {
    const node = nodeOf(this)
    return convert(node, unitFor(unit, node.dimension))
  }

  compare(other: Quantity): number {
    const node = nodeOf(this)
    return node.value.cmp(convert(nodeLike(node, other), node.unit).value)
  }

  equals(other: Quantity): boolean {
    return nodeOf(this).compare(other) === 0
  }

  named(naming: Naming): Node {
    const { value, unit, rule, operands, settings, input, naming: own } = nodeOf(this) as GraphNode
    const given = readNaming(naming)
    const names = own === none ? given : Object.freeze({ ...own, ...given })
    return new OurNode(value, unit, rule, operands, settings, input, names)
  }

  toString(): string {
    return writeQuantity(nodeOf(this))
  }

  toJSON(): QuantityJSON {
    return quantityJSON(nodeOf(this))
  }

  [Symbol.toPrimitive](hint: string): string {
    if (hint !== 'number') return this.toString() // text + quantity prints; only comparing and calculating is refused
    throw comparedWithOperator(this)
  }

  /** Works out the place of this node, whose operands have theirs. */
  settle(): void {
    const rule: Rule | undefined = this.rule === 'input' ? undefined : rules[this.rule]
    this.#place = rule === undefined ? inputPlace(this) : rule.place(this.operands, this.value, this.settings)
  }

  get settled(): boolean {
    return this.#place !== undefined
  }

  /** Puts this node at the end of a list. */
  appendTo(list: Node[]): void {
    this.#position = list.length
    list.push(this)
  }

  /** Where it stands in a list; below zero where it does not, or was put into another since. */
  positionIn(list: readonly Node[]): number {
    return list[this.#position] === this ? this.#position : -1
  }
}

/** The class with all its methods: the ones named by symbols are put on here, so that a bundler can drop the whole. */
const OurNode: typeof GraphNode = /* @__PURE__ */ complete(GraphNode)

function complete(made: typeof GraphNode): typeof GraphNode {
  Object.defineProperty(made.prototype, brand, { value: true })
  return showing(made, (node) => formsOf(node.toString()))
}

function inputPlace({ input }: GraphNode): number | null {
  const facts = input as InputFacts
  return facts.kind === 'exact' ? null : facts.writtenPlace
}

function settlePlaces(root: GraphNode): void {
  walk(root, { below: ({ operands }) => operands, isDone: (node) => node.settled, finish: (node) => node.settle() })
}

/** Puts a node at the end of a list. */
export function append(list: Node[], node: Node): void {
  ;(node as GraphNode).appendTo(list)
}

/**
 * Where a node stands in the list that it was appended to last; below zero where it is in no such place. A table of nodes would have to
 * be searched, and for a large graph that is most of the work.
 */
export function positionIn(list: readonly Node[], node: Node): number {
  return (node as GraphNode).positionIn(list)
}

/** An input of the graph. */
export function inputNode(value: Decimal, unit: Unit, facts: InputFacts, naming: Naming = none): Node {
  return new OurNode(value, unit, 'input', noOperands, noSettings, Object.freeze(facts), Object.freeze(naming))
}

/** The result of a rule. */
export function derivedNode(
  rule: RuleName,
  operands: readonly Node[],
  unit: Unit,
  settings: RuleSettings = noSettings,
  naming: Naming = none,
): Node {
  const value = rules[rule].evaluate(operands, settings)
  if (!(Math.abs(value.e) <= largestResult)) throw outOfRange(value)
  const made = Object.freeze(operands) as readonly GraphNode[]
  return new OurNode(value, unit, rule, made, settings, undefined, naming)
}

/** The quantity in another unit of its dimension; itself where nothing changes. */
export function convert(node: Node, unit: Unit): Node {
  if (node.unit === unit) return node
  return derivedNode('conversion', [node], unit, conversionBetween(node.unit, unit))
}

/** The node behind a quantity; that of another copy of the library is made ours. */
export function nodeOf(value: unknown): Node {
  if (GraphNode.made(value)) return value
  const adopted = isBranded(value) ? adopt(value, foreigners, { input: inputNode, derived: derivedNode }) : undefined
  if (adopted !== undefined) return adopted
  throw notAQuantity(value)
}

/** What became of quantities of other copies of the library. */
const foreigners: WeakMap<object, Node> = /* @__PURE__ */ new WeakMap()

/** Whether a value is a quantity, of this or another copy of the library. */
export function isBranded(value: unknown): value is Quantity {
  if (typeof value !== 'object' || value === null) return false
  try {
    return Reflect.get(value, brand) === true
  } catch {
    return false // a proxy that answers nothing
  }
}

/** The node behind a quantity of the dimension. */
export function nodeIn(value: unknown, dimension: Dimension): Node {
  const node = nodeOf(value)
  if (node.dimension === dimension) return node
  throw wrongDimension(node, dimension)
}

function combined(rule: 'product' | 'quotient', left: Node, right: Node, plan: Combination): Node {
  return derivedNode(rule, [convert(left, plan.left), convert(right, plan.right)], plan.unit)
}

/** Temperatures add on the absolute scale: the difference of two is in kelvins. */
function join(rule: 'sum' | 'difference', left: Node, other: unknown): Node {
  const right = nodeLike(left, other)
  const unit = left.unit === 'degC' ? 'K' : left.unit
  return derivedNode(rule, [convert(left, unit), convert(right, unit)], unit)
}

/** The node behind a quantity of the same dimension as another. */
export function nodeLike(node: Node, other: unknown): Node {
  const right = nodeOf(other)
  if (right.dimension === node.dimension) return right
  throw dimensionsDiffer(node, right)
}
