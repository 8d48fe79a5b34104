import { showFound } from '../errors.js'
import { identityOf } from './identity.js'
import type { InputKind, Naming } from './input.js'
import { isBranded, type Node, nodeOf } from './node.js'
import type { Quantity } from './quantity.js'
import { QuantityError } from './quantity-error.js'
import type { RuleName } from './rules.js'

/** Quantities by what they are called and how they came to be; whatever is said has to hold. */
export interface Selector extends Naming {
  /** The id of an input. */
  readonly id?: string
  /** How an input came to be. */
  readonly kind?: InputKind
  /** The rule that made it, or `input`. */
  readonly rule?: RuleName | 'input'
}

/** Which quantities of a calculation are meant: one of them and its renamed copies, those of a description, or those of a test. */
export type Which = Quantity | Selector | ((q: Quantity) => boolean)

type Test = (node: Node) => boolean

/** Whether a node is meant. */
export function testOf(which: unknown): Test {
  if (typeof which === 'function') return (node) => which(node) === true
  if (isBranded(which)) return isSameAs(nodeOf(which))
  if (typeof which !== 'object' || which === null) throw noSelector(which)
  const wanted = Object.entries(which).filter(([, value]) => value !== undefined)
  const strange = wanted.find(([key]) => !Object.hasOwn(properties, key))
  if (strange !== undefined || wanted.length === 0) throw noSelector(strange?.[0] ?? which)
  return (node) => wanted.every(([key, value]) => properties[key as keyof Selector](node) === value)
}

const properties: Readonly<Record<keyof Selector, (node: Node) => unknown>> = {
  label: ({ naming }) => naming.label,
  symbol: ({ naming }) => naming.symbol,
  of: ({ naming }) => naming.of,
  role: ({ naming }) => naming.role,
  id: ({ input }) => input?.id,
  kind: ({ input }) => input?.kind,
  rule: ({ rule }) => rule,
}

/** The same measurement, or the same result: names aside. A renamed result shares the list of its operands. */
function isSameAs(wanted: Node): Test {
  if (wanted.rule !== 'input') return (node) => node.operands === wanted.operands
  const identity = identityOf(wanted)
  return (node) => node.rule === 'input' && identityOf(node) === identity
}

function noSelector(found: unknown): QuantityError {
  return new QuantityError({
    code: 'quantity/bad-change',
    message: `${showFound(found)} does not say which quantities are meant.`,
    found: showFound(found),
    expected: `a quantity, a test, or an object with ${Object.keys(properties).join(', ')}`,
  })
}
