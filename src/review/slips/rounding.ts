import { type AtomicWeights, atomicWeight } from '../../element/index.js'
import { attempt } from '../../errors.js'
import { formulaOf } from '../../formula/index.js'
import { exact, type Quantity, roundTo, weightedSum } from '../../quantity/index.js'
import type { Calculation } from '../calculation.js'
import type { SlipContext } from '../context.js'
import { because, called } from '../look-up.js'
import { molarMassesOf, type UsedMolarMass } from '../molar-masses.js'
import { instead, type Replacement, roundedEarly, roundedTo } from '../replacement.js'
import type { Slip, SlipChange } from '../slip.js'

/** Amounts that are worked out on the way. */
function amountsOnTheWay({ quantities, result }: Calculation): readonly Quantity[] {
  return quantities.filter(
    (q) =>
      q.dimension === 'amount' && q.naming.role !== undefined && q.rule !== 'input' && q.operands !== result.operands,
  )
}

const earlyFigures = [2, 3]

function roundsAmounts(calculation: Calculation): readonly SlipChange[] {
  return amountsOnTheWay(calculation).flatMap((q) =>
    earlyFigures.map((figures) => because(`${called(q)} rounded to ${figures} figures`, roundedEarly(q, figures))),
  )
}

/** How a molar mass was rounded. */
interface Way {
  readonly how: string
  readonly round: (used: UsedMolarMass, weights: AtomicWeights | undefined) => readonly Replacement[]
}

function toPlace(place: string): Way['round'] {
  return ({ quantities }) => quantities.map((q) => roundedTo(q, place, 'g/mol'))
}

/** Relative atomic masses as whole numbers, as some school tables print them; that of chlorine as 35.5. */
const fromWholeNumbers: Way['round'] = ({ of, quantities }, weights) => {
  const sum = attempt(() =>
    weightedSum(
      [...formulaOf(of).composition].map(([symbol, count]) => ({ times: count, of: wholeWeight(symbol, weights) })),
    ),
  )
  return sum.ok ? quantities.map((q) => instead(q, sum.value)) : []
}

function wholeWeight(symbol: string, weights: AtomicWeights | undefined): Quantity<'molarMass'> {
  return symbol === 'Cl' ? exact('35.5 g/mol') : roundTo(atomicWeight(symbol, weights), { place: '1' })
}

const ways: readonly Way[] = [
  { how: 'rounded to a whole number', round: /* @__PURE__ */ toPlace('1') },
  { how: 'rounded to one decimal', round: /* @__PURE__ */ toPlace('0.1') },
  { how: 'from whole atomic masses', round: fromWholeNumbers },
]

/** All molar masses rounded in one way, and each alone where there are several. */
function roundsMolarMasses(calculation: Calculation, { weights }: SlipContext): readonly SlipChange[] {
  const used = molarMassesOf(calculation)
  const alone = used.length > 1 ? used.map((one) => [one]) : []
  return [used, ...alone].flatMap((group) =>
    ways.map(({ how, round }) =>
      because(
        `molar mass of ${group.map(({ of }) => of).join(' and of ')} ${how}`,
        ...group.flatMap((one) => round(one, weights)),
      ),
    ),
  )
}

/** Slips in rounding. */
export const roundingSlips: readonly Slip[] = [
  {
    name: 'amount-rounded-early',
    group: 'rounding',
    did: 'Rounded an amount to two or three figures and went on with that.',
    advice: 'Keep all digits on the calculator until the last step: was a number rounded on the way?',
    evidence: 'reported',
    source: 'Reports go on with 0.0068 mol and 0.013 mol.',
    changes: roundsAmounts,
  },
  {
    name: 'molar-mass-rounded',
    group: 'rounding',
    did: 'Used a molar mass from rounded atomic masses, or rounded it.',
    advice: 'Look at the molar mass: does it have as many digits as the table gives?',
    evidence: 'reported',
    source: 'Reports have 100.01 and 100.06 g/mol for calcium carbonate and 475.44 g/mol for alum.',
    changes: roundsMolarMasses,
  },
]
