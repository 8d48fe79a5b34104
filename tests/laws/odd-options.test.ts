import { isSaltwrightError } from 'saltwright'
import { compositionFromAssays, explainYield } from 'saltwright/product'
import { exact, quantity, working } from 'saltwright/quantity'
import { questionPackage, questionSheet, reviewSheet, writeWorking } from 'saltwright/report'
import { questionSet, reviewWorksheet } from 'saltwright/review'
import { checkCapacity } from 'saltwright/solution'
import {
  amountFromMass,
  equivalents,
  extentOfReaction,
  leftovers,
  limitingReagent,
  massFromAmount,
  theoreticalYield,
} from 'saltwright/stoichiometry'
import { describe, expect, it } from 'vitest'
import { zincSulfate } from '../preparation/recipes.js'
import { filledIn, zincPlan } from '../review/worksheets.js'

function codeOf(call: () => unknown): string {
  try {
    call()
  } catch (error) {
    return isSaltwrightError(error) ? error.code : String(error)
  }
  return 'nothing'
}

/** Two things with a hole between them. */
function withHole<T>(first: T, last: T): T[] {
  const list = new Array<T>(3)
  list[0] = first
  list[2] = last
  return list
}

const equation = 'ZnO + H2SO4 -> ZnSO4 + H2O'
const supplies = { ZnO: '0.0400 mol' } as const

describe('options that are none, as JavaScript callers hand them over, are refused by name', () => {
  it.each<{ name: string; call: (options: never) => unknown; code: string }>([
    {
      name: 'limitingReagent',
      call: (o) => limitingReagent(equation, supplies, o),
      code: 'stoichiometry/not-an-object',
    },
    {
      name: 'extentOfReaction',
      call: (o) => extentOfReaction(equation, supplies, o),
      code: 'stoichiometry/not-an-object',
    },
    { name: 'leftovers', call: (o) => leftovers(equation, supplies, o), code: 'stoichiometry/not-an-object' },
    { name: 'equivalents', call: (o) => equivalents(equation, supplies, o), code: 'stoichiometry/not-an-object' },
    {
      name: 'theoreticalYield',
      call: (o) => theoreticalYield(equation, 'ZnSO4', supplies, o),
      code: 'stoichiometry/not-an-object',
    },
    { name: 'amountFromMass', call: (o) => amountFromMass('1 g', 'ZnO', o), code: 'stoichiometry/not-an-object' },
    { name: 'massFromAmount', call: (o) => massFromAmount('1 mol', 'ZnO', o), code: 'stoichiometry/not-an-object' },
    { name: 'checkCapacity', call: (o) => checkCapacity('1 mL', '2 mL', o), code: 'solution/not-an-object' },
  ])('$name', ({ call, code }) => {
    expect(codeOf(() => call(null as never))).toBe(code)
    expect(codeOf(() => call('none' as never))).toBe(code)
  })

  it('in reports, where they only say how something is written, they say nothing', () => {
    const none = null as never
    const set = questionSet(zincSulfate, { seed: 1 })
    const review = reviewWorksheet(zincPlan, filledIn({}))
    const worked = working(exact('1 g').plus(exact('2 g')))
    expect(questionPackage(set, none)).toEqual(questionPackage(set))
    expect(questionSheet(set, 'text', none)).toBe(questionSheet(set))
    expect(reviewSheet(review, 'text', none)).toBe(reviewSheet(review))
    expect(writeWorking(worked, 'text', none)).toBe(writeWorking(worked))
  })

  it('questions that are no list', () => {
    expect(codeOf(() => questionSet(zincSulfate, { seed: 1, questions: 'theoretical-yield' as never }))).toBe(
      'review/bad-range',
    )
    expect(codeOf(() => questionSet(zincSulfate, { seed: 1, questions: new Array(1) }))).toBe('review/unknown-question')
  })
})

describe('a list with holes is refused by name', () => {
  const iron = { of: 'Fe', massFraction: '10 %' } as const
  it.each<{ what: string; call: () => unknown; code: string }>([
    { what: 'of assays', call: () => compositionFromAssays(withHole(iron, iron)), code: 'product/not-an-object' },
    {
      what: 'of other runs',
      call: () => explainYield({ actual: '12 g', theoretical: '11 g', others: new Array(1) }),
      code: 'product/not-an-object',
    },
    {
      what: 'of components of an uncertainty',
      call: () => quantity('1.00 g', { uncertainty: withHole('0.01 g', '0.02 g') }),
      code: 'quantity/bad-uncertainty',
    },
  ])('$what', ({ call, code }) => expect(codeOf(call)).toBe(code))
})
