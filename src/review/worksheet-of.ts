import { deepFreeze } from '../preparation/freeze.js'
import type { Plan, PlannedSupply, UsedSupply } from '../preparation/index.js'
import { readingStep } from '../preparation/planned-supply.js'
import type { Quantity } from '../quantity/index.js'
import { checkObject } from './check-options.js'
import { checkAssessment, checkPlan, isWorksheet, madeOf } from './check-plan.js'
import type { ReviewContext } from './context.js'
import { contextOf } from './plan-context.js'
import type { ChoiceQuestion, QuantityQuestion, Question, Worksheet, WorksheetOptions } from './worksheet.js'

/**
 * The questions that a plan answers: amount and mass or volume of every supply, what limits, the molar mass of the product, the theoretical
 * yield; and with an assessment the mass of product and the per cent yield.
 *
 * With an assessment, what is taken of a supply is right as it was planned and as it was recorded. What limits and how much product there
 * can be go by what was recorded.
 *
 * @param plan - The plan of a bench.
 * @param options - Its assessment, and the plan as printed where it is at another scale.
 * @returns The questions in the order in which they are worked through, each with its right answer.
 * @throws {@link ReviewError} `review/not-a-plan` for anything but a plan that `planPreparation` made;
 *   `review/not-an-assessment`.
 *
 * @example
 * ```ts
 * import { planPreparation } from 'saltwright/preparation'
 * import { worksheetOf } from 'saltwright/review'
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
 * worksheetOf(plan).questions.map(({ id }) => id).slice(0, 4)
 * // => ['amount-of-ZnO', 'mass-of-ZnO', 'amount-of-H2SO4', 'volume-of-H2SO4']
 * ```
 */
export function worksheetOf(plan: Plan, options: WorksheetOptions = {}): Worksheet {
  const { assessment } = checkObject(options) as WorksheetOptions
  checkPlan(plan)
  checkAssessment(assessment)
  if (options.printed !== undefined) checkPlan(options.printed)
  return madeOf(plan, () => worksheetMade(plan, options), isWorksheet)
}

function worksheetMade(plan: Plan, options: WorksheetOptions): Worksheet {
  const { assessment } = options
  const { theoretical } = assessment ?? plan
  const { formula, molarMass } = plan.product
  const questions: readonly Question[] = [
    ...plan.supplies.flatMap((supply, index) => supplyQuestions(plan, supply, assessment?.used[index])),
    ...limitingQuestion(plan, (assessment ?? plan).limiting),
    asked('molar-mass-of-product', `What is the molar mass of ${formula}?`, molarMass),
    asked('theoretical-amount', `How many moles of ${formula} can there be at most?`, theoretical.amount),
    asked('theoretical-yield', `What mass of ${formula} can there be at most?`, theoretical.mass),
    ...(assessment === undefined
      ? []
      : [
          asked('product-mass', `What mass of ${formula} was obtained?`, assessment.actual.mass),
          asked('percent-yield', 'What is the yield in per cent?', assessment.percentYield),
        ]),
  ]
  return Object.freeze({
    title: plan.recipe.title,
    questions: deepFreeze(numbered(questions)),
    context: Object.freeze(lazyContext(plan, options)), // not its parts, which are only worked out when somebody asks
  })
}

/** A context that is only worked out where an answer is wrong. */
function lazyContext(plan: Plan, options: WorksheetOptions): ReviewContext {
  let made: ReviewContext | undefined
  const context = (): ReviewContext => {
    made ??= contextOf(plan, options)
    return made
  }
  return {
    get reactants() {
      return context().reactants
    },
    get equations() {
      return context().equations
    },
    get formulas() {
      return context().formulas
    },
    get atHand() {
      return context().atHand
    },
  }
}

function asked(id: string, asks: string, expected: Quantity): QuantityQuestion {
  return { kind: 'quantity', id, asks, expected, readableTo: undefined }
}

function supplyQuestions(plan: Plan, supply: PlannedSupply, used: UsedSupply | undefined): readonly QuantityQuestion[] {
  const { substance, name, taken, by, amount, exactMeasure, measure, vessel } = supply
  const stage = goesInTwice(supply, plan) ? ` for the stage "${supply.stage}"` : ''
  const as = taken === substance || taken === name ? '' : `, as ${taken}`
  const readableTo = measure.input?.writtenPlace
  const step = readingStep(plan.recipe, exactMeasure, vessel)
  const [what, of, verb] = by === 'weigh' ? ['mass', taken, 'weighed'] : ['volume', substance, 'measured out']
  return [
    {
      ...asked(`amount-of-${substance}`, `What amount of ${substance} is taken${stage}?`, amount),
      recorded: recordedOf(supply, used)?.amount,
    },
    {
      ...asked(`${what}-of-${of}`, `What ${what} of ${name} is ${verb}${stage}${as}?`, exactMeasure),
      recorded: recordedMeasure(supply, used),
      readableTo,
      step,
    },
  ]
}

/** Whether a substance is supplied to several stages, so that its name alone does not say which supply is meant. */
export function goesInTwice({ substance }: PlannedSupply, { supplies }: Plan): boolean {
  return supplies.filter((other) => other.substance === substance).length > 1
}

/** What was used of a supply, if the bench wrote it down. */
function recordedOf({ substance }: PlannedSupply, used: UsedSupply | undefined): UsedSupply | undefined {
  return used?.recorded === true && used.substance === substance ? used : undefined
}

/** A volume may have been weighed instead: then it says nothing of the volume. */
function recordedMeasure(supply: PlannedSupply, used: UsedSupply | undefined): Quantity | undefined {
  const measure = recordedOf(supply, used)?.measure
  return measure?.dimension === supply.exactMeasure.dimension ? measure : undefined
}

/** Which supply limits: a question only where there are several. */
function limitingQuestion({ supplies }: Plan, right: readonly string[]): readonly ChoiceQuestion[] {
  const formulas = [...new Set(supplies.map(({ substance }) => substance))]
  if (formulas.length < 2) return []
  const asks = 'Which of the supplies decides how much product there can be?'
  const choices = formulas.map((formula) => choiceOf(supplies.filter(({ substance }) => substance === formula)))
  return [{ kind: 'choice', id: 'limiting-reagent', asks, choices, right }]
}

/** A substance as a choice; it may go in more than once, under several names or weighed as a hydrate. */
function choiceOf(alike: readonly PlannedSupply[]): ChoiceQuestion['choices'][number] {
  const { substance: formula, name } = alike.at(-1) as PlannedSupply
  const called = alike.flatMap((supply) => [supply.name, supply.taken])
  const others = [...new Set(called)].filter((each) => each !== name && each !== formula)
  return others.length === 0 ? { formula, name } : { formula, name, others }
}

/** Tells questions of one name apart, as where a substance goes in twice: the second gets a 2. */
function numbered(questions: readonly Question[]): readonly Question[] {
  return questions.map((question, index) => {
    const before = questions.slice(0, index).filter(({ id }) => id === question.id).length
    return before === 0 ? question : { ...question, id: `${question.id}-${before + 1}` }
  })
}
