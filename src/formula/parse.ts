import { attempt, type Outcome, showFound } from '../errors.js'
import type { Formula } from './formula.js'
import { FormulaError } from './formula-error.js'
import { likelyIntent } from './likely-intent.js'
import { ReadFormula } from './read-formula.js'
import { readFormulaText } from './reading.js'
import { asStandIn } from './stand-in.js'

/**
 * Reads a chemical formula, in one pass and in linear time.
 *
 * - *Symbols* in their exact case, with D and T; *counts* as whole numbers, decimals or fractions (`Fe0.947O`, `Pb(Mg1/3Nb2/3)O3`),
 *   on the line or lowered; *brackets* `()`, `[]`, `{}` inside one another.
 * - *Parts* between dots: `·`, its look-alikes, `*`, `×`, `:`, the full stop, and `x` before a number. A number in front of a part
 *   multiplies that part only, up to the next dot: `2CaSO4·H2O` is two calcium sulfates and one water, `3CdSO4·8H2O` three and
 *   eight. Water may be of unknown number: `·xH2O`, `·nH2O`. A dot inside brackets reaches to the end of the bracket.
 * - *A full stop before a digit* is a decimal point (`YBa2Cu3O6.93`, `Fe.95O`) unless water or another usual guest follows
 *   (`CuSO4.5H2O`), a second point does (`CaSO4.0.5H2O`), or it joins a salt to a salt or an organic molecule (`K2SO4.2MgSO4`).
 * - *Charges* at the end of a part or bracket: `^2-`, `²⁻`, `--`, `-2`, `(2-)`, `^{2-}`, `+`. Digits before a lone sign without a
 *   caret are a charge behind a metal or square bracket (`Fe3+`, `[Fe(CN)6]4-`) and where that makes a common ion (`SO42-`), else
 *   a count (`NO3-`, `NH4+`); `O2-`, which may be oxide or superoxide, is refused. The electron is `e^-` or `e-`.
 * - *A state* behind everything: `(s)`, `(l)`, `(g)`, `(aq)`.
 *
 * Spaces of any width are passed over where they change nothing. A text of up to 10 000 characters is read. Legal text that is
 * probably not what was meant is read as written, and the formula carries notes.
 *
 * @param text - The formula.
 * @returns The formula; unchangeable. What is asked of it is worked out when it is asked first.
 * @throws {@link FormulaError} `formula/unknown-symbol` and the other codes of {@link FormulaCode} that tell of the text, each with
 *   the position in the text, what was found, what was expected, and what was probably meant, if anything is likely.
 * @source IUPAC Red Book 2005, IR-4 (formulae; addition compounds: IR-4.4.3.5). Charges without a caret, full stops: common
 *   practice, no source.
 *
 * @example
 * ```ts
 * import { parseFormula } from 'saltwright/formula'
 *
 * const salt = parseFormula('(NH4)2Fe(SO4)2·6H2O')
 * salt.composition.get('O')?.toNumber() // => 14
 * salt.hydration?.toNumber() // => 6
 * parseFormula('SO4^2-').charge // => -2
 * parseFormula('CUSO4').notes.map(({ suggestion }) => suggestion) // => ['CuSO4']
 * parseFormula('Zn(SO4') // throws formula/unclosed-bracket
 * ```
 */
export function parseFormula(text: string): Formula {
  if (typeof text !== 'string') throw notText(text)
  const outcome = attempt<ReturnType<typeof readFormulaText>, FormulaError>(() => readFormulaText(text))
  if (!outcome.ok) throw withHint(text, outcome.error)
  return new ReadFormula(outcome.value.scan, outcome.value.state)
}

/**
 * Reads a formula and gives a mistake back instead of throwing it; otherwise as {@link parseFormula}.
 *
 * @param text - The formula.
 * @returns `{ ok: true, value }` with the formula, or `{ ok: false, error }` with what `parseFormula` would throw.
 *
 * @example
 * ```ts
 * import { tryParseFormula } from 'saltwright/formula'
 *
 * const outcome = tryParseFormula('cuso4')
 * outcome.ok // => false
 * if (!outcome.ok) outcome.error.hint // => 'CuSO4?'
 * ```
 */
export function tryParseFormula(text: string): Outcome<Formula, FormulaError> {
  return attempt(() => parseFormula(text))
}

function withHint(text: string, error: FormulaError): FormulaError {
  return asStandIn(new FormulaError({ ...error.toJSON(), hint: likelyIntent(text, error) }))
}

/** What should be text and is not. */
export function notText(found: unknown): FormulaError {
  return new FormulaError({
    code: 'formula/not-text',
    message: `${showFound(found)} is not the text of a formula.`,
    found: showFound(found),
    expected: 'a formula as text, such as "ZnSO4·7H2O"',
  })
}
