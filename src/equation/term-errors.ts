import type { Span } from '../errors.js'
import { FormulaError, tryParseFormula } from '../formula/index.js'
import { isSmallLetter } from './characters.js'
import { letter } from './coefficient-errors.js'
import { isConditionText, isEnergyText } from './conditions.js'
import { EquationError } from './equation-error.js'
import { quote } from './quote.js'

/** The error of a formula with its place in the whole text, or what the formula really is: energy, a condition, a collision partner. */
export function formulaError(text: string, term: Span, error: FormulaError): EquationError | FormulaError {
  const found = text.slice(term.start, term.end)
  if (isEnergyText(found)) return energy(text, term)
  if (found === 'M') return collisionPartner(term)
  if (isConditionText(found)) return condition(text, term)
  if (isLetterCoefficient(found, error)) return letter(text, term.start)
  const { start, end } = error.position ?? { start: 0, end: found.length }
  return new FormulaError({
    ...error.toJSON(),
    message: `In ${quote(found)}: ${error.message}`,
    position: { start: term.start + start, end: term.start + end },
  })
}

/** `nCO2`: a small letter before a formula, and no likely slip of writing. */
function isLetterCoefficient(found: string, { code, hint }: FormulaError): boolean {
  const isUnknown = code === 'formula/unknown-symbol' && hint === undefined
  return isUnknown && isSmallLetter(found.charAt(0)) && tryParseFormula(found.slice(1)).ok
}

/** `[heat]`, `(Δ)`, `-Δ`, `[H2SO4]` beside the arrow, `(cat. MnO2)` behind the last term. */
export function isCondition(text: string): boolean {
  const first = text.charAt(0)
  if (isConditionText(text) || (first !== '' && '-–—='.includes(first))) return true
  return (first === '[' && text.endsWith(']')) || (first === '(' && hasWord(text))
}

/** Whether three small letters stand side by side: no symbol is that long. */
function hasWord(text: string): boolean {
  let run = 0
  for (const character of text) {
    run = isSmallLetter(character) ? run + 1 : 0
    if (run === 3) return true
  }
  return false
}

/** Words, signs or a bracket that tell how, not what. */
export function condition(text: string, { start, end }: Span): EquationError {
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
