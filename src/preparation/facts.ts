import type { AtomicWeights } from '../element/index.js'
import { checkBalance, type Equation, parseEquation } from '../equation/index.js'
import type { ErrorDetails } from '../errors.js'
import { type Formula, parseFormula } from '../formula/index.js'
import { type Fraction, fraction } from '../fraction.js'
import { exact, type Quantity } from '../quantity/index.js'
import { speciesKey } from '../stoichiometry/index.js'
import {
  chainMultipliers,
  changesOf,
  changesStatesOnly,
  makes,
  neutralisationIn,
  overallOf,
  type StageChemistry,
  startOf,
  timesOfStateChange,
  uses,
} from './chemistry.js'
import { type Path, problem } from './problem.js'
import { problemsError, readJson, writePath } from './read-json.js'
import type { Recipe, RecipeStage, RecipeSupply, SupplyRule } from './recipe.js'
import { recipeSchema } from './recipe-schema.js'
import { stageProblems } from './stage-problems.js'
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

/** Reads a recipe and checks that it holds together; every mistake is in the one error. */
export function readRecipe(input: unknown): RecipeFacts {
  const recipe = readJson(recipeSchema, input, 'recipe')
  const problems: ErrorDetails[] = [...scaleProblems(recipe), ...supplyProblems(recipe), ...balanceProblems(recipe)]
  if (problems.length > 0) throw problemsError('recipe', problems)
  const draft = draftOf(recipe)
  problems.push(...linkProblems(draft))
  if (problems.length > 0) throw problemsError('recipe', problems)
  const multipliers = multipliersOf(draft, problems)
  if (problems.length > 0) throw problemsError('recipe', problems)
  return { ...draft, multipliers, overall: overallOf(draft.stages, multipliers) }
}

type Draft = Omit<RecipeFacts, 'multipliers' | 'overall'>

function draftOf(recipe: Recipe): Draft {
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

function scaleProblems({ scale, supplies }: Recipe): readonly ErrorDetails[] {
  if (scale === undefined) {
    const open = supplies.findIndex((supply) => supply.form !== 'unlimited' && supply.asPrinted === undefined)
    if (open < 0) return []
    return [
      problem(
        'preparation/no-amount-rule',
        ['scale'],
        'scale: missing, and not every supply is given as printed.',
        'nothing',
        'a scale, or asPrinted for every supply',
      ),
    ]
  }
  const both = scale.amount !== undefined && scale.mass !== undefined
  if (both)
    return [
      problem(
        'preparation/two-amount-rules',
        ['scale'],
        'scale: both an amount and a mass are given.',
        'amount and mass',
        'one of the two',
      ),
    ]
  if (scale.amount !== undefined || scale.mass !== undefined || isPrinted(scale.of, supplies)) return []
  return [
    problem(
      'preparation/no-amount-rule',
      ['scale'],
      'scale: neither an amount nor a mass is given.',
      'neither',
      'amount: "0.0400 mol" or mass: "11.5 g"',
    ),
  ]
}

function isPrinted(of: string, supplies: readonly RecipeSupply[]): boolean {
  const key = speciesKey(of)
  return supplies.some(
    (supply) => supply.form !== 'unlimited' && supply.asPrinted !== undefined && speciesKey(supply.substance) === key,
  )
}

const rules = ['excessFactor', 'molesPerMole', 'asPrinted'] as const satisfies readonly (keyof SupplyRule)[]

function supplyProblems({ supplies, auxiliaries = [], stages }: Recipe): readonly ErrorDetails[] {
  const twice = supplies.flatMap((supply, index) => {
    const given = supply.form === 'unlimited' ? [] : rules.filter((rule) => supply[rule] !== undefined)
    return given.length > 1 ? [twoRules(['supplies', index], given)] : []
  })
  const unknown = Object.entries({ supplies, auxiliaries }).flatMap(([key, list]) =>
    list.flatMap(({ stage }, index) =>
      stage === undefined || stages.some(({ name }) => name === stage)
        ? []
        : [unknownStage([key, index], stage, stages)],
    ),
  )
  return [...twice, ...unknown]
}

function twoRules(path: Path, given: readonly string[]): ErrorDetails {
  return problem(
    'preparation/two-amount-rules',
    path,
    `supplies[${path[1]}]: ${given.join(' and ')} say the same thing twice.`,
    given.join(', '),
    `at most one of ${rules.join(', ')}`,
  )
}

function unknownStage(path: Path, name: string, stages: Recipe['stages']): ErrorDetails {
  const names = stages.map((stage) => stage.name).join(', ')
  return problem(
    'preparation/unknown-stage',
    [...path, 'stage'],
    `${writePath(path)}: there is no stage "${name}".`,
    name,
    names,
  )
}

function balanceProblems({ stages }: Recipe): readonly ErrorDetails[] {
  return stages.flatMap(({ equation }, index) => {
    const result = checkBalance(equation)
    if (result.balanced) return []
    const off = result.elements.filter(
      ({ left, right }) => left.numerator * right.denominator !== right.numerator * left.denominator,
    )
    const found = off.map(({ symbol }) => symbol).join(', ') || 'the charge'
    return [
      problem(
        'preparation/unbalanced-stage',
        ['stages', index, 'equation'],
        `stages[${index}].equation: not balanced in ${found}.`,
        equation,
        'a balanced equation',
        result.suggestion?.toString(),
      ),
    ]
  })
}

function linkProblems(draft: Draft): readonly ErrorDetails[] {
  return [...productProblems(draft), ...unusedProblems(draft), ...missingProblems(draft), ...stageProblems(draft)]
}

const main = (stages: readonly StageChemistry[]): readonly StageChemistry[] =>
  stages.filter(({ clears }) => clears === undefined)

function productProblems({ stages, productKey, scaleKey, recipe }: Draft): readonly ErrorDetails[] {
  const written = stages.flatMap((stage) => [...stage.changes.values()].filter(({ moles }) => moles.numerator > 0n))
  const names = [...new Set(written.map(({ formula }) => formula))].join(', ')
  const made = main(stages).some((stage) => makes(stage, productKey))
  const product = made
    ? []
    : [
        problem(
          'preparation/product-not-made',
          ['product'],
          `product: no stage makes ${recipe.product}.`,
          recipe.product,
          `one of ${names}`,
        ),
      ]
  const scaled = main(stages).some(({ changes }) => changes.has(scaleKey))
  if (scaled || recipe.scale === undefined) return product
  return [
    ...product,
    problem(
      'preparation/scale-not-in-stages',
      ['scale', 'of'],
      `scale.of: ${recipe.scale.of} is in no stage.`,
      recipe.scale.of,
      'a substance of the equations',
    ),
  ]
}

function unusedProblems({ supplies, stages }: Draft): readonly ErrorDetails[] {
  return supplies.flatMap(({ key, index, recipe, stage }) => {
    const path = ['supplies', index]
    const first = supplies.find((other) => other.key === key && other.stage === stage)
    if (first !== undefined && first.index !== index) {
      return [
        problem(
          'preparation/supply-twice',
          path,
          `supplies[${index}]: ${recipe.substance} goes into the same stage twice.`,
          recipe.substance,
          'each supply once a stage',
        ),
      ]
    }
    if (stages.slice(Math.max(stage, 0)).some((each) => uses(each, key))) return []
    return [
      problem(
        'preparation/unused-supply',
        path,
        `supplies[${index}]: no stage uses ${recipe.substance} from there on.`,
        recipe.substance,
        'a substance on the left of a stage',
      ),
    ]
  })
}

/** What a stage uses must be supplied, always there, or made before. */
function missingProblems({ stages, supplies, unlimited }: Draft): readonly ErrorDetails[] {
  const there = new Set([...unlimited, ...supplies.map(({ key }) => key)])
  return stages.flatMap((stage, index) => {
    const missing = [...stage.changes].filter(([key]) => uses(stage, key) && !there.has(key))
    for (const key of stage.changes.keys()) there.add(key)
    for (const key of stages[index + 1]?.removes ?? [])
      if (!supplies.some((supply) => supply.key === key && supply.stage > index)) there.delete(key)
    return missing.map(([, { formula }]) =>
      problem(
        'preparation/missing-supply',
        ['stages', index, 'equation'],
        `stages[${index}]: nothing supplies ${formula}.`,
        formula,
        'a supply, or an earlier stage that makes it',
      ),
    )
  })
}

/** What one main stage makes and another uses, and nobody supplies. */
function intermediatesOf({ stages, supplies, unlimited, productKey }: Draft): readonly SubstanceKey[] {
  const supplied = new Set([...unlimited, ...supplies.map(({ key }) => key), productKey])
  const keys = new Set(main(stages).flatMap(({ changes }) => [...changes.keys()]))
  return [...keys].filter(
    (key) => !supplied.has(key) && main(stages).some((s) => makes(s, key)) && main(stages).some((s) => uses(s, key)),
  )
}

function multipliersOf(draft: Draft, problems: ErrorDetails[]): readonly Fraction[] {
  const { stages } = draft
  const chain = main(stages).filter((stage) => !changesStatesOnly(stage))
  const answers = chainMultipliers(stages, chain, intermediatesOf(draft))
  const [answer] = answers
  if (answer === undefined || answers.length > 1) {
    problems.push(
      problem(
        'preparation/stages-not-linked',
        ['stages'],
        'stages: how often each runs does not follow from the others.',
        `${answers.length} independent ways`,
        'each stage making what a later one uses',
      ),
    )
    return []
  }
  const sign = answer.some((each) => each < 0n) ? -1n : 1n
  if (answer.some((each) => each * sign <= 0n)) {
    problems.push(
      problem(
        'preparation/stages-contradict',
        ['stages'],
        'stages: one would have to run backwards or not at all.',
        answer.join(', '),
        'stages that lead to the product',
      ),
    )
    return []
  }
  const times = stages.map((stage) => fraction((answer[chain.indexOf(stage)] ?? 0n) * sign))
  return stages.map((stage, index) =>
    changesStatesOnly(stage) && !draft.unlimited.has(startOf(stage).key)
      ? timesOfStateChange(stages, times, index)
      : (times[index] as Fraction),
  )
}

/** The name of a substance as it is written in the equations. */
export function writtenAs(stages: readonly StageChemistry[], key: SubstanceKey): string {
  for (const { changes } of stages) {
    const change = changes.get(key)
    if (change !== undefined) return change.formula
  }
  return key
}
