import { parseEquation } from 'saltwright/equation'
import { exact } from 'saltwright/quantity'
import { answerOf, type ReviewOptions, reviewAnswer, reviewWorksheet } from 'saltwright/review'
import { describe, expect, it } from 'vitest'
import { filledIn, zincPlan } from './worksheets.js'

const gram = exact('1.00 g')
const mole = exact('1.00 mol')

describe('options that are not what they should be', () => {
  it.each([
    { options: { ties: 'down' }, path: ['ties'] },
    { options: { figures: 'three' }, path: ['figures'] },
    { options: { figures: 3 }, path: ['figures'] },
    { options: { wholeNumberZeros: 'yes' }, path: ['wholeNumberZeros'] },
    { options: { pairs: 'yes' }, path: ['pairs'] },
    { options: { onProgress: 'yes' }, path: ['onProgress'] },
    { options: { slips: 'all' }, path: ['slips'] },
    { options: { slips: [{}] }, path: ['slips'] },
    { options: { slips: [null] }, path: ['slips'] },
    { options: { context: 'plan' }, path: ['context'] },
    { options: { context: null }, path: ['context'] },
    { options: { context: { atHand: gram } }, path: ['context', 'atHand'] },
    { options: { context: { atHand: ['1 g'] } }, path: ['context', 'atHand'] },
    { options: { context: { reactants: [1] } }, path: ['context', 'reactants'] },
    { options: { context: { reactants: [{ of: 1, amount: mole, gives: mole }] } }, path: ['context', 'reactants'] },
    { options: { context: { reactants: [{ of: 'Zn', amount: gram, gives: mole }] } }, path: ['context', 'reactants'] },
    { options: { context: { reactants: [{ of: 'Zn', amount: mole, gives: '1' }] } }, path: ['context', 'reactants'] },
    {
      options: { context: { reactants: [{ of: 'Zn', amount: mole, gives: mole, mass: mole }] } },
      path: ['context', 'reactants'],
    },
    { options: { context: { equations: [5] } }, path: ['context', 'equations'] },
    { options: { context: { formulas: [5] } }, path: ['context', 'formulas'] },
  ])('$options is refused at $path', ({ options, path }) => {
    expect(() => reviewAnswer(gram, '2.00 g', options as never)).toThrowError(
      expect.objectContaining({ code: 'review/unknown-option', path }),
    )
  })

  it('the same for a worksheet', () => {
    expect(() => reviewWorksheet(zincPlan, filledIn({}), { ties: 'down' } as never)).toThrowError(
      expect.objectContaining({ code: 'review/unknown-option' }),
    )
  })

  it('those that are, are taken', () => {
    const reactants = [{ of: 'Zn', amount: mole, gives: mole, mass: gram }]
    const context = { reactants, atHand: [gram], equations: ['Zn + S -> ZnS'], formulas: ['ZnS'] }
    expect(reviewAnswer(gram, '2.00 g', { context, figures: 'any', pairs: false, slips: [] }).verdict).toBe(
      'unexplained',
    )
  })

  it.each([
    { ties: 'half-even' },
    { ties: 'half-up' },
    { figures: 'at least three' },
    { figures: 'justified' },
    { figures: 'any' },
    { figures: { figures: 3 } },
    { wholeNumberZeros: 'placeholders' },
    { wholeNumberZeros: 'significant' },
    { wholeNumberZeros: 'reject' },
    { pairs: true },
    { context: { equations: [parseEquation('Zn + S -> ZnS')] } },
    { context: { reactants: [{ of: 'Zn', amount: mole, gives: mole }] } },
    { ties: undefined, figures: undefined, slips: undefined, context: undefined },
  ])('%j is taken', (options) => {
    expect(reviewAnswer(gram, '1.00 g', options as ReviewOptions).verdict).toBe('agrees')
  })

  it('there is no answer without a review', () => {
    expect(() => answerOf(undefined as never)).toThrowError(expect.objectContaining({ code: 'review/not-an-object' }))
    expect(() => answerOf({} as never)).toThrowError(expect.objectContaining({ code: 'quantity/not-a-quantity' }))
  })
})
