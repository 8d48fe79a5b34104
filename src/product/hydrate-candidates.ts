import type { AtomicWeights } from '../element/index.js'
import { type Formula, type FormulaLike, formulaOf, waterFraction, withWater } from '../formula/index.js'
import { exact, type Quantity } from '../quantity/index.js'

/** A hydrate that x may mean. */
export interface HydrateCandidate {
  /** Its formula: `CuSO4·5H2O`. */
  readonly formula: string
  /** Its number of water. */
  readonly waters: Quantity<'ratio'>
  /** The mass fraction of water that it has. */
  readonly waterFraction: Quantity<'ratio'>
  /** How far x lies above it; below zero where it lies below. */
  readonly difference: Quantity<'ratio'>
  /** Whether it lies within the tolerance. */
  readonly consistent: boolean
  /** Whether it is the one that was expected. */
  readonly expected: boolean
}

/** More water per formula unit than any salt holds. */
const mostWater = 100

/** The two hydrates next to x and the expected one, nearest first. */
export function hydrateCandidates(
  salt: Formula,
  x: Quantity<'ratio'>,
  tolerance: Quantity<'ratio'>,
  expected: FormulaLike | undefined,
  weights: AtomicWeights | undefined,
): readonly HydrateCandidate[] {
  const known = expected === undefined ? undefined : formulaOf(expected).hydration?.toNumber()
  const numbers = new Set([...neighbours(x), ...(known === undefined ? [] : [known])])
  return [...numbers]
    .map((waters) => ({ ...candidate(salt, x, tolerance, waters, weights), expected: waters === known }))
    .sort((a, b) => a.difference.value.abs().cmp(b.difference.value.abs()))
}

/** The whole numbers around x; none where no salt holds that much water. */
function neighbours(x: Quantity<'ratio'>): readonly number[] {
  if (x.value.gt(mostWater)) return []
  const low = Math.max(0, x.value.floor().toNumber())
  return [low, low + 1]
}

function candidate(
  salt: Formula,
  x: Quantity<'ratio'>,
  tolerance: Quantity<'ratio'>,
  count: number,
  weights: AtomicWeights | undefined,
): Omit<HydrateCandidate, 'expected'> {
  const hydrate = count === 0 ? salt : withWater(salt, count)
  const waters = exact(count, { label: `water in ${hydrate.text}`, symbol: 'x', of: 'H2O' })
  const difference = x.minus(waters)
  return {
    formula: hydrate.text,
    waters,
    waterFraction: waterFraction(hydrate, { weights }).to('%'),
    difference,
    consistent: difference.value.abs().lte(tolerance.value),
  }
}
