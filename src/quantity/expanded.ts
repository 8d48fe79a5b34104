import { showFound } from '../errors.js'
import { uncertaintyBudget, uncertaintyIn } from './budget.js'
import type { Dimension } from './dimension.js'
import { nodeOf } from './node.js'
import type { UncertaintyOptions } from './propagation.js'
import type { Quantity } from './quantity.js'
import { QuantityError } from './quantity-error.js'
import { readFactor } from './statement.js'
import { studentQuantile } from './student.js'

/**
 * How wide an interval is stated: by a coverage factor as text (`"2"`), or by the share of the values that it should hold, for which the
 * factor follows from Student's t.
 */
export type Coverage =
  | {
      /** The coverage factor k: JCGM 100:2008, 6.2.1. */
      readonly coverageFactor: string
    }
  | {
      /** The level of confidence, such as 0.95: JCGM 100:2008, 6.2.2 and annex G. */
      readonly level: number
      /**
       * What becomes of effective degrees of freedom that are no whole number: `"truncate"` to the next lower (JCGM 100:2008, G.4.1 and
       * H.1.6; the default) or `"keep"` them (G.4.1, note 1, interpolation).
       */
      readonly fractionalDegrees?: 'truncate' | 'keep'
    }

/** An interval about a result. */
export interface ExpandedUncertainty<D extends Dimension = Dimension> {
  /** The expanded uncertainty U: the result plus or minus this. */
  readonly expandedUncertainty: Quantity<D>
  /** The coverage factor k, of which U is that many standard uncertainties. */
  readonly coverageFactor: number
  /** The level of confidence, where it was asked for. */
  readonly level: number | undefined
  /** Effective degrees of freedom that were used; undefined where a coverage factor was given. */
  readonly degreesOfFreedom: number | undefined
}

/**
 * The expanded uncertainty of a quantity: its combined standard uncertainty times a coverage factor.
 *
 * @typeParam D - The dimension of the quantity.
 * @param q - Any quantity.
 * @param coverage - A coverage factor, or a level of confidence.
 * @param options - What stands for uncertainties that were not stated, and which inputs are correlated.
 * @returns The expanded uncertainty with its factor, and the degrees of freedom where a level was asked for.
 * @throws {@link QuantityError} `quantity/bad-coverage` for a level outside 0 and 1, and where correlated inputs leave the degrees of
 *   freedom open; the codes of {@link standardUncertainty}.
 * @source JCGM 100:2008, 6.2 and G.4.
 *
 * @example
 * ```ts
 * import { expandedUncertainty, quantity } from 'saltwright/quantity'
 *
 * const mass = quantity('100.02147(35) g')
 * expandedUncertainty(mass, { coverageFactor: '2' }).expandedUncertainty.toString() // => '0.00070 g'
 * expandedUncertainty(mass, { level: 0.95 }).coverageFactor.toFixed(2) // => '1.96'
 * ```
 */
export function expandedUncertainty<D extends Dimension>(
  q: Quantity<D>,
  coverage: Coverage,
  options: UncertaintyOptions = {},
): ExpandedUncertainty<D> {
  const { unit } = nodeOf(q)
  const { standardUncertainty, degreesOfFreedom } = uncertaintyBudget(q, options)
  const known = readCoverage(coverage)
  const degrees = known.level === undefined ? undefined : usedDegrees(degreesOfFreedom, known.keep)
  const factor = known.factor ?? coverageFactor(known.level as number, degrees)
  const size = standardUncertainty.value.toNumber() * factor
  return Object.freeze({
    expandedUncertainty: uncertaintyIn(size, unit) as Quantity as Quantity<D>,
    coverageFactor: factor,
    level: known.level,
    degreesOfFreedom: degrees,
  })
}

/**
 * The coverage factor for a level of confidence: of a normal distribution, or of Student's t for limited degrees of freedom.
 *
 * @param level - The level of confidence, above 0 and below 1.
 * @param degreesOfFreedom - At least one degree of freedom; unlimited unless said.
 * @returns The factor k, to eight digits and better.
 * @throws {@link QuantityError} `quantity/bad-coverage`.
 * @source JCGM 100:2008, G.3 and Table G.2.
 *
 * @example
 * ```ts
 * import { coverageFactor } from 'saltwright/quantity'
 *
 * coverageFactor(0.95).toFixed(3) // => '1.960'
 * coverageFactor(0.99, 16).toFixed(2) // => '2.92'
 * ```
 */
export function coverageFactor(level: number, degreesOfFreedom: number = Number.POSITIVE_INFINITY): number {
  checkLevel(level)
  if (typeof degreesOfFreedom !== 'number' || !(degreesOfFreedom >= 1))
    throw badCoverage(degreesOfFreedom, 'at least one degree of freedom')
  return studentQuantile(level, degreesOfFreedom)
}

interface KnownCoverage {
  readonly factor: number | undefined
  readonly level: number | undefined
  readonly keep: boolean
}

function readCoverage(coverage: unknown): KnownCoverage {
  if (typeof coverage !== 'object' || coverage === null) throw badCoverage(coverage, '{ coverageFactor } or { level }')
  const { coverageFactor: factor, level, fractionalDegrees = 'truncate' } = coverage as Record<string, unknown>
  if (factor !== undefined) return { factor: readFactor(factor).toNumber(), level: undefined, keep: false }
  if (fractionalDegrees !== 'truncate' && fractionalDegrees !== 'keep')
    throw badCoverage(fractionalDegrees, 'for fractionalDegrees "truncate" or "keep"')
  return { factor: undefined, level: checkLevel(level), keep: fractionalDegrees === 'keep' }
}

function usedDegrees(effective: number | undefined, keep: boolean): number {
  if (effective === undefined)
    throw badCoverage('correlated inputs', 'a coverage factor, for the degrees of freedom are open')
  return keep ? effective : Math.floor(effective + roundingError)
}

/** So much may a double lack of a whole number. */
const roundingError = 1e-9

function checkLevel(level: unknown): number {
  if (typeof level === 'number' && level > 0 && level < 1) return level
  throw badCoverage(level, 'a level of confidence between 0 and 1, such as 0.95')
}

function badCoverage(found: unknown, expected: string): QuantityError {
  return new QuantityError({
    code: 'quantity/bad-coverage',
    message: `${showFound(found)} does not say how wide an interval is.`,
    found: showFound(found),
    expected,
  })
}
