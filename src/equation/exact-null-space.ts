import { greatestCommonDivisor } from '../fraction.js'
import { leastCommonMultiple, withoutCommonDivisor } from './integers.js'

type Row = readonly bigint[]

/** Rows with one pivot column each, in which every other row has a zero. */
export interface ReducedRows {
  readonly rows: readonly Row[]
  /** The pivot column of each row, rising. */
  readonly pivots: readonly number[]
}

/** Gauss-Jordan elimination without fractions, on whole numbers of any size. */
export function reduceRows(rows: readonly Row[], columns: number): ReducedRows {
  let left = rows
  let done: readonly Row[] = []
  const pivots: number[] = []
  for (let column = 0; column < columns; column += 1) {
    const pivot = left.find((row) => row[column] !== 0n)
    if (pivot === undefined) continue
    left = left.filter((row) => row !== pivot).map((row) => cleared(row, pivot, column))
    done = [...done.map((row) => cleared(row, pivot, column)), pivot]
    pivots.push(column)
  }
  return { rows: done, pivots }
}

/**
 * The null space of a matrix of whole numbers of any size.
 *
 * @param rows - The rows of the matrix.
 * @param columns - The number of columns.
 * @returns One vector of whole numbers without common divisor for each free column.
 */
export function exactNullSpace(rows: readonly Row[], columns: number): readonly Row[] {
  const reduced = reduceRows(rows, columns)
  const free = [...Array(columns).keys()].filter((column) => !reduced.pivots.includes(column))
  return free.map((column) => freeVector(reduced, column, columns))
}

/** A row with a zero in the column, by subtracting the pivot row; without common divisor, so that numbers stay short. */
function cleared(row: Row, pivot: Row, column: number): Row {
  const [entry, head] = [row[column] as bigint, pivot[column] as bigint]
  if (entry === 0n) return row
  return withoutCommonDivisor(row.map((value, index) => value * head - (pivot[index] as bigint) * entry))
}

/** The vector in which the free column is as small as it can be and every other free column is zero. */
function freeVector({ rows, pivots }: ReducedRows, free: number, columns: number): Row {
  const vector = new Array<bigint>(columns).fill(0n)
  const multiple = rows
    .map((row, index) => headShare(row, pivots[index] as number, free))
    .reduce(leastCommonMultiple, 1n)
  vector[free] = multiple
  for (const [index, row] of rows.entries()) {
    const pivot = pivots[index] as number
    vector[pivot] = (-(row[free] as bigint) * multiple) / (row[pivot] as bigint)
  }
  return vector
}

function headShare(row: Row, pivot: number, free: number): bigint {
  const head = row[pivot] as bigint
  const share = head / greatestCommonDivisor(head, row[free] as bigint)
  return share < 0n ? -share : share
}
