/**
 * Reading, checking, balancing and combining chemical equations.
 *
 * @module equation
 */
export { type BalanceOptions, balance } from './balance.js'
export { type BalanceCheck, type BalanceCheckData, checkBalance } from './check-balance.js'
export { combine, type EquationStage } from './combine.js'
export type { SulfuricAcid } from './dissociation.js'
export type { Arrow, Equation, Term } from './equation.js'
export { type EquationCode, EquationError, type EquationErrorDetails } from './equation-error.js'
export { type EquationLike, equationOf } from './equation-of.js'
export { formatEquation } from './format.js'
export { completeHalfReaction } from './half-reaction.js'
export { type IonicOptions, ionicEquation, netIonicEquation } from './ionic.js'
export { isEquation } from './is-equation.js'
export { lowestTerms } from './lowest-terms.js'
export type { Medium, MediumOptions } from './medium.js'
export type { MissingSpecies, MissingSpeciesData } from './missing-species.js'
export type { Multiplier } from './multiplier.js'
export { parseEquation, tryParseEquation } from './parse.js'
export { completeRedox, type RedoxCompletion } from './redox.js'
export type { ElementTotals, ElementTotalsData, SideTotals, SideTotalsData } from './side-totals.js'
export { type ChainOptions, overallEquation, stageMultipliers } from './stage-multipliers.js'
export {
  type SaltAnion,
  type SaltCation,
  type StrongAcid,
  saltAnions,
  saltCations,
  strongAcids,
  type WeakSalt,
  weakSalts,
} from './strong-electrolytes.js'
export type { EquationStyle } from './write-equation.js'
