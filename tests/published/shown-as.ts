import { type Dimension, type Quantity, roundTo } from '../../src/quantity/index.js'

/** The number of a quantity to the last printed digit of a printed one, whatever its own figures; `place` where zeros leave that open. */
export function shownAs<D extends Dimension>(
  printed: string,
  q: Quantity<D>,
  place: string = placeOf(printed),
): string {
  const decimals = printed.split('.')[1]?.length ?? 0
  return roundTo(q, { place }).value.toFixed(decimals)
}

/** The place of the last printed digit; zeros at the end of a whole number only hold its size. */
function placeOf(printed: string): string {
  const decimals = printed.split('.')[1]?.length
  if (decimals !== undefined) return `1e-${decimals}`
  return `1e${printed.length - printed.replace(/0+$/, '').length}`
}
