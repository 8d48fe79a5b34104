import { elementInfo } from '../../element/index.js'
import { isElement } from '../known-ions.js'
import { centralAtoms } from '../tables/central-atoms.js'
import { type LigandRow, ligands } from '../tables/ligands.js'
import { plainCations } from '../tables/plain-cations.js'
import { numberOfRoman, numbersBefore } from './numerals.js'

/** A complex as its name says it. */
interface NamedComplex {
  readonly formula: string
  readonly charge: number
}

interface Bound {
  readonly row: LigandRow
  readonly count: number
}

/** Most ligands of different names in one complex. */
const mostLigands = 6

/**
 * Reads the name of a complex: ligands with their numbers, the central atom, its oxidation number or the charge of the whole.
 *
 * @returns Nothing where it is no such name.
 */
export function readComplexName(word: string): NamedComplex | undefined {
  return readFrom(word, [])
}

function readFrom(rest: string, bound: readonly Bound[]): NamedComplex | undefined {
  const complex = bound.length > 0 ? finish(rest, bound) : undefined
  if (complex !== undefined || bound.length === mostLigands) return complex
  for (const { number, rest: behind } of numbersBefore(rest)) {
    for (const { row, next } of ligandsBefore(behind)) {
      const found = readFrom(next, [...bound, { row, count: number }])
      if (found !== undefined) return found
    }
  }
  return undefined
}

interface Read {
  readonly row: LigandRow
  readonly next: string
}

/** The ligands a text may begin with, perhaps in brackets; the longest name first. */
function ligandsBefore(text: string): readonly Read[] {
  const [open, close] = text.startsWith('(') ? ['(', ')'] : ['', '']
  const named = ligands.flatMap((row) =>
    [row.name, ...(row.also ?? [])].map((name) => ({ row, name: open + name + close })),
  )
  return named
    .filter(({ name }) => text.startsWith(name))
    .sort((a, b) => b.name.length - a.name.length)
    .map(({ row, name }) => ({ row, next: withoutHyphen(text.slice(name.length)) }))
}

function withoutHyphen(text: string): string {
  return text.startsWith('-') ? text.slice(1) : text
}

/** The central atom and what follows it: `cobalt(III)`, `ferrate(4-)`, `aluminate`. */
function finish(rest: string, bound: readonly Bound[]): NamedComplex | undefined {
  for (const { symbol, ate } of centralAtoms) {
    for (const name of [ate, elementInfo(symbol).name]) {
      const charge = rest.startsWith(name) ? chargeOf(rest.slice(name.length), symbol, bound) : undefined
      if (charge !== undefined && charge < 0 === (name === ate)) return { formula: write(symbol, bound), charge }
    }
  }
  return undefined
}

/** The charge of a complex from the number behind its central atom; nothing where there is none. */
function chargeOf(behind: string, symbol: string, bound: readonly Bound[]): number | undefined {
  const inside = behind.startsWith('(') && behind.endsWith(')') ? behind.slice(1, -1) : undefined
  const direct = inside === undefined ? undefined : chargeNumber(inside)
  if (direct !== undefined) return direct
  const plain = plainCations.find((row) => row.symbol === symbol)?.charge
  const oxidation = behind === '' ? plain : numberOfRoman(inside ?? behind)
  return oxidation === undefined
    ? undefined
    : bound.reduce((sum, { row, count }) => sum + row.charge * count, oxidation)
}

/** `4-` as -4. */
function chargeNumber(text: string): number | undefined {
  const sign = '-−'.includes(text.slice(-1)) ? -1 : 1
  const size = Number(text.slice(0, -1))
  return text.length > 1 && '+-−'.includes(text.slice(-1)) && Number.isInteger(size) ? sign * size : undefined
}

/** The formula: the central atom, then the ligands by the alphabet of their formulas. */
function write(symbol: string, bound: readonly Bound[]): string {
  const sorted = [...bound].sort((a, b) => (a.row.formula < b.row.formula ? -1 : 1))
  return `[${symbol}${sorted.map(({ row, count }) => withCount(row.formula, count)).join('')}]`
}

function withCount(formula: string, count: number): string {
  const body = isElement(formula) ? formula : `(${formula})`
  return count === 1 ? body : `${body}${count}`
}
