import type { Span } from '../errors.js'
import { isDigit, isPlus, isSpace, skipDigits, skipSpaces, trimEnd } from './characters.js'
import { EquationError } from './equation-error.js'
import { startsWithState } from './states.js'

/** The terms of one side: the trimmed stretches between the plus signs that are not charges. */
export function splitSide(text: string, start: number, end: number): readonly Span[] {
  const spans: Span[] = []
  let from = start
  for (let at = start; at < end; at += 1) {
    if (!isPlus(text.charCodeAt(at)) || !isSeparator(text, at, from, end)) continue
    spans.push(termSpan(text, from, at))
    from = at + 1
  }
  spans.push(termSpan(text, from, end))
  return spans
}

/** The stretch without the spaces around it; an empty one is an error at the plus beside it. */
function termSpan(text: string, from: number, to: number): Span {
  const start = skipSpaces(text, from, to)
  const end = trimEnd(text, start, to)
  if (start < end) return { start, end }
  throw emptyTerm(isPlus(text.charCodeAt(to)) ? to : from - 1)
}

/**
 * A plus after a space separates; a plus that touches the formula before it is its charge where a separator follows, and a
 * separator where a formula follows: of two readings the one that leaves a readable equation.
 */
function isSeparator(text: string, at: number, from: number, end: number): boolean {
  const before = at === from ? Number.NaN : text.charCodeAt(at - 1)
  if (at === from || isSpace(before)) return true
  if (isAfterCaret(text, at, from)) return false
  if (text.charAt(at - 1) === '(') throw thirdBody(text, at)
  return isPlus(before) || separatesBeforeNext(text, at, end)
}

/** `^+` and `^3+`: a charge, whatever follows. */
function isAfterCaret(text: string, at: number, from: number): boolean {
  let before = at - 1
  while (before >= from && isDigit(text.charCodeAt(before))) before -= 1
  return before >= from && text.charAt(before) === '^'
}

function separatesBeforeNext(text: string, at: number, end: number): boolean {
  if (isPlus(text.charCodeAt(at + 1))) throw ambiguousPlus(text, at)
  const formula = skipSpaces(text, skipNumber(text, at + 1, end), end)
  return formula < end && !startsWithState(text, formula) && startsFormula(text.charAt(formula))
}

/** The place after a coefficient: `2`, `0.5`, `1/2`; for `Fe+3` the number is a charge, as no formula follows it. */
function skipNumber(text: string, at: number, end: number): number {
  const first = skipSpaces(text, at, end)
  let next = skipDigits(text, first, end)
  while (next > first && './⁄'.includes(text.charAt(next)) && isDigit(text.charCodeAt(next + 1))) {
    next = skipDigits(text, next + 1, end)
  }
  return next
}

/** Whether a character can begin a formula, or is a coefficient of one character. */
function startsFormula(character: string): boolean {
  return (
    (character >= 'A' && character <= 'Z') || (character >= 'a' && character <= 'z') || '([{½⅓⅔¼¾⅕⅛'.includes(character)
  )
}

function emptyTerm(plus: number): EquationError {
  return new EquationError({
    code: 'equation/empty-term',
    message: `Beside the plus at character ${plus + 1} stands no substance.`,
    position: { start: plus, end: plus + 1 },
    found: '+',
    expected: 'a formula on each side of a plus',
    hint: 'Remove the extra plus, or write a charge with ^: Na^+ + Cl^-.',
  })
}

function ambiguousPlus(text: string, at: number): EquationError {
  let end = at
  while (isPlus(text.charCodeAt(end))) end += 1
  return new EquationError({
    code: 'equation/ambiguous-plus',
    message: `The ${end - at} plus signs at character ${at + 1} may be a charge, or a charge and a plus.`,
    position: { start: at, end },
    found: text.slice(at, end),
    expected: 'a charge with ^, and a plus between spaces',
    hint: 'Write Na^+ + Cl^- for two ions, Ca^2+ for a twofold charge.',
  })
}

function thirdBody(text: string, at: number): EquationError {
  return new EquationError({
    code: 'equation/not-a-substance',
    message: `A collision partner in brackets, as at character ${at}, is not a substance.`,
    position: { start: at - 1, end: at + 1 },
    found: text.slice(at - 1, at + 1),
    expected: 'formulas only',
    hint: 'Leave the third body (+M) out on both sides.',
  })
}
