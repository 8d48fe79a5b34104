import { attempt, type Outcome, type Span, showFound } from '../errors.js'
import type { FormulaError } from '../formula/index.js'
import { findArrow } from './arrow.js'
import type { FoundArrow } from './arrow-errors.js'
import { skipSpaces, trimEnd } from './characters.js'
import type { Equation, Term } from './equation.js'
import { EquationError } from './equation-error.js'
import { makeEquation } from './make-equation.js'
import { splitSide } from './separators.js'
import { readTerm } from './term.js'

/** The longest text that is read as an equation, in characters. */
const maxLength = 20_000
/** The most terms an equation may have. */
const maxTerms = 200

/**
 * Reads a chemical equation: substances with their coefficients, charges and states on both sides of an arrow.
 *
 * Coefficients may be whole (`2`), decimal (`0.5`) or fractions (`1/2`, `½`); numbers after the dot of a hydrate belong to
 * the hydrate. Arrows: `->`, `=>`, `→` (forward), `=` (stoichiometric), `<->`, `⇄` (both directions), `<=>`, `⇌`
 * (equilibrium). A plus between spaces separates; a plus that touches the formula before it is its charge where that
 * leaves a readable equation. Of two such pluses before another formula the second separates (`H2O = H++OH-`); before a
 * separator, an arrow or a state both are the charge (`Cu++ + 2e-`). A charge with its number may stand behind a space
 * (`SO4 2-`). Whether the equation is balanced is another question: {@link checkBalance}.
 *
 * @param text - One equation, at most 20 000 characters and 200 terms.
 * @returns The equation, frozen; its text as written.
 * @throws {@link EquationError} `equation/missing-arrow`, `equation/several-arrows`, `equation/unknown-arrow`,
 * `equation/ambiguous-arrow` about the arrow.
 * @throws {@link EquationError} `equation/empty-side`, `equation/empty-term`, `equation/missing-formula`,
 * `equation/missing-plus`, `equation/ambiguous-plus` about the terms.
 * @throws {@link EquationError} `equation/coefficient-unreadable`, `equation/coefficient-out-of-range`,
 * `equation/decimal-comma` about a coefficient.
 * @throws {@link EquationError} `equation/condition`, `equation/not-a-substance`, `equation/state-contradicted` for heat,
 * light, catalysts and collision partners, and for two states of one species.
 * @throws {@link EquationError} `equation/not-text`, `equation/empty`, `equation/too-long`, `equation/too-many-species` for
 * what is no equation, or too large.
 * @throws {@link FormulaError} `formula/unknown-symbol`, and whatever else `parseFormula` throws for a formula in it, with the
 * position in the whole text.
 * @source IUPAC, Quantities, Units and Symbols in Physical Chemistry (Green Book), 3rd edition, section 2.10.1, for the
 * meaning of the arrows, from memory.
 *
 * @example
 * ```ts
 * import { parseEquation } from 'saltwright/equation'
 *
 * const equation = parseEquation('ZnO(s) + H2SO4(aq) -> ZnSO4(aq) + H2O(l)')
 * equation.left.length // => 2
 * equation.right.map((term) => term.state) // => ['aq', 'l']
 * equation.arrow // => 'forward'
 * parseEquation('H2 + O2') // throws equation/missing-arrow
 * parseEquation('H2 + Xx -> H2O') // throws formula/unknown-symbol
 * ```
 */
export function parseEquation(text: string): Equation {
  checkText(text)
  const arrow = findArrow(text)
  const leftSpans = side(text, 0, arrow.start, 'left')
  const rightSpans = side(text, arrow.end, text.length, 'right')
  checkCount(text, leftSpans.length + rightSpans.length)
  const left = leftSpans.map((span) => readTerm(text, span))
  const right = rightSpans.map((span) => readTerm(text, span))
  if (arrow.attached) refuseAmbiguous(text, arrow, [...left, ...right])
  return makeEquation({ left, right, arrow: arrow.kind, text })
}

/**
 * Reads a chemical equation without throwing: {@link parseEquation} with its error as data.
 *
 * @param text - One equation, at most 20 000 characters and 200 terms.
 * @returns The equation, or the error that says what was wrong and where.
 *
 * @example
 * ```ts
 * import { tryParseEquation } from 'saltwright/equation'
 *
 * const outcome = tryParseEquation('Zn + + H2SO4 -> ZnSO4 + H2')
 * outcome.ok // => false
 * ```
 */
export function tryParseEquation(text: string): Outcome<Equation, EquationError | FormulaError> {
  return attempt(() => parseEquation(text))
}

function checkText(text: unknown): asserts text is string {
  if (typeof text !== 'string') throw notText(text)
  if (text.length > maxLength) throw tooLong(text.length)
  if (skipSpaces(text, 0, text.length) === text.length) throw empty()
}

function side(text: string, from: number, to: number, name: 'left' | 'right'): readonly Span[] {
  const start = skipSpaces(text, from, to)
  const end = trimEnd(text, start, to)
  if (start === end) throw emptySide(from, to, name)
  return splitSide(text, start, end)
}

function checkCount(text: string, count: number): void {
  if (count <= maxTerms) return
  throw new EquationError({
    code: 'equation/too-many-species',
    message: `The equation has ${count} terms.`,
    position: { start: 0, end: text.length },
    found: `${count} terms`,
    expected: `at most ${maxTerms} terms`,
  })
}

/** `2Cl--> Cl2 + 2e^-`: where other species are charged, the first of the dashes may be a charge too. */
function refuseAmbiguous(text: string, arrow: FoundArrow, terms: readonly Term[]): void {
  if (terms.every(({ formula }) => formula.charge === 0)) return
  throw new EquationError({
    code: 'equation/ambiguous-arrow',
    message: `The dashes at character ${arrow.start + 1} may be an arrow, or a charge and an arrow.`,
    position: { start: arrow.start, end: arrow.end },
    found: text.slice(arrow.start, arrow.end),
    expected: 'a space before the arrow',
    hint: 'Write Cl^- -> for a charge and an arrow.',
  })
}

function notText(text: unknown): EquationError {
  return new EquationError({
    code: 'equation/not-text',
    message: `The text of an equation was expected, not ${showFound(text)}.`,
    found: showFound(text),
    expected: 'the text of an equation',
  })
}

function empty(): EquationError {
  return new EquationError({
    code: 'equation/empty',
    message: 'The text of the equation is empty.',
    position: { start: 0, end: 0 },
    expected: 'an equation such as ZnO + H2SO4 -> ZnSO4 + H2O',
  })
}

function tooLong(length: number): EquationError {
  return new EquationError({
    code: 'equation/too-long',
    message: `The text has ${length} characters.`,
    found: `${length} characters`,
    expected: `at most ${maxLength} characters`,
  })
}

function emptySide(start: number, end: number, name: 'left' | 'right'): EquationError {
  return new EquationError({
    code: 'equation/empty-side',
    message: `Nothing stands on the ${name} of the arrow.`,
    position: { start, end },
    expected: `a formula on the ${name}`,
  })
}
