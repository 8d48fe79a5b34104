import { unknownCount } from './charge-complaints.js'
import { outOfRange } from './number-complaints.js'
import { multiplyAtoms } from './products.js'
import { addAtoms, greatestProduct, type Scan, waterAmong, waterPlace } from './scan.js'

/** A part that was read: where it began and the number in front of it. */
interface Segment {
  /** Its place in the text, with its number. */
  readonly from: number
  /** The index of its first atoms. */
  readonly first: number
  readonly top: number
  readonly bottom: number
  readonly isUnknown: boolean
  /** Whether it has a neighbour beyond a dot. */
  readonly joined: boolean
}

/** Notes a part: outside brackets as a part of its own, inside as atoms multiplied by its number. */
export function finishSegment(scan: Scan, segment: Segment): void {
  const water = segment.joined ? waterAmong(scan, segment.first) : 0
  const isInside = scan.depth > 0
  if (segment.isUnknown && (water === 0 || isInside)) throw unknownCount(scan, segment.from, segment.from + 1)
  if (water > 0) scan.waters.push({ start: segment.from, end: scan.at })
  if (isInside) finishInside(scan, segment, water)
  else finishPart(scan, segment, water)
}

function finishPart(scan: Scan, segment: Segment, water: number): void {
  const { from, first, top, bottom, isUnknown } = segment
  if (top !== 1) checkProducts(scan, segment)
  if (bottom !== 1) scan.isWhole = false
  const last = scan.places.length
  scan.parts.push({ from, start: scan.segment, end: scan.at, top, bottom, unknown: isUnknown, first, last, water })
}

function finishInside(scan: Scan, { from, first, top, bottom }: Segment, water: number): void {
  scan.top = top
  scan.bottom = bottom
  multiplyAtoms(scan, first, from)
  if (water === 0) return
  scan.top = water * top
  addAtoms(scan, waterPlace)
}

/** The number in front of a part is multiplied later; here it is made sure that it can be. */
function checkProducts(scan: Scan, { from, first, top }: Segment): void {
  for (let index = first; index < scan.tops.length; index += 1) {
    if (Math.abs(scan.tops[index] as number) * top > greatestProduct) throw outOfRange(scan, from, scan.at)
  }
}
