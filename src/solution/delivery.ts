import type { Quantity } from '../quantity/index.js'
import { notNegative } from '../stoichiometry/bounds.js'
import { chosen, type Given } from '../stoichiometry/given.js'
import { aboveZero } from './bounds.js'
import { concentrationNaming, soluteNaming, substanceOf, volumeNaming } from './naming.js'

/**
 * The volume of a solution that delivers an amount of its solute: V = n / c.
 *
 * @param amount - How much is wanted; text is exact.
 * @param concentration - Of the solution; text is exact, as a nominal concentration in a plan is.
 * @returns The volume, in L; show it in mL with `.to('mL')`.
 * @throws {@link StoichiometryError} `stoichiometry/negative`; {@link SolutionError} `solution/not-above-zero`;
 *   {@link QuantityError} for what cannot be read.
 * @source OpenStax, Chemistry 2e, section 3.3.
 *
 * @example
 * ```ts
 * import { roundTo } from 'saltwright/quantity'
 * import { volumeToDeliver } from 'saltwright/solution'
 *
 * roundTo(volumeToDeliver('0.25 mol', '6 mol/L').to('mL'), { figures: 3 }).toString() // => '41.7 mL'
 * ```
 */
export function volumeToDeliver(
  amount: Given<'amount'>,
  concentration: Given<'amountConcentration'>,
): Quantity<'volume'> {
  const n = notNegative(chosen(amount, 'amount', soluteNaming()))
  const c = aboveZero(chosen(concentration, 'amountConcentration', concentrationNaming()))
  return n.dividedBy(c).named(volumeNaming('volume of the solution', substanceOf(n, c)))
}

/**
 * The amount of solute in a volume of solution: n = c V.
 *
 * @param volume - Of the solution; text is exact. A reading is `quantity('25.00 mL')`.
 * @param concentration - Of the solution; text is exact.
 * @returns The amount in mol.
 * @throws {@link StoichiometryError} `stoichiometry/negative`; {@link SolutionError} `solution/not-above-zero`;
 *   {@link QuantityError} for what cannot be read.
 * @source OpenStax, Chemistry 2e, section 3.3.
 *
 * @example
 * ```ts
 * import { quantity } from 'saltwright/quantity'
 * import { amountInVolume } from 'saltwright/solution'
 *
 * amountInVolume('25 mL', '2 mol/L').toString() // => '0.05 mol'
 * amountInVolume(quantity('24.85 mL'), quantity('0.1024 mol/L')).toString() // => '0.002545 mol'
 * ```
 */
export function amountInVolume(
  volume: Given<'volume'>,
  concentration: Given<'amountConcentration'>,
): Quantity<'amount'> {
  const V = notNegative(chosen(volume, 'volume', volumeNaming('volume of solution')))
  const c = aboveZero(chosen(concentration, 'amountConcentration', concentrationNaming()))
  return c.times(V).named(soluteNaming(substanceOf(c, V)))
}
