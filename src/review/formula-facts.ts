import { attempt } from '../errors.js'
import { parseFormula } from '../formula/index.js'
import { readFormulaText } from '../formula/reading.js'
import type { Token } from '../formula/scan.js'
import { type Branch, treeOf, type Unit } from '../formula/tree.js'

/** How many atoms more, or fewer, of each element. */
export type AtomChange = ReadonlyMap<string, number>

/** What can be misread in a formula. */
export interface FormulaFacts {
  /** The formula. */
  readonly text: string
  /** Water of crystallisation per formula unit. */
  readonly water: number
  /** Its parts between the dots, without that water; none where the formula is more than a tree can say. */
  readonly branches: readonly Branch[]
}

/** What a formula says; undefined for text that is none, or whose water is unknown. */
export function formulaFacts(text: string): FormulaFacts | undefined {
  const tokens: Token[] = []
  const read = attempt(() => {
    readFormulaText(text, tokens)
    return parseFormula(text).hydration
  })
  if (!read.ok || read.value === null) return undefined
  const branches = treeOf(tokens) ?? []
  const isPlain = branches.every(({ times }) => Number.isInteger(Number(times)))
  return {
    text,
    water: read.value.toNumber(),
    branches: isPlain ? branches.filter(({ units }) => !isWater(units)) : [],
  }
}

/** Whether units are one molecule of water. */
function isWater([hydrogen, oxygen, ...more]: readonly Unit[]): boolean {
  return more.length === 0 && isAtoms(hydrogen, 'H', 2) && isAtoms(oxygen, 'O', 1)
}

function isAtoms(unit: Unit | undefined, symbol: string, count: number): boolean {
  return unit?.kind === 'atom' && unit.symbol === symbol && unit.count === count
}

/** Molecules of water more, or fewer. */
export function waterChange(molecules: number): AtomChange {
  return new Map([
    ['H', 2 * molecules],
    ['O', molecules],
  ])
}

/** A bracket or an atom with how often the whole of what it stands in counts. */
interface Placed<T extends Unit> {
  readonly unit: T
  readonly times: number
}

function placedUnits({ branches }: FormulaFacts): readonly Placed<Unit>[] {
  return branches.flatMap(({ units, times }) => placed(units, Number(times)))
}

function placed(units: readonly Unit[], times: number): readonly Placed<Unit>[] {
  return units.flatMap((unit) => [
    { unit, times },
    ...(unit.kind === 'group' ? placed(unit.units, times * unit.count) : []),
  ])
}

/** Atoms of some units, so many times. */
function atomsOf(units: readonly Unit[], times: number, into: Map<string, number> = new Map()): Map<string, number> {
  for (const unit of units) {
    if (unit.kind === 'atom') into.set(unit.symbol, (into.get(unit.symbol) ?? 0) + times * unit.count)
    else atomsOf(unit.units, times * unit.count, into)
  }
  return into
}

/** What a misreading of a formula does. */
export interface Misreading {
  /** What was misread. */
  readonly of: string
  /** Atoms more or fewer. */
  readonly atoms: AtomChange
}

/** Each bracket with a number behind it, counted once. */
export function bracketsCountedOnce(facts: FormulaFacts): readonly Misreading[] {
  return groupsWithCount(facts).map(({ unit, times }) => ({
    of: writtenUnit(unit),
    atoms: atomsOf(unit.units, -times * (unit.count - 1)),
  }))
}

/** Each bracket with a number behind it, the number on its last atom only: `(SO4)3` as S O12. */
export function bracketsOnLastAtom(facts: FormulaFacts): readonly Misreading[] {
  return groupsWithCount(facts)
    .filter(({ unit }) => unit.units.length > 1)
    .map(({ unit, times }) => ({
      of: writtenUnit(unit),
      atoms: atomsOf(unit.units.slice(0, -1), -times * (unit.count - 1)),
    }))
}

function groupsWithCount(facts: FormulaFacts): readonly Placed<Extract<Unit, { readonly kind: 'group' }>>[] {
  return placedUnits(facts).flatMap(({ unit, times }) =>
    unit.kind === 'group' && unit.count > 1 ? [{ unit, times }] : [],
  )
}

/** Each atom with a number behind it, counted once. */
export function atomsCountedOnce(facts: FormulaFacts): readonly Misreading[] {
  return placedUnits(facts).flatMap(({ unit, times }) =>
    unit.kind === 'atom' && unit.count > 1
      ? [{ of: writtenUnit(unit), atoms: new Map([[unit.symbol, -times * (unit.count - 1)]]) }]
      : [],
  )
}

/** Ions that balance a charge: alkali metals, silver, thallium. */
const singlyCharged: ReadonlySet<string> = /* @__PURE__ */ new Set(['Li', 'Na', 'K', 'Rb', 'Cs', 'Ag', 'Tl'])

/** One counter-ion more, or one fewer, of a salt that starts with several singly charged ions. */
export function counterIonsMiscounted({ branches }: FormulaFacts): readonly Misreading[] {
  const [first, ...rest] = branches[0]?.units ?? []
  if (first === undefined || first.count === 1 || rest.length === 0 || !isCounterIon(first)) return []
  return [1, -1].map((ions) => ({ of: writtenUnit(first), atoms: atomsOf([{ ...first, count: 1 }], ions) }))
}

function isCounterIon(unit: Unit): boolean {
  if (unit.kind === 'atom') return singlyCharged.has(unit.symbol)
  const [nitrogen, hydrogen, ...more] = unit.units
  return more.length === 0 && isAtoms(nitrogen, 'N', 1) && isAtoms(hydrogen, 'H', 4)
}

/** `(SO4)2`. */
function writtenUnit(unit: Unit): string {
  const count = unit.count === 1 ? '' : String(unit.count)
  if (unit.kind === 'atom') return `${unit.symbol}${count}`
  return `(${unit.units.map(writtenUnit).join('')})${count}`
}
