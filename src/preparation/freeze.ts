/** Freezes plain data all the way down: plans and assessments do not change once made. */
export function deepFreeze<T extends object>(value: T): T {
  for (const part of Object.values(value)) {
    if (typeof part === 'object' && part !== null && !Object.isFrozen(part)) deepFreeze(part)
  }
  return Object.freeze(value)
}
