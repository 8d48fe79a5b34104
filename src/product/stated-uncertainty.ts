import { attempt } from '../errors.js'
import { exact, type Quantity, standardUncertainty } from '../quantity/index.js'
import type { Given } from '../stoichiometry/given.js'
import { positive } from './guard.js'

/** The standard uncertainty of a ratio; undefined where what it was made from does not state its own. */
export function statedUncertainty(x: Quantity<'ratio'>): Quantity<'ratio'> | undefined {
  const outcome = attempt(() => standardUncertainty(x))
  return outcome.ok ? outcome.value : undefined
}

/** How far x may lie from a whole number: as given, else twice its standard uncertainty, else one in its last figure. */
export function toleranceOf(
  x: Quantity<'ratio'>,
  uncertainty: Quantity<'ratio'> | undefined,
  given: Given<'ratio'> | undefined,
): Quantity<'ratio'> {
  if (given !== undefined) return positive(given, 'ratio', { label: 'tolerance' }).to('1')
  if (uncertainty !== undefined) return uncertainty.times(exact(2)).named({ label: 'twice the standard uncertainty' })
  const place = x.place as number // atomic weights limit the figures of x, so it is never exact
  return exact(Number(`1e${place}`), { label: 'one in the last figure' })
}
