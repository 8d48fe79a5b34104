import { showFound } from '../errors.js'
import { badCorrelation, type Correlation, type KnownCorrelation, readCorrelations } from './correlation.js'
import { largestResult, outOfRange } from './graph-error.js'
import type { Identity } from './identity.js'
import { inputUncertainties, type Unstated, unstatedChoice } from './input-uncertainty.js'
import type { Node } from './node.js'
import { layOut } from './nodes-of.js'
import { QuantityError } from './quantity-error.js'
import { type Part, partsOf } from './sensitivity.js'

/** How an uncertainty is propagated. */
export interface UncertaintyOptions {
  /** What stands for the uncertainty of a measured number or constant that states none; `"reject"` unless said. */
  readonly unstated?: Unstated
  /** Which inputs vary together. */
  readonly correlations?: readonly Correlation[]
}

/** The parts of a result by their inputs, and the correlations that were stated. */
export interface Propagation {
  readonly parts: ReadonlyMap<Identity, Part>
  readonly correlations: readonly KnownCorrelation[]
}

const largest: number = 10 ** largestResult

/** The components of a result's uncertainty: JCGM 100:2008, 5.1.3, from one backward pass over its graph. */
export function propagate(root: Node, options: UncertaintyOptions): Propagation {
  if (typeof options !== 'object' || options === null) throw notOptions(options)
  const correlations = readCorrelations(options.correlations)
  const layout = layOut(root)
  const parts = partsOf(layout, inputUncertainties(layout.nodes, unstatedChoice(options.unstated)))
  for (const { component } of parts.values()) if (!(Math.abs(component) <= largest)) throw outOfRange(component)
  return { parts, correlations }
}

/** The covariance of two results that share inputs or have correlated ones: JCGM 100:2008, 5.2.2 and F.1.2.3. */
export function covariance(a: Propagation, b: Propagation): number {
  let total = 0
  for (const [identity, { component }] of a.parts) total += component * componentOf(b, identity)
  for (const { a: one, b: other, coefficient } of a.correlations) {
    const across = componentOf(a, one) * componentOf(b, other) + componentOf(a, other) * componentOf(b, one)
    total += coefficient * across
  }
  return total
}

/** The component of an input; zero where the result does not depend on it. */
export function componentOf({ parts }: Propagation, identity: Identity): number {
  return parts.get(identity)?.component ?? 0
}

/** Combined standard uncertainty: JCGM 100:2008, 5.1.2 and 5.2.2, in doubles of a common scale, so that no square is lost. */
export function combinedStandard(propagation: Propagation): number {
  let scale = 0
  for (const { component } of propagation.parts.values()) scale = Math.max(scale, Math.abs(component))
  if (scale === 0) return 0
  if (propagation.correlations.length === 0) return scale * Math.sqrt(sumOfSquares(propagation, scale))
  const scaled = inUnitsOf(propagation, scale)
  const variance = covariance(scaled, scaled)
  if (variance < -tolerance) throw badCorrelation(variance, 'correlations that can hold at the same time')
  return scale * Math.sqrt(Math.max(0, variance))
}

function sumOfSquares({ parts }: Propagation, scale: number): number {
  let sum = 0
  for (const { component } of parts.values()) sum += (component / scale) ** 2
  return sum
}

/** How far below zero rounding may bring a variance in which everything cancels. */
const tolerance = 1e-9

/** The same parts with components in another unit, so that a product of two neither overflows nor vanishes. */
export function inUnitsOf({ parts, correlations }: Propagation, scale: number): Propagation {
  const smaller = [...parts].map(
    ([identity, part]) => [identity, { ...part, component: part.component / scale }] as const,
  )
  return { parts: new Map(smaller), correlations }
}

function notOptions(found: unknown): QuantityError {
  return new QuantityError({
    code: 'quantity/unknown-option',
    message: `${showFound(found)} does not hold options.`,
    found: showFound(found),
    expected: '{ unstated: "implied" }',
  })
}
