import { Decimal } from '../decimal.js'

/** The decimals of most counts: made once, and frozen because all formulas share them. */
const small: readonly Decimal[] = /* @__PURE__ */ listDecimals()

/** The decimal of a count: exact where it terminates within 34 digits, else rounded there. */
export function countDecimal(top: number, bottom: number): Decimal {
  if (bottom === 1) return top < small.length ? (small[top] as Decimal) : new Decimal(top)
  const million = top * (1_000_000 / bottom)
  const terminates = 1_000_000 % bottom === 0 && million <= Number.MAX_SAFE_INTEGER
  return terminates ? new Decimal(`${million}e-6`) : new Decimal(top).div(bottom)
}

function listDecimals(): Decimal[] {
  return Array.from({ length: 100 }, (_, count) => {
    const decimal = new Decimal(count)
    Object.freeze(decimal.d)
    return Object.freeze(decimal)
  })
}
