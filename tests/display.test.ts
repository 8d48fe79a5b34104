import { inspect } from 'node:util'
import { parseEquation } from 'saltwright/equation'
import { parseFormula } from 'saltwright/formula'
import { assessPreparation, planClass, planPreparation, type Recipe } from 'saltwright/preparation'
import { exact, quantity } from 'saltwright/quantity'
import { reviewAnswer } from 'saltwright/review'
import { massFromAmount } from 'saltwright/stoichiometry'
import { describe, expect, it } from 'vitest'

type Shown = Readonly<Record<string, () => Readonly<Record<string, string>>>>

/** What a kernel gets when it asks a value how it is shown. */
function forms(value: object): Readonly<Record<string, string>> {
  const ask = (value as Shown)[Symbol.for('Jupyter.display') as unknown as string]
  return ask?.call(value) ?? {}
}

/** A title with signs that mean something in HTML; everything is invented. */
const recipe: Recipe = {
  format: 'saltwright/recipe@1',
  title: 'Zinc sulfate <heptahydrate>',
  product: 'ZnSO4·7H2O',
  scale: { of: 'ZnSO4·7H2O', amount: '0.0400 mol' },
  stages: [{ name: 'Dissolve and crystallise', equation: 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O' }],
  supplies: [
    { form: 'solid', substance: 'ZnO', name: 'zinc oxide' },
    { form: 'solution', substance: 'H2SO4', name: 'dilute acid', concentration: '3.00 mol/L', excessFactor: '0.90' },
  ],
}
const plan = planPreparation(recipe)
const assessment = assessPreparation(recipe, {
  format: 'saltwright/records@1',
  bench: 'Bench 1',
  product: { mass: '12.412 g' },
})
const classPlan = planClass(recipe, [
  { name: 'Bench 1', scale: { amount: '0.0400 mol' } },
  { name: 'Bench 2', scale: { amount: '0.0250 mol' } },
])
const expected = massFromAmount(exact('0.0400 mol'), 'ZnSO4·7H2O')
const review = reviewAnswer(expected, '6.458 g')

describe('a notebook shows', () => {
  it.each([
    ['7.428 g', quantity('7.428 g'), '7.428&nbsp;g', '$7.428\\;\\mathrm{g}$'],
    ['3.0e-7 mol/L', quantity('3.0e-7 mol/L'), '3.0e-7&nbsp;mol/L', '$3.0 \\times 10^{-7}\\;\\mathrm{mol/L}$'],
    ['96 %', quantity('96 %'), '96&nbsp;%', '$96\\;\\mathrm{\\%}$'],
    ['5 °C', exact('5 degC'), '5&nbsp;°C', '$5\\;\\mathrm{^\\circ C}$'],
    ['1.20', quantity('1.20'), '1.20', '$1.20$'],
  ])('a quantity: %s', (plain, value, html, latex) => {
    expect(forms(value)).toEqual({ 'text/plain': plain, 'text/html': html, 'text/latex': latex })
  })

  it('a formula', () => {
    expect(forms(parseFormula('SO4^2-'))).toEqual({
      'text/plain': 'SO₄²⁻',
      'text/html': 'SO<sub>4</sub><sup>2−</sup>',
      'text/latex': '$\\mathrm{SO_{4}^{2-}}$',
    })
  })

  it('an equation', () => {
    const shown = forms(parseEquation('ZnO + 2 H^+ -> Zn^2+ + H2O'))
    expect(shown['text/plain']).toBe('ZnO + 2 H⁺ → Zn²⁺ + H₂O')
    expect(shown['text/html']).toContain('Zn<sup>2+</sup>')
    expect(shown['text/latex']).toMatch(/^\$.*\\.*\$$/)
  })

  it('a plan, with its findings and all its cautions', () => {
    const { 'text/html': html = '', 'text/plain': text = '' } = forms(plan)
    expect(html).toContain('<th align="left">zinc oxide</th><td>3.255 g</td>')
    expect(html).toContain('Problem: There is less H2SO4')
    for (const { message } of plan.cautions) expect(text).toContain(message)
  })

  it('no words of a recipe as HTML', () => {
    for (const document of [plan, classPlan, assessment]) {
      expect(forms(document)['text/html']).toContain('Zinc sulfate &#60;heptahydrate&#62;')
      expect(forms(document)['text/html']).not.toContain('<heptahydrate>')
    }
  })

  it('the plan of a class: what each bench may get, what to prepare, every caution once', () => {
    const text = forms(classPlan)['text/plain'] ?? ''
    expect(text).toContain('Bench 2')
    expect(text).toContain('zinc oxide to prepare')
    expect(text.split('Local rules')).toHaveLength(2)
  })

  it('an assessment: what was used, the yield as found, what may explain it', () => {
    const text = forms(assessment)['text/plain'] ?? ''
    expect(text.split('\n')[0]).toBe('Zinc sulfate <heptahydrate>: assessment of Bench 1')
    expect(text).toContain('dilute acid        12.00 mL')
    expect(text).toContain(assessment.percentYield.toString())
    for (const { message } of assessment.explanations) expect(text).toContain(message)
  })

  it('an assessment of nobody', () => {
    const unnamed = assessPreparation(recipe, { format: 'saltwright/records@1', product: { mass: '7.412 g' } })
    expect(forms(unnamed)['text/plain']).toMatch(/^Zinc sulfate <heptahydrate>: assessment\n/)
  })

  it('a review without the right answer', () => {
    const text = forms(review)['text/plain'] ?? ''
    expect(text).toContain('Review of 6.458 g: slip')
    expect(text).toContain(review.candidates[0]?.reason)
    expect(text).not.toContain('11.5')
  })

  it('advice alone where a review has no candidates', () => {
    const agreed = reviewAnswer(expected, '11.502 g')
    expect(forms(agreed)['text/plain']).toBe(`Review of 11.502 g: agrees\n- ${agreed.advice}`)
    expect(forms(agreed)['text/html']).toContain('<table></table>')
  })
})

describe('a console prints', () => {
  it.each([
    [quantity('7.428 g'), '7.428 g'],
    [parseFormula('ZnSO4·7H2O'), 'ZnSO4·7H2O'],
    [parseEquation('ZnO + 2 H^+ -> Zn^2+ + H2O'), 'ZnO + 2 H^+ -> Zn^2+ + H2O'],
    [[quantity('7.428 g')], '[ 7.428 g ]'],
  ])('%o as %s', (value, printed) => expect(inspect(value)).toBe(printed))

  it.each([
    ['a plan', plan],
    ['the plan of a class', classPlan],
    ['an assessment', assessment],
    ['a review', review],
  ])('%s as its summary', (_, value) => expect(inspect(value)).toBe(forms(value)['text/plain']))
})

describe('showing itself', () => {
  it('is no part of the data: JSON, keys and comparisons do not see it', () => {
    expect(Object.keys(plan)).not.toContain('Symbol(Jupyter.display)')
    expect(planPreparation(recipe)).toEqual(plan)
    expect({ ...plan }).toEqual(plan)
    expect(forms({ ...plan })).toEqual({})
  })

  it('leaves what is shown frozen', () => {
    for (const value of [plan, classPlan, assessment, review]) expect(Object.isFrozen(value)).toBe(true)
  })
})

it('an assessment with nothing to look at has no list of remarks', () => {
  const clean = assessPreparation(
    {
      ...recipe,
      supplies: [
        { form: 'solid', substance: 'ZnO' },
        { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
      ],
    },
    {
      format: 'saltwright/records@1',
      supplies: [{ substance: 'ZnO', mass: '3.255 g' }],
      product: { mass: '9.113 g' },
    },
  )
  expect(forms(clean)['text/html']).not.toContain('<ul>')
})
