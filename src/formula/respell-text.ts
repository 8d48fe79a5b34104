import { capital, digit, dot, kindAt, small } from './characters.js'
import { cheapest, respell, type Spelling } from './respell.js'

const states = ['(s)', '(l)', '(g)', '(aq)']

/**
 * The likeliest spelling of a text that passes a test: letters as symbols whatever their case, the digit zero as letter O first
 * where no count begins with a zero, then wherever it stands. What stands between letters and zeros stays.
 */
export function respellText(text: string, passes: (text: string) => boolean): string | undefined {
  const state = states.find((ending) => text.endsWith(ending)) ?? ''
  const body = text.slice(0, text.length - state.length)
  const variants = new Set([body, withLetterO(body), withLetters(body, isAnyZero)])
  for (const variant of variants) {
    const found = spellings(variant).find((spelling) => passes(spelling.text))
    if (found !== undefined) return found.text + state
  }
  return undefined
}

/** The text with the letter O for every zero that begins a count. */
export function withLetterO(text: string): string {
  return withLetters(text, isCountStart)
}

function withLetters(text: string, isMeant: (text: string, at: number) => boolean): string {
  return text
    .split('')
    .map((one, at) => (one === '0' && isMeant(text, at) ? 'O' : one))
    .join('')
}

function isCountStart(text: string, at: number): boolean {
  const isAfterNumber = kindAt(text, at - 1) === digit || text.charAt(at - 1) === '.'
  return !isAfterNumber && !'.0'.includes(text.charAt(at + 1) || ' ')
}

function isAnyZero(text: string, at: number): boolean {
  return !text.startsWith('.', at + 1) && !text.slice(0, at).endsWith('.')
}

/** All likely spellings of a text, the cheapest first. */
function spellings(text: string): readonly Spelling[] {
  let found: readonly Spelling[] = [{ text: '', cost: 0 }]
  for (const piece of pieces(text)) {
    const ways = isLetter(piece, 0) ? respellPiece(piece, found) : [{ text: piece, cost: 0 }]
    found = cheapest(
      found.flatMap((before) => ways.map((way) => ({ text: before.text + way.text, cost: before.cost + way.cost }))),
    )
  }
  return found
}

/** Letters behind a dot may begin with the x of an unknown number. */
function respellPiece(letters: string, found: readonly Spelling[]): readonly Spelling[] {
  const text = found[0]?.text ?? ''
  const isCounted = kindAt(text, text.length - 1) === dot && 'xn'.includes(letters.charAt(0))
  if (!isCounted) return respell(letters)
  return respell(letters.slice(1)).map(({ text: rest, cost }) => ({ text: letters.charAt(0) + rest, cost }))
}

/** Runs of letters, and what stands between them. */
function pieces(text: string): readonly string[] {
  const found: string[] = []
  for (let at = 0; at < text.length; at += 1) {
    if (at > 0 && isLetter(text, at) === isLetter(text, at - 1)) found[found.length - 1] += text.charAt(at)
    else found.push(text.charAt(at))
  }
  return found
}

function isLetter(text: string, at: number): boolean {
  const kind = kindAt(text, at)
  return kind === capital || kind === small
}
