import type { Quantity } from 'saltwright/quantity'
import type { ReviewContext } from 'saltwright/review'
import { calculationOf } from '../../src/review/calculation.js'
import { guessesAt } from '../../src/review/guesses.js'
import { slips } from '../../src/review/slips.js'

/** The reasons of a slip, one for each way in which it may have been made. */
export function ways(expected: Quantity, name: string, context: ReviewContext = {}): readonly string[] {
  const guesses = guessesAt(calculationOf(expected), { ...context, given: context, weights: undefined }, slips)
  return guesses.flatMap(({ slip, way }) => (slip.name === name ? [way.reason] : []))
}
