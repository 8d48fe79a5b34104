import { isForm } from './form.js'
import { type Identity, identityOf } from './identity.js'
import type { Naming } from './input.js'
import type { Node } from './node.js'

/** What makes two nodes the same quantity under whatever names: the measurement, or the very operands. */
export type SubjectKey = Identity | readonly Node[]

/** The key of a node. A renamed result shares the list of its operands. */
export function keyOf(node: Node): SubjectKey {
  return node.rule === 'input' ? identityOf(node) : node.operands
}

/** Whether a quantity has a name to be written by. */
export function isNamed({ naming }: Node): boolean {
  return naming.symbol !== undefined || naming.label !== undefined
}

/**
 * What each node of a graph is about: itself, or, for a change of unit and a rounding without a name of their own, what was converted or
 * rounded.
 *
 * @param nodes - Operands before what is made from them.
 */
export function subjectsOf(nodes: readonly Node[]): ReadonlyMap<Node, Node> {
  const subjects = new Map<Node, Node>()
  for (const node of nodes) {
    const below = isForm(node) ? subjects.get(node.operands[0] as Node) : undefined
    subjects.set(node, below !== undefined && addsNoName(node.naming, below.naming) ? below : node)
  }
  return subjects
}

function addsNoName(outer: Naming, inner: Naming): boolean {
  if (outer.symbol === undefined && outer.label === undefined) return true
  return (
    outer.symbol === inner.symbol &&
    outer.of === inner.of &&
    (outer.symbol ?? outer.label) === (inner.symbol ?? inner.label)
  )
}
