import { Decimal } from '../decimal.js'
import { addFractions, type Fraction, fraction, fractionToDecimal, multiplyFractions } from '../fraction.js'
import { badCharge } from './charge-complaints.js'
import { outOfRange } from './number-complaints.js'
import { chargePlace, type Scan, type ScannedPart, symbolOf, waterPlace } from './scan.js'
import { wholeBySymbol, wholeSums } from './whole-sums.js'

const zero: Fraction = { numerator: 0n, denominator: 1n }
const finest = 10n ** 15n
/** The decimals of most counts: made once, and frozen because all formulas share them. */
const smallDecimals: readonly Decimal[] = /* @__PURE__ */ listDecimals()

/** A fraction of two whole numbers of which the second is mostly 1. */
export function plainFraction(top: number, bottom: number): Fraction {
  return bottom === 1 ? { numerator: BigInt(top), denominator: 1n } : fraction(BigInt(top), BigInt(bottom))
}

/** How many of the atoms at an index of the list. */
function countAt({ tops, bottoms }: Scan, index: number): Fraction {
  return plainFraction(tops[index] as number, bottoms === undefined ? 1 : (bottoms[index] as number))
}

/** Adds up what stands in one part, by place in the list of symbols, times a number. */
function addPart(sums: Map<number, Fraction>, scan: Scan, part: ScannedPart, times: Fraction): void {
  for (let index = part.first; index < part.last; index += 1) {
    const place = scan.places[index] as number
    const sum = addFractions(sums.get(place) ?? zero, multiplyFractions(countAt(scan, index), times))
    if (sum.denominator > finest) throw outOfRange(scan, part.from, part.end)
    sums.set(place, sum)
  }
}

function exactSums(scan: Scan): Map<number, Fraction> {
  const sums = new Map<number, Fraction>()
  for (const part of scan.parts) {
    if (!part.unknown) addPart(sums, scan, part, plainFraction(part.top, part.bottom))
  }
  return sums
}

function decimalOf(count: number): Decimal {
  return count < smallDecimals.length ? (smallDecimals[count] as Decimal) : new Decimal(count)
}

function listDecimals(): Decimal[] {
  return Array.from({ length: 100 }, (_, count) => {
    const decimal = new Decimal(count)
    Object.freeze(decimal.d)
    return Object.freeze(decimal)
  })
}

/** Atoms by symbol, without the places that stand for water and charge. */
function bySymbol<M>(sums: ReadonlyMap<number, Fraction>, write: (count: Fraction) => M): Map<string, M> {
  const counts = new Map<string, M>()
  for (const [place, count] of sums) {
    if (place !== waterPlace && place !== chargePlace) counts.set(symbolOf(place), write(count))
  }
  return counts
}

/** Atoms per formula unit as decimals. */
export function compositionOf(scan: Scan): ReadonlyMap<string, Decimal> {
  if (scan.isWhole) return wholeBySymbol(wholeSums(scan), decimalOf)
  return bySymbol(exactSums(scan), fractionToDecimal)
}

/** Atoms per formula unit, exactly. */
export function countsOf(scan: Scan): ReadonlyMap<string, Fraction> {
  if (scan.isWhole) return wholeBySymbol(wholeSums(scan), (count) => plainFraction(count, 1))
  return bySymbol(exactSums(scan), (count) => count)
}

/** Atoms in one of a part. */
export function countsOfPart(scan: Scan, part: ScannedPart): ReadonlyMap<string, Fraction> {
  const sums = new Map<number, Fraction>()
  addPart(sums, scan, part, { numerator: 1n, denominator: 1n })
  return bySymbol(sums, (count) => count)
}

/** The charge of one of a part. */
export function chargeOfPart(scan: Scan, part: ScannedPart): number {
  return scan.charged ? wholeCharge(scan, chargeIn(scan, part)) : 0
}

/** The charge of everything. */
export function chargeOf(scan: Scan): number {
  if (!scan.charged) return 0
  return wholeCharge(
    scan,
    scan.parts.reduce((sum, part) => sum + (chargeIn(scan, part) * part.top) / part.bottom, 0),
  )
}

function chargeIn({ places, tops, bottoms }: Scan, { first, last }: ScannedPart): number {
  let sum = 0
  for (let index = first; index < last; index += 1) {
    if (places[index] === chargePlace)
      sum += (tops[index] as number) / (bottoms === undefined ? 1 : (bottoms[index] as number))
  }
  return sum
}

/** A charge that is a whole number but for the rounding of thirds. */
function wholeCharge(scan: Scan, charge: number): number {
  const whole = Math.round(charge) + 0
  if (Math.abs(charge - whole) > 1e-9) throw badCharge(scan, 0, scan.text.length)
  return whole
}

/** Molecules of water of crystallisation per formula unit; `null` where their number is unknown. */
export function hydrationOf(scan: Scan): Decimal | null {
  const { parts } = scan
  if (parts.some(({ unknown }) => unknown)) return null
  const inside = exactSums(scan).get(waterPlace) ?? zero
  const outside = parts.every(({ water }) => water > 0) ? [] : parts
  const all = outside.reduce(
    (sum, { water, top, bottom }) => addFractions(sum, plainFraction(water * top, bottom)),
    inside,
  )
  return fractionToDecimal(all)
}

/** Makes sure, while the text is being read, that everything above can be worked out. */
export function checkTotals(scan: Scan): void {
  if (!scan.isWhole) exactSums(scan)
  if (scan.charged) checkCharges(scan)
}

function checkCharges(scan: Scan): void {
  for (const part of scan.parts) chargeOfPart(scan, part)
  chargeOf(scan)
}
