import type { Formula } from '../formula/index.js'
import { divideFractions, type Fraction, formatFraction, fractionOf } from '../fraction.js'
import type { Equation, Term } from './equation.js'
import { helperOf, helperTerm, helperTexts } from './helper-species.js'
import { makeEquation } from './make-equation.js'
import { withCoefficient, withCoefficients } from './place-solution.js'
import { chargeTotals, elementTotals, isBalanced } from './side-totals.js'
import { independentSolutions } from './solutions.js'
import { allTerms } from './species.js'

/** The one species an equation lacks: water, the hydron, hydroxide or the electron. */
export interface MissingSpecies {
  /** The species. */
  readonly formula: Formula
  /** The side to which it has to be added. */
  readonly side: 'left' | 'right'
  /** How many of it. */
  readonly coefficient: Fraction
  /** The balanced equation with it. */
  readonly equation: Equation
}

/** A {@link MissingSpecies} as plain data. */
export interface MissingSpeciesData {
  /** The species: `H2O`, `H^+`, `OH^-`, `e^-`. */
  readonly formula: string
  /** The side to which it has to be added. */
  readonly side: 'left' | 'right'
  /** How many of it, as text. */
  readonly coefficient: string
  /** The balanced equation with it, as text. */
  readonly equation: string
}

/** A missing species with its number and its equation as text. */
export function missingData({ formula, side, coefficient, equation }: MissingSpecies): MissingSpeciesData {
  return { formula: formula.text, side, coefficient: formatFraction(coefficient), equation: equation.text }
}

/**
 * The helper species that would balance an equation, first with the coefficients as written, then with others; nothing
 * where none would, or where more than one would.
 */
export function findMissing(equation: Equation): MissingSpecies | undefined {
  const written = new Set(allTerms(equation).map(({ formula }) => helperOf(formula)))
  const absent = helperTexts.filter((text) => !written.has(text)).map((text) => helperTerm(text, equation))
  const [asWritten] = absent.flatMap((term) => addedAsWritten(equation, term))
  const anew = asWritten === undefined ? absent.flatMap((term) => addedAnew(equation, term)) : [asWritten]
  return anew.length === 1 ? anew[0] : undefined
}

/** The species added to the side that lacks it, where that alone balances the equation. */
function addedAsWritten(equation: Equation, term: Term): readonly MissingSpecies[] {
  const { numerator, denominator } = shortfall(equation, term.formula)
  const side = numerator > 0n ? 'left' : 'right'
  const coefficient = { numerator: numerator > 0n ? numerator : -numerator, denominator }
  const completed = withTerm(equation, withCoefficient(term, coefficient), side)
  return isBalanced(completed) ? [{ formula: term.formula, side, coefficient, equation: completed }] : []
}

/** How many of a species the left side lacks, judged by its last element, or by the charge where it has no atoms. */
function shortfall(equation: Equation, { counts, charge }: Formula): Fraction {
  const [symbol, count] = [...counts].at(-1) ?? []
  if (count === undefined) return divideFractions(chargeTotals(equation).difference, fractionOf(charge))
  const totals = elementTotals(equation).find((element) => element.symbol === symbol)
  return totals === undefined ? nothing : divideFractions(totals.difference, count)
}

const nothing: Fraction = { numerator: 0n, denominator: 1n }

/** The species added to whichever side needs it, with new coefficients for all; where none is needed, the equation was balanced before. */
function addedAnew(equation: Equation, term: Term): readonly MissingSpecies[] {
  const widened = withTerm(equation, term, 'right')
  const [values, another] = independentSolutions(
    allTerms(widened).map(({ formula }) => formula),
    widened.left.length,
  )
  if (values === undefined || another !== undefined) return []
  const upright = (values[0] as bigint) < 0n ? values.map((value) => -value) : values
  const added = upright.at(-1) as bigint
  if (upright.slice(0, -1).some((value) => value <= 0n)) return []
  const side = added > 0n ? 'right' : 'left'
  const coefficient = { numerator: added > 0n ? added : -added, denominator: 1n }
  return [{ formula: term.formula, side, coefficient, equation: withCoefficients(widened, upright) }]
}

function withTerm({ left, right, arrow }: Equation, term: Term, side: 'left' | 'right'): Equation {
  if (side === 'left') return makeEquation({ left: [...left, term], right, arrow })
  return makeEquation({ left, right: [...right, term], arrow })
}
