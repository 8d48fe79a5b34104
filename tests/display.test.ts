import { inspect } from 'node:util'
import { parseEquation } from 'saltwright/equation'
import { parseFormula } from 'saltwright/formula'
import { assessPreparation, planClass, planPreparation, type Recipe } from 'saltwright/preparation'
import { exact, quantity } from 'saltwright/quantity'
import { reviewAnswer } from 'saltwright/review'
import { massFromAmount } from 'saltwright/stoichiometry'
import { describe, expect, it } from 'vitest'
import { showing, withSummary } from '../src/display.js'

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

describe('a summary', () => {
  const invented = withSummary(
    { grams: 5 },
    ({ grams }) =>
      ({
        title: `Zinc & 'oxide' "<${grams} g>"`,
        rows: [
          ['a', '1'],
          ['longer', '<2>'],
        ],
        notes: ['First & last.', 'Second.'],
      }) as const,
  )

  it('in a console is a heading, rows with their values below each other, and notes', () => {
    const text = ['Zinc & \'oxide\' "<5 g>"', '  a       1', '  longer  <2>', '- First & last.', '- Second.'].join('\n')
    expect(forms(invented)['text/plain']).toBe(text)
    expect(inspect(invented)).toBe(text)
  })

  it('in a page is a heading, a table and a list, all words escaped', () => {
    expect(forms(invented)['text/html']).toBe(
      [
        '<p><strong>Zinc &#38; &#39;oxide&#39; &#34;&#60;5 g&#62;&#34;</strong></p>',
        '<table><tr><th align="left">a</th><td>1</td></tr>',
        '<tr><th align="left">longer</th><td>&#60;2&#62;</td></tr></table>',
        '<ul><li>First &#38; last.</li><li>Second.</li></ul>',
      ].join(''),
    )
  })

  it('without rows and notes is its heading', () => {
    const bare = withSummary({}, () => ({ title: 'Nothing', rows: [], notes: [] }))
    expect(forms(bare)).toEqual({
      'text/plain': 'Nothing',
      'text/html': '<p><strong>Nothing</strong></p><table></table>',
    })
  })

  it('is worked out when it is shown, and no part of the data', () => {
    const data = { grams: 1 }
    expect(withSummary(data, ({ grams }) => ({ title: `${grams} g`, rows: [], notes: [] }))).toBe(data)
    data.grams = 2
    expect(inspect(data)).toBe('2 g')
    expect(JSON.stringify(data)).toBe('{"grams":2}')
    expect({ ...data }).toStrictEqual({ grams: 2 })
    expect(inspect({ ...data })).toBe('{ grams: 2 }')
  })
})

it('a class is given its forms, and gives them for each of its values', () => {
  class Mass {
    readonly grams: number
    constructor(grams: number) {
      this.grams = grams
    }
    toString() {
      return `${this.grams} g`
    }
  }
  expect(showing(Mass, (mass) => ({ 'text/plain': `${mass}`, 'text/html': `<b>${mass}</b>` }))).toBe(Mass)
  expect(forms(new Mass(5))).toEqual({ 'text/plain': '5 g', 'text/html': '<b>5 g</b>' })
  expect(inspect([new Mass(5), new Mass(6)])).toBe('[ 5 g, 6 g ]')
  expect(Object.keys(Mass.prototype)).toEqual([])
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
