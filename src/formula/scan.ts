import { symbols } from '../element/symbols.js'
import type { Span } from '../errors.js'

/** Stands in {@link Scan.places} for a molecule of water inside a bracket, beside the places of the elements. */
export const waterPlace = 0
/** Stands in {@link Scan.places} for an elementary charge. */
export const chargePlace: number = 200

/** Greatest length of a formula, in characters. */
export const longest = 10_000
/** Most brackets inside one another. */
export const deepest = 32
/** Greatest count that may be written. */
export const greatestCount = 1_000_000
/** Greatest count that counts inside brackets may multiply to. */
export const greatestProduct = 1_000_000_000

/** A piece of a formula as the reader understood it, for whoever writes or judges the formula. */
export interface Token extends Span {
  readonly kind: 'symbol' | 'count' | 'open' | 'close' | 'dot' | 'times' | 'unknown' | 'charge' | 'electron'
  /** The one spelling of it: `3/2` for `1½`, `2-` for `²⁻`. */
  readonly text: string
}

/** One part between the outermost dots, as places in the text and in the list of atoms. */
export interface ScannedPart extends Span {
  /** Where the part begins with its leading number. */
  readonly from: number
  /** The leading number: `top / bottom`. */
  readonly top: number
  readonly bottom: number
  /** Whether the leading number is unknown. */
  readonly unknown: boolean
  /** Its atoms: from this index of the list up to, not including, `last`. */
  readonly first: number
  readonly last: number
  /** How many molecules of water it is; 0 where it is something else. */
  readonly water: number
}

/** The state of one reading: the place in the text, and the atoms met so far as parallel lists of numbers. */
export interface Scan {
  readonly text: string
  /** How far `text` is into the text that was handed over. */
  readonly offset: number
  /** The place in the text. */
  at: number
  /** Brackets open here. */
  depth: number
  /** Elements by their place in the list of symbols, in the order met. */
  readonly places: number[]
  /** How many of each: the number above the line. */
  readonly tops: number[]
  /** The number below the line; absent while all counts are whole. */
  bottoms: number[] | undefined
  /** Whether all counts and all numbers in front of parts are whole. */
  isWhole: boolean
  /** The number that was read last: `top / bottom`. */
  top: number
  bottom: number
  /** Where the segment that is being read begins, behind its leading number. */
  segment: number
  /** Where a charge was last met in this segment; -1 for none. */
  chargeAt: number
  /** Whether atoms without a charge followed that charge. */
  bare: boolean
  /** Whether any charge was met. */
  charged: boolean
  readonly parts: ScannedPart[]
  /** Water of crystallisation: its places in the text, inside brackets too. */
  waters: Span[]
  /** Filled only where somebody asked for it. */
  readonly tokens: Token[] | undefined
  /** Whether a text is a salt by the usual charges of its ions: asked where a full stop may be a decimal point. */
  readonly isSalt: (text: string) => boolean
}

/** Starts to read a text. */
export function startScan(
  text: string,
  offset: number,
  tokens: Token[] | undefined,
  isSalt: (text: string) => boolean,
): Scan {
  return {
    text,
    offset,
    at: 0,
    depth: 0,
    places: [],
    tops: [],
    bottoms: undefined,
    isWhole: true,
    top: 1,
    bottom: 1,
    segment: 0,
    chargeAt: -1,
    bare: false,
    charged: false,
    parts: [],
    waters: [],
    tokens,
    isSalt,
  }
}

/** Notes atoms of one element, with the number that was read last. */
export function addAtoms(scan: Scan, place: number): void {
  scan.places.push(place)
  scan.tops.push(scan.top)
  if (scan.bottom !== 1 || scan.bottoms !== undefined) bottomsOf(scan)[scan.tops.length - 1] = scan.bottom
}

/** The numbers below the line, from now on for all atoms. */
export function bottomsOf(scan: Scan): number[] {
  scan.isWhole = false
  scan.bottoms ??= scan.tops.map(() => 1)
  return scan.bottoms
}

/** Notes a piece of the formula, where somebody asked for it. */
export function mark(scan: Scan, kind: Token['kind'], start: number, text: string): void {
  scan.tokens?.push({ kind, start, end: scan.at, text })
}

const oxygen = 8
const [protium, deuterium, tritium] = [1, 119, 120]

/** How many molecules of water the atoms from `first` on are; 0 where they are something else. */
export function waterAmong({ places, tops, bottoms }: Scan, first: number): number {
  let hydrogen = 0
  let water = 0
  for (let index = first; index < places.length; index += 1) {
    const place = places[index] as number
    if (bottoms !== undefined && bottoms[index] !== 1) return 0
    if (place === oxygen) water += tops[index] as number
    else if (isHydrogen(place)) hydrogen += tops[index] as number
    else return 0
  }
  return hydrogen === 2 * water ? water : 0
}

function isHydrogen(place: number): boolean {
  return place === protium || place === deuterium || place === tritium
}

/** The symbol at a place of the list. */
export function symbolOf(place: number): string {
  return symbols[place - 1] as string
}
