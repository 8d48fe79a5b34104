import type { AtomicWeights } from '../element/index.js'
import { showFound } from '../errors.js'
import { type Formula, type FormulaLike, formulaOf } from '../formula/index.js'
import { asDimension, exact, isQuantity, type Quantity, quantity } from '../quantity/index.js'
import { notNegative } from './bounds.js'
import { type Given, labelled, told } from './given.js'
import { amountFromMass } from './molar-amount.js'
import { amountNaming, namedAmount } from './naming.js'
import { speciesKey } from './species.js'
import { StoichiometryError } from './stoichiometry-error.js'

/** How much there is of a species. */
export interface SpeciesAmount {
  /** The formula as written. */
  readonly formula: string
  /** How much, in mol. */
  readonly amount: Quantity<'amount'>
}

/** How much there is of something: an amount of substance (text is exact) or a mass (text is measured). */
export type Supply = Given<'amount'> | Given<'mass'>

/** What is there to react: `{ ZnO: '4.07 g', H2SO4: '0.060 mol' }`, or a list such as a calculation gives back. */
export type Supplies = Readonly<Record<string, Supply>> | readonly SpeciesAmount[]

/** A supply with its key. */
export interface Portion extends SpeciesAmount {
  /** What tells the species from others. */
  readonly key: string
}

/** Reads supplies; two portions of one species are added up. */
export function readSupplies(supplies: Supplies, weights?: AtomicWeights): readonly Portion[] {
  const portions = new Map<string, Portion>()
  for (const [formula, supply] of entriesOf(supplies)) {
    const portion = readPortion(formula, supply, weights)
    const same = portions.get(portion.key)
    portions.set(portion.key, same === undefined ? portion : together(same, portion))
  }
  return [...portions.values()]
}

function entriesOf(supplies: unknown): readonly (readonly [FormulaLike, unknown])[] {
  if (Array.isArray(supplies)) return Array.from(supplies, pairOf) // not map, which would pass over the holes of a list
  if (typeof supplies === 'object' && supplies !== null) return Object.entries(supplies)
  throw badSupplies(supplies)
}

function pairOf(entry: Partial<SpeciesAmount> | null | undefined): readonly [FormulaLike, unknown] {
  if (entry?.formula === undefined) throw badSupplies(entry)
  return [entry.formula, entry.amount]
}

function readPortion(written: FormulaLike, supply: unknown, weights: AtomicWeights | undefined): Portion {
  const formula = formulaOf(written)
  const amount = labelled(amountOfSupply(formula, supply, weights), amountNaming(formula.text))
  return { key: speciesKey(formula), formula: formula.text, amount: notNegative(amount) }
}

function amountOfSupply(formula: Formula, supply: unknown, weights: AtomicWeights | undefined): Quantity<'amount'> {
  const given = isQuantity(supply) ? supply : told(`supply of ${formula.text}`, () => exact(supply as string))
  if (given.dimension === 'amount') return asDimension(given, 'amount')
  if (given.dimension !== 'mass') throw notASupply(formula.text, given)
  const weighed = isQuantity(supply) ? supply : quantity(supply as string)
  return amountFromMass(asDimension(weighed, 'mass'), formula, { weights })
}

/** Two portions of one species as one. */
export function together(one: Portion, other: Portion): Portion {
  return { ...one, amount: namedAmount(one.amount.plus(other.amount), one.formula) }
}

function badSupplies(found: unknown): StoichiometryError {
  return new StoichiometryError({
    code: 'stoichiometry/bad-supplies',
    message: `${showFound(found)} does not say how much there is of what.`,
    found: showFound(found),
    expected: 'an object of amounts or masses by formula, or a list of { formula, amount }',
  })
}

function notASupply(formula: string, found: Quantity): StoichiometryError {
  return new StoichiometryError({
    code: 'stoichiometry/not-a-supply',
    message: `${found.toString()} of ${formula} is neither an amount of substance nor a mass.`,
    path: [formula],
    found: found.toString(),
    expected: 'an amount in mol or a mass in g',
  })
}
