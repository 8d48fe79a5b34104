import type { Span } from '../errors.js'
import { tryParseFormula } from '../formula/index.js'
import { isDash, isSmallLetter, skipDigits, skipSpaces } from './characters.js'
import { letter, negative } from './coefficient-errors.js'
import { EquationError } from './equation-error.js'
import { condition, isCondition } from './term-errors.js'

/** Two formulas with only a space between them, or a formula with something else beside it. */
export function missingPlus(text: string, term: Span, gap: Span): EquationError {
  const bracketed = firstBracket(text, term)
  if (isCondition(text.slice(bracketed.start, bracketed.end))) return condition(text, bracketed)
  const [before, after] = [text.slice(term.start, gap.start), text.slice(gap.end, term.end)]
  if (isElectronLoss(after)) return negative(text, gap.end, term.end)
  if (isCondition(after)) return condition(text, { start: gap.end, end: term.end })
  if (isSmallLetter(before)) return letter(text, term.start)
  if (before === 'mol') return unit(term, before)
  return separated(text, term, gap)
}

/** Two formulas side by side; the hint joins them, where both can be read. */
function separated(text: string, term: Span, gap: Span): EquationError {
  const [before, after] = [text.slice(term.start, gap.start), text.slice(gap.end, term.end)]
  const [first, second] = [withoutLast(before), withoutFirst(after)]
  const areFormulas = tryParseFormula(first).ok && tryParseFormula(second).ok
  return new EquationError({
    code: 'equation/missing-plus',
    message: `A space separates two formulas at character ${gap.start + 1}.`,
    position: gap,
    found: text.slice(term.start, term.end),
    expected: 'a plus between formulas',
    hint: areFormulas ? `${first} + ${second}?` : undefined,
  })
}

/** `H2,` without its comma. */
function withoutLast(text: string): string {
  return ',;&'.includes(text.charAt(text.length - 1)) ? text.slice(0, -1) : text
}

/** `and O2` without its `and`. */
function withoutFirst(text: string): string {
  const word = ['and ', '& ', '; ', ', '].find((start) => text.startsWith(start)) ?? ''
  return text.slice(word.length)
}

/** `- 2e-` behind what gives off the electrons. */
function isElectronLoss(text: string): boolean {
  const first = isDash(text.charCodeAt(0)) ? skipSpaces(text, 1, text.length) : text.length
  return text.charAt(skipSpaces(text, skipDigits(text, first, text.length), text.length)) === 'e'
}

/** `2 mol H2`: a number with a unit. */
function unit({ start }: Span, found: string): EquationError {
  return new EquationError({
    code: 'equation/coefficient-unreadable',
    message: `"${found}" at character ${start + 1} is a unit; a coefficient has none.`,
    position: { start, end: start + found.length },
    found,
    expected: 'a formula after the coefficient',
    hint: `Leave out ${found}.`,
  })
}

/** The bracket with which a term begins, `[500 °C]`; otherwise an empty stretch. */
function firstBracket(text: string, { start, end }: Span): Span {
  const closing = { '(': ')', '[': ']' }[text.charAt(start)]
  const last = closing === undefined ? -1 : text.indexOf(closing, start)
  return { start, end: last < 0 || last >= end ? start : last + 1 }
}
