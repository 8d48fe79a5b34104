import type { Decimal } from '../decimal.js'
import { roundingOf } from '../quantity/figures.js'
import { type Quantity, type RoundTo, roundTo, type TieRule } from '../quantity/index.js'
import { roundDecimal, roundingPlace, roundToPlace } from '../quantity/rounding.js'
import { figuresAt } from '../quantity/significance.js'
import type { Statement } from './statement.js'

/**
 * How many figures an answer should have. `"at least three"`: no more than its inputs justify, and three, or as many as they justify where
 * that is fewer. `"justified"`: exactly as many as its inputs justify. `"any"`: as many as were written. Or so many figures, or to a place.
 */
export type RequiredFigures = 'at least three' | 'justified' | 'any' | RoundTo

/** In what a right value differs from how it should be written. */
export type RoundingRemarkKind =
  /** More figures than the inputs justify, or than asked for. */
  | 'too many figures'
  /** Fewer figures than the inputs justify, or than asked for. */
  | 'too few figures'
  /** Rounded to its digits, not to the multiples of the place asked for, such as 0.05. */
  | 'not a multiple'
  /** Rounded by the other rule for a lone 5. */
  | 'other tie rule'
  /** Cut off after the last digit, not rounded. */
  | 'cut off'
  /** The last digit is one too large. */
  | 'rounded away'

/** That a value is right and its digits are not as they should be. */
export interface RoundingRemark {
  /** In what. */
  readonly kind: RoundingRemarkKind
  /** How many figures were stated. */
  readonly stated: number
  /** How many there should be; `null` where the number is exact and may have any. */
  readonly right: number | null
  /** For a lone 5: by which rule it was rounded. */
  readonly rule?: TieRule
}

/** How closely an answer is looked at. */
export interface Exactness {
  /** The rule for a lone 5; both are accepted unless said. */
  readonly ties?: TieRule | undefined
  /** How many figures are right; `"at least three"` unless said. */
  readonly figures?: RequiredFigures | undefined
  /** The place to which an instrument shows it: a statement to it is never too short. */
  readonly readableTo?: number | undefined
  /** The step of that instrument: the right value rounded to it by either rule is right, unless so many figures or a place are asked for. */
  readonly step?: Quantity | undefined
}

/** That an answer has the right value: as it should be, or with a remark on its digits. */
export interface Agreement {
  /** What is not as it should be; undefined where all is. */
  readonly remark: RoundingRemark | undefined
}

const bothRules: readonly TieRule[] = ['half-even', 'half-up']

/** Compares an answer with the right value in its unit; undefined where the value itself differs. */
export function agreementOf(right: Quantity, statement: Statement, exactness: Exactness): Agreement | undefined {
  const byDigits = agreementByDigits(right, statement, exactness)
  if (byDigits !== undefined && byDigits.remark === undefined) return byDigits
  return agreementBySteps(right, statement, exactness) ?? byDigits
}

/** By the steps of an instrument, or by those that are asked for: there, not to the digits, is where a value is rounded. */
function agreementBySteps(right: Quantity, statement: Statement, exactness: Exactness): Agreement | undefined {
  const { figures, step, ties } = exactness
  if (typeof figures !== 'object') return step && asMultiple(step.to(right.unit as never).value, right, statement)
  const asked = stepAsked(figures)
  return asked && asMultiple(asked, right, statement, ties)
}

/** A value rounded to the multiples of a step; written to more digits than the step has, it says more than it can. */
function asMultiple(
  step: Decimal,
  { value }: Quantity,
  { value: stated, places }: Statement,
  ties?: TieRule,
): Agreement | undefined {
  const [rule, other] = bothRules.filter((each) => roundDecimal(value, { step, ties: each }).eq(stated))
  const [finest] = places as readonly [number]
  const last = roundingPlace(value, { step, ties: 'half-even' })
  if (rule === undefined || finest > last) return undefined
  const figures = { stated: figuresAt(stated, finest), right: figuresAt(stated, last) }
  if (finest < Math.min(last, 0)) return { remark: { kind: 'too many figures', ...figures } }
  const isAccepted = other !== undefined || ties === undefined || ties === rule
  return { remark: isAccepted ? undefined : { kind: 'other tie rule', ...figures, rule } }
}

function stepAsked(figures: RoundTo): Decimal | undefined {
  const rounding = roundingOf(figures)
  return 'step' in rounding ? rounding.step : undefined
}

function agreementByDigits(right: Quantity, statement: Statement, exactness: Exactness): Agreement | undefined {
  const { places } = statement
  if (isFarOff(right, statement)) return undefined
  const accepted = exactness.ties === undefined ? bothRules : [exactness.ties]
  const fitting = places.filter((place) => ruleThatGives(right.value, statement.value, place, accepted) !== undefined)
  if (fitting.length > 0) return { remark: kindestRemark(right, statement, fitting, exactness) }
  const remark = [otherRule, beyondJustified, oneOff]
    .map((look) => look(right, statement.value, places[0] as number))
    .find((found) => found !== undefined)
  return remark && { remark }
}

/** Whether a number is off by more than one in any digit that counts, so that no rounding explains it. */
function isFarOff({ value, place }: Quantity, { value: stated, places }: Statement): boolean {
  const coarsest = places.at(-1) as number
  return value
    .minus(stated)
    .abs()
    .gt(`1e${place === null ? coarsest : Math.max(coarsest, place)}`)
}

/** Whether a value, rounded by either rule to a place, is a number. */
export function givesAt(value: Decimal, stated: Decimal, place: number): boolean {
  return ruleThatGives(value, stated, place, bothRules) !== undefined
}

function ruleThatGives(value: Decimal, stated: Decimal, place: number, rules: readonly TieRule[]): TieRule | undefined {
  return rules.find((rule) => roundToPlace(value, place, rule).eq(stated))
}

function otherRule(right: Quantity, stated: Decimal, place: number): RoundingRemark | undefined {
  const rule = ruleThatGives(right.value, stated, place, bothRules)
  return rule && { kind: 'other tie rule', ...figuresOf(right, stated, place), rule }
}

/** Right as far as the figures are justified; the digits behind say nothing. */
function beyondJustified(right: Quantity, stated: Decimal, place: number): RoundingRemark | undefined {
  const last = right.place
  if (last === null || place >= last) return undefined
  const isRight = bothRules.some((rule) => givesAt(right.value, roundToPlace(stated, last, rule), last))
  return isRight ? { kind: 'too many figures', ...figuresOf(right, stated, place) } : undefined
}

/** With fewer figures a step of one is no matter of rounding any more. */
const fewestForOneOff = 3

function oneOff(right: Quantity, stated: Decimal, place: number): RoundingRemark | undefined {
  const difference = stated.minus(right.value)
  if (figuresAt(stated, place) < fewestForOneOff || !difference.abs().lt(`1e${place}`)) return undefined
  const isCut = difference.isNegative() === right.value.isPositive()
  return { kind: isCut ? 'cut off' : 'rounded away', ...figuresOf(right, stated, place) }
}

function figuresOf(right: Quantity, stated: Decimal, place: number): Pick<RoundingRemark, 'stated' | 'right'> {
  return { stated: figuresAt(stated, place), right: right.significantFigures }
}

/** Nothing where one reading of the zeros that end a whole number has the right figures, else what is said of the finest. */
function kindestRemark(
  right: Quantity,
  { value: stated, coarsest }: Statement,
  fitting: readonly number[],
  exactness: Exactness,
): RoundingRemark | undefined {
  const remarks = [...fitting, coarsest].map((place) => figuresRemark(right, stated, place, exactness))
  return remarks.includes(undefined) ? undefined : remarks[0]
}

/** What is to be said of the figures of an answer whose value is right. */
function figuresRemark(
  right: Quantity,
  stated: Decimal,
  place: number,
  exactness: Exactness,
): RoundingRemark | undefined {
  const { figures = 'at least three', readableTo } = exactness
  if (figures === 'any') return undefined
  const { stated: count } = figuresOf(right, stated, place)
  const { fewest, most } = boundsOf(right, stated, figures)
  if (most !== null && count > most) return { kind: 'too many figures', stated: count, right: most }
  const isEnough = count >= fewest || (readableTo !== undefined && place <= readableTo)
  if (!isEnough) return { kind: 'too few figures', stated: count, right: most ?? fewest }
  const step = typeof figures === 'object' ? stepAsked(figures) : undefined
  return step === undefined || stated.mod(step).isZero()
    ? undefined
    : { kind: 'not a multiple', stated: count, right: most }
}

interface Bounds {
  readonly fewest: number
  readonly most: number | null
}

const customaryFigures = 3

function boundsOf(right: Quantity, stated: Decimal, figures: Exclude<RequiredFigures, 'any'>): Bounds {
  if (typeof figures === 'object') return exactly(roundTo(right, figures).significantFigures as number)
  const justified = right.significantFigures
  if (justified === null) return { fewest: stated.eq(right.value) ? 0 : customaryFigures, most: null }
  return figures === 'justified'
    ? exactly(justified)
    : { fewest: Math.min(customaryFigures, justified), most: justified }
}

function exactly(figures: number): Bounds {
  return { fewest: figures, most: figures }
}
