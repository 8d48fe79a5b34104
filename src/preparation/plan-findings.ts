import { Decimal } from '../decimal.js'
import type { AtomicWeights } from '../element/index.js'
import { asDimension, type Quantity, quantity } from '../quantity/index.js'
import { checkConcentration, type SolutionFinding } from '../solution/index.js'
import { speciesKey } from '../stoichiometry/index.js'
import type { RecipeFacts } from './facts.js'
import type { Finding } from './finding.js'
import type { Plan, PlannedSupply } from './plan-type.js'
import type { RecipeClaim, StockSupply } from './recipe.js'
import { chosen } from './supply.js'

type Draft = Omit<Plan, 'findings' | 'cautions'>

/** Two supplies whose equivalents are within one per cent are practically equal. */
export const practically = '0.01'

/** Everything about a plan that a person should see. */
export function findingsOf(facts: RecipeFacts, plan: Draft): readonly Finding[] {
  return [
    ...plan.supplies.flatMap((supply) => [
      ...shortFindings(supply),
      ...clearingFindings(supply),
      ...readingFindings(facts, supply),
      ...labelFindings(facts, supply),
    ]),
    ...equalFindings(plan),
    ...coolingFindings(plan),
    ...scaleFindings(facts, plan),
    ...(facts.recipe.claims ?? []).map((claim, index) => claimFinding(plan, claim, index)),
  ]
}

function shortFindings(supply: PlannedSupply): readonly Finding[] {
  const { substance, amount, need, excess, index } = supply
  if (excess === undefined) return [notNeeded(substance, amount, index)]
  if (shareThere(supply).gte('0.999999999999')) return []
  return [
    {
      code: 'supply-short',
      severity: 'problem',
      message: `There is less ${substance} than the preparation needs: ${excess.equivalents.to('1').value.toSignificantDigits(3)} of the need.`,
      numbers: { taken: amount, needed: need, equivalents: excess.equivalents },
      path: ['supplies', index],
    },
  ]
}

function notNeeded(substance: string, amount: Quantity<'amount'>, index: number): Finding {
  return {
    code: 'supply-not-needed',
    severity: 'remark',
    message: `Nothing of the ${substance} is needed: earlier stages leave nothing for it to remove.`,
    numbers: { taken: amount },
    path: ['supplies', index],
  }
}

function clearingFindings({ substance, naiveNeed, need, index }: PlannedSupply): readonly Finding[] {
  if (need.equals(naiveNeed)) return []
  const difference = need.minus(naiveNeed).named({ label: `${substance} for what earlier stages left` })
  return [
    {
      code: 'alkali-or-acid-cleared',
      severity: 'remark',
      message: `Part of the ${substance} first removes what an earlier stage left over, before it does its own work; the need counts it.`,
      numbers: { naive: naiveNeed, need, difference },
      path: ['supplies', index],
    },
  ]
}

function readingFindings({ recipe }: RecipeFacts, supply: PlannedSupply): readonly Finding[] {
  const findings: Finding[] = []
  const { measure, exactMeasure, substance, index } = supply
  const numbers = { shown: measure, unrounded: exactMeasure }
  const path = ['supplies', index]
  if (measure.value.isZero()) {
    findings.push({
      code: 'below-readability',
      severity: 'problem',
      message: `The ${substance} is less than the instrument can show.`,
      numbers,
      path,
    })
  } else if (measure.value.minus(exactMeasure.value).abs().gt(exactMeasure.value.times(practically))) {
    findings.push({
      code: 'rounded-visibly',
      severity: 'doubt',
      message: `What the instrument can show of the ${substance} differs from the plan by more than 1 %.`,
      numbers,
      path,
    })
  }
  const capacity = recipe.instruments?.cylinderCapacity
  if (capacity !== undefined && supply.by === 'measure' && supply.vessel === undefined)
    findings.push(...vesselFindings(supply, chosen(capacity, 'volume')))
  return findings
}

function vesselFindings(
  { measure, substance, index }: PlannedSupply,
  capacity: Quantity<'volume'>,
): readonly Finding[] {
  if ((measure as Quantity<'volume'>).compare(capacity) <= 0) return []
  return [
    {
      code: 'beyond-vessel',
      severity: 'doubt',
      message: `The ${substance} does not fit into the measuring vessel at once.`,
      numbers: { volume: measure, capacity },
      path: ['supplies', index],
    },
  ]
}

/** What is there of the need of a supply: what is taken, and what earlier stages left of the same. */
function shareThere({ amount, left, need }: PlannedSupply): Decimal {
  return (left === undefined ? amount : amount.plus(left)).dividedBy(need).to('1').value
}

/** Whether there are as many equivalents of two supplies, within one per cent. */
function closeTo(a: PlannedSupply, b: PlannedSupply): boolean {
  if (a.excess === undefined || b.excess === undefined) return false
  const [x, y] = [shareThere(a), shareThere(b)]
  return x.minus(y).abs().lte(y.times(practically))
}

/** What the chosen glassware, and a label that says its strength twice, call for. */
function labelFindings({ recipe, weights }: RecipeFacts, { vessel, index, taken }: PlannedSupply): readonly Finding[] {
  const told = recipe.supplies[index]
  const path = ['supplies', index]
  const label = told?.form === 'stock' ? labelCheck(told, taken, weights) : []
  return [...(vessel?.findings ?? []), ...label].map((finding) => ({ ...finding, path }))
}

function labelCheck(stock: StockSupply, substance: string, weights: AtomicWeights): readonly SolutionFinding[] {
  if (stock.printedConcentration === undefined) return []
  return checkConcentration({
    massFraction: chosen(stock.massFraction, 'ratio'),
    density: chosen(stock.density, 'density'),
    printed: chosen(stock.printedConcentration, 'amountConcentration'),
    basis: stock.statedAs,
    substance,
    weights,
  }).findings
}

function equalFindings({ supplies, limiting }: Draft): readonly Finding[] {
  const limiters = supplies.filter(({ substance }) => limiting.includes(substance))
  return supplies
    .filter((supply) => !limiters.includes(supply) && limiters.some((limit) => closeTo(supply, limit)))
    .map((supply) => ({
      code: 'practically-equal',
      severity: 'remark',
      message: `${supply.substance} is within 1 % of limiting as well.`,
      numbers: excessNumbers(supply),
      path: ['supplies', supply.index],
    }))
}

function coolingFindings({ cooling }: Draft): readonly Finding[] {
  if (cooling === undefined) return []
  const path = ['crystallisation']
  if (!cooling.known)
    return [
      {
        code: 'solubility-unknown',
        severity: 'remark',
        message: `The crop cannot be estimated. ${cooling.reason}`,
        numbers: {},
        path,
      },
    ]
  const { crop, complete, share } = cooling.expected
  if (share.value.gte(50)) return []
  return [
    {
      code: 'much-stays-dissolved',
      severity: 'doubt',
      message: 'Less than half of the salt should crystallise from so much water at that temperature.',
      numbers: { crop, complete, share },
      path,
    },
  ]
}

function scaleFindings({ recipe, supplies, scaleKey }: RecipeFacts, { limiting, scale }: Draft): readonly Finding[] {
  const isSupply = recipe.scale !== undefined && supplies.some(({ key }) => key === scaleKey)
  if (!isSupply || limiting.length === 0 || limiting.includes(scale.formula)) return []
  return [
    {
      code: 'not-the-scale-limits',
      severity: 'doubt',
      message: `The preparation is scaled by ${scale.formula}, but ${limiting.join(' and ')} limits it.`,
      numbers: { scale: scale.amount },
      path: ['scale'],
    },
  ]
}

function claimFinding(plan: Draft, claim: RecipeClaim, index: number): Finding {
  const supply = plan.supplies.find(({ substance }) => speciesKey(substance) === speciesKey(claim.of))
  const holds =
    supply !== undefined && (claim.limiting === undefined || limits(plan, supply)) && excessHolds(supply, claim)
  const told = [
    ...(claim.limiting === undefined ? [] : ['limits']),
    ...(claim.excess === undefined ? [] : [`is in ${claim.excess} excess`]),
  ].join(' and ')
  return {
    code: holds ? 'claim-holds' : 'claim-does-not-hold',
    severity: holds ? 'remark' : 'doubt',
    message: `That ${claim.of} ${told} ${holds ? 'holds' : 'does not hold'} by the amounts given.`,
    numbers: excessNumbers(supply),
    path: ['claims', index],
  }
}

/** Both ways to say how a supply compares with its need. */
function excessNumbers(supply: PlannedSupply | undefined): Finding['numbers'] {
  if (supply?.excess === undefined) return {}
  return { equivalents: supply.excess.equivalents, excess: supply.excess.percentExcess }
}

function limits({ limiting, supplies }: Draft, supply: PlannedSupply): boolean {
  return (
    limiting.includes(supply.substance) ||
    supplies.some((other) => limiting.includes(other.substance) && closeTo(supply, other))
  )
}

/** An excess holds if it agrees to the last digit it was stated with. */
function excessHolds({ excess }: PlannedSupply, claim: RecipeClaim): boolean {
  if (claim.excess === undefined) return true
  if (excess === undefined) return false
  const stated = asDimension(quantity(claim.excess, { wholeNumberZeros: 'significant' }), 'ratio').to('%')
  const half = new Decimal(10).pow(stated.place as number).div(2)
  return excess.percentExcess.value.minus(stated.value).abs().lte(half)
}
