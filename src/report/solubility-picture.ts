import { checkTable } from '../crystallisation/check-table.js'
import { type Liquor, readLiquor } from '../crystallisation/crop-input.js'
import { findTable } from '../crystallisation/find-table.js'
import {
  type Batch,
  type ExpectedCrop,
  expectedCrop,
  type SolubilityTable,
  solubilityOf,
} from '../crystallisation/index.js'
import { record } from '../crystallisation/record.js'
import { tabulated } from '../crystallisation/table-value.js'
import { formatFormula } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import { chosen, type Given } from '../stoichiometry/given.js'
import { type CurvePoint, coolingPath } from './cooling-path.js'
import { coloured, colours, numbers, type Picture, pictureOf } from './picture.js'

/** A batch that is cooled, and from where; text is exact. */
export interface CooledBatch extends Batch {
  /** At what temperature the crystals are filtered off. */
  readonly temperature: Given<'temperature'>
  /** At what temperature cooling begins; the highest in the table unless said. */
  readonly from?: Given<'temperature'> | undefined
  /** The solubilities; the built-in table unless said. */
  readonly table?: SolubilityTable | undefined
}

/**
 * Draws the solubility of a salt over the temperature, one line for each solid that crystallises, with the path of a cooled liquor:
 * level until it meets the curve, then along it to where it is filtered.
 *
 * @param batch - The crystals, the dissolved salt, the water, and between which temperatures it is cooled.
 * @returns A Vega-Lite specification. Points are as tabulated; the straight lines between them are for the eye.
 * @throws {@link CrystallisationError} `crystallisation/unknown-salt` and the other codes of `expectedCrop` and `solubilityOf`.
 * @source The solubilities: as the picture says under its heading.
 *
 * @example
 * ```ts
 * import { solubilityPicture } from 'saltwright/report'
 *
 * const batch = { crystal: 'ZnSO4·7H2O', amount: '0.0400 mol', water: '11 g', temperature: '5 degC', from: '60 degC' } as const
 * solubilityPicture(batch).description
 * // => 'Solubility of ZnSO4 over the temperature. Cooled from 60 °C to 5 °C, the liquor gives 4.38 g of ZnSO4·7H2O and keeps 7.12 g.'
 * ```
 */
export function solubilityPicture(batch: CooledBatch): Picture {
  const { table: own } = record(batch, 'a batch: { crystal, amount, water, temperature }')
  const crop = expectedCrop({ ...batch, solubility: own })
  const liquor = readLiquor(batch)
  const table = own === undefined ? findTable(batch.crystal) : checkTable(own)
  const from = startOf(batch, table)
  const to = chosen(batch.temperature, 'temperature', { label: 'temperature of filtration' })
  const path = coolingPath(
    perHundred(liquor.saltMass.dividedBy(liquor.waterMass)),
    between(table, celsius(from), celsius(to)),
  )
  const solids = [...new Set(table.phases.map(({ crystal }) => formatFormula(crystal, 'unicode')))]
  return pictureOf(words(crop, liquor, table, `from ${from} to ${to}`), {
    height: 300,
    layer: [curveOf(table, solids), pathOf(path), endOf(path, crop)],
  })
}

function words(
  { crystal, crop, loss }: ExpectedCrop,
  { salt }: Liquor,
  { source, name }: SolubilityTable,
  range: string,
): Parameters<typeof pictureOf>[0] {
  return {
    title: `Cooling a solution of ${name}`,
    subtitle: [`Solubilities in pure water: ${source}`],
    description: `Solubility of ${salt} over the temperature. Cooled ${range}, the liquor gives ${crop} of ${crystal} and keeps ${loss}.`,
  }
}

function startOf({ from }: CooledBatch, table: SolubilityTable): Quantity<'temperature'> {
  const tabulatedAt = table.phases.flatMap((phase) => phase.celsius)
  const highest = tabulatedAt.reduce((most, at) => Math.max(most, at))
  return chosen(from ?? (`${highest} degC` as `${number} degC`), 'temperature', { label: 'where cooling begins' })
}

function celsius(temperature: Quantity<'temperature'>): number {
  return temperature.to('degC').value.toNumber()
}

function perHundred(ratio: Quantity<'ratio'>): number {
  return ratio.to('%').value.toNumber()
}

/** Solubilities at both ends and at every tabulated temperature between, by falling temperature. */
function between(table: SolubilityTable, from: number, to: number): readonly CurvePoint[] {
  const inside = tabulatedPoints(table).filter((point) => point.celsius < from && point.celsius > to)
  const ends = [from, to].map((at) => ({ celsius: at, grams: perHundred(solubilityAt(table, at)) }))
  return [...ends.slice(0, 1), ...inside.reverse(), ...ends.slice(1)]
}

function solubilityAt(table: SolubilityTable, at: number): Quantity<'ratio'> {
  return solubilityOf(table.salt, `${at} degC`, { table }).massRatio
}

interface TabulatedPoint extends CurvePoint {
  readonly solid: string
}

function tabulatedPoints(table: SolubilityTable): TabulatedPoint[] {
  return table.phases.flatMap((phase) =>
    phase.celsius.map((at, index) => ({
      celsius: at,
      grams: perHundred(tabulated(table, phase, index)),
      solid: formatFormula(phase.crystal, 'unicode'),
    })),
  )
}

const x = numbers('celsius', 'temperature, °C')

function y(salt: string): object {
  return numbers('grams', `g of ${formatFormula(salt, 'unicode')} for 100 g of water`)
}

function curveOf(table: SolubilityTable, solids: readonly string[]): object {
  return {
    data: { values: tabulatedPoints(table) },
    mark: { type: 'line', point: { size: 40 } },
    encoding: {
      x,
      y: y(table.salt),
      color: coloured('solid', 'solid', solids, [colours.blue, colours.green, colours.orange, colours.grey]),
    },
  }
}

function pathOf(path: readonly CurvePoint[]): object {
  return {
    data: { values: path.map((point, order) => ({ ...point, order })) },
    mark: { type: 'line', color: colours.red, strokeWidth: 3, strokeDash: [7, 4] },
    encoding: { x, y: numbers('grams', ''), order: { field: 'order', type: 'quantitative' } },
  }
}

function endOf(path: readonly CurvePoint[], { crop, loss }: ExpectedCrop): object {
  const [end] = path.slice(-1)
  return {
    data: { values: [{ ...end, shown: `${crop} crystallise, ${loss} stay dissolved` }] },
    mark: { type: 'text', align: 'left', dx: 10, dy: 18, fontSize: 12, color: colours.red },
    encoding: { x, y: numbers('grams', ''), text: { field: 'shown' } },
  }
}
