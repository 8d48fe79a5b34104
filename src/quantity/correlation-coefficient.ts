import { nodeOf } from './node.js'
import { combinedStandard, covariance, inUnitsOf, propagate, type UncertaintyOptions } from './propagation.js'
import type { Quantity } from './quantity.js'

/**
 * How far two results vary together, because they share inputs or because inputs of theirs are correlated.
 *
 * @param a - A result.
 * @param b - Another.
 * @param options - What stands for uncertainties that were not stated, and which inputs are correlated.
 * @returns The correlation coefficient, from -1 to 1; zero where one of the two has no uncertainty.
 * @throws {@link QuantityError} the codes of {@link standardUncertainty}: `quantity/uncertainty-not-stated` and others.
 * @source JCGM 100:2008, F.1.2.3.
 *
 * @example
 * ```ts
 * import { correlationCoefficient, quantity } from 'saltwright/quantity'
 *
 * const tare = quantity('11.2040(2) g')
 * const first = quantity('18.6320(2) g').minus(tare)
 * const second = quantity('19.1100(2) g').minus(tare)
 * correlationCoefficient(first, second).toFixed(3) // => '0.500'
 * ```
 */
export function correlationCoefficient(a: Quantity, b: Quantity, options: UncertaintyOptions = {}): number {
  const [one, other] = [propagate(nodeOf(a), options), propagate(nodeOf(b), options)]
  const [u, v] = [combinedStandard(one), combinedStandard(other)]
  if (u === 0 || v === 0) return 0
  const r = covariance(inUnitsOf(one, u), inUnitsOf(other, v))
  return Math.max(-1, Math.min(1, r))
}
