/**
 * Solutions: how strong they are by whatever the label says, how much delivers an amount, how they are diluted and made up, and
 * which glassware measures them.
 *
 * @module solution
 */
export { type Balance, balances } from './balances.js'
export { type BasisChange, convertBasis } from './basis.js'
export { type BeakerSizes, beakers } from './beakers.js'
export { type CapacityOptions, checkCapacity } from './capacity.js'
export { type ConcentrationCheck, checkConcentration, type StatedTwice } from './check-concentration.js'
export {
  amountConcentration,
  type ByAmount,
  type ByMassFraction,
  type ByMolality,
  type ByNormality,
  type BySolute,
  type OfSubstance,
  type Strength,
} from './concentration.js'
export { amountInVolume, volumeToDeliver } from './delivery.js'
export { densityOf, massFractionAt } from './density.js'
export { densityTables } from './density-data.js'
export type { DensityTable } from './density-table.js'
export { type Dilution, type DilutionRequest, dilution } from './dilution.js'
export type { SolutionFinding } from './finding.js'
export { toleranceOf } from './glassware.js'
export { glasswareTables } from './glassware-data.js'
export type {
  AccuracyClass,
  GlasswareItem,
  GlasswareSize,
  GlasswareStandard,
  GlasswareTable,
  Millilitres,
} from './glassware-table.js'
export { type MakeUp, type MakeUpRequest, makeUp } from './make-up.js'
export { type MassFractionFrom, massFraction } from './mass-fraction.js'
export type { Mixing, MixingOrder } from './mixing.js'
export { type MolalityFrom, molality } from './molality.js'
export { type EquivalentsPerMole, fromNormality, type Normality, toNormality } from './normality.js'
export { type Readable, readTo } from './read-to.js'
export { type SolutionCode, SolutionError } from './solution-error.js'
export { type StockDilution, type StockRequest, stockFor } from './stock.js'
export { stockReagent } from './stock-reagent.js'
export { stockReagents } from './stock-reagent-data.js'
export type { StockReagent, StockStrength } from './stock-strength.js'
export { type Vessel, type VesselOptions, vesselFor } from './vessel.js'
