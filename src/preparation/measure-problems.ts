import { atomicWeightSet } from '../element/index.js'
import { attempt, type ErrorDetails } from '../errors.js'
import { molarMass } from '../formula/index.js'
import { dilution, vesselFor } from '../solution/index.js'
import type { RecipeDraft, SupplyFacts } from './facts.js'
import { sourceOf } from './making.js'
import type { Path } from './problem.js'
import { writePath } from './read-json.js'
import type { RecipeVessel } from './recipe.js'
import { chosen, measureOf } from './supply.js'

/** What stands in the way of weighing and measuring: atomic weights, strengths and glassware that do not go with the recipe. */
export function measureProblems({ recipe, supplies, product, weights }: RecipeDraft): readonly ErrorDetails[] {
  const inSet = typeof weights === 'string' ? [] : problemsOf(['atomicWeights'], () => atomicWeightSet(weights))
  if (inSet.length > 0) return inSet
  const { scale } = recipe
  return [
    ...problemsOf(['product'], () => molarMass(product, { weights })),
    ...(scale?.mass === undefined ? [] : problemsOf(['scale', 'of'], () => molarMass(scale.of, { weights }))),
    ...supplies.flatMap((supply) => supplyProblems(supply, weights)),
  ]
}

function supplyProblems(supply: SupplyFacts, weights: RecipeDraft['weights']): readonly ErrorDetails[] {
  const path = ['supplies', supply.index]
  const { recipe } = supply
  const found = problemsOf(path, () => measureOf(supply, weights))
  if (found.length > 0) return found
  return [
    ...problemsOf([...path, 'madeFrom'], () => checkSource(supply, weights)),
    ...(recipe.vessel === undefined ? [] : vesselProblems([...path, 'vessel'], recipe.vessel)),
  ]
}

/** A solution is made from a stronger one, or from a solid. */
function checkSource(supply: SupplyFacts, weights: RecipeDraft['weights']): void {
  const { recipe } = supply
  if (recipe.form !== 'solution' || recipe.madeFrom === undefined) return
  const source = measureOf({ ...supply, recipe: sourceOf(recipe.substance, recipe.madeFrom) }, weights)
  const to = chosen(recipe.concentration, 'amountConcentration')
  if (source.concentration !== undefined) dilution({ from: source.concentration, to, volume: '1 L' })
}

function vesselProblems(path: Path, vessel: RecipeVessel): readonly ErrorDetails[] {
  return problemsOf(path, () => vesselFor('1 mL', vessel as Parameters<typeof vesselFor>[1]))
}

/** The mistakes that a part of the library finds, each at its place in the recipe. */
function problemsOf(path: Path, look: () => unknown): readonly ErrorDetails[] {
  const outcome = attempt(look)
  if (outcome.ok) return []
  return (outcome.error.problems ?? [outcome.error]).map((error) => {
    const { code, message, found, expected, hint } = error
    const at = [...path, ...(error.path ?? [])]
    return { code, message: `${writePath(at)}: ${message}`, path: at, found, expected, hint }
  })
}
