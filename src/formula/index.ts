/**
 * Reading, weighing and writing chemical formulas.
 *
 * @module formula
 */
export { formatFormula } from './format.js'
export type { Formula, FormulaNote, FormulaNoteCode, Part, State } from './formula.js'
export { type FormulaCode, FormulaError } from './formula-error.js'
export { type FormulaLike, formulaOf } from './formula-of.js'
export { hillFormula } from './hill.js'
export { anhydrous, withWater } from './hydrate.js'
export { isFormula } from './is-formula.js'
export { type MolarMassOptions, massFractions, molarMass, waterFraction } from './molar-mass.js'
export { formulaFromName, tryFormulaFromName } from './names/formula-from-name.js'
export { systematicName, trySystematicName } from './names/systematic-name.js'
export { parseFormula, tryParseFormula } from './parse.js'
export type { FormulaStyle } from './styles.js'
