import { readSalt, type SaltPiece } from './salt-pieces.js'
import { saltCations } from './strong-electrolytes.js'

/** How many of one ion a formula unit gives. */
export interface IonCount {
  /** The ion with its charge: `Fe^3+`, `[Fe(CN)6]^4-`. */
  readonly ion: string
  readonly count: number
}

/** The ions of a salt without water, from its formula in plain notation; nothing where it is not made of known ions. */
export function ionsOfSalt(text: string): readonly IonCount[] | undefined {
  const pieces = readSalt(text)
  if (pieces === undefined || hasWeakBase(pieces)) return undefined
  const [charges, another] = neutralCharges(pieces)
  if (charges === undefined || another !== undefined) return undefined
  return pieces.map(({ written, count }, index) => ({ ion: charged(written, charges[index] as number), count }))
}

/** Whether a salt is the hydroxide of a cation that makes no strong base. */
export function isWeakHydroxide(text: string): boolean {
  const pieces = readSalt(text)
  return pieces !== undefined && hasWeakBase(pieces)
}

function hasWeakBase(pieces: readonly SaltPiece[]): boolean {
  const isHydroxide = pieces.some(({ written }) => written === 'OH')
  return (
    isHydroxide && saltCations.some((row) => !row.strongBase && pieces.some(({ written }) => written === row.written))
  )
}

/** Every way to give the pieces charges that add up to zero. */
function neutralCharges(pieces: readonly SaltPiece[]): readonly (readonly number[])[] {
  const ways = pieces.reduce<readonly (readonly (number | undefined)[])[]>(
    (started, { charges }) => started.flatMap((way) => (charges ?? [undefined]).map((charge) => [...way, charge])),
    [[]],
  )
  return ways.map((way) => completed(pieces, way)).filter((way) => way !== undefined)
}

/** The charges with that of the one complex, which follows from the others; nothing where they do not add up. */
function completed(pieces: readonly SaltPiece[], way: readonly (number | undefined)[]): readonly number[] | undefined {
  const known = pieces.reduce((sum, { count }, index) => sum + (way[index] ?? 0) * count, 0)
  const [complex, another] = pieces.filter(({ charges }) => charges === undefined)
  if (complex === undefined) return known === 0 ? (way as readonly number[]) : undefined
  const charge = -known / complex.count
  if (another !== undefined || charge === 0 || !Number.isInteger(charge)) return undefined
  return way.map((value) => value ?? charge)
}

function charged(written: string, charge: number): string {
  const size = Math.abs(charge)
  return `${written}^${size === 1 ? '' : size}${charge > 0 ? '+' : '-'}`
}
