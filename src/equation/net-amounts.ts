import type { State } from '../formula/index.js'
import { addFractions, type Fraction, multiplyFractions } from '../fraction.js'
import type { Equation, Term } from './equation.js'
import { EquationError } from './equation-error.js'
import { allTerms, formulaKey, joinWords, type Species, speciesText } from './species.js'

/** What some equations together make of a species: above zero formed, below zero used up. */
export interface NetAmount extends Species {
  readonly net: Fraction
}

/** The states that are written for each formula anywhere in some equations. */
export type StateTable = ReadonlyMap<string, ReadonlySet<State>>

/** Collects the states written in some equations. */
export function statesIn(equations: readonly Equation[]): StateTable {
  const table = new Map<string, Set<State>>()
  for (const { formula, state } of equations.flatMap(allTerms)) {
    const key = formulaKey(formula)
    const states = table.get(key) ?? new Set()
    table.set(key, state === undefined ? states : states.add(state))
  }
  return table
}

/**
 * One name for each species of some equations. A species written without a state is the one with the state written
 * elsewhere; where two states are written elsewhere it may be either, which is an error.
 */
export function speciesName({ formula, state }: Species, table: StateTable): string {
  return speciesText({ formula, state: state ?? onlyState(formula, table) })
}

function onlyState(formula: Species['formula'], table: StateTable): State | undefined {
  const states = [...(table.get(formulaKey(formula)) ?? [])]
  if (states.length > 1) throw ambiguousState(formulaKey(formula), states)
  return states[0]
}

/** What an equation, run a number of times, makes and uses of each species, by its name. */
export function netAmounts(
  { left, right }: Equation,
  times: Fraction,
  table: StateTable,
): ReadonlyMap<string, NetAmount> {
  const used = { numerator: -times.numerator, denominator: times.denominator }
  const amounts = new Map<string, NetAmount>()
  for (const term of left) addAmount(amounts, term, used, table)
  for (const term of right) addAmount(amounts, term, times, table)
  return amounts
}

/** The sum of several net amounts. */
export function sumAmounts(all: readonly ReadonlyMap<string, NetAmount>[]): ReadonlyMap<string, NetAmount> {
  const sum = new Map<string, NetAmount>()
  for (const [name, amount] of all.flatMap((amounts) => [...amounts])) {
    const known = sum.get(name)
    sum.set(name, known === undefined ? amount : { ...known, net: addFractions(known.net, amount.net) })
  }
  return sum
}

function addAmount(amounts: Map<string, NetAmount>, term: Term, times: Fraction, table: StateTable): void {
  const name = speciesName(term, table)
  const net = multiplyFractions(term.coefficient, times)
  const known = amounts.get(name)
  const state = term.state ?? onlyState(term.formula, table)
  amounts.set(name, { formula: term.formula, state, net: known === undefined ? net : addFractions(known.net, net) })
}

function ambiguousState(formula: string, states: readonly State[]): EquationError {
  const named = joinWords(states.map((state) => `${formula}(${state})`))
  return new EquationError({
    code: 'equation/ambiguous-state',
    message: `${formula} without a state may be ${named}.`,
    found: formula,
    expected: 'the state of every species that stands in more than one',
    hint: `Write ${named} wherever it stands.`,
  })
}
