import { append, type Node, positionIn } from './node.js'
import { toDouble } from './to-double.js'
import { walk } from './walk.js'

/** The nodes of one graph or several, each once, operands before what is made from them. */
export function nodesOf(roots: readonly Node[]): readonly Node[] {
  const nodes: Node[] = []
  for (const root of roots)
    walk(root, {
      below: ({ operands }) => operands,
      isDone: (node) => positionIn(nodes, node) >= 0,
      finish: (node) => append(nodes, node),
    })
  return nodes
}

/** A graph in lists, so that a reader of numbers goes through them in order and looks up no node. */
export interface Layout {
  /** The nodes, each once, operands before what is made from them. */
  readonly nodes: readonly Node[]
  /** Their values. */
  readonly values: Float64Array
  /** The positions of the operands of the first node, then of those of the second, and so on. */
  readonly links: Int32Array
  /** Where among the links those of each node start, and after the last one where they end. */
  readonly starts: Int32Array
}

/** The graph of a node in lists, the node itself the last. */
export function layOut(root: Node): Layout {
  const nodes = nodesOf([root])
  const starts = startsOf(nodes)
  const values = new Float64Array(nodes.length)
  const links = new Int32Array(starts[nodes.length] as number)
  for (let at = 0; at < nodes.length; at += 1) {
    const { value, operands } = nodes[at] as Node
    values[at] = toDouble(value)
    const start = starts[at] as number
    for (let index = 0; index < operands.length; index += 1)
      links[start + index] = positionIn(nodes, operands[index] as Node)
  }
  return { nodes, values, links, starts }
}

function startsOf(nodes: readonly Node[]): Int32Array {
  const starts = new Int32Array(nodes.length + 1)
  for (let at = 0; at < nodes.length; at += 1)
    starts[at + 1] = (starts[at] as number) + (nodes[at] as Node).operands.length
  return starts
}
