import { isDigit, skipDigits } from './characters.js'
import { saltAnions, saltCations } from './strong-electrolytes.js'

/** A piece of a salt's formula: an ion without its charge, and the number behind it. */
export interface SaltPiece {
  readonly written: string
  readonly count: number
  /** The charges one of it may have; of a complex in square brackets none are known. */
  readonly charges: readonly number[] | undefined
  /** The place behind the piece. */
  readonly end: number
}

/** An ion of the tables. */
interface Row {
  readonly written: string
  readonly charges: readonly number[]
}

/**
 * Reads a salt from its first to its last character: cations and then an anion, an organic anion before its cation, complexes
 * in square brackets on either side. Nothing where it is made of anything else.
 */
export function readSalt(text: string): readonly SaltPiece[] | undefined {
  const pieces: SaltPiece[] = []
  for (let at = 0; at < text.length; ) {
    const piece = pieceAt(text, at, pieces.length === 0)
    if (piece === undefined) return undefined
    pieces.push(piece)
    at = piece.end
  }
  return pieces.length > 1 ? pieces : undefined
}

function pieceAt(text: string, at: number, isFirst: boolean): SaltPiece | undefined {
  if (text.charAt(at) === '[') return complexAt(text, at)
  const anion = ionAt(text, at, anionRows())
  if (anion !== undefined && !isFirst && anion.end === text.length) return anion
  return ionAt(text, at, saltCations) ?? (isFirst ? anion : undefined)
}

function anionRows(): readonly Row[] {
  return saltAnions.map(({ written, charge }) => ({ written, charges: [charge] }))
}

/** The longest ion of a table that stands here, bare or in round brackets. One that ends within a symbol leaves a small letter, where none begins. */
function ionAt(text: string, at: number, rows: readonly Row[]): SaltPiece | undefined {
  const inBrackets = text.charAt(at) === '('
  const start = inBrackets ? at + 1 : at
  const found = rows.filter(({ written }) => text.startsWith(written, start))
  const [longest] = [...found].sort((a, b) => b.written.length - a.written.length)
  if (longest === undefined) return undefined
  const end = start + longest.written.length
  if (!inBrackets) return counted(text, end, longest)
  return text.charAt(end) === ')' ? counted(text, end + 1, longest) : undefined
}

function complexAt(text: string, at: number): SaltPiece | undefined {
  const end = text.indexOf(']', at) + 1
  return counted(text, end, { written: text.slice(at, end), charges: undefined })
}

function counted(text: string, at: number, ion: Pick<SaltPiece, 'written' | 'charges'>): SaltPiece {
  const end = skipDigits(text, at, text.length)
  return { ...ion, count: isDigit(text.charCodeAt(at)) ? Number(text.slice(at, end)) : 1, end }
}
