import { describe, expect, it } from 'vitest'
import {
  antilogarithm,
  exact,
  logarithm,
  mean,
  type Quantity,
  quantity,
  roundTo,
  squareRoot,
  standardUncertainty,
  sum,
  uncertaintyBudget,
  weightedSum,
} from '../../src/quantity/index.js'
import { refusal } from './refusal.js'

const ratio = (text: string): Quantity<'ratio'> => quantity(text) as Quantity<'ratio'>
const u = (q: Quantity): string => standardUncertainty(q).toString()

describe('the combined standard uncertainty', () => {
  const [x, y] = [ratio('3.0(1)'), ratio('4.0(2)')]
  const tare = quantity('11.2040(2) g')
  it.each([
    { what: 'an input', q: quantity('3.9772(21) g'), is: '0.0021 g' },
    { what: 'an exact number', q: exact('3 g'), is: '0 g' },
    { what: 'a sum', q: x.plus(y), is: '0.22' },
    { what: 'a difference', q: x.minus(y), is: '0.22' },
    { what: 'a product', q: x.times(y), is: '0.72' },
    { what: 'a quotient', q: x.dividedBy(y), is: '0.045' },
    { what: 'a number less itself', q: x.minus(x), is: '0' },
    { what: 'a number over itself', q: x.dividedBy(x), is: '0' },
    { what: 'a number twice', q: x.plus(x), is: '0.20' },
    { what: 'two alike but independent', q: x.plus(ratio('3.0(1)')), is: '0.14' },
    { what: 'a renamed copy', q: x.minus(x.named({ label: 'again' })), is: '0' },
    { what: 'a mean', q: mean([x, ratio('3.2(1)')]), is: '0.071' },
    { what: 'atoms counted', q: weightedSum([{ times: 8, of: quantity('12.0107(5) g/mol') }]), is: '0.0040 g/mol' },
    { what: 'a root', q: squareRoot(y), is: '0.050' },
    { what: 'a logarithm', q: logarithm(y), is: '0.022' },
    { what: 'an antilogarithm', q: antilogarithm(ratio('-3.72(3)')), is: '0.000013' },
    { what: 'another unit', q: quantity('25.00(3) mL').to('L'), is: '0.000030 L' },
    { what: 'a rounded number', q: roundTo(x, { figures: 1 }), is: '0.10' },
    { what: 'degrees Celsius, in kelvins', q: quantity('25.0(2) degC'), is: '0.20 K' },
    { what: 'two nets of one tare', q: sum([quantity('18.6320(2) g').minus(tare), tare]), is: '0.00020 g' },
    {
      what: 'one id for one measurement, whichever object',
      q: quantity('3.0(1)', { id: 'a' }).minus(quantity('3.0(1)', { id: 'a' })),
      is: '0',
    },
  ])('of $what is $is', ({ q, is }) => expect(u(q)).toBe(is))

  it('keeps more digits than it shows', () => {
    expect(standardUncertainty(x.minus(y)).value.toString()).toBe('0.223606797749979')
  })

  it('holds for numbers whose squares are beyond a double', () => {
    expect(u(ratio('1.0(1)e100').plus(ratio('2.0(1)e100')))).toBe('1.4e99')
    expect(u(ratio('1.0(1)e-99').plus(ratio('2.0(1)e-99')))).toBe('1.4e-100')
  })

  it('of a graph with more paths than atoms takes no time', () => {
    let q: Quantity = ratio('1.0(1)')
    for (let count = 0; count < 200; count += 1) q = q.plus(q)
    expect(u(q)).toBe('1.6e59')
  })

  it('of a hundred thousand steps does not exhaust the stack', () => {
    let q: Quantity = ratio('1.0(1)')
    for (let count = 0; count < 100_000; count += 1) q = q.plus(exact(1))
    expect(u(q)).toBe('0.10')
  })
})

describe('an input without an uncertainty', () => {
  it('contributes nothing, where a derivative does not exist, too', () => {
    expect(u(squareRoot(exact(0)))).toBe('0')
    expect(u(squareRoot(exact(0)).plus(ratio('3.0(1)')))).toBe('0.10')
    expect(u(squareRoot(exact(4).minus(exact(4))).plus(ratio('3.0(1)')))).toBe('0.10')
    expect(u(squareRoot(quantity('0.0', { uncertainty: '0' })).plus(ratio('3.0(1)')))).toBe('0.10')
  })

  it('passes none where there is no derivative', () => {
    const error = refusal(() => u(squareRoot(ratio('0.0(1)'))))
    expect(error).toMatchObject({ code: 'quantity/no-derivative', found: '0.0' })
    expect(refusal(() => u(squareRoot(ratio('0.0(1)')).times(exact(0)))).code).toBe('quantity/no-derivative')
  })

  it('is named', () => {
    const mass = quantity('3.98 g', { label: 'mass of zinc oxide' })
    const molar = quantity('81.379 g/mol', { symbol: 'M', of: 'ZnO' })
    const bare = quantity('1.5', { symbol: 'f' })
    const error = refusal(() => u(mass.dividedBy(molar).times(bare).times(quantity('1.25'))))
    expect(error.code).toBe('quantity/uncertainty-not-stated')
    expect(error.message).toBe('No uncertainty is stated for mass of zinc oxide, M of ZnO, f, 1.25.')
  })

  it('is named once, and not a hundred times', () => {
    const many = Array.from({ length: 100 }, (_, index) => quantity(`${index}.5 g` as string) as Quantity<'mass'>)
    expect(refusal(() => u(sum(many))).message).toMatch(/7\.5 g and 92 more\.$/)
    const mass = quantity('3.98 g', { label: 'oxide' })
    expect(refusal(() => u(sum([mass, mass.named({ symbol: 'm' })]))).found).toBe('oxide')
  })

  it.each([
    { unstated: 'ignore', is: '0 g' },
    { unstated: 'implied', is: '0.0029 g' },
    { unstated: 'last-digit', is: '0.010 g' },
  ] as const)('counts as $unstated: $is', ({ unstated, is }) => {
    expect(standardUncertainty(quantity('3.98 g'), { unstated }).toString()).toBe(is)
    expect(standardUncertainty(exact('3.98 g'), { unstated }).toString()).toBe('0 g')
    expect(standardUncertainty(quantity('3.98(5) g'), { unstated }).toString()).toBe('0.050 g')
  })
})

describe('the budget', () => {
  const mass = quantity('3.9772 g', { label: 'mass', uncertainty: { standard: '0.003 g', degreesOfFreedom: 9 } })
  const volume = quantity('100.00(4) mL', { label: 'volume' })
  const budget = uncertaintyBudget(mass.dividedBy(volume))

  it('has one line for each input, the largest contribution first', () => {
    expect(budget.contributions.map(({ input }) => input.naming.label)).toEqual(['mass', 'volume'])
    const [first] = budget.contributions
    expect(first?.sensitivity).toBeCloseTo(0.01, 12)
    expect(first?.inputUncertainty.toString()).toBe('0.0030 g')
    expect(first?.standardUncertainty.toString()).toBe('0.000030 g/mL')
    expect(first?.degreesOfFreedom).toBe(9)
    expect(budget.contributions[1]?.degreesOfFreedom).toBe(Number.POSITIVE_INFINITY)
  })

  it('has shares that make one', () => {
    expect(budget.contributions.reduce((total, { share }) => total + share, 0)).toBeCloseTo(1, 12)
  })

  it('knows the effective degrees of freedom', () => {
    const share = budget.contributions[0]?.share as number
    expect(budget.degreesOfFreedom).toBeCloseTo(9 / share ** 2, 9)
    expect(uncertaintyBudget(volume).degreesOfFreedom).toBe(Number.POSITIVE_INFINITY)
  })

  it('leaves out what is exact or certain', () => {
    expect(uncertaintyBudget(exact(2).times(mass)).contributions.length).toBe(1)
    expect(uncertaintyBudget(exact('2 g'))).toMatchObject({
      contributions: [],
      degreesOfFreedom: Number.POSITIVE_INFINITY,
    })
  })

  it('has shares of nothing where all cancels', () => {
    const gone = uncertaintyBudget(mass.minus(mass))
    expect(gone.contributions.map(({ share }) => share)).toEqual([0])
  })

  it('cannot be changed', () => {
    expect(Object.isFrozen(budget)).toBe(true)
    expect(Object.isFrozen(budget.contributions)).toBe(true)
    expect(Object.isFrozen(budget.contributions[0])).toBe(true)
  })
})

describe('correlated inputs', () => {
  const [x, y] = [quantity('1.0(3)', { id: 'x' }), quantity('2.0(4)', { id: 'y' })]
  const between = [x, y] as const
  it.each([
    { coefficient: 1, plus: '0.70', minus: '0.10' },
    { coefficient: 0, plus: '0.50', minus: '0.50' },
    { coefficient: -1, plus: '0.10', minus: '0.70' },
    { coefficient: 0.5, plus: '0.61', minus: '0.36' },
  ])('by $coefficient', ({ coefficient, plus, minus }) => {
    const correlations = [{ between, coefficient }]
    expect(standardUncertainty(x.plus(y), { correlations }).toString()).toBe(plus)
    expect(standardUncertainty(x.minus(y), { correlations }).toString()).toBe(minus)
  })

  it('share what they have in common', () => {
    const { contributions } = uncertaintyBudget(x.plus(y), { correlations: [{ between, coefficient: 0.5 }] })
    expect(contributions.map(({ share }) => share.toFixed(4))).toEqual(['0.5946', '0.4054'])
  })

  it('leave the degrees of freedom unlimited if none is limited', () => {
    const budget = uncertaintyBudget(x.plus(y), { correlations: [{ between, coefficient: 0.5 }] })
    expect(budget.degreesOfFreedom).toBe(Number.POSITIVE_INFINITY)
  })

  it('leave the degrees of freedom open if one is limited', () => {
    const limited = quantity('1.0', { uncertainty: { standard: '0.3', degreesOfFreedom: 4 } })
    const pair = [limited, y] as const
    const budget = uncertaintyBudget(limited.plus(y), { correlations: [{ between: pair, coefficient: 0.5 }] })
    expect(budget.degreesOfFreedom).toBeUndefined()
    const alone = uncertaintyBudget(limited, { correlations: [{ between: pair, coefficient: 0.5 }] })
    expect(alone.degreesOfFreedom).toBeCloseTo(4, 12)
  })

  it('cancel to nothing rather than below', () => {
    const [a, b] = [ratio('0.3(1)'), ratio('0.3(1)')]
    const third = ratio('0.3(1)')
    const correlations = [{ between: [a, b] as const, coefficient: 1 }]
    expect(standardUncertainty(a.minus(b), { correlations }).toString()).toBe('0')
    expect(standardUncertainty(third, { correlations }).toString()).toBe('0.10')
  })

  it.each([
    { correlations: 'all', code: 'quantity/bad-correlation' },
    { correlations: [null], code: 'quantity/bad-correlation' },
    { correlations: [{ coefficient: 1 }], code: 'quantity/bad-correlation' },
    { correlations: [{ between: [x], coefficient: 1 }], code: 'quantity/bad-correlation' },
    { correlations: [{ between: [x, x], coefficient: 1 }], code: 'quantity/bad-correlation' },
    { correlations: [{ between, coefficient: 1.01 }], code: 'quantity/bad-correlation' },
    { correlations: [{ between, coefficient: Number.NaN }], code: 'quantity/bad-correlation' },
    { correlations: [{ between, coefficient: '1' }], code: 'quantity/bad-correlation' },
    { correlations: [{ between: [x, x.plus(y)], coefficient: 1 }], code: 'quantity/bad-correlation' },
    { correlations: [{ between: [x, 5], coefficient: 1 }], code: 'quantity/not-a-quantity' },
    {
      correlations: [
        { between, coefficient: 1 },
        { between: [y, x], coefficient: 1 },
      ],
      code: 'quantity/bad-correlation',
    },
    {
      correlations: [
        { between, coefficient: 1 },
        { between, coefficient: 0.5 },
      ],
      code: 'quantity/bad-correlation',
    },
  ])('$correlations: $code', ({ correlations, code }) => {
    expect(refusal(() => standardUncertainty(x.plus(y), { correlations } as never)).code).toBe(code)
  })

  it('that cannot hold at the same time are refused', () => {
    const [a, b, c] = [ratio('1.0(1)'), ratio('1.0(1)'), ratio('1.0(1)')]
    const correlations = [
      { between: [a, b] as const, coefficient: -1 },
      { between: [b, c] as const, coefficient: -1 },
      { between: [a, c] as const, coefficient: -1 },
    ]
    const total = a.plus(b).plus(c)
    expect(refusal(() => standardUncertainty(total, { correlations })).code).toBe('quantity/bad-correlation')
  })
})

describe('what is refused', () => {
  it.each([
    { call: () => standardUncertainty(5 as never), code: 'quantity/not-a-quantity' },
    { call: () => standardUncertainty(ratio('1.0(1)'), null as never), code: 'quantity/unknown-option' },
    { call: () => standardUncertainty(ratio('1.0'), { unstated: 'guess' as never }), code: 'quantity/unknown-option' },
    { call: () => uncertaintyBudget(ratio('1.0'), 'ignore' as never), code: 'quantity/unknown-option' },
    {
      call: () => u(quantity('1.0(1)', { id: 'a' }).plus(quantity('1.0(2)', { id: 'a' }))),
      code: 'quantity/identity-conflict',
    },
    {
      call: () => u(quantity('1.0(1) g', { id: 'a' }).plus(quantity('1.1(1) g', { id: 'a' }))),
      code: 'quantity/identity-conflict',
    },
    {
      call: () => u(quantity('1.0(1) g', { id: 'a' }).plus(quantity('1.0(1) mg', { id: 'a' }))),
      code: 'quantity/identity-conflict',
    },
    {
      call: () => u(ratio('1e90').plus(ratio('1e-60(1)')).dividedBy(ratio('1e-50(1)')).times(exact('1e-90'))),
      code: 'quantity/uncertainty-not-stated',
    },
    {
      call: () => {
        const large = exact('1e70').times(exact('1e70'))
        return u(quantity('1.0(1)').times(large).minus(large).times(exact('1e90')))
      },
      code: 'quantity/out-of-range',
    },
  ])('$code', ({ call, code }) => expect(refusal(call).code).toBe(code))
})
