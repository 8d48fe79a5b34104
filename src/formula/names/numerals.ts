import { multiplicativePrefixes } from '../tables/multiplicative-prefixes.js'

const romans = ['0', 'I', 'II', 'III', 'IV', 'V', 'VI', 'VII', 'VIII']

/** An oxidation number as it stands in names: `III`, `0`, `-I`. */
export function romanNumeral(number: number): string | undefined {
  const roman = romans[Math.abs(number)]
  return roman === undefined || number >= 0 ? roman : `-${roman}`
}

/** The number of a Roman numeral; nothing for other text. */
export function numberOfRoman(text: string): number | undefined {
  const isNegative = text.startsWith('-') || text.startsWith('−')
  const number = romans.indexOf(isNegative ? text.slice(1) : text)
  if (number < 0) return undefined
  return isNegative ? -number : number
}

/** `di`, `tri` ...; nothing beyond the table. */
export function simplePrefix(number: number): string | undefined {
  return multiplicativePrefixes.find((row) => row.number === number)?.simple
}

/** A name with its number: `dichlorido`, `tris(oxalato)`; nothing in front of one. */
export function multiplied(name: string, number: number, isGrouped: boolean): string | undefined {
  if (number === 1) return name
  const row = multiplicativePrefixes.find((one) => one.number === number)
  if (!isGrouped) return row && row.simple + name
  return row?.grouped && `${row.grouped}(${name})`
}

/** A number in front of a name, and what is left of the name. */
export interface Multiplied {
  readonly number: number
  readonly rest: string
}

/** All ways to read a number at the beginning of a name: `tetra`, `tris(` up to its bracket; the longest first, none last. */
export function numbersBefore(name: string): readonly Multiplied[] {
  const found = multiplicativePrefixes.flatMap(({ number, simple, grouped }) => {
    if (grouped !== undefined && name.startsWith(`${grouped}(`)) return [{ number, rest: name.slice(grouped.length) }]
    return name.startsWith(simple) ? [{ number, rest: name.slice(simple.length) }] : []
  })
  return [...found.sort((a, b) => a.rest.length - b.rest.length), { number: 1, rest: name }]
}
