import { showFound } from '../errors.js'
import { tryQuantity } from '../quantity/index.js'
import { CrystallisationError } from './crystallisation-error.js'
import type { SolubilityTable } from './solubility-table.js'

type Path = readonly (string | number)[]
type Thing = Readonly<Record<string, unknown>>

const bases = ['100 g of solution', '100 g of water', '100 g of water, weighed as crystals']

/** Refuses what is not a solubility table: one of the reader's own may come from a file. */
export function checkTable(table: unknown): SolubilityTable {
  const { salt, per, source, phases } = thing(table, [], 'a solubility table')
  if (typeof salt !== 'string') throw bad(salt, ['salt'], 'the formula of the anhydrous salt')
  if (typeof source !== 'string') throw bad(source, ['source'], 'where the table is printed')
  if (!bases.includes(per as string)) throw bad(per, ['per'], bases.map((basis) => `"${basis}"`).join(' or '))
  if (!Array.isArray(phases) || phases.length === 0) throw bad(phases, ['phases'], 'a list of at least one solid')
  for (const [index, phase] of phases.entries()) checkPhase(phase, per as string, ['phases', index])
  return table as SolubilityTable
}

function checkPhase(phase: unknown, per: string, path: Path): void {
  const { crystal, celsius, printed } = thing(phase, path, 'a solid with its solubilities')
  if (typeof crystal !== 'string') throw bad(crystal, [...path, 'crystal'], 'the formula of the solid')
  if (!isAscending(celsius)) throw bad(celsius, [...path, 'celsius'], 'ascending temperatures in °C, as numbers')
  if (!Array.isArray(printed) || printed.length !== celsius.length)
    throw bad(printed, [...path, 'printed'], `${celsius.length} numbers as text, one per temperature`)
  const limit = per === '100 g of solution' ? 100 : Number.POSITIVE_INFINITY
  for (const [index, text] of printed.entries()) {
    if (!isMass(text, limit)) throw bad(text, [...path, 'printed', index], 'grams as text, above zero: "41.0"')
  }
}

function isAscending(list: unknown): list is readonly number[] {
  if (!Array.isArray(list) || list.length === 0) return false
  return list.every((t, index) => Number.isFinite(t) && (index === 0 || t > list[index - 1]))
}

function isMass(text: unknown, limit: number): boolean {
  const read = tryQuantity(`${showText(text)} g`)
  return read.ok && read.value.value.gt(0) && read.value.value.lt(limit)
}

function showText(text: unknown): string {
  return typeof text === 'string' ? text : 'nothing'
}

function thing(value: unknown, path: Path, expected: string): Thing {
  if (typeof value === 'object' && value !== null) return value as Thing
  throw bad(value, path, expected)
}

function bad(found: unknown, path: Path, expected: string): CrystallisationError {
  return new CrystallisationError({
    code: 'crystallisation/bad-table',
    message: `The solubility table cannot be used: ${[...path, ''].join(' ')}should be ${expected}.`,
    path,
    found: showFound(found),
    expected,
  })
}
