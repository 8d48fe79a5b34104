import { Decimal } from '../decimal.js'
import { placeAt } from './significance.js'

/**
 * What a lone 5 does. `"half-even"`: to the even neighbour (ISO 80000-1:2009 Annex B rule A, ASTM E29, NIST SP 811 B.7.1).
 * `"half-up"`: to the neighbour greater in magnitude (ISO 80000-1 rule B, USP General Notices 7.20, Ph. Eur.).
 */
export type TieRule = 'half-even' | 'half-up'

/** To what a number is rounded: so many figures, or the multiples of a step (0.01, 0.05, 10) in its unit. */
export type Rounding =
  | {
      /** How many significant figures are kept. */
      readonly figures: number
      /** What a lone 5 does. */
      readonly ties: TieRule
    }
  | {
      /** The step whose multiples are kept. */
      readonly step: Decimal
      /** What a lone 5 does. */
      readonly ties: TieRule
    }

/** The names decimal.js has for them: 6 is half to even, 4 half away from zero. */
const modes = { 'half-even': 6, 'half-up': 4 } as const

/** Rounds once, from the unrounded value, by magnitude: -0.05 rounds as 0.05 does. */
export function roundDecimal(value: Decimal, rounding: Rounding): Decimal {
  const mode = modes[rounding.ties]
  if ('figures' in rounding) return value.toSignificantDigits(rounding.figures, mode)
  return value.toNearest(rounding.step, mode)
}

/** Rounds to a power of ten. */
export function roundToPlace(value: Decimal, place: number, ties: TieRule): Decimal {
  if (place <= 0) return value.toDecimalPlaces(-place, modes[ties])
  return roundDecimal(value, { step: new Decimal(`1e${place}`), ties })
}

/** The place of the last digit that a rounding leaves. */
export function roundingPlace(value: Decimal, rounding: Rounding): number {
  if ('figures' in rounding) return placeAt(value, rounding.figures)
  return rounding.step.e - rounding.step.sd() + 1
}
