import { Decimal } from '../decimal.js'
import type { InputFacts, Naming } from './input.js'
import { readNaming } from './naming.js'
import type { RuleSettings } from './rule.js'
import { type RuleName, rules } from './rules.js'
import { findUnit, type Unit } from './unit.js'
import { walk } from './walk.js'

/** What a quantity of another copy of the library should look like; nothing of it is certain. */
interface Foreign {
  readonly value: Decimal
  readonly unit: Unit
  readonly rule: RuleName | 'input'
  readonly operands: readonly Foreign[]
  readonly settings: RuleSettings
  readonly input: InputFacts
  readonly naming: Naming
}

/** How our own nodes are made. */
export interface Maker<N extends { readonly unit: Unit }> {
  /** An input. */
  readonly input: (value: Decimal, unit: Unit, facts: InputFacts, naming: Naming) => N
  /** The result of a rule. */
  readonly derived: (rule: RuleName, operands: readonly N[], unit: Unit, settings: RuleSettings, naming: Naming) => N
}

/**
 * Makes the graph of another copy of the library ours, node by node, and remembers what became of each. The facts of an input stay the
 * same object: they are the identity of the measurement.
 *
 * @returns Our node; undefined for whatever only looks like a quantity.
 */
export function adopt<N extends { readonly unit: Unit }>(
  root: object,
  known: WeakMap<object, N>,
  maker: Maker<N>,
): N | undefined {
  const make = (foreign: Foreign): N => {
    const { value, rule, input, naming, settings } = foreign
    const unit = findUnit(foreign.unit)
    if (unit === undefined) throw new Error('no unit of ours')
    if (rule === 'input') return maker.input(finite(value), unit, knownFacts(input), readNaming(naming))
    const operands = foreign.operands.map((operand) => known.get(operand) as N)
    const operandUnits = operands.map((operand) => operand.unit)
    if (!Object.hasOwn(rules, rule) || !rules[rule].fits(operandUnits, unit, settings))
      throw new Error('no rule of ours')
    return maker.derived(rule, operands, unit, settings, readNaming(naming))
  }
  try {
    walk(root as Foreign, {
      below: ({ operands }) => operands,
      isDone: (node) => known.has(node),
      finish: (node) => known.set(node, make(node)),
      mayLoop: true,
    })
  } catch {
    return undefined // whatever goes wrong inside a stranger, it is no quantity
  }
  return known.get(root)
}

function finite(value: Decimal): Decimal {
  const ours = new Decimal(value)
  if (!ours.isFinite()) throw new Error('not a number')
  return ours
}

function knownFacts(facts: InputFacts): InputFacts {
  const { kind, writtenPlace } = facts
  if (!['measured', 'exact', 'constant'].includes(kind) || !Number.isInteger(writtenPlace)) throw new Error('no input')
  return facts
}
