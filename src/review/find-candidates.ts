import type { Calculation } from './calculation.js'
import { type Candidate, type CandidateGroup, type Found, nameOf } from './candidate.js'
import type { SlipContext } from './context.js'
import { type Guess, guessesAt } from './guesses.js'
import { pairsAmong } from './pairs.js'
import { recompute } from './recompute.js'
import { evidenceOrder, type Slip } from './slip.js'
import { fitOf, isInReach, type Target } from './target.js'

/** What slips are looked for, and how. */
export interface Search {
  /** Which. */
  readonly slips: readonly Slip[]
  /** Whether pairs of slips are tried as well. */
  readonly pairs: boolean
}

/** The slips that give a number, the best first. */
export function findCandidates(
  calculation: Calculation,
  target: Target,
  context: SlipContext,
  { slips, pairs }: Search,
): readonly Candidate[] {
  const guesses = guessesAt(calculation, context, slips)
  const single = guesses
    .filter(({ value }) => isInReach(target, value))
    .flatMap((guess) => confirmed(calculation, target, guess))
  const found = ranked(oncePerName(single), slips)
  const more = pairs ? ranked(pairsAmong(calculation, target, guesses, found), slips) : []
  return together([...found, ...more])
}

function confirmed(calculation: Calculation, target: Target, { slip, way }: Guess): readonly Found[] {
  const value = recompute(calculation, way.change)
  const fit = value && fitOf(target, value)
  if (value === undefined || fit === undefined) return []
  const { name, group, did, advice, evidence } = slip
  return [{ slips: [name], group, did, reason: way.reason, advice, evidence, value, fit }]
}

/** Each slip once, in the way that fits best. */
function oncePerName(found: readonly Found[]): readonly Found[] {
  const best = new Map<string, Found>()
  for (const candidate of found) {
    const known = best.get(nameOf(candidate))
    if (known === undefined || rankOfFit(candidate) < rankOfFit(known)) best.set(nameOf(candidate), candidate)
  }
  return [...best.values()]
}

function rankOfFit({ fit }: Found): number {
  return fit === 'to the digits' ? 0 : 1
}

/** By fit, then by what is known of the slip, then in the order of the list. */
function ranked(found: readonly Found[], slips: readonly Slip[]): readonly Found[] {
  const places = new Map(slips.map(({ name }, index) => [name, index]))
  const rank = (one: Found): number => {
    const byEvidence = rankOfFit(one) * evidenceOrder.length + evidenceOrder.indexOf(one.evidence)
    return byEvidence * slips.length + (places.get(one.slips[0]) as number)
  }
  return [...found].sort((a, b) => rank(a) - rank(b))
}

/** Each candidate with the names of those that fit as well. */
function together(found: readonly Found[]): readonly Candidate[] {
  return found.map((one) => ({
    ...one,
    alike: found.filter((other) => other !== one && other.fit === one.fit).map(nameOf),
  }))
}

/** How close two results count as the same number, as a share of it. */
const sameNumber = 1e-12

/** The candidates, those together that cannot be told apart at the stated digits. */
export function groupsOf(candidates: readonly Candidate[]): readonly CandidateGroup[] {
  const fits = [...new Set(candidates.map(({ fit }) => fit))]
  return fits.map((fit) => {
    const alike = candidates.filter((one) => one.fit === fit)
    const values = alike.map(({ value }) => value.value.toNumber())
    const first = values[0] as number
    const differ = values.some((value) => Math.abs(value - first) > Math.abs(first) * sameNumber)
    return { slips: alike.map(nameOf), moreDigitsTell: differ }
  })
}
