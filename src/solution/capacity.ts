import type { Quantity } from '../quantity/index.js'
import { type Choice, chosen, type Given } from '../stoichiometry/given.js'
import { aboveZero, aFraction, anObject } from './bounds.js'
import type { SolutionFinding } from './finding.js'
import { unknownOption } from './glassware.js'
import { volumeNaming } from './naming.js'

/** How a vessel may be filled. */
export interface CapacityOptions {
  /** What it is called in the finding; `vessel` unless said. */
  readonly vessel?: string | undefined
  /** The part of it that may be filled, above 0 and at most 1; all of it unless said. Text and numbers are exact. */
  readonly usable?: Choice | undefined
}

/**
 * Whether a volume fits into a vessel.
 *
 * @param volume - What is to go in; text is exact.
 * @param capacity - What the vessel holds; text is exact.
 * @param options - Its name, and how full it may be.
 * @returns One finding where the volume is beyond it; otherwise none.
 * @throws {@link SolutionError} `solution/not-above-zero`, `solution/not-a-fraction`, `solution/not-an-object`,
 *   `solution/unknown-option`; {@link QuantityError} for what cannot be read.
 *
 * @example
 * ```ts
 * import { checkCapacity } from 'saltwright/solution'
 *
 * checkCapacity('120 mL', '250 mL') // => []
 * checkCapacity('180 mL', '250 mL', { vessel: 'beaker', usable: '0.5' })[0]?.code // => 'beyond-vessel'
 * ```
 */
export function checkCapacity(
  volume: Given<'volume'>,
  capacity: Given<'volume'>,
  options: CapacityOptions = {},
): readonly SolutionFinding[] {
  const { vessel, usable: part } = anObject(options, 'options: { vessel, usable }')
  const content = aboveZero(chosen(volume, 'volume', volumeNaming('volume')))
  const whole = aboveZero(chosen(capacity, 'volume', volumeNaming('capacity')))
  const usable = aFraction(chosen(part ?? 1, 'ratio', { label: 'usable part of a vessel' }))
  const room = whole.times(usable)
  return content.compare(room) <= 0 ? [] : [beyond(content, whole, room, nameOf(vessel))]
}

function nameOf(vessel: unknown): string {
  if (vessel === undefined || vessel === null) return 'vessel'
  if (typeof vessel === 'string') return vessel
  throw unknownOption(vessel, ['the names of vessels'])
}

function beyond(
  volume: Quantity<'volume'>,
  capacity: Quantity<'volume'>,
  room: Quantity<'volume'>,
  vessel: string,
): SolutionFinding {
  const limit = room.equals(capacity) ? '' : `, of which ${room.toString()} may be filled`
  return {
    code: 'beyond-vessel',
    severity: 'problem',
    message: `${volume.toString()} is more than a ${vessel} of ${capacity.toString()} holds${limit}.`,
    numbers: { volume, capacity },
  }
}
