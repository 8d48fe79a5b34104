import { checkBalance } from '../equation/index.js'
import type { ErrorDetails } from '../errors.js'
import { type Dimension, exact, type Quantity } from '../quantity/index.js'
import { speciesKey } from '../stoichiometry/index.js'
import { type Path, problem } from './problem.js'
import { writePath } from './read-json.js'
import type { Recipe, RecipeSupply, SupplyRule } from './recipe.js'
import { measuredBy } from './supply.js'

/** What is wrong with a recipe as it is written, before its stages are put together. */
export function recipeProblems(recipe: Recipe): readonly ErrorDetails[] {
  return [
    ...scaleProblems(recipe),
    ...stageNameProblems(recipe),
    ...supplyProblems(recipe),
    ...printedProblems(recipe),
    ...balanceProblems(recipe),
    ...claimProblems(recipe),
  ]
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

/** Supplies and records say by its name which stage they mean. */
function stageNameProblems({ stages }: Recipe): readonly ErrorDetails[] {
  const names = stages.map(({ name }) => name)
  return names.flatMap((name, index) => {
    const first = names.indexOf(name)
    if (first === index) return []
    const message = `stages[${index}].name: stages[${first}] is called "${name}" too.`
    return [problem('preparation/stage-twice', ['stages', index, 'name'], message, name, 'a name of its own')]
  })
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

/** A manual cannot print a volume of a solid, nor a mass of a solution: nobody could tell the amount. */
function printedProblems({ supplies }: Recipe): readonly ErrorDetails[] {
  return supplies.flatMap((supply, index) => {
    if (supply.form === 'unlimited' || supply.asPrinted === undefined) return []
    const { dimension } = exact(supply.asPrinted) as Quantity
    const allowed: readonly Dimension[] = ['amount', ...measuredBy(supply.form)]
    if (allowed.includes(dimension)) return []
    return [
      problem(
        'preparation/wrong-dimension',
        ['supplies', index, 'asPrinted'],
        `supplies[${index}].asPrinted: a ${dimension} of ${supply.substance}, which comes as ${supply.form}, does not tell its amount.`,
        supply.asPrinted,
        allowed.join(' or '),
      ),
    ]
  })
}

/** A claim that claims nothing would hold whatever the amounts. */
function claimProblems({ claims = [] }: Recipe): readonly ErrorDetails[] {
  return claims.flatMap(({ of, limiting, excess }, index) => {
    if (limiting !== undefined || excess !== undefined) return []
    const message = `claims[${index}]: nothing is claimed of ${of}.`
    return [problem('preparation/missing', ['claims', index], message, 'neither', 'limiting: true, or excess: "14 %"')]
  })
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
