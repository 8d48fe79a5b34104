/** How a graph is walked: what lies below a node, what needs no visit any more, and what a visit does. */
export interface Walk<T> {
  /** The nodes that have to be finished before this one. */
  readonly below: (node: T) => readonly T[]
  /** Whether a node is finished. */
  readonly isDone: (node: T) => boolean
  /** Finishes a node; everything below it is finished. */
  readonly finish: (node: T) => void
  /** Said of a graph from outside, in which a node may lie below itself; ours are made from below. */
  readonly mayLoop?: true
}

/**
 * Finishes each node of a graph once, those below before those above. Without recursion, so that a sum of a hundred thousand readings
 * does not exhaust the stack, and without an object for each node, which would take most of the time.
 *
 * @returns False where a node lies below itself; the walk stops there.
 */
export function walk<T>(root: T, { below, isDone, finish, mayLoop }: Walk<T>): boolean {
  const ahead = [root]
  const waiting: T[] = [] // the last of them is on top of what lies ahead again when all below it is finished
  const open = mayLoop && new Set<T>()
  while (ahead.length > 0) {
    const node = ahead.at(-1) as T
    if (isDone(node)) ahead.pop()
    else if (node === waiting.at(-1)) {
      ahead.pop()
      waiting.pop()
      open?.delete(node)
      finish(node)
    } else {
      const parts = below(node)
      open?.add(node)
      if (parts.some((part) => open?.has(part))) return false
      waiting.push(node)
      pushReversed(ahead, parts)
    }
  }
  return true
}

/** So that the first part is looked at first. */
function pushReversed<T>(ahead: T[], parts: readonly T[]): void {
  for (let index = parts.length - 1; index >= 0; index -= 1) ahead.push(parts[index] as T)
}
