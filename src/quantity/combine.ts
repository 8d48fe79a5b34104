import { Decimal } from '../decimal.js'
import { type Dimension, productDimension, quotientDimension } from './dimension.js'
import type { RuleSettings } from './rule.js'
import { coherentUnit, findUnit, type Unit, type UnitInfo, units } from './unit.js'

/** How two units go together: what each operand is converted to first, and what comes out. */
export interface Combination {
  /** What the left operand is converted to. */
  readonly left: Unit
  /** What the right operand is converted to. */
  readonly right: Unit
  /** The unit of the result. */
  readonly unit: Unit
  /** The dimension of the result. */
  readonly dimension: Dimension
}

type Known = Map<Unit, Map<Unit, Combination | undefined>>

/** A memo of pure functions: which units go together never changes. */
const knownProducts: Known = /* @__PURE__ */ new Map()
const knownQuotients: Known = /* @__PURE__ */ new Map()
const knownConversions: Map<Unit, Map<Unit, RuleSettings>> = /* @__PURE__ */ new Map()

/** How a product of two units comes out; undefined where it means nothing here. */
export function productOf(left: Unit, right: Unit): Combination | undefined {
  return remember(knownProducts, left, right, findProduct)
}

/** How a quotient of two units comes out; undefined where it means nothing here. */
export function quotientOf(left: Unit, right: Unit): Combination | undefined {
  return remember(knownQuotients, left, right, findQuotient)
}

/** What turns a number in one unit into a number in another of the same dimension; exact. */
export function conversionBetween(from: Unit, to: Unit): RuleSettings {
  return remember(knownConversions, from, to, findConversion)
}

/** A spread, such as an uncertainty, in another unit of its dimension: a change of zero point does not touch it. */
export function spreadIn(spread: Decimal, from: Unit, to: Unit): Decimal {
  const { factor, inverse } = conversionBetween(from, to)
  return inverse ? spread.div(factor as Decimal) : spread.times(factor as Decimal)
}

function remember<T>(known: Map<Unit, Map<Unit, T>>, a: Unit, b: Unit, find: (a: Unit, b: Unit) => T): T {
  let row = known.get(a)
  if (row === undefined) {
    row = new Map()
    known.set(a, row)
  }
  if (!row.has(b)) row.set(b, find(a, b))
  return row.get(b) as T
}

function findProduct(left: Unit, right: Unit): Combination | undefined {
  const dimension = productDimension(units[left].dimension, units[right].dimension)
  if (dimension === undefined) return undefined
  if (units[right].dimension === 'ratio') return scaled(left, dimension)
  if (units[left].dimension === 'ratio') return swap(scaled(right, dimension))
  return (
    cancelled(left, right, dimension) ?? swap(cancelled(right, left, dimension)) ?? coherent(left, right, dimension)
  )
}

/** g/mol times mmol: the mmol become mol and cancel, g are left. */
function cancelled(compound: Unit, other: Unit, dimension: Dimension): Combination | undefined {
  const [top, bottom] = partsOf(compound)
  if (bottom === undefined || units[bottom].dimension !== units[other].dimension) return undefined
  return { left: compound, right: bottom, unit: top, dimension }
}

function swap(found: Combination | undefined): Combination | undefined {
  return found && { ...found, left: found.right, right: found.left }
}

function findQuotient(left: Unit, right: Unit): Combination | undefined {
  const dimension = quotientDimension(units[left].dimension, units[right].dimension)
  if (dimension === undefined) return undefined
  if (units[left].dimension === units[right].dimension) return sameUnit(left, right, dimension)
  if (units[right].dimension === 'ratio') return scaled(left, dimension)
  const direct = findUnit(`${left}/${right}`)
  if (direct !== undefined) return { left, right, unit: direct, dimension }
  const [top, bottom] = partsOf(right)
  if (bottom !== undefined && units[top].dimension === units[left].dimension) {
    return { left: top, right, unit: bottom, dimension }
  }
  return coherent(left, right, dimension)
}

/** A quantity times a ratio keeps its unit; a temperature is taken from absolute zero, or twice 10 degrees would mean nothing. */
function scaled(unit: Unit, dimension: Dimension): Combination {
  const absolute = unit === 'degC' ? 'K' : unit
  return { left: absolute, right: '1', unit: absolute, dimension }
}

/** Temperatures are compared on the absolute scale: a ratio of degrees Celsius means nothing. */
function sameUnit(left: Unit, right: Unit, dimension: Dimension): Combination {
  const shared = units[left].dimension === 'temperature' ? 'K' : left
  if (units[right].dimension === 'ratio') return { left: '1', right: '1', unit: '1', dimension }
  return { left: shared, right: shared, unit: '1', dimension }
}

function coherent(left: Unit, right: Unit, dimension: Dimension): Combination {
  const coherentOf = (unit: Unit): Unit => coherentUnit[units[unit].dimension]
  return { left: coherentOf(left), right: coherentOf(right), unit: coherentUnit[dimension], dimension }
}

function partsOf(unit: Unit): readonly [Unit, Unit | undefined] {
  const slash = unit.indexOf('/')
  const top = findUnit(unit.slice(0, slash))
  if (slash < 0 || top === undefined) return [unit, undefined]
  return [top, findUnit(unit.slice(slash + 1))]
}

function findConversion(from: Unit, to: Unit): RuleSettings {
  const [a, b]: readonly UnitInfo[] = [units[from], units[to]] as const
  const [sizeFrom, sizeTo] = [new Decimal((a as UnitInfo).factor), new Decimal((b as UnitInfo).factor)]
  const offset = new Decimal((a as UnitInfo).offset ?? 0).minus((b as UnitInfo).offset ?? 0)
  const times = sizeFrom.div(sizeTo)
  const scale =
    times.times(sizeTo).eq(sizeFrom) && times.sd() < 30
      ? { factor: times }
      : { factor: sizeTo.div(sizeFrom), inverse: true }
  return Object.freeze(offset.isZero() ? scale : { ...scale, offset })
}
