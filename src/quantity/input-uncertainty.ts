import { showFound } from '../errors.js'
import type { InputFacts } from './input.js'
import type { Node } from './node.js'
import { QuantityError } from './quantity-error.js'
import { toDouble } from './to-double.js'

/**
 * What stands for the uncertainty of a measured number or constant that states none:
 * - `"reject"`: nothing; an error names the inputs.
 * - `"ignore"`: zero, as if it were exact.
 * - `"implied"`: the number was rounded to its last digit, so it lies within half a unit of it, every value as likely
 *   (Ph. Eur., General Notices: 0.25 g means 0.245 g to 0.255 g; rectangular by JCGM 100:2008, F.2.2.1).
 * - `"last-digit"`: one unit of its last digit as standard uncertainty: common practice in software, no source.
 */
export type Unstated = 'reject' | 'ignore' | 'implied' | 'last-digit'

/** A standard uncertainty of an input, as a double. */
export interface InputUncertainty {
  /** In the unit of the input. */
  readonly standard: number
  /** Absent means unlimited. */
  readonly degreesOfFreedom: number | undefined
}

const choices: readonly unknown[] = ['reject', 'ignore', 'implied', 'last-digit']

/** The choice for unstated uncertainties, checked; `"reject"` unless said. */
export function unstatedChoice(given: unknown): Unstated {
  if (given === undefined) return 'reject'
  if (choices.includes(given)) return given as Unstated
  throw new QuantityError({
    code: 'quantity/unknown-option',
    message: `${showFound(given)} is not a choice for unstated uncertainties.`,
    path: ['unstated'],
    found: showFound(given),
    expected: choices.join(', '),
  })
}

/** The uncertainties of the inputs of a graph, each at the position of the input among the nodes. */
export function inputUncertainties(
  nodes: readonly Node[],
  unstated: Unstated,
): readonly (InputUncertainty | undefined)[] {
  return nodes.map(({ input }) => {
    if (input === undefined) return undefined
    if (unstated === 'reject' && isOpen(input)) throw notStated(openInputs(nodes))
    return uncertaintyOf(input, unstated)
  })
}

/** The inputs of which it is open how uncertain they are: they are neither exact nor say. */
export function openInputs(nodes: readonly Node[]): readonly Node[] {
  return nodes.filter(({ input }) => input !== undefined && isOpen(input))
}

function isOpen({ kind, uncertainty }: InputFacts): boolean {
  return kind !== 'exact' && uncertainty === undefined
}

const noUncertainty: InputUncertainty = { standard: 0, degreesOfFreedom: undefined }

function uncertaintyOf({ kind, uncertainty, writtenPlace }: InputFacts, unstated: Unstated): InputUncertainty {
  if (uncertainty !== undefined) {
    const { standard, degreesOfFreedom } = uncertainty
    return { standard: toDouble(standard), degreesOfFreedom }
  }
  if (kind === 'exact') return noUncertainty
  return { standard: 10 ** writtenPlace * unitsOfLastDigit[unstated], degreesOfFreedom: undefined }
}

const unitsOfLastDigit: Readonly<Record<Unstated, number>> = {
  reject: 0,
  ignore: 0,
  implied: /* @__PURE__ */ Math.sqrt(1 / 12),
  'last-digit': 1,
}

const mostNamed = 8

function notStated(open: readonly Node[]): QuantityError {
  const names = [...new Set(open.map(nameOf))]
  const more = names.length > mostNamed ? ` and ${names.length - mostNamed} more` : ''
  return new QuantityError({
    code: 'quantity/uncertainty-not-stated',
    message: `No uncertainty is stated for ${names.slice(0, mostNamed).join(', ')}${more}.`,
    found: names.slice(0, mostNamed).join(', '),
    expected: 'an uncertainty for each measured number and constant',
    hint: 'The option unstated ("ignore", "implied") says what stands for it.',
  })
}

function nameOf(node: Node): string {
  const { label, symbol, of } = node.naming
  if (label !== undefined) return label
  if (symbol === undefined) return node.toString()
  return of === undefined ? symbol : `${symbol} of ${of}`
}
