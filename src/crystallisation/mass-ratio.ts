import { exact, type Quantity } from '../quantity/index.js'
import { type Given, measured } from '../stoichiometry/given.js'
import { CrystallisationError } from './crystallisation-error.js'

/**
 * A solubility printed as a mass fraction of the saturated solution, as grams per gram of water.
 *
 * @param massFraction - Mass of the anhydrous salt per mass of solution, below 1. Text is measured.
 * @returns The same composition, as mass of salt per mass of water.
 * @throws {@link CrystallisationError} `crystallisation/not-positive` for a fraction that is not between 0 and 1.
 * @source Definition: w / (1 - w).
 *
 * @example
 * ```ts
 * import { massRatioFromFraction } from 'saltwright/crystallisation'
 *
 * massRatioFromFraction('24.5 %').toString() // => '0.325'
 * ```
 */
export function massRatioFromFraction(massFraction: Given<'ratio'>): Quantity<'ratio'> {
  const w = measured(massFraction, 'ratio', { label: 'mass fraction of the solution', symbol: 'w' }).to('1')
  if (w.value.gt(0) && w.value.lt(1)) return w.dividedBy(exact(1).minus(w))
  throw new CrystallisationError({
    code: 'crystallisation/not-positive',
    message: `${w} is not a mass fraction of a solution.`,
    found: String(w),
    expected: 'a number between 0 and 1, or between 0 % and 100 %',
  })
}
