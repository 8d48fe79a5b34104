import { elementInfo } from '../../element/index.js'
import { widestRange } from '../ions.js'
import { type CentralAtomRow, centralAtoms } from '../tables/central-atoms.js'
import { type LigandRow, ligands } from '../tables/ligands.js'
import type { Unit } from '../tree.js'
import { multiplied, romanNumeral } from './numerals.js'
import { unitText } from './unit-text.js'

interface Bound {
  readonly row: LigandRow
  readonly count: number
}

/** The parts of a complex: one central atom and its ligands. */
interface Complex {
  readonly central: CentralAtomRow
  readonly bound: readonly Bound[]
}

/**
 * The name of a complex of a charge: ligands by the alphabet, the central atom, its oxidation number.
 *
 * @returns Nothing where the central atom, a ligand or the oxidation number is outside the tables.
 */
export function complexName(units: readonly Unit[], charge: number): string | undefined {
  const complex = complexOf(units)
  if (complex === undefined) return undefined
  const { central, bound } = complex
  const number = bound.reduce((sum, { row, count }) => sum - row.charge * count, charge)
  const oxidation = number <= greatestOxidation(central.symbol, bound) ? romanNumeral(number) : undefined
  const around = ligandNames(bound)
  if (oxidation === undefined || around === undefined) return undefined
  return `${around}${charge < 0 ? central.ate : elementInfo(central.symbol).name}(${oxidation})`
}

/** The greatest oxidation number a central atom is known with; oxygen and nitrogen atoms may raise it to that of the group. */
function greatestOxidation(symbol: string, bound: readonly Bound[]): number {
  const [, greatest] = widestRange(symbol) as readonly [number, number]
  return bound.some(({ row }) => row.charge < -1) ? 8 : greatest
}

function complexOf(units: readonly Unit[]): Complex | undefined {
  const centres = units.flatMap((unit, at) => centralAt(unit).map((row) => ({ row, at, count: unit.count })))
  const [centre] = centres
  if (centre?.count !== 1) return undefined
  const [before, after] = [boundIn(units.slice(0, centre.at)), boundIn(units.slice(centre.at + 1))]
  return before && after && { central: centre.row, bound: joined([...before, ...after]) }
}

/** Whether a complex of these pieces has a central atom of the tables. */
export function hasCentralAtom(units: readonly Unit[]): boolean {
  return units.some((unit) => centralAt(unit).length > 0)
}

function centralAt(unit: Unit): readonly CentralAtomRow[] {
  return unit.kind === 'atom' ? centralAtoms.filter(({ symbol }) => symbol === unit.symbol) : []
}

/** The ligands that pieces of a formula are; nothing where one is none. */
function boundIn(units: readonly Unit[]): readonly Bound[] | undefined {
  const bound: Bound[] = []
  let index = 0
  while (index < units.length) {
    const found = boundAt(units, index)
    if (found === undefined) return undefined
    bound.push(found.bound)
    index += found.length
  }
  return bound
}

interface Step {
  readonly bound: Bound
  readonly length: number
}

function boundAt(units: readonly Unit[], index: number): Step | undefined {
  const unit = units[index] as Unit
  if (unit.kind === 'group') return step(unitText(unit.units), unit.count, 1)
  const inline = ligands.find(({ formula }) => formula.length > 1 && lengthAt(units, index, formula) > 1)
  if (inline !== undefined) return step(inline.formula, 1, lengthAt(units, index, inline.formula))
  return step(unit.symbol, unit.count, 1)
}

function step(formula: string, count: number, length: number): Step | undefined {
  const row = ligands.find((ligand) => ligand.formula === formula)
  return row && { bound: { row, count }, length }
}

/** How many atoms from a place on spell a formula; 0 where they do not. */
function lengthAt(units: readonly Unit[], index: number, formula: string): number {
  let length = 1
  while (index + length <= units.length && unitText(units.slice(index, index + length)).length < formula.length)
    length += 1
  return unitText(units.slice(index, index + length)) === formula ? length : 0
}

/** Ligands of one name counted together. */
function joined(bound: readonly Bound[]): readonly Bound[] {
  const names = [...new Set(bound.map(({ row }) => row.name))]
  return names.map((name) => {
    const same = bound.filter(({ row }) => row.name === name)
    return { row: (same[0] as Bound).row, count: same.reduce((sum, { count }) => sum + count, 0) }
  })
}

function ligandNames(bound: readonly Bound[]): string | undefined {
  const sorted = [...bound].sort((a, b) => (letters(a.row.name) < letters(b.row.name) ? -1 : 1))
  const names = sorted.map(({ row, count }) => ligandName(row, count))
  return names.includes(undefined) ? undefined : names.join('')
}

/** A name without the numbers in front of it, for the alphabet. */
function letters(name: string): string {
  return name.slice([...name].findIndex((one) => one >= 'a'))
}

/** `hexaammine`, `tris(oxalato)`, `nitrito-κN-`, `(ethane-1,2-diamine)`. */
function ligandName({ name, isGrouped = false }: LigandRow, count: number): string | undefined {
  if (count > 1) return multiplied(name, count, isGrouped)
  if (name.includes('κ')) return `${name}-`
  return name.includes(',') ? `(${name})` : name
}
