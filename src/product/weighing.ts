import { type Quantity, sum } from '../quantity/index.js'
import { type Given, type Labels, measured } from '../stoichiometry/given.js'
import { inRole, record, textOrNothing } from './guard.js'
import { ProductError } from './product-error.js'

/** A weighing by difference; text is measured. */
export interface Weighing {
  /** The full vessel, with everything that stood on the balance. */
  readonly gross: Given<'mass'>
  /** The empty vessel; or vessel, cap, label, filter paper one by one. For a vessel that is emptied: the second weighing. */
  readonly tare: Given<'mass'> | readonly Given<'mass'>[]
  /** What is in it. */
  readonly of?: string | undefined
}

/** Why weighings are taken as read: a sentence for a report. */
export const buoyancyIgnored: string =
  'Weighings are taken as read. The buoyancy of air is not corrected: for solids denser than 1.1 g/mL that is less than 0.1 % (air 1.2 mg/mL, weights 8.0 g/mL: the conventional values of OIML D 28, from memory).'

/**
 * The mass in a vessel, or in several together, by difference. A weighing used twice (the same tare for two contents) stays one
 * measurement, so that its uncertainty counts as one.
 *
 * @param weighing - The full vessel and what was weighed empty; or a list of such pairs, one per container.
 * @returns The net mass, to the last decimal of the balance. Below zero where the full vessel weighs less than the empty one: that is
 *   to be looked at, not hidden.
 * @throws {@link ProductError} `product/nothing-weighed` for an empty list; `product/not-an-object`, `product/not-text`. {@link QuantityError}
 *   for what is not a mass.
 * @source Weighing by difference: common practice, no source. Figures: OpenStax, Chemistry 2e, section 1.5.
 *
 * @example
 * ```ts
 * import { netMass } from 'saltwright/product'
 *
 * netMass({ gross: '18.632 g', tare: '11.204 g' }).toString() // => '7.428 g'
 * netMass({ gross: '20.102 g', tare: ['11.204 g', '1.352 g', '0.118 g'] }).toString() // => '7.428 g'
 * ```
 */
export function netMass(weighing: Weighing | readonly Weighing[]): Quantity<'mass'> {
  if (!isList(weighing)) return netOf(weighing)
  const [first, ...rest] = weighing.map(netOf)
  if (first === undefined) throw nothingWeighed('no container', 'at least one container')
  if (rest.length === 0) return first
  return sum([first, ...rest]).named({ ...first.naming, label: `net mass in ${rest.length + 1} containers` })
}

function netOf(weighing: Weighing): Quantity<'mass'> {
  const { gross, tare } = record(weighing, 'a weighing: { gross, tare }')
  const of = textOrNothing(weighing.of, 'what is weighed')
  return part(gross, 'gross', of).minus(tareOf(tare, of)).named(naming('net', of))
}

function tareOf(tare: Weighing['tare'], of: string | undefined): Quantity<'mass'> {
  if (!isList(tare)) return part(tare, 'tare', of)
  const [first, ...rest] = tare.map((each) => part(each, 'tare', of))
  if (first === undefined) throw nothingWeighed('no tare', 'the empty vessel, with its cap, label and filter paper')
  return rest.length === 0 ? first : sum([first, ...rest]).named(naming('tare', of))
}

function part(mass: Given<'mass'>, role: 'gross' | 'tare', of: string | undefined): Quantity<'mass'> {
  return inRole(measured(mass, 'mass', naming(role, of)), naming(role, of))
}

function isList<T>(value: T | readonly T[]): value is readonly T[] {
  return Array.isArray(value)
}

function naming(role: 'gross' | 'tare' | 'net', of: string | undefined): Labels {
  const label = of === undefined ? `${role} mass` : `${role} mass of ${of}`
  return { label, symbol: 'm', role, ...(of !== undefined && { of }) }
}

function nothingWeighed(found: string, expected: string): ProductError {
  return new ProductError({
    code: 'product/nothing-weighed',
    message: `There is nothing to work out a net mass from: ${found}.`,
    found,
    expected,
  })
}
