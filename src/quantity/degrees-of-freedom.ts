import { showFound } from '../errors.js'
import { QuantityError } from './quantity-error.js'

/** A component of a combined standard uncertainty. */
export interface UncertaintyComponent {
  /** Its standard uncertainty, as it contributes to the result; all components in one unit. */
  readonly standard: number
  /** Its degrees of freedom; absent means unlimited. */
  readonly degreesOfFreedom?: number | undefined
}

/**
 * Effective degrees of freedom of a combined standard uncertainty by the Welch-Satterthwaite formula.
 *
 * @param components - The independent components, each with its degrees of freedom; without, they are unlimited.
 * @param combined - The combined standard uncertainty where it was rounded; else it follows from the components.
 * @returns The degrees of freedom, not rounded; Infinity where no component is limited.
 * @throws {@link QuantityError} `quantity/bad-coverage` for numbers that are no uncertainties or degrees of freedom.
 * @source JCGM 100:2008, G.4.1, formula (G.2b).
 *
 * @example
 * ```ts
 * import { effectiveDegreesOfFreedom } from 'saltwright/quantity'
 *
 * const components = [
 *   { standard: 0.25, degreesOfFreedom: 9 },
 *   { standard: 0.57, degreesOfFreedom: 4 },
 *   { standard: 0.82, degreesOfFreedom: 14 },
 * ]
 * effectiveDegreesOfFreedom(components, 1.03).toFixed(1) // => '19.0'
 * ```
 */
export function effectiveDegreesOfFreedom(components: readonly UncertaintyComponent[], combined?: number): number {
  if (!Array.isArray(components)) throw badComponent(components, 'an array of components')
  for (const component of components) checkComponent(component)
  if (combined !== undefined && !isAboveZero(combined))
    throw badComponent(combined, 'a combined uncertainty above zero')
  return combinedDegrees(components, combined)
}

/**
 * Degrees of freedom of a standard uncertainty that was judged, from how far it may be wrong.
 *
 * @param relative - The relative uncertainty of the standard uncertainty: 0.25 where it may be wrong by a quarter.
 * @returns The degrees of freedom.
 * @throws {@link QuantityError} `quantity/bad-coverage` for a number not above zero.
 * @source JCGM 100:2008, G.4.2, formula (G.3).
 *
 * @example
 * ```ts
 * import { degreesOfFreedomFromReliability } from 'saltwright/quantity'
 *
 * degreesOfFreedomFromReliability(0.25) // => 8
 * ```
 */
export function degreesOfFreedomFromReliability(relative: number): number {
  if (!isAboveZero(relative)) throw badComponent(relative, 'a relative uncertainty above zero')
  return 1 / (2 * relative ** 2)
}

/** The Welch-Satterthwaite formula, for components that were checked. */
export function combinedDegrees(components: readonly UncertaintyComponent[], combined?: number): number {
  const total = combined ?? Math.sqrt(components.reduce((sum, { standard }) => sum + standard ** 2, 0))
  let loss = 0
  for (const { standard, degreesOfFreedom } of components)
    if (degreesOfFreedom !== undefined && standard !== 0) loss += (standard / total) ** 4 / degreesOfFreedom
  return loss === 0 ? Number.POSITIVE_INFINITY : 1 / loss
}

function checkComponent(component: UncertaintyComponent | null | undefined): void {
  const { standard, degreesOfFreedom } = component ?? { standard: undefined }
  if (!Number.isFinite(standard)) throw badComponent(standard, 'a standard uncertainty')
  if (degreesOfFreedom !== undefined && !isAboveZero(degreesOfFreedom))
    throw badComponent(degreesOfFreedom, 'degrees of freedom above zero')
}

function isAboveZero(value: unknown): boolean {
  return typeof value === 'number' && value > 0
}

function badComponent(found: unknown, expected: string): QuantityError {
  return new QuantityError({
    code: 'quantity/bad-coverage',
    message: `${showFound(found)} is not ${expected}.`,
    found: showFound(found),
    expected,
  })
}
