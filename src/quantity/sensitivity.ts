import { checkSame, type Identity, identityOf } from './identity.js'
import type { InputUncertainty } from './input-uncertainty.js'
import type { Node } from './node.js'
import type { Layout } from './nodes-of.js'
import { QuantityError } from './quantity-error.js'
import { type RuleName, rules } from './rules.js'

/** What one input adds to the uncertainty of a result. */
export interface Part {
  /** The input, or one of several copies of it. */
  readonly input: Node
  /** Its uncertainty, in its unit. */
  readonly uncertainty: InputUncertainty
  /** The partial derivative of the number of the result by the number of the input, each in its own unit. */
  readonly sensitivity: number
  /** Sensitivity times uncertainty, with its sign, in the unit of the result. */
  readonly component: number
}

type Uncertainties = readonly (InputUncertainty | undefined)[]

/**
 * What the inputs add to the uncertainty of a result, by their sensitivity coefficients (JCGM 100:2008, 5.1.3): in one pass from the
 * result back to its inputs. Where no input below an operand is uncertain no derivative is taken, so that one which does not exist (of
 * a root at zero) does no harm.
 *
 * @param layout - The graph of the result.
 * @param uncertainties - Those of the inputs, at their positions.
 */
export function partsOf(layout: Layout, uncertainties: Uncertainties): ReadonlyMap<Identity, Part> {
  const slopes = slopesBefore(layout, uncertainties)
  const parts = new Map<Identity, Part>()
  const last = slopes.length - 1
  if (slopes[last] === 0) slopes[last] = 1
  for (let at = last; at >= 0; at -= 1) {
    const slope = slopes[at] as number
    if (Number.isNaN(slope)) continue
    const uncertainty = uncertainties[at]
    if (uncertainty === undefined) passOn(layout, at, slopes)
    else addPart(parts, layout.nodes[at] as Node, slope, uncertainty)
  }
  return parts
}

/** A slope of zero for each node that is uncertain; not a number for the others, which are passed by. */
function slopesBefore({ links, starts }: Layout, uncertainties: Uncertainties): Float64Array {
  const slopes = new Float64Array(uncertainties.length)
  for (let at = 0; at < slopes.length; at += 1) {
    let isUncertain = (uncertainties[at]?.standard ?? 0) > 0
    for (let link = starts[at] as number; link < (starts[at + 1] as number); link += 1)
      isUncertain ||= slopes[links[link] as number] === 0
    if (!isUncertain) slopes[at] = Number.NaN
  }
  return slopes
}

/** Adds to the slopes of the operands of a node what it has of them. */
function passOn({ nodes, values, links, starts }: Layout, at: number, slopes: Float64Array): void {
  const { rule, operands, settings } = nodes[at] as Node
  const start = starts[at] as number
  const given = operands.map((_, index) => values[links[start + index] as number] as number)
  const partials = rules[rule as RuleName].partials(given, values[at] as number, settings)
  for (let index = 0; index < given.length; index += 1) {
    const operand = links[start + index] as number
    const known = slopes[operand] as number
    if (Number.isNaN(known)) continue
    const total = known + (slopes[at] as number) * (partials[index] as number)
    if (!Number.isFinite(total)) throw noDerivative(nodes[at] as Node)
    slopes[operand] = total
  }
}

/** An input may stand in the graph in several copies, under different names. */
function addPart(parts: Map<Identity, Part>, copy: Node, slope: number, ofCopy: InputUncertainty): void {
  const identity = identityOf(copy)
  const known = parts.get(identity)
  if (known !== undefined) checkSame(known.input, copy)
  const { input, uncertainty } = known ?? { input: copy, uncertainty: ofCopy }
  const sensitivity = (known?.sensitivity ?? 0) + slope
  parts.set(identity, { input, uncertainty, sensitivity, component: sensitivity * uncertainty.standard })
}

function noDerivative(node: Node): QuantityError {
  return new QuantityError({
    code: 'quantity/no-derivative',
    message: `The rule "${node.rule}" has no derivative where it gives ${node.toString()}, so no uncertainty passes through it.`,
    found: node.toString(),
    expected: 'a value where the calculation changes smoothly',
  })
}
