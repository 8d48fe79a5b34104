import { molarMass } from '../../formula/index.js'
import { exact, type Quantity } from '../../quantity/index.js'
import type { Calculation } from '../calculation.js'
import type { SlipContext } from '../context.js'
import { atHand, because, called, partsIn } from '../look-up.js'
import { molarMassesOf } from '../molar-masses.js'
import { instead, leftOut, upsideDown } from '../replacement.js'
import type { Slip, SlipChange } from '../slip.js'

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
    .map((q) => because(`${called(result)}: ${q.toString()}, as for another scale`, instead(result, q)))
}

/** Slips with what stands on labels, and with what is prepared. */
export const stockSlips: readonly Slip[] = [
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
