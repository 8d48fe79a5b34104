import { showFound } from '../errors.js'
import { asDimension, constant, exact, type Quantity } from '../quantity/index.js'
import { chosen, type Given } from '../stoichiometry/given.js'
import { glasswareTables } from './glassware-data.js'
import type {
  AccuracyClass,
  GlasswareItem,
  GlasswareRow,
  GlasswareSize,
  GlasswareStandard,
  Millilitres,
} from './glassware-table.js'
import { volumeNaming } from './naming.js'
import { SolutionError } from './solution-error.js'

/**
 * The tolerance of glassware at 20 °C: the largest error that its capacity, or any reading of its scale, may have.
 *
 * @param item - What it is.
 * @param capacity - Its nominal capacity; text is exact.
 * @param accuracy - Its class.
 * @param standard - Whose standard: class A alone does not fix a tolerance.
 * @param division - Its smallest division, where one size is made with several that differ in tolerance.
 * @returns Half of the whole tolerance, as in "plus or minus": no standard uncertainty. Taken as a rectangular distribution it
 *   gives one by division by the square root of 3.
 * @throws {@link SolutionError} `solution/unknown-glassware`, `solution/division-needed`, `solution/unknown-option`;
 *   {@link QuantityError} for a capacity that cannot be read.
 * @source The standards named in `glasswareTables`, with what of them is from memory.
 *
 * @example
 * ```ts
 * import { quantity } from 'saltwright/quantity'
 * import { toleranceOf } from 'saltwright/solution'
 *
 * toleranceOf('volumetric flask', '100 mL', 'A', 'ISO').toString() // => '0.1 mL'
 * toleranceOf('volumetric flask', '100 mL', 'A', 'ASTM').toString() // => '0.08 mL'
 * toleranceOf('burette', '25 mL', 'A', 'ISO', '0.05 mL').toString() // => '0.03 mL'
 *
 * const halfWidth = toleranceOf('transfer pipette', '25 mL', 'A', 'ISO').toString()
 * const aliquot = quantity('25.00 mL', { uncertainty: { halfWidth, distribution: 'rectangular' } })
 * aliquot.toJSON().uncertainty?.slice(0, 7) // => '0.01732'
 * ```
 */
export function toleranceOf(
  item: GlasswareItem,
  capacity: Given<'volume'>,
  accuracy: AccuracyClass,
  standard: GlasswareStandard,
  division?: Given<'volume'>,
): Quantity<'volume'> {
  const rows = rowsOf(item, standard)
  const found = withDivision(withCapacity(rows, capacity), division)
  const [row] = found
  if (row === undefined) throw noSuchSize(rows, capacity)
  if (found.some((other) => other[classOf(accuracy)] !== row[accuracy])) throw divisionNeeded(found)
  return toleranceIn(row, accuracy)
}

/** Every size of a kind of glassware in one standard, in the order of capacity. */
export function rowsOf(item: GlasswareItem, standard: GlasswareStandard): readonly GlasswareRow[] {
  const rows = glasswareTables
    .filter((table) => table.item === item)
    .flatMap(({ sizes, ...table }) => sizes.map((size): GlasswareRow => ({ ...table, ...size })))
  if (rows.length === 0) throw noSuchItem(item)
  const found = rows.filter((row) => row.standard === standard)
  if (found.length === 0) throw unknownOption(standard, [...new Set(rows.map((row) => row.standard))])
  return found
}

/** The rows of one capacity. */
export function withCapacity(rows: readonly GlasswareRow[], capacity: Given<'volume'>): readonly GlasswareRow[] {
  const wanted = chosen(capacity, 'volume', volumeNaming('capacity'))
  return rows.filter((row) => tableVolume(row.capacity).equals(wanted))
}

function withDivision(rows: readonly GlasswareRow[], division: Given<'volume'> | undefined): readonly GlasswareRow[] {
  if (division === undefined) return rows
  const wanted = chosen(division, 'volume', volumeNaming('smallest division'))
  return rows.filter((row) => row.division !== undefined && tableVolume(row.division).equals(wanted))
}

/** The tolerance of one size. */
export function toleranceIn(row: GlasswareRow, accuracy: AccuracyClass): Quantity<'volume'> {
  const tolerance = asDimension(constant(row[classOf(accuracy)] as string), 'volume')
  return tolerance.named({ label: `tolerance of a ${row.item} of ${row.capacity}, class ${accuracy}, ${row.edition}` })
}

/** A volume of a table; exact. */
export function tableVolume(text: Millilitres): Quantity<'volume'> {
  return asDimension(exact(text as string), 'volume')
}

function classOf(accuracy: AccuracyClass): AccuracyClass {
  if (accuracy === 'A' || accuracy === 'B') return accuracy
  throw unknownOption(accuracy, ['A', 'B'])
}

function noSuchItem(found: unknown): SolutionError {
  const items = [...new Set(glasswareTables.map(({ item }) => item))]
  return new SolutionError({
    code: 'solution/unknown-glassware',
    message: `${showFound(found)} is not in the tables of glassware.`,
    found: showFound(found),
    expected: items.join(', '),
  })
}

/** A size that is not made, or not in the table. */
export function noSuchSize(rows: readonly GlasswareRow[], capacity: Given<'volume'>): SolutionError {
  const [first] = rows as readonly [GlasswareRow, ...GlasswareRow[]]
  return new SolutionError({
    code: 'solution/unknown-glassware',
    message: `${first.edition} has no ${first.item} of ${capacity.toString()} with that scale.`,
    found: capacity.toString(),
    expected: rows.map(sizeText).join(', '),
  })
}

function divisionNeeded(rows: readonly GlasswareRow[]): SolutionError {
  const scales = rows.map(sizeText)
  return new SolutionError({
    code: 'solution/division-needed',
    message: 'That size is made with several scales of different tolerance: say the smallest division.',
    found: scales.join(', '),
    expected: 'the smallest division as the fifth argument',
  })
}

function sizeText({ capacity, division }: GlasswareSize): string {
  return division === undefined ? capacity : `${capacity} in ${division}`
}

/** A choice of another name. */
export function unknownOption(found: unknown, expected: readonly string[]): SolutionError {
  return new SolutionError({
    code: 'solution/unknown-option',
    message: `${showFound(found)} is not one of ${expected.join(', ')}.`,
    found: showFound(found),
    expected: expected.join(', '),
  })
}
