/**
 * Amounts by balanced equations: mole ratios, limiting reagents, theoretical yields, leftovers, stages that hand on what they leave.
 *
 * @module stoichiometry
 */
export { amountOf, amountUsedInAll } from './amount-of.js'
export { type Equivalents, type EquivalentsOptions, equivalents } from './equivalents.js'
export type { Choice, Given, TextOf } from './given.js'
export { type Leftover, leftovers } from './leftovers.js'
export {
  extentOfReaction,
  type LimitingReagent,
  limitingReagent,
  type ReactantSupply,
  type SupplyOptions,
} from './limiting-reagent.js'
export { amountFromMass, type MolarOptions, massFromAmount } from './molar-amount.js'
export { amountNeeded, moleRatio, type Need } from './mole-ratio.js'
export { speciesKey } from './species.js'
export type { Stage, StageRun, StagesOptions, StagesRun } from './stage.js'
export { runStages } from './stages.js'
export { type StoichiometryCode, StoichiometryError } from './stoichiometry-error.js'
export type { SpeciesAmount, Supplies, Supply } from './supplies.js'
export { type TheoreticalYield, theoreticalYield } from './theoretical-yield.js'
