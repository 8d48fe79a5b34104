import { type Formula, parseFormula, type State } from '../formula/index.js'
import type { Equation, Term } from './equation.js'
import { allTerms, formulaKey } from './species.js'

/** The species that complete an equation in water: water, the hydron, hydroxide and the electron. */
export const helperTexts = ['H2O', 'H^+', 'OH^-', 'e^-'] as const

/** The formula of one of them. */
export type HelperText = (typeof helperTexts)[number]

const usualStates: Readonly<Record<HelperText, State | undefined>> = {
  H2O: 'l',
  'H^+': 'aq',
  'OH^-': 'aq',
  'e^-': undefined,
}

const one = { numerator: 1n, denominator: 1n }

/** One of a helper species, with its usual state where the equation gives the states of its own species. */
export function helperTerm(text: HelperText, equation: Equation): Term {
  const formula = parseFormula(text)
  const state = hasStates(equation) ? usualStates[text] : undefined
  return { coefficient: one, coefficientWritten: false, formula, state, position: undefined }
}

/** The helper species a formula is, if it is one. */
export function helperOf(formula: Formula): HelperText | undefined {
  const key = formulaKey(formula)
  return helperTexts.find((text) => text === key)
}

function hasStates(equation: Equation): boolean {
  return allTerms(equation).every(({ formula, state }) => state !== undefined || helperOf(formula) === 'e^-')
}
