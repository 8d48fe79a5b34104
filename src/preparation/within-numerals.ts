import { attempt } from '../errors.js'
import { QuantityError } from '../quantity/index.js'
import type { Path } from './problem.js'
import { problemsError, writePath } from './read-json.js'

/** Works something out of a scale that has been read; numbers too large or too small for any numeral are a mistake of the scale. */
export function withinNumerals<T>(what: 'recipe' | 'class', path: Path, work: () => T): T {
  const outcome = attempt(work)
  if (outcome.ok) return outcome.value
  const { error } = outcome
  if (!(error instanceof QuantityError)) throw error
  const { code, found } = error
  const message = `${writePath(path)}: at this scale some number is beyond what can be written.`
  throw problemsError(what, [{ code, message, path, found, expected: 'a scale that can be weighed and measured' }])
}
