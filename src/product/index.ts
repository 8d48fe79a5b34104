/**
 * What came out: weighings by difference, constant mass, yields and what explains them, water, assays, losses; gas and heat on the way.
 *
 * @module product
 */
export { type AssayFinding, type Composition, type Constituent, compositionFromAssays } from './composition.js'
export { type ConstantMass, constantMass, type MassSeries } from './constant-mass.js'
export {
  type ConstantMassCriterion,
  type ConstantMassCriterionName,
  constantMassCriteria,
} from './constant-mass-criteria.js'
export { explainYield, type YieldFacts, type YieldPair } from './explain-yield.js'
export type { Explanation, ExplanationCode } from './explanation.js'
export { type GasEvolved, type GasVolume, gasVolume } from './gas.js'
export { type GasConditions, type GasConditionsName, gasConditions } from './gas-conditions.js'
export { type AssayResult, type GravimetricAssay, gravimetricAssay } from './gravimetric-assay.js'
export { type GravimetricPair, gravimetricFactor } from './gravimetric-factor.js'
export { type Neutralisation, type NeutralisationHeat, neutralisationEnthalpy, neutralisationHeat } from './heat.js'
export type { HydrateCandidate } from './hydrate-candidates.js'
export { type Ignition, type WaterOfCrystallisation, waterOfCrystallisation } from './ignition.js'
export { type LossFacts, type LossLine, lossAccount } from './loss-account.js'
export { componentMasses, type TwoComponents } from './mixture.js'
export { overallYield, percentRecovery, percentYield, type YieldBasis, type YieldOptions } from './percent-yield.js'
export { type ProductCode, ProductError } from './product-error.js'
export { isStrongAcid, isStrongBase } from './strong.js'
export { type Titrant, type TitrationAssay, type TitrationResult, titrationAssay } from './titration-assay.js'
export { buoyancyIgnored, netMass, type Weighing } from './weighing.js'
