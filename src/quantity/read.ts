import { attempt, type Outcome, showFound } from '../errors.js'
import type { Dimension } from './dimension.js'
import type { InputFacts, InputKind, Naming } from './input.js'
import { none, readId, readNaming } from './naming.js'
import { inputNode, isBranded, type Node } from './node.js'
import { type WholeNumberZeros, zerosChoice } from './numeral.js'
import type { Quantity } from './quantity.js'
import { QuantityError } from './quantity-error.js'
import { badUncertainty, readFactor, readUncertainty, type UncertaintyStatement } from './statement.js'
import { type QuantityParts, readQuantityText } from './text.js'
import type { UnitSpellings } from './unit.js'

/** The dimension that a text of a number and a unit has; `never` where the unit is unknown or a comma stands in the number. */
export type DimensionOf<T extends string> = string extends T
  ? Dimension
  : T extends `(${infer N}) ${infer U}`
    ? WithUnit<N, U>
    : T extends `${infer N} ${infer U}`
      ? WithUnit<N, U>
      : T extends `${string}%`
        ? 'ratio'
        : T extends `${number}` | `${number}(${string})` | `(${string})`
          ? 'ratio'
          : never

type WithUnit<N extends string, U extends string> = N extends `${string},${string}`
  ? never
  : U extends keyof UnitSpellings
    ? UnitSpellings[U]
    : never

/** Text that an editor accepts where a quantity is read. */
export type QuantityText<T extends string> = DimensionOf<T> extends never ? never : T

/** What can be said of an input beside its number. */
export interface InputOptions extends Naming {
  /** Its uncertainty: a standard uncertainty as text, or a statement of another kind. None unless said. */
  readonly uncertainty?: UncertaintyStatement
  /** What trailing zeros of a whole number mean; `"placeholders"` unless said. */
  readonly wholeNumberZeros?: WholeNumberZeros
  /**
   * What the number in brackets or after a plus-minus sign is: an expanded uncertainty with this coverage factor, as text. Unless
   * said it is a standard uncertainty, as JCGM 100:2008, 7.2.2 writes them.
   */
  readonly coverageFactor?: string
  /** A name that stays the same wherever this measurement is saved. */
  readonly id?: string
}

/**
 * A measured number with its unit, as read off an instrument or a label: its digits say what was read.
 *
 * @typeParam T - The text, so that an editor marks an unknown unit.
 * @param text - A decimal numeral and a unit: `3.977 g`, `2.50e2 mL`, `96 %`. A bare numeral is a ratio. With its uncertainty:
 *   `3.9772(21) g` or `(3.9772 ± 0.0021) g`.
 * @param options - Names, uncertainty, and what trailing zeros of a whole number mean.
 * @returns The quantity, with as many significant figures as digits were written.
 * @throws {@link QuantityError} `quantity/not-text`, `quantity/javascript-number`, `quantity/empty`,
 *   `quantity/not-a-numeral`, `quantity/decimal-comma`, `quantity/exponent-out-of-range`, `quantity/too-long`,
 *   `quantity/ambiguous-zeros`, `quantity/unknown-unit`, `quantity/bad-uncertainty`, `quantity/unknown-option`.
 * @source Counting figures: OpenStax, Chemistry 2e, section 1.5. Forms with an uncertainty: JCGM 100:2008, 7.2.2.
 *
 * @example
 * ```ts
 * import { quantity } from 'saltwright/quantity'
 *
 * quantity('3.977 g').significantFigures // => 4
 * quantity('250 mL').significantFigures // => 2
 * quantity('250 mL', { wholeNumberZeros: 'significant' }).significantFigures // => 3
 * quantity('25.00 mL', { uncertainty: '0.03 mL', label: 'pipette' }).to('L').toString() // => '0.02500 L'
 * ```
 */
export function quantity<const T extends string>(
  text: T & QuantityText<T>,
  options: InputOptions = none,
): Quantity<DimensionOf<T>> {
  return readInput(text, 'measured', options) as Quantity as Quantity<DimensionOf<T>>
}

/**
 * A chosen, counted or defined number: exact, so it never limits figures. "0.0400 mol" as a target is a choice.
 *
 * @typeParam T - The text, so that an editor marks an unknown unit.
 * @param value - Text as for {@link quantity}, or a JavaScript number, which is a ratio.
 * @param options - Names.
 * @returns The quantity, exact.
 * @throws {@link QuantityError} the codes of {@link quantity}; `quantity/not-a-numeral` for NaN and infinities.
 * @source Exact numbers: OpenStax, Chemistry 2e, section 1.5.
 *
 * @example
 * ```ts
 * import { exact } from 'saltwright/quantity'
 *
 * exact('0.0400 mol').significantFigures // => null
 * exact(2).times(exact('0.0400 mol')).toString() // => '0.08 mol'
 * ```
 */
export function exact(value: number, options?: InputOptions): Quantity<'ratio'>
export function exact<const T extends string>(
  value: T & QuantityText<T>,
  options?: InputOptions,
): Quantity<DimensionOf<T>>
export function exact(value: string | number, options: InputOptions = none): Quantity {
  return readInput(typeof value === 'number' ? String(value) : value, 'exact', options)
}

/**
 * A number from a table of constants, such as an atomic weight: its printed digits limit figures as a reading's do.
 *
 * @typeParam T - The text, so that an editor marks an unknown unit.
 * @param text - Text as for {@link quantity}.
 * @param options - Names and uncertainty.
 * @returns The quantity.
 * @throws {@link QuantityError} the codes of {@link quantity}.
 * @source Printed digits limit figures: OpenStax, Chemistry 2e, section 1.5.
 *
 * @example
 * ```ts
 * import { constant } from 'saltwright/quantity'
 *
 * constant('8.314462618 J/(mol K)', { symbol: 'R', label: 'molar gas constant' }).toString() // => '8.314462618 J/(mol K)'
 * ```
 */
export function constant<const T extends string>(
  text: T & QuantityText<T>,
  options: InputOptions = none,
): Quantity<DimensionOf<T>> {
  return readInput(text, 'constant', options) as Quantity as Quantity<DimensionOf<T>>
}

/**
 * Reads a quantity without throwing: for text that comes from outside.
 *
 * @param text - Anything; only text can succeed.
 * @param options - As for {@link quantity}.
 * @returns The quantity, or the error.
 *
 * @example
 * ```ts
 * import { tryQuantity } from 'saltwright/quantity'
 *
 * tryQuantity('3,98 g').ok // => false
 * ```
 */
export function tryQuantity(text: unknown, options: InputOptions = none): Outcome<Quantity, QuantityError> {
  return attempt(() => readInput(text, 'measured', options))
}

function readInput(text: unknown, kind: InputKind, options: unknown): Node {
  const known = readOptions(options)
  const parts = readQuantityText(text, zerosChoice(known.wholeNumberZeros))
  const naming = readNaming(known)
  const { value, place, ambiguous } = parts.numeral
  const uncertainty = uncertaintyOf(parts, kind, known)
  const open = ambiguous && kind !== 'exact'
  return inputNode(
    value,
    parts.unit,
    { kind, writtenPlace: place, ambiguous: open, uncertainty, id: readId(known.id) },
    naming,
  )
}

function readOptions(options: unknown): InputOptions {
  if (typeof options !== 'object' || options === null) throw unknownOption(options, 'options in an object')
  return options
}

function uncertaintyOf(parts: QuantityParts, kind: InputKind, options: InputOptions): InputFacts['uncertainty'] {
  const { uncertainty, coverageFactor } = options
  const { spread, unit } = parts
  if (spread === undefined && uncertainty === undefined) return undefined
  if (kind === 'exact')
    throw badUncertainty(
      uncertainty ?? spread?.toString(),
      'a number without one',
      'is an uncertainty, which an exact number has not',
    )
  if (spread === undefined) return readUncertainty(uncertainty, unit)
  if (uncertainty !== undefined)
    throw badUncertainty(uncertainty, 'one uncertainty: in the text or as an option', 'is a second uncertainty')
  const standard = coverageFactor === undefined ? spread : spread.div(readFactor(coverageFactor))
  return Object.freeze({ standard, distribution: 'normal' })
}

/**
 * Tells a quantity from anything else, also one made by another copy of the library.
 *
 * @param value - Anything.
 * @returns True for a quantity.
 *
 * @example
 * ```ts
 * import { isQuantity, quantity } from 'saltwright/quantity'
 *
 * isQuantity(quantity('1.00 g')) // => true
 * isQuantity('1.00 g') // => false
 * ```
 */
export function isQuantity(value: unknown): value is Quantity {
  return isBranded(value)
}

function unknownOption(found: unknown, expected: string): QuantityError {
  return new QuantityError({
    code: 'quantity/unknown-option',
    message: `${showFound(found)} is not an option here.`,
    found: showFound(found),
    expected,
  })
}
