import type { Summary } from '../display.js'
import { formatFormula } from '../formula/index.js'
import { type Quantity, roundTo } from '../quantity/index.js'
import type { Assessment } from './assessment-type.js'
import type { ClassPlan } from './class-type.js'
import { type Finding, severityWords } from './finding.js'
import type { Plan } from './plan-type.js'

/** What a notebook shows of a plan. The cautions are part of it. */
export function planSummary({
  recipe,
  product,
  scale,
  supplies,
  theoretical,
  limiting,
  findings,
  cautions,
}: Plan): Summary {
  return {
    title: `${recipe.title}: plan for ${scale.amount} of ${inUnicode(scale.formula)}`,
    rows: [
      ...supplies.map(({ name, measure }) => [name, measure.toString()] as const),
      ['theoretical yield', `${theoretical.mass} of ${inUnicode(product.formula)}`],
      ['limited by', limiting.map(inUnicode).join(', ')],
    ],
    notes: [...findings.map(noteOf), ...cautions.map(({ message }) => message)],
  }
}

/** What a notebook shows of the plan of a class. */
export function classPlanSummary({ title, benches, store, findings }: ClassPlan): Summary {
  return {
    title: `${title}: plan for ${benches.length} benches`,
    rows: [
      ...benches.map(({ name, plan }) => [name, `${plan.theoretical.mass} possible`] as const),
      ...store.map(({ name, toPrepare }) => [`${name} to prepare`, toPrepare.toString()] as const),
    ],
    notes: [...findings.map(noteOf), ...cautionsOf(benches)],
  }
}

/** What a notebook shows of an assessment. */
export function assessmentSummary(assessment: Assessment): Summary {
  const { title, bench, used, theoretical, actual, percentYield, findings, explanations } = assessment
  return {
    title: `${title}: assessment${bench === undefined ? '' : ` of ${bench}`}`,
    rows: [
      ...used.map(({ name, measure }) => [name, shown(measure)] as const),
      ['theoretical yield', theoretical.mass.toString()],
      ['obtained', actual.mass.toString()],
      ['percent yield', percentYield.toString()],
    ],
    notes: [...findings.map(noteOf), ...explanations.map(({ message }) => message)],
  }
}

/** Every caution of a class once. */
function cautionsOf(benches: ClassPlan['benches']): readonly string[] {
  return [...new Set(benches.flatMap(({ plan }) => plan.cautions.map(({ message }) => message)))]
}

/** What was chosen has no last figure; four are enough to see it. */
function shown(q: Quantity): string {
  return (q.significantFigures === null ? roundTo(q, { figures: 4 }) : q).toString()
}

function noteOf({ severity, message }: Finding): string {
  return `${severityWords[severity]}: ${message}`
}

function inUnicode(formula: string): string {
  return formatFormula(formula, 'unicode')
}
