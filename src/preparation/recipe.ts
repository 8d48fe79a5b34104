import type { Operation } from '../cautions/index.js'
import type { GasConditionsName } from '../product/index.js'
import type { AccuracyClass, GlasswareItem, GlasswareStandard } from '../solution/index.js'

/** One step of chemistry in a recipe. */
export interface RecipeStage {
  /** A short name, used in the sheet and to say where a supply goes in. */
  readonly name: string
  /** Its balanced equation. */
  readonly equation: string
  /** What is done, a sentence or a few, for the sheet. */
  readonly steps?: readonly string[]
  /**
   * A stage that only removes what an earlier one left over, such as alkali neutralised before the acid does its own work:
   * the formula of the leftover. Its extent follows from what is there, not from the scale.
   */
  readonly clears?: string
  /** The fraction of the solution that goes on into this stage, such as `0.5`; all of it unless said. */
  readonly aliquot?: string
  /**
   * What is taken away before this stage, as formulas: a solid that is filtered off, what is decanted or washed out of a
   * precipitate, a gas that is boiled out. It takes no part from here on and is not in the liquor at the end.
   */
  readonly removes?: readonly string[]
}

/**
 * What the preparation is scaled by: a chosen amount or mass of one substance, product or supply. Of a supply it is what the stages need
 * when it goes in, before any excess of it; of a product it is the theoretical yield where nothing else limits.
 */
export interface RecipeScale {
  /** The substance, as in the equations. */
  readonly of: string
  /** Its chosen amount: `0.0400 mol`. Give this or `mass`. */
  readonly amount?: string
  /** Its chosen mass: `11.5 g`. Give this or `amount`. */
  readonly mass?: string
}

/** How much of a supply is taken: at most one of the three; exactly the stoichiometric need where none is given. */
export interface SupplyRule {
  /** Times the whole stoichiometric need: `1.10`. */
  readonly excessFactor?: string
  /** Moles per mole of the scale substance: `3`. */
  readonly molesPerMole?: string
  /** The amount, mass or volume that a manual prints: `25 mL`. */
  readonly asPrinted?: string
}

interface SupplyCommon extends SupplyRule {
  /** The substance, as in the equations. */
  readonly substance: string
  /** What it is called on the sheet: `zinc oxide`. */
  readonly name?: string
  /** The stage it goes into; the first that consumes it unless said. */
  readonly stage?: string
  /** With what kind of glassware a volume is measured; the cylinder of the bench unless said. */
  readonly vessel?: RecipeVessel
}

/** A kind of glassware, by whose sizes and tolerances, of which class, and which sizes there are. */
export interface RecipeVessel {
  /** What kind. */
  readonly item: GlasswareItem
  /** Whose sizes and tolerances: they differ. */
  readonly standard: GlasswareStandard
  /** Its class of accuracy; `B` unless said. */
  readonly accuracy?: AccuracyClass
  /** The capacities at hand, such as `25 mL`; every size of the standard unless said. */
  readonly available?: readonly string[]
}

/** A solid that is weighed. */
export interface SolidSupply extends SupplyCommon {
  /** `solid`. */
  readonly form: 'solid'
  /** What is really weighed, where that is not the substance itself: a hydrate for an anhydrous need, a salt for one of its ions. */
  readonly weighedAs?: string
  /** Mass fraction of what is weighed: `99.5 %`; pure unless said. */
  readonly assay?: string
}

/** A solution of known amount concentration. */
export interface SolutionSupply extends SupplyCommon {
  /** `solution`. */
  readonly form: 'solution'
  /** Amount concentration: `3.00 mol/L`. */
  readonly concentration: string
  /** What the preparation room makes it from. */
  readonly madeFrom?: MadeFrom
}

/** What a solution is made from: a stronger solution, a stock by mass fraction and density, or a solid. */
export type MadeFrom =
  | {
      /** Amount concentration of the stronger solution. */
      readonly concentration: string
    }
  | {
      /** Mass fraction of the stock: `96 %`. */
      readonly massFraction: string
      /** Density of the stock: `1.84 g/mL`. */
      readonly density: string
      /** Of what the mass fraction is, where that is not the substance. */
      readonly statedAs?: string
    }
  | {
      /** The solid that is weighed, as a formula: the substance itself or a hydrate of it. */
      readonly solid: string
      /** Mass fraction of the solid; pure unless said. */
      readonly assay?: string
    }

/** A concentrated acid, alkali or other solution by mass fraction and density. */
export interface StockSupply extends SupplyCommon {
  /** `stock`. */
  readonly form: 'stock'
  /** Mass fraction: `96 %`. */
  readonly massFraction: string
  /** Density of the solution: `1.84 g/mL`. */
  readonly density: string
  /** Of what the mass fraction is, where that is not the substance: `NH3` for ammonia written as NH4OH. */
  readonly statedAs?: string
  /** The amount concentration that the label prints beside them, to see whether the label agrees with itself. */
  readonly printedConcentration?: string
}

/** A solution by molality and density. */
export interface MolalSupply extends SupplyCommon {
  /** `molal`. */
  readonly form: 'molal'
  /** Moles per kilogram of solvent: `2.00 mol/kg`. */
  readonly molality: string
  /** Density of the solution: `1.10 g/mL`. */
  readonly density: string
}

/** A solution by normality, as in old manuals, which means something only together with its equivalents per mole. */
export interface NormalSupply extends SupplyCommon {
  /** `normal`. */
  readonly form: 'normal'
  /** Equivalents per litre, as an amount concentration of equivalents: `6 mol/L`. */
  readonly normality: string
  /** Equivalents per mole in this reaction, a whole number: `2` for sulfuric acid that gives both its protons. */
  readonly equivalentsPerMole: string
}

/** A pure liquid measured by volume. */
export interface LiquidSupply extends SupplyCommon {
  /** `liquid`. */
  readonly form: 'liquid'
  /** Density: `0.789 g/mL`. */
  readonly density: string
  /** Mass fraction: `95 %`; pure unless said. */
  readonly assay?: string
}

/** Something there is always enough of and nobody measures: the water of the solution, the oxygen of the air. */
export interface UnlimitedSupply {
  /** `unlimited`. */
  readonly form: 'unlimited'
  /** The substance, as in the equations. */
  readonly substance: string
  /** What it is called on the sheet. */
  readonly name?: string
  /** Not used for an unlimited supply. */
  readonly stage?: string
}

/** A supply in any of its forms. */
export type RecipeSupply =
  | SolidSupply
  | SolutionSupply
  | StockSupply
  | MolalSupply
  | NormalSupply
  | LiquidSupply
  | UnlimitedSupply

/** What is taken and takes no part in the equations: solvent, charcoal, acid against hydrolysis, ethanol that brings crystals down. */
export interface RecipeAuxiliary {
  /** What it is: `95 % ethanol`. */
  readonly name: string
  /** Mass or volume at the scale of the recipe: `20 mL`. */
  readonly amount: string
  /** The stage it goes into. */
  readonly stage?: string
  /** What it is as a formula, for its cautions: `C2H6O` for ethanol. */
  readonly substance?: string
}

/** What the instruments of the bench can show. */
export interface RecipeInstruments {
  /** Readability of the balance: `0.001 g`, which is also the default. */
  readonly balance?: string
  /** Readability of the measuring vessel: `0.1 mL`, which is also the default. */
  readonly cylinder?: string
  /** What the largest measuring vessel holds: `100 mL`. */
  readonly cylinderCapacity?: string
}

/** How the crop is brought down. */
export interface RecipeCrystallisation {
  /** Temperature at which it is filtered: `5 degC`. */
  readonly temperature: string
  /** All the water in the liquor before it is cooled, that of added solutions included: `25 mL`. */
  readonly water?: string
  /** How much of it is boiled off before cooling: `10 mL`. */
  readonly evaporated?: string
}

/** One washing of the crop on the filter. */
export interface RecipeWash {
  /** With what: `cold 95 % ethanol`. */
  readonly with: string
  /** Volume of one portion: `5 mL`. */
  readonly volume: string
  /** How many portions; one unless said. */
  readonly portions?: number
  /** The liquid as a formula, for its cautions: `C2H6O` for ethanol. */
  readonly substance?: string
}

/** What a printed recipe says of itself, checked by the audit: that something limits, that it is in excess by so much, or both. */
export interface RecipeClaim {
  /** The substance it speaks of. */
  readonly of: string
  /** That it is the limiting reagent. */
  readonly limiting?: true
  /** That it is in excess by so much: `14 %`; `0 %` for exactly what is needed. */
  readonly excess?: string
}

/** The chosen relative atomic masses: a named edition, or a course's own table. */
export type RecipeWeights =
  | 'abridged'
  | 'standard'
  | {
      /** What the table is called in results. */
      readonly name: string
      /** Element symbols with their values as text: `63.546`, `63.546(3)`, `[1.00784, 1.00811]`. */
      readonly values: Readonly<Record<string, string>>
      /** Where other elements are looked up: nowhere unless said. */
      readonly extends?: 'abridged' | 'standard'
    }

/**
 * A preparation as plain JSON: what is made, by which stages, from which supplies, at what scale.
 *
 * Numbers are text with their units. What a recipe says is a choice and exact; what records say is measured.
 */
export interface Recipe {
  /** `saltwright/recipe@1`. */
  readonly format: 'saltwright/recipe@1'
  /** What is made, as a heading. */
  readonly title: string
  /** Where it comes from; invented recipes say so. */
  readonly source?: string
  /** Anything else a reader should know. */
  readonly notes?: readonly string[]
  /** The product as a formula: `ZnSO4·7H2O`. */
  readonly product: string
  /** The product in words. */
  readonly productName?: string
  /** What happens, in order. */
  readonly stages: readonly RecipeStage[]
  /** What is taken, in any order. */
  readonly supplies: readonly RecipeSupply[]
  /** What else is taken: solvents and other aids that the equations do not show. */
  readonly auxiliaries?: readonly RecipeAuxiliary[]
  /** What the amounts are worked out from; may be left out where every supply is `asPrinted`. */
  readonly scale?: RecipeScale
  /** What the instruments can show. */
  readonly instruments?: RecipeInstruments
  /** How the crop is brought down. */
  readonly crystallisation?: RecipeCrystallisation
  /** How it is washed. */
  readonly washes?: readonly RecipeWash[]
  /** What is done beside dissolving, cooling and filtering, for the cautions: `boil`, `hot plate`, `evaporate` ... */
  readonly operations?: readonly Operation[]
  /** How it is dried, in words. */
  readonly drying?: string
  /** At what temperature and pressure gas volumes are stated; `"25 °C, 100 kPa"` unless said. */
  readonly gasAt?: GasConditionsName
  /** What the printed recipe claims. */
  readonly claims?: readonly RecipeClaim[]
  /** Relative atomic masses; `"abridged"` unless said. */
  readonly atomicWeights?: RecipeWeights
}
