import type { Node } from './node.js'
import { walk } from './walk.js'

/** The nodes of one graph or several, each once, operands before what is made from them. */
export function nodesOf(...roots: readonly Node[]): readonly Node[] {
  const seen = new Set<Node>()
  for (const root of roots)
    walk(root, {
      below: ({ operands }) => operands,
      isDone: (node) => seen.has(node),
      finish: (node) => seen.add(node),
    })
  return [...seen]
}
