import type { Calculation } from './calculation.js'
import type { Found } from './candidate.js'
import { estimate } from './estimate.js'
import type { Guess } from './guesses.js'
import { recompute } from './recompute.js'
import { evidenceOrder } from './slip.js'
import { fitOf, isInReach, type Target } from './target.js'

/** Most pairs that are named: with many slips some pair gives nearly any number. */
const mostPairs = 5

/** Pairs of slips that give a number together, none of which gives it alone; the best known first, and no more than a few. */
export function pairsAmong(
  calculation: Calculation,
  target: Target,
  guesses: readonly Guess[],
  alone: readonly Found[],
): readonly Found[] {
  const enough = new Set(alone.map(({ slips }) => slips[0]))
  const others = guesses.filter(({ slip }) => !enough.has(slip.name)).sort(byEvidence)
  const found = new Map<string, Found>()
  for (const [index, one] of others.entries()) {
    for (const two of others.slice(index + 1)) {
      const pair = pairOf(calculation, target, one, two)
      if (pair !== undefined && !found.has(pair.slips.join())) found.set(pair.slips.join(), pair)
      if (found.size === mostPairs) return [...found.values()]
    }
  }
  return [...found.values()]
}

function byEvidence(a: Guess, b: Guess): number {
  return evidenceOrder.indexOf(a.slip.evidence) - evidenceOrder.indexOf(b.slip.evidence)
}

/** Two slips together, where they are two, concern different numbers and fit to the digits. */
function pairOf(calculation: Calculation, target: Target, one: Guess, two: Guess): Found | undefined {
  if (one.slip === two.slip || overlap(calculation, one, two)) return undefined
  const change = [...one.way.change, ...two.way.change]
  if (!isInReach(target, estimate(calculation, change))) return undefined
  const value = recompute(calculation, change)
  if (value === undefined || fitOf(target, value) !== 'to the digits') return undefined
  return {
    slips: [one.slip.name, two.slip.name],
    group: one.slip.group,
    did: `${one.slip.did} ${two.slip.did}`,
    reason: `${one.way.reason}; ${two.way.reason}`,
    advice: `${one.slip.advice} ${two.slip.advice}`,
    evidence: two.slip.evidence, // the lesser known of the two
    value,
    fit: 'to the digits',
  }
}

function overlap(calculation: Calculation, one: Guess, two: Guess): boolean {
  const places = new Set(one.way.change.map(({ replace }) => calculation.placeOf(replace)))
  return two.way.change.some(({ replace }) => places.has(calculation.placeOf(replace)))
}
