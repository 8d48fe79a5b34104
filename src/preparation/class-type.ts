import type { Quantity } from '../quantity/index.js'
import type { Finding } from './finding.js'
import type { Plan } from './plan-type.js'
import type { RecipeScale } from './recipe.js'

/** One bench of a class with its own scale. */
export interface Bench {
  /** What it is called: `Bench 1`. */
  readonly name: string
  /** Its chosen amount or mass; `of` may be left out where it is the recipe's own. */
  readonly scale: Omit<RecipeScale, 'of'> & {
    /** The substance; that of the recipe unless said. */
    readonly of?: string
  }
}

/** How a class is planned. */
export interface ClassOptions {
  /** What is prepared beyond the benches' own need: so many more benches of average need, or a per cent. None unless said. */
  readonly spare?:
    | {
        /** So many more benches of average need. */
        readonly benches: number
      }
    | {
        /** So much more, at most 100 %: `10 %`. */
        readonly percent: string
      }
  /** Sizes that totals are rounded up to multiples of: `500 mL` for solutions and liquids, `25 g` for solids. */
  readonly containers?: {
    /** For solutions and liquids: `500 mL`. */
    readonly volume?: string
    /** For solids: `25 g`. */
    readonly mass?: string
  }
}

/** The plan of one bench. */
export interface BenchPlan {
  /** Whose. */
  readonly name: string
  /** The plan at its scale. */
  readonly plan: Plan
}

/** One line of the list for the preparation room. */
export interface StoreLine {
  /** The substance, as in the equations. */
  readonly substance: string
  /** What it is called. */
  readonly name: string
  /** What is taken, as a formula. */
  readonly taken: string
  /** In what form it comes. */
  readonly form: string
  /** Strength of what is measured; absent for a solid or a pure liquid. */
  readonly concentration: Quantity<'amountConcentration'> | undefined
  /** What the benches need together. */
  readonly total: Quantity<'mass'> | Quantity<'volume'>
  /** The same with the spare. */
  readonly withSpare: Quantity<'mass'> | Quantity<'volume'>
  /** The same, rounded up to whole containers; to what a balance or a cylinder shows where no container size was given. */
  readonly toPrepare: Quantity<'mass'> | Quantity<'volume'>
  /** The amount of substance in what is prepared. */
  readonly amount: Quantity<'amount'>
  /** How a solution is made up, where the recipe says from what. */
  readonly making: Making | undefined
}

/** Something else on the list: a solvent, an aid or a wash, which no equation shows. */
export interface AidLine {
  /** What it is called in the recipe. */
  readonly name: string
  /** What the benches need together. */
  readonly total: Quantity<'mass'> | Quantity<'volume'>
  /** The same with the spare. */
  readonly withSpare: Quantity<'mass'> | Quantity<'volume'>
  /** The same, rounded up to whole containers; to what a balance or a cylinder shows where no container size was given. */
  readonly toPrepare: Quantity<'mass'> | Quantity<'volume'>
}

/** How the preparation room makes up a solution. */
export interface Making {
  /** What is taken: a stock by volume or a solid by mass. */
  readonly from: string
  /** Its strength, as the recipe says it: mass fraction and density, concentration, or assay; nothing for a pure solid. */
  readonly strength: readonly Quantity[]
  /** How much of it. */
  readonly take: Quantity<'mass'> | Quantity<'volume'>
  /** What it is made up to. */
  readonly makeUpTo: Quantity<'volume'>
  /** True for a concentrated stock: the stock goes into most of the water, slowly, never the other way round. */
  readonly stockIntoWater: boolean
}

/** What leaves a class of one metal, at most: everything that went in and is not in the product. */
export interface MetalWaste {
  /** The element. */
  readonly metal: string
  /** What went in, in all. */
  readonly used: Quantity<'amount'>
  /** What is in the product at the theoretical yield. */
  readonly inProduct: Quantity<'amount'>
  /** The difference: what is in the liquors even where every crystal is recovered. */
  readonly inLiquor: Quantity<'amount'>
}

/** A whole class: the plan of every bench, and what the preparation room gets ready. */
export interface ClassPlan {
  /** `saltwright/class-plan@1`. */
  readonly format: 'saltwright/class-plan@1'
  /** What is made. */
  readonly title: string
  /** Every bench, in order. */
  readonly benches: readonly BenchPlan[]
  /** What to get ready. */
  readonly store: readonly StoreLine[]
  /** What else to get ready: solvents, aids and washes. */
  readonly aids: readonly AidLine[]
  /** Metals that leave as waste. */
  readonly waste: readonly MetalWaste[]
  /** Volume of solutions and liquids that the benches use, all of it waste unless it evaporates. */
  readonly liquidWaste: Quantity<'volume'>
  /** What a person should see. */
  readonly findings: readonly Finding[]
}
