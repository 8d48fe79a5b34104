import { isElement } from './known-ions.js'
import { unitText } from './names/unit-text.js'
import { notAsked, readText } from './read.js'
import type { Token } from './scan.js'
import { anions } from './tables/anions.js'
import { type Atom, countIn, type Unit } from './tree.js'

/** Letters of an ion or molecule, atom by atom, as they stand in formulas. */
export interface Pattern {
  readonly text: string
  readonly atoms: readonly Atom[]
  readonly least: number
  readonly greatest: number
}

/** By the symbol they begin with; the longest first. A memo, filled when first asked: most programs never do. */
const patterns: Map<string, readonly Pattern[]> = /* @__PURE__ */ new Map()

/** The longest ion or neutral ligand whose letters stand at this place, one after the other; its text as it is written here. */
export function ionPattern(units: readonly Unit[], index: number): Pattern | undefined {
  const first = units[index]
  if (first?.kind !== 'atom') return undefined
  const found = patternsOf(plainSymbol(first.symbol))?.find(({ atoms }) => standsAt(atoms, units, index))
  return found && { ...found, text: unitText(units.slice(index, index + found.atoms.length)) }
}

function standsAt(atoms: readonly Atom[], units: readonly Unit[], index: number): boolean {
  return atoms.every(({ symbol, count }, offset) => {
    const unit = units[index + offset]
    return unit?.kind === 'atom' && plainSymbol(unit.symbol) === symbol && unit.count === count
  })
}

/** Deuterium and tritium stand where hydrogen stands. */
function plainSymbol(symbol: string): string {
  return symbol === 'D' || symbol === 'T' ? 'H' : symbol
}

function patternsOf(symbol: string): readonly Pattern[] | undefined {
  if (patterns.size === 0) listPatterns()
  return patterns.get(symbol)
}

function listPatterns(): void {
  const ions = anions.flatMap(({ formula, charge, within = [charge, charge] }) =>
    within === null ? [] : [patternOf(formula, within)],
  )
  const others = [
    patternOf('NH4', [1, 1]),
    ...['H2O', 'OH2', 'NH3', 'NH2OH'].map((formula) => patternOf(formula, [0, 0])),
  ]
  const longestFirst = [...ions, ...others].filter(isSeveral).sort((a, b) => b.atoms.length - a.atoms.length)
  for (const pattern of longestFirst) {
    const first = (pattern.atoms[0] as Atom).symbol
    patterns.set(first, [...(patterns.get(first) ?? []), pattern])
  }
}

function patternOf(text: string, [least, greatest]: readonly [number, number]): Pattern {
  const tokens: Token[] = []
  readText(text, notAsked, tokens)
  const atoms = tokens.flatMap(({ kind, text: symbol }, index): Atom[] =>
    kind === 'symbol' ? [{ kind: 'atom', symbol, count: countIn(tokens[index + 1]) }] : [],
  )
  return { text, atoms, least, greatest }
}

/** A single atom may stand in any number: it is no pattern. */
function isSeveral({ text }: Pattern): boolean {
  return !isElement(text)
}
