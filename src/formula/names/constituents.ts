import type { Branch } from '../tree.js'
import type { Constituent, Piece, Reading } from './constituent.js'
import { piecesOf, wholePiece } from './pieces.js'

/** Most ways to read a formula that are tried. */
const mostWays = 64

/**
 * The ions of a part with their names, where exactly one charge follows from the others; cations first, each by the alphabet.
 *
 * @returns Nothing where a piece is outside the tables, or the charges cannot add up to the charge of the part.
 */
export function constituentsOf({ units, charge }: Branch): readonly Constituent[] | undefined {
  const whole = charge === 0 ? undefined : wholePiece(units)
  const choices = whole === undefined ? [piecesOf(units, true), piecesOf(units, false)] : [[whole]]
  const solved = solveAny(choices, charge, true) ?? solveAny(choices, charge, false)
  return solved && sorted(joined(solved))
}

/** The first way to read one of the choices of pieces that adds up. */
function solveAny(
  choices: readonly (readonly Piece[])[],
  charge: number,
  isUsual: boolean,
): readonly Constituent[] | undefined {
  for (const pieces of choices) {
    for (const readings of waysToRead(pieces)) {
      const solved = solve(pieces, readings, charge, isUsual)
      if (solved !== undefined) return solved
    }
  }
  return undefined
}

/** Every choice of one reading for each piece that has any. */
function waysToRead(pieces: readonly Piece[]): readonly (readonly (Reading | undefined)[])[] {
  let ways: readonly (readonly (Reading | undefined)[])[] = [[]]
  for (const { readings } of pieces) {
    const choices = readings.length === 0 ? [undefined] : readings
    ways = ways.flatMap((way) => choices.map((choice) => [...way, choice])).slice(0, mostWays)
  }
  return ways
}

function solve(
  pieces: readonly Piece[],
  readings: readonly (Reading | undefined)[],
  total: number,
  isUsual: boolean,
): readonly Constituent[] | undefined {
  const open = pieces.filter((_, index) => readings[index] === undefined)
  const sum = readings.reduce((all, reading) => all + (reading === undefined ? 0 : reading.charge * reading.count), 0)
  const [last] = open
  if (open.length > 1 || (last === undefined && sum !== total)) return undefined
  const charge = last === undefined ? 0 : (total - sum) / last.count
  const found = pieces.map((piece, index) => constituent(piece, readings[index], charge, isUsual))
  return found.every((one) => one !== undefined) ? found : undefined
}

function constituent(
  { formula, nameAt, count }: Piece,
  reading: Reading | undefined,
  charge: number,
  isUsual: boolean,
): Constituent | undefined {
  if (reading !== undefined) return { formula, ...reading }
  const name = Number.isInteger(charge) ? nameAt?.(charge, isUsual) : undefined
  return name === undefined ? undefined : { formula, name, charge, count }
}

/** Ions of one name counted together. */
function joined(constituents: readonly Constituent[]): readonly Constituent[] {
  const names = [...new Set(constituents.map(({ name }) => name))]
  return names.map((name) => {
    const same = constituents.filter((one) => one.name === name)
    return { ...(same[0] as Constituent), count: same.reduce((sum, { count }) => sum + count, 0) }
  })
}

function sorted(constituents: readonly Constituent[]): readonly Constituent[] {
  const rank = ({ charge, name }: Constituent): string => `${charge > 0 ? 0 : 1}${name}`
  return [...constituents].sort((a, b) => (rank(a) < rank(b) ? -1 : 1))
}
