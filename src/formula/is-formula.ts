import type { Formula } from './formula.js'
import { ReadFormula } from './read-formula.js'

/**
 * Tells a formula that was read from any other value, also one that was read by another copy of the library (an ES module beside
 * a CommonJS one), where `instanceof` fails.
 *
 * @param value - Anything.
 * @returns True for what `parseFormula` gives back; false for the text of a formula.
 *
 * @example
 * ```ts
 * import { isFormula, parseFormula } from 'saltwright/formula'
 *
 * isFormula(parseFormula('ZnSO4·7H2O')) // => true
 * isFormula('ZnSO4·7H2O') // => false
 * ```
 */
export function isFormula(value: unknown): value is Formula {
  return value instanceof ReadFormula || (typeof value === 'object' && value !== null && looksRead(value))
}

function looksRead(value: object): boolean {
  const { text, charge, composition, parts }: Partial<Formula> = value
  return typeof text === 'string' && typeof charge === 'number' && composition !== undefined && Array.isArray(parts)
}
