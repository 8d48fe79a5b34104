import { atomicWeightSet } from 'saltwright/element'
import { molarMass } from 'saltwright/formula'
import { netMass, percentYield } from 'saltwright/product'
import { asDimension, constant, exact, type Quantity, quantity } from 'saltwright/quantity'
import { answerOf, type ReviewOptions, reviewAnswer, type Slip } from 'saltwright/review'
import { massFromAmount } from 'saltwright/stoichiometry'
import { describe, expect, it } from 'vitest'

const mass = massFromAmount(exact('0.0250 mol'), 'ZnSO4·7H2O') // 7.188525 g
const share = percentYield('7.770 g', '17.58 g') // 44.19795... %, four figures
const target = asDimension(exact('0.0500 mol'), 'amount').named({ role: 'amount', of: 'ZnO' })
const volume = asDimension(exact('0.0147 L'), 'volume').to('mL')
const tie = asDimension(exact('12.25 g'), 'mass')

describe('the verdict on a value that is right', () => {
  it.each([
    { of: mass, stated: '7.1885 g', verdict: 'agrees' },
    { of: mass, stated: '7.189 g', verdict: 'agrees' },
    { of: mass, stated: '7.19 g', verdict: 'agrees' },
    { of: mass, stated: '7.189e3 mg', verdict: 'agrees' },
    { of: mass, stated: quantity('7.189 g'), verdict: 'agrees' },
    { of: mass, stated: mass, verdict: 'agrees' },
    { of: mass, stated: '7.2 g', verdict: 'rounding', kind: 'too few figures' },
    { of: mass, stated: '7.188525 g', verdict: 'rounding', kind: 'too many figures' },
    { of: mass, stated: '7.18853 g', verdict: 'rounding', kind: 'too many figures' },
    { of: mass, stated: '7.188 g', verdict: 'rounding', kind: 'cut off' },
    { of: mass, stated: '7.18 g', verdict: 'rounding', kind: 'cut off' },
    { of: mass, stated: '7.1889 g', verdict: 'unexplained' },
    { of: mass, stated: '7.1 g', verdict: 'unexplained' },
    { of: asDimension(exact('0.58 g'), 'mass'), stated: '0.5 g', verdict: 'unexplained' },
    { of: asDimension(exact('0.5821 g'), 'mass'), stated: '0.583 g', verdict: 'rounding', kind: 'rounded away' },
    { of: share, stated: '44.20 %', verdict: 'agrees' },
    { of: share, stated: '0.4420', verdict: 'agrees' },
    { of: share, stated: '44.1979522 %', verdict: 'rounding', kind: 'too many figures' },
    { of: share, stated: '44.1982 %', verdict: 'rounding', kind: 'too many figures' },
    { of: share, stated: '44.21 %', verdict: 'unexplained' },
    { of: mass, stated: '7.1886 g', verdict: 'rounding', kind: 'rounded away' },
    { of: target, stated: '0.05 mol', verdict: 'agrees' },
    { of: target, stated: '50.0 mmol', verdict: 'agrees' },
    { of: volume, stated: '14.7 mL', verdict: 'agrees' },
    { of: volume, stated: '14.70 mL', verdict: 'agrees' },
    { of: volume, stated: '15 mL', verdict: 'rounding', kind: 'too few figures' },
    { of: asDimension(exact('247 mL'), 'volume'), stated: '250 mL', verdict: 'rounding', kind: 'too few figures' },
    { of: asDimension(exact('250 mL'), 'volume'), stated: '250 mL', verdict: 'agrees' },
    { of: asDimension(exact('58.4 %'), 'ratio'), stated: '100 %', verdict: 'unexplained' },
    { of: netMass({ gross: '10.25 g', tare: '10.00 g' }), stated: '0.25 g', verdict: 'agrees' },
    { of: exact('-3.55 g') as Quantity, stated: '-3.6 g', verdict: 'rounding', kind: 'too few figures' },
    { of: exact('-3.556 g') as Quantity, stated: '-3.55 g', verdict: 'rounding', kind: 'cut off' },
    { of: exact('0 g') as Quantity, stated: '0 g', verdict: 'agrees' },
  ])('$stated is found to be: $verdict ($kind)', ({ of, stated, verdict, kind }) => {
    const review = reviewAnswer(of as Quantity, stated)
    expect(review.verdict).toBe(verdict)
    expect(review.rounding?.kind).toBe(kind)
  })

  it.each<{ of: string; stated: string; found: string; options?: ReviewOptions }>([
    { of: '6.91 g', stated: '6910 mg', found: 'agrees' },
    { of: '6.91 g', stated: '6910 mg', found: 'agrees', options: { wholeNumberZeros: 'placeholders' } },
    { of: '6.91 g', stated: '6910 mg', found: 'agrees', options: { figures: { figures: 3 } } },
    { of: '6.91 g', stated: '6910 mg', found: 'too many figures', options: { wholeNumberZeros: 'significant' } },
    { of: '6.91 g', stated: '6910. mg', found: 'too many figures' },
    { of: '6.91 g', stated: '6.910 g', found: 'too many figures' },
    { of: '6.9 g', stated: '6910 mg', found: 'too many figures' },
    { of: '6.910 g', stated: '6910 mg', found: 'agrees', options: { figures: 'justified' } },
    { of: '6.912 g', stated: '6910 mg', found: 'too few figures', options: { figures: 'justified' } },
    { of: '250 mL', stated: '250 mL', found: 'agrees' },
    { of: '200 mL', stated: '200 mL', found: 'agrees' },
    { of: '200. mL', stated: '200 mL', found: 'agrees', options: { figures: 'justified' } },
    { of: '12.00 g', stated: '12000 mg', found: 'agrees' },
    { of: '0.0500 mol', stated: '50000 umol', found: 'agrees' },
  ])(
    'zeros at the end of a whole number may be placeholders: $stated for $of, $found',
    ({ of, stated, found, options }) => {
      const { verdict, rounding } = reviewAnswer(quantity(of as '1 g') as Quantity, stated, options)
      expect(rounding?.kind ?? verdict).toBe(found)
    },
  )

  it('a lone 5 may be rounded by either rule, unless one is required', () => {
    expect(reviewAnswer(tie, '12.2 g').verdict).toBe('agrees')
    expect(reviewAnswer(tie, '12.3 g').verdict).toBe('agrees')
    expect(reviewAnswer(tie, '12.3 g', { ties: 'half-up' }).verdict).toBe('agrees')
    const { verdict, rounding, advice } = reviewAnswer(tie, '12.2 g', { ties: 'half-up' })
    expect({ verdict, rounding }).toEqual({
      verdict: 'rounding',
      rounding: { kind: 'other tie rule', stated: 3, right: null, rule: 'half-even' },
    })
    expect(advice).toContain('this course rounds by the other rule')
  })

  it.each<{ figures: ReviewOptions['figures']; stated: string; kind: string | undefined; right?: number }>([
    { figures: 'any', stated: '7.2 g', kind: undefined },
    { figures: 'any', stated: '7.188525 g', kind: undefined },
    { figures: 'justified', stated: '7.19 g', kind: 'too few figures', right: 5 },
    { figures: 'justified', stated: '7.1885 g', kind: undefined },
    { figures: { figures: 3 }, stated: '7.19 g', kind: undefined },
    { figures: { figures: 3 }, stated: '7.189 g', kind: 'too many figures', right: 3 },
    { figures: { place: '0.001' }, stated: '7.19 g', kind: 'too few figures', right: 4 },
  ])('$stated where the figures should be $figures: $kind', ({ figures, stated, kind, right }) => {
    const { rounding } = reviewAnswer(mass, stated, { figures })
    expect(rounding?.kind).toBe(kind)
    if (right !== undefined) expect(rounding?.right).toBe(right)
  })

  it('says how many figures were stated and how many there should be', () => {
    expect(reviewAnswer(share, '44.1979522 %').rounding).toEqual({ kind: 'too many figures', stated: 9, right: 4 })
    expect(reviewAnswer(share, '44 %').rounding).toEqual({ kind: 'too few figures', stated: 2, right: 4 })
  })

  it('trailing zeros of a whole number are read both ways unless said', () => {
    const litre = asDimension(exact('1004 mL'), 'volume')
    expect(reviewAnswer(litre, '1000 mL').verdict).toBe('agrees')
    expect(reviewAnswer(litre, '1000 mL', { wholeNumberZeros: 'significant' }).verdict).toBe('unexplained')
  })

  it('a right value with too few or too many figures is not looked through for slips', () => {
    for (const stated of ['7.2 g', '7.188525 g']) expect(reviewAnswer(mass, stated).candidates).toEqual([])
  })

  it('a right value beside which a slip gives the same is still right, and the slip is named', () => {
    const { verdict, candidates } = reviewAnswer(mass, '7.188 g')
    expect(verdict).toBe('rounding')
    expect(candidates.map(({ slips }) => slips[0])).toEqual(['molar-mass-rounded'])
    const salt = { role: 'mass', of: 'NaCl' } as const
    const context = { atHand: [exact('0.583 g', salt)] }
    const up = reviewAnswer(exact('0.5821 g', salt), '0.583 g', { context })
    expect([up.rounding?.kind, ...up.candidates.map(({ slips }) => slips[0])]).toEqual([
      'rounded away',
      'printed-amount-kept',
    ])
  })
})

describe('the advice', () => {
  it.each<{ of: Quantity; stated: string; says: string; options?: ReviewOptions }>([
    { of: mass, stated: '7.189 g', says: 'This agrees.' },
    { of: mass, stated: '7.188525 g', says: 'more figures' },
    { of: mass, stated: '7.2 g', says: 'more figures: how many do' },
    { of: mass, stated: '7.188 g', says: 'cut off?' },
    { of: mass, stated: '7.1886 g', says: 'one off' },
    { of: tie, stated: '12.2 g', says: 'a lone 5', options: { ties: 'half-up' } },
    { of: mass, stated: '7.189', says: 'Which unit belongs to it?' },
    { of: mass, stated: '7.189 kg', says: 'Look at its unit once more.' },
    { of: mass, stated: '9.999 g', says: 'No single known slip gives this number.' },
    { of: mass, stated: '9.999 mol', says: 'with where it came from. Look at its unit once more.' },
  ])('on $stated says: $says', ({ of, stated, says, options }) => {
    expect(reviewAnswer(of, stated, options).advice).toContain(says)
  })

  it('on a slip is that of the slip alone, also where another one nearly fits', () => {
    const { candidates, advice } = reviewAnswer(mass, '4.037 g')
    expect(advice).toBe(candidates[0]?.advice)
    const near = reviewAnswer(molarMass('ZnSO4·7H2O'), '161.4 g/mol')
    const fits = near.candidates.map(({ fit }) => fit)
    expect(fits[0]).toBe('to the digits')
    if (fits[1] !== 'to the digits') expect(near.advice).toBe(near.candidates[0]?.advice)
  })

  it('on slips that fit alike goes on with that of the second', () => {
    const { candidates, advice } = reviewAnswer(molarMass('ZnSO4·7H2O'), '179.45 g/mol')
    const second = candidates[1]?.advice ?? ''
    expect(advice.startsWith(candidates[0]?.advice ?? '-')).toBe(true)
    expect(advice.endsWith(`: ${second.charAt(0).toLowerCase()}${second.slice(1)}`)).toBe(true)
  })
})

describe('the verdict on a unit', () => {
  it.each([
    { of: mass, stated: '7.189', unit: { kind: 'missing', stated: '1', right: 'g' } },
    { of: mass, stated: '7189', unit: { kind: 'missing', stated: '1', right: 'mg' } },
    { of: mass, stated: '7.189 kg', unit: { kind: 'wrong', stated: 'kg', right: 'g' } },
    { of: mass, stated: '7.189 mol', unit: { kind: 'wrong', stated: 'mol', right: 'g' } },
    { of: volume, stated: '0.0147 mL', unit: { kind: 'wrong', stated: 'mL', right: 'L' } },
    { of: mass, stated: '7.2 kg', unit: { kind: 'wrong', stated: 'kg', right: 'g' } },
    { of: mass, stated: '7.188525 kg', unit: { kind: 'wrong', stated: 'kg', right: 'g' } },
    { of: mass, stated: '7188.5 g', unit: { kind: 'wrong', stated: 'g', right: 'mg' } },
    { of: share, stated: '44.20', unit: { kind: 'missing', stated: '1', right: '%' } },
    { of: share, stated: '0.4420 %', unit: { kind: 'wrong', stated: '%', right: '1' } },
  ])('$stated has the right number and $unit.kind unit', ({ of, stated, unit }) => {
    const review = reviewAnswer(of as Quantity, stated)
    expect(review.verdict).toBe('unit')
    expect(review.unit).toEqual(unit)
    expect(review.advice).toMatch(/^The number is right\./)
  })

  it('a number without a unit is read in that of the right answer, and both are said', () => {
    const { verdict, unit, candidates, advice } = reviewAnswer(mass, '4.036')
    expect(verdict).toBe('slip')
    expect(unit?.kind).toBe('missing')
    expect(candidates[0]?.slips).toEqual(['hydrate-weighed-as-anhydrous'])
    expect(advice).toContain('Which unit belongs to it?')
  })

  it('a number of another kind is not looked through for slips', () => {
    const { verdict, unit, candidates } = reviewAnswer(mass, '4.036 mol')
    expect({ verdict, kind: unit?.kind, candidates }).toEqual({ verdict: 'unexplained', kind: 'wrong', candidates: [] })
  })
})

describe('slips as candidates', () => {
  it('those that cannot be told apart at the stated digits stand together', () => {
    const { candidates, groups, advice } = reviewAnswer(molarMass('ZnSO4·7H2O'), '179.45 g/mol')
    expect(candidates.map(({ slips }) => slips[0])).toEqual(['other-hydrate', 'one-water-only'])
    expect(candidates[0]?.alike).toEqual(['one-water-only'])
    expect(groups).toEqual([{ slips: ['other-hydrate', 'one-water-only'], moreDigitsTell: false }])
    expect(advice).toContain('Something else gives the same number at these digits')
  })

  it('and it is said where more digits would tell them apart', () => {
    const { groups } = reviewAnswer(mass, '6.30 g') // with six waters 6.738, with the last digits of something else
    expect(groups.every(({ moreDigitsTell }) => typeof moreDigitsTell === 'boolean')).toBe(true)
    const doubtful = reviewAnswer(massFromAmount(exact('0.0250 mol'), 'CuSO4·5H2O'), '8.5 g')
    expect(doubtful.groups[0]).toEqual({ slips: ['water-added-again', 'other-hydrate'], moreDigitsTell: false })
  })

  it('one that misses by one in the last digit comes last and says so', () => {
    const { verdict, candidates } = reviewAnswer(mass, '4.037 g')
    expect(verdict).toBe('slip')
    expect(candidates[0]?.fit).toBe('one in the last digit')
    expect(reviewAnswer(mass, '4.1 g').candidates).toEqual([])
  })

  it('each tells its reason, its evidence and what comes out', () => {
    const [candidate] = reviewAnswer(mass, '4.036 g').candidates
    expect(candidate).toMatchObject({
      slips: ['hydrate-weighed-as-anhydrous'],
      group: 'hydrate water',
      evidence: 'reported',
      reason: 'molar mass of ZnSO4·7H2O without its water',
      fit: 'to the digits',
      alike: [],
    })
    expect(candidate?.value.toString()).toBe('4.0359 g')
  })

  it('the numbers of a calculation of one’s own are found by their roles alone', () => {
    const own = quantity('2.000 g', { role: 'mass' })
      .dividedBy(constant('249.68 g/mol', { role: 'molar mass', of: 'CuSO4·5H2O' }))
      .times(exact('2', { role: 'mole ratio', of: 'KOH' }))
    expect(reviewAnswer(own, '0.02506 mol').candidates[0]?.slips).toEqual(['hydrate-counted-as-anhydrous'])
    expect(reviewAnswer(own, '0.008010 mol').candidates[0]?.slips).toEqual(['ratio-left-out'])
  })

  it('several others are counted', () => {
    const three = exact('2', { role: 'excess', of: 'KOH' })
    const amount = exact('0.0100 mol', { role: 'amount' })
      .times(three)
      .times(exact('2', { role: 'mole ratio', of: 'KOH' }))
    const { candidates, advice } = reviewAnswer(amount, '0.0200 mol')
    expect(candidates.map(({ slips }) => slips[0])).toEqual([
      'ratio-left-out',
      'excess-per-cent-as-factor',
      'excess-left-out',
    ])
    expect(advice).toContain('2 other slips give the same number')
  })

  it('only those asked for are looked for, and one’s own as well', () => {
    const half: Slip = {
      name: 'half-of-it',
      group: 'copying',
      did: 'Took half.',
      advice: 'Was all of it taken?',
      evidence: 'inferred',
      source: 'Invented.',
      changes: ({ result }) => [
        {
          reason: 'half',
          change: [{ replace: result, with: (q) => q.dividedBy(exact(2)), estimate: (value) => value / 2 }],
        },
      ],
    }
    expect(reviewAnswer(mass, '3.594 g', { slips: [half] }).candidates[0]?.slips).toEqual(['half-of-it'])
    expect(reviewAnswer(mass, '4.036 g', { slips: [half] }).verdict).toBe('unexplained')
  })

  it('a slip that cannot be worked out explains nothing', () => {
    const byZero: Slip = {
      name: 'by-zero',
      group: 'copying',
      did: 'Divided by nothing.',
      advice: 'By what was it divided?',
      evidence: 'inferred',
      source: 'Invented.',
      changes: ({ result }) => [
        { reason: 'zero', change: [{ replace: result, with: (q) => q.dividedBy(exact(0)), estimate: () => 3.594 }] },
        { reason: 'other', change: [{ replace: result, with: () => exact('9 g'), estimate: () => 3.594 }] },
        { reason: 'none', change: [{ replace: result, with: (q) => q, estimate: () => Number.NaN }] },
        { reason: 'elsewhere', change: [{ replace: share, with: (q) => q, estimate: () => 3.594 }] },
      ],
    }
    expect(reviewAnswer(mass, '3.594 g', { slips: [byZero] }).candidates).toEqual([])
  })

  it('a question reviewed again gives the same, also with another context', () => {
    const context = { atHand: [exact('2', { role: 'excess', of: 'KOH' })] }
    const once = reviewAnswer(mass, '14.38 g', { context })
    expect(reviewAnswer(mass, '14.38 g', { context }).candidates.map(({ slips }) => slips)).toEqual(
      once.candidates.map(({ slips }) => slips),
    )
    expect(once.candidates[0]?.slips).toEqual(['excess-on-another-reagent'])
    expect(reviewAnswer(mass, '14.38 g').verdict).toBe('unexplained')
  })
})

describe('pairs of slips', () => {
  const both = massFromAmount(exact('0.0125 mol').times(exact(2, { role: 'mole ratio', of: 'X' })), 'ZnSO4·7H2O')

  it('are named only on request', () => {
    expect(reviewAnswer(both, '2.018 g').verdict).toBe('unexplained')
    const { verdict, candidates } = reviewAnswer(both, '2.018 g', { pairs: true })
    expect(verdict).toBe('slip')
    expect(candidates[0]?.slips).toEqual(['ratio-left-out', 'hydrate-weighed-as-anhydrous'])
    expect(candidates[0]?.evidence).toBe('reported')
    expect(candidates[0]?.value.toString()).toBe('2.0180 g')
  })

  it('rank below single ones, and there are no more than a few', () => {
    const { candidates } = reviewAnswer(both, '3.6 g', { pairs: true })
    const sizes = candidates.map(({ slips }) => slips.length)
    expect(sizes[0]).toBe(1)
    expect(sizes).toEqual([...sizes].sort())
    expect(sizes.filter((size) => size === 2).length).toBeLessThanOrEqual(5)
  })
})

describe('the course’s own atomic weights', () => {
  const wall = atomicWeightSet({ name: 'wall chart', values: { Zn: '65.39', S: '32.066' }, extends: 'abridged' })

  it('an answer that was worked out with them agrees, and one with the usual ones too', () => {
    const stated = massFromAmount(exact('0.0250 mol'), 'ZnSO4·7H2O', { weights: wall })
    expect(reviewAnswer(mass, '7.1889 g', { weights: wall }).verdict).toBe('agrees')
    expect(reviewAnswer(mass, stated, { weights: wall }).verdict).toBe('agrees')
    expect(reviewAnswer(mass, '7.1885 g', { weights: wall }).verdict).toBe('agrees')
  })

  it('also where molar masses were put in as numbers', () => {
    const put = exact('0.0250 mol').times(constant('287.541 g/mol', { role: 'molar mass', of: 'ZnSO4·7H2O' }))
    expect(reviewAnswer(put, '7.1889 g', { weights: wall }).verdict).toBe('agrees')
    const without = exact('0.0250 mol').times(constant('287.541 g/mol', { role: 'atomic weight' }))
    expect(reviewAnswer(without, '7.18853 g', { weights: wall }).verdict).toBe('agrees')
  })

  const measured = quantity('28.754 g')
    .dividedBy(quantity('0.1000 mol'))
    .named({ role: 'molar mass', of: 'ZnSO4·7H2O' })

  it('a molar mass that was measured stays what it is', () => {
    expect(reviewAnswer(measured, '300 g/mol', { weights: wall }).expected.toString()).toBe('287.5 g/mol')
  })

  it('but its slips are worked out with them, also where it was reviewed without before', () => {
    // less 7 × 18.015 g/mol of water, or 7 × 18.1 g/mol
    const heavy = atomicWeightSet({ name: 'heavy', values: { O: '16.084' }, extends: 'abridged' })
    expect(reviewAnswer(measured, '161.4 g/mol').candidates[0]?.slips).toEqual(['hydrate-weighed-as-anhydrous'])
    const { candidates } = reviewAnswer(measured, '160.8 g/mol', { weights: heavy })
    expect(candidates[0]?.slips).toEqual(['hydrate-weighed-as-anhydrous'])
  })

  it('slips stay with the atomic weights of the calculation where no others are given', () => {
    // the anhydrous salt has no hydrogen: 161.436 g/mol × 0.0250 mol
    const heavy = atomicWeightSet({ name: 'heavy', values: { H: '1.1' }, extends: 'abridged' })
    const own = massFromAmount(exact('0.0250 mol'), 'ZnSO4·7H2O', { weights: heavy })
    expect(reviewAnswer(own, '4.0359 g').candidates[0]?.slips).toEqual(['hydrate-weighed-as-anhydrous'])
  })

  it('slips are worked out with them', () => {
    expect(reviewAnswer(mass, '4.0362 g', { weights: wall }).candidates[0]?.slips).toEqual([
      'hydrate-weighed-as-anhydrous',
    ])
  })
})

describe('the answer on request', () => {
  it.each([
    { of: mass, stated: '4.036 g', answer: '7.1885 g' },
    { of: volume, stated: '1.5 mL', answer: '14.7 mL' },
    { of: exact('0.0123456 mol'), stated: '0.01111 mol', answer: '0.01235 mol' },
    { of: exact('0.0123456 mol'), stated: exact('0.5 mol'), answer: '0.0123 mol' },
  ])('instead of $stated is $answer', ({ of, stated, answer }) => {
    expect(answerOf(reviewAnswer(of as Quantity, stated))).toBe(answer)
  })

  it('is not given away by the advice', () => {
    expect(reviewAnswer(mass, '4.036 g').advice).not.toContain('7.18')
  })

  it('is plain data once the review has been JSON', () => {
    const stored = JSON.parse(JSON.stringify(reviewAnswer(mass, '4.036 g')))
    expect(stored.expected.value).toBe('7.188525')
    expect(stored.candidates[0].value).toMatchObject({ unit: 'g' })
  })
})

describe('what cannot be reviewed', () => {
  it.each([
    { stated: '', code: 'review/unreadable-answer', position: { start: 0, end: 0 } },
    { stated: '3,98 g', code: 'review/unreadable-answer', position: { start: 1, end: 2 }, hint: '3.98 g' },
    { stated: '3.98 gm', code: 'review/unreadable-answer', position: { start: 5, end: 7 } },
    { stated: '3.98 G', code: 'review/unreadable-answer', position: { start: 5, end: 6 }, hint: 'g' },
    { stated: 'four', code: 'review/unreadable-answer' },
    { stated: 3.98, code: 'review/unreadable-answer' },
    { stated: null, code: 'review/unreadable-answer' },
    { stated: undefined, code: 'review/unreadable-answer' },
    { stated: {}, code: 'review/unreadable-answer' },
  ])('the answer $stated is refused: $code', ({ stated, code, position, hint }) => {
    const failed = failure(() => reviewAnswer(mass, stated as string))
    expect(failed.code).toBe(code)
    if (position !== undefined) expect(failed.position).toEqual(position)
    if (hint !== undefined) expect(failed.hint).toBe(hint)
  })

  it('an expected answer that is none is refused', () => {
    expect(failure(() => reviewAnswer('7.19 g' as never, '7.19 g')).code).toBe('quantity/not-a-quantity')
    expect(failure(() => reviewAnswer(undefined as never, '7.19 g')).code).toBe('quantity/not-a-quantity')
  })

  it.each([null, 'half-up', 5])('options that are none are refused: %s', (options) => {
    expect(failure(() => reviewAnswer(mass, '7.19 g', options as never)).code).toBe('review/not-an-object')
  })
})

function failure(act: () => unknown): { code?: string; position?: unknown; hint?: string } {
  try {
    act()
  } catch (error) {
    return error as { code?: string }
  }
  return {}
}
