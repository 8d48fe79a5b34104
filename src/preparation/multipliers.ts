import { type Fraction, fraction } from '../fraction.js'
import {
  chainMultipliers,
  changesStatesOnly,
  mainStages,
  makes,
  startOf,
  timesOfStateChange,
  uses,
} from './chemistry.js'
import type { RecipeDraft } from './facts.js'
import { problem } from './problem.js'
import { problemsError } from './read-json.js'
import type { SubstanceKey } from './substance.js'

/** What one main stage makes and another uses, and nobody supplies. */
function intermediatesOf({ stages, supplies, unlimited, productKey }: RecipeDraft): readonly SubstanceKey[] {
  const supplied = new Set([...unlimited, ...supplies.map(({ key }) => key), productKey])
  const keys = new Set(mainStages(stages).flatMap(({ changes }) => [...changes.keys()]))
  return [...keys].filter(
    (key) =>
      !supplied.has(key) &&
      mainStages(stages).some((s) => makes(s, key)) &&
      mainStages(stages).some((s) => uses(s, key)),
  )
}

/** How often each stage runs, without a common scale. */
export function multipliersOf(draft: RecipeDraft): readonly Fraction[] {
  const { stages } = draft
  const chain = mainStages(stages).filter((stage) => !changesStatesOnly(stage))
  const answers = chainMultipliers(stages, chain, intermediatesOf(draft))
  const [answer] = answers
  if (answer === undefined || answers.length > 1) throw notLinked(answers.length)
  if (answer.some((each) => each <= 0n)) throw contradiction(answer)
  const times = stages.map((stage) => fraction(answer[chain.indexOf(stage)] ?? 0n))
  return stages.map((stage, index) =>
    changesStatesOnly(stage) && !draft.unlimited.has(startOf(stage).key)
      ? timesOfStateChange(stages, times, index)
      : (times[index] as Fraction),
  )
}

function notLinked(ways: number): Error {
  return problemsError('recipe', [
    problem(
      'preparation/stages-not-linked',
      ['stages'],
      'stages: how often each runs does not follow from the others.',
      `${ways} independent ways`,
      'each stage making what a later one uses',
    ),
  ])
}

function contradiction(answer: readonly bigint[]): Error {
  return problemsError('recipe', [
    problem(
      'preparation/stages-contradict',
      ['stages'],
      'stages: one would have to run backwards or not at all.',
      answer.join(', '),
      'stages that lead to the product',
    ),
  ])
}
