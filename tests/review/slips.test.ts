import { roundTo } from 'saltwright/quantity'
import { reviewAnswer, slips } from 'saltwright/review'
import { describe, expect, it } from 'vitest'
import { workedSlips } from './worked-slips.js'

describe('a worked example of each slip', () => {
  it.each(workedSlips)('$slip: $example', ({ slip, stated, expected, context }) => {
    const review = reviewAnswer(expected(), stated, { context: context?.() })
    const best = review.candidates.filter(({ fit }) => fit === 'to the digits').flatMap(({ slips: names }) => names)
    expect(best).toContain(slip)
  })

  it.each(workedSlips)('$slip: the right answer to $example agrees', ({ right, expected, context }) => {
    expect(reviewAnswer(expected(), right, { context: context?.() }).verdict).toMatch(/agrees|rounding/)
  })

  it('every slip has one', () => {
    const shown = new Set(workedSlips.map(({ slip }) => slip))
    expect(slips.map(({ name }) => name).filter((name) => !shown.has(name))).toEqual([])
  })
})

describe('the list of slips', () => {
  it('has at least fifty, each under its own name', () => {
    expect(slips.length).toBeGreaterThanOrEqual(50)
    expect(new Set(slips.map(({ name }) => name)).size).toBe(slips.length)
  })

  it.each(slips)('$name says what was done, what to look at and where it was seen', (slip) => {
    expect(slip.name).toMatch(/^[a-z]+(-[a-z]+)*$/)
    for (const text of [slip.did, slip.advice, slip.source]) expect(text).toMatch(/^[A-Z].*[.?]$/)
    expect(slip.advice).not.toMatch(/\d{2}|wrong|error|mistake|careless|should have/i)
  })

  it.each([
    ['hydrate water', 10],
    ['reading formulas', 6],
    ['mole ratio', 7],
    ['limiting reagent', 5],
    ['excess', 5],
    ['units', 6],
    ['dividing', 4],
    ['weighing', 4],
    ['rounding', 2],
    ['yield', 4],
    ['solutions', 13],
    ['gas', 3],
    ['purity', 4],
    ['copying', 1],
  ])('has on %s %i', (group, many) => expect(slips.filter((slip) => slip.group === group)).toHaveLength(many))

  it.each([
    ['shown', 2],
    ['reported', 12],
    ['related', 9],
    ['printed', 21],
    ['inferred', 30],
  ])('has %s %i', (evidence, many) => expect(slips.filter((slip) => slip.evidence === evidence)).toHaveLength(many))

  it('what comes out with a slip is a calculation that can be shown', () => {
    const [first] = workedSlips
    const [candidate] = reviewAnswer(first!.expected(), first!.stated).candidates
    expect(roundTo(candidate!.value, { figures: 4 }).toString()).toBe('3.798 g')
    expect(candidate!.value.rule).toBe('product')
  })
})
