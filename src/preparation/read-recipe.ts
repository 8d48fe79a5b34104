import { parseEquation } from '../equation/index.js'
import type { ErrorDetails } from '../errors.js'
import { parseFormula } from '../formula/index.js'
import { type Fraction, fraction } from '../fraction.js'
import { exact, type Quantity } from '../quantity/index.js'
import { speciesKey } from '../stoichiometry/index.js'
import { changesOf, neutralisationIn, overallOf, type StageChemistry, uses } from './chemistry.js'
import type { RecipeDraft, RecipeFacts, SupplyFacts } from './facts.js'
import { linkProblems } from './link-problems.js'
import { measureProblems } from './measure-problems.js'
import { multipliersOf } from './multipliers.js'
import { problemsError, readJson } from './read-json.js'
import type { Recipe, RecipeStage, RecipeSupply } from './recipe.js'
import { recipeProblems } from './recipe-problems.js'
import { recipeSchema } from './recipe-schema.js'
import type { SubstanceKey } from './substance.js'

/** Reads a recipe and checks that it holds together; every mistake is in the one error. */
export function readRecipe(input: unknown): RecipeFacts {
  const recipe = readJson(recipeSchema, input, 'recipe')
  refuse(recipeProblems(recipe))
  const draft = draftOf(recipe)
  refuse([...linkProblems(draft), ...measureProblems(draft)])
  const multipliers = multipliersOf(draft)
  return { ...draft, multipliers, overall: overallOf(draft.stages, multipliers) }
}

function refuse(problems: readonly ErrorDetails[]): void {
  if (problems.length > 0) throw problemsError('recipe', problems)
}

function draftOf(recipe: Recipe): RecipeDraft {
  const stages = recipe.stages.map(stageChemistry)
  const product = parseFormula(recipe.product)
  const unlimited = new Set([speciesKey('H2O')])
  const supplies: SupplyFacts[] = []
  for (const [index, supply] of recipe.supplies.entries()) {
    const formula = parseFormula(supply.substance)
    const key = speciesKey(formula)
    if (supply.form === 'unlimited') unlimited.add(key)
    else supplies.push({ index, formula, key, stage: stageOf(supply, stages, key), recipe: supply })
  }
  for (const { key } of supplies) unlimited.delete(key)
  return {
    recipe,
    product,
    productKey: speciesKey(product),
    stages,
    supplies,
    unlimited,
    scaleKey: recipe.scale === undefined ? speciesKey(product) : speciesKey(recipe.scale.of),
    weights: recipe.atomicWeights ?? 'abridged',
  }
}

function stageChemistry({ name, equation, clears, aliquot, removes = [] }: RecipeStage): StageChemistry {
  const read = parseEquation(equation)
  const changes = changesOf(read)
  return {
    name,
    equation: read,
    changes,
    neutralisation: neutralisationIn(read, changes),
    clears: clears && speciesKey(clears),
    aliquot: aliquot === undefined ? fraction(1n) : fractionOfText(aliquot),
    removes: new Set(removes.map((formula) => speciesKey(formula))),
  }
}

/** The exact fraction that a decimal text or a per cent says. */
function fractionOfText(text: string): Fraction {
  const share = (exact(text) as Quantity as Quantity<'ratio'>).to('1').value
  const decimals = share.decimalPlaces()
  return fraction(BigInt(share.times(`1e${decimals}`).toFixed(0)), 10n ** BigInt(decimals))
}

function stageOf(supply: RecipeSupply, stages: readonly StageChemistry[], key: SubstanceKey): number {
  if (supply.stage !== undefined) return stages.findIndex(({ name }) => name === supply.stage)
  return stages.findIndex((stage) => uses(stage, key))
}
