/** Freezes plain data all the way down: plans and assessments do not change once made. */
export function deepFreeze<T extends object>(value: T): T {
  for (const part of Object.values(value)) {
    if (!Object.isFrozen(part)) deepFreeze(part) // what is no object counts as frozen
  }
  return Object.freeze(value)
}
