import { chargePlace, type Scan, symbolOf, waterPlace } from './scan.js'

/** Symbols by their place, in the order met, and how many of each: the same in plain numbers, where everything is whole. */
export interface WholeSums {
  readonly places: readonly number[]
  readonly sums: readonly number[]
}

/** Adds up all parts. */
export function wholeSums({ places, tops, parts }: Scan): WholeSums {
  const [met, sums]: [number[], number[]] = [[], []]
  for (const { first, last, top, unknown } of parts) {
    for (let index = first; index < last && !unknown; index += 1) {
      addWhole(met, sums, places[index] as number, (tops[index] as number) * top)
    }
  }
  return { places: met, sums }
}

function addWhole(met: number[], sums: number[], place: number, count: number): void {
  const index = met.indexOf(place)
  if (index >= 0) sums[index] = (sums[index] as number) + count
  else {
    met.push(place)
    sums.push(count)
  }
}

/** Atoms by symbol, without the places that stand for water and charge. */
export function wholeBySymbol<M>({ places, sums }: WholeSums, write: (count: number) => M): Map<string, M> {
  const counts = new Map<string, M>()
  for (let index = 0; index < places.length; index += 1) {
    const place = places[index] as number
    if (place !== waterPlace && place !== chargePlace) counts.set(symbolOf(place), write(sums[index] as number))
  }
  return counts
}
