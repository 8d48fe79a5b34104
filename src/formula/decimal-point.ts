import {
  closing,
  digit,
  dot,
  end,
  kindAt,
  plainDigits,
  runEnd,
  skipSpaces,
  small,
  space,
  subscript,
  vulgar,
} from './characters.js'
import type { Scan } from './scan.js'

/** What joins salts in crystals: written behind a full stop as in `CuSO4.5H2O`, it is a part of its own. `H20` is a slip for it. */
const guests = [
  'H2O',
  '(H2O)',
  'D2O',
  'NH3',
  '(NH3)',
  'H2O2',
  'HF',
  'HCl',
  'HNO3',
  'CO2',
  'SO2',
  'CH3OH',
  'C2H5OH',
  'H20',
]

/** Longest stretch on either side of a full stop that is looked at. */
const reach = 64

/**
 * Whether a full stop before a digit, as in `Fe0.947O`, `Fe.95O` and `CuSO4.5H2O`, is a decimal point; else it stands between
 * two parts. It is a decimal point unless (in this order, behind a count other than 0 and 1) a second point, a fraction, water or
 * another usual guest follows the digits, or what stands before it is a salt by the usual charges of its ions, and what stands
 * behind it is a salt or an organic molecule.
 */
export function isDecimalPoint(scan: Scan, start: number, point: number): boolean {
  const { text } = scan
  const kind = start === point ? digit : kindAt(text, start)
  if (kindAt(text, point + 1) !== kind) return false
  if (kind === subscript || ['0', '1'].includes(text.slice(start, point))) return true
  const behind = runEnd(text, point + 1, digit)
  if (isFraction(text, behind)) return false
  return text.charAt(point + 1) === '0' || !(isGuest(text, behind) || areParts(scan, point, behind))
}

/** Whether the digits go on as a decimal or a fraction: `4.0.5H2O`, `4.1/2H2O`, `4.2½H2O`. */
function isFraction(text: string, at: number): boolean {
  if (kindAt(text, at) === vulgar) return true
  return './⁄'.includes(text.charAt(at)) && [digit, vulgar].includes(kindAt(text, at + 1))
}

function isGuest(text: string, at: number): boolean {
  const start = skipSpaces(text, at)
  const behind = plainDigits(text.slice(start, start + 8))
  return guests.some((guest) => behind.startsWith(guest) && isBoundary(text, start + guest.length))
}

function isBoundary(text: string, at: number): boolean {
  const kind = kindAt(text, at)
  return kind === end || kind === dot || kind === space || kind === closing
}

function areParts(scan: Scan, point: number, behind: number): boolean {
  const { text, segment, isSalt } = scan
  let last = behind
  while (!isBoundary(text, last) || kindAt(text, last) === closing) last += 1
  if (point - segment > reach || last - behind > reach) return false
  const part = text.slice(behind, last)
  return isSalt(text.slice(segment, point)) && (isSalt(part) || carriesHydrogen(part))
}

/** Whether carbon carries hydrogen in a text: `C5H5N`, `(CH3)2SO`. */
function carriesHydrogen(text: string): boolean {
  for (let at = text.indexOf('C'); at >= 0; at = text.indexOf('C', at + 1)) {
    const behind = runEnd(text, at + 1, digit)
    if (text.charAt(behind) === 'H' && kindAt(text, behind + 1) !== small) return true
  }
  return false
}
