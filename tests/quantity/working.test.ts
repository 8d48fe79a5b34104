import { describe, expect, it } from 'vitest'
import {
  antilogarithm,
  constant,
  type Expression,
  exact,
  logarithm,
  mean,
  type Quantity,
  quantity,
  roundTo,
  squareRoot,
  sum,
  type WorkingName,
  type WorkingStep,
  weightedSum,
  working,
} from '../../src/quantity/index.js'
import { refusal } from './refusal.js'

const nameText = ({ symbol, index, of, label }: WorkingName): string =>
  symbol === undefined ? `${label}${index ?? ''}` : `${symbol}${index ?? ''}${of === undefined ? '' : `(${of})`}`

/** An expression in one line with all its brackets. */
function line(e: Expression, put: (index: number) => string): string {
  const inner = (part: Expression): string => line(part, put)
  switch (e.kind) {
    case 'name':
      return put(e.operand)
    case 'number':
      return e.text
    case 'sum':
      return e.terms.map(inner).join(' + ')
    case 'difference':
      return `${inner(e.left)} - ${inner(e.right)}`
    case 'product':
      return e.factors.map(inner).join(' * ')
    case 'fraction':
      return `[${inner(e.top)}]/[${inner(e.bottom)}]`
    case 'power':
      return `${inner(e.base)}^[${inner(e.exponent)}]`
    case 'root':
      return `root[${inner(e.of)}]`
    case 'call':
      return `${e.name}[${inner(e.of)}]`
  }
}

function formulaOf({ name, formula, terms }: WorkingStep): string {
  const put = (index: number): string => {
    const term = terms[index]
    return term?.name === undefined ? `${term?.value.number} ${term?.value.unit}`.trim() : nameText(term.name)
  }
  return `${name === undefined ? '' : `${nameText(name)} = `}${line(formula, put)}`
}

function numbersOf({ formula, terms }: WorkingStep): string {
  return line(formula, (index) => `${terms[index]?.value.number} ${terms[index]?.value.unit}`.trim())
}

const formulas = (q: Quantity): string[] => working(q).steps.map(formulaOf)

const tare = quantity('11.204 g', { symbol: 'm', of: 'dish' })
const net = quantity('14.459 g', { symbol: 'm', of: 'dish and ZnO' }).minus(tare).named({ symbol: 'm', of: 'ZnO' })
const molar = weightedSum([
  { times: 1, of: constant('65.38 g/mol', { symbol: 'Ar(Zn)', of: 'Zn' }) },
  { times: 1, of: constant('15.999 g/mol', { symbol: 'Ar(O)', of: 'O' }) },
]).named({ symbol: 'M', of: 'ZnO', label: 'molar mass' })
const amount = net.dividedBy(molar).named({ symbol: 'n', of: 'ZnO' })
const acid = quantity('3.00 mol/L', { symbol: 'c', of: 'H2SO4' })

describe('a calculation line by line', () => {
  const volume = amount
    .times(exact('1.1', { symbol: 'f' }))
    .dividedBy(acid)
    .to('mL')
    .named({ symbol: 'V', of: 'H2SO4' })
  const { steps, given } = working(volume)

  it('in reading order, each result before it is used', () => {
    expect(steps.map(formulaOf)).toEqual([
      'm(ZnO) = m(dish and ZnO) - m(dish)',
      'M(ZnO) = Ar(Zn) + Ar(O)',
      'n(ZnO) = [m(ZnO)]/[M(ZnO)]',
      'V(H2SO4) = [n(ZnO) * f]/[c(H2SO4)]',
    ])
  })

  it('with the numbers put in, results with guard digits', () => {
    expect(steps.map(numbersOf)).toEqual([
      '14.459 g - 11.204 g',
      '65.38 g/mol + 15.999 g/mol',
      '[3.255 g]/[81.379 g/mol]',
      '[0.0399980 mol * 1.1]/[3.00 mol/L]',
    ])
  })

  it('and the results, unrounded and shown', () => {
    expect(steps.map(({ unrounded, shown, rounded }) => [unrounded.number, shown.number, rounded])).toEqual([
      ['3.255', '3.255', false],
      ['81.379', '81.38', true],
      ['0.0399980', '0.04000', true],
      ['14.666', '14.7', true],
    ])
    expect(steps.at(-1)?.shown.unit).toBe('mL')
    expect(steps.at(-1)?.quantity).toBe(volume)
  })

  it('and what was given, in the order in which it is needed', () => {
    expect(given.map(({ name }) => name && nameText(name))).toEqual([
      'm(dish and ZnO)',
      'm(dish)',
      'Ar(Zn)',
      'Ar(O)',
      'f',
      'c(H2SO4)',
    ])
  })

  it('with more guard digits, or none', () => {
    const last = (guardDigits: number): string | undefined =>
      working(volume, { guardDigits }).steps.at(-1)?.unrounded.number
    expect([last(0), last(1), last(5)]).toEqual(['14.7', '14.67', '14.665946'])
    expect(numbersOf(working(volume, { guardDigits: 0 }).steps.at(-1) as WorkingStep)).toBe(
      '[0.04000 mol * 1.1]/[3.00 mol/L]',
    )
  })
})

describe('what gets a line', () => {
  const [x, y, z] = [
    quantity('1.5', { symbol: 'x' }),
    quantity('2.5', { symbol: 'y' }),
    quantity('3.5', { symbol: 'z' }),
  ]

  it('not what has no name and is used once', () => {
    expect(formulas(x.times(y).times(z).named({ symbol: 'w' }))).toEqual(['w = x * y * z'])
    expect(formulas(x.dividedBy(y).dividedBy(z).named({ symbol: 'w' }))).toEqual(['w = [x]/[y * z]'])
  })

  it('what is used twice, under a symbol of its own', () => {
    const shared = x.plus(y)
    expect(formulas(shared.times(shared).named({ symbol: 'w' }))).toEqual(['x2 = x1 + y', 'w = x2 * x2'])
    const mass = quantity('3.0 g').plus(quantity('4.0 g'))
    expect(formulas(mass.dividedBy(mass).named({ symbol: 'w' }))).toEqual(['m = 3.0 g + 4.0 g', 'w = [m]/[m]'])
  })

  it('each only once, however often it is used, under whatever name', () => {
    const total = x.plus(y)
    const named = total.named({ symbol: 't' })
    expect(formulas(total.times(named).times(total).named({ symbol: 'w' }))).toEqual(['t = x + y', 'w = t * t * t'])
  })

  it('what would make a line too long', () => {
    let q: Quantity<'ratio'> = x
    for (let count = 0; count < 100; count += 1) q = q.plus(y)
    const { steps } = working(q.named({ symbol: 'w' }))
    expect(steps.length).toBeGreaterThan(4)
    expect(steps.length).toBeLessThan(20)
    for (const { terms } of steps) expect(terms.length).toBeLessThan(30)
  })

  it('of twenty thousand results, one within the other, does not exhaust the stack', () => {
    let q: Quantity<'ratio'> = x
    for (let count = 0; count < 20_000; count += 1) q = y.minus(q)
    expect(working(q).steps.length).toBeGreaterThan(500)
  })

  it('a sum of many in one line', () => {
    const many = sum(Array.from({ length: 20_000 }, () => quantity('1.0 g')))
    expect(working(many).steps[0]?.terms.length).toBe(20_000)
  })

  it('nothing for a number that was given', () => {
    expect(working(x)).toMatchObject({
      steps: [],
      given: [{ name: { symbol: 'x' }, value: { number: '1.5', unit: '' } }],
    })
    expect(working(quantity('1.5 g'))).toEqual({ steps: [], given: [] })
  })
})

describe('the same quantity in another form', () => {
  const volume = quantity('25.0 mL', { symbol: 'V' })

  it('is put in with the unit that is needed, under its name', () => {
    const [step] = working(volume.times(acid).named({ symbol: 'n' })).steps as [WorkingStep]
    expect(formulaOf(step)).toBe('n = V * c(H2SO4)')
    expect(numbersOf(step)).toBe('0.0250 L * 3.00 mol/L')
  })

  it('is the result of the same line', () => {
    const [step] = working(volume.times(acid).named({ symbol: 'n' }).to('mmol')).steps as [WorkingStep]
    expect(formulaOf(step)).toBe('n = V * c(H2SO4)')
    expect(step).toMatchObject({ unrounded: { number: '75.0', unit: 'mmol' }, shown: { number: '75.0', unit: 'mmol' } })
  })

  it('rounded on purpose comes from the unrounded', () => {
    const [step] = working(roundTo(amount, { figures: 2 })).steps.slice(-1) as [WorkingStep]
    expect(formulaOf(step)).toBe('n(ZnO) = [m(ZnO)]/[M(ZnO)]')
    expect(step).toMatchObject({ unrounded: { number: '0.0399980' }, shown: { number: '0.040' }, rounded: true })
  })

  it('of a number that was given has a line', () => {
    const [step] = working(volume.to('L')).steps as [WorkingStep]
    expect(formulaOf(step)).toBe('V = V')
    expect(numbersOf(step)).toBe('25.0 mL')
    expect(step).toMatchObject({ unrounded: { number: '0.0250', unit: 'L' }, rounded: false })
    expect(formulas(quantity('25.0 mL').to('L'))).toEqual(['25.0 mL'])
    const [rough] = working(roundTo(volume, { figures: 2, rule: 'half-up' })).steps as [WorkingStep]
    expect(rough).toMatchObject({ unrounded: { number: '25.0' }, shown: { number: '25' }, rounded: false })
  })

  it('under another name is another quantity', () => {
    const litres = volume.to('L').named({ symbol: 'V', of: 'flask' })
    expect(formulas(litres)).toEqual(['V(flask) = V'])
  })

  it('under a label alone, too', () => {
    const mass = quantity('1.00 g').plus(quantity('2.00 g')).named({ label: 'total' })
    expect(formulas(mass.to('mg').named({ label: 'total' }))).toEqual(['total = 1.00 g + 2.00 g'])
    expect(formulas(mass.to('mg').named({ label: 'in milligrams' }))).toEqual([
      'total = 1.00 g + 2.00 g',
      'in milligrams = total',
    ])
  })
})

describe('names', () => {
  it('are numbered where several quantities have one', () => {
    const [first, second] = [quantity('1.00 g', { symbol: 'm' }), quantity('2.00 g', { symbol: 'm' })]
    expect(formulas(first.plus(second).named({ symbol: 'm' }))).toEqual(['m3 = m1 + m2'])
    const words = quantity('1.00 g', { label: 'mass' }).plus(quantity('2.00 g', { label: 'mass' }))
    expect(formulas(words.named({ symbol: 'm' }))).toEqual(['m = mass1 + mass2'])
  })

  it('of one measurement in two places are one', () => {
    const again = quantity('11.204 g', { symbol: 'm', of: 'dish', id: 'tare' })
    const same = quantity('11.204 g', { symbol: 'm', of: 'dish', id: 'tare' })
    expect(formulas(again.plus(same).named({ symbol: 'm' }))).toEqual(['m = m(dish) + m(dish)'])
  })

  it('a last result without one has none', () => {
    expect(formulas(quantity('3.98 g').dividedBy(quantity('79.545 g/mol')))).toEqual(['[3.98 g]/[79.545 g/mol]'])
  })

  it('the name of the last result is preferred to an earlier one', () => {
    const early = tare.plus(tare).named({ symbol: 'm', of: 'two dishes' })
    const both = early.minus(early.named({ symbol: 'm', of: 'twice' }))
    expect(formulas(both.plus(early))).toContain('m(two dishes) = m(dish) + m(dish)')
    expect(formulas(early.named({ symbol: 'w', of: 'both' }))).toEqual(['w(both) = m(dish) + m(dish)'])
  })
})

describe('every rule', () => {
  const x = quantity('2.50', { symbol: 'x' })
  it.each([
    { q: squareRoot(x), is: 'root[x]' },
    { q: logarithm(x), is: 'log10[x]' },
    { q: antilogarithm(x), is: '10^[x]' },
    { q: mean([x, quantity('3.50', { symbol: 'y' })]), is: '[x + y]/[2]' },
    { q: weightedSum([{ times: 2, of: x }]), is: '2 * x' },
    { q: exact(1).times(x).times(exact(1)), is: 'x' },
    { q: exact(1).dividedBy(x), is: '[1]/[x]' },
  ])('$is', ({ q, is }) => expect(formulas(q)).toEqual([is]))
})

describe('exact results', () => {
  it.each([
    { q: exact(2).times(exact(3)), unrounded: '6', shown: '6', rounded: false },
    { q: exact(1).dividedBy(exact(3)), unrounded: '0.3333333333', shown: '0.3333333333', rounded: true },
  ])('$shown', ({ q, unrounded, shown, rounded }) => {
    expect(working(q).steps).toMatchObject([{ unrounded: { number: unrounded }, shown: { number: shown }, rounded }])
  })
})

describe('what is refused', () => {
  it.each([
    { call: () => working(5 as never), code: 'quantity/not-a-quantity' },
    { call: () => working(amount, null as never), code: 'quantity/unknown-option' },
    { call: () => working(amount, 2 as never), code: 'quantity/unknown-option' },
    { call: () => working(amount, { guardDigits: -1 }), code: 'quantity/unknown-option' },
    { call: () => working(amount, { guardDigits: 11 }), code: 'quantity/unknown-option' },
    { call: () => working(amount, { guardDigits: '2' as never }), code: 'quantity/unknown-option' },
  ])('$code', ({ call, code }) => expect(refusal(call).code).toBe(code))
})
