import {
  classReviewCsv,
  classReviewSheet,
  questionPackage,
  questionSheet,
  reviewSheet,
  type SheetFormat,
} from 'saltwright/report'
import { questionSet, reviewClass, reviewWorksheet } from 'saltwright/review'
import { describe, expect, it } from 'vitest'
import { alum, zincSulfate } from '../preparation/recipes.js'
import { doubleSalt, halfOfIt, oxalate } from '../review/recipes.js'
import { allRight, filledIn, zincPlan } from '../review/worksheets.js'
import { all, readXml } from './xml.js'

const formats = ['text', 'markdown', 'html', 'latex'] as const satisfies readonly SheetFormat[]
const answers = { ...allRight, 'theoretical-yield': '6.457 g', 'mass-of-ZnO': '3,255 g', 'amount-of-H2SO4': '' }
const review = reviewWorksheet(zincPlan, filledIn(answers, 'Bench 1'))
const hostile = '<script>alert(1)</script> & 50 % _x_ $y$ | # \\cmd{z} ^~\u0000\u0007\ufffe'

describe('the review of a worksheet, written', () => {
  it('for a bench has what to look at, and no right answer that was not given', () => {
    const sheet = reviewSheet(review)
    expect(sheet).toContain('Review of the worksheet of Bench 1')
    expect(sheet).toContain('look again')
    expect(sheet).toContain('cannot be read')
    expect(sheet.replaceAll(/\s+/g, ' ')).toContain('does the molar mass of the product include all of it?')
    expect(sheet).not.toContain('11.502 g')
    expect(sheet).not.toContain('product-taken-as-anhydrous')
  })

  it('for a teacher has the right answers and the slips with what they give', () => {
    const sheet = reviewSheet(review, 'text', { readBy: 'teacher' }).replaceAll(/\s+/g, ' ')
    expect(sheet).toContain('11.502 g')
    expect(sheet).toContain('product-taken-as-anhydrous (molar mass of ZnSO4·7H2O without its water) gives 6.4574 g.')
  })

  it('for a teacher has the right answer also where another one follows from before', () => {
    const carried = { 'molar-mass-of-product': '161.44 g/mol', 'theoretical-yield': '6.458 g' }
    const sheet = reviewSheet(reviewWorksheet(zincPlan, filledIn(carried)), 'markdown', { readBy: 'teacher' })
    expect(sheet).toContain('| expected | after earlier answers |')
    expect(sheet).toMatch(/\| 6\.458 g \| 11\.502 g \| 6\.458 g \| follows from before \|/)
    expect(sheet).toMatch(/\| 161\.44 g\/mol \| 287\.54 g\/mol \| +\| look again \|/)
    expect(reviewSheet(review, 'markdown', { readBy: 'teacher' })).not.toContain('after earlier answers')
  })

  it('for a teacher says where a slip misses by one', () => {
    const near = reviewWorksheet(zincPlan, filledIn({ 'theoretical-yield': '6.458 g' }))
    expect(reviewSheet(near, 'markdown', { readBy: 'teacher' })).toContain('one off in the last digit')
    expect(reviewSheet(near)).toContain('Review of a worksheet')
  })

  it('where all is right there is nothing to look at', () => {
    const right = reviewWorksheet(zincPlan, filledIn(allRight))
    expect(reviewSheet(right)).not.toContain('Look at')
    expect(reviewSheet(right, 'text', { readBy: 'teacher' })).not.toContain('What would explain it')
  })

  it('for a bench it can be written from stored JSON', () => {
    expect(reviewSheet(JSON.parse(JSON.stringify(review)))).toBe(reviewSheet(review))
    expect(() => reviewSheet(JSON.parse(JSON.stringify(review)), 'text', { readBy: 'teacher' })).toThrowError(
      expect.objectContaining({ code: 'quantity/not-a-quantity' }),
    )
  })

  it.each(formats)('as %s takes no words for markup', (format) => {
    const sheet = reviewSheet(reviewWorksheet(zincPlan, filledIn({ 'mass-of-ZnO': '<b>& 3$' }, hostile)), format)
    if (format === 'html') expect(sheet).not.toMatch(/<script|<b>/)
    expect(sheet.endsWith('\n')).toBe(true)
  })
})

describe('the review of a class, written', () => {
  const one = reviewClass([{ plan: zincPlan, filled: filledIn({ 'theoretical-yield': '6.457 g' }, 'Bench 1') }])
  const classReview = reviewClass([
    { plan: zincPlan, filled: filledIn(answers, '=Bench "1"') },
    { plan: zincPlan, filled: filledIn({ 'theoretical-yield': '6.457 g', 'molar-mass-of-product': '179.45 g/mol' }) },
    { plan: zincPlan, filled: {} as never },
  ])

  it('starts with the most common slip', () => {
    expect(classReviewSheet(classReview).replaceAll(/\s+/g, ' ')).toContain('Most common, in 2 answers: Worked out the')
    expect(classReviewSheet(one)).toContain('Most common, in one answer')
    expect(classReviewSheet(one)).toContain('1 bench\n')
  })

  it('has benches, questions, slips and what was not read', () => {
    const sheet = classReviewSheet(classReview, 'markdown')
    for (const heading of ['Benches', 'Questions', 'Slips', 'Not read']) expect(sheet).toContain(`## ${heading}`)
    expect(sheet).toContain('Worksheet 3')
  })

  it('of nobody has neither slips nor anything unread', () => {
    const sheet = classReviewSheet(reviewClass([]))
    for (const heading of ['Most common', 'Slips', 'Not read']) expect(sheet).not.toContain(heading)
  })

  it('is a row for each bench and question in a spreadsheet, formulas defused', () => {
    const rows = classReviewCsv(classReview).split('\r\n')
    expect(rows[0]).toBe('bench,question,status,slips')
    expect(rows[1]).toBe('"\'=Bench ""1""",amount-of-ZnO,right,')
    expect(rows).toContain('Bench 2,molar-mass-of-product,wrong,other-hydrate; one-water-only')
    expect(rows).toHaveLength(1 + 8 + 8 + 1)
  })
})

describe('questions, written', () => {
  const set = questionSet(zincSulfate, { seed: 1, variants: 2, scale: { from: '0.0200 mol', to: '0.0600 mol' } })

  it('alone have what is given and no answer', () => {
    const sheet = questionSheet(set)
    const [first] = set.variants
    expect(sheet).toContain('Questions, variant 2')
    expect(sheet).toContain(`chosen amount of ZnSO4·7H2O ${first?.recipe.scale?.amount}`)
    expect(sheet).not.toContain(first?.questions.at(-1)?.answer)
  })

  it.each(formats)('as %s have answers, slips and worked solutions on request', (format) => {
    const sheet = questionSheet(set, format, { answers: 'shown' })
    expect(sheet).toContain(set.variants[0]?.questions.at(-1)?.answer)
    expect(sheet).toContain(format === 'markdown' ? 'other-hydrate' : 'hydrate')
  })

  it('come with the stages where there are several', () => {
    const text = questionSheet(questionSet(halfOfIt, { seed: 1 })).replaceAll(/\s+/g, ' ')
    expect(text).toContain(
      'Neutralise: 2 KOH + H₂SO₄ → K₂SO₄ + 2 H₂O Take 0.5 of the solution on; the rest takes no part from here. This only removes the KOH left from before.',
    )
    expect(questionSheet(questionSet(oxalate, { seed: 1 }))).toContain('take away H₂SO₄ and (NH₄)₂SO₄.')
    expect(questionSheet(questionSet(doubleSalt, { seed: 1 }))).not.toContain('Stages')
    const [, item] = questionPackage(questionSet(oxalate, { seed: 1 }))
    expect(item?.text).toContain('<li>Dissolve:  2 Fe(OH)₃ + 3 K₂C₂O₄ + 3 H₂C₂O₄ → 2 K₃[Fe(C₂O₄)₃] + 6 H₂O</li>')
    const [, alone] = questionPackage(questionSet(doubleSalt, { seed: 1 }))
    expect(alone?.text).not.toContain('Mix')
  })

  it('stand one variant after the other', () => {
    expect(questionSheet(set)).toMatch(/\S\n\nZinc sulfate heptahydrate\nQuestions, variant 2/)
  })

  it('without wrong answers list none', () => {
    const plain = questionSet(zincSulfate, {
      seed: 1,
      distractors: 0,
      questions: ['theoretical-yield', 'limiting-reagent'],
    })
    expect(questionSheet(plain, 'text', { answers: 'shown' })).not.toContain('hydrate-')
    expect(questionSheet(plain, 'html', { answers: 'shown' })).not.toContain('<ul>\n\n</ul>')
  })
})

describe('questions as a QTI package', () => {
  const set = questionSet(alum, { seed: 1, variants: 2, distractors: 3 })
  const packages = (['choice', 'entry'] as const).map((interaction) => ({
    interaction,
    files: questionPackage(set, { interaction }),
  }))

  it.each(packages)('($interaction) has a manifest that lists every item once', ({ files }) => {
    const [manifest, ...items] = files
    expect(manifest?.path).toBe('imsmanifest.xml')
    const root = readXml(manifest!.text)
    expect(root.attributes.xmlns).toBe('http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1')
    expect(all(root, 'schema')[0]?.text).toBe('QTI Package')
    expect(all(root, 'resource').map(({ attributes }) => attributes.href)).toEqual(items.map(({ path }) => path))
    expect(all(root, 'resource').every(({ attributes }) => attributes.type === 'imsqti_item_xmlv3p0')).toBe(true)
    expect(new Set(items.map(({ path }) => path)).size).toBe(items.length)
  })

  it.each(packages)('($interaction) has well-formed items, their parts in the order of the standard', ({ files }) => {
    const order = [
      'qti-response-declaration',
      'qti-outcome-declaration',
      'qti-item-body',
      'qti-response-processing',
      'qti-modal-feedback',
    ]
    for (const { text } of files.slice(1)) {
      const item = readXml(text)
      expect(item.name).toBe('qti-assessment-item')
      expect(item.attributes).toMatchObject({ adaptive: 'false', 'time-dependent': 'false' })
      const places = item.children.map(({ name }) => order.indexOf(name))
      expect(places).toEqual([...places].sort())
      expect(new Set(places).size).toBe(order.length)
    }
  })

  it.each(packages)(
    '($interaction) marks the right answer, and has feedback for each wrong one',
    ({ interaction, files }) => {
      const questions = set.variants.flatMap((variant) => variant.questions)
      files.slice(1).forEach(({ text }, index) => {
        const item = readXml(text)
        const question = questions[index]!
        const isEntry = interaction === 'entry' && question.numeric !== undefined
        const correct = all(item, 'qti-correct-response')[0]?.children[0]?.text
        expect(correct).toBe(isEntry ? question.numeric?.value : 'right')
        expect(all(item, 'qti-response-declaration')[0]?.attributes['base-type']).toBe(isEntry ? 'float' : 'identifier')
        const feedback = all(item, 'qti-modal-feedback').map(({ attributes }) => attributes.identifier)
        expect(feedback).toEqual(['right', ...question.distractors.map((_, slip) => `slip-${slip + 1}`)])
        expect(all(item, 'qti-simple-choice').map((choice) => choice.text)).toEqual(
          isEntry ? [] : [question.answer, ...question.distractors.map((wrong) => wrong.text)],
        )
        expect(all(item, 'qti-text-entry-interaction')).toHaveLength(isEntry ? 1 : 0)
      })
    },
  )

  it('a number that is typed in is right within one in its last digit, and a slip’s number gets its feedback', () => {
    const [, ...items] = questionPackage(questionSet(zincSulfate, { seed: 1, questions: ['theoretical-yield'] }), {
      interaction: 'entry',
    })
    const item = readXml(items[0]!.text)
    const [right, ...wrong] = all(item, 'qti-equal')
    expect(right?.attributes).toEqual({ 'tolerance-mode': 'absolute', tolerance: '1e-3 1e-3' })
    expect(right?.children[0]?.text).toBe('11.502')
    expect(wrong.map(({ children }) => children[0]?.text)).toEqual(['69.01', '12.652', '7.178'])
    expect(all(item, 'qti-response-else-if')).toHaveLength(3)
    expect(all(item, 'qti-set-outcome-value').map(({ children }) => children[0]?.text)).toEqual([
      '1',
      'right',
      'slip-1',
      'slip-2',
      'slip-3',
    ])
    expect(all(item, 'qti-set-outcome-value').map(({ attributes }) => attributes.identifier)).toEqual([
      'SCORE',
      'FEEDBACK',
      'FEEDBACK',
      'FEEDBACK',
      'FEEDBACK',
    ])
  })

  it('takes no words for markup, and leaves out what XML cannot hold', () => {
    const named = { ...zincSulfate, title: `${hostile}\ud800 \t` }
    for (const { text } of questionPackage(questionSet(named, { seed: 1 }))) expect(() => readXml(text)).not.toThrow()
    const [, item] = questionPackage(questionSet(named, { seed: 1 }))
    expect(readXml(item!.text).attributes.title).toContain('<script>alert(1)</script> & 50 %')
    const odd = { ...zincSulfate, title: 'a\tb\nc\rd\u0008e\u001ff\ufffdg\ufffeh\uffffi\ud800j\udfffk' }
    expect(questionPackage(questionSet(odd, { seed: 1 }))[1]!.text).toContain('"a\tb\nc\rd e f\ufffdg h i j k: ')
  })
})

describe('what is no review', () => {
  const others = [
    undefined,
    null,
    5,
    'review',
    {},
    { format: 'saltwright/worksheet-review@1' },
    { format: 'saltwright/class-review@1' },
    { format: 'saltwright/question-set@1' },
  ]
  it.each(others)('%j is not written', (found) => {
    for (const write of [reviewSheet, classReviewSheet, classReviewCsv, questionSheet, questionPackage] as const) {
      expect(() => write(found as never)).toThrowError(expect.objectContaining({ code: 'report/not-a-review' }))
    }
  })

  it('an unknown format is refused', () => {
    expect(() => reviewSheet(review, 'papyrus' as never)).toThrowError(
      expect.objectContaining({ code: 'report/unknown-format' }),
    )
  })
})
