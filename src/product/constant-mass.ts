import { showFound } from '../errors.js'
import { exact, isQuantity, mean, type Quantity } from '../quantity/index.js'
import { chosen, type Given, measured } from '../stoichiometry/given.js'
import {
  type ConstantMassCriterion,
  type ConstantMassCriterionName,
  constantMassCriteria,
} from './constant-mass-criteria.js'
import { list, positive, record } from './guard.js'
import { ProductError } from './product-error.js'

/** A series of weighings with drying, heating or igniting between them; text is measured. */
export interface MassSeries {
  /** The weighings in their order, gross or net. */
  readonly weighings: readonly Given<'mass'>[]
  /** When they count as constant: a named criterion, or one of your own with its source. */
  readonly criterion: ConstantMassCriterionName | ConstantMassCriterion
  /** The mass of substance taken, for a criterion per gram. */
  readonly taken?: Given<'mass'> | undefined
  /** What stands for the result: the `"last"` weighing (unless said), or the `"mean"` of the last two. */
  readonly take?: 'last' | 'mean' | undefined
}

/** Whether a series has come to rest. */
export interface ConstantMass {
  /** Whether the last two weighings differ by no more than the criterion allows. */
  readonly reached: boolean
  /** Each weighing less the one before it. */
  readonly changes: readonly Quantity<'mass'>[]
  /** How far the last two may differ. */
  readonly limit: Quantity<'mass'>
  /** Where the series was going at its end. */
  readonly trend: 'falling' | 'rising' | 'steady'
  /** The weighing that stands for the result. */
  readonly mass: Quantity<'mass'>
  /** The criterion, with its source. */
  readonly criterion: ConstantMassCriterion
}

/**
 * Judges whether a series of weighings has reached constant mass: whether the last two differ by no more than a criterion allows.
 *
 * @param series - The weighings, the criterion by name or in full, the mass taken where the criterion is per gram.
 * @returns Whether it is constant, every change, the limit, where the series was going, and the mass to go on with.
 * @throws {@link ProductError} `product/too-few-weighings` for fewer than two; `product/unknown-criterion`;
 *   `product/mass-taken-needed` for a criterion per gram without the mass taken; `product/not-positive`; `product/not-an-object`;
 *   `product/not-a-list`; `product/unknown-option` for another weighing to take.
 * @source Each criterion names its own: see {@link constantMassCriteria}.
 *
 * @example
 * ```ts
 * import { constantMass } from 'saltwright/product'
 *
 * const weighings = ['14.4496 g', '14.4487 g', '14.4485 g'] as const
 * constantMass({ weighings, criterion: 'analytical-balance' }).reached // => true
 * constantMass({ weighings: weighings.slice(0, 2), criterion: 'analytical-balance' }).reached // => false
 * ```
 */
export function constantMass(series: MassSeries): ConstantMass {
  const weighings = readingsOf(series)
  if (weighings.length < 2) throw tooFew(weighings.length)
  const [before, last] = weighings.slice(-2) as [Quantity<'mass'>, Quantity<'mass'>]
  const criterion = criterionOf(series.criterion)
  const limit = limitOf(criterion, series.taken)
  const { take = 'last' } = series
  if (take !== 'last' && take !== 'mean') throw unknownTake(take)
  const changes = weighings.slice(1).map((mass, index) => mass.minus(weighings[index] as Quantity<'mass'>))
  const change = last.minus(before)
  return {
    reached: change.value.abs().lte(limit.to(change.unit as 'g').value),
    changes,
    limit,
    trend: trendOf(change),
    mass: take === 'mean' ? mean([before, last]).named(last.naming) : last,
    criterion,
  }
}

/** What {@link constantMass} gave, or nothing, where it was handed on. */
export function handedOn(series: ConstantMass | undefined): ConstantMass | undefined {
  if (series === undefined || isJudged(record(series, handed))) return series
  throw notJudged(series)
}

const handed = 'what constantMass gives'

function isJudged({ reached, trend, limit }: ConstantMass): boolean {
  return typeof reached === 'boolean' && ['falling', 'rising', 'steady'].includes(trend) && isQuantity(limit)
}

function notJudged(found: unknown): ProductError {
  return new ProductError({
    code: 'product/not-an-object',
    message: `${showFound(found)} stands where ${handed} was expected.`,
    found: showFound(found),
    expected: handed,
  })
}

function readingsOf(series: MassSeries): readonly Quantity<'mass'>[] {
  const { weighings } = record(series, 'a series of weighings')
  const naming = { label: 'weighing', symbol: 'm', role: 'gross' } as const
  return list(weighings, 'weighings').map((mass) => measured(mass, 'mass', naming))
}

function trendOf({ value }: Quantity<'mass'>): ConstantMass['trend'] {
  if (value.isZero()) return 'steady'
  return value.lt(0) ? 'falling' : 'rising'
}

function criterionOf(given: MassSeries['criterion']): ConstantMassCriterion {
  if (typeof given === 'object' && given !== null) {
    if (typeof given.source === 'string') return given
    throw unknownCriterion(given, 'a criterion with its source')
  }
  if (typeof given === 'string' && Object.hasOwn(constantMassCriteria, given)) return constantMassCriteria[given]
  throw unknownCriterion(given, Object.keys(constantMassCriteria).join(', '))
}

function limitOf(criterion: ConstantMassCriterion, taken: Given<'mass'> | undefined): Quantity<'mass'> {
  const { within, perGram } = criterion
  const allowed = within ?? perGram
  if (allowed === undefined) throw unknownCriterion(criterion, 'a criterion with "within" or "perGram"')
  const limit = chosen(allowed, 'mass', { label: 'largest difference', symbol: 'Δm' })
  if (within !== undefined) return limit
  if (taken === undefined) throw massNeeded()
  const mass = positive(taken, 'mass', { label: 'mass taken', symbol: 'm', role: 'net' })
  return limit.times(mass.dividedBy(exact('1 g'))).named({ label: 'largest difference', symbol: 'Δm' })
}

function tooFew(count: number): ProductError {
  return new ProductError({
    code: 'product/too-few-weighings',
    message: 'A series needs two weighings before anything can be said of constant mass.',
    found: `${count}`,
    expected: 'two weighings or more',
  })
}

function unknownCriterion(found: unknown, expected: string): ProductError {
  return new ProductError({
    code: 'product/unknown-criterion',
    message: `${showFound(found)} is not a criterion of constant mass.`,
    found: showFound(found),
    expected,
  })
}

function unknownTake(found: unknown): ProductError {
  return new ProductError({
    code: 'product/unknown-option',
    message: `${showFound(found)} is no weighing that can be taken.`,
    path: ['take'],
    found: showFound(found),
    expected: '"last" or "mean"',
  })
}

function massNeeded(): ProductError {
  return new ProductError({
    code: 'product/mass-taken-needed',
    message: 'This criterion is per gram of substance; the mass taken is needed with it.',
    found: 'no mass taken',
    expected: 'taken: the net mass of the substance',
  })
}
