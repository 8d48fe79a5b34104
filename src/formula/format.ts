import { FormulaError } from './formula-error.js'
import { type FormulaLike, formulaOf } from './formula-of.js'
import { plainText } from './plain-text.js'
import { type FormulaStyle, styles } from './styles.js'
import { tokensOf } from './tokens.js'

/**
 * Writes a formula in one of four styles, always with the same spelling of its dots, charges and fractions, without spaces and
 * without its state. The first two styles can be read again.
 *
 * @param formula - A formula or its text.
 * @param style - `"plain"`: what every keyboard has, and the middle dot (`SO4^2-`). `"unicode"`: lowered and raised digits.
 *   `"html"`: `<sub>` and `<sup>`, nothing else. `"latex"`: for math mode, upright.
 * @returns The formula as text.
 * @throws {@link FormulaError} `formula/unknown-style`, and whatever {@link parseFormula} throws for a text.
 *
 * @example
 * ```ts
 * import { formatFormula } from 'saltwright/formula'
 *
 * formatFormula('ZnSO4 * 7 H2O', 'plain') // => 'ZnSO4·7H2O'
 * formatFormula('(NH4)2Fe(SO4)2·6H2O', 'unicode') // => '(NH₄)₂Fe(SO₄)₂·6H₂O'
 * formatFormula('[Fe(CN)6]4-', 'html') // => '[Fe(CN)<sub>6</sub>]<sup>4−</sup>'
 * formatFormula('SO4--', 'latex') // => '\\mathrm{SO_{4}^{2-}}'
 * ```
 */
export function formatFormula(formula: FormulaLike, style: FormulaStyle): string {
  if (typeof style !== 'string' || !Object.hasOwn(styles, style)) throw unknownStyle(style)
  const tokens = tokensOf(formulaOf(formula).text)
  if (style === 'plain') return plainText(tokens)
  const { frame, write } = styles[style]
  return frame(tokens.map(write).join(''))
}

function unknownStyle(style: unknown): FormulaError {
  const found = typeof style === 'string' ? `"${style}"` : typeof style
  return new FormulaError({
    code: 'formula/unknown-style',
    message: `${found} is not a style of writing formulas.`,
    found,
    expected: '"plain", "unicode", "html" or "latex"',
  })
}
