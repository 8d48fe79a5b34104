/**
 * Reading, weighing and writing chemical formulas.
 *
 * @module formula
 */
export type { Formula, FormulaNote, Part, State } from './formula.js'
export { type FormulaCode, FormulaError } from './formula-error.js'
export { type FormulaLike, formulaOf } from './formula-of.js'
export { isFormula } from './is-formula.js'
export { parseFormula, tryParseFormula } from './parse.js'
