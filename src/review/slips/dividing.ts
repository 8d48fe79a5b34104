import type { Dimension, Quantity, Role } from '../../quantity/index.js'
import type { Calculation } from '../calculation.js'
import { because, called, partsIn } from '../look-up.js'
import { molarMassesOf } from '../molar-masses.js'
import { numberUpsideDown } from '../replacement.js'
import type { Slip, SlipChange } from '../slip.js'

/** Multiplied by a molar mass instead of dividing by it, or the other way round. */
function molarMassOtherWay(calculation: Calculation): readonly SlipChange[] {
  return molarMassesOf(calculation).map(({ of, quantities }) =>
    because(
      `the molar mass of ${of} on the other side of the fraction line`,
      ...quantities.map((q) => numberUpsideDown(q, 'g/mol')),
    ),
  )
}

/** The same with a quotient of another kind, whose number is in the unit that people calculate in. */
function otherWay<D extends Dimension>(role: Role, dimension: D, unit: string): Slip['changes'] {
  return (calculation) =>
    partsIn(calculation, role, dimension).map((q) =>
      because(`${called(q)} on the other side of the fraction line`, numberUpsideDown(q, unit)),
    )
}

/** What comes out as one number over another, turned over: M/m for m/M. */
function turnsOver({ result }: Calculation): readonly SlipChange[] {
  const quotient = withoutConversion(result)
  const unit = numberUnits[quotient.dimension]
  if (quotient.rule !== 'quotient' || unit === undefined) return []
  return [because(`${called(result)} with the fraction turned over`, numberUpsideDown(quotient, unit))]
}

/** The unit in which the quotient of two numbers as people write them comes out: g over g/mol, mol over mol/L. */
const numberUnits: Readonly<Partial<Record<Dimension, string>>> = { amount: 'mol', volume: 'L' }

function withoutConversion(q: Quantity): Quantity {
  const [operand] = q.operands
  return q.rule === 'conversion' && operand !== undefined ? withoutConversion(operand) : q
}

/** Slips with what is divided by what. */
export const dividingSlips: readonly Slip[] = [
  {
    name: 'molar-mass-other-way',
    group: 'dividing',
    did: 'Multiplied by the molar mass where one divides by it, or the other way round.',
    advice: 'Write the units beside the numbers: which way do the grams cancel?',
    evidence: 'inferred',
    source: 'Follows from the calculation; no source was found.',
    changes: molarMassOtherWay,
  },
  {
    name: 'concentration-other-way',
    group: 'dividing',
    did: 'Multiplied by the concentration where one divides by it, or the other way round.',
    advice: 'Write the units beside the numbers: what is left when they cancel, litres or moles?',
    evidence: 'inferred',
    source: 'Follows from the calculation; no source was found.',
    changes: /* @__PURE__ */ otherWay('concentration', 'amountConcentration', 'mol/L'),
  },
  {
    name: 'density-other-way',
    group: 'dividing',
    did: 'Multiplied by the density where one divides by it, or the other way round.',
    advice: 'Write the units beside the numbers: does a millilitre of this liquid weigh more or less than a gram?',
    evidence: 'inferred',
    source: 'Follows from the calculation; no source was found.',
    changes: /* @__PURE__ */ otherWay('density', 'density', 'g/mL'),
  },
  {
    name: 'fraction-turned-over',
    group: 'dividing',
    did: 'Turned the fraction over: the lower number over the upper one.',
    advice: 'Which number is shared out, and by what? Write the units beside them.',
    evidence: 'inferred',
    source: 'Follows from the calculation; no source was found.',
    changes: turnsOver,
  },
]
