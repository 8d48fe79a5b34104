import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type AtomicWeightSet,
  atomicWeight,
  atomicWeightSet,
  elements,
  standardWeights,
} from '../../src/element/index.js'

const standardUncertainty = (symbol: string, weights: 'abridged' | 'standard' | AtomicWeightSet): string | undefined =>
  atomicWeight(symbol, weights).input?.uncertainty?.standard.toPrecision(4)

describe('an atomic weight', () => {
  it.each([
    { symbol: 'Cu', weights: 'abridged', shown: '63.546 g/mol', u: '0.001732' },
    { symbol: 'S', weights: 'abridged', shown: '32.06 g/mol', u: '0.01155' },
    { symbol: 'H', weights: 'abridged', shown: '1.0080 g/mol', u: '0.0001155' },
    { symbol: 'Pb', weights: 'abridged', shown: '207.2 g/mol', u: '0.6351' },
    { symbol: 'H', weights: 'standard', shown: '1.007975 g/mol', u: '0.00007794' },
    { symbol: 'C', weights: 'standard', shown: '12.0106 g/mol', u: '0.0005774' },
    { symbol: 'Pb', weights: 'standard', shown: '207.04 g/mol', u: '0.5196' },
    { symbol: 'Te', weights: 'standard', shown: '127.60 g/mol', u: '0.01732' },
    { symbol: 'Sn', weights: 'standard', shown: '118.710 g/mol', u: '0.004041' },
    { symbol: 'D', weights: 'abridged', shown: '2.0141 g/mol', u: '0.00005774' },
    { symbol: 'T', weights: 'abridged', shown: '3.0160 g/mol', u: '0.00005774' },
    { symbol: 'D', weights: 'standard', shown: '2.014101777844 g/mol', u: '8.660e-12' },
  ] as const)(
    'of $symbol is $shown in the $weights set, with standard uncertainty $u',
    ({ symbol, weights, shown, u }) => {
      expect(atomicWeight(symbol, weights).toString()).toBe(shown)
      expect(standardUncertainty(symbol, weights)).toBe(u)
      expect(atomicWeight(symbol, weights).input?.uncertainty?.distribution).toBe('rectangular')
    },
  )

  it('is a constant that says what it is and where it is from', () => {
    const zinc = atomicWeight('Zn')
    expect(zinc.input?.kind).toBe('constant')
    expect(zinc.input?.id).toBe('abridged: Ar(Zn) = 65.38 ± 0.02')
    expect(zinc.naming).toEqual({ label: 'atomic weight of Zn', symbol: 'M', of: 'Zn', role: 'atomic weight' })
  })

  it('has the figures that were printed, also where the last of them is a zero', () => {
    expect(atomicWeight('H').significantFigures).toBe(5)
    expect(atomicWeight('Ca', { name: 'wall chart', values: { Ca: '40' } }).significantFigures).toBe(2)
  })

  it('has no uncertainty where a set states no bound', () => {
    expect(atomicWeight('Zn', { name: 'wall chart', values: { Zn: '65.4' } }).input?.uncertainty).toBeUndefined()
  })

  it('is in the abridged set unless another is named', () => {
    expect(atomicWeight('Zn')).toBe(atomicWeight('Zn', 'abridged'))
  })

  it('exists in both sets for the same 84 elements, and for no other', () => {
    const weighed = (weights: 'abridged' | 'standard'): readonly string[] =>
      elements.map(({ symbol }) => symbol).filter((symbol) => hasWeight(symbol, weights))
    expect(weighed('abridged')).toHaveLength(84)
    expect(weighed('standard')).toEqual(weighed('abridged'))
  })

  it('lies, abridged, within its bound of the standard value or interval', () => {
    for (const symbol of Object.keys(standardWeights.values)) {
      const [abridged, standard] = [atomicWeight(symbol), atomicWeight(symbol, 'standard')]
      const half = (q: typeof abridged): number => Number(q.input?.uncertainty?.standard) * Math.sqrt(3)
      const apart = abridged.value.minus(standard.value).abs().toNumber()
      expect(apart + half(standard), symbol).toBeLessThanOrEqual(half(abridged) * (1 + 1e-9))
    }
  })
})

function hasWeight(symbol: string, weights: 'abridged' | 'standard'): boolean {
  try {
    return atomicWeight(symbol, weights).value.gt(0)
  } catch (error) {
    expect(error).toMatchObject({ code: 'element/no-standard-weight', found: symbol })
    return false
  }
}

describe('the same element of the same set', () => {
  const wall = atomicWeightSet({ name: 'wall chart', values: { Zn: '65.39' }, extends: 'abridged' })

  it('is the same measurement each time', () => {
    expect(atomicWeight('O')).toBe(atomicWeight('O'))
    expect(atomicWeight('O', 'standard')).toBe(atomicWeight('O', 'standard'))
    expect(atomicWeight('Zn', wall)).toBe(atomicWeight('Zn', wall))
  })

  it('is another measurement in another set', () => {
    expect(atomicWeight('O')).not.toBe(atomicWeight('O', 'standard'))
    expect(atomicWeight('Zn')).not.toBe(atomicWeight('Zn', wall))
  })

  it('is that of the extended set where the set has none of its own', () => {
    expect(atomicWeight('O', wall)).toBe(atomicWeight('O', 'abridged'))
    expect(atomicWeight('O', atomicWeightSet({ name: 'second chart', values: {}, extends: wall }))).toBe(
      atomicWeight('O'),
    )
  })

  it('is the same for a set that was never checked beforehand', () => {
    const plain: AtomicWeightSet = JSON.parse('{ "name": "from a file", "values": { "Zn": "65.409" } }')
    expect(atomicWeight('Zn', plain)).toBe(atomicWeight('Zn', plain))
    expect(atomicWeight('Zn', plain).toString()).toBe('65.409 g/mol')
  })
})

describe('an atomic weight that there is none of', () => {
  const few: AtomicWeightSet = { name: 'few', values: { O: '16.00' } }
  it.each([
    { symbol: 'ZN', weights: 'abridged', code: 'element/unknown-symbol', found: '"ZN"', hint: 'Zn?' },
    { symbol: 'zn', weights: 'abridged', code: 'element/unknown-symbol', found: '"zn"', hint: 'Zn?' },
    { symbol: ' Zn', weights: 'abridged', code: 'element/unknown-symbol', found: '" Zn"', hint: 'Zn?' },
    { symbol: 'Zinc', weights: 'abridged', code: 'element/unknown-symbol', found: '"Zinc"', hint: 'Zn?' },
    { symbol: 'd', weights: 'abridged', code: 'element/unknown-symbol', found: '"d"', hint: 'D?' },
    { symbol: 'Xx', weights: 'abridged', code: 'element/unknown-symbol', found: '"Xx"', hint: undefined },
    { symbol: 'СО', weights: 'abridged', code: 'element/unknown-symbol', found: '"СО"', hint: undefined },
    { symbol: '', weights: 'abridged', code: 'element/unknown-symbol', found: '""', hint: undefined },
    { symbol: '__proto__', weights: 'abridged', code: 'element/unknown-symbol', found: '"__proto__"', hint: undefined },
    { symbol: 'constructor', weights: few, code: 'element/unknown-symbol', found: '"constructor"', hint: undefined },
    { symbol: 29, weights: 'abridged', code: 'element/unknown-symbol', found: '29', hint: undefined },
    { symbol: null, weights: 'abridged', code: 'element/unknown-symbol', found: 'null', hint: undefined },
    { symbol: ['Zn'], weights: 'abridged', code: 'element/unknown-symbol', found: 'an array', hint: undefined },
    {
      symbol: 'Tc',
      weights: 'abridged',
      code: 'element/no-standard-weight',
      found: 'Tc',
      hint: 'A set of your own can give the weight of the isotope at hand.',
    },
    {
      symbol: 'Ra',
      weights: 'standard',
      code: 'element/no-standard-weight',
      found: 'Ra',
      hint: 'A set of your own can give the weight of the isotope at hand.',
    },
    {
      symbol: 'Tc',
      weights: few,
      code: 'element/no-standard-weight',
      found: 'Tc',
      hint: 'A set of your own can give the weight of the isotope at hand.',
    },
    {
      symbol: 'S',
      weights: few,
      code: 'element/not-in-set',
      found: 'S',
      hint: 'Add S to its values, or let it extend "abridged".',
    },
    { symbol: 'S', weights: 'conventional', code: 'element/unknown-set', found: '"conventional"', hint: undefined },
    { symbol: 'S', weights: null, code: 'element/invalid-set', found: undefined, hint: undefined },
    { symbol: 'S', weights: 3, code: 'element/invalid-set', found: undefined, hint: undefined },
    { symbol: 'S', weights: {}, code: 'element/invalid-set', found: undefined, hint: undefined },
  ])('refuses $symbol of $weights as $code', ({ symbol, weights, code, found, hint }) => {
    expect(() => atomicWeight(symbol as string, weights as 'abridged')).toThrow(
      expect.objectContaining({ name: 'ElementError', code, found, hint }),
    )
  })

  it('is found again once a set of one’s own gives it', () => {
    expect(atomicWeight('Tc', { name: 'technetium-99', values: { Tc: '98.906' } }).toString()).toBe('98.906 g/mol')
  })

  it('says so for any text, and never throws anything else', () => {
    fc.assert(
      fc.property(fc.anything(), fc.constantFrom('abridged', 'standard'), (symbol, weights) => {
        try {
          expect(elements.map((element) => element.symbol).concat('D', 'T')).toContain(
            atomicWeight(symbol as string, weights as 'abridged').naming.of,
          )
        } catch (error) {
          expect(error).toMatchObject({ name: 'ElementError' })
        }
      }),
    )
  })
})
