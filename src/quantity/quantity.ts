import type { Decimal } from '../decimal.js'
import type { Dimension, Divisor, Factor, Product, Quotient } from './dimension.js'
import type { InputFacts, Naming } from './input.js'
import type { RuleSettings } from './rule.js'
import type { RuleName } from './rules.js'
import type { Unit, UnitOf } from './unit.js'

/**
 * A number that knows its unit, its significant figures and where it came from: an input, or a rule applied to other
 * quantities. Immutable; every method gives a new one. The value is never rounded; only what is shown is.
 *
 * @typeParam D - Its dimension, so that adding a mass to a volume does not compile.
 *
 * @example
 * ```ts
 * import { quantity } from 'saltwright/quantity'
 *
 * const crop = quantity('18.632 g').minus(quantity('11.204 g'))
 * crop.toString() // => '7.428 g'
 * crop.significantFigures // => 4
 * ```
 */
export interface Quantity<D extends Dimension = Dimension> {
  /** The unrounded value, in `unit`. */
  readonly value: Decimal
  /** The unit, in the one spelling that is written; `1` for a plain ratio. */
  readonly unit: Unit
  /** What it measures. */
  readonly dimension: D
  /** The rule that made it, or `input`. */
  readonly rule: RuleName | 'input'
  /** The quantities it was made from, in the order of the rule; empty for an input. */
  readonly operands: readonly Quantity[]
  /** What the rule needs beside its operands: a conversion factor, counts, an exponent, a rounding. */
  readonly settings: RuleSettings
  /** For an input: what is known of it. The same object means the same measurement, so it correlates with itself. */
  readonly input: InputFacts | undefined
  /** What it is called: label, symbol, substance, role. */
  readonly naming: Naming
  /** Significant figures by the classroom rules; `null` for an exact number. */
  readonly significantFigures: number | null
  /** Exponent of ten of the last significant digit (`-3` for 3.977); `null` for an exact number. */
  readonly place: number | null
  /** Sum. The other is converted to this unit. @throws {@link QuantityError} `quantity/dimensions-differ`. */
  plus(other: Quantity<D>): Quantity<D>
  /** Difference. The other is converted to this unit. @throws {@link QuantityError} `quantity/dimensions-differ`. */
  minus(other: Quantity<D>): Quantity<D>
  /** The same dimension, scaled by a ratio. */
  times(ratio: Quantity<'ratio'>): Quantity<D>
  /** Product. @throws {@link QuantityError} `quantity/no-such-product` where it means nothing here. */
  times<E extends Factor<D>>(other: Quantity<E>): Quantity<Product<D, E>>
  /** The same dimension, divided by a ratio. */
  dividedBy(ratio: Quantity<'ratio'>): Quantity<D>
  /** Quotient. @throws {@link QuantityError} `quantity/no-such-quotient`, `quantity/division-by-zero`. */
  dividedBy<E extends Divisor<D>>(other: Quantity<E>): Quantity<Quotient<D, E>>
  /** The same quantity in another unit. @throws {@link QuantityError} `quantity/unknown-unit`, `quantity/wrong-dimension`. */
  to(unit: UnitOf<D>): Quantity<D>
  /** Below zero, zero or above zero as this is less than, equal to or more than the other, unrounded. */
  compare(other: Quantity<D>): number
  /** Whether both have the same unrounded value, whatever their units and figures. */
  equals(other: Quantity<D>): boolean
  /** The same quantity under other names; it stays the same measurement. */
  named(naming: Naming): Quantity<D>
  /** Rounded to what is significant, with its unit: `3.977 g`. */
  toString(): string
  /** Value, unit, and significant figures or exactness. */
  toJSON(): QuantityJSON
}

/** A quantity as JSON, without its origin. */
export interface QuantityJSON {
  /** The unrounded value, in plain or exponent form; trailing zeros as far as they are significant. */
  readonly value: string
  /** Its unit. */
  readonly unit: Unit
  /** Significant figures; absent for an exact number. */
  readonly significantFigures?: number
  /**
   * Exponent of ten of the last significant digit, only where the figures leave it open: 9.99975 shown as 10.000 has five figures,
   * and so would 9.9998.
   */
  readonly place?: number
  /** True for an exact number. */
  readonly exact?: true
  /** Standard uncertainty in the same unit, where one was stated for an input. */
  readonly uncertainty?: string
}
