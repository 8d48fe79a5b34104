import type { Formula } from './formula.js'
import { isFormula } from './is-formula.js'
import { notText, parseFormula } from './parse.js'
import { ReadFormula } from './read-formula.js'

/** A formula that was read, or its text: what every function takes that works with formulas. */
export type FormulaLike = Formula | string

/**
 * The formula of what may be a formula or its text. A formula that another copy of the library has read is read again here.
 *
 * @param formula - A formula, or its text.
 * @returns The formula; the same object where it was read by this copy of the library.
 * @throws {@link FormulaError} `formula/not-text` for anything else, and whatever {@link parseFormula} throws for a text.
 *
 * @example
 * ```ts
 * import { formulaOf, parseFormula } from 'saltwright/formula'
 *
 * const salt = parseFormula('ZnSO4')
 * formulaOf(salt) === salt // => true
 * formulaOf('ZnSO4').charge // => 0
 * ```
 */
export function formulaOf(formula: FormulaLike): Formula {
  if (typeof formula === 'string' || formula instanceof ReadFormula) return read(formula)
  if (!isFormula(formula)) throw notText(formula)
  const { text, state } = formula
  return parseFormula(state === undefined ? text : `${text}(${state})`)
}

function read(formula: string | Formula): Formula {
  return typeof formula === 'string' ? parseFormula(formula) : formula
}
