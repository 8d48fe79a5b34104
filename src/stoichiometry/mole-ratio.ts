import type { EquationLike } from '../equation/index.js'
import type { FormulaLike } from '../formula/index.js'
import { divideFractions } from '../fraction.js'
import type { Quantity } from '../quantity/index.js'
import { anObject, notNegative } from './bounds.js'
import { exactFraction } from './exact-fraction.js'
import { type Choice, chosen, type Given } from './given.js'
import { amountNaming, namedAmount } from './naming.js'
import { type Participant, participantOf, reactionOf } from './reaction.js'

/**
 * How many moles of one species go with a mole of another, by a balanced equation. Exact.
 *
 * @param equation - A balanced equation or its text.
 * @param of - The species that is counted.
 * @param per - The species of which there is one mole.
 * @returns Moles of `of` per mole of `per`.
 * @throws {@link StoichiometryError} `stoichiometry/not-in-equation`, `stoichiometry/unbalanced-equation`;
 *   {@link EquationError} and {@link FormulaError} for what cannot be read.
 * @source Stoichiometric factors: OpenStax, Chemistry 2e, section 4.3.
 *
 * @example
 * ```ts
 * import { moleRatio } from 'saltwright/stoichiometry'
 *
 * moleRatio('2Al + 6HCl -> 2AlCl3 + 3H2', 'H2', 'Al').toString() // => '1.5'
 * moleRatio('2Al + 6HCl -> 2AlCl3 + 3H2', 'NaCl', 'Al') // throws stoichiometry/not-in-equation
 * ```
 */
export function moleRatio(equation: EquationLike, of: FormulaLike, per: FormulaLike): Quantity<'ratio'> {
  const reaction = reactionOf(equation)
  return ratioBetween(participantOf(reaction, of), participantOf(reaction, per))
}

/** Moles of one participant per mole of another. */
export function ratioBetween(of: Participant, per: Participant): Quantity<'ratio'> {
  return exactFraction(divideFractions(of.coefficient, per.coefficient), {
    label: `moles of ${of.formula} per mole of ${per.formula}`,
    symbol: 'r',
    of: of.formula,
    role: 'mole ratio',
  })
}

/** For how much of what something is needed. */
export interface Need {
  /** The amount that is to react or to be made; text is exact. */
  readonly for: Given<'amount'>
  /** The species of which it is the amount. */
  readonly of: FormulaLike
  /** Times the stoichiometric need; 1 unless said. Text and numbers are exact. */
  readonly excessFactor?: Choice | undefined
}

/**
 * How much of one species an amount of another asks for, by a balanced equation.
 *
 * @param equation - A balanced equation or its text.
 * @param species - What is needed.
 * @param need - The amount, of what, and perhaps an excess factor.
 * @returns The amount in mol.
 * @throws {@link StoichiometryError} `stoichiometry/not-in-equation`, `stoichiometry/unbalanced-equation`,
 *   `stoichiometry/negative`, `stoichiometry/not-an-object`; {@link EquationError}, {@link FormulaError} and {@link QuantityError}
 *   for what cannot be read.
 * @source OpenStax, Chemistry 2e, section 4.3.
 *
 * @example
 * ```ts
 * import { amountNeeded } from 'saltwright/stoichiometry'
 *
 * const dissolving = 'ZnO + H2SO4 -> ZnSO4 + H2O'
 * amountNeeded(dissolving, 'H2SO4', { for: '0.0400 mol', of: 'ZnO', excessFactor: 1.2 }).toString() // => '0.048 mol'
 * ```
 */
export function amountNeeded(equation: EquationLike, species: FormulaLike, need: Need): Quantity<'amount'> {
  const { of } = anObject(need, '{ for: "0.025 mol", of: "Al" }')
  const reaction = reactionOf(equation)
  const [wanted, per] = [participantOf(reaction, species), participantOf(reaction, of)]
  const amount = notNegative(chosen(need.for, 'amount', amountNaming(per.formula)))
  const needed = namedAmount(amount.times(ratioBetween(wanted, per)), wanted.formula, `need of ${wanted.formula}`)
  if (need.excessFactor === undefined) return needed
  return namedAmount(needed.times(excessOf(need.excessFactor, wanted.formula)), wanted.formula)
}

function excessOf(factor: Choice, of: string): Quantity<'ratio'> {
  return notNegative(chosen(factor, 'ratio', { label: `excess factor of ${of}`, symbol: 'f', of, role: 'excess' }))
}
