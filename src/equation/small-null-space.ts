import { smallCommonDivisor } from './integers.js'

/** Above this no plain number is trusted to be exact. */
const limit = 2 ** 53
/** Rows with larger entries are divided by what the entries share. */
const large = 2 ** 16

/**
 * The null space of a matrix of small whole numbers: Gauss-Jordan elimination without fractions, on plain numbers.
 *
 * @param rows - The rows, which are used up.
 * @param columns - The number of columns.
 * @returns One vector of whole numbers without common divisor for each free column, or nothing where a number grew too large.
 */
export function smallNullSpace(rows: readonly number[][], columns: number): readonly number[][] | undefined {
  const left = [...rows]
  const done: number[][] = []
  const pivots: number[] = []
  for (let column = 0; column < columns; column += 1) {
    const pivot = takePivot(left, column)
    if (pivot === undefined) continue
    if (!clearAll(left, pivot, column) || !clearAll(done, pivot, column)) return undefined
    done.push(pivot)
    pivots.push(column)
  }
  return freeVectors(done, pivots, columns)
}

/** Takes out the row with the smallest entry in the column that is not zero. */
function takePivot(rows: number[][], column: number): number[] | undefined {
  let best = -1
  let size = Number.POSITIVE_INFINITY
  for (const [index, row] of rows.entries()) {
    const entry = Math.abs(row[column] as number)
    if (entry === 0 || entry >= size) continue
    best = index
    size = entry
  }
  return best < 0 ? undefined : rows.splice(best, 1)[0]
}

function clearAll(rows: readonly number[][], pivot: readonly number[], column: number): boolean {
  return rows.every((row) => clear(row, pivot, column))
}

/** Makes the entry of a row in a column zero by subtracting the pivot row; false where a number grew too large. */
function clear(row: number[], pivot: readonly number[], column: number): boolean {
  const entry = row[column] as number
  if (entry === 0) return true
  const head = pivot[column] as number
  const divisor = smallCommonDivisor(entry, head)
  const [keep, subtract] = [head / divisor, entry / divisor]
  let largest = 0
  for (let index = 0; index < row.length; index += 1) {
    const [kept, taken] = [keep * (row[index] as number), subtract * (pivot[index] as number)]
    row[index] = kept - taken
    largest = Math.max(largest, Math.abs(kept) + Math.abs(taken))
  }
  if (largest > large) shrink(row)
  return largest < limit
}

function shrink(row: number[]): void {
  let divisor = 0
  for (const entry of row) divisor = smallCommonDivisor(divisor, entry)
  if (divisor <= 1) return
  for (let index = 0; index < row.length; index += 1) row[index] = (row[index] as number) / divisor
}

function freeVectors(
  rows: readonly number[][],
  pivots: readonly number[],
  columns: number,
): readonly number[][] | undefined {
  const vectors: number[][] = []
  for (let column = 0; column < columns; column += 1) {
    if (pivots.includes(column)) continue
    const vector = freeVector(rows, pivots, column, columns)
    if (vector === undefined) return undefined
    vectors.push(vector)
  }
  return vectors
}

/** The vector in which the free column is as small as it can be and every other free column is zero. */
function freeVector(
  rows: readonly number[][],
  pivots: readonly number[],
  free: number,
  columns: number,
): number[] | undefined {
  const heads = rows.map((row, index) => reducedHead(row, pivots[index] as number, free))
  const multiple = heads.reduce(smallCommonMultiple, 1)
  const vector = new Array<number>(columns).fill(0)
  vector[free] = multiple
  for (const [index, row] of rows.entries()) {
    const pivot = pivots[index] as number
    const head = heads[index] as number
    vector[pivot] = (-(row[free] as number) / ((row[pivot] as number) / head)) * (multiple / head)
  }
  return vector.every(Number.isSafeInteger) ? vector : undefined
}

/** The head of a row, without what it shares with the free column; keeps its sign. */
function reducedHead(row: readonly number[], pivot: number, free: number): number {
  const head = row[pivot] as number
  return head / smallCommonDivisor(head, row[free] as number)
}

function smallCommonMultiple(a: number, b: number): number {
  return (a / smallCommonDivisor(a, b)) * Math.abs(b)
}
