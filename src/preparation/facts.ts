import type { AtomicWeights } from '../element/index.js'
import type { Equation } from '../equation/index.js'
import type { Formula } from '../formula/index.js'
import type { Fraction } from '../fraction.js'
import type { Change, StageChemistry } from './chemistry.js'
import type { Recipe, RecipeSupply } from './recipe.js'
import type { SubstanceKey } from './substance.js'

/** A supply as read: which substance, where it goes in, and the recipe's own words. */
export interface SupplyFacts {
  /** Its place in the recipe. */
  readonly index: number
  /** The substance, as it is written in sheets. */
  readonly formula: Formula
  /** Its key. */
  readonly key: SubstanceKey
  /** The stage it goes into. */
  readonly stage: number
  /** As the recipe says it. */
  readonly recipe: Exclude<RecipeSupply, { readonly form: 'unlimited' }>
}

/** A recipe that holds together: everything read, every stage balanced, every substance accounted for. */
export interface RecipeFacts {
  /** The recipe as it was handed over. */
  readonly recipe: Recipe
  /** The product. */
  readonly product: Formula
  /** Its key. */
  readonly productKey: SubstanceKey
  /** The stages, in order. */
  readonly stages: readonly StageChemistry[]
  /** How often each stage runs; zero for one that clears a leftover. */
  readonly multipliers: readonly Fraction[]
  /** The main stages added up. */
  readonly overall: Equation
  /** What is taken and measured. */
  readonly supplies: readonly SupplyFacts[]
  /** What there is always enough of. */
  readonly unlimited: ReadonlySet<SubstanceKey>
  /** What the amounts are worked out from; the product where the recipe gives no scale. */
  readonly scaleKey: SubstanceKey
  /** Which atomic weights to use. */
  readonly weights: AtomicWeights
}

/** A recipe as read, before it is known whether its stages hang together. */
export type RecipeDraft = Omit<RecipeFacts, 'multipliers' | 'overall'>

/** The name of a substance of the stages as it is written in their equations. */
export function writtenAs(stages: readonly StageChemistry[], key: SubstanceKey): string {
  const stage = stages.find(({ changes }) => changes.has(key)) as StageChemistry
  return (stage.changes.get(key) as Change).formula
}
