import { showFound } from '../errors.js'
import { type Dimension, isQuantity, type Quantity, roundTo, type TieRule } from '../quantity/index.js'
import { chosen, type Given } from '../stoichiometry/given.js'
import { aboveZero } from './bounds.js'
import { SolutionError } from './solution-error.js'

/** An instrument, by the step in which it is read. */
export interface Readable<D extends Dimension> {
  /** The step; undefined for a vessel with one mark. */
  readonly step: Given<D> | undefined
}

/**
 * Rounds a planned mass or volume to what an instrument can show: the readability of a balance, a step of a cylinder.
 *
 * @typeParam D - The dimension.
 * @param q - What was worked out.
 * @param instrument - The step in which it is read as text or quantity, or a vessel or balance that has one.
 * @param rule - What a lone 5 does; `"half-even"` unless said.
 * @returns The same quantity in the unit of the step, rounded to a multiple of it for showing.
 * @throws {@link SolutionError} `solution/no-scale` for a vessel with one mark; `solution/not-above-zero`, `solution/not-a-quantity`;
 *   {@link QuantityError} for what cannot be read.
 * @source Common practice, no source.
 *
 * @example
 * ```ts
 * import { massFromAmount } from 'saltwright/stoichiometry'
 * import { readTo, vesselFor, volumeToDeliver } from 'saltwright/solution'
 *
 * readTo(massFromAmount('0.050 mol', 'CuO'), '0.001 g').toString() // => '3.977 g'
 * const acid = volumeToDeliver('0.25 mol', '6 mol/L')
 * readTo(acid, vesselFor(acid, { item: 'measuring cylinder', standard: 'ISO' })).toString() // => '41.7 mL'
 * ```
 */
export function readTo<D extends Dimension>(
  q: Quantity<D>,
  instrument: Given<D> | Readable<D>,
  rule: TieRule = 'half-even',
): Quantity<D> {
  if (!isQuantity(q)) throw notAQuantity(q)
  const step = aboveZero(chosen(stepOf(instrument), q.dimension, { label: 'step of an instrument' }))
  return roundTo(q.to(step.unit as Parameters<Quantity<D>['to']>[0]), { place: step.value.toFixed(), rule })
}

function stepOf<D extends Dimension>(instrument: Given<D> | Readable<D>): Given<D> {
  if (isQuantity(instrument) || typeof instrument !== 'object' || instrument === null) return instrument as Given<D>
  if (instrument.step !== undefined) return instrument.step
  throw new SolutionError({
    code: 'solution/no-scale',
    message: 'A vessel with one mark has no scale, so nothing is rounded to it.',
    found: 'no step',
    expected: 'a step as text, "0.1 mL", or an instrument with a scale',
  })
}

function notAQuantity(found: unknown): SolutionError {
  return new SolutionError({
    code: 'solution/not-a-quantity',
    message: `${showFound(found)} is no quantity that could be rounded.`,
    found: showFound(found),
    expected: 'a quantity: quantity("3.977 g")',
  })
}
