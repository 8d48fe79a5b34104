import type { AtomicWeights } from '../element/index.js'
import type { EquationLike } from '../equation/index.js'
import { exact, type Quantity } from '../quantity/index.js'
import { anObject, notNegative } from './bounds.js'
import { exactFraction } from './exact-fraction.js'
import { type Choice, chosen } from './given.js'
import { type Participant, type Reaction, reactantOf, reactionOf } from './reaction.js'
import { StoichiometryError } from './stoichiometry-error.js'
import { readSupplies, type SpeciesAmount, type Supplies } from './supplies.js'

/** How supplies are compared. */
export interface SupplyOptions {
  /** Which atomic weights masses are read with: `"abridged"` unless said. */
  readonly weights?: AtomicWeights | undefined
  /** Within what of the limiting reagent another one is practically equal to it; 1 % unless said. Text is exact. */
  readonly practicallyEqualWithin?: Choice | undefined
}

/** A reactant with how far it lets the reaction go. */
export interface ReactantSupply extends SpeciesAmount {
  /** The extent of reaction that would use all of it up, in mol. */
  readonly extent: Quantity<'amount'>
}

/** Which reactant runs out first. */
export interface LimitingReagent extends ReactantSupply {
  /** Every supplied reactant, in the order of the equation. */
  readonly reactants: readonly ReactantSupply[]
  /** Formulas of the others that run out practically at the same time. */
  readonly practicallyEqual: readonly string[]
  /** Formulas of reactants that were not listed, and so are taken to be there in excess. */
  readonly takenAsExcess: readonly string[]
}

/**
 * Finds the reactant that runs out first, and how far the reaction then has gone. Reactants that are not listed, such as the
 * water of a solution, are taken to be there in excess.
 *
 * @param equation - A balanced equation or its text.
 * @param supplies - How much there is, by formula: amounts (text is exact) or masses (text is measured).
 * @param options - Atomic weights, and within what two reactants count as practically equal.
 * @returns The limiting reagent; of a tie, the first in the equation.
 * @throws {@link StoichiometryError} `stoichiometry/not-a-reactant`, `stoichiometry/nothing-limits`,
 *   `stoichiometry/unbalanced-equation`, `stoichiometry/bad-supplies`, `stoichiometry/not-a-supply`,
 *   `stoichiometry/negative`, `stoichiometry/not-an-object`; {@link EquationError}, {@link FormulaError} and {@link QuantityError} for what cannot be read.
 * @source OpenStax, Chemistry 2e, section 4.4. Extent of reaction: IUPAC Green Book, 3rd edition, section 2.10.1. The band of
 *   1 %: common practice, no source.
 *
 * @example
 * ```ts
 * import { limitingReagent } from 'saltwright/stoichiometry'
 *
 * const found = limitingReagent('3Si + 2N2 -> Si3N4', { Si: '2.00 g', N2: '1.50 g' })
 * found.formula // => 'Si'
 * found.extent.toString() // => '0.0237 mol'
 * found.practicallyEqual // => []
 * ```
 */
export function limitingReagent(
  equation: EquationLike,
  supplies: Supplies,
  options: SupplyOptions = {},
): LimitingReagent {
  const { reactants, limiting, ...others } = compareSupplies(reactionOf(equation), supplies, options)
  return { ...shown(limiting), reactants: reactants.map(shown), ...others }
}

/**
 * The extent of reaction when the limiting reagent is used up: the amount of each species that reacts or forms, divided by its
 * stoichiometric number.
 *
 * @param equation - A balanced equation or its text; the extent belongs to this way of writing it.
 * @param supplies - As for {@link limitingReagent}.
 * @param options - As for {@link limitingReagent}.
 * @returns The extent in mol.
 * @throws {@link StoichiometryError} `stoichiometry/nothing-limits` and the other codes of {@link limitingReagent}.
 * @source IUPAC Green Book, 3rd edition, section 2.10.1.
 *
 * @example
 * ```ts
 * import { extentOfReaction } from 'saltwright/stoichiometry'
 *
 * extentOfReaction('2Al + 6HCl -> 2AlCl3 + 3H2', { Al: '0.050 mol', HCl: '0.12 mol' }).toString() // => '0.02 mol'
 * ```
 */
export function extentOfReaction(
  equation: EquationLike,
  supplies: Supplies,
  options: SupplyOptions = {},
): Quantity<'amount'> {
  return limitingReagent(equation, supplies, options).extent
}

/** A reactant in the equation and on the bench. */
export interface Reactant extends Participant, ReactantSupply {}

/** All that is known before anything reacts. */
export interface Comparison {
  readonly reactants: readonly Reactant[]
  readonly limiting: Reactant
  readonly practicallyEqual: readonly string[]
  readonly takenAsExcess: readonly string[]
}

/** Compares what there is with what the equation asks for. */
export function compareSupplies(reaction: Reaction, supplies: Supplies, options: SupplyOptions): Comparison {
  const { weights, practicallyEqualWithin } = anObject(options, 'options: { weights, practicallyEqualWithin }')
  const portions = readSupplies(supplies, weights)
  for (const { formula } of portions) reactantOf(reaction, formula)
  const amounts = new Map(portions.map(({ key, amount }) => [key, amount]))
  return compareAmounts(reaction, amounts, practicallyEqualWithin)
}

/** The same, from amounts by key; a reactant without an amount does not limit. */
export function compareAmounts(
  reaction: Reaction,
  amounts: ReadonlyMap<string, Quantity<'amount'>>,
  within: Choice | undefined,
): Comparison {
  const reactants = reaction.reactants.flatMap((participant) => reactantWith(participant, amounts.get(participant.key)))
  const [first, ...others] = reactants
  if (first === undefined) throw nothingLimits(reaction)
  const limiting = others.reduce((least, next) => (next.extent.compare(least.extent) < 0 ? next : least), first)
  return {
    reactants,
    limiting,
    practicallyEqual: closeTo(limiting, reactants, within),
    takenAsExcess: reaction.reactants.filter(({ key }) => !amounts.has(key)).map(({ formula }) => formula),
  }
}

function reactantWith(participant: Participant, amount: Quantity<'amount'> | undefined): readonly Reactant[] {
  if (amount === undefined) return []
  const { formula, coefficient } = participant
  const number = exactFraction(coefficient, { label: `stoichiometric number of ${formula}`, symbol: 'ν', of: formula })
  const extent = amount.dividedBy(number).named({ label: `extent that ${formula} allows`, symbol: 'ξ', of: formula })
  return [{ ...participant, amount, extent }]
}

function closeTo(limiting: Reactant, reactants: readonly Reactant[], within: Choice | undefined): readonly string[] {
  const band = notNegative(chosen(within ?? '1 %', 'ratio', { label: 'practically equal within' }))
  const bound = limiting.extent.times(exact(1).plus(band.to('1')))
  const close = reactants.filter(({ key, extent }) => key !== limiting.key && extent.compare(bound) <= 0)
  return close.map(({ formula }) => formula)
}

function shown({ formula, amount, extent }: Reactant): ReactantSupply {
  return { formula, amount, extent }
}

function nothingLimits({ text, reactants }: Reaction): StoichiometryError {
  return new StoichiometryError({
    code: 'stoichiometry/nothing-limits',
    message: `No reactant of "${text}" has an amount, so nothing limits.`,
    found: 'no supply',
    expected: `an amount or a mass of one of ${reactants.map(({ formula }) => formula).join(', ')}`,
  })
}
