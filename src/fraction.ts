import { Decimal } from './decimal.js'

/** An exact fraction in lowest terms with a positive denominator: a subscript, a coefficient, a mole ratio. */
export interface Fraction {
  /** The number above the line; carries the sign. */
  readonly numerator: bigint
  /** The number below the line, above zero. */
  readonly denominator: bigint
}

/** A fraction in lowest terms. The denominator is not zero: readers check that before. */
export function fraction(numerator: bigint, denominator = 1n): Fraction {
  const divisor = greatestCommonDivisor(numerator, denominator) * (denominator < 0n ? -1n : 1n)
  return { numerator: numerator / divisor, denominator: denominator / divisor }
}

/** The fraction of two whole JavaScript numbers. */
export function fractionOf(numerator: number, denominator = 1): Fraction {
  return fraction(BigInt(numerator), BigInt(denominator))
}

/** a + b. */
export function addFractions(a: Fraction, b: Fraction): Fraction {
  return fraction(a.numerator * b.denominator + b.numerator * a.denominator, a.denominator * b.denominator)
}

/** a - b. */
export function subtractFractions(a: Fraction, b: Fraction): Fraction {
  return addFractions(a, { numerator: -b.numerator, denominator: b.denominator })
}

/** a · b. */
export function multiplyFractions(a: Fraction, b: Fraction): Fraction {
  return fraction(a.numerator * b.numerator, a.denominator * b.denominator)
}

/** a / b, where b is not zero. */
export function divideFractions(a: Fraction, b: Fraction): Fraction {
  return fraction(a.numerator * b.denominator, a.denominator * b.numerator)
}

/** Below zero where a < b, above zero where a > b. */
export function compareFractions(a: Fraction, b: Fraction): number {
  const difference = a.numerator * b.denominator - b.numerator * a.denominator
  return difference < 0n ? -1 : difference > 0n ? 1 : 0
}

/** The decimal of a fraction: exact where it terminates within 34 digits, else rounded there. */
export function fractionToDecimal(f: Fraction): Decimal {
  const top = new Decimal(f.numerator.toString())
  return f.denominator === 1n ? top : top.div(f.denominator.toString())
}

/** Written as people type it: `3`, `1/2`, `-8/3`. */
export function formatFraction(f: Fraction): string {
  return f.denominator === 1n ? `${f.numerator}` : `${f.numerator}/${f.denominator}`
}

/** The greatest common divisor, never negative. */
export function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  let [x, y] = [a < 0n ? -a : a, b < 0n ? -b : b]
  while (y !== 0n) [x, y] = [y, x % y]
  return x
}
