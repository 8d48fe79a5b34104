import { type FormulaCode, FormulaError } from './formula-error.js'
import type { Scan } from './scan.js'

/** What is wrong with a stretch of the text, as the ends of sentences. */
export interface Complaint {
  readonly code: FormulaCode
  readonly start: number
  readonly end: number
  /** Follows what was found: `is not an element symbol`. */
  readonly says: string
  readonly expected: string
  readonly hint?: string | undefined
}

/** The error for a stretch of the text that is being read. */
export function complain(scan: Scan, { code, start, end, says, expected, hint }: Complaint): FormulaError {
  const found = scan.text.slice(start, end)
  const place = `at character ${scan.offset + start + 1}`
  return new FormulaError({
    code,
    message: found === '' ? `Something is missing ${place}: the text ${says}.` : `${quote(found)} ${place} ${says}.`,
    position: { start: scan.offset + start, end: scan.offset + end },
    found: found === '' ? 'the end' : found,
    expected,
    hint,
  })
}

/** Text for a message: short, and with the code point of what a screen may not show. */
function quote(text: string): string {
  const shown = text.length <= 40 ? text : `${text.slice(0, 37)}...`
  return `"${[...shown].map((one) => (isPlain(one) ? one : `\\u{${codePoint(one)}}`)).join('')}"`
}

/** `41E` for a Cyrillic O. */
export function codePoint(character: string): string {
  return (character.codePointAt(0) as number).toString(16).toUpperCase().padStart(4, '0')
}

function isPlain(character: string): boolean {
  const code = character.codePointAt(0) as number
  return code >= 32 && code !== 127 && !(code >= 0x80 && code < 0xa0) && !isInvisible(code)
}

/** First and last codes of characters that have no width or no ink, change the direction of others, or are half a character. */
const invisible: readonly (readonly [number, number])[] = [
  [0xad, 0xad],
  [0x34f, 0x34f],
  [0x61c, 0x61c],
  [0x115f, 0x1160],
  [0x17b4, 0x17b5],
  [0x180b, 0x180f],
  [0x200b, 0x200f],
  [0x2028, 0x202e],
  [0x2060, 0x206f],
  [0x2800, 0x2800],
  [0x3164, 0x3164],
  [0xd800, 0xdfff],
  [0xfe00, 0xfe0f],
  [0xfeff, 0xfeff],
  [0xffa0, 0xffa0],
  [0xfff0, 0xfffb],
  [0xe0000, 0xe0fff],
]

/** Whether nobody sees a character. */
export function isInvisible(code: number): boolean {
  return invisible.some(([first, last]) => code >= first && code <= last)
}
