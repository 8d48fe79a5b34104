import type { Dimension, Quantity } from '../quantity/index.js'

/** Numbers count as the same if their range is within a tenth of their mean. Our choice, no source. */
const within = 0.1

/** Whether two or more numbers, all above zero, are about the same. It only ranks explanations; no result is made from it. */
export function sameEverywhere<D extends Dimension>(numbers: readonly Quantity<D>[]): boolean {
  const values = numbers.map(({ value }) => value.toNumber())
  if (values.length < 2 || values.some((value) => value <= 0)) return false
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length
  const most = values.reduce((a, b) => Math.max(a, b))
  const least = values.reduce((a, b) => Math.min(a, b))
  return most - least <= within * mean
}
