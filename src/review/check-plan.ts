import { showFound, unlessForged } from '../errors.js'
import type { Assessment, Plan } from '../preparation/index.js'
import { isQuantity } from '../quantity/index.js'
import { ReviewError } from './review-error.js'
import type { Question, Worksheet } from './worksheet.js'

type Fields = Readonly<Record<string, unknown>>

function isObject(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null
}

/** A plan as `planPreparation` makes it; stored as JSON it is planned again from its recipe. */
export function checkPlan(plan: unknown): Plan {
  if (
    unlessForged(
      () => isPlan(plan),
      (cause) => notAPlan(plan, cause),
    )
  )
    return plan as Plan
  throw notAPlan(plan)
}

/** Makes something of a plan and of what goes with it; where a forged one gives something that cannot be used, it is none. */
export function madeOf<T>(plan: Plan, make: () => T, isUsable: (made: T) => boolean): T {
  const usable = (): T => {
    const made = make()
    if (isUsable(made)) return made
    throw notAPlan(plan)
  }
  return unlessForged(usable, (cause) => notAPlan(plan, cause))
}

function notAPlan(found: unknown, cause?: unknown): ReviewError {
  return new ReviewError(
    {
      code: 'review/not-a-plan',
      message: `${showFound(found)} is not the plan of a preparation.`,
      found: showFound(found),
      expected: 'what planPreparation gives',
      hint: 'A plan that was stored as JSON is made again by planPreparation, from the recipe in it.',
    },
    cause,
  )
}

function isPlan(plan: unknown): plan is Plan {
  if (!isObject(plan) || plan.format !== 'saltwright/plan@1' || !isObject(plan.theoretical)) return false
  return isQuantity(plan.theoretical.mass)
}

/** An assessment as `assessPreparation` makes it, or none. */
export function checkAssessment(assessment: unknown): Assessment | undefined {
  if (assessment === undefined || isAssessment(assessment)) return assessment
  throw new ReviewError({
    code: 'review/not-an-assessment',
    message: `${showFound(assessment)} is not the assessment of a preparation.`,
    found: showFound(assessment),
    expected: 'what assessPreparation gives',
  })
}

function isAssessment(value: unknown): value is Assessment {
  return isObject(value) && value.format === 'saltwright/assessment@1' && isQuantity(value.percentYield)
}

/** Whether something is the questions of a worksheet, and not the plan that they are made from. */
export function isWorksheet(value: unknown): value is Worksheet {
  if (!isObject(value) || typeof value.title !== 'string' || !isObject(value.context)) return false
  return Array.isArray(value.questions) && value.questions.every(isQuestion)
}

function isQuestion(value: unknown): value is Question {
  if (!isObject(value) || typeof value.id !== 'string') return false
  if (value.kind === 'quantity') return isQuantity(value.expected)
  return (
    value.kind === 'choice' &&
    Array.isArray(value.right) &&
    Array.isArray(value.choices) &&
    value.choices.every(isChoice)
  )
}

function isChoice(value: unknown): boolean {
  if (!isObject(value) || typeof value.formula !== 'string' || typeof value.name !== 'string') return false
  const { others = [] } = value
  return Array.isArray(others) && others.every((each) => typeof each === 'string')
}
