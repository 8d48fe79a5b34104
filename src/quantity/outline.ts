import type { Node } from './node.js'
import { nodesOf } from './nodes-of.js'
import { isNamed, keyOf, type SubjectKey, subjectsOf } from './subject.js'

/** A calculation as a person would tell it: which quantities there are, and which of them get a line of their own. */
export interface Outline {
  /** Every quantity once, each after those it was made from; one node stands for all its renamed copies. */
  readonly quantities: ReadonlyMap<SubjectKey, Node>
  /** Those that get a line. */
  readonly lines: ReadonlySet<SubjectKey>
  /** What a node is about: another unit or a rounding is no other quantity. */
  readonly subjectOf: (node: Node) => Node
}

/** Longest calculation without a name that is written in one line, in rules and quantities. */
const longestLine = 24

/**
 * Results get a line that have a name, are used more than once, or would make a line too long; and the last. All others are written out
 * where they are used.
 */
export function outlineOf(root: Node): Outline {
  const nodes = nodesOf([root])
  const subjects = subjectsOf(nodes)
  const subjectOf = (node: Node): Node => subjects.get(node) as Node
  const quantities = quantitiesAmong(nodes.filter((node) => subjectOf(node) === node))
  const last = subjectOf(root)
  if (isNamed(last)) quantities.set(keyOf(last), last)
  return { quantities, lines: linesAmong(quantities, subjectOf, keyOf(last)), subjectOf }
}

/** By their keys; a copy with a name is preferred to one without. */
function quantitiesAmong(nodes: readonly Node[]): Map<SubjectKey, Node> {
  const quantities = new Map<SubjectKey, Node>()
  for (const node of nodes) {
    const known = quantities.get(keyOf(node))
    if (known === undefined || (isNamed(node) && !isNamed(known))) quantities.set(keyOf(node), node)
  }
  return quantities
}

function linesAmong(
  quantities: ReadonlyMap<SubjectKey, Node>,
  subjectOf: (node: Node) => Node,
  last: SubjectKey,
): ReadonlySet<SubjectKey> {
  const below = (node: Node): readonly SubjectKey[] => node.operands.map((operand) => keyOf(subjectOf(operand)))
  const uses = countUses([...quantities.values()].flatMap(below))
  const lengths = new Map<SubjectKey, number>()
  const lines = new Set<SubjectKey>()
  for (const [key, node] of quantities) {
    const length = below(node).reduce((total, one) => total + (lengths.get(one) as number), 1)
    const alone = isNamed(node) || (uses.get(key) ?? 0) > 1 || length > longestLine || key === last
    if (alone && node.rule !== 'input') lines.add(key)
    lengths.set(key, alone ? 1 : length)
  }
  return lines
}

function countUses(keys: readonly SubjectKey[]): ReadonlyMap<SubjectKey, number> {
  const uses = new Map<SubjectKey, number>()
  for (const key of keys) uses.set(key, (uses.get(key) ?? 0) + 1)
  return uses
}
