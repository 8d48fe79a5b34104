import type { Equation } from './equation.js'

/**
 * Tells an equation that was read or worked out from anything else, also one of another copy of the library.
 *
 * @param value - Anything.
 * @returns True for an {@link Equation}; false for a text.
 *
 * @example
 * ```ts
 * import { isEquation, parseEquation } from 'saltwright/equation'
 *
 * isEquation(parseEquation('ZnO + H2SO4 -> ZnSO4 + H2O')) // => true
 * isEquation('ZnO + H2SO4 -> ZnSO4 + H2O') // => false
 * ```
 */
export function isEquation(value: unknown): value is Equation {
  if (typeof value !== 'object' || value === null) return false
  const { text, left, right, arrow } = value as Partial<Equation>
  return typeof text === 'string' && typeof arrow === 'string' && Array.isArray(left) && Array.isArray(right)
}
