import { planClass } from 'saltwright/preparation'
import { type BenchWorksheet, reviewBenches, reviewClass, reviewWorksheet } from 'saltwright/review'
import { describe, expect, it } from 'vitest'
import { zincSulfate } from '../preparation/recipes.js'
import { allRight, filledIn, zincAssessment, zincPlan } from './worksheets.js'

const worksheets: readonly BenchWorksheet[] = [
  { plan: zincPlan, filled: filledIn(allRight, 'Bench 1') },
  { plan: zincPlan, filled: filledIn({ ...allRight, 'theoretical-yield': '6.458 g' }, 'Bench 2') },
  { plan: zincPlan, filled: filledIn({ 'theoretical-yield': '6.46 g', 'molar-mass-of-product': '179.45 g/mol' }) },
  { plan: zincPlan, bench: 'Bench 4', filled: { format: 'saltwright/worksheet@1' } as never },
  { plan: zincPlan, bench: 'Bench 5', assessment: zincAssessment, filled: filledIn({ 'product-mass': '9.113 g' }) },
]

describe('a class', () => {
  const review = reviewClass(worksheets)

  it('has a row for each bench', () => {
    expect(review.benches.map(({ bench, notFaulted, faulted }) => [bench, notFaulted, faulted])).toEqual([
      ['Bench 1', 8, 0],
      ['Bench 2', 7, 1],
      ['Bench 3', 0, 2],
      ['Bench 5', 1, 0],
    ])
    expect(review.benches[1]).toMatchObject({
      statuses: { 'mass-of-ZnO': 'right', 'theoretical-yield': 'wrong' },
      slips: { 'theoretical-yield': ['product-taken-as-anhydrous'] },
    })
  })

  it('counts how each question went', () => {
    const { counts } = review.questions.find(({ question }) => question === 'theoretical-yield')!
    expect(counts).toEqual({ right: 1, wrong: 2, missing: 1 })
  })

  it('counts the slips, and shares out answers that several fit', () => {
    expect(review.slips.map(({ slip, answers, alone, share }) => [slip, answers, alone, share])).toEqual([
      ['product-taken-as-anhydrous', 2, 2, 2],
      ['other-hydrate', 1, 0, 0.5],
      ['one-water-only', 1, 0, 0.5],
    ])
    expect(review.mostCommon).toBe(review.slips[0])
  })

  it('names the most common slip first, whoever made it', () => {
    const plain = (answer: string) => ({ plan: zincPlan, filled: filledIn({ 'theoretical-yield': answer }) })
    const { slips, mostCommon } = reviewClass([plain('7.178 g'), plain('6.458 g'), plain('6.458 g')])
    expect(slips.map(({ slip, share }) => [slip, share]).slice(0, 1)).toEqual([['product-taken-as-anhydrous', 2]])
    expect(mostCommon).toBe(slips[0])
    expect(slips.map(({ slip }) => slip)).toContain('other-hydrate')
  })

  it('counts single slips alone, and only those that fit best', () => {
    const faulted = (answer: string, pairs = false) =>
      reviewClass([{ plan: zincPlan, filled: filledIn({ 'theoretical-yield': answer }) }], { pairs })
    for (const answer of ['6.457 g', '6.458 g', '7.18 g']) {
      const { candidates } = reviewWorksheet(zincPlan, filledIn({ 'theoretical-yield': answer })).answers.at(-1)!
        .review!
      const best = candidates.filter(({ fit }) => fit === candidates[0]?.fit).map(({ slips: [name] }) => name)
      expect(faulted(answer).benches[0]?.slips['theoretical-yield']).toEqual(best)
      expect(faulted(answer, true).benches[0]?.slips['theoretical-yield']).toEqual(best)
    }
  })

  it('counts what is only rounded as not faulted', () => {
    const { benches } = reviewClass([{ plan: zincPlan, filled: filledIn({ 'theoretical-yield': '12 g' }) }])
    expect(benches[0]).toMatchObject({ notFaulted: 1, faulted: 0, statuses: { 'theoretical-yield': 'rounding' } })
  })

  it('has no slips where nothing is wrong', () => {
    const [first, , third] = review.benches
    expect(first?.slips).toEqual({})
    expect(Object.keys(third?.slips ?? {}).sort()).toEqual(['molar-mass-of-product', 'theoretical-yield'])
    expect(first?.statuses).toEqual(Object.fromEntries(Object.keys(allRight).map((question) => [question, 'right'])))
  })

  it('lists what could not be read, and goes on', () => {
    expect(review.unread.map(({ index, error }) => [index, error.code])).toEqual([[3, 'review/invalid']])
  })

  it('is plain data as JSON', () => {
    expect(JSON.parse(JSON.stringify(review)).format).toBe('saltwright/class-review@1')
  })

  it('without worksheets has no most common slip', () => {
    expect(reviewClass([]).mostCommon).toBeUndefined()
  })

  it('can be gone through one by one, with progress', () => {
    const done: number[] = []
    const reviews = reviewBenches(new Set(worksheets), { onProgress: (count) => done.push(count) })
    expect(done).toEqual([])
    expect([...reviews].map((each) => ('review' in each ? each.review.bench : each.error.code))).toEqual([
      'Bench 1',
      'Bench 2',
      'Bench 3',
      'review/invalid',
      'Bench 5',
    ])
    expect(done).toEqual([1, 2, 3, 4, 5])
  })

  it.each([undefined, null, 5, {}, { [Symbol.iterator]: 5 }])('%s is no list', (list) => {
    expect(() => reviewClass(list as never)).toThrowError(expect.objectContaining({ code: 'review/not-a-list' }))
  })

  it('a forged plan is listed, with what went wrong, and stops nothing', () => {
    const [first, second] = worksheets.map((each) => ({ ...each }))
    const { benches, unread } = reviewClass([{ ...first, plan: { ...first?.plan, supplies: null } }, second] as never)
    expect(unread).toMatchObject([{ index: 0, error: { code: 'review/not-a-plan' } }])
    expect(benches).toHaveLength(1)
  })

  it('an entry that is none is listed', () => {
    const { unread } = reviewClass([null, 5, { plan: 1 }, { ...worksheets[0], bench: {} }] as never)
    expect(unread.map(({ error }) => error.code)).toEqual([
      'review/not-an-object',
      'review/not-an-object',
      'review/not-a-plan',
      'review/unknown-option',
    ])
  })

  it('options that are none are refused', () => {
    expect(() => reviewClass([], null as never)).toThrowError(expect.objectContaining({ code: 'review/not-an-object' }))
  })
})

describe('two hundred worksheets', () => {
  it('take no more than a few seconds, whatever else the machine does', () => {
    const benches = Array.from({ length: 200 }, (_, index) => ({
      name: `Bench ${index + 1}`,
      scale: { amount: `0.0${200 + (index % 700)} mol` },
    }))
    const plans = planClass({ ...zincSulfate, scale: { of: 'ZnSO4·7H2O', amount: '0.0400 mol' } }, benches).benches
    const filled = plans.map(({ name, plan }) => {
      const { amount, mass } = plan.theoretical
      const answers = {
        ...allRight,
        'amount-of-ZnO': `${amount.value} mol`,
        'mass-of-ZnO': '3.333 g',
        'theoretical-amount': `${amount.value} mol`,
        'theoretical-yield': `${mass.value.times('0.5614').toPrecision(4)} g`,
      }
      return { plan, filled: filledIn(answers, name) }
    })
    const start = process.cpuUsage()
    const review = reviewClass(filled)
    expect(process.cpuUsage(start).user / 1e6).toBeLessThan(5)
    expect(review.benches).toHaveLength(200)
  }, 60_000)
})
