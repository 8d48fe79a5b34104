import { spellCharge } from '../charge.js'
import { isElement } from '../known-ions.js'
import { type NamedIon, namedIons } from './named-ion.js'
import { neutralCounts } from './neutral-counts.js'

/** What the words of a name are, or the first word that is nothing. */
export type ReadSalt = { readonly formula: string } | { readonly unknown: string }

/** Most ways to read the words that are tried. */
const mostWays = 64

/** The formula of the name of a salt, ion or complex, as text. */
export function readSaltName(name: string): ReadSalt {
  const words = joinHydrogen(name.split(' '))
  const isIon = words.length > 1 && words.at(-1) === 'ion'
  const ions = (isIon ? words.slice(0, -1) : words).map(namedIons)
  const unknown = ions.findIndex((readings) => readings.length === 0)
  if (unknown >= 0) return { unknown: words[unknown] as string }
  const formula = ways(ions).map((way) => (isIon || way.length === 1 ? writeIon(way) : writeSalt(way)))
  const first = formula.find((text) => text !== undefined)
  return first === undefined ? { unknown: name } : { formula: first }
}

/** `hydrogen carbonate` as one word, as the tables have it. */
function joinHydrogen(words: readonly string[]): readonly string[] {
  const joined: string[] = []
  for (const word of words) {
    if (joined.at(-1)?.endsWith('hydrogen')) joined[joined.length - 1] += word
    else joined.push(word)
  }
  return joined
}

function ways(ions: readonly (readonly NamedIon[])[]): readonly (readonly NamedIon[])[] {
  let found: readonly (readonly NamedIon[])[] = [[]]
  for (const readings of ions) {
    found = found.flatMap((way) => readings.map((reading) => [...way, reading])).slice(0, mostWays)
  }
  return found
}

function writeIon([ion, ...more]: readonly NamedIon[]): string | undefined {
  if (ion === undefined || more.length > 0 || ion.count !== undefined) return undefined
  return ion.charge === 0 ? ion.formula : `${ion.formula}^${spellCharge(ion.charge)}`
}

/** The salt of these ions in the numbers that are said, or else in the smallest that make it neutral. */
function writeSalt(ions: readonly NamedIon[]): string | undefined {
  const sorted = [...ions].sort(saltOrder)
  const charges = sorted.map(({ charge }) => charge)
  const counts = ions.some(({ count }) => count !== undefined)
    ? sorted.map(({ count = 1 }) => count)
    : neutralCounts(charges)
  const sum = counts?.reduce((all, count, index) => all + count * (charges[index] as number), 0)
  if (counts === undefined || sum !== 0) return undefined
  return sorted.map(({ formula }, index) => withCount(formula, counts[index] as number)).join('')
}

/** Cations by their charge, then anions; each by the alphabet. */
function saltOrder(a: NamedIon, b: NamedIon): number {
  const rank = ({ charge, formula }: NamedIon): string => `${charge > 0 ? charge : 9}${formula}`
  return rank(a) < rank(b) ? -1 : 1
}

function withCount(formula: string, count: number): string {
  if (count === 1) return formula
  return isElement(formula) || formula.startsWith('[') ? `${formula}${count}` : `(${formula})${count}`
}
