import { exact, type Quantity } from 'saltwright/quantity'
import { reviewAnswer, type Slip } from 'saltwright/review'
import { describe, expect, it } from 'vitest'
import { timesNumber } from '../../src/review/replacement.js'

const [a, b] = [exact('2.5 g'), exact('4')]
const product = a.times(b) // 10.0 g

/** A slip with ways of its own: in each, some numbers of the calculation are multiplied. */
function slip(name: string, ...ways: readonly (readonly (readonly [Quantity, string])[])[]): Slip {
  return {
    name,
    group: 'copying',
    did: `Did ${name}.`,
    advice: `Look at ${name}.`,
    evidence: 'inferred',
    source: 'Invented.',
    changes: () =>
      ways.map((change) => ({
        reason: `${name} on ${change.length}`,
        change: change.map(([q, factor]) => timesNumber(q, factor)),
      })),
  }
}

const pairsFor = (stated: string, slips: readonly Slip[]) =>
  reviewAnswer(product, stated, { slips, pairs: true }).candidates.map(({ slips: names }) => names.join('+'))

describe('two slips together', () => {
  it('are named where they concern different numbers, with what is said of both', () => {
    const known: Slip = { ...slip('one', [[a, '3']]), evidence: 'shown' }
    const [pair] = reviewAnswer(product, '210 g', { slips: [slip('two', [[b, '7']]), known], pairs: true }).candidates
    expect(pair).toMatchObject({
      slips: ['one', 'two'],
      group: 'copying',
      did: 'Did one. Did two.',
      reason: 'one on 1; two on 1',
      advice: 'Look at one. Look at two.',
      evidence: 'inferred',
      fit: 'to the digits',
      alike: [],
    })
    expect(pair?.value.value.toNumber()).toBe(210)
  })

  it('are no two ways of one slip', () => {
    const both = [[[a, '3']], [[b, '7']]] as const
    expect(pairsFor('210 g', [slip('one', ...both)])).toEqual([])
    expect(pairsFor('210 g', [slip('one', ...both), slip('two', ...both)])).toEqual(['one+two'])
  })

  it('do not change the same number, not even as one of several', () => {
    const several = slip('several', [
      [a, '3'],
      [b, '5'],
    ])
    expect(pairsFor('1050 g', [several, slip('two', [[b, '7']])])).toEqual([])
    expect(pairsFor('1050 g', [slip('two', [[b, '7']]), several])).toEqual([])
    expect(pairsFor('150 g', [several, slip('two', [[b, '7']])])).toEqual(['several'])
  })

  it('fit to the digits, not nearly', () => {
    const slips = [slip('one', [[a, '3']]), slip('two', [[b, '7']])]
    expect(pairsFor('210.0 g', slips)).toEqual(['one+two'])
    expect(pairsFor('210.1 g', slips)).toEqual([])
  })

  it('are worked out exactly where they may just fit', () => {
    // 7.5 g times 28.000 666 667 is 210.005 000 002 5 g, by less than a millionth of the last digit no 210.00 g any more.
    const edge = (factor: string) => [slip('one', [[a, '3']]), slip('two', [[b, factor]])]
    expect(pairsFor('210.00 g', edge('7.00016666666'))).toEqual(['one+two'])
    expect(pairsFor('210.00 g', edge('7.00016666675'))).toEqual([])
  })

  it('do not stand beside one of them that does it alone', () => {
    const alone = slip('alone', [[a, '21']], [[a, '3']])
    expect(pairsFor('210 g', [alone, slip('two', [[b, '7']])])).toEqual(['alone'])
  })

  it('are each named once, and no more than five', () => {
    const slips = ['one', 'two', 'three', 'four'].map((name) => slip(name, [[a, '3']], [[b, '7']]))
    expect(pairsFor('210 g', slips)).toEqual(['one+two', 'one+three', 'one+four', 'two+three', 'two+four'])
  })

  it('explain nothing where they cannot be worked out', () => {
    const change = [{ replace: b, with: (q: Quantity) => q.dividedBy(exact(0)), estimate: () => 28 }]
    const byZero: Slip = { ...slip('by-zero'), changes: () => [{ reason: 'zero', change }] }
    expect(pairsFor('210 g', [slip('one', [[a, '3']]), byZero])).toEqual([])
  })

  it('are tried among the best known ways only, where a calculation has many numbers', () => {
    // 5000 sums have 10 000 numbers, which leaves room for 34 of these 42 guesses.
    const grams = Array.from({ length: 5000 }, () => exact('1 g'))
    const long = grams.reduce((total, gram) => total.plus(gram), product)
    const others = Array.from({ length: 40 }, (_, index) => slip(`other ${index}`, [[b, `1.${index}1`]]))
    const [three, seven] = [slip('three', [[a, '3']]), slip('seven', [[b, '7']])]
    const pairsOf = (slips: readonly Slip[]) =>
      reviewAnswer(long, '5210 g', { slips, pairs: true }).candidates.map(({ slips: names }) => names.join('+'))
    expect(pairsOf([three, seven, ...others])).toEqual(['three+seven'])
    expect(pairsOf([three, ...others, seven])).toEqual([])
    expect(pairsOf([three, ...others, { ...seven, evidence: 'shown' }])).toEqual(['seven+three'])
  })

  it('are looked for only on request', () => {
    const slips = [slip('one', [[a, '3']]), slip('two', [[b, '7']])]
    expect(reviewAnswer(product, '210 g', { slips }).verdict).toBe('unexplained')
    expect(reviewAnswer(product, '210 g', { slips, pairs: false }).verdict).toBe('unexplained')
  })
})

describe('slips that give the same number', () => {
  const groupsFor = (stated: string, slips: readonly Slip[]) => reviewAnswer(product, stated, { slips }).groups

  it.each([
    { what: 'the same', factor: '3', tells: false },
    { what: 'the same but for the last of all digits', factor: '3.00000000000001', tells: false },
    { what: 'different beyond the stated digits', factor: '3.004', tells: true },
    { what: 'smaller beyond the stated digits', factor: '2.996', tells: true },
  ])('are told apart by more digits where they are $what', ({ factor, tells }) => {
    const slips = [slip('one', [[a, '3']]), slip('two', [[b, factor]])]
    expect(groupsFor('30 g', slips)).toEqual([{ slips: ['one', 'two'], moreDigitsTell: tells }])
  })

  it('stand together by how well they fit, the better first', () => {
    const slips = [slip('near', [[a, '3.01']]), slip('one', [[a, '3']]), slip('two', [[b, '3']])]
    const { candidates, groups } = reviewAnswer(product, '30.0 g', { slips })
    expect(groups).toEqual([
      { slips: ['one', 'two'], moreDigitsTell: false },
      { slips: ['near'], moreDigitsTell: false },
    ])
    expect(candidates.map(({ slips: [name], fit, alike }) => [name, fit, alike])).toEqual([
      ['one', 'to the digits', ['two']],
      ['two', 'to the digits', ['one']],
      ['near', 'one in the last digit', []],
    ])
  })

  it('a slip is named once, in the way that fits best', () => {
    const slips = [slip('one', [[a, '3.01']], [[b, '3']], [[a, '3.0101']])]
    const { candidates } = reviewAnswer(product, '30.0 g', { slips })
    expect(candidates.map(({ slips: [name], fit, value }) => [name, fit, value.value.toNumber()])).toEqual([
      ['one', 'to the digits', 30],
    ])
  })

  it('come in the order of what is known of them, then of the list', () => {
    const slips: readonly Slip[] = [
      slip('inferred', [[a, '3']]),
      { ...slip('shown', [[a, '3']]), evidence: 'shown' },
      { ...slip('printed', [[a, '3']]), evidence: 'printed' },
      { ...slip('printed-too', [[b, '3']]), evidence: 'printed' },
      { ...slip('reported', [[a, '3']]), evidence: 'reported' },
      { ...slip('related', [[a, '3']]), evidence: 'related' },
      { ...slip('shown-but-near', [[a, '3.01']]), evidence: 'shown' },
    ]
    expect(pairsFor('30.0 g', slips)).toEqual([
      'shown',
      'reported',
      'related',
      'printed',
      'printed-too',
      'inferred',
      'shown-but-near',
    ])
  })

  it.each([
    ['30.1 g', 'one in the last digit'],
    ['29.9 g', 'one in the last digit'],
    ['30.2 g', undefined],
    ['29.8 g', undefined],
    ['30.0 g', 'to the digits'],
    ['30 g', 'to the digits'],
    ['31 g', undefined],
    ['0.0300 kg', 'to the digits'],
    ['30001 mg', 'one in the last digit'],
    ['30002 mg', undefined],
  ])('%s fits 30 g: %s', (stated, fit) => {
    expect(reviewAnswer(product, stated, { slips: [slip('one', [[a, '3']])] }).candidates[0]?.fit).toBe(fit)
  })
})
