import { Decimal } from '../../src/decimal.js'
import type { Quantity } from '../../src/quantity/index.js'

/** The number of a quantity as the library shows it, in the notation of a printed one: with a power of ten or without. */
export function writtenAs(printed: string, q: Quantity): string {
  const [shown = ''] = q.toString().split(' ')
  const number = new Decimal(shown.replace(/\.$/, ''))
  if (printed.includes('e'))
    return number.toExponential(Math.max(0, (q.significantFigures ?? 1) - 1)).replace('e+', 'e')
  return number.toFixed(Math.max(0, -(q.place ?? 0)))
}
