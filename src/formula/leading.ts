import {
  capital,
  caret,
  digit,
  dot,
  kindAt,
  opening,
  sign,
  skipSpaces,
  small,
  superscript,
  vulgar,
} from './characters.js'
import { endsPart, readCharge } from './charge.js'
import { readTimes } from './numbers.js'
import { bareElectron, numeralInBrackets } from './reader-complaints.js'
import { mark, type Scan } from './scan.js'

/** Reads the number in front of a part; whether it is unknown. */
export function readLeading(scan: Scan, isFirst: boolean): boolean {
  const kind = kindAt(scan.text, scan.at)
  scan.top = 1
  scan.bottom = 1
  if (kind === capital || kind === opening) return false
  if (isFirst && scan.depth > 0 && (kind === digit || kind === vulgar)) throw numeralInBrackets(scan)
  const isUnknown = !isFirst && kind === small && isUnknownNumber(scan)
  if (isUnknown) {
    scan.at += 1
    mark(scan, 'unknown', scan.at - 1, scan.text.charAt(scan.at - 1))
  } else if (kind === digit || kind === vulgar) readTimes(scan)
  scan.at = skipSpaces(scan.text, scan.at)
  return isUnknown
}

/** Whether a letter stands for the number of what follows: `xH2O`. */
function isUnknownNumber({ text, at }: Scan): boolean {
  const kind = kindAt(text, skipSpaces(text, at + 1))
  return 'xnyzm'.includes(text.charAt(at)) && (kind === capital || kind === opening)
}

/** Whether a dot stands here, or the letter x before a number, which is written for it: `CuSO4 x 5 H2O`. */
export function isDot({ text, at }: Scan): boolean {
  const kind = kindAt(text, at)
  if (kind !== small) return kind === dot
  const next = kindAt(text, skipSpaces(text, at + 1))
  return text.charAt(at) === 'x' && (next === digit || next === vulgar)
}

/** `e^-`. */
export function readElectron(scan: Scan): void {
  const { text, at: start } = scan
  const kind = kindAt(text, start + 1)
  if (text.charAt(start) !== 'e' || kind === small) return
  if (kind !== caret && kind !== sign && kind !== superscript) throw bareElectron(scan)
  scan.at += 1
  mark(scan, 'electron', start, 'e')
  readCharge(scan)
  if (scan.top !== -1 || !endsPart(text, scan.at)) throw bareElectron(scan)
}
