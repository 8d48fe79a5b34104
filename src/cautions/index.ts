/**
 * What can hurt somebody in a plan, and the usual precaution: hazard statements with their source, gases, heat, waste; and always
 * the line that local rules and the current safety data sheet come first.
 *
 * @module cautions
 */
export type { Caution, CautionName, Statement } from './caution.js'
export { type CautionCode, CautionError } from './caution-error.js'
export { cautionsFor } from './cautions-for.js'
export type { CautionFacts, GasFact, NeutralisationFact, Operation, SubstanceFact } from './facts.js'
export { type GeneralCaution, type GeneralCautionCode, generalCautions } from './general-cautions.js'
export { substanceHazards } from './hazard-rows.js'
export { type HazardCode, hazardStatements, type Pictogram, pictograms } from './hazard-statements.js'
export type { CalledFor, SubstanceForm, SubstanceHazard } from './substance-hazard.js'
