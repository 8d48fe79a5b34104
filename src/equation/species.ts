import { type Formula, formatFormula, type State } from '../formula/index.js'
import type { Term } from './equation.js'

/** A substance in a state: what a term has one or more of. */
export interface Species {
  readonly formula: Formula
  readonly state: State | undefined
}

/** The same text for every way of writing the same formula: `CuSO4.5H2O` and `CuSO₄·5H₂O`. Isomers stay apart. */
export function formulaKey(formula: Formula): string {
  return formatFormula(formula, 'plain')
}

/** A species as people write it: `CuSO4(aq)`. */
export function speciesText({ formula, state }: Species): string {
  return state === undefined ? formulaKey(formula) : `${formulaKey(formula)}(${state})`
}

/**
 * Whether two species are one: the same formula, and states that do not differ. A species without a state is the same as
 * one with any.
 */
export function isSameSpecies(a: Species, b: Species): boolean {
  if (a.state !== undefined && b.state !== undefined && a.state !== b.state) return false
  return formulaKey(a.formula) === formulaKey(b.formula)
}

/** Several species in one phrase: `Na^+ and NO3^-`. */
export function listSpecies(species: readonly Species[]): string {
  return joinWords([...new Set(species.map(speciesText))])
}

/** Words in one phrase: `a`, `a and b`, `a, b and c`. */
export function joinWords(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? ''
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
}

/** All terms of two sides in order. */
export function allTerms(equation: {
  readonly left: readonly Term[]
  readonly right: readonly Term[]
}): readonly Term[] {
  return [...equation.left, ...equation.right]
}
