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

/** A symbol without its substance, which some carry in brackets: the `M` of `M(Zn)`. */
export function bareSymbol({ symbol, of }: Naming): string | undefined {
  const suffix = `(${of})`
  return symbol?.endsWith(suffix) ? symbol.slice(0, -suffix.length) : symbol
}

/**
 * What each node of a graph is about: itself, or, for a change of unit and a rounding without a name of their own, what was converted or
 * rounded. A molar mass that was worked out twice is one molar mass, and that of an atom is its atomic weight.
 *
 * @param nodes - Operands before what is made from them.
 */
export function subjectsOf(nodes: readonly Node[]): ReadonlyMap<Node, Node> {
  const subjects = new Map<Node, Node>()
  const molarMasses: Node[] = []
  for (const node of nodes) {
    const about = subjectBelow(node, subjects)
    const known = molarMasses.find((other) => isSameMolarMass(other, about))
    if (about === node && known === undefined && isMolarMass(node)) molarMasses.push(node)
    subjects.set(node, known ?? about)
  }
  return subjects
}

/** What a form is a form of, where it adds no name of its own; else the node. */
function subjectBelow(node: Node, subjects: ReadonlyMap<Node, Node>): Node {
  const below = isForm(node) || isOneAtom(node) ? subjects.get(node.operands[0] as Node) : undefined
  return below !== undefined && addsNoName(node.naming, below.naming) ? below : node
}

function isMolarMass({ rule, naming }: Node): boolean {
  return rule === 'weightedSum' && naming.role === 'molar mass'
}

/** Whether a molar mass is that of an atom, which is no sum of anything. */
function isOneAtom(node: Node): boolean {
  const [weight, ...others] = node.operands
  return isMolarMass(node) && others.length === 0 && (weight as Node).value.eq(node.value)
}

/** The same atomic weights for the same formula, and the same sum. */
function isSameMolarMass(one: Node, other: Node): boolean {
  if (!isMolarMass(other) || one.naming.of !== other.naming.of || one.unit !== other.unit) return false
  const weights = other.operands
  return (
    one.value.eq(other.value) &&
    one.operands.length === weights.length &&
    one.operands.every((weight, index) => keyOf(weight) === keyOf(weights[index] as Node))
  )
}

function addsNoName(outer: Naming, inner: Naming): boolean {
  if (outer.symbol === undefined && outer.label === undefined) return true
  const [symbol, below] = [bareSymbol(outer), bareSymbol(inner)]
  return symbol === below && outer.of === inner.of && (symbol ?? outer.label) === (below ?? inner.label)
}
