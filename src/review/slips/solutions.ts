import { molarMass } from '../../formula/index.js'
import { exact, type Quantity } from '../../quantity/index.js'
import { type Calculation, isDivisor } from '../calculation.js'
import type { SlipContext } from '../context.js'
import { atHand, because, called, othersOf, partsIn } from '../look-up.js'
import { molarMassesOf } from '../molar-masses.js'
import { exchanged, instead, leftOut, upsideDown } from '../replacement.js'
import type { Slip, SlipChange } from '../slip.js'

type Concentration = Quantity<'amountConcentration'>

/** A strength that was measured, where a label at hand says another. */
function isMeasured({ input }: Concentration): boolean {
  return input?.kind === 'measured'
}

/** Takes the strength of another bottle of the same substance. */
function takesStrength(wanted: (own: Concentration, other: Concentration) => boolean): Slip['changes'] {
  return (calculation, context) => {
    const bottles = atHand(context, 'concentration', 'amountConcentration')
    return partsIn(calculation, 'concentration', 'amountConcentration').flatMap((own) =>
      othersOf(own, bottles)
        .filter((other) => wanted(own, other))
        .map((other) => because(`${called(own)}: ${other.toString()} instead`, instead(own, other))),
    )
  }
}

const isLabel = (own: Concentration, other: Concentration): boolean => isMeasured(own) && !isMeasured(other)

/** The two strengths of a dilution in each other's place. */
function swapsStrengths(calculation: Calculation): readonly SlipChange[] {
  const strengths = partsIn(calculation, 'concentration', 'amountConcentration')
  const below = strengths.find((q) => isDivisor(calculation, q))
  const above = strengths.find((q) => q !== below && !isDivisor(calculation, q))
  if (below === undefined || above === undefined) return []
  return [because(`${called(above)} and ${called(below)} swapped`, ...exchanged(above, below))]
}

/** The volume of the water that was added, in place of that of the solution. */
function takesWater(calculation: Calculation, context: SlipContext): readonly SlipChange[] {
  const water = atHand(context, 'volume', 'volume').filter(({ naming }) => naming.of === 'H2O')
  return partsIn(calculation, 'volume', 'volume')
    .filter((volume) => isDivisor(calculation, volume))
    .flatMap((volume) =>
      water.map((other) => because(`${called(volume)}: ${called(other)} instead`, instead(volume, other))),
    )
}

/** The density left out; of a volume or a mass of liquid, or of a strength by mass fraction. */
function forgetsDensity(ofLiquid: boolean): Slip['changes'] {
  return (calculation) =>
    partsIn(calculation, 'density', 'density')
      .filter((density) => goesWithLiquid(calculation, density) === ofLiquid)
      .map((density) => because(`${called(density)} left out`, instead(density, exact('1 g/mL'))))
}

function goesWithLiquid(calculation: Calculation, density: Quantity): boolean {
  const users = calculation.usersOf(density)
  return users.some(({ operands, dimension }) =>
    [dimension, ...operands.map((operand) => operand.dimension)].some((each) => each === 'volume'),
  )
}

const fractionRoles = ['assay', 'mass fraction'] as const

/** How pure a substance is, as its label says. */
function assaysOf(calculation: Calculation): readonly Quantity<'ratio'>[] {
  return fractionRoles
    .flatMap((role) => partsIn(calculation, role, 'ratio'))
    .filter((assay) => assay.rule === 'input' && !assay.equals(exact('1')))
}

const ammonia = ['NH3', 'NH4OH']

/** The mass fraction stated as one formula of ammonia with the molar mass of the other. */
function mixesAmmonia(calculation: Calculation, { weights }: SlipContext): readonly SlipChange[] {
  if (assaysOf(calculation).length === 0) return []
  return molarMassesOf(calculation)
    .filter(({ of }) => ammonia.includes(of))
    .map(({ of, quantities }) => {
      const other = ammonia.find((formula) => formula !== of) as string
      const mass = molarMass(other, { weights })
      return because(`molar mass of ${other} for that of ${of}`, ...quantities.map((q) => instead(q, mass)))
    })
}

/** Mass fraction and density of another reagent at hand. */
function takesOtherRow(calculation: Calculation, context: SlipContext): readonly SlipChange[] {
  const [fraction] = partsIn(calculation, 'mass fraction', 'ratio').filter(({ rule }) => rule === 'input')
  const [density] = partsIn(calculation, 'density', 'density')
  if (fraction === undefined || density === undefined) return []
  const densities = atHand(context, 'density', 'density')
  return atHand(context, 'mass fraction', 'ratio').flatMap((other) => {
    const beside = densities.find(({ naming }) => naming.of === other.naming.of)
    if (beside === undefined || other.equals(fraction)) return []
    const reason = `${called(fraction)} and ${called(density)}: the row of ${called(other)}`
    return [because(reason, instead(fraction, other), instead(density, beside))]
  })
}

/** The spare of a class left out. */
function forgetsSpare(calculation: Calculation): readonly SlipChange[] {
  return partsIn(calculation, 'excess', 'ratio')
    .filter((factor) => calculation.usersOf(factor).some(({ operands }) => isTotal(operands[0])))
    .filter((factor) => !factor.equals(exact('1')))
    .map((factor) => because(`${called(factor)} left out`, leftOut(factor)))
}

/** A total of what benches take, not of what a reaction needs. */
function isTotal(q: Quantity | undefined): boolean {
  return q?.rule === 'sum' && q.dimension !== 'amount'
}

/** What a manual prints at its own scale, kept at another. */
function keepsPrinted({ result }: Calculation, { atHand: all = [] }: SlipContext): readonly SlipChange[] {
  const { of, role } = result.naming
  if (role === undefined || of === undefined) return []
  return all
    .filter((q) => q.dimension === result.dimension && q.naming.role === role && q.naming.of === of)
    .filter((q) => !q.equals(result))
    .map((q) => because(`${called(result)}: ${q.toString()}, as for another scale`, instead(result, q)))
}

/** Slips with solutions and stocks. */
export const solutionSlips: readonly Slip[] = [
  {
    name: 'other-bottle',
    group: 'solutions',
    did: 'Used the strength of another bottle of the same substance.',
    advice: 'Read the label of the bottle that is really used once more.',
    evidence: 'printed',
    source: 'Preparation sheets list concentrated and working strengths side by side.',
    changes: /* @__PURE__ */ takesStrength((own, other) => !isLabel(own, other)),
  },
  {
    name: 'normality-as-molarity',
    group: 'solutions',
    did: 'Read a normality as moles per litre.',
    advice: 'Look at the letter behind the number: does it count moles, or equivalents?',
    evidence: 'printed',
    source: 'Classic manuals give strengths in normality; a reagent maker lists sulfuric acid as 18 M beside 36 N.',
    changes: (calculation) =>
      partsIn(calculation, 'equivalence factor', 'ratio')
        .filter((factor) => !factor.equals(exact('1')))
        .map((factor) => because(`${called(factor)} left out`, leftOut(factor))),
  },
  {
    name: 'dilution-upside-down',
    group: 'solutions',
    did: 'Divided the strengths of a dilution the wrong way round.',
    advice: 'A stronger stock needs less of it: is the volume larger or smaller than what is made?',
    evidence: 'printed',
    source: 'The right value is printed in a preparation procedure: 25.5 mL of 15.7 M for 50 mL of 8 M.',
    changes: swapsStrengths,
  },
  {
    name: 'water-for-solution',
    group: 'solutions',
    did: 'Dissolved in the full volume of water, where a solution is made up to it; or reckoned with that volume.',
    advice: 'Which volume belongs to a concentration: that of the water, or that of the finished solution?',
    evidence: 'reported',
    source: 'A question thread on 4 M potassium hydroxide: 11.22 g in 50 mL of water?',
    changes: takesWater,
  },
  {
    name: 'per-cent-by-volume',
    group: 'solutions',
    did: 'Read a per cent by mass as grams in 100 mL, and left the density out.',
    advice: 'A hundred grams of this liquid is not a hundred millilitres: what else does the label say?',
    evidence: 'printed',
    source: 'OpenStax, Chemistry 2e, prints "37.2 g HCl/g solution" where per 100 g is meant.',
    changes: /* @__PURE__ */ forgetsDensity(false),
  },
  {
    name: 'millilitres-as-grams',
    group: 'solutions',
    did: 'Took millilitres of a liquid for grams.',
    advice: 'What does one millilitre of this liquid weigh?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: /* @__PURE__ */ forgetsDensity(true),
  },
  {
    name: 'assay-left-out',
    group: 'solutions',
    did: 'Took the mass on the balance for pure substance.',
    advice: 'Look at the label once more: is all that is in the bottle the substance itself?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: (calculation) =>
      assaysOf(calculation).map((assay) => because(`${called(assay)} left out`, leftOut(assay))),
  },
  {
    name: 'assay-upside-down',
    group: 'solutions',
    did: 'Corrected for the purity in the wrong direction.',
    advice: 'If the substance is not all pure, is more of it taken or less?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: (calculation) =>
      assaysOf(calculation).map((assay) => because(`${called(assay)} upside down`, upsideDown(assay))),
  },
  {
    name: 'ammonia-formula-mixed',
    group: 'solutions',
    did: 'Combined a per cent stated as NH3 with the molar mass of NH4OH, or the other way round.',
    advice: 'Of which formula is the per cent on the label of the ammonia?',
    evidence: 'printed',
    source: 'Reagent tables head the row NH4OH and state 28.0 % NH3 in a footnote.',
    changes: mixesAmmonia,
  },
  {
    name: 'next-row-of-table',
    group: 'solutions',
    did: 'Read mass fraction and density from the row of another reagent.',
    advice: 'Put a ruler under the row of the table: do both numbers belong to this reagent?',
    evidence: 'printed',
    source: 'A published table of stock solutions has every mass fraction one row off.',
    changes: takesOtherRow,
  },
  {
    name: 'label-strength',
    group: 'solutions',
    did: 'Used the strength on the label of a stock whose strength was measured.',
    advice: 'Is there a newer figure for the strength of this solution than the one on its label?',
    evidence: 'printed',
    source: 'Tables give 14.5 or 14.8 mol/L for 28 % ammonia and 15.35 mol/L for 29 %.',
    changes: /* @__PURE__ */ takesStrength(isLabel),
  },
  {
    name: 'spare-left-out',
    group: 'solutions',
    did: 'Prepared for the class without the spare.',
    advice: 'Is what is prepared meant to be exactly what the benches use?',
    evidence: 'printed',
    source: 'A preparation sheet: amounts per pair, for 18 pairs, and two portions more.',
    changes: forgetsSpare,
  },
  {
    name: 'printed-amount-kept',
    group: 'solutions',
    did: 'Changed the scale and left one amount as it was printed.',
    advice: 'Is this amount that of the recipe, or that of the scale at hand?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: keepsPrinted,
  },
]
