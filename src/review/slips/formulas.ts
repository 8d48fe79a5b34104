import { equationOf } from '../../equation/index.js'
import { molarMass } from '../../formula/index.js'
import { formatFraction } from '../../fraction.js'
import type { Calculation } from '../calculation.js'
import type { SlipContext } from '../context.js'
import {
  atomsCountedOnce,
  bracketsCountedOnce,
  bracketsOnLastAtom,
  counterIonsMiscounted,
  type FormulaFacts,
  type Misreading,
} from '../formula-facts.js'
import { formulaAmong, formulasAtHand } from '../formulas-at-hand.js'
import { because, partsIn } from '../look-up.js'
import { molarMassesOf, withAtoms } from '../molar-masses.js'
import { instead, timesNumber } from '../replacement.js'
import type { Slip, SlipChange } from '../slip.js'
import { smallFraction } from '../small-fraction.js'

const subscripts =
  'Advanced-level students in Zimbabwe (n = 103, abstract; African Journals Online 184829): trouble with coefficients and subscripts.'

/** A slip that misreads part of a formula. */
function misreads(readings: (facts: FormulaFacts) => readonly Misreading[], how: string): Slip['changes'] {
  return (calculation, context) =>
    molarMassesOf(calculation).flatMap((used) =>
      readings(used.facts).map(({ of, atoms }) =>
        because(`molar mass of ${used.of} with ${of} ${how}`, ...withAtoms(used, atoms, context)),
      ),
    )
}

/** The molar mass times the coefficient that the substance has in the equation. */
function multipliesByCoefficient(calculation: Calculation, context: SlipContext): readonly SlipChange[] {
  return molarMassesOf(calculation).flatMap((used) =>
    coefficientsOf(used.of, calculation, context).map((coefficient) =>
      because(
        `molar mass of ${used.of} times its coefficient ${coefficient}`,
        ...used.quantities.map((q) => timesNumber(q, String(coefficient))),
      ),
    ),
  )
}

function coefficientsOf(formula: string, calculation: Calculation, { equations = [] }: SlipContext): readonly number[] {
  const fromRatios = partsIn(calculation, 'mole ratio', 'ratio').flatMap((ratio) => {
    const fraction = smallFraction(ratio)
    if (fraction === undefined) return []
    return [ratio.naming.of === formula ? fraction.top : fraction.bottom]
  })
  const overall = equations.slice(0, 1).flatMap((equation) => coefficientsIn(equation, formula))
  return [...new Set([...fromRatios, ...overall])]
}

function coefficientsIn(equation: Parameters<typeof equationOf>[0], formula: string): readonly number[] {
  const { left, right } = equationOf(equation)
  const own = [...left, ...right].filter((term) => term.formula.text === formula)
  return own.map(({ coefficient }) => Number(formatFraction(coefficient))).filter(Number.isInteger)
}

/** The molar mass of another formula at hand with the same elements: iron(III) sulfate for iron(II) sulfate. */
function takesOtherFormula(calculation: Calculation, { formulas = [], weights }: SlipContext): readonly SlipChange[] {
  const others = formulasAtHand(formulas)
  return molarMassesOf(calculation).flatMap(({ of, quantities }) => {
    const own = others.length === 0 ? undefined : formulaAmong(others, of)
    return others
      .filter(({ elements, salt }) => elements === own?.elements && salt !== own.salt)
      .map(({ text }) => {
        const mass = molarMass(text, { weights })
        return because(`molar mass of ${text} for that of ${of}`, ...quantities.map((q) => instead(q, mass)))
      })
  })
}

/** Slips in reading formulas. */
export const formulaSlips: readonly Slip[] = [
  {
    name: 'bracket-number-left-out',
    group: 'reading formulas',
    did: 'Counted a bracket once, although there is a number behind it.',
    advice: 'Look at the brackets in the formula: what does the number behind each of them count?',
    evidence: 'related',
    source: subscripts,
    changes: /* @__PURE__ */ misreads(bracketsCountedOnce, 'counted once'),
  },
  {
    name: 'bracket-number-on-last-atom',
    group: 'reading formulas',
    did: 'Applied the number behind a bracket to its last atom alone.',
    advice: 'Look at the brackets in the formula: which atoms does the number behind each of them count?',
    evidence: 'related',
    source: subscripts,
    changes: /* @__PURE__ */ misreads(bracketsOnLastAtom, 'read as if its number stood on the last atom'),
  },
  {
    name: 'subscript-left-out',
    group: 'reading formulas',
    did: 'Counted an element once, although there is a number behind it.',
    advice: 'Go through the formula atom by atom: how many of each are there?',
    evidence: 'printed',
    source: 'A teaching page of common mistakes in stoichiometry: 97 for 98 g/mol of sulfuric acid.',
    changes: /* @__PURE__ */ misreads(atomsCountedOnce, 'counted once'),
  },
  {
    name: 'coefficient-in-molar-mass',
    group: 'reading formulas',
    did: 'Multiplied a molar mass by the coefficient of the equation, and used the mole ratio as well.',
    advice:
      'A molar mass belongs to one mole of the formula: where does the number in front of it in the equation belong?',
    evidence: 'related',
    source: subscripts,
    changes: multipliesByCoefficient,
  },
  {
    name: 'formula-of-another-compound',
    group: 'reading formulas',
    did: 'Used the formula of a compound with a similar name.',
    advice:
      'Compare the formula with the name on the label: are the charges and the numbers of ions those of this compound?',
    evidence: 'reported',
    source: 'A report on potassium trioxalatoferrate(III) has the formula of another complex throughout.',
    changes: takesOtherFormula,
  },
  {
    name: 'counter-ions-miscounted',
    group: 'reading formulas',
    did: 'Took a wrong charge for an ion, and so one counter-ion too many or too few.',
    advice: 'Add up the charges in the formula: do they balance?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: /* @__PURE__ */ misreads(counterIonsMiscounted, 'one more or one fewer'),
  },
]
