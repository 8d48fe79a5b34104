import type { ErrorDetails } from '../errors.js'
import type { PreparationCode } from './preparation-error.js'

/** Where in a document something is: keys and indices from its root. */
export type Path = readonly (string | number)[]

/** One mistake of a document. */
export function problem(
  code: PreparationCode,
  path: Path,
  message: string,
  found: string,
  expected: string,
  hint?: string,
): ErrorDetails {
  return { code, path, message, found, expected, hint }
}
