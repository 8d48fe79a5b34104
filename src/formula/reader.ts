import { symbolPlace } from '../element/symbols.js'
import {
  capital,
  caret,
  closing,
  closingOf,
  digit,
  end,
  kindAt,
  opening,
  sign,
  skipSpaces,
  small,
  space,
  superscript,
} from './characters.js'
import { isCharge, readBracketedCharge, readCharge } from './charge.js'
import { isOxidationNumber, oxidationNumber, romanEnd, sumInside } from './charge-complaints.js'
import { checkDopant } from './dopant.js'
import { isDot, readElectron, readLeading } from './leading.js'
import { readCount } from './numbers.js'
import { multiplyAtoms } from './products.js'
import { emptySegment, loneCharge, misplacedCharge, tooDeep, unclosed } from './reader-complaints.js'
import { addAtoms, deepest, mark, type Scan } from './scan.js'
import { finishSegment } from './segment.js'
import { strangeLetters } from './strange-letters.js'
import { unexpected } from './unexpected.js'

/** Reads parts and the dots between them, up to a closing bracket or the end. */
export function readSegments(scan: Scan): void {
  readSegment(scan, true)
  while (isDot(scan)) {
    const [start, first] = [scan.at, scan.places.length]
    scan.at += 1
    mark(scan, 'dot', start, '·')
    readSegment(scan, false)
    if (scan.text.charAt(start) === ':') checkDopant(scan, start, first)
  }
}

/** Reads one part with the number in front of it. */
function readSegment(scan: Scan, isFirst: boolean): void {
  scan.at = skipSpaces(scan.text, scan.at)
  const from = scan.at
  const first = scan.places.length
  const isUnknown = readLeading(scan, isFirst)
  const { top, bottom } = scan
  scan.segment = scan.at
  scan.chargeAt = -1
  if (kindAt(scan.text, scan.at) === small) readElectron(scan)
  readUnits(scan)
  if (scan.places.length === first) throw emptySegment(scan, from)
  if (scan.bare && scan.chargeAt >= 0) throw misplacedCharge(scan)
  finishSegment(scan, { from, first, top, bottom, isUnknown, joined: !isFirst || isDot(scan) })
}

/** Reads symbols, brackets and charges up to a dot, a closing bracket or the end. */
function readUnits(scan: Scan): void {
  for (;;) {
    const kind = kindAt(scan.text, scan.at)
    if (kind === capital) readAtoms(scan)
    else if (kind === opening) readBracket(scan)
    else if (kind === end || kind === closing || isDot(scan)) return
    else readBetween(scan, kind)
  }
}

/** Reads a symbol and its count. */
function readAtoms(scan: Scan): void {
  const { text, at: start } = scan
  const second = text.charCodeAt(start + 1)
  const letters = second >= 97 && second <= 122 ? 2 : 1
  const place = symbolPlace(text.charCodeAt(start), letters === 2 ? second : 0)
  if (place === 0) throw strangeLetters(scan, start)
  scan.at = start + letters
  if (scan.tokens !== undefined) mark(scan, 'symbol', start, text.slice(start, scan.at))
  readCount(scan)
  addAtoms(scan, place)
  scan.bare = true
}

/** Reads a bracket, what is inside, and its count. */
function readBracket(scan: Scan): void {
  const { text, at: start, segment, places } = scan
  if (kindAt(text, start + 1) >= digit && readBracketedCharge(scan)) return
  if (isOxidationNumber(text, start)) throw oxidationNumber(scan, start, romanEnd(text, start + 1) + 1)
  if (scan.depth === deepest) throw tooDeep(scan)
  const first = places.length
  const { chargeAt, charged } = scan
  scan.charged = false
  openBracket(scan)
  readSegments(scan)
  closeBracket(scan, start)
  scan.segment = segment
  readCount(scan)
  multiplyAtoms(scan, first, start)
  scan.bare = !scan.charged
  scan.chargeAt = scan.charged ? start : chargeAt
  scan.charged ||= charged
}

function openBracket(scan: Scan): void {
  const { text, at: start } = scan
  scan.depth += 1
  scan.at += 1
  mark(scan, 'open', start, text.charAt(start))
}

function closeBracket(scan: Scan, start: number): void {
  const { text, at } = scan
  const wanted = closingOf(text.charAt(start))
  if (text.charAt(at) !== wanted) throw unclosed(scan, start, wanted)
  scan.depth -= 1
  scan.at += 1
  mark(scan, 'close', at, text.charAt(at))
}

/** Passes spaces and reads a charge; refuses everything else that is neither symbol nor bracket. */
function readBetween(scan: Scan, kind: number): void {
  if (kind === space) readSpace(scan)
  else readSign(scan, kind)
}

function readSign(scan: Scan, kind: number): void {
  const { text, at } = scan
  const isRaised = kind === caret || kind === superscript
  if (!isRaised && kind !== sign && !isCharge(text, at)) throw unexpected(scan, kind)
  if (at === scan.segment) throw loneCharge(scan)
  readCharge(scan)
}

/** Passes spaces; a sign on its own behind them is no charge. */
function readSpace(scan: Scan): void {
  scan.at = skipSpaces(scan.text, scan.at)
  if (kindAt(scan.text, scan.at) === sign) throw sumInside(scan, scan.at, scan.at + 1)
}
