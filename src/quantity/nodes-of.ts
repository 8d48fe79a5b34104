import { append, type Node, positionIn } from './node.js'
import { toDouble } from './to-double.js'
import { walk } from './walk.js'

/** The nodes of one graph or several, each once, operands before what is made from them. */
export function nodesOf(...roots: readonly Node[]): readonly Node[] {
  const nodes: Node[] = []
  for (const root of roots) collect(root, nodes, (node) => append(nodes, node))
  return nodes
}

/** A graph in lists, so that a reader of numbers goes through them in order and looks up no node. */
export interface Layout {
  /** The nodes, each once, operands before what is made from them. */
  readonly nodes: readonly Node[]
  /** Their values. */
  readonly values: readonly number[]
  /** The positions of the operands of the first node, then of those of the second, and so on. */
  readonly links: readonly number[]
  /** Where among the links those of each node start, and after the last one where they end. */
  readonly starts: readonly number[]
}

/** The graph of a node in lists, the node itself the last. */
export function layOut(root: Node): Layout {
  const nodes: Node[] = []
  const [values, links, starts]: [number[], number[], number[]] = [[], [], [0]]
  collect(root, nodes, (node) => {
    append(nodes, node)
    values.push(toDouble(node.value))
    for (const operand of node.operands) links.push(positionIn(nodes, operand))
    starts.push(links.length)
  })
  return { nodes, values, links, starts }
}

function collect(root: Node, nodes: readonly Node[], finish: (node: Node) => void): void {
  walk(root, { below: ({ operands }) => operands, isDone: (node) => positionIn(nodes, node) >= 0, finish })
}
