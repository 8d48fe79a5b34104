import { Decimal } from '../decimal.js'

/** Counts below this are most of all. */
const mostCounts = 100
/** Their decimals, each made when first asked for. */
const small: Decimal[] = []

/** The decimal of a count: exact where it terminates within 34 digits, else rounded there. */
export function countDecimal(top: number, bottom: number): Decimal {
  if (bottom === 1) return top < mostCounts ? smallDecimal(top) : new Decimal(top)
  const million = top * (1_000_000 / bottom)
  const terminates = 1_000_000 % bottom === 0 && million <= Number.MAX_SAFE_INTEGER
  return terminates ? new Decimal(`${million}e-6`) : new Decimal(top).div(bottom)
}

function smallDecimal(count: number): Decimal {
  const known = small[count] ?? frozen(new Decimal(count))
  small[count] = known
  return known
}

/** All formulas share it. */
function frozen(decimal: Decimal): Decimal {
  Object.freeze(decimal.d)
  return Object.freeze(decimal)
}
