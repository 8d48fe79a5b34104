import { type FoundArrow, missingArrow, reversedArrow, secondArrow, unknownArrow } from './arrow-errors.js'
import { arrowSigns, reversedSigns } from './arrow-signs.js'
import { isDash, isDigit, isSpace } from './characters.js'

const less = 0x3c
const equals = 0x3d
const greater = 0x3e

/** The one arrow of an equation. */
export function findArrow(text: string): FoundArrow {
  const first = nextArrow(text, 0)
  if (first === undefined) throw missingArrow(text)
  const second = nextArrow(text, first.end)
  if (second !== undefined) throw secondArrow(text, first, second)
  return first
}

function nextArrow(text: string, from: number): FoundArrow | undefined {
  for (let at = from; at < text.length; at += 1) {
    const code = text.charCodeAt(at)
    if (code !== 0x2d && (code < less || (code > greater && code < 0x2010))) continue
    const end = runEnd(text, at, isDash)
    const arrow = end > at ? dashArrow(text, at, end) : arrowAt(text, at, code)
    if (arrow !== undefined) return arrow
    at = Math.max(at, end - 1)
  }
  return undefined
}

function arrowAt(text: string, at: number, code: number): FoundArrow | undefined {
  if (code === equals) return equalsArrow(text, at)
  if (code === less) return doubleArrow(text, at)
  if (code === greater) throw unknownArrow(text, at, at + 1)
  return signArrow(text, at)
}

function signArrow(text: string, at: number): FoundArrow | undefined {
  const sign = text.charAt(at)
  if (reversedSigns.includes(sign)) throw reversedArrow(text, at, at + 1)
  for (const kind of ['forward', 'equilibrium', 'both-directions', 'stoichiometric'] as const) {
    if (arrowSigns[kind].includes(sign)) return { kind, start: at, end: at + 1, attached: false }
  }
  return undefined
}

function dashArrow(text: string, at: number, end: number): FoundArrow | undefined {
  if (text.charCodeAt(end) !== greater) return undefined
  const start = isCharge(text, at) ? at + 1 : at
  const attached = end - start > 1 && start > 0 && start === at && !isSpace(text.charCodeAt(at - 1))
  if (start === end) throw unknownArrow(text, end, end + 1, 'Put a space between the charge and the arrow.')
  return closed(text, { kind: 'forward', start, end: end + 1, attached })
}

/** `^->`, `^2-->` and `e-->`: the first dash is the charge of what stands before it. */
function isCharge(text: string, dash: number): boolean {
  let before = dash - 1
  while (isDigit(text.charCodeAt(before))) before -= 1
  if (text.charAt(before) === '^') return true
  return before === dash - 1 && text.charAt(before) === 'e' && !isCapital(text.charCodeAt(before - 1))
}

function isCapital(code: number): boolean {
  return code >= 0x41 && code <= 0x5a
}

function equalsArrow(text: string, at: number): FoundArrow {
  const end = runEnd(text, at, (code) => code === equals)
  if (text.charCodeAt(end) !== greater) return { kind: 'stoichiometric', start: at, end, attached: false }
  return closed(text, { kind: 'forward', start: at, end: end + 1, attached: false })
}

function doubleArrow(text: string, at: number): FoundArrow {
  const isEquals = text.charCodeAt(at + 1) === equals
  const end = runEnd(text, at + 1, isEquals ? (code) => code === equals : isDash)
  if (end === at + 1) throw unknownArrow(text, at, at + 1, 'Write formulas without markup.')
  if (text.charCodeAt(end) !== greater) throw reversedArrow(text, at, end)
  return closed(text, { kind: isEquals ? 'equilibrium' : 'both-directions', start: at, end: end + 1, attached: false })
}

function closed(text: string, arrow: FoundArrow): FoundArrow {
  if (text.charCodeAt(arrow.end) === greater) throw unknownArrow(text, arrow.start, arrow.end + 1)
  return arrow
}

function runEnd(text: string, at: number, belongs: (code: number) => boolean): number {
  let end = at
  while (belongs(text.charCodeAt(end))) end += 1
  return end
}
