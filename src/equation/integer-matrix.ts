import type { Fraction } from '../fraction.js'
import { leastCommonMultiple } from './integers.js'

/** What a balance needs of a species: its atoms and its charge. A `Formula` is one. */
export interface Composition {
  /** Atoms, element symbol to exact count. */
  readonly counts: ReadonlyMap<string, Fraction>
  /** Charge in elementary charges. */
  readonly charge: number
}

/**
 * One row for each element and one for the charge, one column for each species. A column holds `scale` times the species,
 * the least multiple without a fraction of an atom.
 */
export interface ExactMatrix {
  readonly rows: readonly bigint[][]
  readonly scales: readonly bigint[]
}

/** The matrix of some species in whole numbers of any size; the species after the first `leftCount` count negative. */
export function exactMatrix(species: readonly Composition[], leftCount: number): ExactMatrix {
  const scales = species.map(commonDenominator)
  const rows = new Map<string, bigint[]>()
  for (const [column, { counts, charge }] of species.entries()) {
    const factor = column < leftCount ? (scales[column] as bigint) : -(scales[column] as bigint)
    for (const [symbol, count] of counts) {
      rowOf(rows, symbol, species.length, 0n)[column] = (count.numerator * factor) / count.denominator
    }
    if (charge !== 0) rowOf(rows, chargeRow, species.length, 0n)[column] = BigInt(charge) * factor
  }
  return { rows: [...rows.values()], scales }
}

/** The same in plain numbers, where every count is a whole number and none is too large; otherwise nothing. */
export function smallMatrix(species: readonly Composition[], leftCount: number): readonly number[][] | undefined {
  const rows = new Map<string, number[]>()
  for (const [column, { counts, charge }] of species.entries()) {
    const sign = column < leftCount ? 1 : -1
    for (const [symbol, count] of counts) {
      const atoms = smallCount(count)
      if (atoms === undefined) return undefined
      rowOf(rows, symbol, species.length, 0)[column] = sign * atoms
    }
    if (charge !== 0) rowOf(rows, chargeRow, species.length, 0)[column] = sign * charge
  }
  return [...rows.values()]
}

/** A whole number that plain numbers hold exactly. */
function smallCount({ numerator, denominator }: Fraction): number | undefined {
  const value = Number(numerator)
  return denominator === 1n && value <= Number.MAX_SAFE_INTEGER ? value : undefined
}

/** The key of the row of charges, which no element symbol can be. */
const chargeRow = ''

function rowOf<T>(rows: Map<string, T[]>, key: string, length: number, zero: T): T[] {
  const known = rows.get(key)
  if (known !== undefined) return known
  const row = new Array<T>(length).fill(zero)
  rows.set(key, row)
  return row
}

function commonDenominator({ counts }: Composition): bigint {
  let multiple = 1n
  for (const { denominator } of counts.values()) multiple = leastCommonMultiple(multiple, denominator)
  return multiple
}
