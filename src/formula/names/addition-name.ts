import { commonDivisor } from '../numeral.js'
import { guests } from '../tables/guests.js'
import type { Branch } from '../tree.js'
import { simplePrefix } from './numerals.js'
import { saltName } from './salt-name.js'
import { unitText } from './unit-text.js'

/** Numbers of water that have a name of their own, though they are not whole. */
const fractions: Readonly<Record<string, string>> = { '1/2': 'hemi', '0.5': 'hemi', '3/2': 'sesqui', '1.5': 'sesqui' }

/**
 * The name of a formula of several parts: `copper(II) sulfate pentahydrate`, `cadmium sulfate—water (3/8)`.
 *
 * @returns Nothing where a part is outside the tables.
 */
export function additionName(branches: readonly Branch[]): string | undefined {
  const names = branches.map(partName)
  if (names.includes(undefined)) return undefined
  return hydrateName(branches, names as readonly string[]) ?? ratioName(branches, names as readonly string[])
}

function partName(branch: Branch): string | undefined {
  const text = branch.charge === 0 ? unitText(branch.units) : undefined
  return guests.find(({ formula }) => formula === text)?.name ?? saltName(branch)
}

/** One part, or one part and water in a number that has a prefix. */
function hydrateName(branches: readonly Branch[], names: readonly string[]): string | undefined {
  const [main, guest] = branches as readonly [Branch, Branch?]
  if (main.times !== '1' || branches.length > 2) return undefined
  if (guest === undefined) return names[0]
  const prefix = Object.hasOwn(fractions, guest.times) ? fractions[guest.times] : simplePrefix(Number(guest.times))
  return names[1] === 'water' && prefix !== undefined ? `${names[0]} ${prefix}hydrate` : undefined
}

function ratioName(branches: readonly Branch[], names: readonly string[]): string {
  return `${names.join('—')} (${wholeRatio(branches.map(({ times }) => times)).join('/')})`
}

/** Numbers in front of parts in the same ratio, as whole numbers; letters stay. */
function wholeRatio(times: readonly string[]): readonly string[] {
  const numbers = times.map(topAndBottom)
  const bottom = numbers.reduce((all, number) => (all * number[1]) / commonDivisor(all, number[1]), 1)
  return numbers.map(([top, own], index) =>
    Number.isNaN(top) ? (times[index] as string) : String((top * bottom) / own),
  )
}

/** `8/3` and `2.5` as two whole numbers; of a letter no number. */
function topAndBottom(text: string): readonly [number, number] {
  const [top, bottom] = text.split('/').map(Number)
  if (bottom !== undefined) return [top as number, bottom]
  const decimals = text.split('.')[1]?.length ?? 0
  const [whole, scale] = [Math.round(Number(text) * 10 ** decimals), 10 ** decimals]
  const divisor = commonDivisor(Number.isNaN(whole) ? 1 : whole, scale)
  return [whole / divisor, scale / divisor]
}
