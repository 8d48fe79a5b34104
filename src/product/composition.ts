import type { AtomicWeights } from '../element/index.js'
import { type FormulaLike, formulaOf, molarMass } from '../formula/index.js'
import { exact, type Quantity, sum } from '../quantity/index.js'
import type { Given } from '../stoichiometry/given.js'
import { list, positive, record } from './guard.js'
import { ProductError } from './product-error.js'

/** What an assay found; text is measured. */
export interface AssayFinding {
  /** Of what: an element, an ion, water. */
  readonly of: FormulaLike
  /** Its mass fraction. */
  readonly massFraction: Given<'ratio'>
}

/** A constituent by several measures. */
export interface Constituent {
  /** Of what. */
  readonly of: string
  /** Its mass fraction, in per cent. */
  readonly massFraction: Quantity<'ratio'>
  /** Its amount in 100 g. */
  readonly amount: Quantity<'amount'>
  /** Moles of it per mole of the constituent that there is least of. */
  readonly ratio: Quantity<'ratio'>
}

/** What several assays say together. */
export interface Composition {
  /** The constituents, in the order given. */
  readonly constituents: readonly Constituent[]
  /** The mass fractions added up, in per cent. */
  readonly total: Quantity<'ratio'>
  /** What is left to 100 %; below zero where the assays find more than there is. */
  readonly remainder: Quantity<'ratio'>
}

/**
 * The composition of a product from several assays: the mole ratio of what was found, and what is left to 100 %, which is neither
 * spread over the others nor called water.
 *
 * @param findings - What was found, as mass fractions; at least one.
 * @param options - `weights`: atomic weights, `"abridged"` unless said.
 * @returns Constituents with amounts in 100 g and mole ratios, the total, and the remainder.
 * @throws {@link ProductError} `product/nothing-weighed` for an empty list; `product/not-positive`; `product/not-a-list`.
 * @source Empirical formulas: OpenStax, Chemistry 2e, section 3.2.
 *
 * @example
 * ```ts
 * import { compositionFromAssays } from 'saltwright/product'
 *
 * const found = compositionFromAssays([
 *   { of: 'Fe^3+', massFraction: '11.3 %' },
 *   { of: 'C2O4^2-', massFraction: '53.9 %' },
 *   { of: 'H2O', massFraction: '11.0 %' },
 * ])
 * found.constituents.map(({ ratio }) => ratio.toString()) // => ['1.00', '3.03', '3.02']
 * found.remainder.toString() // => '23.8 %'
 * ```
 */
export function compositionFromAssays(
  findings: readonly AssayFinding[],
  options: { readonly weights?: AtomicWeights | undefined } = {},
): Composition {
  const { weights } = record(options, 'options: { weights }')
  const found = list(findings, 'findings').map((finding) => inHundredGrams(finding, weights))
  const [first, ...rest] = found
  if (first === undefined) throw nothingFound()
  const least = rest.reduce((a, b) => (b.amount.compare(a.amount) < 0 ? b : a), first)
  const total = sum(found.map(({ massFraction }) => massFraction)).named({ label: 'total of the assays', symbol: 'w' })
  return {
    constituents: found.map((each) => ({ ...each, ratio: ratioTo(each, least) })),
    total,
    remainder: exact('100 %').minus(total).named({ label: 'remainder', symbol: 'w' }),
  }
}

function inHundredGrams(finding: AssayFinding, weights: AtomicWeights | undefined): Omit<Constituent, 'ratio'> {
  const { of: formula, massFraction } = record(finding, 'a finding: { of, massFraction }')
  const of = formulaOf(formula).text
  const naming = { label: `mass fraction of ${of}`, symbol: 'w', of, role: 'mass fraction' } as const
  const fraction = positive(massFraction, 'ratio', naming).to('%')
  const mass = exact('100 g', { label: '100 g of the product', symbol: 'm' }).times(fraction)
  return {
    of,
    massFraction: fraction,
    amount: mass
      .dividedBy(molarMass(formula, { weights }))
      .named({ label: `amount of ${of} in 100 g`, symbol: 'n', of }),
  }
}

type Found = Omit<Constituent, 'ratio'>

function ratioTo({ amount, of }: Found, least: Found): Quantity<'ratio'> {
  return amount.dividedBy(least.amount).named({ label: `moles of ${of} per mole of ${least.of}`, symbol: 'r', of })
}

function nothingFound(): ProductError {
  return new ProductError({
    code: 'product/nothing-weighed',
    message: 'There is no finding to make a composition from.',
    found: 'an empty list',
    expected: 'at least one mass fraction',
  })
}
