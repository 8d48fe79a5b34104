import type { Equation } from '../equation/index.js'
import type { Assessment, Plan } from '../preparation/index.js'
import { asDimension, type Quantity } from '../quantity/index.js'
import { checkObject, isContext } from './check-options.js'
import { checkAssessment, checkPlan, madeOf } from './check-plan.js'
import type { ReactantAtHand, ReviewContext } from './context.js'
import { aliquots, excessFactors, stepRatios, strengths, weighings } from './numbers-at-hand.js'

/** What was at hand beside a plan. */
export interface PlanContextOptions {
  /** What the bench recorded: its tares, its earlier weighings, what it really used. */
  readonly assessment?: Assessment | undefined
  /** The same preparation as it is printed, where the plan is at another scale. */
  readonly printed?: Plan | undefined
}

/**
 * What a person who works by a plan has at hand, and may take by mistake: the other reactants, the strengths of other bottles, excess
 * factors, ratios of single steps, aliquots, other tares, earlier weighings, the equations and formulas of the recipe.
 *
 * @param plan - The plan.
 * @param options - The assessment, for what was weighed; the plan at the printed scale.
 * @returns The context for {@link reviewAnswer}.
 * @throws {@link ReviewError} `review/not-a-plan` for anything but a plan that `planPreparation` made;
 *   `review/not-an-assessment`.
 *
 * @example
 * ```ts
 * import { planPreparation } from 'saltwright/preparation'
 * import { contextOf, reviewAnswer } from 'saltwright/review'
 *
 * const plan = planPreparation({
 *   format: 'saltwright/recipe@1',
 *   title: 'Zinc sulfate heptahydrate',
 *   product: 'ZnSO4·7H2O',
 *   scale: { of: 'ZnO', amount: '0.0400 mol' },
 *   stages: [{ name: 'dissolve and crystallise', equation: 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O' }],
 *   supplies: [
 *     { form: 'solid', substance: 'ZnO' },
 *     { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
 *   ],
 * })
 * const review = reviewAnswer(plan.theoretical.mass, '12.65 g', { context: contextOf(plan) })
 * review.candidates.map(({ slips: [name] }) => name) // => ['excess-reagent-limits', 'excess-on-product']
 * ```
 */
export function contextOf(plan: Plan, options: PlanContextOptions = {}): ReviewContext {
  const { assessment, printed } = checkObject(options) as PlanContextOptions
  checkPlan(plan)
  checkAssessment(assessment)
  if (printed !== undefined) checkPlan(printed)
  return madeOf(plan, () => contextMade(plan, options), isContext)
}

function contextMade(plan: Plan, { assessment, printed }: PlanContextOptions): ReviewContext {
  return {
    reactants: reactantsOf(plan, assessment),
    equations: equationsOf(plan),
    formulas: formulasOf(plan),
    atHand: [
      ...excessFactors(plan),
      ...strengths(plan),
      ...stepRatios(plan),
      ...aliquots(plan),
      ...(printed?.supplies ?? []).map(({ exactMeasure }) => exactMeasure as Quantity),
      ...(assessment === undefined ? [] : weighings(assessment)),
    ],
  }
}

/** The equations of a plan, the overall one first. */
function equationsOf({ overall, stages }: Plan): readonly Equation[] {
  return [overall, ...stages.map(({ equation }) => equation)]
}

function formulasOf(plan: Plan): readonly string[] {
  const written = equationsOf(plan).flatMap(({ left, right }) => [...left, ...right].map(({ formula }) => formula.text))
  return [...new Set([...written, ...plan.supplies.map(({ taken }) => taken)])]
}

interface Taken {
  readonly of: string
  readonly amount: Quantity<'amount'>
  readonly equivalents: Quantity<'ratio'>
  readonly measure: Quantity
}

/** What went in, and how much product each would give if it alone decided. */
function reactantsOf(plan: Plan, assessment: Assessment | undefined): readonly ReactantAtHand[] {
  const taken = assessment === undefined ? plannedTaken(plan) : usedTaken(assessment)
  const least = taken.reduce<Quantity<'ratio'> | undefined>(
    (found, { equivalents }) => (found === undefined || equivalents.compare(found) < 0 ? equivalents : found),
    undefined,
  )
  if (least === undefined || least.value.isZero()) return []
  const { amount: most } = (assessment ?? plan).theoretical
  return taken.map(({ of, amount, equivalents, measure }) => ({
    of,
    amount,
    gives: equivalents.equals(least) ? most : most.times(equivalents.dividedBy(least)),
    mass: measure.dimension === 'mass' ? asDimension(measure, 'mass') : undefined,
  }))
}

function plannedTaken({ supplies }: Plan): readonly Taken[] {
  return supplies.flatMap(({ substance: of, amount, excess, exactMeasure: measure }) =>
    excess === undefined ? [] : [{ of, amount, equivalents: excess.equivalents, measure }],
  )
}

function usedTaken({ used }: Assessment): readonly Taken[] {
  return used.flatMap(({ substance: of, amount, excess, measure }) =>
    excess === undefined ? [] : [{ of, amount, equivalents: excess.equivalents, measure }],
  )
}
