import { solidsOf } from '../crystallisation/index.js'
import type { AtomicWeights } from '../element/index.js'
import { anhydrous, type FormulaLike, formulaOf, molarMass } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import { type Given, measured } from '../stoichiometry/given.js'
import { type ConstantMass, handedOn } from './constant-mass.js'
import { type Explanation, ordered, possible, supported } from './explanation.js'
import { list, positive, record } from './guard.js'
import { sameEverywhere } from './same-everywhere.js'

/** What was obtained and what was possible; text is measured. */
export interface YieldPair {
  /** The mass obtained. */
  readonly actual: Given<'mass'>
  /** The mass that was possible. */
  readonly theoretical: Given<'mass'>
}

/** What is known beside the two masses. */
export interface YieldFacts extends YieldPair {
  /** Masses that may have been weighed along: filter paper, cap, label. */
  readonly mayBeIncluded?: readonly Given<'mass'>[] | undefined
  /** The product as it was calculated. */
  readonly product?: FormulaLike | undefined
  /** What the product may be instead; the anhydrous salt and the tabulated hydrates unless said. */
  readonly alternatives?: readonly FormulaLike[] | undefined
  /** The weighings while drying. */
  readonly drying?: ConstantMass | undefined
  /** Other runs of the same preparation, by other benches or at other scales. */
  readonly others?: readonly YieldPair[] | undefined
  /** Atomic weights; `"abridged"` unless said. */
  readonly weights?: AtomicWeights | undefined
}

/**
 * Why a yield may be over 100 %: the same grams too much (a tare, a paper), the same ratio too much (another hydrate, two numbers
 * swapped), a mass that is still falling (water). The yield itself stays as found.
 *
 * @param facts - The two masses, and whatever else is known.
 * @returns The explanations: those that the data speak for first, then those that the data do not exclude. Empty up to 100 %.
 * @throws {@link ProductError} `product/not-positive` for a mass that is not above zero; `product/not-an-object`;
 *   `product/not-a-list`.
 * @source The order (offset, ratio, falling series): common practice, no source.
 *
 * @example
 * ```ts
 * import { explainYield } from 'saltwright/product'
 *
 * const facts = { actual: '12.62 g', theoretical: '11.50 g', mayBeIncluded: ['1.35 g'] } as const
 * explainYield(facts).map(({ code }) => code) // => ['weighed-along', 'numbers-swapped', 'not-constant-mass', 'other-salts']
 * ```
 */
export function explainYield(facts: YieldFacts): readonly Explanation[] {
  const run = readRun(facts)
  if (!run.surplus.value.gt(0)) return []
  return ordered([
    ...weighedAlong(run, facts.mayBeIncluded ?? []),
    ...fromOthers(run, facts.others ?? []),
    ...otherHydrates(run, facts),
    swapped(run),
    ...stillWet(handedOn(facts.drying)),
    possible('other-salts', 'Other salts may have come down with the product.', { surplus: run.surplus }),
  ])
}

/** A run as quantities. */
interface Run {
  readonly actual: Quantity<'mass'>
  readonly theoretical: Quantity<'mass'>
  readonly surplus: Quantity<'mass'>
}

function readRun(pair: YieldPair): Run {
  const given = record(pair, 'the masses of a yield: { actual, theoretical }')
  const actual = positive(given.actual, 'mass', { label: 'actual yield', symbol: 'm', role: 'actual yield' })
  const theoretical = positive(given.theoretical, 'mass', {
    label: 'theoretical yield',
    symbol: 'm',
    role: 'theoretical yield',
  })
  return { actual, theoretical, surplus: actual.minus(theoretical).named({ label: 'surplus', symbol: 'Δm' }) }
}

function weighedAlong({ actual, theoretical }: Run, included: readonly Given<'mass'>[]): readonly Explanation[] {
  return list(included, 'masses')
    .map((given) => measured(given, 'mass', { label: 'something', symbol: 'm', role: 'tare' }))
    .map((mass) => ({ mass, without: actual.minus(mass) }))
    .filter(({ without }) => without.compare(theoretical) <= 0)
    .map(({ mass, without }) => {
      const yieldWithout = without.dividedBy(theoretical).to('%')
      const message = `If ${mass.naming.label} of ${mass} was weighed along, the yield is ${yieldWithout}.`
      return possible('weighed-along', message, { mass, yieldWithout })
    })
}

/** With several runs of different scale, the same grams too much and the same ratio too much can be told apart. */
function fromOthers(run: Run, others: readonly YieldPair[]): readonly Explanation[] {
  const runs = [run, ...list(others, 'runs').map(readRun)]
  const grams = sameEverywhere(runs.map((each) => each.surplus.to('g')))
  const ratios = sameEverywhere(runs.map((each) => each.surplus.dividedBy(each.theoretical)))
  if (grams === ratios) return []
  const all = `All ${runs.length} runs are over by about the same`
  const { actual, theoretical, surplus } = run
  return grams
    ? [supported('constant-offset', `${all} grams: a tare, a paper or a label weighed along.`, { surplus })]
    : [
        supported('constant-ratio', `${all} ratio: another hydrate, or a slip of calculation.`, {
          ratio: actual.dividedBy(theoretical),
        }),
      ]
}

function otherHydrates({ actual, theoretical }: Run, facts: YieldFacts): readonly Explanation[] {
  const { product, weights } = facts
  if (product === undefined) return []
  const planned = molarMass(product, { weights })
  return list(facts.alternatives ?? formsOf(product), 'formulas')
    .map((form) => ({
      form: formulaOf(form).text,
      most: theoretical.times(molarMass(form, { weights }).dividedBy(planned)),
    }))
    .filter(({ most }) => actual.compare(most) <= 0)
    .map(({ form, most }) => {
      const yieldAs = actual.dividedBy(most).to('%')
      const message = `If the product is ${form}, the yield is ${yieldAs}.`
      return possible('other-hydrate', message, { theoreticalYield: most, yieldAs })
    })
}

/** The anhydrous salt and the solids that its solubility table names; what was planned is never heavy enough. */
function formsOf(product: FormulaLike): readonly string[] {
  return [anhydrous(product).text, ...solidsOf(product)]
}

function swapped({ actual, theoretical }: Run): Explanation {
  const inverted = theoretical.dividedBy(actual).to('%')
  return possible('numbers-swapped', `If the two masses are swapped, the yield is ${inverted}.`, { inverted })
}

function stillWet(drying: ConstantMass | undefined): readonly Explanation[] {
  if (drying === undefined) return [possible('not-constant-mass', 'Nothing shows that the product was dry.')]
  if (drying.reached) return []
  const message = `The mass was ${drying.trend} when it was last weighed: the product has not reached constant mass.`
  return [supported('not-constant-mass', message, { limit: drying.limit })]
}
