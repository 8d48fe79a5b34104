import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  antilogarithm,
  calculationFromJSON,
  calculationToJSON,
  constant,
  cosine,
  exact,
  exponential,
  fromJSON,
  fromReadings,
  logarithm,
  mean,
  naturalLogarithm,
  power,
  type Quantity,
  quantity,
  reconsider,
  roundTo,
  sine,
  squareRoot,
  standardUncertainty,
  toJSON,
  weightedSum,
  working,
} from '../../src/quantity/index.js'
import { refusal } from './refusal.js'

/** As a program gets it that stores text. */
const stored = (json: unknown): unknown => JSON.parse(JSON.stringify(json))
const again = (q: Quantity): Quantity => fromJSON(stored(toJSON(q, { origin: true })))

describe('a number that was saved', () => {
  it.each<{ q: Quantity }>([
    { q: quantity('3.980 g') },
    { q: quantity('250 mL') },
    { q: quantity('250 mL', { wholeNumberZeros: 'significant' }) },
    { q: quantity('0.00 g') },
    { q: quantity('0e3 g') },
    { q: quantity('9.96').plus(quantity('0.0')).times(quantity('1.0')) },
    { q: quantity('1.5e-9 g') },
    { q: quantity('6.02e23') },
    { q: quantity('25.00(3) mL') },
    { q: quantity('25.0 degC') },
    { q: exact('0.0400 mol') },
    { q: quantity('3.98 g').dividedBy(quantity('79.545 g/mol')) },
  ])('$q', ({ q }) => {
    for (const json of [stored(q), stored(toJSON(q))]) {
      const read = fromJSON(json)
      expect(read.toString()).toBe(q.toString())
      expect(read.value.eq(q.value)).toBe(true)
      expect(read.significantFigures).toBe(q.significantFigures)
      expect(toJSON(read)).toEqual(toJSON(q))
    }
  })
})

describe('a calculation that was saved', () => {
  const x = quantity('2.50(1)', { symbol: 'x', id: 'x' })
  const y = quantity('3.50', { uncertainty: { standard: '0.02', degreesOfFreedom: 4 }, label: 'y' })
  const every = [
    x.plus(y),
    x.minus(y),
    x.times(y),
    x.dividedBy(y),
    x.to('%'),
    quantity('25.0(2) degC').to('K'),
    quantity('1.50(1) h').to('s').to('h'),
    mean([x, y]),
    weightedSum([
      { times: 2, of: x },
      { times: 0.5, of: y },
    ]),
    power(x, 3),
    squareRoot(x),
    logarithm(x),
    antilogarithm(x),
    naturalLogarithm(x),
    exponential(x),
    sine(x),
    cosine(x),
    roundTo(x, { figures: 2, rule: 'half-up' }),
    roundTo(x, { place: '0.05' }),
    reconsider(quantity('1.0(1) L').to('mL'), { conversion: { to: 'mL' }, factor: '1' }),
    fromReadings(['1.01 g', '1.03 g', '1.00 g'], { label: 'crop' }),
    constant('8.314462618 J/(mol K)', { uncertainty: '0 J/(mol K)' }),
    quantity('250 mL', { uncertainty: { tolerance: '0.15 mL' } }),
    quantity('250 mL', { uncertainty: { halfWidth: '0.15 mL', distribution: 'rectangular' } }),
    quantity('250 mL', { uncertainty: { halfWidth: '0.15 mL', distribution: 'arcsine' } }),
    x.plus(y).times(x.times(y)),
    power(x, 2).plus(power(x, 3)),
  ]

  it.each(every.map((q) => ({ rule: q.rule, q })))('$rule: $q', ({ q }) => {
    const read = again(q)
    expect(read.toString()).toBe(q.toString())
    expect(read.value.eq(q.value)).toBe(true)
    expect(standardUncertainty(read).value.eq(standardUncertainty(q).value)).toBe(true)
    expect(toJSON(read, { origin: true })).toEqual(toJSON(q, { origin: true }))
    expect(stored(working(read))).toEqual(stored(working(q)))
  })

  it('still knows that the tare is shared', () => {
    const tare = quantity('11.2040(2) g')
    const [a, b] = [quantity('18.6320(2) g').minus(tare), quantity('19.1100(2) g').minus(tare)]
    const [c, d] = calculationFromJSON(stored(calculationToJSON([a, b]))) as [Quantity, Quantity]
    expect(c.operands[1]).toBe(d.operands[1])
    expect(standardUncertainty(d.minus(c)).toString()).toBe('0.00028 g')
  })

  it('knows one measurement in two documents by its id', () => {
    const tare = quantity('11.2040(2) g', { id: 'tare 7' })
    const [a, b] = [quantity('18.6320(2) g').minus(tare), quantity('19.1100(2) g').minus(tare)].map(again)
    expect(standardUncertainty((b as Quantity).minus(a as Quantity)).toString()).toBe('0.00028 g')
  })

  it('keeps renamed copies of a result together', () => {
    const total = x.plus(y)
    const product = total.named({ symbol: 's' }).times(total)
    expect(working(again(product)).steps.length).toBe(2)
  })

  it('of twenty thousand steps is read without exhausting the stack', () => {
    let q: Quantity<'ratio'> = x
    for (let count = 0; count < 20_000; count += 1) q = q.plus(exact(1))
    expect(again(q).value.eq(q.value)).toBe(true)
  })
})

const good = (): Record<string, unknown> =>
  stored(toJSON(quantity('3.0 g').plus(quantity('4.0 g')), { origin: true })) as never
const changed = (path: readonly (string | number)[], value: unknown): unknown => {
  const document = good()
  const last = path.at(-1) as string
  const parent = path.slice(0, -1).reduce<Record<string, unknown>>((one, key) => one[key] as never, document)
  if (value === undefined) delete parent[last]
  else parent[last] = value
  return document
}

/** The second term is the first measurement, in another unit. */
function otherUnit(): unknown {
  const document = changed(['nodes', 1, 'measurement'], 0) as { nodes: object[] }
  document.nodes[1] = { measurement: 0, value: '3.0', unit: 'mg' }
  return document
}

describe('what is just within bounds', () => {
  it.each<{ json: unknown; is: string }>([
    ...['-1', '12.50', '1e5', '1e+5', '1.5e-9', '0'].map((value) => ({
      json: { value, unit: 'g', exact: true },
      is: `${exact(`${value.replace('+', '')} g` as '1 g')}`,
    })),
    { json: { value: '1'.repeat(140), unit: '1', exact: true }, is: `1.${'1'.repeat(139)}e139` },
    { json: { value: `1.${'1'.repeat(198)}`, unit: '1', exact: true }, is: `1.${'1'.repeat(198)}` },
    { json: { value: '3.98', unit: 'g', significantFigures: 200 }, is: `3.98${'0'.repeat(197)} g` },
    { json: { value: '3.98', unit: 'g', significantFigures: 0 }, is: '0e1 g' },
    { json: changed(['nodes', 2, 'value'], `7.${'0'.repeat(25)}1`), is: '7.0 g' },
    { json: changed(['nodes', 0, 'label'], 'x'.repeat(2000)), is: '7.0 g' },
    { json: changed(['measurements', 0, 'place'], 200), is: '0e200 g' },
  ])('$is', ({ json, is }) => expect(fromJSON(json).toString()).toBe(is))
})

describe('what is no document of a quantity', () => {
  it.each<{ json: unknown; path: readonly (string | number)[] }>([
    { json: null, path: [] },
    { json: undefined, path: [] },
    { json: '3.98 g', path: [] },
    { json: 3.98, path: [] },
    { json: [], path: [] },
    { json: {}, path: ['value'] },
    { json: { format: 'saltwright/quantity@2', value: '1', unit: 'g', exact: true }, path: ['format'] },
    { json: { value: '3,98', unit: 'g', exact: true }, path: ['value'] },
    { json: { value: 3.98, unit: 'g', exact: true }, path: ['value'] },
    { json: { value: 'NaN', unit: 'g', exact: true }, path: ['value'] },
    { json: { value: '1e999999999', unit: 'g', exact: true }, path: ['value'] },
    { json: { value: '1'.repeat(1_000_000), unit: 'g', exact: true }, path: ['value'] },
    { json: { value: '1', unit: 'gm', exact: true }, path: ['unit'] },
    { json: { value: '1', unit: '', exact: true }, path: ['unit'] },
    { json: { value: '1', unit: '__proto__', exact: true }, path: ['unit'] },
    { json: { value: '1', unit: 5, exact: true }, path: ['unit'] },
    { json: { value: '1', unit: 'g' }, path: ['significantFigures'] },
    { json: { value: '1', unit: 'g', exact: false }, path: ['exact'] },
    { json: { value: '1', unit: 'g', significantFigures: 1.5 }, path: ['significantFigures'] },
    { json: { value: '1', unit: 'g', significantFigures: -1 }, path: ['significantFigures'] },
    { json: { value: '1', unit: 'g', significantFigures: 1e9 }, path: ['significantFigures'] },
    { json: { value: '1', unit: 'g', significantFigures: 1, uncertainty: '-1' }, path: ['uncertainty'] },
    { json: { value: '1', unit: 'g', exact: true, uncertainty: '1' }, path: ['uncertainty'] },
    { json: { value: '1', unit: 'g', exact: true, label: 'x' }, path: ['label'] },
    { json: JSON.parse('{"value":"1","unit":"g","exact":true,"__proto__":{"x":1}}'), path: ['__proto__'] },
    { json: { value: '3.98', unit: 'g', exact: true, place: -2 }, path: ['place'] },
    { json: { value: '3.98', unit: 'g', significantFigures: 3, place: -1 }, path: ['place'] },
    { json: { value: '3.98', unit: 'g', significantFigures: 3, place: '-2' }, path: ['place'] },
    { json: { value: '0.00', unit: 'g', significantFigures: 1, place: -1 }, path: ['place'] },
    { json: changed(['measurements'], undefined), path: ['measurements'] },
    { json: changed(['measurements'], {}), path: ['measurements'] },
    { json: changed(['measurements'], { length: 5 }), path: ['measurements'] },
    { json: changed(['measurements'], new Array(4_000_000_000)), path: ['measurements'] },
    { json: changed(['measurements', 0, 'kind'], 'guessed'), path: ['measurements', 0, 'kind'] },
    { json: changed(['measurements', 0, 'place'], '1'), path: ['measurements', 0, 'place'] },
    { json: changed(['measurements', 0, 'ambiguous'], false), path: ['measurements', 0, 'ambiguous'] },
    { json: changed(['measurements', 0, 'id'], ''), path: ['measurements', 0, 'id'] },
    { json: changed(['measurements', 0, 'id'], 'x'.repeat(3000)), path: ['measurements', 0, 'id'] },
    { json: changed(['measurements', 0, 'uncertainty'], '0.1'), path: ['measurements', 0, 'uncertainty'] },
    {
      json: changed(['measurements', 0, 'uncertainty'], { standard: '0.1', distribution: 'wide' }),
      path: ['measurements', 0, 'uncertainty', 'distribution'],
    },
    {
      json: changed(['measurements', 0, 'uncertainty'], {
        standard: '0.1',
        distribution: 'normal',
        degreesOfFreedom: 0,
      }),
      path: ['measurements', 0, 'uncertainty', 'degreesOfFreedom'],
    },
    {
      json: changed(['measurements', 0], {
        kind: 'exact',
        place: 0,
        uncertainty: { standard: '1', distribution: 'normal' },
      }),
      path: ['measurements', 0, 'uncertainty'],
    },
    { json: changed(['nodes'], 'none'), path: ['nodes'] },
    { json: changed(['nodes', 0], null), path: ['nodes', 0] },
    { json: changed(['nodes', 0, 'measurement'], 2), path: ['nodes', 0, 'measurement'] },
    { json: changed(['nodes', 0, 'measurement'], '0'), path: ['nodes', 0, 'measurement'] },
    { json: changed(['nodes', 0, 'rule'], 'sum'), path: ['nodes', 0, 'rule'] },
    { json: changed(['nodes', 0, 'operands'], []), path: ['nodes', 0, 'operands'] },
    { json: changed(['nodes', 0, 'settings'], {}), path: ['nodes', 0, 'settings'] },
    { json: changed(['nodes', 1, 'measurement'], 0), path: ['nodes', 1] },
    { json: otherUnit(), path: ['nodes', 1] },
    { json: changed(['measurements', 0, 'place'], 201), path: ['measurements', 0, 'place'] },
    { json: changed(['measurements', 0, 'place'], -201), path: ['measurements', 0, 'place'] },
    { json: changed(['nodes', 2, 'value'], `7.${'0'.repeat(23)}1`), path: ['nodes', 2, 'value'] },
    { json: changed(['nodes', 0, 'label'], 'x'.repeat(2001)), path: ['nodes', 0, 'label'] },
    { json: { value: '1', unit: 'g', significantFigures: 201 }, path: ['significantFigures'] },
    { json: { value: '1'.repeat(201), unit: 'g', exact: true }, path: ['value'] },
    { json: { value: `1.${'1'.repeat(199)}`, unit: 'g', exact: true }, path: ['value'] },
    ...['', '1.', '.5', '+1', '1e', '1e+', 'e5', '-', '1.5.2', ' 1', '1 ', '0x1', '1e141'].map((value) => ({
      json: { value, unit: 'g', exact: true },
      path: ['value'],
    })),
    { json: changed(['nodes', 0, 'label'], 5), path: ['nodes', 0, 'label'] },
    { json: changed(['nodes', 2, 'rule'], 'guess'), path: ['nodes', 2, 'rule'] },
    { json: changed(['nodes', 2, 'rule'], 'constructor'), path: ['nodes', 2, 'rule'] },
    { json: changed(['nodes', 2, 'rule'], 'product'), path: ['nodes', 2] },
    { json: changed(['nodes', 2, 'rule'], 'difference'), path: ['nodes', 2, 'value'] },
    { json: changed(['nodes', 2, 'unit'], 'mg'), path: ['nodes', 2] },
    { json: changed(['nodes', 2, 'value'], '7.1'), path: ['nodes', 2, 'value'] },
    { json: changed(['nodes', 2, 'operands'], [0, 2]), path: ['nodes', 2, 'operands', 1] },
    { json: changed(['nodes', 2, 'operands'], [0, -1]), path: ['nodes', 2, 'operands', 1] },
    { json: changed(['nodes', 2, 'operands'], []), path: ['nodes', 2] },
    { json: changed(['nodes', 2, 'operands'], 0), path: ['nodes', 2, 'operands'] },
    { json: changed(['nodes', 2, 'settings'], { factor: '0' }), path: ['nodes', 2, 'settings', 'factor'] },
    { json: changed(['nodes', 2, 'settings'], { inverse: 1 }), path: ['nodes', 2, 'settings', 'inverse'] },
    { json: changed(['nodes', 2, 'settings'], { counts: ['x'] }), path: ['nodes', 2, 'settings', 'counts', 0] },
    { json: changed(['nodes', 2, 'settings'], { exponent: 21 }), path: ['nodes', 2, 'settings', 'exponent'] },
    {
      json: changed(['nodes', 2, 'settings'], { rounding: { ties: 'up' } }),
      path: ['nodes', 2, 'settings', 'rounding', 'ties'],
    },
    {
      json: changed(['nodes', 2, 'settings'], { rounding: { ties: 'half-up' } }),
      path: ['nodes', 2, 'settings', 'rounding', 'figures'],
    },
    {
      json: changed(['nodes', 2, 'settings'], { rounding: { ties: 'half-up', step: '-1' } }),
      path: ['nodes', 2, 'settings', 'rounding', 'step'],
    },
    { json: changed(['nodes', 2, 'settings'], { scale: 1 }), path: ['nodes', 2, 'settings', 'scale'] },
    { json: changed(['results'], []), path: ['results'] },
    { json: changed(['results'], [0, 1]), path: ['results'] },
    { json: changed(['results'], [3]), path: ['results', 0] },
    { json: changed(['author'], 'x'), path: ['author'] },
  ])('at $path', ({ json, path }) => {
    const error = refusal(() => fromJSON(json))
    expect(error.code).toBe('quantity/bad-json')
    expect(error.path).toEqual(path)
    expect(error.message.length).toBeLessThan(300)
  })

  it('is named by its place, or as a whole', () => {
    expect(refusal(() => fromJSON(5)).message).toMatch(/^The document has 5 /)
    expect(refusal(() => fromJSON(changed(['nodes', 0], 5))).message).toMatch(/^The document at nodes\.0 has 5 /)
  })

  it('a getter, a proxy or a ring that breaks the reader is one, too', () => {
    const getter = {
      get format(): string {
        throw new Error('no')
      },
    }
    const proxy = new Proxy(
      {},
      {
        ownKeys: () => {
          throw new TypeError('no')
        },
      },
    )
    const ring: Record<string, unknown> = { factor: '1' }
    ring.self = ring
    for (const json of [getter, proxy, changed(['nodes', 2, 'settings'], ring)]) {
      expect(refusal(() => fromJSON(json)).code).toBe('quantity/bad-json')
      expect(refusal(() => calculationFromJSON(json)).code).toBe('quantity/bad-json')
    }
  })

  it('nor is one whose calculation cannot be done', () => {
    const root = stored(toJSON(squareRoot(exact(4)), { origin: true })) as { nodes: { value: string }[] }
    ;(root.nodes[0] as { value: string }).value = '-4'
    expect(refusal(() => fromJSON(root)).code).toBe('quantity/out-of-range')
  })

  it('whatever comes in', () => {
    fc.assert(
      fc.property(fc.anything(), (json) => {
        expect(refusal(() => fromJSON(json)).code).toBe('quantity/bad-json')
        expect(refusal(() => calculationFromJSON(json)).code).toBe('quantity/bad-json')
      }),
      { numRuns: 500 },
    )
  })
})
