import { exact, type Quantity } from 'saltwright/quantity'
import { contextOf, type QuantityQuestion, reviewAnswer, worksheetOf } from 'saltwright/review'
import { describe, expect, it } from 'vitest'
import { carriedOn, type Earlier, earlierChoice, earlierNumber } from '../../src/review/carry.js'
import { zincPlan } from './worksheets.js'

const worksheet = worksheetOf(zincPlan)
const asked = (expected: Quantity): QuantityQuestion => ({
  kind: 'quantity',
  id: 'asked',
  asks: 'How much?',
  expected,
  readableTo: undefined,
})
const [first, three, two] = [exact('4 g'), exact('3'), exact('2')]
const second = first.times(three) // 12 g
const last = second.times(two) // 24 g
const earlier = (id: string, replace: Quantity, text: '1 g', isWrong = true): Earlier => ({
  id,
  isWrong,
  replace,
  stated: exact(text),
  unrounded: undefined,
})

describe('earlier answers', () => {
  it.each([
    { stated: '13 g', goesOnWith: '13 g', isWrong: true },
    { stated: '13', goesOnWith: '13 g', isWrong: true },
    { stated: '13000 mg', goesOnWith: '13000 mg', isWrong: true },
    { stated: '12.0 g', goesOnWith: '12.0 g', isWrong: false },
  ])('$stated goes on as $goesOnWith', ({ stated, goesOnWith, isWrong }) => {
    const [found] = earlierNumber(asked(second), reviewAnswer(second, stated))
    expect(found).toMatchObject({ id: 'asked', isWrong, replace: second })
    expect(found?.stated.equals(exact(goesOnWith as '1 g') as never)).toBe(true)
  })

  it('of another kind do not go on', () => {
    expect(earlierNumber(asked(second), reviewAnswer(second, '13 mol'))).toEqual([])
  })

  it('a choice decides the theoretical amount alone', () => {
    const choice = worksheet.questions.find((question) => question.kind === 'choice')!
    const [found] = earlierChoice(choice, 'H2SO4', worksheet, contextOf(zincPlan))
    expect(found).toMatchObject({ id: 'limiting-reagent', isWrong: true })
    expect(found?.replace).toBe(zincPlan.theoretical.amount)
    expect(found?.stated.toString()).toBe('0.044 mol')
    expect(earlierChoice(choice, 'NaCl', worksheet, contextOf(zincPlan))).toEqual([])
  })
})

describe('what follows from earlier answers', () => {
  const results = (expected: Quantity, all: readonly Earlier[]) =>
    carriedOn(expected, all).map(({ expected: q, follows, fromWrong }) => [q.value.toNumber(), follows, fromWrong])

  it('is reckoned with the latest, which holds those before', () => {
    const both = [earlier('first', first, '5 g' as '1 g'), earlier('second', second, '20 g' as '1 g')]
    expect(results(last, both)[0]).toEqual([40, ['first', 'second'], true])
    expect(results(last, both.slice(0, 1))[0]).toEqual([30, ['first'], true])
  })

  it('is nothing where no earlier answer is used', () => {
    expect(results(exact('1 g'), [earlier('first', first, '5 g' as '1 g')])).toEqual([])
    expect(results(last, [])).toEqual([])
  })

  it('with the wrong ones first, then as they were before they were rounded, then with all', () => {
    const wrong = { ...earlier('first', first, '5 g' as '1 g'), unrounded: exact('5.1 g') }
    const rounded = earlier('factor', three, '3.5' as '1 g', false)
    expect(results(last, [wrong, rounded])).toEqual([
      [30, ['first'], true],
      [30.6, ['first'], true],
      [35, ['first', 'factor'], true],
    ])
    expect(results(last, [rounded])).toEqual([[28, ['factor'], false]])
  })
})
