import { attempt } from '../../errors.js'
import { formulaOf, molarMass } from '../../formula/index.js'
import { asDimension, type Quantity } from '../../quantity/index.js'
import type { Calculation } from '../calculation.js'
import type { SlipContext } from '../context.js'
import { because, called, partsIn } from '../look-up.js'
import { molarMassesOf, type UsedMolarMass } from '../molar-masses.js'
import { instead, leftOut, upsideDown } from '../replacement.js'
import type { Slip, SlipChange } from '../slip.js'

/** Gravimetric factors: mass fractions that were worked out from two molar masses. */
function factorsOf(calculation: Calculation): readonly Quantity<'ratio'>[] {
  return partsIn(calculation, 'mass fraction', 'ratio').filter(
    ({ rule, operands }) => rule === 'quotient' && operands[1]?.naming.role === 'molar mass',
  )
}

/** Ions that precipitates are weighed for. */
const ions = ['SO4', 'CrO4', 'C2O4', 'CO3', 'PO4', 'NO3', 'Cl', 'Br', 'I'] as const

/** The ion that two formulas share. */
function sharedIon(one: string, other: string): string | undefined {
  const counts = attempt(() => [one, other].map((text) => formulaOf(text).counts))
  if (!counts.ok) return undefined
  return ions.find((ion) => {
    const atoms = [...formulaOf(ion).counts.keys()]
    return counts.value.every((formula) => atoms.every((symbol) => formula.has(symbol)))
  })
}

/** The mass of the ion for that of the salt. */
function weighsIon(calculation: Calculation, { weights }: SlipContext): readonly SlipChange[] {
  const used = molarMassesOf(calculation)
  const weighed = used.find(({ divides }) => divides)
  if (weighed === undefined || factorsOf(calculation).length === 0) return []
  return used.filter(({ divides }) => !divides).flatMap((sought) => ionInstead(sought, weighed, weights))
}

function ionInstead(
  sought: UsedMolarMass,
  weighed: UsedMolarMass,
  weights: SlipContext['weights'],
): readonly SlipChange[] {
  const ion = sharedIon(sought.of, weighed.of)
  if (ion === undefined || ion === sought.of) return []
  const mass = molarMass(ion, { weights })
  return [because(`molar mass of ${ion} for that of ${sought.of}`, ...sought.quantities.map((q) => instead(q, mass)))]
}

/** The water as a share of what is left, in place of what was there. */
function dividesByResidue({ quantities }: Calculation): readonly SlipChange[] {
  return quantities.flatMap((q) => {
    const [water, whole] = q.operands
    const [before, after] = water?.operands ?? []
    const isShare = q.rule === 'quotient' && water?.rule === 'difference' && before === whole && after !== undefined
    if (!isShare || water.naming.of !== 'H2O') return []
    const share = asDimension(water, 'mass').dividedBy(asDimension(after, 'mass'))
    return [because(`${called(water)} divided by ${called(after)}`, instead(q, share))]
  })
}

/** Slips with purity. */
export const puritySlips: readonly Slip[] = [
  {
    name: 'gravimetric-factor-upside-down',
    group: 'purity',
    did: 'Used the gravimetric factor the wrong way round.',
    advice: 'Is there more or less of the substance sought than of the precipitate that was weighed?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: (calculation) =>
      factorsOf(calculation).map((factor) => because(`${called(factor)} upside down`, upsideDown(factor))),
  },
  {
    name: 'ion-for-salt',
    group: 'purity',
    did: 'Gave the mass of the ion as the mass of the salt.',
    advice: 'Of what is the mass asked for: of the ion, or of the whole salt?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: weighsIon,
  },
  {
    name: 'water-on-residue',
    group: 'purity',
    did: 'Worked out the per cent of water on the mass that is left, not on that of the sample.',
    advice: 'A per cent of water is a share of the sample as it was: what was divided by?',
    evidence: 'printed',
    source: 'A page of questions and answers shows both 36 % and 56.4 % for the same salt.',
    changes: dividesByResidue,
  },
  {
    name: 'purity-left-out',
    group: 'purity',
    did: 'Gave the yield of the crude product as that of the pure substance.',
    advice: 'Is all of what was weighed the product itself?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: (calculation) =>
      partsIn(calculation, 'purity', 'ratio')
        .filter((purity) => purity.rule === 'input')
        .map((purity) => because(`${called(purity)} left out`, leftOut(purity))),
  },
]
