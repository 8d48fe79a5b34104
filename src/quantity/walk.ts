/** How a graph is walked: what lies below a node, what needs no visit any more, and what a visit does. */
export interface Walk<T> {
  /** The nodes that have to be finished before this one. */
  readonly below: (node: T) => readonly T[]
  /** Whether a node is finished. */
  readonly isDone: (node: T) => boolean
  /** Finishes a node; everything below it is finished. */
  readonly finish: (node: T) => void
}

/**
 * Finishes each node of a graph once, those below before those above. Without recursion, so that a sum of a hundred thousand readings
 * does not exhaust the stack.
 *
 * @returns False where a node lies below itself; the walk stops there.
 */
export function walk<T>(root: T, steps: Walk<T>): boolean {
  const stack: T[] = [root]
  const opened = new Set<T>()
  while (stack.length > 0) {
    const top = stack[stack.length - 1] as T
    const waiting = waitingBelow(top, steps)
    if (waiting.length === 0) finishOnce(stack.pop() as T, steps)
    else if (opened.has(top)) return false
    opened.add(top)
    for (const node of waiting.reverse()) stack.push(node) // the first one on top
  }
  return true
}

function waitingBelow<T>(node: T, { below, isDone }: Walk<T>): T[] {
  return isDone(node) ? [] : below(node).filter((one) => !isDone(one))
}

function finishOnce<T>(node: T, { isDone, finish }: Walk<T>): void {
  if (!isDone(node)) finish(node)
}
