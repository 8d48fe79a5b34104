import type { Expression } from './rule.js'
import type { Significant } from './significance.js'
import type { Unit } from './unit.js'

/** The operand at a position, in an expression. */
export const name = (operand: number): Expression => ({ kind: 'name', operand })

/** A number that belongs to the rule, in an expression. */
export const number = (text: string): Expression => ({ kind: 'number', text })

/** All operands, in an expression. */
export const names = (count: number): readonly Expression[] => Array.from({ length: count }, (_, index) => name(index))

/** The first operand, which every rule has. */
export const first = (operands: readonly Significant[]): Significant => operands[0] as Significant

/** The second operand of a rule that has two. */
export const second = (operands: readonly Significant[]): Significant => operands[1] as Significant

/** Whether there are operands, and all are in the unit of the result. */
export const allAlike = (operands: readonly Unit[], result: Unit): boolean =>
  operands.length > 0 && operands.every((unit) => unit === result)
