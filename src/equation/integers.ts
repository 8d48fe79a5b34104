import { type Fraction, greatestCommonDivisor } from '../fraction.js'

/** The least common multiple of two whole numbers above zero. */
export function leastCommonMultiple(a: bigint, b: bigint): bigint {
  return (a / greatestCommonDivisor(a, b)) * b
}

/** The greatest common divisor of two safe integers, never negative. */
export function smallCommonDivisor(a: number, b: number): number {
  let [x, y] = [Math.abs(a), Math.abs(b)]
  if (x < 2147483648 && y < 2147483648) return int32(x | 0, y | 0)
  while (y !== 0) {
    const rest = x % y
    x = y
    y = rest
  }
  return x
}

function int32(a: number, b: number): number {
  let x = a
  let y = b
  while (y !== 0) {
    const rest = (x % y) | 0
    x = y
    y = rest
  }
  return x
}

/** Whole numbers divided by what they all share; the ratio stays. */
export function withoutCommonDivisor(values: readonly bigint[]): readonly bigint[] {
  const divisor = values.reduce(greatestCommonDivisor, 0n)
  return divisor <= 1n ? values : values.map((value) => value / divisor)
}

/** The smallest whole numbers in the ratio of some fractions. */
export function smallestWholeNumbers(values: readonly Fraction[]): readonly bigint[] {
  const multiple = values.reduce((least, value) => leastCommonMultiple(least, value.denominator), 1n)
  return withoutCommonDivisor(values.map((value) => (value.numerator * multiple) / value.denominator))
}
