import { commonDivisor } from './numeral.js'
import type { Scan, ScannedPart } from './scan.js'

/** Amounts by place in the list of symbols, in the order met, as parallel lists: `top / bottom` in lowest terms. */
export interface Sums {
  readonly places: number[]
  /** Not a number where a sum cannot be held exactly. */
  readonly tops: number[]
  /** Absent while all amounts are whole. */
  bottoms: number[] | undefined
}

/** Nothing yet. */
export function noSums(): Sums {
  return { places: [], tops: [], bottoms: undefined }
}

/** Adds up all parts, each times the number in front of it; those of unknown number are left out. */
export function sumParts(scan: Scan): Sums {
  const sums = noSums()
  for (const part of scan.parts) if (!part.unknown) addPart(sums, scan, part, part.top, part.bottom)
  return sums
}

/** Adds what stands in one part, times `top / bottom`. */
export function addPart(sums: Sums, scan: Scan, { first, last }: ScannedPart, top: number, bottom: number): void {
  const { places, tops, bottoms } = scan
  for (let index = first; index < last; index += 1) {
    const below = bottoms === undefined ? bottom : (bottoms[index] as number) * bottom
    addTo(sums, places[index] as number, (tops[index] as number) * top, below)
  }
}

/** Adds `top / bottom` at a place. */
export function addTo(sums: Sums, place: number, top: number, bottom: number): void {
  const index = sums.places.indexOf(place)
  if (bottom !== 1 || sums.bottoms !== undefined) addFraction(sums, place, top, bottom)
  else if (index >= 0) sums.tops[index] = (sums.tops[index] as number) + top
  else {
    sums.places.push(place)
    sums.tops.push(top)
  }
}

/** The same over the least common multiple of what is below the line. */
function addFraction(sums: Sums, place: number, top: number, bottom: number): void {
  sums.bottoms ??= sums.tops.map(() => 1)
  const { places, tops, bottoms } = sums
  const index = places.includes(place) ? places.indexOf(place) : places.push(place) - 1
  const [before, below] = [tops[index] ?? 0, bottoms[index] ?? 1]
  const multiple = safe(below * (bottom / commonDivisor(below, bottom)))
  const sum = safe(safe(before * (multiple / below)) + safe(top * (multiple / bottom)))
  const divisor = commonDivisor(Math.abs(sum), multiple)
  tops[index] = sum / divisor
  bottoms[index] = multiple / divisor
}

/** A number that a double holds exactly. */
function safe(number: number): number {
  return Math.abs(number) <= Number.MAX_SAFE_INTEGER ? number : Number.NaN
}

/** What stands at a place: 0 where nothing does. */
export function ratioAt({ places, tops, bottoms }: Sums, place: number): readonly [top: number, bottom: number] {
  const index = places.indexOf(place)
  return index < 0 ? [0, 1] : [tops[index] as number, bottoms === undefined ? 1 : (bottoms[index] as number)]
}
