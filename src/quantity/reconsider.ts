import type { Decimal } from '../decimal.js'
import { showFound } from '../errors.js'
import type { Dimension } from './dimension.js'
import { type RoundTo, roundingOf } from './figures.js'
import { isForm } from './form.js'
import { convert, derivedNode, type Node, nodeLike, nodeOf } from './node.js'
import { readNumeral } from './numeral.js'
import type { Quantity } from './quantity.js'
import { QuantityError } from './quantity-error.js'
import type { RuleSettings } from './rule.js'
import type { RuleName } from './rules.js'
import { testOf, type Which } from './select.js'
import { findUnit, type Unit } from './unit.js'
import { walk } from './walk.js'

/** One thing that is done differently in a calculation. */
export type SingleChange =
  | {
      /** What is replaced: inputs, or results with all they were made from. */
      readonly replace: Which
      /**
       * What stands there instead: a quantity of the same dimension, or a function of what stood there (with what it was made from), such
       * as another atomic weight for each.
       */
      readonly with: Quantity | ((q: Quantity) => Quantity)
    }
  | {
      /** What is rounded before the calculation goes on: certain results, or every one but the last. */
      readonly round: Which | 'every intermediate'
      /** To how many figures, or to which place. */
      readonly to: RoundTo
    }
  | {
      /** Which changes of unit get another factor. */
      readonly conversion: {
        /** From this unit; from any unless said. */
        readonly from?: string
        /** To this unit; to any unless said. */
        readonly to?: string
      }
      /** The factor, as text: `"1"` where the change of unit was forgotten. */
      readonly factor: string
    }

/** What is done differently: one thing, or several, one after the other. */
export type Change = SingleChange | readonly SingleChange[]

/**
 * The same calculation with something changed: another input, another result in between, another factor of a change of unit, results
 * rounded too early. Only what depends on the change is made anew; the rest is shared with the calculation as it was.
 *
 * @typeParam D - The dimension of the quantity.
 * @param q - The result of a calculation.
 * @param change - What is done differently.
 * @returns The result it would have had; the very same quantity where nothing changes.
 * @throws {@link QuantityError} `quantity/bad-change`, `quantity/dimensions-differ` for a replacement of another dimension,
 *   `quantity/out-of-range` where the changed calculation cannot be done, and the codes of {@link roundTo}.
 * @source Common practice, no source.
 *
 * @example
 * ```ts
 * import { constant, quantity, reconsider } from 'saltwright/quantity'
 *
 * const mass = quantity('2.50 g', { label: 'mass of the hydrate' })
 * const amount = mass.dividedBy(constant('249.68 g/mol', { role: 'molar mass' }))
 * amount.toString() // => '0.0100 mol'
 * reconsider(amount, { replace: { role: 'molar mass' }, with: constant('159.60 g/mol') }).toString() // => '0.0157 mol'
 * reconsider(amount, { replace: mass, with: (m) => m.times(quantity('2.0')) }).toString() // => '0.020 mol'
 * reconsider(amount, { replace: { label: 'tare' }, with: quantity('1.00 g') }) === amount // => true
 * ```
 */
export function reconsider<D extends Dimension>(q: Quantity<D>, change: Change): Quantity<D> {
  const changes: readonly unknown[] = Array.isArray(change) ? change : [change]
  const result = changes.reduce<Node>((node, one) => rebuild(node, rewriteOf(one, node)), nodeOf(q))
  return (result === nodeOf(q) ? q : result) as Quantity as Quantity<D>
}

/** How a calculation is made anew, node by node. */
interface Rewrite {
  /** Whether a node is replaced whatever it was made from, so that this need not be looked at. */
  readonly cutsOff: (node: Node) => boolean
  /** What stands in the place of a node, given the same with its operands made anew. */
  readonly rewrite: (original: Node, renewed: Node) => Node
}

function rebuild(root: Node, { cutsOff, rewrite }: Rewrite): Node {
  const renewed = new Map<Node, Node>()
  walk(root, {
    below: (node) => (cutsOff(node) ? [] : node.operands),
    isDone: (node) => renewed.has(node),
    finish: (node) => renewed.set(node, rewrite(node, cutsOff(node) ? node : renew(node, renewed))),
  })
  return renewed.get(root) as Node
}

/** A node with its operands made anew; itself where none of them changed. */
function renew(node: Node, renewed: ReadonlyMap<Node, Node>): Node {
  const operands = node.operands.map((operand) => renewed.get(operand) as Node)
  if (operands.every((operand, index) => operand === node.operands[index])) return node
  return derivedNode(node.rule as RuleName, operands, node.unit, node.settings, node.naming)
}

function rewriteOf(change: unknown, root: Node): Rewrite {
  if (typeof change !== 'object' || change === null) throw badChange(change)
  if ('replace' in change) return replacement(testOf(change.replace), (change as { with?: unknown }).with)
  if ('round' in change) return rounding(change.round, (change as { to?: unknown }).to, root)
  if ('conversion' in change) return otherFactor(change.conversion, (change as { factor?: unknown }).factor)
  throw badChange(change)
}

function replacement(isMeant: (node: Node) => boolean, by: unknown): Rewrite {
  const fixed = typeof by === 'function' ? undefined : nodeOf(by)
  const instead = (node: Node): unknown => fixed ?? (by as (q: Quantity) => unknown)(node)
  return {
    cutsOff: (node) => fixed !== undefined && isMeant(node),
    rewrite: (original, renewed) =>
      isMeant(original) ? convert(nodeLike(original, instead(renewed)), original.unit) : renewed,
  }
}

function rounding(which: unknown, to: unknown, root: Node): Rewrite {
  const isMeant = which === 'every intermediate' ? isIntermediate(root) : testOf(which)
  const settings = Object.freeze({ rounding: roundingOf(to) })
  return {
    cutsOff: () => false,
    rewrite: (original, renewed) => (isMeant(original) ? rounded(renewed, settings) : renewed),
  }
}

function rounded(node: Node, settings: RuleSettings): Node {
  const result = derivedNode('rounded', [node], node.unit, settings, node.naming)
  return result.value.eq(node.value) ? node : result
}

/** Results that a person writes down on the way: not inputs, not the last result, not one in another unit. */
function isIntermediate(root: Node): (node: Node) => boolean {
  const last = new Set<Node>([root])
  for (let node = root; isForm(node); node = node.operands[0] as Node) last.add(node.operands[0] as Node)
  return (node) => node.rule !== 'input' && !isForm(node) && !last.has(node)
}

function otherFactor(conversion: unknown, factor: unknown): Rewrite {
  if (typeof conversion !== 'object' || conversion === null) throw badChange(conversion)
  const { from, to } = conversion as { from?: unknown; to?: unknown }
  const [source, target] = [readUnit(from), readUnit(to)]
  const value = readFactor(factor)
  return {
    cutsOff: () => false,
    rewrite: (original, renewed) => {
      if (original.rule !== 'conversion') return renewed
      const meant =
        [original.operands[0]?.unit, undefined].includes(source) && [original.unit, undefined].includes(target)
      return meant ? withFactor(renewed, value) : renewed
    },
  }
}

function withFactor(node: Node, factor: Decimal): Node {
  const { offset } = node.settings
  const settings = Object.freeze(offset === undefined ? { factor } : { factor, offset })
  const result = derivedNode('conversion', node.operands, node.unit, settings, node.naming)
  return result.value.eq(node.value) ? node : result
}

function readUnit(text: unknown): Unit | undefined {
  if (text === undefined) return undefined
  const unit = typeof text === 'string' ? findUnit(text.trim()) : undefined
  if (unit === undefined) throw badChange(text)
  return unit
}

function readFactor(text: unknown): Decimal {
  const factor = typeof text === 'string' ? readNumeral(text.trim()).value : undefined
  if (factor?.gt(0)) return factor
  throw badChange(text)
}

function badChange(found: unknown): QuantityError {
  return new QuantityError({
    code: 'quantity/bad-change',
    message: `${showFound(found)} does not say what is done differently.`,
    found: showFound(found),
    expected: '{ replace, with }, { round, to } or { conversion: { from, to }, factor }, units and factors as text',
  })
}
