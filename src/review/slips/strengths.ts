import type { Quantity } from '../../quantity/index.js'
import { type Calculation, isDivisor } from '../calculation.js'
import type { SlipContext } from '../context.js'
import { atHand, because, called, othersOf, partsIn } from '../look-up.js'
import { exchanged, instead, leftOut } from '../replacement.js'
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
  const above = strengths.find((q) => !isDivisor(calculation, q))
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

/** Slips with the strengths of solutions. */
export const strengthSlips: readonly Slip[] = [
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
      partsIn(calculation, 'equivalence factor', 'ratio').map((factor) =>
        because(`${called(factor)} left out`, leftOut(factor)),
      ),
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
    name: 'label-strength',
    group: 'solutions',
    did: 'Used the strength on the label of a stock whose strength was measured.',
    advice: 'Is there a newer figure for the strength of this solution than the one on its label?',
    evidence: 'printed',
    source: 'Tables give 14.5 or 14.8 mol/L for 28 % ammonia and 15.35 mol/L for 29 %.',
    changes: /* @__PURE__ */ takesStrength(isLabel),
  },
]
