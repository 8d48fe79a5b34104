import type { Formula } from '../formula/index.js'
import { addFractions } from '../fraction.js'
import { combined } from './combine.js'
import { dissociate, type SulfuricAcid } from './dissociation.js'
import type { Equation, Term } from './equation.js'
import { EquationError } from './equation-error.js'
import { type EquationLike, equationOf } from './equation-of.js'
import { helperOf } from './helper-species.js'
import { checkComposition } from './known-composition.js'
import { lowestTerms } from './lowest-terms.js'
import { makeEquation } from './make-equation.js'
import { checkChoice, checkOptions } from './options.js'
import { withCoefficient } from './place-solution.js'
import { quote } from './quote.js'
import { isBalanced } from './side-totals.js'
import { allTerms, listSpecies, speciesText } from './species.js'
import { uprightAnswer } from './upright-answer.js'

/** How {@link ionicEquation} and {@link netIonicEquation} write what textbooks write in two ways. */
export interface IonicOptions {
  /**
   * Whether dissolved sulfuric acid gives `'both'` hydrons (default: OpenStax, Chemistry 2e, section 4.2, counts it among the
   * strong acids) or only the `'first'`, which leaves hydrogensulfate (its second dissociation is incomplete: section 14.3).
   */
  readonly sulfuricAcid?: SulfuricAcid
}

/**
 * The complete ionic equation: every dissolved strong electrolyte, `(aq)`, written as its ions by the tables
 * {@link strongAcids}, {@link saltCations}, {@link saltAnions} and {@link weakSalts}. Solids, liquids, gases, weak acids and
 * bases, and molecules stay whole.
 *
 * @param equation - A balanced equation, or its text, with the states of its electrolytes.
 * @param options - How far sulfuric acid dissociates.
 * @returns The equation with the ions in place of the electrolytes, cations first; equal ions of one side are added up.
 * @throws {@link EquationError} `equation/unbalanced` where the equation is not balanced.
 * @throws {@link EquationError} `equation/states-missing` where a strong electrolyte has no state, or nothing is dissolved.
 * @throws {@link EquationError} `equation/unknown-electrolyte` for a dissolved compound of a metal outside the tables.
 * @source OpenStax, Chemistry 2e, section 4.1, Equations for Ionic Reactions; section 4.2, Tables 4.1 and 4.2.
 *
 * @example
 * ```ts
 * import { ionicEquation } from 'saltwright/equation'
 *
 * const precipitation = 'BaCl2(aq) + ZnSO4(aq) -> BaSO4(s) + ZnCl2(aq)'
 * ionicEquation(precipitation).text
 * // => 'Ba^2+(aq) + 2 Cl^-(aq) + Zn^2+(aq) + SO4^2-(aq) -> BaSO4(s) + Zn^2+(aq) + 2 Cl^-(aq)'
 * ionicEquation('BaCl2 + ZnSO4 -> BaSO4 + ZnCl2') // throws equation/states-missing
 * ```
 */
export function ionicEquation(equation: EquationLike, options: IonicOptions = {}): Equation {
  const given = equationOf(equation)
  checkOptions(options)
  checkChoice('sulfuricAcid', options.sulfuricAcid, ['both', 'first'])
  checkComposition(given)
  if (!isBalanced(given)) throw unbalanced(given)
  checkStates(given)
  const acid = options.sulfuricAcid ?? 'both'
  const { left, right, arrow } = given
  return makeEquation({ left: asIons(left, acid), right: asIons(right, acid), arrow })
}

/**
 * The net ionic equation: {@link ionicEquation} without the spectator ions, in lowest terms.
 *
 * @param equation - A balanced equation, or its text, with the states of its electrolytes.
 * @param options - How far sulfuric acid dissociates.
 * @returns What really reacts.
 * @throws {@link EquationError} `equation/nothing-left` where every ion is a spectator: nothing reacts.
 * @throws {@link EquationError} `equation/unbalanced`, and the other errors of {@link ionicEquation}.
 * @source OpenStax, Chemistry 2e, section 4.1, Equations for Ionic Reactions; section 4.2, Tables 4.1 and 4.2.
 *
 * @example
 * ```ts
 * import { netIonicEquation } from 'saltwright/equation'
 *
 * netIonicEquation('ZnO(s) + H2SO4(aq) -> ZnSO4(aq) + H2O(l)').text
 * // => 'ZnO(s) + 2 H^+(aq) -> Zn^2+(aq) + H2O(l)'
 * netIonicEquation('KCl(aq) + NaNO3(aq) -> KNO3(aq) + NaCl(aq)') // throws equation/nothing-left
 * ```
 */
export function netIonicEquation(equation: EquationLike, options: IonicOptions = {}): Equation {
  const ionic = ionicEquation(equation, options)
  return lowestTerms(combined([ionic], [{ numerator: 1n, denominator: 1n }], nothingReacts))
}

/** The terms of one side with ions in place of dissolved electrolytes, equal species added up. */
function asIons(terms: readonly Term[], acid: SulfuricAcid): readonly Term[] {
  const sum = new Map<string, Term>()
  for (const term of terms.flatMap((one) => (one.state === 'aq' ? (dissociate(one, acid) ?? [one]) : [one]))) {
    const name = speciesText(term)
    const known = sum.get(name)
    const coefficient = known === undefined ? term.coefficient : addFractions(known.coefficient, term.coefficient)
    sum.set(name, withCoefficient(term, coefficient))
  }
  return [...sum.values()]
}

/** Every neutral compound needs its state, but for water; and something has to be dissolved. */
function checkStates(equation: Equation): void {
  const terms = allTerms(equation)
  const stateless = terms.filter(({ state, formula }) => state === undefined && isDoubtful(formula))
  if (stateless.length > 0) throw statesMissing(`${listSpecies(stateless)} has no state`)
  if (terms.every(({ state }) => state !== 'aq')) throw statesMissing('Nothing is marked as dissolved')
}

function isDoubtful(formula: Formula): boolean {
  return formula.charge === 0 && formula.counts.size > 1 && helperOf(formula) !== 'H2O'
}

function nothingReacts(): EquationError {
  return new EquationError({
    code: 'equation/nothing-left',
    message: 'Every ion stands on both sides: nothing reacts.',
    expected: 'a solid, a gas, a weak electrolyte or a change of charge among the products',
  })
}

function statesMissing(what: string): EquationError {
  return new EquationError({
    code: 'equation/states-missing',
    message: `${what}: which ions are in solution is not known.`,
    expected: 'the states of the electrolytes: (aq) what is dissolved, (s) what is not',
  })
}

function unbalanced(equation: Equation): EquationError {
  return new EquationError({
    code: 'equation/unbalanced',
    message: `${quote(equation.text)} is not balanced.`,
    found: equation.text,
    expected: 'a balanced equation',
    hint: uprightAnswer(equation)?.text,
  })
}
