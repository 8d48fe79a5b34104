import { Decimal } from '../decimal.js'
import { attempt, type Outcome, showFound } from '../errors.js'
import type { Dimension } from './dimension.js'
import type { Distribution, InputKind, Naming, StatedUncertainty } from './input.js'
import { convert, inputNode, isNode, type Node, unitFor } from './node.js'
import { type Numeral, readLeadingNumeral, readNumeral, type WholeNumberZeros } from './numeral.js'
import type { Quantity } from './quantity.js'
import { QuantityError } from './quantity-error.js'
import { findUnit, type Unit, type UnitSpellings, units } from './unit.js'

/** The dimension that a text of a number and a unit has; `never` where the unit is unknown or a comma stands in the number. */
export type DimensionOf<T extends string> = string extends T
  ? Dimension
  : T extends `${infer N} ${infer U}`
    ? N extends `${string},${string}`
      ? never
      : U extends keyof UnitSpellings
        ? UnitSpellings[U]
        : N extends `(${string}`
          ? Dimension
          : never
    : T extends `${string}%`
      ? 'ratio'
      : T extends `${string},${string}`
        ? never
        : 'ratio'

/** Text that an editor accepts where a quantity is read. */
export type QuantityText<T extends string> = DimensionOf<T> extends never ? never : T

/** What is known of the uncertainty of an input; masses, volumes and so on as text with a unit of the same dimension. */
export type UncertaintyStatement =
  | string
  | { readonly standard: string; readonly degreesOfFreedom?: number }
  | { readonly expanded: string; readonly coverageFactor: string; readonly degreesOfFreedom?: number }
  | { readonly halfWidth: string; readonly distribution: Exclude<Distribution, 'normal'> }

/** What can be said of an input beside its number. */
export interface InputOptions extends Naming {
  /** Its uncertainty: a standard uncertainty as text, or a statement of another kind. None unless said. */
  readonly uncertainty?: UncertaintyStatement
  /** What trailing zeros of a whole number mean; `"placeholders"` unless said. */
  readonly wholeNumberZeros?: WholeNumberZeros
  /** A name that stays the same wherever this measurement is saved. */
  readonly id?: string
}

/**
 * A measured number with its unit, as read off an instrument or a label: its digits say what was read.
 *
 * @typeParam T - The text, so that an editor marks an unknown unit.
 * @param text - A decimal numeral and a unit: `3.977 g`, `2.50e2 mL`, `96 %`. A bare numeral is a ratio.
 * @param options - Names, uncertainty, and what trailing zeros of a whole number mean.
 * @returns The quantity, with as many significant figures as digits were written.
 * @throws {@link QuantityError} `quantity/not-text`, `quantity/javascript-number`, `quantity/empty`,
 *   `quantity/not-a-numeral`, `quantity/decimal-comma`, `quantity/exponent-out-of-range`, `quantity/too-long`,
 *   `quantity/ambiguous-zeros`, `quantity/unknown-unit`, `quantity/bad-uncertainty`, `quantity/unknown-option`.
 * @source Counting figures: OpenStax, Chemistry 2e, section 1.5.
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
  options: InputOptions = {},
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
export function exact(value: string | number, options: InputOptions = {}): Quantity {
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
  options: InputOptions = {},
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
export function tryQuantity(text: unknown, options: InputOptions = {}): Outcome<Quantity, QuantityError> {
  return attempt(() => readInput(text, 'measured', options))
}

function readInput(text: unknown, kind: InputKind, options: InputOptions): Node {
  const { numeral, unit } = readNumberAndUnit(text, options.wholeNumberZeros)
  const { label, symbol, of, role } = options
  return inputNode(
    numeral.value,
    unit,
    {
      kind,
      writtenPlace: numeral.place,
      ambiguous: numeral.ambiguous,
      uncertainty: options.uncertainty === undefined ? undefined : readUncertainty(options.uncertainty, unit),
      id: options.id,
    },
    dropUndefined({ label, symbol, of, role }),
  )
}

function dropUndefined(naming: { readonly [K in keyof Naming]: Naming[K] | undefined }): Naming {
  return Object.fromEntries(Object.entries(naming).filter(([, value]) => value !== undefined))
}

function readNumberAndUnit(
  value: unknown,
  zeros: WholeNumberZeros | undefined,
): { readonly numeral: Numeral; readonly unit: Unit } {
  if (zeros !== undefined && !['placeholders', 'significant', 'reject'].includes(zeros)) throw unknownZeros(zeros)
  if (typeof value !== 'string') throw notText(value)
  const text = value.trim()
  if (text === '') throw empty()
  const offset = value.length - value.trimStart().length
  const { numeral, end } = readLeadingNumeral(text, zeros, offset)
  const rest = text.slice(end).trim()
  const unit = findUnit(rest)
  if (unit !== undefined) return { numeral, unit }
  const start = offset + text.length - rest.length
  throw unknownUnit(rest, { start, end: start + rest.length })
}

/** The stated uncertainty of an input, as a standard uncertainty in the unit of the input. */
export function readUncertainty(statement: UncertaintyStatement, unit: Unit): StatedUncertainty {
  if (typeof statement === 'string') return { standard: spread(statement, unit), distribution: 'normal' }
  if (typeof statement !== 'object' || statement === null)
    throw badUncertainty(statement, 'an uncertainty with its unit')
  if ('halfWidth' in statement) {
    const divisor = divisors[statement.distribution]
    if (divisor === undefined) throw badUncertainty(statement.distribution, Object.keys(divisors).join(', '))
    return {
      standard: spread(statement.halfWidth, unit).div(new Decimal(divisor).sqrt()),
      distribution: statement.distribution,
    }
  }
  const degrees = statement.degreesOfFreedom === undefined ? {} : { degreesOfFreedom: statement.degreesOfFreedom }
  if ('standard' in statement) return { standard: spread(statement.standard, unit), distribution: 'normal', ...degrees }
  const k = readNumeral(statement.coverageFactor).value
  if (!k.gt(0)) throw badUncertainty(statement.coverageFactor, 'a coverage factor above zero')
  return { standard: spread(statement.expanded, unit).div(k), distribution: 'normal', ...degrees }
}

/** Half-width squared over variance: JCGM 100:2008, 4.3.7 and 4.3.9; the arcsine from H.1 and F.2.4.4. */
const divisors: Readonly<Record<string, number>> = { rectangular: 3, triangular: 6, arcsine: 2 }

function spread(text: unknown, unit: Unit): Decimal {
  const { numeral, unit: written } = readNumberAndUnit(text, undefined)
  unitFor(written, units[unit].dimension)
  if (numeral.value.isNegative() && !numeral.value.isZero())
    throw badUncertainty(text, 'an uncertainty of zero or more')
  const facts = { kind: 'exact', writtenPlace: 0, ambiguous: false, uncertainty: undefined, id: undefined } as const
  const difference = written === 'degC' || unit === 'degC' ? numeral.value : undefined
  return difference ?? convert(inputNode(numeral.value, written, facts), unit).value
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
  return isNode(value)
}

function notText(value: unknown): QuantityError {
  const isNumber = typeof value === 'number'
  return new QuantityError({
    code: isNumber ? 'quantity/javascript-number' : 'quantity/not-text',
    message: isNumber
      ? `The JavaScript number ${value} has lost its trailing zeros, so its figures are unknown.`
      : `${showFound(value)} is not text.`,
    found: showFound(value),
    expected: isNumber ? 'text with its digits and unit, or exact(...) for a choice or a count' : 'text: "3.977 g"',
  })
}

function empty(): QuantityError {
  return new QuantityError({
    code: 'quantity/empty',
    message: 'The text is empty where a quantity was expected.',
    position: { start: 0, end: 0 },
    found: '""',
    expected: 'a number and a unit: "3.977 g"',
  })
}

function unknownUnit(rest: string, position: { readonly start: number; readonly end: number }): QuantityError {
  return new QuantityError({
    code: 'quantity/unknown-unit',
    message: `${showFound(rest)} is not a unit (character ${position.start + 1}).`,
    position,
    found: rest.slice(0, 60),
    expected: `one of ${Object.keys(units)
      .filter((unit) => unit !== '1')
      .join(', ')}`,
    hint: Object.keys(units).find((unit) => unit.toLowerCase() === rest.toLowerCase()),
  })
}

function badUncertainty(found: unknown, expected: string): QuantityError {
  return new QuantityError({
    code: 'quantity/bad-uncertainty',
    message: `${showFound(found)} does not state an uncertainty.`,
    found: showFound(found),
    expected,
  })
}

function unknownZeros(found: unknown): QuantityError {
  return new QuantityError({
    code: 'quantity/unknown-option',
    message: `${showFound(found)} is not a choice for wholeNumberZeros.`,
    found: showFound(found),
    expected: '"placeholders", "significant" or "reject"',
  })
}
