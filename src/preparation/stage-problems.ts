import type { ErrorDetails } from '../errors.js'
import { speciesKey } from '../stoichiometry/index.js'
import { type StageChemistry, uses } from './chemistry.js'
import type { RecipeFacts } from './facts.js'
import { problem } from './problem.js'

type Stages = Pick<RecipeFacts, 'stages' | 'supplies' | 'recipe'>

/** What stages say of leftovers has to be about something that is there. */
export function stageProblems(facts: Stages): readonly ErrorDetails[] {
  return [...clearsProblems(facts), ...removesProblems(facts)]
}

/** A stage that clears a leftover has to use it up. */
function clearsProblems({ stages, recipe }: Stages): readonly ErrorDetails[] {
  return recipe.stages.flatMap(({ clears, equation }, index) => {
    const stage = stages[index] as StageChemistry
    if (clears === undefined || uses(stage, speciesKey(clears))) return []
    const path = ['stages', index, 'clears']
    return [
      problem(
        'preparation/clears-nothing',
        path,
        `stages[${index}].clears: the equation does not use ${clears} up.`,
        clears,
        `a substance on the left of ${equation}`,
      ),
    ]
  })
}

/** What is taken away before a stage has to have come in before it. */
function removesProblems({ stages, supplies, recipe }: Stages): readonly ErrorDetails[] {
  return recipe.stages.flatMap(({ removes = [] }, index) => {
    const before = new Set([
      ...stages.slice(0, index).flatMap(({ changes }) => [...changes.keys()]),
      ...supplies.filter(({ stage }) => stage < index).map(({ key }) => key),
    ])
    return removes.flatMap((formula, at) =>
      before.has(speciesKey(formula))
        ? []
        : [
            problem(
              'preparation/removes-nothing',
              ['stages', index, 'removes', at],
              `stages[${index}].removes[${at}]: no earlier stage has ${formula}.`,
              formula,
              'a substance of an earlier stage',
            ),
          ],
    )
  })
}
