import { showFound } from '../errors.js'
import { type Identity, identityOf } from './identity.js'
import { nodeOf } from './node.js'
import type { Quantity } from './quantity.js'
import { QuantityError } from './quantity-error.js'

/** How far two inputs vary together: JCGM 100:2008, 5.2.2. What is not said is zero; an input is the same as itself without saying. */
export interface Correlation {
  /** The two inputs. */
  readonly between: readonly [Quantity, Quantity]
  /** The correlation coefficient, from -1 to 1. */
  readonly coefficient: number
}

/** A correlation whose inputs are known by their identity. */
export interface KnownCorrelation {
  readonly a: Identity
  readonly b: Identity
  readonly coefficient: number
}

/** The stated correlations, checked. */
export function readCorrelations(given: unknown): readonly KnownCorrelation[] {
  if (given === undefined) return []
  if (!Array.isArray(given)) throw badCorrelation(given, 'an array')
  const known = given.map(readCorrelation)
  const twice = known.find((one, index) => known.slice(0, index).some((other) => samePair(one, other)))
  if (twice !== undefined) throw badCorrelation(twice.coefficient, 'each pair of inputs once')
  return known
}

function readCorrelation(given: Partial<Correlation> | null | undefined): KnownCorrelation {
  const pair: unknown = given?.between
  if (!Array.isArray(pair) || pair.length !== 2) throw badCorrelation(pair, 'between: two inputs')
  const coefficient: unknown = given?.coefficient
  if (typeof coefficient !== 'number' || !(Math.abs(coefficient) <= 1))
    throw badCorrelation(coefficient, 'a coefficient from -1 to 1')
  const [a, b] = [inputIdentity(pair[0]), inputIdentity(pair[1])]
  if (a === b) throw badCorrelation(coefficient, 'two different inputs: one is fully correlated with itself')
  return { a, b, coefficient }
}

function inputIdentity(q: unknown): Identity {
  const node = nodeOf(q)
  if (node.rule === 'input') return identityOf(node)
  throw badCorrelation(node.toString(), 'inputs; what was worked out from them correlates by itself')
}

function samePair(one: KnownCorrelation, other: KnownCorrelation): boolean {
  return (one.a === other.a && one.b === other.b) || (one.a === other.b && one.b === other.a)
}

/** The error for correlations that cannot be. */
export function badCorrelation(found: unknown, expected: string): QuantityError {
  return new QuantityError({
    code: 'quantity/bad-correlation',
    message: `${showFound(found)} does not say how two inputs are correlated.`,
    path: ['correlations'],
    found: showFound(found),
    expected,
  })
}
