import { attempt } from '../errors.js'
import { type Quantity, reconsider } from '../quantity/index.js'
import type { Calculation } from './calculation.js'
import type { Replacement } from './replacement.js'

/** The result of a calculation with some of its quantities replaced; undefined where it then cannot be done, as in a division by zero. */
export function recompute(calculation: Calculation, replacements: readonly Replacement[]): Quantity | undefined {
  const outcome = attempt(() => reconsider(calculation.result, fromTheTop(calculation, replacements)))
  return outcome.ok ? outcome.value : undefined
}

/** Results before what they were made from: a changed result still holds its operands, a changed operand makes another result. */
function fromTheTop(calculation: Calculation, replacements: readonly Replacement[]): readonly Replacement[] {
  const placed = replacements.flatMap((replacement) => {
    const place = calculation.placeOf(replacement.replace)
    return place === undefined ? [] : [{ replacement, place }]
  })
  return placed.sort((a, b) => b.place - a.place).map(({ replacement }) => replacement)
}
