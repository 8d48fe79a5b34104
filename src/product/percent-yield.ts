import { type Dimension, isQuantity, type Quantity } from '../quantity/index.js'
import { type Given, type Labels, measured } from '../stoichiometry/given.js'
import { inRole, list, positive, record } from './guard.js'
import { ProductError } from './product-error.js'

/** What may be said beside the two masses. */
export interface YieldOptions {
  /** Mass fraction of the wanted substance in what was obtained; the yield is corrected for it. Pure unless said; text is measured. */
  readonly purity?: Given<'ratio'> | undefined
}

/** A yield is taken on the basis of mass or of amount. */
export type YieldBasis = 'mass' | 'amount'

/**
 * The percent yield: what was obtained of what was possible, on the basis of mass or of amount. Over 100 % it is given as found; see
 * {@link explainYield}.
 *
 * @typeParam D - Mass or amount, the same for both.
 * @param actual - What was obtained; text is measured.
 * @param theoretical - What was possible.
 * @param options - `purity`, to count only the wanted substance.
 * @returns The yield in per cent.
 * @throws {@link ProductError} `product/not-positive` for a theoretical yield or a purity that is not above zero.
 * @source OpenStax, Chemistry 2e, section 4.4.
 *
 * @example
 * ```ts
 * import { percentYield } from 'saltwright/product'
 *
 * percentYield('0.392 g', '0.5072 g').toString() // => '77.3 %'
 * percentYield('0.392 g', '0.5072 g', { purity: '98.0 %' }).toString() // => '75.7 %'
 * ```
 */
export function percentYield<D extends YieldBasis = 'mass'>(
  actual: Given<D>,
  theoretical: Given<D>,
  options: YieldOptions = {},
): Quantity<'ratio'> {
  const dimension = basisOf(actual)
  const possibleNaming: Labels = { label: 'theoretical yield', role: 'theoretical yield' }
  const possible = inRole(positive(theoretical, dimension, possibleNaming), possibleNaming)
  const obtained = named(actual, dimension, { label: 'actual yield', role: 'actual yield' })
  const { purity } = record(options, 'options: { purity }')
  const wanted = purity === undefined ? obtained : obtained.times(purityOf(purity))
  return share(wanted, possible).named({ label: 'percent yield', role: 'percent yield' })
}

/**
 * How much of a substance came back, as after a recrystallisation or a cycle that ends with the metal it began with.
 *
 * @typeParam D - Mass or amount, the same for both.
 * @param recovered - What came back; text is measured.
 * @param start - What there was.
 * @returns The recovery in per cent.
 * @throws {@link ProductError} `product/not-positive` for a start that is not above zero.
 * @source Common practice, no source.
 *
 * @example
 * ```ts
 * import { percentRecovery } from 'saltwright/product'
 *
 * percentRecovery('0.0672 g', '0.0856 g').toString() // => '78.5 %'
 * ```
 */
export function percentRecovery<D extends YieldBasis = 'mass'>(
  recovered: Given<D>,
  start: Given<D>,
): Quantity<'ratio'> {
  const dimension = basisOf(recovered)
  const before = positive(start, dimension, { label: 'quantity at the start' })
  const after = named(recovered, dimension, { label: 'recovered', role: 'actual yield' })
  return share(after, before).named({ label: 'recovery', role: 'percent yield' })
}

/**
 * The yield over several steps: the product of their yields.
 *
 * @param steps - The yield of each step, at least one; text is measured.
 * @returns The overall yield in per cent.
 * @throws {@link ProductError} `product/nothing-weighed` for an empty list; `product/not-a-list`.
 * @source Common practice, no source.
 *
 * @example
 * ```ts
 * import { overallYield } from 'saltwright/product'
 *
 * overallYield(['92.1 %', '75.0 %']).toString() // => '69.1 %'
 * ```
 */
export function overallYield(steps: readonly Given<'ratio'>[]): Quantity<'ratio'> {
  const naming: Labels = { label: 'yield of a step', role: 'percent yield' }
  const [first, ...rest] = list(steps, 'yields').map((step) => measured(step, 'ratio', naming))
  if (first === undefined) throw noSteps()
  const all = rest.reduce((product, step) => product.times(step), first.to('1'))
  return all.to('%').named({ label: 'overall yield', role: 'percent yield' })
}

/** Amounts where an amount stands, masses otherwise. */
function basisOf<D extends YieldBasis>(given: Given<D>): D {
  const isAmount = isQuantity(given)
    ? given.dimension === 'amount'
    : typeof given === 'string' && given.trim().endsWith('mol')
  return (isAmount ? 'amount' : 'mass') as D
}

function named<D extends Dimension>(given: Given<D>, dimension: D, naming: Labels): Quantity<D> {
  return inRole(measured(given, dimension, naming), naming)
}

function share<D extends YieldBasis>(part: Quantity<D>, whole: Quantity<D>): Quantity<'ratio'> {
  return (part as Quantity as Quantity<'mass'>).dividedBy(whole as Quantity as Quantity<'mass'>).to('%')
}

function purityOf(purity: Given<'ratio'>): Quantity<'ratio'> {
  const naming: Labels = { label: 'purity', symbol: 'w', role: 'purity' }
  return inRole(positive(purity, 'ratio', naming), naming)
}

function noSteps(): ProductError {
  return new ProductError({
    code: 'product/nothing-weighed',
    message: 'There is no step to take a yield from.',
    found: 'an empty list',
    expected: 'the yield of at least one step',
  })
}
