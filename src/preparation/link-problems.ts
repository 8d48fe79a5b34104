import type { ErrorDetails } from '../errors.js'
import { changesStatesOnly, mainStages, makes, uses } from './chemistry.js'
import type { RecipeDraft } from './facts.js'
import { problem } from './problem.js'
import { stageProblems } from './stage-problems.js'

/** What does not fit together between the stages, the supplies, the product and the scale. */
export function linkProblems(draft: RecipeDraft): readonly ErrorDetails[] {
  return [
    ...productProblems(draft),
    ...unusedProblems(draft),
    ...missingProblems(draft),
    ...limitProblems(draft),
    ...stageProblems(draft),
  ]
}

function productProblems({ stages, productKey, scaleKey, recipe }: RecipeDraft): readonly ErrorDetails[] {
  const written = stages.flatMap((stage) => [...stage.changes.values()].filter(({ moles }) => moles.numerator > 0n))
  const names = [...new Set(written.map(({ formula }) => formula))].join(', ')
  const made = mainStages(stages).some((stage) => makes(stage, productKey))
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
  const scaled = mainStages(stages).some(({ changes }) => changes.has(scaleKey))
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

function unusedProblems({ supplies, stages }: RecipeDraft): readonly ErrorDetails[] {
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
function missingProblems({ stages, supplies, unlimited }: RecipeDraft): readonly ErrorDetails[] {
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

/** Of what a stage uses, at least one must be measured or made, or nothing says how far it goes. */
function limitProblems({ stages, unlimited }: RecipeDraft): readonly ErrorDetails[] {
  return stages.flatMap((stage, index) => {
    const used = [...stage.changes.keys()].filter((key) => uses(stage, key))
    if (changesStatesOnly(stage) || used.some((key) => !unlimited.has(key))) return []
    return [
      problem(
        'preparation/nothing-limits',
        ['stages', index, 'equation'],
        `stages[${index}]: it uses only what there is always enough of, so nothing says how far it goes.`,
        stage.equation.text,
        'at least one substance that is measured, or made before',
      ),
    ]
  })
}
