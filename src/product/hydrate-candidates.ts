import type { AtomicWeights } from '../element/index.js'
import { type Formula, type FormulaLike, formulaOf, waterFraction, withWater } from '../formula/index.js'
import { compareFractions, type Fraction, formatFraction, fraction, fractionToDecimal } from '../fraction.js'
import type { Quantity } from '../quantity/index.js'
import { exactFraction } from '../stoichiometry/exact-fraction.js'
import { watersPerUnit } from './expected-waters.js'

/** A hydrate that x may mean. */
export interface HydrateCandidate {
  /** Its formula: `CuSO4·5H2O`. */
  readonly formula: string
  /** Its number of water, exact. */
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

/** Up to this many waters hydrates with a half are common: hemi-, sesqui- and 2.5-hydrates. */
const mostWithHalf = 3

/** The hydrates next to x and the expected one, nearest first. */
export function hydrateCandidates(
  salt: Formula,
  x: Quantity<'ratio'>,
  tolerance: Quantity<'ratio'>,
  expected: FormulaLike | undefined,
  weights: AtomicWeights | undefined,
): readonly HydrateCandidate[] {
  const known = expectedWaters(salt, expected)
  const numbers = [...neighbours(x), ...(known === undefined ? [] : [known])]
  const once = new Map(numbers.map((waters) => [formatFraction(waters), waters]))
  return [...once.values()]
    .map((waters) => ({
      ...candidate(salt, x, tolerance, waters, weights),
      expected: known !== undefined && compareFractions(waters, known) === 0,
    }))
    .sort((a, b) => a.difference.value.abs().cmp(b.difference.value.abs()))
}

/** The number that was expected; nothing where none was, or one that nobody knows: `CuSO4·xH2O`. */
function expectedWaters(salt: Formula, expected: FormulaLike | undefined): Fraction | undefined {
  if (expected === undefined) return undefined
  const hydrate = formulaOf(expected)
  return hydrate.hydration === null ? undefined : watersPerUnit(hydrate, salt)
}

/** The whole numbers around x, and a small half between them; none where no salt holds that much water. */
function neighbours(x: Quantity<'ratio'>): readonly Fraction[] {
  if (x.value.gt(mostWater)) return []
  const low = BigInt(Math.max(0, x.value.floor().toNumber()))
  const half = low < mostWithHalf ? [fraction(2n * low + 1n, 2n)] : []
  return [fraction(low), ...half, fraction(low + 1n)]
}

function candidate(
  salt: Formula,
  x: Quantity<'ratio'>,
  tolerance: Quantity<'ratio'>,
  count: Fraction,
  weights: AtomicWeights | undefined,
): Omit<HydrateCandidate, 'expected'> {
  const hydrate = withWater(salt, written(count))
  const waters = exactFraction(count, { label: `water in ${hydrate.text}`, symbol: 'x', of: 'H2O' })
  const difference = x.minus(waters)
  return {
    formula: hydrate.text,
    waters,
    waterFraction: waterFraction(hydrate, { weights }).to('%'),
    difference,
    consistent: difference.value.abs().lte(tolerance.value),
  }
}

/** A number of water as it stands in a formula: `7`, `0.5`, `8/3`. */
function written(count: Fraction): string {
  return count.denominator === 2n ? fractionToDecimal(count).toFixed() : formatFraction(count)
}
