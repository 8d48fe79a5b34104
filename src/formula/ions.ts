import { ionPattern, type Pattern } from './ion-patterns.js'
import { oxidationRanges } from './tables/oxidation-ranges.js'
import type { Atom, Unit } from './tree.js'

/** Ions of one kind, as they stand in a formula. */
export interface Ion {
  /** Its letters, without its charge: `SO4`, `Fe`. */
  readonly text: string
  /** How many. */
  readonly count: number
  /** Least and greatest charge of one. */
  readonly least: number
  readonly greatest: number
}

/** Which charges count: all that are known (to doubt with care), or the usual ones (to suggest something). */
export type Strictness = 'known' | 'usual'

/** Least and greatest charge. */
export type Range = readonly [least: number, greatest: number]

const halogens = ['F', 'Cl', 'Br', 'I']
const known: ReadonlyMap<string, Range> = /* @__PURE__ */ rangesBy('known')
const usual: ReadonlyMap<string, Range> = /* @__PURE__ */ rangesBy('usual')
/** What other elements are between metals: per atom, by strictness. Peroxides, superoxides and polysulfides are known. */
const nonmetals: Readonly<Record<Strictness, Readonly<Record<string, Range>>>> = {
  known: { F: [-1, -1], Cl: [-1, -1], O: [-2, -1 / 3], S: [-2, 0], Se: [-2, 0], H: [-1, 1] },
  usual: { F: [-1, -1], Cl: [-1, -1], Br: [-1, -1], I: [-1, -1], O: [-2, -2], S: [-2, -2], Se: [-2, -2], Te: [-2, -2] },
}

/** The ions that a formula is made of, in order; nothing where its letters do not say. */
export function ionsOf(units: readonly Unit[], strictness: Strictness): readonly Ion[] | undefined {
  const ions: Ion[] = []
  let index = 0
  while (index < units.length) {
    const step = ionsAt(units, index, strictness)
    if (step === undefined) return undefined
    ions.push(...step.ions)
    index += step.length
  }
  return ions
}

/** Ions, and how many pieces of the formula they take. */
interface Step {
  readonly ions: readonly Ion[]
  readonly length: number
}

function ionsAt(units: readonly Unit[], index: number, strictness: Strictness): Step | undefined {
  const unit = units[index] as Unit
  if (unit.kind === 'group') {
    const inside = ionsOf(unit.units, strictness)
    return inside && { ions: inside.map((ion) => ({ ...ion, count: ion.count * unit.count })), length: 1 }
  }
  const pattern = ionPattern(units, index)
  if (pattern !== undefined) return { ions: [ionOf(pattern)], length: pattern.atoms.length }
  const range = rangeOf(units, index, unit, strictness)
  return range && { ions: [{ text: unit.symbol, count: unit.count, least: range[0], greatest: range[1] }], length: 1 }
}

function ionOf({ text, least, greatest }: Pattern): Ion {
  return { text, count: 1, least, greatest }
}

function rangeOf(units: readonly Unit[], index: number, atom: Atom, strictness: Strictness): Range | undefined {
  const { symbol, count } = atom
  if (isAcidHydrogen(units, index, symbol, strictness)) return [1, 1]
  const metal = (strictness === 'known' ? known : usual).get(symbol)
  if (metal !== undefined) return metal
  if (isMixedHalide(units[index - 1], symbol)) return undefined
  if (strictness === 'known' && (symbol === 'Br' || symbol === 'I')) return [-1, count < 3 ? -1 : -1 / count]
  const table = nonmetals[strictness]
  return Object.hasOwn(table, symbol) ? table[symbol] : undefined
}

/** Hydrogen in front of an oxoanion; in a binary acid, where it stands first. */
function isAcidHydrogen(units: readonly Unit[], index: number, symbol: string, strictness: Strictness): boolean {
  if (symbol !== 'H' && symbol !== 'D' && symbol !== 'T') return false
  const behind = ionPattern(units, index + 1)
  return (behind !== undefined && behind.least < 0) || (strictness === 'usual' && index === 0)
}

/** Two halogens side by side, as in KICl4 and PbFCl, may be one anion or two. */
function isMixedHalide(before: Unit | undefined, symbol: string): boolean {
  return halogens.includes(symbol) && before?.kind === 'atom' && halogens.includes(before.symbol)
}

/** Least and greatest usual charge of a metal; nothing for other elements. */
export function metalRange(symbol: string): Range | undefined {
  return usual.get(symbol)
}

/** Least and greatest known charge of a metal; nothing for other elements. */
export function widestRange(symbol: string): Range | undefined {
  return known.get(symbol)
}

function rangesBy(strictness: Strictness): Map<string, Range> {
  return new Map(
    oxidationRanges.flatMap((row) => row.symbols.split(' ').map((symbol) => [symbol, row[strictness]] as const)),
  )
}
