import type { Caution } from '../cautions/index.js'
import type { Equation } from '../equation/index.js'
import type { GasVolume, NeutralisationHeat } from '../product/index.js'
import type { Quantity } from '../quantity/index.js'
import type { Vessel } from '../solution/index.js'
import type { CoolingEstimate } from './cooling.js'
import type { Finding } from './finding.js'
import type { Portion } from './portion.js'
import type { Recipe } from './recipe.js'

/** How a supply compares with its need. Equivalents are the one convention; the other two say the same in other words. */
export interface Excess {
  /** Amount taken divided by amount needed: 1 is exactly stoichiometric, 2 twice as much as needed. */
  readonly equivalents: Quantity<'ratio'>
  /** What is beyond the need, in per cent of the need: 100 % is twice as much as needed. */
  readonly percentExcess: Quantity<'ratio'>
}

/** One line of the bench sheet: what to weigh or measure. */
export interface PlannedSupply {
  /** The substance, as in the equations. */
  readonly substance: string
  /** What it is called. */
  readonly name: string
  /** Its place in the recipe. */
  readonly index: number
  /** The stage it goes into. */
  readonly stage: string
  /** Amount needed by the overall equation alone. */
  readonly naiveNeed: Quantity<'amount'>
  /** Amount needed in all: also for clearing what earlier stages left. */
  readonly need: Quantity<'amount'>
  /** What earlier stages left of the same substance, which does the same work; absent for nothing. */
  readonly left: Quantity<'amount'> | undefined
  /** Amount taken. */
  readonly amount: Quantity<'amount'>
  /** How what is taken compares with the need; absent where nothing of it is needed. */
  readonly excess: Excess | undefined
  /** Whether it is weighed or measured out. */
  readonly by: 'weigh' | 'measure'
  /** What is weighed or measured, as a formula: the hydrate, where a hydrate is weighed. */
  readonly taken: string
  /** In what form it comes: `solid`, `solution`, `stock`, `molal`, `normal` or `liquid`. */
  readonly form: string
  /** Mass fraction of what is taken; absent where it is pure or a solution. */
  readonly assay: Quantity<'ratio'> | undefined
  /** Strength of what is measured; absent for a solid or a pure liquid. */
  readonly concentration: Quantity<'amountConcentration'> | undefined
  /** The mass or volume, unrounded. */
  readonly exactMeasure: Quantity<'mass'> | Quantity<'volume'>
  /** The glassware that a volume is measured with; absent where the recipe names none. */
  readonly vessel: Vessel | undefined
  /** The mass or volume as the instrument can show it. */
  readonly measure: Quantity<'mass'> | Quantity<'volume'>
}

/** One stage as planned. */
export interface PlannedStage {
  /** Its name. */
  readonly name: string
  /** Its balanced equation. */
  readonly equation: Equation
  /** What is done. */
  readonly steps: readonly string[]
  /** Moles of the equation as written. */
  readonly extent: Quantity<'amount'>
  /** What runs out first, as a formula; absent where nothing does. */
  readonly limiting: string | undefined
  /** For a stage that only clears a leftover: of what. */
  readonly clears: string | undefined
  /** What is filtered off, decanted or washed away before it, apart from what there is always enough of. */
  readonly removed: readonly Portion[]
  /** Gases that leave, with their volumes as ideal gases. */
  readonly gases: readonly GasVolume[]
  /** Heat that a strong acid and a strong base release in it, an estimate; absent where no value is known. */
  readonly heat: NeutralisationHeat | undefined
}

/** A preparation planned at one scale: the bench sheet as data. `JSON.stringify` gives the whole of it. */
export interface Plan {
  /** `saltwright/plan@1`. */
  readonly format: 'saltwright/plan@1'
  /** The recipe it was made from: plan it again to get the same plan. */
  readonly recipe: Recipe
  /** What is made, as a formula and in words. */
  readonly product: {
    /** As a formula. */
    readonly formula: string
    /** In words. */
    readonly name: string
    /** Its molar mass. */
    readonly molarMass: Quantity<'molarMass'>
  }
  /** What the amounts follow from. */
  readonly scale: Portion
  /** The stages added up. */
  readonly overall: Equation
  /** The stages, in order. */
  readonly stages: readonly PlannedStage[]
  /** What to weigh and measure, in the order it goes in. */
  readonly supplies: readonly PlannedSupply[]
  /** The supplies that decide how much product there can be, as formulas: usually one. */
  readonly limiting: readonly string[]
  /** The most product there can be. */
  readonly theoretical: {
    /** Its amount. */
    readonly amount: Quantity<'amount'>
    /** Its mass. */
    readonly mass: Quantity<'mass'>
  }
  /** What is in the liquor with the product at the end. */
  readonly leftovers: readonly Portion[]
  /** What cooling should give; absent where the recipe does not say how much water there is. */
  readonly cooling: CoolingEstimate | undefined
  /** What can hurt someone in it, and the usual precautions; the last one defers to those who decide on the spot. */
  readonly cautions: readonly Caution[]
  /** Which atomic weights were used. */
  readonly atomicWeights: string
  /** What a person should see. */
  readonly findings: readonly Finding[]
}
