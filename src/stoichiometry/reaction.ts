import { checkBalance, type Equation, type EquationLike, equationOf, type Term } from '../equation/index.js'
import type { FormulaLike } from '../formula/index.js'
import { addFractions, type Fraction, fraction, subtractFractions } from '../fraction.js'
import { speciesKey } from './species.js'
import { StoichiometryError } from './stoichiometry-error.js'

/** A species on one side of a reaction, all its terms there added up. */
export interface Participant {
  /** What tells it from other species. */
  readonly key: string
  /** Its formula as the equation has it. */
  readonly formula: string
  /** How many of it, exactly and above zero. */
  readonly coefficient: Fraction
}

/** A balanced equation, ready for amounts. */
export interface Reaction {
  /** The text of the equation. */
  readonly text: string
  /** What is consumed, in the order of the equation. */
  readonly reactants: readonly Participant[]
  /** What is made, in the order of the equation. */
  readonly products: readonly Participant[]
}

/** A memo of a pure function: an equation never changes. */
const known: WeakMap<Equation, Reaction> = /* @__PURE__ */ new WeakMap()

/** The reaction an equation states. One that does not balance is refused, as its mole ratios would be wrong. */
export function reactionOf(input: EquationLike): Reaction {
  const equation = equationOf(input)
  const reaction = known.get(equation) ?? readReaction(equation)
  known.set(equation, reaction)
  return reaction
}

function readReaction(equation: Equation): Reaction {
  const { balanced, suggestion } = checkBalance(equation)
  if (!balanced) throw unbalanced(equation, suggestion?.text)
  return { text: equation.text, reactants: participants(equation.left), products: participants(equation.right) }
}

function participants(terms: readonly Term[]): readonly Participant[] {
  const found = new Map<string, Participant>()
  for (const { formula, coefficient } of terms) {
    const key = speciesKey(formula)
    const same = found.get(key) ?? { key, formula: formula.text, coefficient: fraction(0n) }
    found.set(key, { ...same, coefficient: addFractions(same.coefficient, coefficient) })
  }
  return [...found.values()]
}

/** A product by its formula. */
export function productOf({ text, products }: Reaction, formula: FormulaLike): Participant {
  const found = find(products, formula)
  if (found === undefined) throw missing('stoichiometry/not-a-product', 'make', text, formula, products)
  return found
}

/** A reactant by its formula. */
export function reactantOf({ text, reactants }: Reaction, formula: FormulaLike): Participant {
  const found = find(reactants, formula)
  if (found === undefined) throw missing('stoichiometry/not-a-reactant', 'consume', text, formula, reactants)
  return found
}

/** A reactant or product by its formula; of a species on both sides, what is left when they cancel. */
export function participantOf({ text, reactants, products }: Reaction, formula: FormulaLike): Participant {
  const [consumed, made] = [find(reactants, formula), find(products, formula)]
  if (consumed !== undefined && made !== undefined) return cancel(consumed, made)
  const found = consumed ?? made
  if (found !== undefined) return found
  throw missing('stoichiometry/not-in-equation', 'contain', text, formula, [...reactants, ...products])
}

function find(side: readonly Participant[], formula: FormulaLike): Participant | undefined {
  const wanted = speciesKey(formula)
  return side.find(({ key }) => key === wanted)
}

/** A species that only changes its state, as in KNO3(aq) -> KNO3(s), keeps its number. */
function cancel(consumed: Participant, made: Participant): Participant {
  const { numerator, denominator } = subtractFractions(made.coefficient, consumed.coefficient)
  if (numerator === 0n) return consumed
  return { ...consumed, coefficient: { numerator: numerator < 0n ? -numerator : numerator, denominator } }
}

function unbalanced(equation: Equation, hint: string | undefined): StoichiometryError {
  return new StoichiometryError({
    code: 'stoichiometry/unbalanced-equation',
    message: `The equation "${equation.text}" does not balance, so its mole ratios would be wrong.`,
    found: equation.text,
    expected: 'the same atoms and the same charge on both sides',
    hint,
  })
}

function missing(
  code: 'stoichiometry/not-a-reactant' | 'stoichiometry/not-a-product' | 'stoichiometry/not-in-equation',
  verb: 'consume' | 'make' | 'contain',
  equation: string,
  formula: FormulaLike,
  candidates: readonly Participant[],
): StoichiometryError {
  return new StoichiometryError({
    code,
    message: `The equation "${equation}" does not ${verb} ${formula}.`,
    found: String(formula),
    expected: candidates.map((candidate) => candidate.formula).join(', '),
  })
}
