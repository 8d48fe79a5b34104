import { atomicWeightSet } from 'saltwright/element'
import { assessPreparation, planPreparation } from 'saltwright/preparation'
import {
  type AnswerReview,
  type FilledWorksheet,
  filledWorksheetJsonSchema,
  filledWorksheetSchema,
  reviewWorksheet,
  type Worksheet,
  worksheetOf,
} from 'saltwright/review'
import { describe, expect, it } from 'vitest'
import { doubleSaltAsPrinted, zincSulfate } from '../preparation/recipes.js'
import { allRight, alumPlan, filledIn, zincAssessment, zincPlan } from './worksheets.js'

const reviewed = (answers: Readonly<Record<string, string>>) => reviewWorksheet(zincPlan, filledIn(answers)).answers
const statuses = (answers: readonly AnswerReview[]) =>
  Object.fromEntries(
    answers.filter(({ status }) => status !== 'missing').map(({ question, status }) => [question, status]),
  )
const answerTo = (answers: readonly AnswerReview[], question: string): AnswerReview =>
  answers.find((answer) => answer.question === question)!

describe('the questions of a worksheet', () => {
  it('follow from the plan, in the order of the work', () => {
    expect(worksheetOf(zincPlan).questions.map(({ id }) => id)).toEqual(Object.keys(allRight))
  })

  it('ask for the crop and the yield where there is an assessment', () => {
    const { questions } = worksheetOf(zincPlan, { assessment: zincAssessment })
    expect(questions.slice(-2).map(({ id }) => id)).toEqual(['product-mass', 'percent-yield'])
  })

  it('number what goes in twice, and ask for no limit where there is one supply', () => {
    const [oxide, acid] = zincPlan.supplies
    const thrice = worksheetOf({ ...zincPlan, supplies: [acid!, oxide!, acid!, acid!] })
    expect(thrice.questions.map(({ id }) => id).slice(0, 9)).toEqual([
      'amount-of-H2SO4',
      'volume-of-H2SO4',
      'amount-of-ZnO',
      'mass-of-ZnO',
      'amount-of-H2SO4-2',
      'volume-of-H2SO4-2',
      'amount-of-H2SO4-3',
      'volume-of-H2SO4-3',
      'limiting-reagent',
    ])
    const twice = planPreparation({
      ...zincSulfate,
      supplies: [
        { form: 'solid', substance: 'ZnO' },
        { form: 'solution', substance: 'H2SO4', concentration: '3 mol/L', stage: 'dissolve' },
      ],
    })
    expect(worksheetOf(twice).questions.map(({ id }) => id)).toContain('limiting-reagent')
    const alone = planPreparation({
      ...zincSulfate,
      supplies: [
        { form: 'solid', substance: 'ZnO' },
        { form: 'unlimited', substance: 'H2SO4' },
      ],
    })
    expect(worksheetOf(alone).questions.map(({ id }) => id)).not.toContain('limiting-reagent')
  })

  it('say what is asked, and what can be chosen', () => {
    const { questions, title } = worksheetOf(zincPlan)
    expect(title).toBe('Zinc sulfate heptahydrate')
    expect(questions[1]).toMatchObject({
      kind: 'quantity',
      asks: 'What mass of zinc oxide is weighed?',
      readableTo: -3,
    })
    expect(questions[4]).toMatchObject({
      kind: 'choice',
      choices: [
        { formula: 'ZnO', name: 'zinc oxide' },
        { formula: 'H2SO4', name: 'sulfuric acid' },
      ],
      right: ['ZnO'],
    })
  })
})

describe('a worksheet', () => {
  it('all right is all right', () => {
    expect(new Set(reviewed(allRight).map(({ status }) => status))).toEqual(new Set(['right']))
  })

  it('says whose it is and what was asked', () => {
    const review = reviewWorksheet(zincPlan, filledIn({}, 'Bench 2'))
    expect(review).toMatchObject({
      format: 'saltwright/worksheet-review@1',
      bench: 'Bench 2',
      title: zincSulfate.title,
    })
    expect(review.answers.every(({ status }) => status === 'missing')).toBe(true)
  })

  it('is reviewed by its plan or by the questions made from it', () => {
    const worksheet = worksheetOf(zincPlan)
    expect(reviewWorksheet(worksheet, filledIn(allRight)).answers).toHaveLength(8)
  })

  it.each([
    { question: 'mass-of-ZnO', stated: '3.2552 g', status: 'rounding' },
    { question: 'mass-of-ZnO', stated: '3.255', status: 'unit' },
    { question: 'mass-of-ZnO', stated: '3.3 g', status: 'rounding' },
    { question: 'mass-of-ZnO', stated: '5.1 g', status: 'wrong' },
    { question: 'mass-of-ZnO', stated: ' ', status: 'missing' },
    { question: 'mass-of-ZnO', stated: 'three', status: 'unreadable' },
    { question: 'volume-of-H2SO4', stated: '14.7 mL', status: 'right' },
    { question: 'limiting-reagent', stated: 'Zinc Oxide', status: 'right' },
    { question: 'limiting-reagent', stated: 'OZn', status: 'right' },
    { question: 'limiting-reagent', stated: 'ZnO', status: 'right' },
    { question: 'limiting-reagent', stated: 'zno', status: 'right' },
    { question: 'limiting-reagent', stated: 'H2O4S', status: 'wrong' },
    { question: 'limiting-reagent', stated: 'the zinc oxide', status: 'right' },
    { question: 'limiting-reagent', stated: 'The ZnO', status: 'right' },
    { question: 'limiting-reagent', stated: 'the OZn', status: 'right' },
    { question: 'limiting-reagent', stated: 'the sulfuric acid', status: 'wrong' },
    { question: 'limiting-reagent', stated: 'ZnSO4', status: 'wrong' },
    { question: 'limiting-reagent', stated: 'the acid', status: 'unreadable' },
    { question: 'limiting-reagent', stated: 'zinc', status: 'unreadable' },
    { question: 'molar-mass-of-product', stated: '161.44 g/mol', status: 'wrong' },
    { question: 'theoretical-yield', stated: '6.458 g', status: 'wrong' },
  ])('$stated for $question is $status', ({ question, stated, status }) => {
    expect(answerTo(reviewed({ [question]: stated }), question).status).toBe(status)
  })

  it('each answer tells what was asked, what was written and what to look at', () => {
    const answers = reviewed({ 'mass-of-ZnO': ' 3.3 g ', 'amount-of-ZnO': 'three', 'limiting-reagent': 'H2SO4' })
    const rounded = answerTo(answers, 'mass-of-ZnO')
    expect(rounded).toMatchObject({ asks: 'What mass of zinc oxide is weighed?', stated: '3.3 g', follows: [] })
    expect(rounded.error).toBeUndefined()
    expect(rounded.advice).toBe(rounded.review?.advice)
    const unread = answerTo(answers, 'amount-of-ZnO')
    expect(unread).toMatchObject({ asks: 'What amount of ZnO is taken?', stated: 'three', follows: [] })
    expect([unread.review, unread.error?.code]).toEqual([undefined, 'review/unreadable-answer'])
    expect(answerTo(answers, 'theoretical-yield')).toMatchObject({ stated: undefined, error: undefined, follows: [] })
    const choice = answerTo(answers, 'limiting-reagent')
    expect(choice).toMatchObject({ stated: 'H2SO4', follows: [], review: undefined, error: undefined })
    const advices = [unread, choice, answerTo(answers, 'theoretical-yield')].map(({ advice }) => advice)
    expect(new Set(advices).size).toBe(3)
    for (const advice of advices) expect(advice).toMatch(/^[A-Z].*[.?]$/)
    expect(answerTo(reviewed({ 'limiting-reagent': 'ZnO' }), 'limiting-reagent').advice).toBe('This agrees.')
  })

  it('words that are the name of no supply are not faulted: it is said what the names are', () => {
    const answer = answerTo(reviewed({ 'limiting-reagent': 'oxide of zinc' }), 'limiting-reagent')
    expect(answer.error).toMatchObject({
      code: 'review/unreadable-answer',
      found: '"oxide of zinc"',
      expected: 'zinc oxide (ZnO), sulfuric acid (H2SO4)',
    })
    expect(answer.advice).toBe('Write the formula of one of the supplies, or its name as it stands on the sheet.')
    const nameless = planPreparation({
      ...zincSulfate,
      supplies: zincSulfate.supplies.map((supply) => ({ ...supply, name: undefined })) as never,
    })
    const [nothing] = reviewWorksheet(nameless, filledIn({ 'limiting-reagent': 'zinc oxide' })).answers.flatMap(
      ({ error }) => (error === undefined ? [] : [error.expected]),
    )
    expect(nothing).toBe('ZnO, H2SO4')
  })

  it('a supply is known by each of its names, and by the hydrate that is weighed', () => {
    const plan = planPreparation(doubleSaltAsPrinted)
    const [iron, ammonium] = plan.supplies
    const twice = worksheetOf({
      ...plan,
      supplies: [{ ...iron!, name: 'green vitriol' }, ammonium!, { ...iron!, name: 'iron(II) sulfate' }],
    })
    const choice = twice.questions.find((question) => question.kind === 'choice')
    expect(choice?.choices).toEqual([
      { formula: 'FeSO4', name: 'iron(II) sulfate', others: ['green vitriol', 'FeSO4·7H2O'] },
      { formula: '(NH4)2SO4', name: '(NH4)2SO4' },
    ])
    const status = (stated: string) =>
      reviewWorksheet(twice, filledIn({ 'limiting-reagent': stated })).answers.find(
        ({ question }) => question === 'limiting-reagent',
      )?.status
    for (const name of ['Green vitriol', 'the iron(II) sulfate', 'FeSO4.7H2O', 'FeSO4'])
      expect(status(name)).toBe('right') // 0.0500 mol, the other 0.0530 mol
    expect(status('(NH4)2SO4')).toBe('wrong')
    expect(status('FeSO4·6H2O')).toBe('wrong')
  })

  it('a mass as fine as the balance shows it is never too short', () => {
    const small = planPreparation({ ...zincSulfate, scale: { of: 'ZnSO4·7H2O', amount: '0.000900 mol' } })
    const { answers } = reviewWorksheet(small, filledIn({ 'mass-of-ZnO': '0.073 g', 'theoretical-yield': '0.26 g' }))
    expect(statuses(answers)).toEqual({ 'mass-of-ZnO': 'right', 'theoretical-yield': 'rounding' })
  })

  it('an answer that cannot be read tells why and stops nothing', () => {
    const answers = reviewed({ ...allRight, 'mass-of-ZnO': '3,255 g' })
    expect(answerTo(answers, 'mass-of-ZnO').error).toMatchObject({ code: 'review/unreadable-answer', hint: '3.255 g' })
    expect(answerTo(answers, 'theoretical-yield').status).toBe('right')
  })

  it('with what was recorded: the crop, the tare left in, the yield that follows', () => {
    const { answers } = reviewWorksheet(
      zincPlan,
      filledIn({ 'product-mass': '20.317 g', 'percent-yield': '176.7 %' }),
      { assessment: zincAssessment },
    )
    expect(statuses(answers)).toEqual({ 'product-mass': 'wrong', 'percent-yield': 'carried forward' })
    expect(answerTo(answers, 'product-mass').review?.candidates[0]?.slips).toEqual(['tare-left-in'])
    expect(answerTo(answers, 'percent-yield')).toMatchObject({
      follows: ['product-mass'],
      advice: 'This follows from your earlier answer: look at that one.',
    })
  })
})

describe('where the bench took another amount than was planned', () => {
  const assessment = assessPreparation(zincPlan, {
    format: 'saltwright/records@1',
    supplies: [
      { substance: 'ZnO', gross: '5.500 g', tare: '2.100 g' }, // 3.400 g, at 81.379 g/mol 0.041780 mol
      { substance: 'H2SO4', volume: '15.0 mL' }, // at 3.00 mol/L 0.0450 mol
    ],
    product: { tare: '11.204 g', gross: '20.317 g' },
  })
  const found = (answers: Readonly<Record<string, string>>) =>
    reviewWorksheet(zincPlan, filledIn(answers), { assessment }).answers

  it.each([
    { id: 'amount-of-ZnO', stated: '0.0400 mol', status: 'right' },
    { id: 'amount-of-ZnO', stated: '0.04178 mol', status: 'right' },
    { id: 'amount-of-ZnO', stated: '0.0410 mol', status: 'wrong' },
    { id: 'mass-of-ZnO', stated: '3.255 g', status: 'right' },
    { id: 'mass-of-ZnO', stated: '3.400 g', status: 'right' },
    { id: 'mass-of-ZnO', stated: '3.4 g', status: 'rounding' },
    { id: 'mass-of-ZnO', stated: '3.400', status: 'unit' },
    { id: 'volume-of-H2SO4', stated: '14.7 mL', status: 'right' },
    { id: 'volume-of-H2SO4', stated: '15.0 mL', status: 'right' },
    { id: 'theoretical-amount', stated: '0.04178 mol', status: 'right' },
    { id: 'theoretical-amount', stated: '0.0400 mol', status: 'wrong' },
    { id: 'theoretical-yield', stated: '12.01 g', status: 'right' }, // 0.041780 mol at 287.541 g/mol
    { id: 'theoretical-yield', stated: '11.50 g', status: 'wrong' },
    { id: 'percent-yield', stated: '75.86 %', status: 'right' }, // 9.113 g of 12.0133 g
  ])('$stated for $id is $status', ({ id, stated, status }) => {
    expect(statuses(found({ [id]: stated }))).toEqual({ [id]: status })
  })

  it('what is right is told as it was meant', () => {
    const rightFor = (stated: string) => answerTo(found({ 'mass-of-ZnO': stated }), 'mass-of-ZnO').right?.toString()
    expect([rightFor('3.255 g'), rightFor('3.4 g'), rightFor('9 g')]).toEqual(['3.255 g', '3.400 g', '3.255 g'])
  })

  it('a slip in either is found', () => {
    const slipsFor = (stated: string) =>
      answerTo(found({ 'mass-of-ZnO': stated }), 'mass-of-ZnO').review?.candidates[0]?.slips
    expect(slipsFor('5.500 g')).toEqual(['tare-left-in'])
    expect(slipsFor('0.04000 g')).toEqual(['moles-as-grams'])
    expect(slipsFor('9.99 g')).toBeUndefined()
  })

  it('a wrong amount is carried forward to what there can be', () => {
    const answers = found({
      'amount-of-ZnO': '0.0500 mol',
      'theoretical-amount': '0.0500 mol',
      'mass-of-ZnO': '4.069 g',
    })
    expect(statuses(answers)).toEqual({
      'amount-of-ZnO': 'wrong',
      'mass-of-ZnO': 'carried forward',
      'theoretical-amount': 'carried forward',
    })
  })

  it('the planned amount is not: what there can be goes by what was taken', () => {
    const answers = found({ 'amount-of-ZnO': '0.0400 mol', 'theoretical-amount': '0.0400 mol' })
    expect(statuses(answers)).toEqual({ 'amount-of-ZnO': 'right', 'theoretical-amount': 'wrong' })
  })

  it('what was not recorded, or by mass instead of volume, or for another plan, is right as planned', () => {
    const recordedIn = (worksheet: Worksheet) =>
      worksheet.questions.flatMap((question) =>
        question.kind === 'quantity' && question.recorded !== undefined ? [question.id] : [],
      )
    expect(recordedIn(worksheetOf(zincPlan))).toEqual([])
    expect(recordedIn(worksheetOf(zincPlan, { assessment: zincAssessment }))).toEqual(['amount-of-ZnO', 'mass-of-ZnO'])
    expect(recordedIn(worksheetOf(alumPlan, { assessment }))).toEqual([])
    const liquid = planPreparation({
      ...zincSulfate,
      supplies: [
        { form: 'solid', substance: 'ZnO' },
        { form: 'liquid', substance: 'H2SO4', assay: '96 %', density: '1.84 g/mL' },
      ],
    })
    const weighed = assessPreparation(liquid, {
      format: 'saltwright/records@1',
      supplies: [{ substance: 'H2SO4', mass: '4.20 g' }],
      product: { tare: '11.204 g', gross: '20.317 g' },
    })
    expect(recordedIn(worksheetOf(liquid, { assessment: weighed }))).toEqual(['amount-of-H2SO4'])
  })
})

describe('what follows from an earlier wrong answer', () => {
  it('is not faulted: only the first is', () => {
    const answers = reviewed({
      'amount-of-ZnO': '0.0500 mol',
      'mass-of-ZnO': '4.069 g',
      'theoretical-amount': '0.0500 mol',
      'theoretical-yield': '14.38 g',
    })
    expect(statuses(answers)).toEqual({
      'amount-of-ZnO': 'wrong',
      'mass-of-ZnO': 'carried forward',
      'theoretical-amount': 'carried forward',
      'theoretical-yield': 'carried forward',
    })
    expect(answerTo(answers, 'theoretical-yield').follows).toEqual(['amount-of-ZnO'])
    const { right, review } = answerTo(answers, 'theoretical-yield')
    expect([right?.toString(), review?.expected.toString()]).toEqual(['11.502 g', '14.377 g'])
  })

  it('the right answer is told by the atomic weights of the course, and of numbers only', () => {
    const weights = atomicWeightSet({ name: 'wall chart', values: { Zn: '65.39', S: '32.066' }, extends: 'abridged' })
    const filled = filledIn({ 'theoretical-yield': '7 g', 'limiting-reagent': 'ZnO', 'mass-of-ZnO': 'some' })
    const { answers } = reviewWorksheet(zincPlan, filled, { weights })
    expect(answers.filter(({ right }) => right !== undefined).map(({ question }) => question)).toEqual([
      'theoretical-yield',
    ])
    expect(answerTo(answers, 'theoretical-yield').right?.value.toNumber()).toBeCloseTo(11.50228, 5) // 287.557 g/mol
  })

  it('counts where it was reckoned on with the digits that were not written', () => {
    const [rounded, exactly] = ['0.0880 mol', '29.333 mL'] // twice the excess, carried unrounded
    const answers = reviewed({ 'amount-of-H2SO4': rounded, 'volume-of-H2SO4': exactly })
    expect(statuses(answers)).toEqual({ 'amount-of-H2SO4': 'wrong', 'volume-of-H2SO4': 'carried forward' })
    const molar = reviewed({ 'molar-mass-of-product': '161 g/mol', 'theoretical-yield': '6.4574 g' })
    expect(statuses(molar)).toEqual({ 'molar-mass-of-product': 'wrong', 'theoretical-yield': 'carried forward' })
  })

  it('a number without its unit is carried on, too', () => {
    const answers = reviewed({ 'molar-mass-of-product': '161.44', 'theoretical-yield': '6.458 g' })
    expect(statuses(answers)).toEqual({ 'molar-mass-of-product': 'wrong', 'theoretical-yield': 'carried forward' })
  })

  it('one of another kind is not', () => {
    const answers = reviewed({ 'molar-mass-of-product': '161.44 g', 'theoretical-yield': '6.458 g' })
    expect(statuses(answers)).toEqual({ 'molar-mass-of-product': 'wrong', 'theoretical-yield': 'wrong' })
  })

  it('another slip on top is faulted for itself', () => {
    const answers = reviewed({ 'amount-of-ZnO': '0.0500 mol', 'theoretical-yield': '8.072 g' })
    expect(statuses(answers)).toEqual({ 'amount-of-ZnO': 'wrong', 'theoretical-yield': 'wrong' })
    const yieldReview = answerTo(answers, 'theoretical-yield')
    expect(yieldReview.follows).toEqual(['amount-of-ZnO'])
    expect(yieldReview.review?.candidates[0]?.slips).toEqual(['product-taken-as-anhydrous'])
    expect(yieldReview.advice).toBe(yieldReview.review?.advice)
  })

  it('a number that nothing explains is held against the plan', () => {
    const answers = reviewed({ 'amount-of-ZnO': '0.0500 mol', 'theoretical-yield': '9.99 g' })
    expect(answerTo(answers, 'theoretical-yield')).toMatchObject({ status: 'wrong', follows: [] })
  })

  it('a right number after a wrong one is right', () => {
    expect(statuses(reviewed({ 'amount-of-ZnO': '0.0500 mol', 'theoretical-yield': '11.50 g' }))).toEqual({
      'amount-of-ZnO': 'wrong',
      'theoretical-yield': 'right',
    })
  })

  it('reckoning on with a rounded right answer is a matter of rounding', () => {
    const plan = planPreparation({ ...zincSulfate, scale: { of: 'ZnO', mass: '3.000 g' } })
    const { answers } = reviewWorksheet(
      plan,
      filledIn({ 'amount-of-ZnO': '0.0369 mol', 'theoretical-yield': '10.61 g' }),
    )
    expect(statuses(answers)).toEqual({ 'amount-of-ZnO': 'right', 'theoretical-yield': 'rounding' })
    expect(answerTo(answers, 'theoretical-yield').advice).toContain('keep all digits')
  })

  it('so does the yield of the reagent that was held to be limiting', () => {
    const answers = reviewed({
      'limiting-reagent': 'H2SO4',
      'theoretical-amount': '0.0440 mol',
      'theoretical-yield': '12.65 g',
    })
    expect(statuses(answers)).toEqual({
      'limiting-reagent': 'wrong',
      'theoretical-amount': 'carried forward',
      'theoretical-yield': 'carried forward',
    })
  })

  it('a zero that stops the calculation stops no review', () => {
    const { answers } = reviewWorksheet(zincPlan, filledIn({ 'theoretical-yield': '0 g', 'percent-yield': '50.0 %' }), {
      assessment: zincAssessment,
    })
    expect(answerTo(answers, 'percent-yield').status).toBe('wrong')
  })

  describe('also where moles of one substance are reckoned from those of another', () => {
    const plan = planPreparation({
      format: 'saltwright/recipe@1',
      title: 'Ammonium nickel sulfate',
      product: '(NH4)2Ni(SO4)2·6H2O',
      scale: { of: '(NH4)2Ni(SO4)2·6H2O', mass: '15.0 g' }, // 0.0379773 mol; without its water 0.0522868 mol
      stages: [{ name: 'mix', equation: 'NiSO4 + (NH4)2SO4 + 6H2O -> (NH4)2Ni(SO4)2·6H2O' }],
      supplies: [
        { form: 'solid', substance: 'NiSO4', weighedAs: 'NiSO4·6H2O' },
        { form: 'solid', substance: '(NH4)2SO4', excessFactor: '1.08' },
      ],
    })
    const found = (answers: Readonly<Record<string, string>>) =>
      reviewWorksheet(plan, filledIn(answers)).answers.filter(({ status }) => status !== 'missing')

    it.each([
      { id: 'amount-of-(NH4)2SO4', stated: '0.05647 mol' }, // 1.08 times as much
      { id: 'mass-of-(NH4)2SO4', stated: '7.462 g' }, // at 132.134 g/mol, not rounded on the way
      { id: 'theoretical-amount', stated: '0.05229 mol' },
    ])('$id is carried forward', ({ id, stated }) => {
      const answers = found({ 'amount-of-NiSO4': '0.05229 mol', [id]: stated })
      expect(statuses(answers)).toEqual({ 'amount-of-NiSO4': 'wrong', [id]: 'carried forward' })
      expect(answerTo(answers, id).follows).toEqual(['amount-of-NiSO4'])
    })

    it('and on from there', () => {
      const answers = found({
        'amount-of-NiSO4': '0.05229 mol',
        'amount-of-(NH4)2SO4': '0.0565 mol',
        'mass-of-(NH4)2SO4': '7.466 g', // 0.0565 mol at 132.134 g/mol
      })
      expect(statuses(answers)).toEqual({
        'amount-of-NiSO4': 'wrong',
        'amount-of-(NH4)2SO4': 'carried forward',
        'mass-of-(NH4)2SO4': 'carried forward',
      })
    })

    it('after an answer that was rounded it is a matter of rounding', () => {
      const answers = found({ 'amount-of-NiSO4': '0.0380 mol', 'amount-of-(NH4)2SO4': '0.04104 mol' })
      expect(statuses(answers)).toEqual({ 'amount-of-NiSO4': 'right', 'amount-of-(NH4)2SO4': 'rounding' })
    })

    it('but nothing is reckoned from what is taken in excess', () => {
      const answers = found({ 'amount-of-(NH4)2SO4': '0.04430 mol', 'theoretical-amount': '0.04102 mol' })
      expect(statuses(answers)).toEqual({ 'amount-of-(NH4)2SO4': 'wrong', 'theoretical-amount': 'wrong' })
      expect(answerTo(answers, 'theoretical-amount').review?.groups[0]?.slips).toContain('excess-reagent-limits')
    })

    it('and an amount of nothing decides nothing', () => {
      const answers = found({ 'amount-of-NiSO4': '0 mol', 'amount-of-(NH4)2SO4': '0.05647 mol' })
      expect(answerTo(answers, 'amount-of-(NH4)2SO4').status).toBe('wrong')
    })
  })

  it('works over stages that hand on what they leave', () => {
    const { answers } = reviewWorksheet(
      alumPlan,
      filledIn({ 'amount-of-H2SO4': '0.0500 mol', 'volume-of-H2SO4': '8.33 mL' }),
    )
    expect(statuses(answers)).toEqual({ 'amount-of-H2SO4': 'wrong', 'volume-of-H2SO4': 'carried forward' })
    expect(answerTo(answers, 'amount-of-H2SO4').review?.groups[0]?.slips).toContain('leftover-not-counted')
  })
})

describe('what is no worksheet', () => {
  it.each([
    { filled: undefined, code: 'review/invalid', problem: 'preparation/missing' },
    { filled: null, code: 'review/invalid', problem: 'preparation/wrong-type' },
    {
      filled: { format: 'saltwright/worksheet@2', answers: {} },
      code: 'review/invalid',
      problem: 'preparation/unknown-choice',
    },
    { filled: { format: 'saltwright/worksheet@1' }, code: 'review/invalid', problem: 'preparation/missing' },
    {
      filled: { format: 'saltwright/worksheet@1', answers: { 'mass-of-ZnO': 3.255 } },
      code: 'review/invalid',
      problem: 'preparation/wrong-type',
    },
    {
      filled: { format: 'saltwright/worksheet@1', answers: {}, group: 1 },
      code: 'review/invalid',
      problem: 'preparation/unknown-key',
    },
    {
      filled: { format: 'saltwright/worksheet@1', answers: { 'mass-of-CuO': '3 g' } },
      code: 'review/invalid',
      problem: 'review/unknown-question',
    },
  ])('$filled is refused: $problem', ({ filled, code, problem }) => {
    const error = failure(() => reviewWorksheet(zincPlan, filled as unknown as FilledWorksheet))
    expect(error.code).toBe(code)
    expect(error.problems?.[0]?.code).toBe(problem)
  })

  it('every name that is no question is told, and where it stands', () => {
    const filled = filledIn({ 'mass-of-CuO': '3 g', 'mass-of-ZnO': '3 g', nonsense: '1' })
    const error = failure(() => reviewWorksheet(zincPlan, filled))
    expect(error).toMatchObject({ path: ['answers', 'mass-of-CuO'], found: 'mass-of-CuO' })
    expect(error.problems).toMatchObject([
      { code: 'review/unknown-question', path: ['answers', 'mass-of-CuO'], found: 'mass-of-CuO' },
      { code: 'review/unknown-question', path: ['answers', 'nonsense'], found: 'nonsense' },
    ])
  })

  it('what cannot be looked at is refused', () => {
    const trap = Object.defineProperty({}, 'format', {
      get: () => {
        throw new Error('no')
      },
    })
    expect(failure(() => reviewWorksheet(zincPlan, trap as FilledWorksheet)).code).toBe('review/unreadable')
  })

  it.each([undefined, null, 5, {}, JSON.parse(JSON.stringify(zincPlan))])('and a plan that is none: %#', (plan) => {
    expect(failure(() => reviewWorksheet(plan as never, filledIn({}))).code).toBe('review/not-a-plan')
    expect(failure(() => worksheetOf(plan as never)).code).toBe('review/not-a-plan')
  })

  it.each([
    { questions: 5, context: {} },
    { questions: [], context: null },
    { questions: [null], context: {} },
    { questions: [{ id: 5 }], context: {} },
    { questions: [{ id: 'a', kind: 'quantity', expected: '5 g' }], context: {} },
    { questions: [{ id: 'a', kind: 'choice', right: [], choices: [5] }], context: {} },
    { questions: [{ id: 'a', kind: 'choice', right: [], choices: [{ formula: 5, name: 'a' }] }], context: {} },
    {
      questions: [{ id: 'a', kind: 'choice', right: [], choices: [{ formula: 'C', name: 'a', others: 5 }] }],
      context: {},
    },
    {
      questions: [{ id: 'a', kind: 'choice', right: [], choices: [{ formula: 'C', name: 'a', others: [5] }] }],
      context: {},
    },
    { questions: [{ id: 'a', kind: 'essay' }], context: {} },
    { questions: [{ id: 5, kind: 'choice', right: [], choices: [] }], context: {} },
    {
      questions: [{ id: 'a', kind: 'essay', right: [], choices: [], expected: zincPlan.theoretical.mass }],
      context: {},
    },
    { questions: [{ id: 'a', kind: 'choice', right: 'ZnO', choices: [] }], context: {} },
    { questions: [{ id: 'a', kind: 'choice', right: [], choices: 'ZnO' }], context: {} },
    { questions: [{ id: 'a', kind: 'choice', right: [], choices: [null] }], context: {} },
    { questions: [{ id: 'a', kind: 'choice', right: [], choices: [{ formula: 'ZnO', name: 5 }] }], context: {} },
    { questions: [], context: 5 },
    { ...zincPlan, format: 'saltwright/plan@2' },
    { ...zincPlan, theoretical: null },
    { ...zincPlan, theoretical: { mass: '11.50 g' } },
    { ...zincPlan, theoretical: { ...zincPlan.theoretical, amount: '0.0400 mol' } },
    { ...zincPlan, product: null },
    { ...zincPlan, recipe: { ...zincPlan.recipe, title: 5 } },
    { ...worksheetOf(zincPlan), title: 5 },
    { ...zincPlan, supplies: 5 },
    { ...zincPlan, supplies: [null] },
    { ...zincPlan, supplies: [{ ...zincPlan.supplies[0], exactMeasure: '3.255 g' }] },
  ])('and questions that are none: %j', (worksheet) => {
    const titled = { title: 'Invented', ...worksheet }
    expect(failure(() => reviewWorksheet(titled as never, filledIn({}))).code).toBe('review/not-a-plan')
  })

  it('a plan with a part that only a wrong answer looks at is none as well', () => {
    const forged = { ...zincPlan, stages: [null] } as never
    const fill = (answer: string) => filledIn({ 'theoretical-yield': answer })
    expect(reviewWorksheet(forged, fill('11.50 g')).answers).toHaveLength(8)
    expect(failure(() => reviewWorksheet(forged, fill('12.65 g'))).code).toBe('review/not-a-plan')
  })

  it('questions of one’s own are taken', () => {
    const choices = [{ formula: 'ZnO', name: 'zinc oxide' }]
    const worksheet = {
      title: 'Invented',
      questions: [
        { id: 'which', kind: 'choice', asks: 'Which?', right: ['ZnO'], choices },
        { id: 'mass', kind: 'quantity', asks: 'How much?', expected: zincPlan.theoretical.mass, readableTo: undefined },
      ],
      context: {},
    } as const
    const { title, answers } = reviewWorksheet(worksheet, filledIn({ which: 'zinc OXIDE', mass: '11.50 g' }))
    expect(title).toBe('Invented')
    expect(answers.map(({ question, asks, stated, status }) => [question, asks, stated, status])).toEqual([
      ['which', 'Which?', 'zinc OXIDE', 'right'],
      ['mass', 'How much?', '11.50 g', 'right'],
    ])
  })

  it('and options that are none', () => {
    expect(failure(() => reviewWorksheet(zincPlan, filledIn({}), null as never)).code).toBe('review/not-an-object')
    expect(failure(() => worksheetOf(zincPlan, 1 as never)).code).toBe('review/not-an-object')
  })

  it('its shape is there for other software', () => {
    expect(filledWorksheetSchema.safeParse(filledIn(allRight, 'Bench 1')).success).toBe(true)
    expect(filledWorksheetJsonSchema()).toMatchObject({ type: 'object', required: ['format', 'answers'] })
  })
})

function failure(act: () => unknown): { code?: string; problems?: readonly { code: string }[] } {
  try {
    act()
  } catch (error) {
    return error as { code?: string }
  }
  return {}
}
