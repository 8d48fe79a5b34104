import { type EquationLike, equationOf } from './equation-of.js'
import { checkChoice } from './options.js'
import { type EquationStyle, writeEquation } from './write-equation.js'

/**
 * Writes an equation: for a keyboard (`'plain'`), with Unicode signs, as HTML, or as LaTeX for math mode. Plain and Unicode text
 * can be read again.
 *
 * @param equation - An equation or its text.
 * @param style - How to write it; `'plain'` unless said otherwise.
 * @returns The equation with one space around every plus and the arrow; coefficients of 1 are left out.
 * @throws {@link EquationError} `equation/unknown-option` for a style that is none of the four.
 * @source IUPAC, Quantities, Units and Symbols in Physical Chemistry (Green Book), 3rd edition, section 2.10.1, for the
 * arrows, from memory.
 *
 * @example
 * ```ts
 * import { formatEquation } from 'saltwright/equation'
 *
 * const equation = 'Zn(s) + 2H+ -> Zn^2+ + H2(g)'
 * formatEquation(equation, 'plain') // => 'Zn(s) + 2 H^+ -> Zn^2+ + H2(g)'
 * formatEquation(equation, 'unicode') // => 'Zn(s) + 2 H⁺ → Zn²⁺ + H₂(g)'
 * ```
 */
export function formatEquation(equation: EquationLike, style: EquationStyle = 'plain'): string {
  checkChoice('style', style, ['plain', 'unicode', 'html', 'latex'])
  return writeEquation(equationOf(equation), style)
}
