import { smallCommonDivisor } from './integers.js'

/** A row of whole numbers that plain numbers hold exactly. */
export type SmallRow = number[]

/** Above this no plain number is trusted to be exact. */
const limit = 2 ** 53
/** Rows with larger entries are divided by what the entries share. */
const large = 2 ** 20

/** A row of the echelon form with the column of its first entry. */
interface Step {
  readonly row: SmallRow
  readonly pivot: number
}

/**
 * The null space of a matrix of small whole numbers: elimination without fractions, on plain numbers.
 *
 * @param rows - The rows, which are used up.
 * @param columns - The number of columns.
 * @returns One vector of whole numbers without common divisor for each free column, or nothing where a number grew too large.
 */
export function smallNullSpace(rows: readonly SmallRow[], columns: number): readonly SmallRow[] | undefined {
  const left = [...rows]
  const steps: Step[] = []
  const free: number[] = []
  for (let column = 0; column < columns; column += 1) {
    const row = takePivot(left, column)
    if (row === undefined) free.push(column)
    else if (clearBelow(left, row, column)) steps.push({ row, pivot: column })
    else return undefined
  }
  const vectors = free.map((column) => freeVector(steps, column, columns))
  return vectors.every((vector) => vector !== undefined) ? vectors : undefined
}

/** Takes out the row with the smallest entry in the column that is not zero. */
function takePivot(rows: SmallRow[], column: number): SmallRow | undefined {
  let best = -1
  let size = Number.POSITIVE_INFINITY
  for (let index = 0; index < rows.length; index += 1) {
    const entry = Math.abs((rows[index] as SmallRow)[column] as number)
    if (entry === 0 || entry >= size) continue
    best = index
    size = entry
  }
  if (best < 0) return undefined
  const taken = rows[best]
  const last = rows.pop() as SmallRow
  if (best < rows.length) rows[best] = last
  return taken
}

function clearBelow(rows: readonly SmallRow[], pivot: SmallRow, column: number): boolean {
  for (const row of rows) if (row[column] !== 0 && !clear(row, pivot, column)) return false
  return true
}

/** Makes the entry of a row in a column zero by subtracting the pivot row; false where a number grew too large. */
function clear(row: SmallRow, pivot: SmallRow, column: number): boolean {
  const [entry, head] = [row[column] as number, pivot[column] as number]
  const divisor = smallCommonDivisor(entry, head) * Math.sign(head)
  const keep = head / divisor // above zero, so that no entry becomes -0
  const subtract = entry / divisor
  let largest = 0
  for (let index = column; index < row.length; index += 1) {
    const kept = keep * (row[index] as number)
    const taken = subtract * (pivot[index] as number)
    row[index] = kept - taken
    largest = Math.max(largest, Math.abs(kept) + Math.abs(taken))
  }
  if (largest > large) shrink(row, column)
  return largest < limit
}

function shrink(row: SmallRow, from: number): void {
  let divisor = 0
  for (let index = from; index < row.length && divisor !== 1; index += 1) {
    divisor = smallCommonDivisor(divisor, row[index] as number)
  }
  if (divisor <= 1) return
  for (let index = from; index < row.length; index += 1) row[index] = (row[index] as number) / divisor
}

/** The vector in which the free column is as small as it can be and every other free column is zero. */
function freeVector(steps: readonly Step[], free: number, columns: number): SmallRow | undefined {
  const vector = new Array<number>(columns).fill(0)
  vector[free] = 1
  for (let index = steps.length - 1; index >= 0; index -= 1) {
    const { row, pivot } = steps[index] as Step
    if (pivot < free && !solve(row, pivot, vector)) return undefined
  }
  return vector
}

/** Sets the entry of the pivot column so that the row is satisfied, scaling up the vector where it has to be. */
function solve(row: SmallRow, pivot: number, vector: SmallRow): boolean {
  let sum = 0
  let largest = 0
  for (let index = pivot + 1; index < row.length; index += 1) {
    const product = (row[index] as number) * (vector[index] as number)
    sum += product
    largest += Math.abs(product)
  }
  const head = row[pivot] as number
  const divisor = smallCommonDivisor(sum, head)
  const scale = Math.abs(head) / divisor
  for (let index = pivot + 1; index < row.length; index += 1) {
    vector[index] = (vector[index] as number) * scale
    largest = Math.max(largest, Math.abs(vector[index] as number))
  }
  vector[pivot] = -(sum / divisor) * Math.sign(head)
  return largest < limit
}
