import { numbersBefore } from './numerals.js'

/** A part of an addition compound: its name, and what stands in front of its formula. */
export interface NamedPart {
  readonly name: string
  readonly times: string
}

const dashes = ['—', '–', '--']
const ending = 'hydrate'
/** Numbers of water that are not whole, by their prefix. */
const fractions: Readonly<Record<string, string>> = { hemi: '1/2', sesqui: '3/2', hemipenta: '5/2' }

/** The parts of a name: `cadmium sulfate—water (3/8)` and `zinc sulfate heptahydrate` have two each, a plain salt has one. */
export function splitAddition(name: string): readonly NamedPart[] {
  return partsWithRatio(name) ?? saltAndWater(name) ?? [{ name, times: '' }]
}

function partsWithRatio(name: string): readonly NamedPart[] | undefined {
  const bracket = name.lastIndexOf('(')
  const dash = dashes.find((one) => name.includes(one))
  if (bracket < 0 || dash === undefined || !name.endsWith(')')) return undefined
  const names = name.slice(0, bracket).split(dash)
  const ratio = name.slice(bracket + 1, -1).split('/')
  if (names.length !== ratio.length || !ratio.every(isNumber)) return undefined
  return names.map((part, index) => ({ name: part.trim(), times: timesText(ratio[index] as string) }))
}

function isNumber(text: string): boolean {
  return ['x', 'n', 'y', 'z', 'm'].includes(text) || (Number.isInteger(Number(text)) && Number(text) > 0)
}

function timesText(text: string): string {
  return text === '1' ? '' : text
}

function saltAndWater(name: string): readonly NamedPart[] | undefined {
  const space = name.lastIndexOf(' ')
  const word = name.slice(space + 1)
  if (space < 0 || !word.endsWith(ending)) return undefined
  const prefix = word.slice(0, -ending.length)
  const number = Object.hasOwn(fractions, prefix) ? fractions[prefix] : wholeNumber(prefix)
  if (number === undefined) return undefined
  return [
    { name: name.slice(0, space), times: '' },
    { name: 'water', times: timesText(number) },
  ]
}

function wholeNumber(prefix: string): string | undefined {
  const found = numbersBefore(prefix).find(({ rest }) => rest === '')
  return prefix === '' || found === undefined ? undefined : String(found.number)
}
