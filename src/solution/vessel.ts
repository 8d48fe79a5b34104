import { exact, type Quantity } from '../quantity/index.js'
import { chosen, type Given } from '../stoichiometry/given.js'
import { aboveZero, anObject } from './bounds.js'
import { checkCapacity } from './capacity.js'
import type { SolutionFinding } from './finding.js'
import { noSuchSize, rowsOf, tableVolume, toleranceIn, unknownOption, withCapacity } from './glassware.js'
import type { AccuracyClass, GlasswareItem, GlasswareRow, GlasswareStandard } from './glassware-table.js'
import { volumeNaming } from './naming.js'

/** What is in the cupboard. */
export interface VesselOptions {
  /** What kind of glassware. */
  readonly item: GlasswareItem
  /** Whose sizes and tolerances. */
  readonly standard: GlasswareStandard
  /** Its class; `"B"`, the wider tolerance, unless said. */
  readonly accuracy?: AccuracyClass | undefined
  /** The capacities at hand; every size of the standard unless said. Text is exact. */
  readonly available?: readonly Given<'volume'>[] | undefined
}

/** A vessel that measures a volume. */
export interface Vessel {
  /** What it is. */
  readonly item: GlasswareItem
  /** Its capacity. */
  readonly capacity: Quantity<'volume'>
  /** Its smallest division; undefined where it has one mark only. */
  readonly division: Quantity<'volume'> | undefined
  /** What can be read on it: a tenth of the smallest division, estimated between the lines; undefined where it has one mark. */
  readonly step: Quantity<'volume'> | undefined
  /** Its tolerance, plus or minus. */
  readonly tolerance: Quantity<'volume'>
  /** How often it has to be filled: once, unless the volume is beyond the largest at hand. */
  readonly fillings: number
  /** The standard of its tolerance. */
  readonly edition: string
  /** True where that tolerance is from memory. */
  readonly fromMemory: boolean
  /** What a person should look at: a volume beyond the vessel, or one that its single mark does not show. */
  readonly findings: readonly SolutionFinding[]
}

/**
 * Chooses glassware for a volume: the smallest size that holds it, with what can be read on it.
 *
 * @param volume - The volume to measure; text is exact.
 * @param options - What kind of glassware, whose standard, what is at hand.
 * @returns The vessel; the largest one with a finding where the volume is beyond it.
 * @throws {@link SolutionError} `solution/unknown-glassware`, `solution/unknown-option`, `solution/not-above-zero`,
 *   `solution/not-an-object`; {@link QuantityError} for what cannot be read.
 * @source A reading is estimated to a tenth of the smallest division: OpenStax, Chemistry 2e, section 1.5. Choosing the smallest
 *   that holds the volume: common practice, no source.
 *
 * @example
 * ```ts
 * import { vesselFor } from 'saltwright/solution'
 *
 * const cylinder = vesselFor('41.7 mL', { item: 'measuring cylinder', standard: 'ASTM' })
 * cylinder.capacity.toString() // => '50 mL'
 * cylinder.step?.toString() // => '0.1 mL'
 * cylinder.tolerance.toString() // => '0.50 mL'
 * vesselFor('24 mL', { item: 'transfer pipette', standard: 'ISO' }).findings[0]?.code // => 'no-such-mark'
 * ```
 */
export function vesselFor(volume: Given<'volume'>, options: VesselOptions): Vessel {
  const { item, standard, accuracy = 'B', available } = anObject(options, '{ item, standard }')
  const wanted = aboveZero(chosen(volume, 'volume', volumeNaming('volume to measure')))
  const row = smallestFor(wanted, atHand(rowsOf(item, standard), available))
  const capacity = tableVolume(row.capacity)
  return {
    item,
    capacity,
    ...scaleOf(row),
    tolerance: toleranceIn(row, accuracy),
    fillings: wanted.dividedBy(capacity).value.ceil().toNumber(),
    edition: row.edition,
    fromMemory: row.fromMemory,
    findings: [...checkCapacity(wanted, capacity, { vessel: item }), ...checkMark(wanted, row)],
  }
}

function atHand(
  rows: readonly GlasswareRow[],
  available: readonly Given<'volume'>[] | undefined,
): readonly GlasswareRow[] {
  if (available === undefined) return rows
  if (!Array.isArray(available) || available.length === 0) throw unknownOption(available, ['a list of capacities'])
  return available.flatMap((capacity: Given<'volume'>) => {
    const found = withCapacity(rows, capacity)
    if (found.length === 0) throw noSuchSize(rows, capacity)
    return found
  })
}

/** The smallest that holds the volume, else the largest; of two scales the finer one stands first in the tables. */
function smallestFor(volume: Quantity<'volume'>, rows: readonly GlasswareRow[]): GlasswareRow {
  const sorted = [...rows].sort((a, b) => tableVolume(a.capacity).compare(tableVolume(b.capacity)))
  return (sorted.find((row) => tableVolume(row.capacity).compare(volume) >= 0) ?? sorted.at(-1)) as GlasswareRow
}

function scaleOf({ division }: GlasswareRow): Pick<Vessel, 'division' | 'step'> {
  if (division === undefined) return { division, step: undefined }
  const line = tableVolume(division)
  return { division: line, step: line.dividedBy(exact(10)).named({ label: 'a tenth of the smallest division' }) }
}

/** A vessel with one mark measures its capacity and nothing else. */
function checkMark(volume: Quantity<'volume'>, row: GlasswareRow): readonly SolutionFinding[] {
  const capacity = tableVolume(row.capacity)
  if (row.division !== undefined || volume.compare(capacity) >= 0) return []
  return [
    {
      code: 'no-such-mark',
      severity: 'doubt',
      message: `A ${row.item} of ${row.capacity} has one mark, so it does not measure ${volume.toString()}.`,
      numbers: { volume, capacity },
    },
  ]
}
