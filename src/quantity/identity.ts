import type { InputFacts } from './input.js'
import type { Node } from './node.js'
import { QuantityError } from './quantity-error.js'

/** What makes two inputs the same measurement: their stated name, else the very object of their facts. */
export type Identity = string | InputFacts

/** The identity of an input. */
export function identityOf(node: Node): Identity {
  const facts = node.input as InputFacts
  return facts.id ?? facts
}

/** Refuses two inputs that carry one name and are not the same: their numbers would be correlated by mistake. */
export function checkSame(a: Node, b: Node): void {
  if (a.input === b.input) return
  const same = a.unit === b.unit && a.value.eq(b.value) && standardText(a) === standardText(b)
  if (!same) throw conflict(a, b)
}

function standardText({ input }: Node): string | undefined {
  return input?.uncertainty?.standard.toString()
}

function conflict(a: Node, b: Node): QuantityError {
  return new QuantityError({
    code: 'quantity/identity-conflict',
    message: `Two inputs carry the id "${a.input?.id}" and are not the same measurement.`,
    found: `${a.toString()} and ${b.toString()}`,
    expected: 'one id for one measurement',
  })
}
