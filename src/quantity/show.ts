import type { Decimal } from '../decimal.js'
import type { InputFacts } from './input.js'
import { roundToPlace, type TieRule } from './rounding.js'
import type { Unit } from './unit.js'

/** What is needed to write a number. */
interface Shown {
  readonly value: Decimal
  readonly unit: Unit
  readonly place: number | null
  readonly input: InputFacts | undefined
}

/** Most digits shown of an exact number that was worked out, such as 1/3. */
const exactDigits = 10

/** The number, rounded to what is significant, and its unit: `3.977 g`; a ratio has no unit. */
export function writeQuantity(shown: Shown, ties: TieRule = 'half-even'): string {
  const number = writeNumber(shown, ties)
  if (shown.unit === '1') return number
  return shown.unit === 'degC' ? `${number} °C` : `${number} ${shown.unit}`
}

/** The number alone, rounded to what is significant; what is written reads back with the same figures. */
export function writeNumber({ value, place, input }: Shown, ties: TieRule = 'half-even'): string {
  if (place === null) return writeExact(value, input)
  const rounded = roundToPlace(value, place, ties)
  if (rounded.e < -5 && !rounded.isZero()) return rounded.toExponential(Math.max(0, rounded.e - place))
  if (place < 0) return rounded.toFixed(-place)
  if (rounded.isZero()) return place === 0 ? '0' : `0e${place}`
  return writeWhole(rounded, place)
}

function writeExact(value: Decimal, input: InputFacts | undefined): string {
  if (input !== undefined) return value.toFixed(Math.max(0, -input.writtenPlace))
  return value.toSignificantDigits(Math.max(exactDigits, value.e + 1)).toString()
}

/** 250. has three figures, 250 two, 2.50e3 three: whole numbers say which zeros were read. */
function writeWhole(rounded: Decimal, place: number): string {
  const idle = rounded.e + 1 - rounded.sd()
  if (idle === place) return rounded.toFixed(0)
  return place === 0 ? `${rounded.toFixed(0)}.` : rounded.toExponential(rounded.e - place)
}
