import type { Span } from '../errors.js'
import { isDigit, isPlus, isSpace, skipDigits, skipSpaces, trimEnd } from './characters.js'
import { isVulgarFraction } from './coefficient.js'
import { EquationError } from './equation-error.js'
import { startsWithState } from './states.js'

/** The terms of one side: the trimmed stretches between the plus signs that are not charges. */
export function splitSide(text: string, start: number, end: number): readonly Span[] {
  const spans: Span[] = []
  let [from, at] = [start, start]
  while (at < end) {
    const run = skipPluses(text, at)
    const plus = run > at ? separatorIn(text, at, run, from, end) : undefined
    at = Math.max(run, at + 1)
    if (plus === undefined) continue
    spans.push(termSpan(text, from, plus))
    from = plus + 1
    at = from
  }
  spans.push(termSpan(text, from, end))
  return spans
}

/** The place after the pluses that begin at `at`: behind a side stands a space, an arrow or nothing. */
function skipPluses(text: string, at: number): number {
  let next = at
  while (isPlus(text.charCodeAt(next))) next += 1
  return next
}

/** The stretch without the spaces around it; an empty one is an error at the plus beside it. */
function termSpan(text: string, from: number, to: number): Span {
  const start = skipSpaces(text, from, to)
  const end = trimEnd(text, start, to)
  if (start < end) return { start, end }
  throw emptyTerm(isPlus(text.charCodeAt(to)) ? to : from - 1)
}

/**
 * The plus of a run of them that separates, if one does: of the readings the one that leaves a readable equation. A plus
 * after a space separates. Behind a formula, the last plus before another formula separates (`H++OH-`, `Fe2++Cl2`), and
 * those before it are a charge; before a separator, an arrow or a state all are a charge (`Cu++ + 2e-`). Where two readings
 * are left, as in `Na++ Cl-` and `Al+++3Cl-`, the text is refused.
 */
function separatorIn(text: string, at: number, run: number, from: number, end: number): number | undefined {
  if (at === from || isSpace(text.charCodeAt(at - 1))) return at
  if (text.charAt(at - 1) === '(') throw thirdBody(text, at)
  const caret = caretBefore(text, at, from)
  if (caret === undefined) return separatorBehindFormula(text, at, run, end)
  if (caret < at - 1) return run > at + 1 ? at + 1 : undefined
  return run > at + 1 && startsTerm(text, run, end) ? run - 1 : undefined
}

function separatorBehindFormula(text: string, at: number, run: number, end: number): number | undefined {
  if (!startsTerm(text, run, end)) return undefined
  if (isAmbiguous(text, at, run)) throw ambiguousPlus(text, at, run)
  return run - 1
}

/** Whether pluses before a formula may also be a charge whose separator is missing. */
function isAmbiguous(text: string, at: number, run: number): boolean {
  return run > at + 2 || (run === at + 2 && isSpace(text.charCodeAt(run)))
}

/** The caret of `^+` and `^3+`, whose first plus is a charge, whatever follows. */
function caretBefore(text: string, at: number, from: number): number | undefined {
  let before = at - 1
  while (before >= from && isDigit(text.charCodeAt(before))) before -= 1
  return before >= from && text.charAt(before) === '^' ? before : undefined
}

/** Whether a term begins here, with its coefficient or without. */
function startsTerm(text: string, at: number, end: number): boolean {
  const formula = skipSpaces(text, skipNumber(text, at, end), end)
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
  if ((character >= 'A' && character <= 'Z') || (character >= 'a' && character <= 'z')) return true
  return '([{'.includes(character) || isVulgarFraction(character)
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

function ambiguousPlus(text: string, at: number, end: number): EquationError {
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
