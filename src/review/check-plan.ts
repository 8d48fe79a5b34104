import { showFound } from '../errors.js'
import type { Plan } from '../preparation/index.js'
import { isQuantity } from '../quantity/index.js'
import { ReviewError } from './review-error.js'

/** A plan as `planPreparation` makes it; stored as JSON it is planned again from its recipe. */
export function checkPlan(plan: unknown): Plan {
  if (isPlan(plan)) return plan
  throw new ReviewError({
    code: 'review/not-a-plan',
    message: `${showFound(plan)} is not the plan of a preparation.`,
    found: showFound(plan),
    expected: 'what planPreparation gives',
    hint: 'A plan that was stored as JSON is made again by planPreparation, from the recipe in it.',
  })
}

function isPlan(plan: unknown): plan is Plan {
  if (typeof plan !== 'object' || plan === null) return false
  const { format, theoretical } = plan as {
    readonly format?: unknown
    readonly theoretical?: { readonly mass?: unknown }
  }
  return format === 'saltwright/plan@1' && isQuantity(theoretical?.mass)
}
