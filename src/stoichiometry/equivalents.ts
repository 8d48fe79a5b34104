import type { EquationLike } from '../equation/index.js'
import type { FormulaLike } from '../formula/index.js'
import { exact, type Quantity } from '../quantity/index.js'
import { compareSupplies, type Reactant, type SupplyOptions } from './limiting-reagent.js'
import { ratioBetween } from './mole-ratio.js'
import { namedAmount } from './naming.js'
import { type Reaction, reactantOf, reactionOf } from './reaction.js'
import { StoichiometryError } from './stoichiometry-error.js'
import type { Supplies } from './supplies.js'

/** On what basis equivalents are counted. */
export interface EquivalentsOptions extends SupplyOptions {
  /** The reactant that has one equivalent, such as the metal of the salt; the limiting reagent unless said. */
  readonly basis?: FormulaLike | undefined
}

/** How much there is of a reactant, compared with what is needed. */
export interface Equivalents {
  /** The formula as the equation has it. */
  readonly formula: string
  /** How much there is, in mol. */
  readonly supplied: Quantity<'amount'>
  /** How much the basis needs, in mol. */
  readonly needed: Quantity<'amount'>
  /** Supplied by needed: 1 is exactly stoichiometric, below 1 the reactant is short. The canonical way to state an excess. */
  readonly equivalents: Quantity<'ratio'>
  /** The same number under its other name: 1.2 times the need. */
  readonly excessFactor: Quantity<'ratio'>
  /** The excess alone, in per cent of the need: 1.2 equivalents are 20 %. Negative where the reactant is short. */
  readonly percentExcess: Quantity<'ratio'>
  /** Moles there are per mole of the basis, whatever the equation asks for. */
  readonly molesPerMole: Quantity<'ratio'>
}

/**
 * Equivalents of every supply: amount supplied by amount needed, on the basis of one reactant; with the two other ways in which
 * manuals state an excess.
 *
 * @param equation - A balanced equation or its text: of a preparation in several stages, the overall equation.
 * @param supplies - How much there is, by formula.
 * @param options - The basis, and atomic weights.
 * @returns Each supplied reactant in the order of the equation.
 * @throws {@link StoichiometryError} `stoichiometry/nothing-limits` also where there is nothing of the basis, and the other codes
 *   of `limitingReagent`; {@link EquationError}, {@link FormulaError} and {@link QuantityError} for what cannot be read.
 * @source Three ways of stating an excess are in use in manuals; equivalents as the canonical one: common practice, no source.
 *
 * @example
 * ```ts
 * import { equivalents } from 'saltwright/stoichiometry'
 *
 * const alum = '2Al + 2KOH + 4H2SO4 + 22H2O -> 2KAl(SO4)2·12H2O + 3H2'
 * const [, base, acid] = equivalents(alum, { Al: '0.050 mol', KOH: '0.10 mol', H2SO4: '0.12 mol' }, { basis: 'Al' })
 * base?.equivalents.toString() // => '2'
 * acid?.percentExcess.toString() // => '20 %'
 * acid?.molesPerMole.toString() // => '2.4'
 * ```
 */
export function equivalents(
  equation: EquationLike,
  supplies: Supplies,
  options: EquivalentsOptions = {},
): readonly Equivalents[] {
  const reaction = reactionOf(equation)
  const { reactants, limiting } = compareSupplies(reaction, supplies, options)
  const basis = options.basis === undefined ? limiting : suppliedBasis(reaction, reactants, options.basis)
  if (basis.amount.value.isZero()) throw nothingOf(basis.formula)
  return reactants.map((reactant) => equivalentsOf(reactant, basis))
}

function suppliedBasis(reaction: Reaction, reactants: readonly Reactant[], basis: FormulaLike): Reactant {
  const { key, formula } = reactantOf(reaction, basis)
  const found = reactants.find((reactant) => reactant.key === key)
  if (found === undefined) throw nothingOf(formula)
  return found
}

function equivalentsOf(reactant: Reactant, basis: Reactant): Equivalents {
  const { formula, amount: supplied } = reactant
  const needed = namedAmount(basis.amount.times(ratioBetween(reactant, basis)), formula, `need of ${formula}`)
  const ratio = supplied.dividedBy(needed)
  return {
    formula,
    supplied,
    needed,
    equivalents: ratio.named({ label: `equivalents of ${formula}`, of: formula }),
    excessFactor: ratio.named({ label: `excess factor of ${formula}`, symbol: 'f', of: formula, role: 'excess' }),
    percentExcess: ratio
      .minus(exact(1))
      .to('%')
      .named({ label: `excess of ${formula}`, of: formula }),
    molesPerMole: supplied.dividedBy(basis.amount).named({ label: `moles of ${formula} per mole of ${basis.formula}` }),
  }
}

function nothingOf(formula: string): StoichiometryError {
  return new StoichiometryError({
    code: 'stoichiometry/nothing-limits',
    message: `There is no ${formula}, so nothing can be counted in its equivalents.`,
    found: `no ${formula}`,
    expected: `an amount or a mass of ${formula} above zero`,
  })
}
