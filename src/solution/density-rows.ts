import { type FormulaLike, formulaOf } from '../formula/index.js'
import { asDimension, constant, exact, type Quantity } from '../quantity/index.js'
import type { TextOf } from '../stoichiometry/given.js'
import { speciesKey } from '../stoichiometry/species.js'
import { densityTables } from './density-data.js'
import type { DensityTable } from './density-table.js'
import { densityNaming } from './naming.js'
import { SolutionError } from './solution-error.js'

/** One row of a table. */
export interface Point {
  readonly w: Quantity<'ratio'>
  readonly density: Quantity<'density'>
}

/** Two neighbouring rows. */
export type Interval = readonly [Point, Point]

/** A table as numbers. */
export interface ReadTable {
  readonly of: string
  readonly intervals: readonly Interval[]
}

/** A memo, so that a row is the same number wherever it is used. */
const readTables: Map<DensityTable, readonly Interval[]> = /* @__PURE__ */ new Map()

/** The table of a solute. */
export function tableOf(substance: FormulaLike): ReadTable {
  const of = formulaOf(substance).text
  const table = densityTables.find((one) => speciesKey(one.substance) === speciesKey(substance))
  if (table === undefined) throw noTable(of)
  const intervals = readTables.get(table) ?? intervalsOf(table)
  readTables.set(table, intervals)
  return { of, intervals }
}

function intervalsOf({ points, substance }: DensityTable): readonly Interval[] {
  const read = points.map(([w, density]) => pointOf(w, density, substance))
  return read.slice(1).map((high, index): Interval => [read[index] as Point, high])
}

function pointOf(w: TextOf<'ratio'>, density: TextOf<'density'>, of: string): Point {
  return {
    w: asDimension(exact(w as string), 'ratio'),
    density: asDimension(constant(density as string, densityNaming(of)), 'density'),
  }
}

/** Two known pairs of what is asked (x) and what is answered (y). */
interface Line<X extends 'ratio' | 'density', Y extends 'ratio' | 'density'> {
  readonly x: readonly [Quantity<X>, Quantity<X>]
  readonly y: readonly [Quantity<Y>, Quantity<Y>]
}

/** One column of a table; rows that two intervals share stand twice. */
export function columnOf<K extends keyof Point>(intervals: readonly Interval[], name: K): readonly Point[K][] {
  return intervals.flat().map((point) => point[name])
}

/** For asking the density. */
export function byMassFraction([low, high]: Interval): Line<'ratio', 'density'> {
  return { x: [low.w, high.w], y: [low.density, high.density] }
}

/** For asking the mass fraction. */
export function byDensity([low, high]: Interval): Line<'density', 'ratio'> {
  return { x: [low.density, high.density], y: [low.w, high.w] }
}

/** y at x on the straight line through two points; at a point, the point itself. */
export function interpolate<X extends 'ratio' | 'density', Y extends 'ratio' | 'density'>(
  x: Quantity<X>,
  line: Line<X, Y>,
): Quantity<Y> {
  const [from, to] = line.x
  const [low, high] = line.y
  if (x.equals(from)) return low
  if (x.equals(to)) return high
  const part = (x.minus(from) as Quantity<'ratio'>).dividedBy(to.minus(from) as Quantity<'ratio'>)
  return low.plus(high.minus(low).times(part))
}

/** Whether a number lies between two others, or is one of them. */
export function isBetween<D extends 'ratio' | 'density'>(x: Quantity<D>, a: Quantity<D>, b: Quantity<D>): boolean {
  return x.compare(a) * x.compare(b) <= 0
}

function noTable(of: string): SolutionError {
  return new SolutionError({
    code: 'solution/no-density-table',
    message: `There is no table of densities for solutions of ${of}.`,
    found: of,
    expected: densityTables.map(({ substance }) => substance).join(', '),
    hint: 'Give the density that stands on the bottle; it is never guessed.',
  })
}
