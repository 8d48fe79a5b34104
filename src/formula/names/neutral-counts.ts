import { commonDivisor } from '../numeral.js'

/** Greatest number of one ion that is looked for. */
const most = 12
/** Most different ions. */
const mostIons = 5

/**
 * The smallest numbers of ions whose charges add up to zero, each at least 1.
 *
 * @returns Nothing where there are none.
 */
export function neutralCounts(charges: readonly number[]): readonly number[] | undefined {
  const [cation, anion, ...more] = charges
  if (cation === undefined || charges.length > mostIons) return undefined
  if (more.length === 0 && anion !== undefined) return pair(cation, anion)
  let best: readonly number[] | undefined
  for (const counts of choices(charges.length - 1)) {
    const last = rest(charges, counts)
    if (last !== undefined && (best === undefined || total([...counts, last]) < total(best))) best = [...counts, last]
  }
  return best
}

function pair(a: number, b: number): readonly number[] | undefined {
  if (a * b >= 0) return undefined
  const divisor = commonDivisor(Math.abs(a), Math.abs(b))
  return [Math.abs(b) / divisor, Math.abs(a) / divisor]
}

/** Every choice of numbers for all ions but the last. */
function choices(length: number): readonly (readonly number[])[] {
  let found: readonly (readonly number[])[] = [[]]
  for (let index = 0; index < length; index += 1) {
    found = found.flatMap((counts) => Array.from({ length: most }, (_, count) => [...counts, count + 1]))
  }
  return found
}

/** The number of the last ion that makes the sum zero; nothing where it is not whole or not positive. */
function rest(charges: readonly number[], counts: readonly number[]): number | undefined {
  const sum = counts.reduce((all, count, index) => all + count * (charges[index] as number), 0)
  const last = -sum / (charges.at(-1) as number)
  return Number.isInteger(last) && last > 0 ? last : undefined
}

function total(counts: readonly number[]): number {
  return counts.reduce((sum, count) => sum + count, 0)
}
