import type { Node } from './node.js'
import { rules } from './rules.js'

/** Whether a node is the same quantity as its operand in another form: in another unit, or rounded. */
export function isForm({ rule, operands, settings }: Node): boolean {
  return rule !== 'input' && rules[rule].write(operands.length, settings).kind === 'name'
}
