import { isFormula } from 'saltwright/formula'
import { isQuantity } from 'saltwright/quantity'
import { questionSet, reviewAnswer, reviewBenches, reviewClass, reviewWorksheet, worksheetOf } from 'saltwright/review'
import { describe, expect, it } from 'vitest'
import { zincSulfate } from '../preparation/recipes.js'
import { allRight, filledIn, zincPlan } from './worksheets.js'

function isFrozen(value: unknown): boolean {
  if (typeof value !== 'object' || value === null || isQuantity(value) || isFormula(value)) return true
  return Object.isFrozen(value) && Object.values(value).every(isFrozen)
}

const answer = '6.458 g'
const filled = filledIn({ ...allRight, 'theoretical-yield': answer })
const { context, questions } = worksheetOf(zincPlan)

describe('what reviews give does not change once made', () => {
  it.each([
    { what: 'a review', result: reviewAnswer(zincPlan.theoretical.mass, answer) },
    { what: 'a review that finds nothing', result: reviewAnswer(zincPlan.theoretical.mass, '11.502 g') },
    { what: 'the questions of a worksheet', result: questions },
    { what: 'the review of a worksheet', result: reviewWorksheet(zincPlan, filled) },
    { what: 'the review of a class', result: reviewClass([{ plan: zincPlan, filled }]) },
    { what: 'the reviews of its benches', result: [...reviewBenches([{ plan: zincPlan, filled }])][0] },
    { what: 'questions in variants', result: questionSet(zincSulfate, { seed: 1 }) },
  ])('$what', ({ result }) => expect(isFrozen(result)).toBe(true))

  it('the context of a worksheet, whose parts are worked out when asked for', () => {
    expect(Object.isFrozen(context)).toBe(true)
  })
})
