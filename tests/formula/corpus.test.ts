import { describe, expect, it } from 'vitest'
import { parseFormula } from '../../src/formula/index.js'
import { atoms } from './atoms.js'
import { formulaCorpora } from './data/corpus.js'

/** The atoms in the order of their symbols. */
function sorted(text: string): string {
  return atoms(parseFormula(text)).split(' ').sort(bySymbol).join(' ')
}

function bySymbol(a: string, b: string): number {
  return symbol(a) < symbol(b) ? -1 : 1
}

function symbol(atom: string): string {
  return /^[A-Z][a-z]?/.exec(atom)?.[0] ?? ''
}

describe.each(formulaCorpora)('$source', ({ rows }) => {
  it.each(rows)('%s has the atoms %s and the charge %i', (text, expected, charge) => {
    expect(sorted(text)).toBe(expected)
    expect(parseFormula(text).charge).toBe(charge)
  })

  it('nothing is doubted', () => {
    expect(rows.map(([text]) => text).filter((text) => parseFormula(text).notes.length > 0)).toEqual([])
  })
})
