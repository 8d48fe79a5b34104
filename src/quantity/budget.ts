import { Decimal } from '../decimal.js'
import { combinedDegrees } from './degrees-of-freedom.js'
import type { Dimension } from './dimension.js'
import { inputNode, type Node, nodeOf } from './node.js'
import {
  combinedStandard,
  componentOf,
  covariance,
  type Propagation,
  propagate,
  type UncertaintyOptions,
} from './propagation.js'
import type { Quantity } from './quantity.js'
import type { Part } from './sensitivity.js'
import { placeAt } from './significance.js'
import type { Unit } from './unit.js'

/** One line of an uncertainty budget. */
export interface Contribution {
  /** The input it comes from. */
  readonly input: Quantity
  /** The standard uncertainty of the input, in its unit. */
  readonly inputUncertainty: Quantity
  /** Degrees of freedom of that; Infinity where they are not limited. */
  readonly degreesOfFreedom: number
  /** The sensitivity coefficient: by how much the number of the result grows when that of the input grows by one. */
  readonly sensitivity: number
  /** The size of sensitivity times uncertainty, in the unit of the result. */
  readonly standardUncertainty: Quantity
  /** Its part of the variance of the result, of 1 in all; below zero where a correlation makes it so. */
  readonly share: number
}

/** Where the uncertainty of a result comes from. */
export interface UncertaintyBudget<D extends Dimension = Dimension> {
  /** The result. */
  readonly quantity: Quantity<D>
  /** Its combined standard uncertainty. */
  readonly standardUncertainty: Quantity<D>
  /**
   * Effective degrees of freedom (Welch-Satterthwaite, JCGM 100:2008, G.4.1), not rounded; Infinity where no input is limited, undefined
   * where an input that is limited is correlated with another, for which the formula does not hold.
   */
  readonly degreesOfFreedom: number | undefined
  /** What each input that has an uncertainty contributes, the largest first. */
  readonly contributions: readonly Contribution[]
}

/**
 * The combined standard uncertainty of a quantity by the law of propagation of uncertainty. An input that was used twice, such as a
 * tare or an atomic weight, is one input: its effects add before they are squared.
 *
 * @typeParam D - The dimension of the quantity.
 * @param q - Any quantity.
 * @param options - What stands for uncertainties that were not stated, and which inputs are correlated.
 * @returns The standard uncertainty in the unit of the quantity (kelvins for degrees Celsius), shown with two digits.
 * @throws {@link QuantityError} `quantity/uncertainty-not-stated`, which names the inputs; `quantity/no-derivative`,
 *   `quantity/bad-correlation`, `quantity/identity-conflict`, `quantity/unknown-option`, `quantity/not-a-quantity`.
 * @source JCGM 100:2008, 5.1.2 and 5.2.2.
 *
 * @example
 * ```ts
 * import { quantity, standardUncertainty } from 'saltwright/quantity'
 *
 * const tare = quantity('11.2040(2) g')
 * const net = quantity('18.6320(2) g').minus(tare)
 * standardUncertainty(net).toString() // => '0.00028 g'
 * standardUncertainty(net.plus(tare)).toString() // => '0.00020 g'
 * standardUncertainty(quantity('3.98 g')) // throws quantity/uncertainty-not-stated
 * ```
 */
export function standardUncertainty<D extends Dimension>(
  q: Quantity<D>,
  options: UncertaintyOptions = {},
): Quantity<D> {
  const node = nodeOf(q)
  return uncertaintyIn(combinedStandard(propagate(node, options)), node.unit) as Quantity as Quantity<D>
}

/**
 * The uncertainty of a quantity with what each input contributes to it.
 *
 * @typeParam D - The dimension of the quantity.
 * @param q - Any quantity.
 * @param options - What stands for uncertainties that were not stated, and which inputs are correlated.
 * @returns The combined standard uncertainty, effective degrees of freedom, and the contributions, largest first.
 * @throws {@link QuantityError} the codes of {@link standardUncertainty}.
 *
 * @example
 * ```ts
 * import { quantity, uncertaintyBudget } from 'saltwright/quantity'
 *
 * const mass = quantity('3.9772(30) g', { label: 'mass' })
 * const volume = quantity('100.00(4) mL', { label: 'volume' })
 * const budget = uncertaintyBudget(mass.dividedBy(volume))
 * budget.standardUncertainty.toString() // => '0.000034 g/mL'
 * budget.contributions.map(({ input, share }) => `${input.naming.label}: ${(100 * share).toFixed(0)} %`)
 * // => ['mass: 78 %', 'volume: 22 %']
 * ```
 */
export function uncertaintyBudget<D extends Dimension>(
  q: Quantity<D>,
  options: UncertaintyOptions = {},
): UncertaintyBudget<D> {
  const node = nodeOf(q)
  const propagation = propagate(node, options)
  const combined = combinedStandard(propagation)
  return Object.freeze({
    quantity: q,
    standardUncertainty: uncertaintyIn(combined, node.unit) as Quantity as Quantity<D>,
    degreesOfFreedom: degreesOf(propagation),
    contributions: Object.freeze(contributionsTo(node, propagation, combined)),
  })
}

function contributionsTo(result: Node, propagation: Propagation, combined: number): readonly Contribution[] {
  const lines = [...propagation.parts].map(([identity, part]) => {
    const alone = { parts: new Map([[identity, part]]), correlations: propagation.correlations }
    const share = combined === 0 ? 0 : covariance(alone, propagation) / combined / combined
    return contribution(part, share, result)
  })
  return lines.sort((a, b) => b.standardUncertainty.compare(a.standardUncertainty))
}

function contribution(part: Part, share: number, result: Node): Contribution {
  const { input, uncertainty, sensitivity, component } = part
  return Object.freeze({
    input,
    inputUncertainty: uncertaintyIn(uncertainty.standard, input.unit),
    degreesOfFreedom: uncertainty.degreesOfFreedom ?? Number.POSITIVE_INFINITY,
    sensitivity,
    standardUncertainty: uncertaintyIn(Math.abs(component), result.unit),
    share,
  })
}

function degreesOf(propagation: Propagation): number | undefined {
  const limited = [...propagation.parts].filter(([, { uncertainty }]) => uncertainty.degreesOfFreedom !== undefined)
  const correlated = propagation.correlations.some(
    ({ a, b, coefficient }) => coefficient * componentOf(propagation, a) * componentOf(propagation, b) !== 0,
  )
  if (limited.length > 0 && correlated) return undefined
  return combinedDegrees(
    [...propagation.parts.values()].map(({ component, uncertainty }) => ({
      standard: component,
      degreesOfFreedom: uncertainty.degreesOfFreedom,
    })),
  )
}

/** Figures that an uncertainty is shown with: JCGM 100:2008, 7.2.6. */
const shownDigits = 2
/** A double holds this many digits. */
const doubleDigits = 15

/** An uncertainty as a quantity. A difference of temperatures is in kelvins. */
export function uncertaintyIn(size: number, unit: Unit): Node {
  const value = new Decimal(size.toPrecision(doubleDigits))
  const place = value.isZero() ? 0 : placeAt(value, shownDigits)
  const facts = { kind: 'measured', writtenPlace: place, ambiguous: false } as const
  return inputNode(value, unit === 'degC' ? 'K' : unit, { ...facts, uncertainty: undefined, id: undefined })
}
