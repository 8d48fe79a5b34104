import type { Quantity } from '../quantity/index.js'
import { type ConstantMass, handedOn } from './constant-mass.js'
import { type Explanation, type ExplanationCode, possible, supported } from './explanation.js'
import type { HydrateCandidate } from './hydrate-candidates.js'

/** The weighings before and during an ignition. */
interface IgnitionSeries {
  readonly igniting?: ConstantMass | undefined
  readonly drying?: ConstantMass | undefined
}

/** What can explain the water found, where it is not that of the expected hydrate, or of any. */
export function explainWater(
  x: Quantity<'ratio'>,
  candidates: readonly HydrateCandidate[],
  ignition: IgnitionSeries,
): readonly Explanation[] {
  const reference = candidates.find(({ expected }) => expected) ?? candidates[0]
  if (reference === undefined || !x.value.gt(0)) return [noHydrate(x)]
  if (reference.consistent) return []
  const { difference } = reference
  return [
    ...otherHydrate(x, candidates),
    ...(difference.value.gt(0) ? tooMuchWater(reference, ignition) : tooLittleWater(reference, ignition)),
    possible('not-pure', 'Something else may be in the sample: more or less of it is lost on ignition.', {
      difference,
    }),
  ]
}

function noHydrate(x: Quantity<'ratio'>): Explanation {
  return possible('numbers-swapped', 'No hydrate has this much or this little water: the two masses may be swapped.', {
    x,
  })
}

function otherHydrate(x: Quantity<'ratio'>, candidates: readonly HydrateCandidate[]): readonly Explanation[] {
  return candidates
    .filter(({ consistent }) => consistent)
    .map(({ formula }) => supported('other-hydrate', `The water found agrees with ${formula}.`, { x }))
}

function tooMuchWater({ formula, difference }: HydrateCandidate, { drying }: IgnitionSeries): readonly Explanation[] {
  return [
    ...judged('damp', handedOn(drying), { difference }, `The sample was damp: more water went than ${formula} holds`),
    possible('residue-lost', 'Residue was lost: it spattered, or was heated so far that it decomposed.', {
      difference,
    }),
  ]
}

/** Dried or ignited to constant mass, a cause is out; short of it, the data speak for it; without a series, nobody knows. */
function judged(
  code: ExplanationCode,
  series: ConstantMass | undefined,
  numbers: Explanation['numbers'],
  message: string,
): readonly Explanation[] {
  if (series === undefined) return [possible(code, `${message}; no series of weighings tells.`, numbers)]
  if (series.reached) return []
  return [supported(code, `${message}; its mass was still ${series.trend}.`, numbers)]
}

function tooLittleWater(
  { formula, difference }: HydrateCandidate,
  { igniting }: IgnitionSeries,
): readonly Explanation[] {
  const message = `The ignition was broken off: the residue still holds some water of ${formula}`
  const before = 'The sample had lost water before it was weighed.'
  const ignited = handedOn(igniting)
  const lost = ignited?.reached ? supported : possible
  return [
    ...judged('incomplete-ignition', ignited, { difference }, message),
    lost('water-lost-before', before, { difference }),
  ]
}
