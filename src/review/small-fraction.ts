import type { Quantity } from '../quantity/index.js'

/** A ratio of small whole numbers, as coefficients give it. */
export interface SmallFraction {
  /** Above the line. */
  readonly top: number
  /** Below the line. */
  readonly bottom: number
}

const largest = 1000
const closeEnough = 1e-12

/** The small whole numbers whose ratio a quantity is; undefined where there are none. */
export function smallFraction(ratio: Quantity<'ratio'>): SmallFraction | undefined {
  const value = ratio.to('1').value.toNumber()
  for (let bottom = 1; bottom <= largest; bottom += 1) {
    const top = Math.round(value * bottom)
    if (Math.abs(top / bottom - value) <= closeEnough * value)
      return top > 0 && top <= largest ? { top, bottom } : undefined
  }
  return undefined
}
