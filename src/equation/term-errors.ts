import type { Span } from '../errors.js'
import { FormulaError } from '../formula/index.js'
import { isConditionText, isEnergyText } from './conditions.js'
import { EquationError } from './equation-error.js'
import { quote } from './quote.js'

/** Two formulas with only a space between them, or a formula with a condition beside it. */
export function missingPlus(text: string, term: Span, gap: Span): EquationError {
  const bracketed = firstBracket(text, term)
  if (isCondition(text.slice(bracketed.start, bracketed.end))) return condition(text, bracketed)
  const [before, after] = [text.slice(term.start, gap.start), text.slice(gap.end, term.end)]
  if (isCondition(after)) return condition(text, { start: gap.end, end: term.end })
  if (before.length === 1 && before >= 'a' && before <= 'z') return letterCoefficient(text, term)
  return new EquationError({
    code: 'equation/missing-plus',
    message: `A space separates two formulas at character ${gap.start + 1}.`,
    position: { start: gap.start, end: gap.end },
    found: text.slice(term.start, term.end),
    expected: 'a plus between formulas',
    hint: `${before} + ${after}?`,
  })
}

/** The error of a formula with its place in the whole text, or what the formula really is: energy, a condition, a collision partner. */
export function formulaError(text: string, term: Span, error: FormulaError): EquationError | FormulaError {
  const found = text.slice(term.start, term.end)
  if (isEnergyText(found)) return energy(text, term)
  if (found === 'M') return collisionPartner(term)
  if (isConditionText(found)) return condition(text, term)
  const { start, end } = error.position ?? { start: 0, end: found.length }
  return new FormulaError({
    ...error.toJSON(),
    message: `In ${quote(found)}: ${error.message}`,
    position: { start: term.start + start, end: term.start + end },
  })
}

/** `n CO2`: a coefficient that is no number. */
function letterCoefficient(text: string, { start }: Span): EquationError {
  return new EquationError({
    code: 'equation/coefficient-unreadable',
    message: `The letter at character ${start + 1} stands for an unknown number.`,
    position: { start, end: start + 1 },
    found: text.charAt(start),
    expected: 'a number before the formula',
    hint: 'Write the numbers, or leave them out and balance the equation.',
  })
}

/** The bracket with which a term begins, `[500 °C]`; otherwise an empty stretch. */
function firstBracket(text: string, { start, end }: Span): Span {
  const closing = { '(': ')', '[': ']' }[text.charAt(start)]
  const last = closing === undefined ? -1 : text.indexOf(closing, start)
  return { start, end: last < 0 || last >= end ? start : last + 1 }
}

/** `[heat]`, `(Δ)`, `-Δ`, `[H2SO4]` beside the arrow. */
function isCondition(text: string): boolean {
  const first = text.charAt(0)
  return isConditionText(text) || (first !== '' && '-–—='.includes(first)) || (first === '[' && text.endsWith(']'))
}

function condition(text: string, { start, end }: Span): EquationError {
  return new EquationError({
    code: 'equation/condition',
    message: `Conditions and catalysts, as at character ${start + 1}, are no part of the equation.`,
    position: { start, end },
    found: text.slice(start, end),
    expected: 'formulas only',
    hint: 'Write the arrow alone and keep the conditions in the procedure.',
  })
}

function energy(text: string, { start, end }: Span): EquationError {
  return new EquationError({
    code: 'equation/not-a-substance',
    message: `"${text.slice(start, end)}" at character ${start + 1} is energy, not a substance.`,
    position: { start, end },
    found: text.slice(start, end),
    expected: 'formulas only',
    hint: 'Leave heat, light and other energy out of the equation.',
  })
}

function collisionPartner({ start, end }: Span): EquationError {
  return new EquationError({
    code: 'equation/not-a-substance',
    message: `"M" at character ${start + 1} stands for any collision partner, not for a substance.`,
    position: { start, end },
    found: 'M',
    expected: 'formulas only',
    hint: 'Leave the third body M out on both sides.',
  })
}

/** An arrow for a solid or a gas against the state in brackets. */
export function contradictedState(text: string, { start, end }: Span): EquationError {
  return new EquationError({
    code: 'equation/state-contradicted',
    message: `The term at character ${start + 1} has two states that differ.`,
    position: { start, end },
    found: text.slice(start, end),
    expected: 'one state: ↓ is (s), ↑ is (g)',
  })
}
