import { elementInfo } from '../../element/index.js'
import { ionPattern } from '../ion-patterns.js'
import { metalRange, type Range, widestRange } from '../ions.js'
import { anions } from '../tables/anions.js'
import { cations } from '../tables/cations.js'
import { complexIons } from '../tables/complex-ions.js'
import { plainCations } from '../tables/plain-cations.js'
import type { Atom, Unit } from '../tree.js'
import { complexName, hasCentralAtom } from './complex-name.js'
import type { Piece, Reading } from './constituent.js'
import { romanNumeral } from './numerals.js'
import { unitText } from './unit-text.js'

/** Pieces of a formula read as ions, and how many units they take. */
interface Step {
  readonly piece: Piece
  readonly length: number
}

/** The ions that a formula may be made of, oxygen beside a halogen as hypohalite or not. */
export function piecesOf(units: readonly Unit[], hasHypohalite: boolean): readonly Piece[] {
  const pieces: Piece[] = []
  let index = 0
  while (index < units.length) {
    const step = pieceAt(units, index, hasHypohalite)
    pieces.push(step.piece)
    index += step.length
  }
  return pieces
}

function pieceAt(units: readonly Unit[], index: number, hasHypohalite: boolean): Step {
  const unit = units[index] as Unit
  if (unit.kind === 'group') return groupStep(unit.units, unit.count, unit.bracket)
  const complex = bareComplex(units, index) ?? oxocation(units, index)
  return complex ?? severalAtoms(units, index, hasHypohalite) ?? oneAtom(unit)
}

/** The whole as one ion of the tables: `UO2`, `H3O`. */
export function wholePiece(units: readonly Unit[]): Piece | undefined {
  const text = unitText(units)
  const readings = readingsOf(text, 1)
  return readings.length === 0 ? undefined : known(text, readings)
}

/** `(SO4)3`, `[Fe(CN)6]`: a complex whose charge follows from the rest, or an ion of the tables. */
function groupStep(units: readonly Unit[], count: number, bracket: string): Step {
  if (bracket === '[' && hasCentralAtom(units)) return { piece: complexPiece(units, count), length: 1 }
  const text = unitText(units)
  return { piece: known(text, readingsOf(text, count)), length: 1 }
}

function complexPiece(units: readonly Unit[], count: number): Piece {
  return {
    formula: `[${unitText(units)}]`,
    readings: [],
    count,
    nameAt: (charge) => complexName(units, charge),
  }
}

/** `K4Fe(CN)6`: a complex of the tables that is written without its brackets, behind its cation. */
function bareComplex(units: readonly Unit[], index: number): Step | undefined {
  const pair = units.slice(index, index + 2)
  const row = complexIons.find(({ formula }) => formula === unitText(pair))
  const isAnion = row?.charges.every((charge) => charge < 0) ?? false
  return isAnion && index > 0 ? { piece: complexPiece(pair, 1), length: 2 } : undefined
}

/** `UO2` and its like, in front of an anion. */
function oxocation(units: readonly Unit[], index: number): Step | undefined {
  const pair = units.slice(index, index + 2)
  const row = cations.find(({ formula }) => formula === unitText(pair))
  const isFollowed = units.length > index + 2
  if (row === undefined || !isFollowed || !oxometals.includes((units[index] as Atom).symbol)) return undefined
  return { piece: known(row.formula, readingsOf(row.formula, 1)), length: 2 }
}

const oxometals = ['U', 'V', 'Np', 'Pu', 'Ti', 'Zr']

function severalAtoms(units: readonly Unit[], index: number, hasHypohalite: boolean): Step | undefined {
  const pattern = ionPattern(units, index)
  const isHypohalite = ['OCl', 'OBr', 'OI'].includes(pattern?.text ?? '')
  const readings = pattern === undefined || (isHypohalite && !hasHypohalite) ? [] : readingsOf(pattern.text, 1)
  return pattern && readings.length > 0
    ? { piece: known(pattern.text, readings), length: pattern.atoms.length }
    : undefined
}

/** All rows of the tables for the letters of an ion. */
function readingsOf(text: string, count: number): readonly Reading[] {
  return [...cations, ...anions]
    .filter(({ formula }) => formula === text)
    .map(({ charge, name }) => ({ charge, name, count }))
}

function known(formula: string, readings: readonly Reading[]): Piece {
  return { formula, readings, count: 1 }
}

function oneAtom({ symbol, count }: Atom): Step {
  const plain = plainCations.find((row) => row.symbol === symbol)
  if (plain !== undefined) {
    const reading = { charge: plain.charge, count, name: elementInfo(symbol).name }
    return { piece: known(symbol, [reading]), length: 1 }
  }
  const [usual, widest] = [metalRange(symbol), widestRange(symbol)]
  if (usual !== undefined && widest !== undefined) return { piece: metalPiece(symbol, count, usual, widest), length: 1 }
  return { piece: known(symbol, nonmetalReadings(symbol, count)), length: 1 }
}

/** A metal whose oxidation number follows from the rest. */
function metalPiece(symbol: string, count: number, usual: Range, widest: Range): Piece {
  const nameAt = (charge: number, isUsual: boolean): string | undefined => {
    const [least, greatest] = isUsual ? usual : widest
    const isIn = charge >= Math.max(least, 1) && charge <= greatest
    return isIn ? `${elementInfo(symbol).name}(${romanNumeral(charge)})` : undefined
  }
  return { formula: symbol, readings: [], count, nameAt }
}

/** `O2` as two oxides, one peroxide, one superoxide. */
function nonmetalReadings(symbol: string, count: number): readonly Reading[] {
  const single = readingsOf(symbol, count)
  const several = anions.filter(({ formula }) => isMade(formula, symbol) && count % atomsIn(formula, symbol) === 0)
  return [
    ...single,
    ...several.map(({ formula, charge, name }) => ({ charge, name, count: count / atomsIn(formula, symbol) })),
  ]
}

function isMade(formula: string, symbol: string): boolean {
  return formula.startsWith(symbol) && atomsIn(formula, symbol) > 1
}

function atomsIn(formula: string, symbol: string): number {
  return Number(formula.slice(symbol.length)) || 1
}
