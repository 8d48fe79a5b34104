import { type Quantity, sum } from '../quantity/index.js'
import { type Given, type Labels, measured } from '../stoichiometry/given.js'
import { positive, record } from './guard.js'

/** Where a product went, as far as anybody knows; text is measured. */
export interface LossFacts {
  /** The theoretical yield. */
  readonly theoretical: Given<'mass'>
  /** What was recovered: the actual yield. */
  readonly recovered: Given<'mass'>
  /** What the mother liquor holds, counted as product: an estimate. */
  readonly leftInLiquor?: Given<'mass'> | undefined
  /** What the washes carried away: an estimate. */
  readonly washedAway?: Given<'mass'> | undefined
}

/** A line of the account. */
export interface LossLine {
  /** Stable name. */
  readonly item: 'theoretical' | 'left in liquor' | 'washed away' | 'recovered' | 'unexplained'
  /** Its mass; undefined where nothing is known of it, which is not zero. */
  readonly mass: Quantity<'mass'> | undefined
  /** The same in per cent of the theoretical yield. */
  readonly share: Quantity<'ratio'> | undefined
  /** Whether it is estimated, measured, or what remains of the others. */
  readonly kind: 'calculated' | 'estimate' | 'measured' | 'remainder'
}

/**
 * Accounts for a theoretical yield: left in the liquor, washed away, recovered, and what none of these explains. The lines are never
 * made to add up: the unexplained part is what remains, and below zero where more is accounted for than there was.
 *
 * @param facts - Theoretical yield, what was recovered, and the estimates there are.
 * @returns Five lines in that order, each in grams and in per cent of the theoretical yield.
 * @throws {@link ProductError} `product/not-positive` for a theoretical yield that is not above zero; `product/not-an-object`.
 * @source Common practice, no source.
 *
 * @example
 * ```ts
 * import { lossAccount } from 'saltwright/product'
 *
 * const lines = lossAccount({
 *   theoretical: '11.502 g',
 *   recovered: '7.428 g',
 *   leftInLiquor: '3.1 g',
 * })
 * lines.map(({ share }) => share?.toString()) // => ['100.00 %', '27 %', undefined, '64.58 %', '8.5 %']
 * ```
 */
export function lossAccount(facts: LossFacts): readonly LossLine[] {
  const { leftInLiquor, washedAway } = record(facts, 'a theoretical and an actual yield')
  const theoretical = positive(facts.theoretical, 'mass', mass('theoretical', 'theoretical yield'))
  const recovered = measured(facts.recovered, 'mass', mass('recovered', 'actual yield'))
  const inLiquor = estimate(leftInLiquor, 'left in liquor')
  const washed = estimate(washedAway, 'washed away')
  const known = [inLiquor, washed, recovered].filter((each) => each !== undefined)
  const unexplained = theoretical.minus(sum(known)).named(mass('unexplained'))
  return [
    line('theoretical', 'calculated', theoretical, theoretical),
    line('left in liquor', 'estimate', inLiquor, theoretical),
    line('washed away', 'estimate', washed, theoretical),
    line('recovered', 'measured', recovered, theoretical),
    line('unexplained', 'remainder', unexplained, theoretical),
  ]
}

function estimate(given: Given<'mass'> | undefined, label: string): Quantity<'mass'> | undefined {
  return given === undefined ? undefined : measured(given, 'mass', mass(label))
}

function mass(label: string, role?: Labels['role']): Labels {
  return { label, symbol: 'm', ...(role && { role }) }
}

function line(
  item: LossLine['item'],
  kind: LossLine['kind'],
  of: Quantity<'mass'> | undefined,
  theoretical: Quantity<'mass'>,
): LossLine {
  const share = of
    ?.dividedBy(theoretical)
    .to('%')
    .named({ label: `${item}, per cent of the theoretical yield` })
  return { item, kind, mass: of, share }
}
