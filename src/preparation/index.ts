/**
 * The main job: a recipe in, a bench sheet out; weighings in, an honest yield out.
 *
 * @module preparation
 */
export { assessPreparation } from './assess.js'
export type { Assessment, UsedSupply } from './assessment-type.js'
export type { AidLine, Bench, BenchPlan, ClassOptions, ClassPlan, Making, MetalWaste, StoreLine } from './class-type.js'
export type { CoolingEstimate, TooWarm } from './cooling.js'
export type { Finding, FindingCode, Severity } from './finding.js'
export { planPreparation } from './plan.js'
export { planBenches, planClass } from './plan-class.js'
export type { Excess, Plan, PlannedStage, PlannedSupply } from './plan-type.js'
export type { Portion } from './portion.js'
export { type PreparationCode, PreparationError } from './preparation-error.js'
export {
  calculationJsonSchema,
  calculationSchema,
  quantityJsonSchema,
  quantitySchema,
} from './quantity-schema.js'
export type {
  LiquidSupply,
  MadeFrom,
  MolalSupply,
  NormalSupply,
  Recipe,
  RecipeAuxiliary,
  RecipeClaim,
  RecipeCrystallisation,
  RecipeInstruments,
  RecipeScale,
  RecipeStage,
  RecipeSupply,
  RecipeVessel,
  RecipeWash,
  RecipeWeights,
  SolidSupply,
  SolutionSupply,
  StockSupply,
  SupplyRule,
  UnlimitedSupply,
} from './recipe.js'
export { recipeJsonSchema, recipeSchema } from './recipe-schema.js'
export type { ConstancyRecord, ProductRecord, Records, SupplyRecord, VesselRecord } from './records.js'
export { recordsJsonSchema, recordsSchema } from './records-schema.js'
