/**
 * What stays in the mother liquor: printed solubilities, the crop that cooling gives, and what filtering too warm or washing costs.
 *
 * @module crystallisation
 */
export type { Batch, CropInput } from './crop-input.js'
export { type CrystallisationCode, CrystallisationError } from './crystallisation-error.js'
export { type ExpectedCrop, expectedCrop } from './expected-crop.js'
export { solidsOf, solubilityTables } from './find-table.js'
export type { SolubilityUsed } from './given-solubility.js'
export { massRatioFromFraction } from './mass-ratio.js'
export type { CrystallisationNote, CrystallisationNoteCode } from './note.js'
export type { SecondOpinion } from './second-opinion.js'
export { type Solubility, type SolubilityOptions, solubilityOf, trySolubilityOf } from './solubility-of.js'
export type { PhaseEvidence, PhaseSolubility, SolubilityBasis, SolubilityTable } from './solubility-table.js'
export { temperatureForCrop, type WantedCrop } from './temperature-for-crop.js'
export { type WarmFiltration, warmFiltration } from './warm-filtration.js'
export { type WaterWash, washLoss } from './wash-loss.js'
