import { equationOf } from '../../equation/index.js'
import { fractionToDecimal } from '../../fraction.js'
import { exact, type Quantity } from '../../quantity/index.js'
import type { Calculation } from '../calculation.js'
import type { SlipContext } from '../context.js'
import { atHand, because, called, othersOf, partsIn } from '../look-up.js'
import { molarMassesOf } from '../molar-masses.js'
import { instead, leftOut, upsideDown } from '../replacement.js'
import type { Slip, SlipChange } from '../slip.js'
import { smallFraction } from '../small-fraction.js'

/** The coefficient of another substance of the equation in place of the right one. */
function takesNeighbour(calculation: Calculation, { equations = [] }: SlipContext): readonly SlipChange[] {
  const coefficients = equations.slice(0, 1).flatMap(coefficientsOf)
  return partsIn(calculation, 'mole ratio', 'ratio').flatMap((ratio) => {
    const own = coefficients.find(({ formula }) => formula === ratio.naming.of)?.coefficient
    if (own === undefined) return []
    const all = new Set(coefficients.map(({ coefficient }) => coefficient))
    return [...all].map((other) =>
      because(`${called(ratio)} with the coefficient ${other}`, instead(ratio, scaled(ratio, other, own))),
    )
  })
}

function scaled(ratio: Quantity<'ratio'>, other: number, own: number): Quantity<'ratio'> {
  return ratio.times(exact(other)).dividedBy(exact(own))
}

interface Coefficient {
  readonly formula: string
  readonly coefficient: number
}

function coefficientsOf(equation: Parameters<typeof equationOf>[0]): readonly Coefficient[] {
  const { left, right } = equationOf(equation)
  return [...left, ...right].map(({ formula, coefficient }) => ({
    formula: formula.text,
    coefficient: fractionToDecimal(coefficient).toNumber(),
  }))
}

/** A ratio such as 3 : 2 with one of its numbers missing. */
function losesCoefficient(calculation: Calculation): readonly SlipChange[] {
  return partsIn(calculation, 'mole ratio', 'ratio').flatMap((ratio) => {
    const fraction = smallFraction(ratio)
    if (fraction === undefined || fraction.top === 1 || fraction.bottom === 1) return []
    const { top, bottom } = fraction
    return [
      because(`${called(ratio)} as ${top} : 1`, instead(ratio, exact(top))),
      because(`${called(ratio)} as 1 : ${bottom}`, instead(ratio, exact(1).dividedBy(exact(bottom)))),
    ]
  })
}

/** The ratio of one step at hand for that of the whole chain. */
function takesOneStep(calculation: Calculation, context: SlipContext): readonly SlipChange[] {
  const steps = atHand(context, 'mole ratio', 'ratio')
  return partsIn(calculation, 'mole ratio', 'ratio').flatMap((ratio) =>
    othersOf(ratio, steps).map((step) => because(`${called(ratio)}: that of ${called(step)}`, instead(ratio, step))),
  )
}

/** A need that also clears what an earlier stage left, without that part. */
function forgetsLeftover(calculation: Calculation): readonly SlipChange[] {
  return calculation.quantities.flatMap((q) => {
    const [need, clearing, ...more] = q.operands
    const isNeed = q.rule === 'sum' && q.dimension === 'amount' && more.length === 0 && need?.naming.role === 'amount'
    if (!isNeed || clearing === undefined || clearing.naming.of !== need.naming.of) return []
    return [because(`${called(q)} without ${called(clearing)}`, instead(q, need))]
  })
}

/** Coefficients applied to grams: no molar mass anywhere. */
function weighsByCoefficients(calculation: Calculation): readonly SlipChange[] {
  const used = molarMassesOf(calculation)
  const goesThroughMoles = used.some(({ divides }) => divides) && used.some(({ divides }) => !divides)
  if (!goesThroughMoles || calculation.result.dimension !== 'mass') return []
  const change = used.flatMap(({ quantities }) => quantities.map((q) => instead(q, exact('1 g/mol'))))
  return [because(`${called(calculation.result)} from grams by the coefficients alone`, ...change)]
}

/** Slips with mole ratios. */
export const moleRatioSlips: readonly Slip[] = [
  {
    name: 'ratio-left-out',
    group: 'mole ratio',
    did: 'Treated the reaction as one to one.',
    advice:
      'Look at the numbers in front of the two formulas in the balanced equation: how many of the one go with one of the other?',
    evidence: 'shown',
    source:
      'Chem. Educ. Res. Pract. 2023, doi:10.1039/d2rp00245k (abstract): strategies without any mole ratio, kept by some of 161 teachers. Upahi and Olorundare, J. Educ. Practice 2012, 3(12) (abstract): 59.6 % could not relate known to unknown.',
    changes: (calculation) =>
      partsIn(calculation, 'mole ratio', 'ratio').map((ratio) =>
        because(`${called(ratio)} taken as 1`, leftOut(ratio)),
      ),
  },
  {
    name: 'ratio-upside-down',
    group: 'mole ratio',
    did: 'Used the mole ratio the wrong way round.',
    advice: 'Say the ratio in words, this many of the one for that many of the other: which of the two is looked for?',
    evidence: 'printed',
    source: 'A teaching page of common mistakes in stoichiometry lists it.',
    changes: (calculation) =>
      partsIn(calculation, 'mole ratio', 'ratio').map((ratio) =>
        because(`${called(ratio)} upside down`, upsideDown(ratio)),
      ),
  },
  {
    name: 'coefficient-of-neighbour',
    group: 'mole ratio',
    did: 'Took the coefficient of another substance of the equation.',
    advice: 'Put a finger on the substance in the equation: is the number that of this formula?',
    evidence: 'related',
    source:
      'Mandina and Ochonogor 2017 (ERIC EJ1164987, abstract, n = 485): use of inconsistent stoichiometric relationships.',
    changes: takesNeighbour,
  },
  {
    name: 'equation-not-balanced',
    group: 'mole ratio',
    did: 'Took the ratio from an equation that is not balanced.',
    advice: 'Count the atoms on both sides of the equation: is it balanced?',
    evidence: 'shown',
    source:
      'Mandina and Ochonogor 2017 (ERIC EJ1164987, abstract, n = 485): balancing. A report prints Al with 3 H2 for 2 Al with 3 H2.',
    changes: losesCoefficient,
  },
  {
    name: 'one-step-for-all',
    group: 'mole ratio',
    did: 'Used the ratio of one step for the whole route.',
    advice: 'Go through all the steps: in how many of them is this substance used?',
    evidence: 'printed',
    source: 'Laboratory sheets set adding up the four alum equations as an exercise.',
    changes: takesOneStep,
  },
  {
    name: 'leftover-not-counted',
    group: 'mole ratio',
    did: 'Forgot that what an earlier step left over is used up first.',
    advice: 'Think of what is still in the beaker when this is added: does it take up some of it?',
    evidence: 'inferred',
    source: 'Worked out for a published recipe with 3 M alkali: 1.13 times the need, not 1.42.',
    changes: forgetsLeftover,
  },
  {
    name: 'coefficients-on-masses',
    group: 'mole ratio',
    did: 'Applied the coefficients of the equation to grams.',
    advice: 'The equation counts moles: where in the calculation does the mass become an amount?',
    evidence: 'related',
    source:
      'Gulacar, Overton, Bowman and Fynewever, Chem. Educ. Res. Pract. 2013, doi:10.1039/c3rp00029j (abstract): skipping the mole step is the main finding.',
    changes: weighsByCoefficients,
  },
]
