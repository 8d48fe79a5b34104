import type { Calculation } from './calculation.js'
import type { Found } from './candidate.js'
import { estimate } from './estimate.js'
import type { Guess } from './guesses.js'
import { recompute } from './recompute.js'
import { evidenceOrder } from './slip.js'
import { fitOf, mayGive, type Target } from './target.js'

/** Most pairs that are named: with many slips some pair gives nearly any number. */
const mostPairs = 5

/**
 * What one answer may cost, counted in numbers that are worked out: about a tenth of a second. Trying a pair costs as much as the rest of
 * the calculation has numbers, and about 300 besides.
 */
const mostWork = 6_000_000
const workBesides = 300

/**
 * Pairs of slips that give a number together, none of which gives it alone; the best known first, and no more than a few. Of a long
 * calculation only the best known ways to go wrong are paired, as many as can be tried in a moment: every one in recipes, about 140 of
 * the 840 for a sum of a hundred vessels.
 */
export function pairsAmong(
  calculation: Calculation,
  target: Target,
  guesses: readonly Guess[],
  alone: readonly Found[],
): readonly Found[] {
  const enough = new Set(alone.map(({ slips }) => slips[0]))
  const others = guesses
    .filter(({ slip }) => !enough.has(slip.name))
    .sort(byEvidence)
    .slice(0, mostPaired(calculation))
  const found = new Map<string, Found>()
  for (const [one, two] of pairsIn(others)) {
    const names = `${one.slip.name} ${two.slip.name}`
    const pair = found.has(names) ? undefined : pairOf(calculation, target, one, two)
    if (pair !== undefined) found.set(names, pair)
    if (found.size === mostPairs) break
  }
  return [...found.values()]
}

function* pairsIn<T>(list: readonly T[]): Generator<readonly [T, T]> {
  for (const [index, one] of list.entries()) for (const two of list.slice(index + 1)) yield [one, two]
}

/** How many guesses can be paired with each other for the work that may be spent. */
function mostPaired({ quantities }: Calculation): number {
  return Math.floor(Math.sqrt((2 * mostWork) / (quantities.length + workBesides)))
}

function byEvidence(a: Guess, b: Guess): number {
  return evidenceOrder.indexOf(a.slip.evidence) - evidenceOrder.indexOf(b.slip.evidence)
}

/** Two slips together, where they are two, concern different numbers and fit to the digits. */
function pairOf(calculation: Calculation, target: Target, one: Guess, two: Guess): Found | undefined {
  if (one.slip === two.slip || overlap(calculation, one, two)) return undefined
  const change = [...one.way.change, ...two.way.change]
  if (!mayGive(target, estimate(calculation, change))) return undefined
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
