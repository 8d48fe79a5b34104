import { exact, type Quantity } from '../../quantity/index.js'
import type { Calculation } from '../calculation.js'
import type { SlipContext } from '../context.js'
import { type AtomChange, waterChange } from '../formula-facts.js'
import { formulaAmong, formulasAtHand } from '../formulas-at-hand.js'
import { because, isOfYield } from '../look-up.js'
import { molarMassesOf, type UsedMolarMass, withAtoms } from '../molar-masses.js'
import { type Replacement, timesNumber } from '../replacement.js'
import type { Slip, SlipChange } from '../slip.js'

const copperReports =
  'Three student reports on the dihydrate of potassium dioxalatocuprate(II) work with 159.61 g/mol for the pentahydrate that was weighed.'

type Wanted = (used: UsedMolarMass, water: number, calculation: Calculation) => boolean
type Change = (water: number) => AtomChange

/** A slip that counts the water of a hydrate in another way, wherever such a molar mass is used as described. */
function countsWater(wanted: Wanted, change: Change, how: string): Slip['changes'] {
  return (calculation, context) =>
    hydratesOf(calculation)
      .filter(({ used, water }) => wanted(used, water, calculation))
      .map(({ used, water }) => because(`molar mass of ${used.of} ${how}`, ...withAtoms(used, change(water), context)))
}

interface UsedHydrate {
  readonly used: UsedMolarMass
  readonly water: number
}

function hydratesOf(calculation: Calculation): readonly UsedHydrate[] {
  const used = molarMassesOf(calculation).map((each) => ({ used: each, water: each.facts.water }))
  return used.filter(({ water }) => water > 0)
}

/** A mass that is weighed out, or the molar mass itself. */
const isWeighedOut: Wanted = (used, _water, calculation) =>
  !used.divides && !isOfYield(calculation) && ['mass', 'molarMass'].includes(calculation.result.dimension)

const isSeveral: Wanted = (_used, water) => water > 1

/** Hydrates of the same salt that formulas at hand name, and the numbers of water that hydrates often have. */
function otherWater({ facts, of }: UsedMolarMass, { formulas = [] }: SlipContext): readonly number[] {
  const own = facts.water
  const list = formulasAtHand(formulas)
  const salt = list.length === 0 ? undefined : formulaAmong(list, of)?.salt
  const named = list.filter((other) => other.salt === salt).map(({ water }) => water)
  return [...new Set([...(own > 0 ? usualWater : []), ...named])].filter((water) => water > 0)
}

/** Numbers of water that hydrates of common salts have. Common practice, no source. */
const usualWater: readonly number[] = [1, 2, 5, 6, 7, 10]

function otherHydrates(wanted: (water: number) => boolean): Slip['changes'] {
  return (calculation, context) =>
    molarMassesOf(calculation)
      .filter(({ facts }) => wanted(facts.water))
      .flatMap((used) => otherWater(used, context).map((water) => takenWith(used, water, context)))
}

function takenWith(used: UsedMolarMass, water: number, context: SlipContext): SlipChange {
  const more = water - used.facts.water
  return because(`molar mass of ${used.of} with ${water} H2O`, ...withAtoms(used, waterChange(more), context))
}

/** Multiplies the molar mass of the salt by that of its water. */
function multipliesWater(calculation: Calculation, context: SlipContext): readonly SlipChange[] {
  return hydratesOf(calculation).map(({ used, water }) =>
    because(
      `molar mass of ${used.of} with its water multiplied`,
      ...withAtoms(used, waterChange(-water), context).map(multipliedBack),
    ),
  )
}

/** What was taken off a molar mass, multiplied with the rest. */
function multipliedBack({ replace, with: dried, estimate }: Replacement): Replacement {
  return {
    replace,
    with: (q) => {
      const dry = dried(q) as Quantity<'molarMass'>
      return dry.times((q as Quantity<'molarMass'>).minus(dry).dividedBy(exact('1 g/mol')))
    },
    estimate: (value) => estimate(value) * (value - estimate(value)),
  }
}

/** The doubled formula of an alum for the single one, or the other way round. */
function doublesAlum(calculation: Calculation): readonly SlipChange[] {
  return hydratesOf(calculation).flatMap(({ used, water }) => {
    const isAlum = used.facts.branches.some(({ units }) =>
      units.some(
        (unit) => unit.kind === 'group' && unit.units.some((atom) => atom.kind === 'atom' && atom.symbol === 'S'),
      ),
    )
    const factor = water === 12 ? '2' : water === 24 ? '0.5' : undefined
    if (!isAlum || factor === undefined) return []
    return [
      because(
        `molar mass of ${used.of} as that of ${factor === '2' ? 'two formula units' : 'half a formula unit'}`,
        ...used.quantities.map((q) => timesNumber(q, factor)),
      ),
    ]
  })
}

/** Slips with the water of hydrates. */
export const hydrateSlips: readonly Slip[] = [
  {
    name: 'hydrate-weighed-as-anhydrous',
    group: 'hydrate water',
    did: 'Worked out the mass of a hydrate with the molar mass of the anhydrous salt.',
    advice: 'Look at the label of what goes on the balance: does the molar mass include everything in that formula?',
    evidence: 'reported',
    source: 'The mirror image of the slip in three student reports on the dihydrate of potassium dioxalatocuprate(II).',
    changes: /* @__PURE__ */ countsWater(isWeighedOut, (water) => waterChange(-water), 'without its water'),
  },
  {
    name: 'hydrate-counted-as-anhydrous',
    group: 'hydrate water',
    did: 'Turned the mass of a hydrate into an amount with the molar mass of the anhydrous salt.',
    advice: 'Look at what was on the balance: is the molar mass that of the whole formula on its label?',
    evidence: 'reported',
    source: copperReports,
    changes: /* @__PURE__ */ countsWater(
      (used) => used.divides,
      (water) => waterChange(-water),
      'without its water',
    ),
  },
  {
    name: 'product-taken-as-anhydrous',
    group: 'hydrate water',
    did: 'Worked out the theoretical yield of the anhydrous product, although the hydrate is collected.',
    advice:
      'Look at the formula of the crystals that are collected: does the molar mass of the product include all of it?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: /* @__PURE__ */ countsWater(
      (used, _water, calculation) => !used.divides && isOfYield(calculation),
      (water) => waterChange(-water),
      'without its water',
    ),
  },
  {
    name: 'anhydrous-taken-as-hydrate',
    group: 'hydrate water',
    did: 'Used the molar mass of a hydrate for a substance that is anhydrous.',
    advice: 'Look at the label of the bottle: is there water in that formula?',
    evidence: 'printed',
    source: 'A class-12 laboratory manual, p. 102, gives ferric chloride and oxalic acid without saying which hydrate.',
    changes: /* @__PURE__ */ otherHydrates((water) => water === 0),
  },
  {
    name: 'one-water-only',
    group: 'hydrate water',
    did: 'Added one molecule of water, whatever the number in front of it.',
    advice: 'Look at the number in front of H2O: how many molecules of water does it mean?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: /* @__PURE__ */ countsWater(isSeveral, (water) => waterChange(1 - water), 'with one H2O'),
  },
  {
    name: 'water-number-on-hydrogen',
    group: 'hydrate water',
    did: 'Applied the number in front of H2O to hydrogen alone.',
    advice: 'Look at the number in front of H2O: which atoms does it count?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: /* @__PURE__ */ countsWater(
      isSeveral,
      (water) => new Map([['O', 1 - water]]),
      'with the number of its water on hydrogen only',
    ),
  },
  {
    name: 'water-multiplied',
    group: 'hydrate water',
    did: 'Read the dot as a multiplication sign.',
    advice: 'Look at the dot in the formula: what does it join, and how do the masses on both sides go together?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: multipliesWater,
  },
  {
    name: 'other-hydrate',
    group: 'hydrate water',
    did: 'Used the molar mass of another hydrate of the same salt.',
    advice: 'Compare the number of water molecules with the label or the recipe.',
    evidence: 'printed',
    source: 'General Chemistry Manual, Preparation of Iron Sulfate: yields for two hydrates side by side.',
    changes: /* @__PURE__ */ otherHydrates((water) => water > 0),
  },
  {
    name: 'water-added-again',
    group: 'hydrate water',
    did: 'Took the mass of the hydrate and added the mass of its water once more.',
    advice: 'The hydrate brings its water along: what does its molar mass already contain?',
    evidence: 'reported',
    source:
      'A question thread on 0.500 M copper(II) sulfate asks whether 2.25 g belong on top of 6.2385 g of the pentahydrate.',
    changes: /* @__PURE__ */ countsWater(
      (used, water, calculation) => isWeighedOut(used, water, calculation) && calculation.result.dimension === 'mass',
      waterChange,
      'and its water on top',
    ),
  },
  {
    name: 'alum-unit-doubled',
    group: 'hydrate water',
    did: 'Mixed the alum formula with one aluminium and 12 H2O with the doubled one with 24 H2O.',
    advice: 'Alums are written in two ways: does the formula unit in the molar mass match the one in the equation?',
    evidence: 'printed',
    source: 'Both notations are in current use in school alum projects and university alum sheets.',
    changes: doublesAlum,
  },
]
