import { type Fraction, formatFraction } from '../fraction.js'
import type { Equation } from './equation.js'
import type { MissingSpecies } from './missing-species.js'
import type { ElementTotals, SideTotals } from './side-totals.js'

/** What the sentence is about. */
interface Findings {
  readonly balanced: boolean
  readonly elements: readonly ElementTotals[]
  readonly charge: SideTotals
  readonly suggestion: Equation | undefined
  readonly missing: MissingSpecies | undefined
}

/** A check in a sentence or two: what does not agree, and what would be right. */
export function balanceSentence({ balanced, elements, charge, suggestion, missing }: Findings): string {
  const advice = adviceOf(suggestion, missing)
  if (balanced) return `Balanced${suggestion === undefined ? ', in lowest terms.' : `, not in lowest terms.${advice}`}`
  const faults = elements.filter(isUneven).map(elementFault)
  const chargeFaults = isUneven(charge) ? [chargeFault(charge)] : []
  return `Not balanced: ${[...faults, ...chargeFaults].join(', ')}.${advice}`
}

function isUneven({ difference }: SideTotals): boolean {
  return difference.numerator !== 0n
}

function elementFault({ symbol, left, right }: ElementTotals): string {
  return `${symbol} has ${formatFraction(left)} on the left and ${formatFraction(right)} on the right`
}

function chargeFault({ left, right }: SideTotals): string {
  return `the charge is ${signed(left)} on the left and ${signed(right)} on the right`
}

function signed(charge: Fraction): string {
  return `${charge.numerator > 0n ? '+' : ''}${formatFraction(charge)}`
}

function adviceOf(suggestion: Equation | undefined, missing: MissingSpecies | undefined): string {
  if (suggestion !== undefined) return ` Right would be: ${suggestion.text}`
  if (missing === undefined) return ''
  return ` ${missing.formula} is missing on the ${missing.side}: ${missing.equation}`
}
