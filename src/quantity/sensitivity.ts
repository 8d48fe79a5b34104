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
 * @param matters - Which inputs are asked for. Where none lies below an operand no derivative is taken, so that one which does not
 *   exist (of a root at zero) does no harm.
 */
export function sensitivitiesOf(
  root: Node,
  nodes: readonly Node[],
  matters: (input: Node) => boolean,
): ReadonlyMap<Identity, Dependence> {
  const concerned = concernedNodes(nodes, matters)
  const slopes = new Map<Node, number>([[root, 1]])
  const found = new Map<Identity, Dependence>()
  for (let index = nodes.length - 1; index >= 0; index -= 1) {
    const node = nodes[index] as Node
    if (!concerned.has(node)) continue
    const slope = slopes.get(node) as number
    if (node.rule === 'input') addDependence(found, node, slope)
    else passOn(node, node.rule, slope, slopes, concerned)
  }
  return found
}

function concernedNodes(nodes: readonly Node[], matters: (input: Node) => boolean): ReadonlySet<Node> {
  const concerned = new Set<Node>()
  for (const node of nodes) {
    const does = node.rule === 'input' ? matters(node) : node.operands.some((operand) => concerned.has(operand))
    if (does) concerned.add(node)
  }
  return concerned
}

function passOn(
  node: Node,
  rule: RuleName,
  slope: number,
  slopes: Map<Node, number>,
  concerned: ReadonlySet<Node>,
): void {
  const values = node.operands.map(({ value }) => toDouble(value))
  const partials = rules[rule].partials(values, toDouble(node.value), node.settings)
  node.operands.forEach((operand, index) => {
    if (!concerned.has(operand)) return
    const total = (slopes.get(operand) ?? 0) + slope * (partials[index] as number)
    if (!Number.isFinite(total)) throw noDerivative(node)
    slopes.set(operand, total)
  })
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
