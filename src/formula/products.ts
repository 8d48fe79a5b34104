import { outOfRange } from './number-complaints.js'
import { commonDivisor } from './numeral.js'
import { bottomsOf, greatestProduct, type Scan } from './scan.js'

/** Multiplies the atoms from `first` on by the number that was read last: the count of a bracket. */
export function multiplyAtoms(scan: Scan, first: number, start: number): void {
  if (scan.bottom !== 1 || scan.bottoms !== undefined) multiplyFractions(scan, first, start)
  else if (scan.top !== 1) multiplyWhole(scan, first, start)
}

function multiplyWhole(scan: Scan, first: number, start: number): void {
  for (let index = first; index < scan.tops.length; index += 1) {
    const product = (scan.tops[index] as number) * scan.top
    if (product > greatestProduct) throw outOfRange(scan, start, scan.at)
    scan.tops[index] = product
  }
}

function multiplyFractions(scan: Scan, first: number, start: number): void {
  const bottoms = bottomsOf(scan)
  for (let index = first; index < scan.tops.length; index += 1) {
    const [top, bottom] = lowest((scan.tops[index] as number) * scan.top, (bottoms[index] as number) * scan.bottom)
    if (Math.abs(top) > greatestProduct * bottom || bottom > greatestProduct) throw outOfRange(scan, start, scan.at)
    scan.tops[index] = top
    bottoms[index] = bottom
  }
}

function lowest(top: number, bottom: number): readonly [number, number] {
  const divisor = commonDivisor(Math.abs(top), bottom)
  return [top / divisor, bottom / divisor]
}
