import type { Decimal } from '../decimal.js'
import { type Fraction, fraction } from '../fraction.js'
import { badCharge } from './charge-complaints.js'
import { countDecimal } from './count-decimal.js'
import { outOfRange } from './number-complaints.js'
import { chargePlace, type Scan, type ScannedPart, symbolOf, waterPlace } from './scan.js'
import { addPart, addTo, noSums, ratioAt, type Sums, sumParts } from './sums.js'

/** A fraction of two whole numbers of which the second is mostly 1. */
export function plainFraction(top: number, bottom: number): Fraction {
  return bottom === 1 ? { numerator: BigInt(top), denominator: 1n } : fraction(BigInt(top), BigInt(bottom))
}

/** Atoms by symbol, without the places that stand for water and charge. */
function bySymbol<M>({ places, tops, bottoms }: Sums, write: (top: number, bottom: number) => M): Map<string, M> {
  const counts = new Map<string, M>()
  for (let index = 0; index < places.length; index += 1) {
    const place = places[index] as number
    if (place === waterPlace || place === chargePlace) continue
    counts.set(symbolOf(place), write(tops[index] as number, bottoms === undefined ? 1 : (bottoms[index] as number)))
  }
  return counts
}

/** Atoms per formula unit as decimals. */
export function compositionOf(scan: Scan): ReadonlyMap<string, Decimal> {
  return bySymbol(sumParts(scan), countDecimal)
}

/** Atoms per formula unit, exactly. */
export function countsOf(scan: Scan): ReadonlyMap<string, Fraction> {
  return bySymbol(sumParts(scan), plainFraction)
}

/** Atoms in one of a part. */
export function countsOfPart(scan: Scan, part: ScannedPart): ReadonlyMap<string, Fraction> {
  return bySymbol(sumPart(scan, part), plainFraction)
}

function sumPart(scan: Scan, part: ScannedPart): Sums {
  const sums = noSums()
  addPart(sums, scan, part, 1, 1)
  return sums
}

/** The charge of one of a part. */
export function chargeOfPart(scan: Scan, part: ScannedPart): number {
  return scan.charged ? wholeCharge(scan, sumPart(scan, part)) : 0
}

/** The charge of everything. */
export function chargeOf(scan: Scan): number {
  return scan.charged ? wholeCharge(scan, sumParts(scan)) : 0
}

function wholeCharge(scan: Scan, sums: Sums): number {
  const [charge, bottom] = ratioAt(sums, chargePlace)
  if (bottom !== 1) throw badCharge(scan, 0, scan.text.length)
  return charge
}

/** Molecules of water of crystallisation per formula unit; `null` where their number is unknown. */
export function hydrationOf(scan: Scan): Decimal | null {
  const { parts } = scan
  if (parts.some(({ unknown }) => unknown)) return null
  const sums = sumParts(scan)
  if (parts.some(({ water }) => water === 0)) addWater(sums, parts)
  return countDecimal(...ratioAt(sums, waterPlace))
}

function addWater(sums: Sums, parts: readonly ScannedPart[]): void {
  for (const { water, top, bottom } of parts) addTo(sums, waterPlace, water * top, bottom)
}

/** Makes sure, while the text is being read, that everything above can be worked out. */
export function checkTotals(scan: Scan): void {
  if (!scan.isWhole && sumParts(scan).tops.some(Number.isNaN)) throw outOfRange(scan, 0, scan.text.length)
  if (scan.charged) checkCharges(scan)
}

function checkCharges(scan: Scan): void {
  for (const part of scan.parts) chargeOfPart(scan, part)
  chargeOf(scan)
}
