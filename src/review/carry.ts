import { attempt } from '../errors.js'
import { exact, type Quantity, reconsider, type SingleChange, type Which } from '../quantity/index.js'
import { calculationOf } from './calculation.js'
import type { ReviewContext } from './context.js'
import type { Review } from './review.js'
import type { ChoiceQuestion, QuantityQuestion, Worksheet } from './worksheet.js'

/** An earlier answer that later ones may have been reckoned with. */
export interface Earlier {
  /** The name of its question. */
  readonly id: string
  /** Whether it is wrong; otherwise it is the right number as it was rounded, or follows from an earlier answer. */
  readonly isWrong: boolean
  /** Whether it follows from an earlier wrong answer. */
  readonly isCarried?: boolean | undefined
  /** What it stands for in later calculations. */
  readonly replace: Which
  /** As it was written. */
  readonly stated: Quantity
  /** What it was before it was rounded, as far as a slip explains it. */
  readonly unrounded: Quantity | undefined
  /** For an amount that others may be reckoned from: the right one, and the scale that it comes from. */
  readonly inScale?: { readonly right: Quantity; readonly scale: Quantity } | undefined
}

/** An expected answer after earlier answers, and which of them it depends on. */
export interface Carried {
  /** What should come out. */
  readonly expected: Quantity
  /** The questions whose answers it follows from. */
  readonly follows: readonly string[]
  /** Whether one of these answers is wrong; otherwise they are right and rounded. */
  readonly fromWrong: boolean
}

/** What a number stands for in later calculations: molar masses are looked up again each time, all else is one quantity. */
export function earlierNumber(
  { id, expected }: QuantityQuestion,
  { verdict, stated, candidates }: Review,
  isCarried = false,
): readonly Earlier[] {
  const number = numberIn(expected, stated)
  if (number === undefined) return []
  const { role, of } = expected.naming
  const replace = role === 'molar mass' && of !== undefined ? { role, of } : expected
  const isWrong = verdict !== 'agrees' && verdict !== 'rounding'
  const unrounded = isWrong ? candidates[0]?.value : undefined
  return [{ id, isWrong, isCarried, replace, stated: number, unrounded, inScale: scaleOf(expected) }]
}

/** The scale behind an amount that is taken without excess: those of other substances are reckoned from it as well as from the scale. */
function scaleOf(right: Quantity): Earlier['inScale'] {
  if (right.dimension !== 'amount' || right.value.isZero()) return undefined
  const calculation = calculationOf(right)
  const [scale] = calculation.inRole('scale')
  return scale === undefined || calculation.inRole('excess').length > 0 ? undefined : { right, scale }
}

/** The number that was stated, as a person goes on with it: exact, in the unit of the right answer where it has none; undefined for one of another kind. */
function numberIn({ dimension, unit }: Quantity, stated: Quantity): Quantity | undefined {
  const own = stated.dimension === dimension ? stated.unit : unit
  return stated.dimension === dimension || stated.unit === '1'
    ? exact(`${stated.value.toString()} ${own}` as '1 g')
    : undefined
}

/** A substance that was held to be the limiting one decides the theoretical amount of later calculations. */
export function earlierChoice(
  { id }: ChoiceQuestion,
  formula: string,
  { questions }: Worksheet,
  { reactants = [] }: ReviewContext,
): readonly Earlier[] {
  const theory = questions.find((each) => each.id === 'theoretical-amount')
  const chosen = reactants.find(({ of }) => of === formula)
  if (theory?.kind !== 'quantity' || chosen === undefined) return []
  return [{ id, isWrong: true, replace: theory.expected, stated: chosen.gives, unrounded: undefined }]
}

/** What may be expected after earlier answers: reckoned on with all of them as written, with the wrong ones, with those before they were rounded. */
export function carriedOn(expected: Quantity, earlier: readonly Earlier[]): readonly Carried[] {
  const wrong = earlier.filter(({ isWrong }) => isWrong)
  const explained = wrong.map((each) => ({ ...each, stated: each.unrounded ?? each.stated }))
  return [wrong, explained, earlier].flatMap((answers) => carried(expected, answers))
}

/** The same where an amount took the place of the scale: moles of one substance are reckoned from those of another. */
export function carriedInScale(expected: Quantity, earlier: readonly Earlier[]): readonly Carried[] {
  return earlier.flatMap(asScale).flatMap((scale) => carried(expected, [scale]))
}

/** An earlier amount as the scale that it would be right for, as written and before it was rounded; an amount without a flaw is none. */
function asScale(earlier: Earlier): readonly Earlier[] {
  const { inScale, stated, unrounded = stated } = earlier
  if (inScale === undefined || stated.equals(inScale.right as never)) return []
  const { right, scale } = inScale
  return [stated, unrounded].map((amount) => {
    const share = (amount as Quantity<'amount'>).dividedBy(right as Quantity<'amount'>)
    return { ...earlier, replace: scale, stated: scale.times(share as never) }
  })
}

function carried(expected: Quantity, answers: readonly Earlier[]): readonly Carried[] {
  const follows = answers.filter((answer) => after(expected, [answer]) !== expected)
  const result = after(expected, follows)
  if (follows.length === 0 || result === undefined) return []
  const fromWrong = follows.some(({ isWrong, isCarried }) => isWrong || isCarried)
  return [{ expected: result, follows: follows.map(({ id }) => id), fromWrong }]
}

/** The calculation with earlier answers in it, the latest first, as they hold the ones before; undefined where it cannot be done. */
function after(expected: Quantity, answers: readonly Earlier[]): Quantity | undefined {
  const changes = answers.map(({ replace, stated }): SingleChange => ({ replace, with: stated })).reverse()
  const outcome = attempt(() => reconsider(expected, changes))
  return outcome.ok ? outcome.value : undefined
}
