import { attempt, type Outcome, showFound } from '../errors.js'
import type { Formula } from './formula.js'
import { FormulaError } from './formula-error.js'
import { ReadFormula } from './read-formula.js'
import { readFormulaText } from './reading.js'

export function parseFormula(text: string): Formula {
  if (typeof text !== 'string') throw notText(text)
  const { scan, state } = readFormulaText(text)
  return new ReadFormula(scan, state)
}

export function tryParseFormula(text: string): Outcome<Formula, FormulaError> {
  return attempt(() => parseFormula(text))
}

/** What should be text and is not. */
export function notText(found: unknown): FormulaError {
  return new FormulaError({
    code: 'formula/not-text',
    message: `${showFound(found)} is not the text of a formula.`,
    found: showFound(found),
    expected: 'a formula as text, such as "ZnSO4·7H2O"',
  })
}
