import { describe, expect, it } from 'vitest'
import { type FormulaStyle, formatFormula, parseFormula } from '../../src/formula/index.js'

describe('a formula in four styles', () => {
  it.each([
    ['CuSO4*5H2O', 'CuSO4·5H2O', 'CuSO₄·5H₂O', 'CuSO<sub>4</sub>·5H<sub>2</sub>O', '\\mathrm{CuSO_{4}\\cdot 5H_{2}O}'],
    [
      '(NH4)2 Fe(SO4)2 · 6 H2O',
      '(NH4)2Fe(SO4)2·6H2O',
      '(NH₄)₂Fe(SO₄)₂·6H₂O',
      '(NH<sub>4</sub>)<sub>2</sub>Fe(SO<sub>4</sub>)<sub>2</sub>·6H<sub>2</sub>O',
      '\\mathrm{(NH_{4})_{2}Fe(SO_{4})_{2}\\cdot 6H_{2}O}',
    ],
    ['SO4--', 'SO4^2-', 'SO₄²⁻', 'SO<sub>4</sub><sup>2−</sup>', '\\mathrm{SO_{4}^{2-}}'],
    ['Na+', 'Na^+', 'Na⁺', 'Na<sup>+</sup>', '\\mathrm{Na^{+}}'],
    ['Fe⁰', 'Fe^0', 'Fe⁰', 'Fe<sup>0</sup>', '\\mathrm{Fe^{0}}'],
    ['e⁻', 'e^-', 'e⁻', 'e<sup>−</sup>', '\\mathrm{e^{-}}'],
    ['[Fe(CN)6]4-', '[Fe(CN)6]^4-', '[Fe(CN)₆]⁴⁻', '[Fe(CN)<sub>6</sub>]<sup>4−</sup>', '\\mathrm{[Fe(CN)_{6}]^{4-}}'],
    ['{NaCl}2', '{NaCl}2', '{NaCl}₂', '{NaCl}<sub>2</sub>', '\\mathrm{\\{NaCl\\}_{2}}'],
    [
      'CaSO4·½H2O',
      'CaSO4·1/2H2O',
      'CaSO₄·½H₂O',
      'CaSO<sub>4</sub>·1/2H<sub>2</sub>O',
      '\\mathrm{CaSO_{4}\\cdot \\tfrac{1}{2}H_{2}O}',
    ],
    [
      'CdSO4·8/3H2O',
      'CdSO4·8/3H2O',
      'CdSO₄·8/3H₂O',
      'CdSO<sub>4</sub>·8/3H<sub>2</sub>O',
      '\\mathrm{CdSO_{4}\\cdot \\tfrac{8}{3}H_{2}O}',
    ],
    [
      'CaSO4·1½H2O',
      'CaSO4·3/2H2O',
      'CaSO₄·3/2H₂O',
      'CaSO<sub>4</sub>·3/2H<sub>2</sub>O',
      '\\mathrm{CaSO_{4}\\cdot \\tfrac{3}{2}H_{2}O}',
    ],
    [
      'Fe2O3·xH2O',
      'Fe2O3·xH2O',
      'Fe₂O₃·xH₂O',
      'Fe<sub>2</sub>O<sub>3</sub>·<i>x</i>H<sub>2</sub>O',
      '\\mathrm{Fe_{2}O_{3}\\cdot \\mathit{x}H_{2}O}',
    ],
    ['Fe0.947O', 'Fe0.947O', 'Fe₀.₉₄₇O', 'Fe<sub>0.947</sub>O', '\\mathrm{Fe_{0.947}O}'],
    ['Cr₄.₅H₂O', 'Cr9/2H2O', 'Cr₄.₅H₂O', 'Cr<sub>4.5</sub>H<sub>2</sub>O', '\\mathrm{Cr_{4.5}H_{2}O}'],
    ['Mg1/3O', 'Mg1/3O', 'Mg₁⁄₃O', 'Mg<sub>1/3</sub>O', '\\mathrm{Mg_{1/3}O}'],
    ['Fe1½O', 'Fe3/2O', 'Fe₃⁄₂O', 'Fe<sub>3/2</sub>O', '\\mathrm{Fe_{3/2}O}'],
    [
      '3CdSO4·8H2O',
      '3CdSO4·8H2O',
      '3CdSO₄·8H₂O',
      '3CdSO<sub>4</sub>·8H<sub>2</sub>O',
      '\\mathrm{3CdSO_{4}\\cdot 8H_{2}O}',
    ],
  ])('%s is %s, %s, %s, %s', (text, plain, unicode, html, latex) => {
    const styles: readonly FormulaStyle[] = ['plain', 'unicode', 'html', 'latex']
    expect(styles.map((style) => formatFormula(text, style))).toEqual([plain, unicode, html, latex])
  })

  it.each([
    ['1/2', '½'],
    ['1/3', '⅓'],
    ['2/3', '⅔'],
    ['1/4', '¼'],
    ['3/4', '¾'],
    ['1/5', '1/5'],
  ])('%s of a part is %s in unicode', (written, shown) => {
    expect(formatFormula(`CaSO4·${written}H2O`, 'unicode')).toBe(`CaSO₄·${shown}H₂O`)
  })

  it.each([
    ['Fe.95O', 'Fe0.95O'],
    ['Cr₄.₅H₂O·0.5H₂O', 'Cr9/2H2O·0.5H2O'],
  ])('%s is plainly %s', (text, plain) => expect(formatFormula(text, 'plain')).toBe(plain))

  it('takes a formula as well as its text, and leaves the state out', () => {
    expect(formatFormula(parseFormula('ZnSO4(aq)'), 'plain')).toBe('ZnSO4')
  })

  it.each([['bold'], ['__proto__'], ['toString'], [undefined], [5]])('refuses the style %s', (style) => {
    expect(() => formatFormula('NaCl', style as FormulaStyle)).toThrow(
      expect.objectContaining({ code: 'formula/unknown-style', expected: '"plain", "unicode", "html" or "latex"' }),
    )
  })
})
