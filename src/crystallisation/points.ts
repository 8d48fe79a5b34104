import type { Decimal } from '../decimal.js'
import { exact, type Quantity } from '../quantity/index.js'

/** The widest gap that is bridged by a straight line, in degrees: solubility curves bend. Our choice; no source. */
export const widestGap = 25

/** The two tabulated temperatures that a value is taken from, as positions in the list; the same twice where none is between. */
export type Bracket = readonly [number, number]

/** The temperature in degrees Celsius, unrounded. */
export function celsiusOf(temperature: Quantity<'temperature'>): Decimal {
  return temperature.to('degC').value
}

/** Whether a temperature lies between the first and the last of a list. */
export function covers(celsius: readonly number[], temperature: Quantity<'temperature'>): boolean {
  const t = celsiusOf(temperature)
  return t.gte(celsius[0] as number) && t.lte(celsius[celsius.length - 1] as number)
}

/**
 * Where to interpolate. A chosen temperature of the table takes the tabulated value; a measured one takes the slope along, so that
 * its uncertainty counts.
 */
export function bracketAt(celsius: readonly number[], temperature: Quantity<'temperature'>): Bracket {
  const t = celsiusOf(temperature)
  const above = celsius.findIndex((tabulated) => t.lte(tabulated))
  if (!t.eq(celsius[above] as number)) return [above - 1, above]
  if (temperature.significantFigures === null) return [above, above]
  return neighbours(above).find((pair) => isNarrow(celsius, pair)) ?? [above, above]
}

function neighbours(at: number): readonly Bracket[] {
  return [
    [at, at + 1],
    [at - 1, at],
  ]
}

/** Whether both ends exist and lie close enough together. */
export function isNarrow(celsius: readonly number[], [low, high]: Bracket): boolean {
  const [from, to] = [celsius[low], celsius[high]]
  return from !== undefined && to !== undefined && to - from <= widestGap
}

/** Straight line between two tabulated values; the first of them where the two are one. */
export function interpolate(
  celsius: readonly number[],
  [low, high]: Bracket,
  valueAt: (index: number) => Quantity<'ratio'>,
  temperature: Quantity<'temperature'>,
): Quantity<'ratio'> {
  const start = valueAt(low)
  if (low === high) return start
  const [from, to] = [degrees(celsius[low] as number), degrees(celsius[high] as number)]
  const along = temperature.minus(from).dividedBy(to.minus(from))
  return start.plus(valueAt(high).minus(start).times(along))
}

/** A tabulated temperature. */
export function degrees(celsius: number): Quantity<'temperature'> {
  return exact(`${celsius} degC`, { label: 'tabulated temperature', symbol: 't', role: 'temperature' })
}
