import type { AtomicWeights } from '../element/index.js'
import { type FormulaLike, formulaOf, molarMass } from '../formula/index.js'
import { divideFractions, type Fraction, formatFraction } from '../fraction.js'
import type { Quantity } from '../quantity/index.js'
import { exactFraction } from '../stoichiometry/exact-fraction.js'
import { isOfWater } from '../stoichiometry/of-water.js'
import { record } from './guard.js'
import { ProductError } from './product-error.js'
import { readRatio } from './read-ratio.js'

/** What is weighed and what it is reckoned as. */
export interface GravimetricPair {
  /** What is weighed: `BaSO4`. */
  readonly weighed: FormulaLike
  /** What it is reckoned as: `SO3`. */
  readonly sought: FormulaLike
  /** Moles of the second per mole of the first, as `"2"` or `"1/3"`; found from the elements they share unless said. */
  readonly ratio?: string | undefined
  /** Atomic weights; `"abridged"` unless said. */
  readonly weights?: AtomicWeights | undefined
}

/**
 * The gravimetric factor: grams of the substance sought per gram of the substance weighed.
 *
 * The mole ratio follows from the elements that both hold, hydrogen and oxygen aside: two Fe in Fe2O3 make two Fe. Where they share
 * none (gallium from silver bromide) or disagree, it has to be given.
 *
 * @param pair - What is weighed, what is sought, and the mole ratio where the formulas do not give it.
 * @returns The factor. The mole ratio is exact.
 * @throws {@link ProductError} `product/no-mole-ratio` where the formulas do not give it; `product/unreadable-ratio`;
 *   `product/not-an-object`.
 * @source IUPAC Recommendations, Pure Appl. Chem. 2025, 97, 137 (gravimetric factor).
 *
 * @example
 * ```ts
 * import { gravimetricFactor } from 'saltwright/product'
 *
 * gravimetricFactor({ weighed: 'Fe2O3', sought: 'Fe' }).toString() // => '0.69943'
 * gravimetricFactor({ weighed: 'AgBr', sought: 'Ga', ratio: '1/3' }).toString() // => '0.12377'
 * gravimetricFactor({ weighed: 'AgBr', sought: 'Ga' }) // throws product/no-mole-ratio
 * ```
 */
export function gravimetricFactor(pair: GravimetricPair): Quantity<'ratio'> {
  const { weighed, sought, ratio, weights } = record(pair, 'what is weighed and what is sought')
  const moles = ratio === undefined ? ratioBySharedElements(weighed, sought) : readRatio(ratio)
  const of = formulaOf(sought).text
  const per = formulaOf(weighed).text
  return exactFraction(moles, { label: `moles of ${of} per mole of ${per}`, symbol: 'r', of, role: 'mole ratio' })
    .times(molarMass(sought, { weights }))
    .dividedBy(molarMass(weighed, { weights }))
    .named({ label: `gravimetric factor of ${of} in ${per}`, symbol: 'F', of, role: 'mass fraction' })
}

/** Moles of what is sought per mole of what is weighed, by the elements that both hold. */
export function ratioBySharedElements(weighed: FormulaLike, sought: FormulaLike): Fraction {
  const [from, to] = [formulaOf(weighed), formulaOf(sought)]
  const shared = [...to.counts].filter(([symbol]) => from.counts.has(symbol) && !isOfWater(symbol))
  const ratios = shared.map(([symbol, count]) => divideFractions(from.counts.get(symbol) as Fraction, count))
  const [first] = ratios
  if (first !== undefined && new Set(ratios.map(formatFraction)).size === 1) return first
  throw new ProductError({
    code: 'product/no-mole-ratio',
    message: `The formulas do not say how many moles of ${to.text} a mole of ${from.text} stands for.`,
    found:
      shared.length === 0 ? 'no element in common' : `${shared.map(([symbol]) => symbol).join(', ')}: they disagree`,
    expected: 'a ratio, as "2" or "1/3"',
  })
}
