import { exact, mean, type Quantity } from '../../quantity/index.js'
import { type Calculation, isDivisor } from '../calculation.js'
import type { SlipContext } from '../context.js'
import { atHand, because, called, partsIn, theoreticalYieldIn } from '../look-up.js'
import { instead, leftOut, times, upsideDown } from '../replacement.js'
import type { Slip, SlipChange } from '../slip.js'

/** The theoretical yield as a mass, where a yield is divided by it. */
function dividingYield(calculation: Calculation): Quantity<'mass'> | undefined {
  return partsIn(calculation, 'theoretical yield', 'mass').find((q) => isDivisor(calculation, q))
}

function turnsOver(calculation: Calculation): readonly SlipChange[] {
  const whole = calculation.inRole('theoretical yield').find((q) => isDivisor(calculation, q))
  if (whole === undefined) return []
  const share = calculation.usersOf(whole).find(({ rule, dimension }) => rule === 'quotient' && dimension === 'ratio')
  return share === undefined ? [] : [because(`${called(calculation.result)} upside down`, upsideDown(share))]
}

function dividesByStart(calculation: Calculation, { reactants = [] }: SlipContext): readonly SlipChange[] {
  const whole = dividingYield(calculation)
  if (whole === undefined) return []
  return reactants.flatMap(({ of, mass }) =>
    mass === undefined ? [] : [because(`mass of ${of} in place of ${called(whole)}`, instead(whole, mass))],
  )
}

/** The mean of step yields in place of their product. */
function averagesSteps(calculation: Calculation): readonly SlipChange[] {
  const steps = partsIn(calculation, 'percent yield', 'ratio').filter(({ rule }) => rule === 'input')
  if (steps.length < 2) return []
  const { result } = calculation
  return [because(`${called(result)} as the mean of ${steps.length} steps`, instead(result, mean(steps)))]
}

/** The aliquot left out of the calculation; or, where it is only at hand, the whole in place of the part. */
function forgetsAliquot(calculation: Calculation, context: SlipContext): readonly SlipChange[] {
  const own = partsIn(calculation, 'aliquot', 'ratio').map((part) => because(`${called(part)} left out`, leftOut(part)))
  const theory = theoreticalYieldIn(calculation)
  if (own.length > 0 || theory === undefined) return own
  return atHand(context, 'aliquot', 'ratio').map((part) =>
    because(`${called(theory)} of the whole, not of ${called(part)}`, times(theory, exact(1).dividedBy(part))),
  )
}

/** Slips with yields. */
export const yieldSlips: readonly Slip[] = [
  {
    name: 'yield-upside-down',
    group: 'yield',
    did: 'Divided the theoretical yield by what was obtained.',
    advice: 'What was obtained is a part of what was possible: which of the two goes below the line?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: turnsOver,
  },
  {
    name: 'yield-on-starting-mass',
    group: 'yield',
    did: 'Divided the mass of product by the mass of a starting material.',
    advice: 'A yield compares the product with the most product there can be: is that what was divided by?',
    evidence: 'related',
    source: 'Mandina and Ochonogor 2017 (ERIC EJ1164987, abstract, n = 485): theoretical yield.',
    changes: dividesByStart,
  },
  {
    name: 'step-yields-averaged',
    group: 'yield',
    did: 'Took the mean of the yields of the steps.',
    advice: 'Each step works on what the one before has left: how do their yields go together?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: averagesSteps,
  },
  {
    name: 'aliquot-left-out',
    group: 'yield',
    did: 'Reckoned with the whole of a solution, although only a part of it was carried on.',
    advice: 'How much of the solution went into this step?',
    evidence: 'reported',
    source: 'A report on alum takes a third of the filtrate: 22 % on the whole, 67 % on the third.',
    changes: forgetsAliquot,
  },
]
