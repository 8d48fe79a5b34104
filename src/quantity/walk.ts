/** How a graph is walked: what lies below a node, what needs no visit any more, and what a visit does. */
export interface Walk<T> {
  /** The nodes that have to be finished before this one. */
  readonly below: (node: T) => readonly T[]
  /** Whether a node is finished. */
  readonly isDone: (node: T) => boolean
  /** Finishes a node; everything below it is finished. */
  readonly finish: (node: T) => void
}

/** A node that is waiting for those below it. */
interface Waiting<T> {
  readonly node: T
  readonly parts: readonly T[]
  /** Which of the parts is looked at next. */
  next: number
}

/**
 * Finishes each node of a graph once, those below before those above. Without recursion, so that a sum of a hundred thousand readings
 * does not exhaust the stack.
 *
 * @returns False where a node lies below itself; the walk stops there.
 */
export function walk<T>(root: T, steps: Walk<T>): boolean {
  const stack = [waitingFor(root, steps)]
  const open = new Set<T>([root])
  for (let top = stack.at(-1); top !== undefined; top = stack.at(-1)) {
    const part = unfinishedPart(top, steps)
    if (part === undefined) {
      finishOnce(top.node, steps)
      open.delete(top.node)
      stack.pop()
    } else if (open.has(part.node)) return false
    else {
      open.add(part.node)
      stack.push(part)
    }
  }
  return true
}

function waitingFor<T>(node: T, { below, isDone }: Walk<T>): Waiting<T> {
  return { node, parts: isDone(node) ? [] : below(node), next: 0 }
}

/** The next part that waits for others; those that wait for nothing are finished on the way. */
function unfinishedPart<T>(top: Waiting<T>, steps: Walk<T>): Waiting<T> | undefined {
  while (top.next < top.parts.length) {
    const part = waitingFor(top.parts[top.next] as T, steps)
    top.next += 1
    if (part.parts.length > 0) return part
    finishOnce(part.node, steps)
  }
  return undefined
}

function finishOnce<T>(node: T, { isDone, finish }: Walk<T>): void {
  if (!isDone(node)) finish(node)
}
