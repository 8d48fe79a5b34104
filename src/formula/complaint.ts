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

/** Characters that have no width, or change the direction of others, or are half a character. */
export function isInvisible(code: number): boolean {
  return (
    code === 0xad ||
    (code >= 0x200b && code <= 0x200f) ||
    (code >= 0x2028 && code <= 0x202e) ||
    (code >= 0x2060 && code <= 0x206f) ||
    (code >= 0xd800 && code <= 0xdfff) ||
    (code >= 0xfe00 && code <= 0xfe0f) ||
    code === 0xfeff
  )
}
