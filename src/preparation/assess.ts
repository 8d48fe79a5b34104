import type { ErrorDetails } from '../errors.js'
import { type Explanation, explainYield, type LossLine, lossAccount, netMass } from '../product/index.js'
import type { Quantity } from '../quantity/index.js'
import { speciesKey } from '../stoichiometry/index.js'
import type { Assessment, UsedSupply } from './assessment-type.js'
import { coolingOf } from './cooling.js'
import { type AmountRule, type Course, type Poured, runCourse } from './course.js'
import { type RecipeFacts, readRecipe, type SupplyFacts } from './facts.js'
import type { Finding } from './finding.js'
import { deepFreeze } from './freeze.js'
import { limitFindings } from './limit-findings.js'
import {
  excessOf,
  leftoversOf,
  limitingOf,
  plannedAmount,
  productOf,
  scaleOf,
  theoreticalOf,
  weightsName,
} from './plan.js'
import type { Plan } from './plan-type.js'
import { problemsError, readJson } from './read-json.js'
import type { Records, SupplyRecord } from './records.js'
import { recordsSchema } from './records-schema.js'
import { type MeasuredStrength, measureOf, reading } from './supply.js'
import { grossBelowTare, type ProductWeighing, weighingOf, weighProduct } from './weighing.js'

/**
 * Assesses a preparation from what a bench wrote down: theoretical yield from what was really used, actual yield by difference,
 * percent yield with the figures the weighings allow.
 *
 * @param plan - The plan, or the recipe it was made from.
 * @param records - Weighings and readings as plain JSON; `recordsSchema` says their shape. What is not recorded counts as planned.
 * @returns The assessment. A yield over 100 % is given as found, with its possible reasons in `findings`.
 * @throws {@link PreparationError} `preparation/invalid` with every mistake in `problems`, each with its path: there
 *   `preparation/unknown-supply`, `preparation/nothing-weighed`.
 * @source Percent yield: OpenStax, Chemistry 2e, section 4.4.
 *
 * @example
 * ```ts
 * import { assessPreparation, type Recipe } from 'saltwright/preparation'
 *
 * const recipe: Recipe = {
 *   format: 'saltwright/recipe@1',
 *   title: 'Zinc sulfate heptahydrate',
 *   product: 'ZnSO4·7H2O',
 *   scale: { of: 'ZnO', amount: '0.0400 mol' },
 *   stages: [{ name: 'dissolve and crystallise', equation: 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O' }],
 *   supplies: [
 *     { form: 'solid', substance: 'ZnO' },
 *     { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
 *   ],
 * }
 * const assessment = assessPreparation(recipe, {
 *   format: 'saltwright/records@1',
 *   supplies: [{ substance: 'ZnO', mass: '3.255 g' }],
 *   product: { gross: '20.317 g', tare: '11.204 g' },
 * })
 * assessment.actual.mass.toString() // => '9.113 g'
 * assessment.percentYield.toString() // => '79.24 %'
 * ```
 */
export function assessPreparation(plan: Plan | Plan['recipe'], records: Records): Assessment {
  const facts = readRecipe('recipe' in plan ? plan.recipe : plan)
  const read = readJson(recordsSchema, records, 'records')
  const { taken, findings } = readSupplyRecords(facts, read)
  const product = weighProduct(read.product)
  const scale = scaleOf(facts)
  const asPlanned: AmountRule = (supply, need) => plannedAmount(facts, scale, supply, need)
  const course = runCourse(facts, scale, (supply, need) => taken.get(supply)?.amount ?? asPlanned(supply, need))
  const plannedLimits = limitingOf(facts, runCourse(facts, scale, asPlanned))
  const draft = draftOf(facts, read, course, taken, product)
  const purity = read.product.purity === undefined ? undefined : reading(read.product.purity, 'ratio')
  return deepFreeze({
    ...draft,
    correctedYield: purity && correctedYield(draft, purity),
    findings: [
      ...findings,
      ...product.findings,
      ...yieldFindings(draft),
      ...usedFindings(draft),
      ...limitFindings(plannedLimits, draft),
    ],
  })
}

type Draft = Omit<Assessment, 'findings' | 'correctedYield'>

function draftOf(
  facts: RecipeFacts,
  records: Records,
  course: Course,
  taken: Readings['taken'],
  weighed: ProductWeighing,
): Draft {
  const theoretical = theoreticalOf(facts, course)
  const product = productOf(facts)
  const { mass, constancy } = weighed
  return {
    format: 'saltwright/assessment@1',
    records,
    bench: records.bench,
    title: facts.recipe.title,
    product,
    used: course.poured.map((poured) => usedSupply(facts, poured, taken.get(poured.supply))),
    limiting: limitingOf(facts, course),
    theoretical,
    actual: {
      mass,
      amount: mass.dividedBy(product.molarMass).named({ symbol: 'n', of: product.formula, label: 'amount obtained' }),
    },
    percentYield: percentOf(mass, theoretical.mass),
    constancy,
    explanations: explanationsOf(facts, records, theoretical.mass, weighed),
    losses: lossesOf(facts, course, theoretical, mass),
    atomicWeights: weightsName(facts),
  }
}

/** Actual over theoretical yield in per cent, as found. */
function percentOf(actual: Quantity<'mass'>, theoretical: Quantity<'mass'>): Quantity<'ratio'> {
  return actual.dividedBy(theoretical).to('%').named({ role: 'percent yield', label: 'percent yield' })
}

function explanationsOf(
  facts: RecipeFacts,
  { product }: Records,
  theoretical: Quantity<'mass'>,
  { mass, constancy }: ProductWeighing,
): readonly Explanation[] {
  if (mass.compare(theoretical) <= 0) return []
  return explainYield({
    actual: mass,
    theoretical,
    product: facts.product,
    drying: constancy,
    mayBeIncluded: product.mayBeIncluded?.map((text) => reading(text, 'mass')),
    weights: facts.weights,
  })
}

function lossesOf(
  facts: RecipeFacts,
  course: Course,
  theoretical: Plan['theoretical'],
  recovered: Quantity<'mass'>,
): readonly LossLine[] {
  const cooling = coolingOf(facts, theoretical.amount, leftoversOf(facts, course))
  const leftInLiquor = cooling?.known === true ? cooling.expected.loss : undefined
  return lossAccount({ theoretical: theoretical.mass, recovered, leftInLiquor })
}

function correctedYield({ actual, theoretical }: Draft, purity: Quantity<'ratio'>): Quantity<'ratio'> {
  const named = purity.named({ role: 'purity', symbol: 'w', label: 'purity of the product' })
  return percentOf(actual.mass.times(named), theoretical.mass)
}

function usedSupply(facts: RecipeFacts, { supply, need, amount }: Poured, taken: Taken | undefined): UsedSupply {
  const total = need.total ?? amount
  return {
    substance: supply.formula.text,
    name: supply.recipe.name ?? supply.formula.text,
    recorded: taken !== undefined,
    measure: taken?.measure ?? measureOf(supply, facts.weights).toTake(amount),
    amount,
    excess: excessOf(amount, total, supply.formula.text),
  }
}

function yieldFindings({ percentYield, actual, theoretical }: Draft): readonly Finding[] {
  const numbers = { actual: actual.mass, theoretical: theoretical.mass, percentYield }
  if (actual.mass.value.isZero()) {
    return [
      { code: 'nothing-obtained', severity: 'doubt', message: 'No product was obtained.', numbers, path: ['product'] },
    ]
  }
  if (!percentYield.value.gt(100)) return []
  const beyond = actual.mass.minus(theoretical.mass).named({ label: 'beyond the theoretical yield' })
  return [
    {
      code: 'yield-over-100',
      severity: 'problem',
      message: 'The yield is over 100 %. It is given as found; the explanations are in the order to look at them.',
      numbers: { ...numbers, beyond },
      path: ['product'],
    },
  ]
}

function usedFindings({ used, limiting }: Draft): readonly Finding[] {
  return used
    .filter(({ recorded, substance }) => !recorded && limiting.includes(substance))
    .map(({ substance, measure }) => ({
      code: 'supply-not-recorded',
      severity: 'remark',
      message: `What was used of ${substance} is not recorded, so the planned amount counts.`,
      numbers: { planned: measure },
      path: ['supplies'],
    }))
}

interface Taken {
  readonly measure: Quantity<'mass'> | Quantity<'volume'>
  readonly amount: Quantity<'amount'>
}

interface Readings {
  readonly taken: ReadonlyMap<SupplyFacts, Taken>
  readonly findings: readonly Finding[]
}

function readSupplyRecords(facts: RecipeFacts, { supplies = [] }: Records): Readings {
  const taken = new Map<SupplyFacts, Taken>()
  const findings: Finding[] = []
  const problems: ErrorDetails[] = []
  for (const [index, record] of supplies.entries()) {
    const supply = facts.supplies.find((each) => !taken.has(each) && isRecordOf(facts, record, each))
    const measure = measuredOf(record)
    if (supply === undefined) problems.push(unknownSupply(facts, record, index))
    else if (measure === undefined) problems.push(nothingWeighed(record, index))
    else if (measure.value.lt(0)) findings.push(grossBelowTare(['supplies', index], measure as Quantity<'mass'>))
    else taken.set(supply, { measure, amount: measureOf(supply, facts.weights, strengthOf(record)).amountIn(measure) })
  }
  if (problems.length > 0) throw problemsError('records', problems)
  return { taken, findings }
}

function isRecordOf({ stages }: RecipeFacts, { substance, stage }: SupplyRecord, supply: SupplyFacts): boolean {
  return supply.key === speciesKey(substance) && (stage === undefined || stages[supply.stage]?.name === stage)
}

function measuredOf({
  mass,
  gross,
  tare,
  volume,
  substance,
}: SupplyRecord): Quantity<'mass'> | Quantity<'volume'> | undefined {
  if (volume !== undefined)
    return reading(volume, 'volume').named({
      symbol: 'V',
      of: substance,
      role: 'volume',
      label: `volume of ${substance} used`,
    })
  if (mass !== undefined)
    return reading(mass, 'mass').named({ symbol: 'm', of: substance, role: 'mass', label: `mass of ${substance} used` })
  if (gross === undefined || tare === undefined) return undefined
  return netMass(weighingOf({ gross, tare }, substance))
}

function strengthOf({ assay, concentration }: SupplyRecord): MeasuredStrength {
  return {
    assay: assay === undefined ? undefined : reading(assay, 'ratio'),
    concentration: concentration === undefined ? undefined : reading(concentration, 'amountConcentration'),
  }
}

function unknownSupply({ supplies }: RecipeFacts, { substance }: SupplyRecord, index: number): ErrorDetails {
  return {
    code: 'preparation/unknown-supply',
    message: `supplies[${index}]: ${substance} is not in the recipe.`,
    path: ['supplies', index, 'substance'],
    found: substance,
    expected: supplies.map(({ formula }) => formula.text).join(', '),
  }
}

function nothingWeighed({ substance }: SupplyRecord, index: number): ErrorDetails {
  return {
    code: 'preparation/nothing-weighed',
    message: `supplies[${index}]: nothing says how much ${substance} was used.`,
    path: ['supplies', index],
    found: 'no reading',
    expected: 'gross and tare, or mass, or volume',
  }
}
