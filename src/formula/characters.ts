/** What a character of a formula can be; a small number each, for speed. */
const nothing = 0
export const capital = 1
export const small = 2
export const digit = 3
export const subscript = 4
export const opening = 5
export const closing = 6
export const dot = 7
export const space = 8
export const sign = 9
export const caret = 10
export const superscript = 11
export const vulgar = 12
export const end = 13

/** The dots that people type between the parts of an addition compound, besides the full stop and the asterisk. */
const dots = '·•∙⋅‧・･●˙ꞏ⸱×:\u0387'
/** Spaces that change nothing: of any width, breaking or not. A tab or a line break is none of them. */
const spaces = ' \u00a0\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000'
/** Minus signs and the dashes used for them. */
const minuses = '-\u2212\u2013\u2010\u2011\u2012\u2014\u2015\u207b'
const subscripts = '₀₁₂₃₄₅₆₇₈₉'
const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹'
/** Fractions that are one character, with what they stand for. */
const vulgars: Readonly<Record<string, readonly [number, number]>> = {
  '¼': [1, 4],
  '½': [1, 2],
  '¾': [3, 4],
  '⅐': [1, 7],
  '⅑': [1, 9],
  '⅒': [1, 10],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '⅕': [1, 5],
  '⅖': [2, 5],
  '⅗': [3, 5],
  '⅘': [4, 5],
  '⅙': [1, 6],
  '⅚': [5, 6],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
}

const wide: ReadonlyMap<number, number> = /* @__PURE__ */ kindsByCode()
const narrow: Uint8Array = /* @__PURE__ */ narrowKinds()

/** What the character at a place is; `end` after the last one. */
export function kindAt(text: string, at: number): number {
  if (at >= text.length) return end
  const code = text.charCodeAt(at)
  return (code < 256 ? narrow[code] : wide.get(code)) ?? nothing
}

/** The value of a digit, plain, lowered or raised; -1 for any other character. */
export function digitValue(text: string, at: number): number {
  const code = text.charCodeAt(at)
  if (code >= 48 && code <= 57) return code - 48
  if (!(code >= 0xb2)) return -1
  const lowered = subscripts.indexOf(text.charAt(at))
  return lowered >= 0 ? lowered : raisedValue(text, at)
}

function raisedValue(text: string, at: number): number {
  return superscripts.indexOf(text.charAt(at))
}

/** 1 for a plus, -1 for a minus, on the line or raised; 0 for any other character. */
export function signAt(text: string, at: number): number {
  const code = text.charCodeAt(at)
  if (code < 0x2010) return code === 43 ? 1 : code === 45 ? -1 : 0
  return at < text.length ? wideSign(text.charAt(at)) : 0
}

function wideSign(character: string): number {
  if (character === '⁺') return 1
  return minuses.includes(character) ? -1 : 0
}

/** What a one-character fraction stands for. */
export function vulgarAt(text: string, at: number): readonly [number, number] | undefined {
  const character = text.charAt(at)
  return Object.hasOwn(vulgars, character) ? vulgars[character] : undefined
}

/** The first place at or after `at` that is no space. */
export function skipSpaces(text: string, at: number): number {
  let next = at
  while (kindAt(text, next) === space) next += 1
  return next
}

/** The place after the run of one kind of characters. */
export function runEnd(text: string, at: number, kind: number): number {
  let next = at
  while (kindAt(text, next) === kind) next += 1
  return next
}

/** Digits as people type them on the line, for the canonical text. */
export function plainDigits(text: string): string {
  let plain = ''
  for (let at = 0; at < text.length; at += 1) plain += plainCharacter(text, at)
  return plain
}

function plainCharacter(text: string, at: number): string {
  const value = digitValue(text, at)
  if (value >= 0) return String(value)
  return '⁄∕'.includes(text.charAt(at)) ? '/' : text.charAt(at)
}

function kindsByCode(): Map<number, number> {
  const kinds: readonly (readonly [string, number])[] = [
    ['ABCDEFGHIJKLMNOPQRSTUVWXYZ', capital],
    ['abcdefghijklmnopqrstuvwxyz', small],
    ['0123456789', digit],
    [subscripts, subscript],
    ['([{', opening],
    [')]}', closing],
    [`.*${dots}`, dot],
    [spaces, space],
    [`+${minuses}`, sign],
    ['^', caret],
    [`${superscripts}⁺⁻`, superscript],
    [Object.keys(vulgars).join(''), vulgar],
  ]
  return new Map(
    kinds.flatMap(([characters, kind]) => [...characters].map((one) => [one.charCodeAt(0), kind] as const)),
  )
}

function narrowKinds(): Uint8Array {
  return Uint8Array.from({ length: 256 }, (_, code) => wide.get(code) ?? nothing)
}

/** The bracket that closes an opening one. */
export function closingOf(bracket: string): string {
  return ')]}'.charAt('([{'.indexOf(bracket))
}
