import type { Calculation } from './calculation.js'
import type { SlipContext } from './context.js'
import { estimate } from './estimate.js'
import type { Slip, SlipChange } from './slip.js'

/** One way of one slip, with what it gives as a double. */
export interface Guess {
  /** The slip. */
  readonly slip: Slip
  /** The way. */
  readonly way: SlipChange
  /** What comes out, about. */
  readonly value: number
}

/** What a list of guesses depends on beside the calculation. */
interface Remembered {
  readonly context: unknown
  readonly weights: unknown
  readonly slips: readonly Slip[]
  readonly guesses: readonly Guess[]
}

/** The last guesses at calculations, as long as somebody holds on to them: many answers may be to one question. */
const known: WeakMap<Calculation, Remembered> = /* @__PURE__ */ new WeakMap()

/** Every way of every slip that changes the result of a calculation. */
export function guessesAt(calculation: Calculation, context: SlipContext, slips: readonly Slip[]): readonly Guess[] {
  const last = known.get(calculation)
  const isSame = last?.slips === slips && last.context === context.given && last.weights === context.weights
  const lasting = isSame
    ? last.guesses
    : guessesBy(
        calculation,
        context,
        slips.filter((slip) => !slip.readsAnswer),
      )
  known.set(calculation, { context: context.given, weights: context.weights, slips, guesses: lasting })
  return [
    ...lasting,
    ...guessesBy(
      calculation,
      context,
      slips.filter((slip) => slip.readsAnswer),
    ),
  ]
}

function guessesBy(calculation: Calculation, context: SlipContext, slips: readonly Slip[]): readonly Guess[] {
  const right = estimate(calculation, [])
  const guesses: Guess[] = []
  for (const slip of slips) {
    for (const way of slip.changes(calculation, context)) {
      const value = estimate(calculation, way.change)
      if (isOther(value, right)) guesses.push({ slip, way, value })
    }
  }
  return guesses
}

/** Whether a slip makes a difference that anybody could see: slips need not look for that themselves. */
function isOther(value: number, right: number): boolean {
  return Number.isFinite(value) && Math.abs(value - right) > Math.abs(right) * 1e-9
}
