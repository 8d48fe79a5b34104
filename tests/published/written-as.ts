import { Decimal } from '../../src/decimal.js'
import { type Dimension, exact, type Quantity, quantity, roundTo, type UnitOf } from '../../src/quantity/index.js'

/** The number of a quantity as the library shows it, in the notation of a printed one: with a power of ten or without. */
export function writtenAs(printed: string, q: Quantity): string {
  const [shown = ''] = q.toString().split(' ')
  const number = new Decimal(shown.replace(/\.$/, ''))
  if (printed.includes('e'))
    return number.toExponential(Math.max(0, (q.significantFigures ?? 1) - 1)).replace('e+', 'e')
  return number.toFixed(Math.max(0, -(q.place ?? 0)))
}

/**
 * A quantity in the unit and to the last digit of a printed one, but never with more digits than the library shows of it: where
 * the source prints more, the two differ.
 */
export function toTheDigitsOf<D extends Dimension>(printed: string, q: Quantity<D>): string {
  const there = quantity(printed as string)
  const own = q.to(there.unit as UnitOf<D>)
  const finer = own.place === null || own.place < (there.place ?? 0)
  const shown = finer ? roundTo(own, { place: `1e${there.place}` }) : own
  const [number = '', ...unit] = printed.split(' ')
  return [writtenAs(number, shown), ...unit].join(' ')
}

/** The unrounded value of a quantity, rounded once to the last digit of a printed one, whatever the library shows of it. */
export function unroundedTo(printed: string, q: Quantity): string {
  const { unit } = quantity(printed as string)
  return toTheDigitsOf(printed, exact(`${q.to(unit as never).value.toString()} ${unit}` as string))
}
