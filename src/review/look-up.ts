import { asDimension, type Dimension, type Quantity, type Role } from '../quantity/index.js'
import type { Calculation } from './calculation.js'
import type { SlipContext } from './context.js'
import type { Replacement } from './replacement.js'
import type { SlipChange } from './slip.js'

/** What a quantity is called in a sentence. */
export function called({ naming }: Quantity): string {
  if (naming.label !== undefined) return naming.label
  const what = naming.role ?? naming.symbol ?? 'number'
  return naming.of === undefined ? what : `${what} of ${naming.of}`
}

/** One replacement as a change. */
export function because(reason: string, ...change: readonly Replacement[]): SlipChange {
  return { reason, change }
}

/** The quantities of a calculation in a role and of a dimension. */
export function partsIn<D extends Dimension>(
  calculation: Calculation,
  role: Role,
  dimension: D,
): readonly Quantity<D>[] {
  return calculation.inRole(role).flatMap((q) => (q.dimension === dimension ? [asDimension(q, dimension)] : []))
}

/** The numbers at hand in a role and of a dimension. */
export function atHand<D extends Dimension>(
  { atHand: all = [] }: SlipContext,
  role: Role,
  dimension: D,
): readonly Quantity<D>[] {
  return all.flatMap((q) => (q.naming.role === role && q.dimension === dimension ? [asDimension(q, dimension)] : []))
}

/** Numbers at hand that could stand for one of the calculation: of the same substance, and not the same. */
export function othersOf<D extends Dimension>(
  q: Quantity<D>,
  candidates: readonly Quantity<D>[],
): readonly Quantity<D>[] {
  return candidates.filter((other) => other.naming.of === q.naming.of && !other.equals(q))
}

/** The theoretical yield of a calculation: its amount where it has one, else its mass. */
export function theoreticalYieldIn(calculation: Calculation): Quantity<'amount'> | Quantity<'mass'> | undefined {
  return partsIn(calculation, 'theoretical yield', 'amount')[0] ?? partsIn(calculation, 'theoretical yield', 'mass')[0]
}

/** Whether a calculation is about how much product there can be, or was obtained of that. */
export function isOfYield(calculation: Calculation): boolean {
  return theoreticalYieldIn(calculation) !== undefined
}
