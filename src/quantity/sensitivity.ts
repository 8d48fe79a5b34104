import { checkSame, type Identity, identityOf } from './identity.js'
import type { Node } from './node.js'
import { QuantityError } from './quantity-error.js'
import { type RuleName, rules } from './rules.js'
import { toDouble } from './to-double.js'

/** How a result changes with one input. */
export interface Dependence {
  /** The input, or one of several copies of it. */
  readonly input: Node
  /** The partial derivative of the number of the result by the number of the input, each in its own unit. */
  readonly sensitivity: number
}

/**
 * The sensitivity coefficients of a result (JCGM 100:2008, 5.1.3), in one pass from the result back to its inputs.
 *
 * @param nodes - The nodes of the result, itself the last.
 * @param matters - Which inputs are asked for. Where none lies below an operand no derivative is taken, so that one which does not
 *   exist (of a root at zero) does no harm.
 */
export function sensitivitiesOf(
  nodes: readonly Node[],
  matters: (input: Node) => boolean,
): ReadonlyMap<Identity, Dependence> {
  const slopes = concernedNodes(nodes, matters)
  const found = new Map<Identity, Dependence>()
  const root = nodes.at(-1) as Node
  if (slopes.has(root)) slopes.set(root, 1)
  for (let index = nodes.length - 1; index >= 0; index -= 1) {
    const node = nodes[index] as Node
    const slope = slopes.get(node)
    if (slope === undefined) continue
    if (node.rule === 'input') addDependence(found, node, slope)
    else passOn(node, node.rule, slope, slopes)
  }
  return found
}

/** The nodes below which something is asked for, each with no slope yet. */
function concernedNodes(nodes: readonly Node[], matters: (input: Node) => boolean): Map<Node, number> {
  const concerned = new Map<Node, number>()
  for (const node of nodes) {
    const does = node.rule === 'input' ? matters(node) : node.operands.some((operand) => concerned.has(operand))
    if (does) concerned.set(node, 0)
  }
  return concerned
}

function passOn(node: Node, rule: RuleName, slope: number, slopes: Map<Node, number>): void {
  const values = node.operands.map(({ value }) => toDouble(value))
  const partials = rules[rule].partials(values, toDouble(node.value), node.settings)
  for (const [index, operand] of node.operands.entries()) {
    const known = slopes.get(operand)
    if (known === undefined) continue
    const total = known + slope * (partials[index] as number)
    if (!Number.isFinite(total)) throw noDerivative(node)
    slopes.set(operand, total)
  }
}

function addDependence(found: Map<Identity, Dependence>, input: Node, slope: number): void {
  const identity = identityOf(input)
  const known = found.get(identity)
  if (known !== undefined) checkSame(known.input, input)
  found.set(identity, { input: known?.input ?? input, sensitivity: (known?.sensitivity ?? 0) + slope })
}

function noDerivative(node: Node): QuantityError {
  return new QuantityError({
    code: 'quantity/no-derivative',
    message: `The rule "${node.rule}" has no derivative where it gives ${node.toString()}, so no uncertainty passes through it.`,
    found: node.toString(),
    expected: 'a value where the calculation changes smoothly',
  })
}
