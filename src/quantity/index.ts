/**
 * Numbers that remember where they came from: units, dimensions, significant figures and the rules that join them.
 *
 * @module quantity
 */
export {
  type Contribution,
  standardUncertainty,
  type UncertaintyBudget,
  uncertaintyBudget,
} from './budget.js'
export type { Correlation } from './correlation.js'
export { correlationCoefficient } from './correlation-coefficient.js'
export {
  degreesOfFreedomFromReliability,
  effectiveDegreesOfFreedom,
  type UncertaintyComponent,
} from './degrees-of-freedom.js'
export type { Dimension, Divisor, Factor, Product, Quotient } from './dimension.js'
export { type Coverage, coverageFactor, type ExpandedUncertainty, expandedUncertainty } from './expanded.js'
export { countFigures, type FigureCount, type RoundTo, roundTo } from './figures.js'
export { calculationFromJSON, fromJSON } from './from-json.js'
export {
  antilogarithm,
  cosine,
  exponential,
  logarithm,
  naturalLogarithm,
  power,
  sine,
  squareRoot,
} from './functions.js'
export type { Distribution, InputFacts, InputKind, Naming, Role, StatedUncertainty } from './input.js'
export type { Unstated } from './input-uncertainty.js'
export type {
  CalculationDocument,
  DerivedNodeJSON,
  InputNodeJSON,
  MeasurementJSON,
  QuantityDocument,
  SettingsJSON,
  UncertaintyJSON,
} from './json-type.js'
export type { WholeNumberZeros } from './numeral.js'
export { asDimension, mean, sum, weightedSum } from './operations.js'
export type { UncertaintyOptions } from './propagation.js'
export type { Quantity, QuantityJSON } from './quantity.js'
export { type QuantityCode, QuantityError } from './quantity-error.js'
export {
  constant,
  type DimensionOf,
  exact,
  type InputOptions,
  isQuantity,
  type QuantityText,
  quantity,
  tryQuantity,
} from './read.js'
export { correlationOfReadings, fromReadings, type ReadingsOptions } from './readings.js'
export { type Change, reconsider, type SingleChange } from './reconsider.js'
export type { Rounding, TieRule } from './rounding.js'
export type { Expression, RuleSettings } from './rule.js'
export type { RuleName } from './rules.js'
export type { Selector, Which } from './select.js'
export type { SingleStatement, UncertaintyStatement } from './statement.js'
export { calculationToJSON, toJSON } from './to-json.js'
export type { Unit, UnitOf, UnitSpellings } from './unit.js'
export { type UncertaintyDigits, type WithUncertaintyOptions, writeWithUncertainty } from './with-uncertainty.js'
export { type WorkingOptions, working } from './working.js'
export type { Working, WorkingGiven, WorkingName, WorkingNumber, WorkingStep, WorkingTerm } from './working-type.js'
