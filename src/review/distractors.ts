import type { Quantity } from '../quantity/index.js'
import { calculationOf } from './calculation.js'
import type { ReviewContext } from './context.js'
import { type Guess, guessesAt } from './guesses.js'
import type { Distractor } from './question-set-type.js'
import { recompute } from './recompute.js'
import { evidenceOrder } from './slip.js'
import { slips } from './slips.js'

/** Wrong answers that slips give, each once and written as the right one; the best known slips first, absurd sizes last. */
export function distractorsFor(
  expected: Quantity,
  context: ReviewContext,
  written: (q: Quantity) => Pick<Distractor, 'text' | 'value'>,
  most: number,
): readonly Distractor[] {
  const calculation = calculationOf(expected)
  const taken = new Set([written(expected).text])
  const found: Distractor[] = []
  for (const { slip, way } of plausible(
    guessesAt(calculation, { ...context, given: context, weights: undefined }, slips),
    expected,
  )) {
    if (found.length >= most) break
    const value = recompute(calculation, way.change)
    if (value === undefined || !value.value.gt(0)) continue
    const answer = written(value)
    if (taken.has(answer.text) || Number(answer.value) === 0) continue // what shows as nothing tempts nobody
    taken.add(answer.text)
    found.push({ ...answer, slip: slip.name, advice: slip.advice })
  }
  return found
}

/** How close to the right answer a wrong one may be, as a share of it: closer ones look like rounding. */
const tooClose = 0.02

/** Guesses far enough from the right answer, the best known slips first, a second way of one slip after all first ones. */
function plausible(guesses: readonly Guess[], right: Quantity): readonly Guess[] {
  const size = right.value.toNumber()
  const apart = sorted(guesses, right).filter(({ value }) => Math.abs(value / size - 1) > tooClose)
  const isFirst = ({ slip }: Guess, index: number): boolean => apart.findIndex((other) => other.slip === slip) === index
  return [...apart.filter(isFirst), ...apart.filter((guess, index) => !isFirst(guess, index))]
}

/** How many times too large or too small an answer may be and still look like one. */
const absurd = 20

function sorted(guesses: readonly Guess[], { value }: Quantity): readonly Guess[] {
  const right = value.toNumber()
  const rank = (guess: Guess): number => {
    const ratio = guess.value / right
    const isAbsurd = ratio > absurd || ratio < 1 / absurd
    return evidenceOrder.indexOf(guess.slip.evidence) + (isAbsurd ? evidenceOrder.length : 0)
  }
  return [...guesses].sort((a, b) => rank(a) - rank(b))
}
