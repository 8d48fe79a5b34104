import type { EquationLike } from '../equation/index.js'
import type { FormulaLike } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import type { Choice } from './given.js'
import type { SupplyOptions } from './limiting-reagent.js'
import type { SpeciesAmount, Supplies } from './supplies.js'

/** One stage of a preparation. What is said of it is done in this order: aliquot, removal, addition, reaction. */
export interface Stage {
  /** What reacts: a balanced equation or its text. The reaction goes on until one reactant is used up. */
  readonly equation: EquationLike
  /** What the stage is called; `stage 1` and so on unless said. */
  readonly name?: string | undefined
  /** The part of the mixture that goes on into this stage, above 0 and at most 1; all of it unless said. Text is exact. */
  readonly aliquot?: Choice | undefined
  /** What is filtered off, washed away or boiled off before this stage. */
  readonly remove?: readonly FormulaLike[] | undefined
  /** What is added for this stage. */
  readonly add?: Supplies | undefined
}

/** How a chain of stages is run. */
export interface StagesOptions extends SupplyOptions {
  /**
   * Species of which there is always enough and which are not counted; the water of the solution (`['H2O']`) unless said.
   * `[]` counts water too. What a stage uses of them is their need.
   */
  readonly inExcess?: readonly FormulaLike[] | undefined
}

/** What happened in one stage. */
export interface StageRun {
  /** Its name. */
  readonly name: string
  /** The text of its equation. */
  readonly equation: string
  /** What was there when the reaction began. */
  readonly before: readonly SpeciesAmount[]
  /** The reactant that is used up. */
  readonly limiting: string
  /** Reactants that are practically used up with it. */
  readonly practicallyEqual: readonly string[]
  /** The extent of reaction, in mol. */
  readonly extent: Quantity<'amount'>
  /** What reacts, in the order of the equation. */
  readonly used: readonly SpeciesAmount[]
  /** What forms, in the order of the equation. */
  readonly made: readonly SpeciesAmount[]
  /** What is there when the reaction is over; zero of what was used up. */
  readonly after: readonly SpeciesAmount[]
}

/** What happened in all stages. */
export interface StagesRun {
  /** Each stage, in order. */
  readonly stages: readonly StageRun[]
  /** What is there in the end. */
  readonly after: readonly SpeciesAmount[]
}
