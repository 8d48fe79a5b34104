import { Decimal } from '../decimal.js'
import { showFound } from '../errors.js'
import { standardUncertainty } from './budget.js'
import { spreadIn } from './combine.js'
import { openInputs } from './input-uncertainty.js'
import { type Node, nodeLike, nodeOf } from './node.js'
import { nodesOf } from './nodes-of.js'
import { longest } from './numeral-error.js'
import type { UncertaintyOptions } from './propagation.js'
import type { Quantity } from './quantity.js'
import { QuantityError } from './quantity-error.js'
import { roundToPlace } from './rounding.js'
import { unitText } from './show.js'
import { placeAt } from './significance.js'

/**
 * How many digits of an uncertainty are written.
 * - `1`, `2` or `3`: so many. At most two for a result (JCGM 100:2008, 7.2.6); many introductory texts keep one.
 * - `"three-digit"`: by the three leading digits: two of 100 to 354, one of 355 to 949, and 950 to 999 become 1000 with two (Particle
 *   Data Group, Review of Particle Physics, introduction, 5.3).
 */
export type UncertaintyDigits = 1 | 2 | 3 | 'three-digit'

/** How a quantity is written with its uncertainty. */
export interface WithUncertaintyOptions extends UncertaintyOptions {
  /** The uncertainty to write, such as an expanded one; the combined standard uncertainty unless said. */
  readonly uncertainty?: Quantity
  /**
   * `"parentheses"`, `100.02147(35) g` (JCGM 100:2008, 7.2.2; the default), or `"plus-minus"`, `(100.02147 ± 0.00079) g`, which is best
   * kept for an expanded uncertainty (7.2.2 and 7.2.4).
   */
  readonly form?: 'parentheses' | 'plus-minus'
  /** How many digits of the uncertainty are written; two unless said. */
  readonly digits?: UncertaintyDigits
  /** To the nearest (the default), or up, so that it is never understated; JCGM 100:2008, 7.2.6 allows both. */
  readonly rounding?: 'nearest' | 'up'
}

/**
 * Writes a quantity with its uncertainty; the number is rounded to the last digit of that. Where an input states no uncertainty and
 * `unstated` does not say what stands for it, only figures are known, and the number is written to these, as in a classroom.
 *
 * @param q - Any quantity.
 * @param options - Which uncertainty, in which form, with how many digits.
 * @returns The text; {@link quantity} reads it back.
 * @throws {@link QuantityError} `quantity/unknown-option`, `quantity/dimensions-differ` for an uncertainty of another dimension,
 *   `quantity/out-of-range` where the number would have more than a hundred digits, and the codes of {@link standardUncertainty}.
 * @source JCGM 100:2008, 7.2.
 *
 * @example
 * ```ts
 * import { expandedUncertainty, quantity, writeWithUncertainty } from 'saltwright/quantity'
 *
 * const mass = quantity('100.02147 g', { uncertainty: '0.35 mg' })
 * writeWithUncertainty(mass) // => '100.02147(35) g'
 * const { expandedUncertainty: uncertainty } = expandedUncertainty(mass, { coverageFactor: '2.26' })
 * writeWithUncertainty(mass, { uncertainty, form: 'plus-minus' }) // => '(100.02147 ± 0.00079) g'
 * writeWithUncertainty(quantity('3.98 g')) // => '3.98 g'
 * ```
 */
export function writeWithUncertainty(q: Quantity, options: WithUncertaintyOptions = {}): string {
  const node = nodeOf(q)
  const { form, digits, rounding } = readOptions(options)
  const size = uncertaintyOf(node, options)
  if (size === undefined || size.isZero()) return node.toString()
  const rounded = roundUncertainty(size, digits, rounding)
  const number = form === 'parentheses' ? inParentheses(node.value, rounded) : plusMinus(node.value, rounded)
  const unit = unitText(node.unit)
  if (unit === '') return number
  return form === 'parentheses' || number.startsWith('(') ? `${number} ${unit}` : `(${number}) ${unit}`
}

/** The uncertainty to write, in the unit of the quantity; undefined where only figures are known. */
function uncertaintyOf(node: Node, options: WithUncertaintyOptions): Decimal | undefined {
  const { uncertainty, unstated } = options
  if (uncertainty !== undefined) return sizeOf(node, uncertainty)
  if (unstated === undefined && openInputs(nodesOf([node])).length > 0) return undefined
  return sizeOf(node, standardUncertainty(node, options))
}

function sizeOf(node: Node, uncertainty: unknown): Decimal {
  const spread = nodeLike(node, uncertainty)
  return spreadIn(spread.value, spread.unit, node.unit).abs()
}

interface Rounded {
  readonly size: Decimal
  /** Exponent of ten of its last digit. */
  readonly place: number
}

/** An uncertainty to the digits that are written of it. */
function roundUncertainty(size: Decimal, digits: UncertaintyDigits, rounding: 'nearest' | 'up'): Rounded {
  if (digits !== 'three-digit') return toDigits(size, digits, rounding)
  const leading = size.times(`1e${2 - size.e}`)
  if (leading.gte(950)) return { size: new Decimal(`1e${size.e + 1}`), place: size.e }
  return toDigits(size, leading.lt(355) ? 2 : 1, rounding)
}

function toDigits(size: Decimal, count: number, rounding: 'nearest' | 'up'): Rounded {
  if (rounding === 'nearest') return { size: size.toSignificantDigits(count), place: placeAt(size, count) }
  const raised = size.toSignificantDigits(count, Decimal.ROUND_UP)
  return { size: raised, place: raised.e - count + 1 }
}

/** Longest run of zeros before or after the digits; beyond it both numbers share a power of ten. */
const [leastPower, mostPower] = [-5, 20]

function inParentheses(value: Decimal, rounded: Rounded): string {
  const { number, size, place, power } = written(value, rounded)
  const digits = place < 0 ? size.times(`1e${-place}`) : size
  return `${number}(${digits.toFixed(0)})${power}`
}

function plusMinus(value: Decimal, rounded: Rounded): string {
  const { number, size, place, power } = written(value, rounded)
  const both = `${number} ± ${size.toFixed(Math.max(0, -place))}`
  return power === '' ? both : `(${both})${power}`
}

/** The number rounded to the last digit of its uncertainty, both by a common power of ten if they are very small or large. */
function written(
  value: Decimal,
  { size, place }: Rounded,
): Rounded & { readonly number: string; readonly power: string } {
  const rounded = roundToPlace(value, place, 'half-even')
  const exponent = Math.max(rounded.isZero() ? size.e : rounded.e, size.e)
  if (exponent - place >= longest) throw tooManyDigits(exponent - place + 1)
  if (exponent >= leastPower && exponent <= mostPower)
    return { number: digitsOf(rounded, place), size, place, power: '' }
  const scale = `1e${-exponent}`
  const number = digitsOf(rounded.times(scale), place - exponent)
  return { number, size: size.times(scale), place: place - exponent, power: `e${exponent}` }
}

function digitsOf(rounded: Decimal, place: number): string {
  return (rounded.isZero() ? rounded.abs() : rounded).toFixed(Math.max(0, -place))
}

/** What is written has to be read back. */
function tooManyDigits(found: number): QuantityError {
  return new QuantityError({
    code: 'quantity/out-of-range',
    message: `Written to the last digit of its uncertainty, the number has ${found} digits.`,
    found: `${found} digits`,
    expected: `at most ${longest} digits`,
  })
}

interface Choices {
  readonly form: 'parentheses' | 'plus-minus'
  readonly digits: UncertaintyDigits
  readonly rounding: 'nearest' | 'up'
}

function readOptions(options: unknown): Choices {
  if (typeof options !== 'object' || options === null) throw unknownOption('options', options, ['an object'])
  const { form, digits, rounding } = options as WithUncertaintyOptions
  return {
    form: choice('form', form, ['parentheses', 'plus-minus']),
    digits: choice<UncertaintyDigits>('digits', digits, [2, 1, 3, 'three-digit']),
    rounding: choice('rounding', rounding, ['nearest', 'up']),
  }
}

/** One of several; the first unless said. */
function choice<T>(name: string, given: unknown, among: readonly [T, ...T[]]): T {
  if (given === undefined) return among[0]
  const found = among.find((one) => one === given)
  if (found !== undefined) return found
  throw unknownOption(name, given, among)
}

function unknownOption(name: string, found: unknown, among: readonly unknown[]): QuantityError {
  return new QuantityError({
    code: 'quantity/unknown-option',
    message: `${showFound(found)} is not a choice for ${name}.`,
    path: [name],
    found: showFound(found),
    expected: among.join(' or '),
  })
}
