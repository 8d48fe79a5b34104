import type { FormulaLike } from '../formula/index.js'
import type { Given } from '../stoichiometry/given.js'
import type { SubstanceForm } from './substance-hazard.js'

/** Every operation that calls for a caution. */
export const operations = [
  'boil',
  'evaporate',
  'hot plate',
  'burner',
  'suction',
  'dilute acid',
  'neutralise',
  'dry',
] as const

/** An operation that calls for a caution. */
export type Operation = (typeof operations)[number]

/** A substance of a plan; text is exact. */
export interface SubstanceFact {
  /** Which, as it is taken from the bottle: the hydrate, if that is. */
  readonly formula: FormulaLike
  /** What the plan calls it. */
  readonly name?: string | undefined
  /** In what form; a solution where a strength is given, else the strictest of those classified unless said. */
  readonly form?: SubstanceForm | undefined
  /** Strength of a solution as a mass fraction. */
  readonly massFraction?: Given<'ratio'> | undefined
  /** Strength of a solution as an amount concentration. */
  readonly concentration?: Given<'amountConcentration'> | undefined
  /** Density of the solution, to make a mass fraction of the concentration. */
  readonly density?: Given<'density'> | undefined
}

/** A gas that is evolved; text is exact. */
export interface GasFact {
  /** Which. */
  readonly gas: FormulaLike
  /** How much of it. */
  readonly amount?: Given<'amount'> | undefined
  /** Its volume, at the state that is stated elsewhere in the plan. */
  readonly volume?: Given<'volume'> | undefined
}

/** Plain facts of a plan that cautions follow from. */
export interface CautionFacts {
  /** What is taken, made and left, in the forms at hand. */
  readonly substances?: readonly SubstanceFact[] | undefined
  /** What is evolved. */
  readonly gases?: readonly GasFact[] | undefined
  /** What is done. */
  readonly operations?: readonly Operation[] | undefined
  /** What a neutralisation releases, where it is known. */
  readonly neutralisation?: NeutralisationFact | undefined
  /** What is made. */
  readonly product?: FormulaLike | undefined
}

/** The heat of a neutralisation; text is exact. */
export interface NeutralisationFact {
  /** Heat released. */
  readonly heat?: Given<'energy'> | undefined
  /** Temperature rise in kelvins, at most. */
  readonly temperatureRise?: Given<'temperature'> | undefined
}
