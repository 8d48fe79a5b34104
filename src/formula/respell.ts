import { symbolPlace } from '../element/symbols.js'
import { symbolOf } from './scan.js'

/** A way to spell letters as symbols, and how far it is from what was written. */
export interface Spelling {
  readonly text: string
  readonly cost: number
}

/** Spellings that are followed at once; the cheapest. */
const beam = 32
/** Longest run of letters that is spelled anew. */
const longestRun = 24
/** What an element costs that hardly occurs in salts. */
const rarity = 3
const rare = new Set(
  'He Ne Ar Kr Xe Rn Po At Fr Ra Ac Pa Np Pu Am Cm Bk Cf Es Fm Md No Lr Rf Db Sg Bh Hs Mt Ds Rg Cn Nh Fl Mc Lv Ts Og Tc Pm D T'.split(
    ' ',
  ),
)

/**
 * All likely ways to read letters as element symbols whatever their case, the cheapest first. A letter of the wrong case costs 1,
 * a small l for a capital I or the reverse costs 2, a rare element 3.
 */
export function respell(letters: string): readonly Spelling[] {
  if (letters.length > longestRun) return []
  const found: Spelling[][] = [[{ text: '', cost: 0 }], ...Array.from(letters, () => [])]
  for (let at = 0; at < letters.length; at += 1) {
    for (const spelling of cheapest(found[at] as Spelling[])) {
      for (const symbol of symbolsAt(letters, at)) found[at + symbol.length]?.push(joined(spelling, symbol))
    }
  }
  return cheapest(found[letters.length] as Spelling[])
}

/** The cheapest of some spellings, in order. */
export function cheapest(spellings: readonly Spelling[]): readonly Spelling[] {
  return [...spellings].sort((a, b) => a.cost - b.cost).slice(0, beam)
}

interface SymbolAt extends Spelling {
  readonly length: number
}

function joined(before: Spelling, { text, cost }: Spelling): Spelling {
  return { text: before.text + text, cost: before.cost + cost }
}

/** The symbols that the letters from a place on may be. */
function symbolsAt(letters: string, at: number): readonly SymbolAt[] {
  const [first, second] = [letters.charAt(at), letters.charAt(at + 1)]
  const one = spelled(first, '', first === 'l' ? 'I' : first.toUpperCase())
  const isLetterI = second === 'I'
  const two = second === '' ? [] : spelled(first, second, first.toUpperCase() + second.toLowerCase())
  const other = isLetterI ? spelled(first, second, `${first.toUpperCase()}l`) : []
  return [...one, ...two, ...other]
}

function spelled(first: string, second: string, symbol: string): readonly SymbolAt[] {
  const place = symbolPlace(symbol.charCodeAt(0), symbol.charCodeAt(1) || 0)
  if (place === 0) return []
  const text = symbolOf(place)
  const written = first + second
  const changes = [...text].reduce((sum, letter, index) => sum + changeCost(written.charAt(index), letter), 0)
  return [{ text, cost: changes + (rare.has(text) ? rarity : 0), length: written.length }]
}

function changeCost(from: string, to: string): number {
  if (from === to) return 0
  return from.toLowerCase() === to.toLowerCase() ? 1 : 2
}
