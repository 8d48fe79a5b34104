import { describe, expect, it } from 'vitest'
import { balance, checkBalance, lowestTerms, parseEquation } from '../../src/equation/index.js'
import { formatFraction } from '../../src/fraction.js'
import { elementaryCorpora, equationCorpora } from './corpus.js'
import { refusal } from './refusal.js'

describe.each(equationCorpora)('$source', ({ equations }) => {
  it.each(equations)('%s is balanced, and balancing finds the same numbers', (text) => {
    expect(checkBalance(text).balanced).toBe(true)
    expect(balance(text).text).toBe(lowestTerms(text).text)
  })

  it.each(equations)('%s with one number changed is not', (text) => {
    const { left, right } = parseEquation(text)
    const position = left[0]?.position ?? { start: 0, end: 0 }
    const more = `${text.slice(0, position.start)}${right[0]?.formula} + ${text.slice(position.start)}`
    expect(checkBalance(more).balanced).toBe(false)
  })
})

describe.each(elementaryCorpora)('$source', ({ equations }) => {
  it.each(equations)('%s is balanced', (text) => expect(checkBalance(text).balanced).toBe(true))
})

describe('what the sources print wrongly, or not as an equation', () => {
  it('the thiosulfate complex of silver with 3+ for 3- (OpenStax, Chemistry 2e, Appendix L)', () => {
    const { charge, elements } = checkBalance('[Ag(S2O3)2]^{3+}+e^{-} -> Ag+2 S2O3^{2-}')
    expect([charge.left, charge.right].map(formatFraction)).toEqual(['2', '-4'])
    expect(elements.every(({ difference }) => difference.numerator === 0n)).toBe(true)
  })

  it.each([
    ['Zr^{4}+4 e^{-} -> Zr', 'formula/bad-charge'], // OpenStax, Chemistry 2e, Appendix L
    ['[Zn(OH)4]^{2}+2 e^{-} -> Zn+4 OH^{-}', 'formula/bad-charge'], // the same
    ['H + C2H2 (+M) <=> C2H3 (+M)', 'equation/not-a-substance'], // GRI-Mech 3.0
    ['HCO + M <=> H + CO + M', 'equation/not-a-substance'],
    ['CH2(S) + AR <=> CH2 + AR', 'formula/unknown-symbol'],
    ['ClO+MO2=CH2O+ClOO+HO2', 'formula/placeholder'], // a public mechanism of the atmosphere; MO2 is a short name
    ['Cu+2 + Acetate- = Cu(Acetate)+', 'formula/unknown-symbol'], // a public database of natural waters
    ['NiO +2.0000 H+  =  + 1.0000 H2O + 1.0000 Ni++', 'equation/empty-term'], // thermo.com.V8.R6
  ])('%s: %s', (text, code) => expect(refusal(() => parseEquation(text)).code).toBe(code))
})
