import { exact, type Quantity } from '../../quantity/index.js'
import type { Calculation } from '../calculation.js'
import type { SlipContext } from '../context.js'
import { atHand, because, called, isOfYield, partsIn, theoreticalYieldIn } from '../look-up.js'
import { instead, leftOut, times, upsideDown } from '../replacement.js'
import type { Slip, SlipChange } from '../slip.js'

/** Excess factors of other reagents, each value once. */
function factorsAtHand(context: SlipContext, of: string | undefined): readonly Quantity<'ratio'>[] {
  const others = atHand(context, 'excess', 'ratio').filter((factor) => factor.naming.of !== of)
  const values = others.map((factor) => factor.to('1').value.toString())
  return others.filter((_, index) => values.indexOf(values[index] as string) === index)
}

const supplyDimensions: readonly string[] = ['mass', 'volume', 'amount']

/** The factor of another reagent on what is taken of one that has none. */
function onAnother(calculation: Calculation, context: SlipContext): readonly SlipChange[] {
  const { result } = calculation
  const hasOwn = calculation.inRole('excess').length > 0
  if (hasOwn || isOfYield(calculation) || !supplyDimensions.includes(result.dimension)) return []
  return factorsAtHand(context, result.naming.of).map((factor) =>
    because(`${called(result)} with the ${called(factor)}`, times(result, factor)),
  )
}

function onProduct(calculation: Calculation, context: SlipContext): readonly SlipChange[] {
  const theory = theoreticalYieldIn(calculation)
  if (theory === undefined) return []
  return factorsAtHand(context, undefined).map((factor) =>
    because(`${called(theory)} with the ${called(factor)}`, times(theory, factor)),
  )
}

/** 14 % of excess is 1.14 times; it was taken as 0.14 times, 14 times, or 2.14 times. */
function perCentAsFactor(calculation: Calculation): readonly SlipChange[] {
  return partsIn(calculation, 'excess', 'ratio').flatMap((factor) => {
    const part = factor.minus(exact('1'))
    const readings = part.value.gt(0) ? [part, part.times(exact('100')), factor.plus(exact('1'))] : []
    return readings.map((reading) =>
      because(`${called(factor)} as ${reading.to('1').value.toString()}`, instead(factor, reading)),
    )
  })
}

/** Slips with excess. */
export const excessSlips: readonly Slip[] = [
  {
    name: 'excess-on-another-reagent',
    group: 'excess',
    did: 'Applied the excess factor to a reagent that it does not belong to.',
    advice: 'Which of the reagents is to be taken in excess? Look at whether this is the one.',
    evidence: 'inferred',
    source: 'No source found.',
    changes: onAnother,
  },
  {
    name: 'excess-on-product',
    group: 'excess',
    did: 'Carried the excess factor into the theoretical yield.',
    advice: 'More of a reagent that is left over makes no more product: what decides how much there can be?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: onProduct,
  },
  {
    name: 'excess-per-cent-as-factor',
    group: 'excess',
    did: 'Read a per cent excess as a factor, or a factor as a per cent.',
    advice: 'Say the excess in words: is it so much more than the need, or so many times the need?',
    evidence: 'printed',
    source: 'Sources state excess in per cent, in equivalents, and as the bare word.',
    changes: perCentAsFactor,
  },
  {
    name: 'excess-divided',
    group: 'excess',
    did: 'Divided by the excess factor.',
    advice: 'Should more be taken than the equation needs, or less?',
    evidence: 'inferred',
    source: 'Follows from the calculation; no source was found.',
    changes: (calculation) =>
      partsIn(calculation, 'excess', 'ratio').map((factor) =>
        because(`divided by the ${called(factor)}`, upsideDown(factor)),
      ),
  },
  {
    name: 'excess-left-out',
    group: 'excess',
    did: 'Took the stoichiometric amount where an excess is asked for.',
    advice: 'Look at the recipe again: is exactly the need to be taken of this one?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: (calculation) =>
      partsIn(calculation, 'excess', 'ratio').map((factor) => because(`${called(factor)} left out`, leftOut(factor))),
  },
]
