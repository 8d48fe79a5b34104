import { attempt } from '../../errors.js'
import { formulaOf } from '../../formula/index.js'
import { asDimension, type Quantity, sum } from '../../quantity/index.js'
import type { Calculation } from '../calculation.js'
import type { ReactantAtHand, SlipContext } from '../context.js'
import { because, called, partsIn, theoreticalYieldIn } from '../look-up.js'
import { instead, times } from '../replacement.js'
import type { Slip, SlipChange } from '../slip.js'

const research =
  'Mandina and Ochonogor 2017 (ERIC EJ1164987, abstract, n = 485): limiting reagent, theoretical yield, identifying the excess substance.'

/** Which of the reactants somebody held to be the limiting one. */
type Choice = (reactants: readonly ReactantAtHand[], product: string | undefined) => readonly ReactantAtHand[]

/** A slip that reckons the product from reactants other than the limiting one. */
function reckonsFrom(choose: Choice): Slip['changes'] {
  return (calculation, { reactants = [] }) => {
    const theory = theoreticalYieldIn(calculation)
    const limiting = least(reactants, ({ gives }) => gives)
    if (theory === undefined || limiting === undefined) return []
    return choose(reactants, theory.naming.of)
      .filter(({ gives }) => !gives.equals(limiting.gives))
      .map((reactant) => because(`${called(theory)} from ${reactant.of}`, from(theory, reactant, limiting)))
  }
}

function from(
  theory: Quantity<'amount'> | Quantity<'mass'>,
  { gives }: ReactantAtHand,
  limiting: ReactantAtHand,
): ReturnType<typeof instead> {
  return theory.dimension === 'amount' ? instead(theory, gives) : times(theory, gives.dividedBy(limiting.gives))
}

function least<T>(list: readonly T[], by: (one: T) => Quantity): T | undefined {
  return list.reduce<T | undefined>(
    (found, next) => (found === undefined || by(next).compare(by(found)) < 0 ? next : found),
    undefined,
  )
}

const smallestMass: Choice = (reactants) => {
  const weighed = reactants.filter(({ mass }) => mass !== undefined)
  const smallest = least(weighed, ({ mass }) => mass as Quantity)
  return weighed.filter((one) => weighed.length > 1 && one === smallest)
}

const fewestMoles: Choice = (reactants) => {
  const fewest = least(reactants, ({ amount }) => amount)
  return reactants.filter((one) => one === fewest)
}

const withTheMetal: Choice = (reactants, product) => {
  if (product === undefined) return []
  const metals = metalsIn(product)
  return reactants.filter(({ of }) => metalsIn(of).some((metal) => metals.includes(metal)))
}

/** The metals of a formula that a preparation is named after: not those of the first group. */
function metalsIn(formula: string): readonly string[] {
  const read = attempt(() => [...formulaOf(formula).counts.keys()])
  if (!read.ok) return []
  return read.value.filter((symbol) => !notNamed.has(symbol))
}

/** Alkali metals and what is no metal. */
const notNamed: ReadonlySet<string> = /* @__PURE__ */ new Set(
  'H D T He Li Na K Rb Cs B C N O F Ne Si P S Cl Ar As Se Br Kr Te I Xe At Rn'.split(' '),
)

/** The masses of all reactants added up in place of the theoretical yield. */
function addsReactants(calculation: Calculation, { reactants = [] }: SlipContext): readonly SlipChange[] {
  const theory = partsIn(calculation, 'theoretical yield', 'mass')[0]
  const masses = reactants.flatMap(({ mass }) => (mass === undefined ? [] : [asDimension(mass, 'mass')]))
  if (theory === undefined || masses.length < 2) return []
  return [because(`${called(theory)} as the sum of the masses taken`, instead(theory, sum(masses)))]
}

/** Slips about what limits. */
export const limitingSlips: readonly Slip[] = [
  {
    name: 'smaller-mass-limits',
    group: 'limiting reagent',
    did: 'Took the reactant with the smaller mass for the limiting one.',
    advice: 'Grams of different substances do not compare: how far does each of them let the reaction go?',
    evidence: 'related',
    source: research,
    changes: /* @__PURE__ */ reckonsFrom(smallestMass),
  },
  {
    name: 'fewer-moles-limits',
    group: 'limiting reagent',
    did: 'Took the reactant with the fewest moles for the limiting one, without dividing by its coefficient.',
    advice: 'Compare what there is with what the equation asks for, for each reactant.',
    evidence: 'printed',
    source: 'A teaching example: 3 mol of A and 2 mol of B, and B is named.',
    changes: /* @__PURE__ */ reckonsFrom(fewestMoles),
  },
  {
    name: 'excess-reagent-limits',
    group: 'limiting reagent',
    did: 'Worked out the theoretical yield from a reactant that is in excess.',
    advice: 'Which of the reactants is used up first? The product is counted from that one.',
    evidence: 'related',
    source: research,
    changes: /* @__PURE__ */ reckonsFrom((reactants) => reactants),
  },
  {
    name: 'reactant-masses-added',
    group: 'limiting reagent',
    did: 'Added up the masses of the reactants and called that the theoretical yield.',
    advice: 'Not all that goes in ends up in the crystals: what does the equation say of the product?',
    evidence: 'reported',
    source: 'A report on a double salt divides by the sum of the masses taken: 1.0855 g / 6 g = 18.09 %.',
    changes: addsReactants,
  },
  {
    name: 'yield-on-the-metal',
    group: 'limiting reagent',
    did: 'Based the yield on the metal salt by habit, although something else runs out first.',
    advice: 'Check the other reactants too: is there enough of each for all of the metal?',
    evidence: 'printed',
    source:
      'Teaching slides say that the yield is based on the starting material with the metal; in several printed recipes a ligand is short.',
    changes: /* @__PURE__ */ reckonsFrom(withTheMetal),
  },
]
