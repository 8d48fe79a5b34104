import type { Decimal } from '../decimal.js'
import type { InputFacts } from './input.js'
import type { QuantityJSON } from './quantity.js'
import { roundToPlace, type TieRule } from './rounding.js'
import { placeAt } from './significance.js'
import type { Unit } from './unit.js'

/** What is needed to write a number. */
export interface Shown {
  readonly value: Decimal
  readonly unit: Unit
  readonly place: number | null
  readonly input: InputFacts | undefined
}

/** Most digits shown of an exact number that was worked out, such as 1/3. */
const exactDigits = 10
/** Longest run of digits before or after the point; beyond it a power of ten is written. */
const longestDecimals = 20

/** The number, rounded to what is significant, and its unit: `3.977 g`; a ratio has no unit. */
export function writeQuantity(shown: Shown, ties: TieRule = 'half-even'): string {
  const [number, unit] = [writeNumber(shown, ties), unitText(shown.unit)]
  return unit === '' ? number : `${number} ${unit}`
}

/** A unit as it stands behind a number; a plain ratio has none. */
export function unitText(unit: Unit): string {
  if (unit === 'degC') return '°C'
  return unit === '1' ? '' : unit
}

/** The number alone, rounded to what is significant; what is written reads back with the same figures. */
export function writeNumber({ value, place, input }: Shown, ties: TieRule = 'half-even'): string {
  if (place === null) return writeExact(value, input)
  const rounded = withoutSign(roundToPlace(value, place, ties))
  if (rounded.isZero()) return place > 0 ? `0e${place}` : rounded.toFixed(-place)
  if (rounded.e < -5) return withPower(rounded, place)
  return place < 0 ? rounded.toFixed(-place) : writeWhole(rounded, place)
}

/** A zero that was rounded from below is no less than zero. */
function withoutSign(rounded: Decimal): Decimal {
  return rounded.isZero() ? rounded.abs() : rounded
}

function writeExact(value: Decimal, input: InputFacts | undefined): string {
  if (input === undefined) return plain(value.toSignificantDigits(Math.max(exactDigits, value.e + 1)).toString())
  const decimals = Math.max(0, -input.writtenPlace)
  return decimals > longestDecimals || value.e > longestDecimals ? plain(value.toString()) : value.toFixed(decimals)
}

/** 250. has three figures, 250 two, 2.50e3 three: whole numbers say which zeros were read. */
function writeWhole(rounded: Decimal, place: number): string {
  const idle = rounded.e + 1 - rounded.sd()
  if (rounded.e > longestDecimals) return withPower(rounded, place)
  if (idle === place) return rounded.toFixed(0)
  return place === 0 ? `${rounded.toFixed(0)}.` : withPower(rounded, place)
}

/** `2.50e3`: a power of ten, with the digits down to the place. */
function withPower(rounded: Decimal, place: number): string {
  return plain(rounded.toExponential(Math.max(0, rounded.e - place)))
}

/** decimal.js writes 1e+30; the plus says nothing. */
function plain(text: string): string {
  return text.replace('e+', 'e')
}

/** The number as JSON: its digits as far as they are significant, its unit, and what is known of it. */
export function quantityJSON(shown: Shown & { readonly significantFigures: number | null }): QuantityJSON {
  const { value, unit, place, input, significantFigures } = shown
  const written = everyDigit(value, place ?? input?.writtenPlace ?? 0)
  const uncertainty = input?.uncertainty && { uncertainty: input.uncertainty.standard.toString() }
  const known =
    significantFigures === null
      ? { exact: true as const }
      : { significantFigures, ...openPlace(shown, significantFigures) }
  return { value: written, unit, ...known, ...uncertainty }
}

/** The place, where value and figures alone would give another one; a zero says its place by its digits. */
function openPlace({ value, place }: Shown, figures: number): { readonly place?: number } {
  return place === null || value.isZero() || placeAt(value, figures) === place ? {} : { place }
}

/** A number with every digit it has, and with zeros down to the place. */
export function everyDigit(value: Decimal, place: number): string {
  if (value.isZero() && place > 0) return `0e${place}`
  return value.dp() < -place && -place <= longestDecimals ? value.toFixed(-place) : plain(value.toString())
}
