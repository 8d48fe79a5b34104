import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type AtomicWeightSet, atomicWeight, atomicWeightSet } from '../../src/element/index.js'

describe('a set of atomic weights of one’s own', () => {
  it('is plain data that survives JSON', () => {
    const set = atomicWeightSet({
      name: 'wall chart',
      edition: '2009',
      source: 'lecture theatre',
      values: { Zn: '65.39', H: '[1.00784, 1.00811]' },
      extends: 'standard',
    })
    expect(JSON.parse(JSON.stringify(set))).toEqual(set)
    expect(set.edition).toBe('2009')
  })

  it('does not change, nor do the sets it extends', () => {
    const inner = { name: 'inner', values: { Zn: '65.39' } }
    const outer = atomicWeightSet({ name: 'outer', values: {}, extends: inner })
    inner.values.Zn = '99'
    expect(atomicWeight('Zn', outer).toString()).toBe('65.39 g/mol')
    expect(Object.isFrozen(outer) && Object.isFrozen(outer.values) && Object.isFrozen(outer.extends)).toBe(true)
  })

  it('leaves out what was not said', () => {
    expect(atomicWeightSet({ name: 'bare', values: {}, edition: undefined })).toEqual({ name: 'bare', values: {} })
  })

  it('mixes editions only where told to', () => {
    const old = atomicWeightSet({ name: 'IUPAC 1997', values: { S: '32.066' } })
    expect(() => atomicWeight('O', old)).toThrow(expect.objectContaining({ code: 'element/not-in-set' }))
  })
})

describe('what is not a set of atomic weights', () => {
  it.each([
    { set: undefined, path: [], found: 'undefined', expected: 'a set of atomic weights: { name, values }' },
    { set: null, path: [], found: 'null', expected: 'a set of atomic weights: { name, values }' },
    { set: 'abridged', path: [], found: '"abridged"', expected: 'a set of atomic weights: { name, values }' },
    { set: [], path: [], found: 'an array', expected: 'a set of atomic weights: { name, values }' },
    { set: { values: {} }, path: ['name'], found: 'undefined', expected: 'a text that is not empty' },
    { set: { name: ' ', values: {} }, path: ['name'], found: '" "', expected: 'a text that is not empty' },
    {
      set: { name: 'a', values: {}, edition: 2009 },
      path: ['edition'],
      found: '2009',
      expected: 'a text that is not empty',
    },
    { set: { name: 'a', values: {}, source: '' }, path: ['source'], found: '""', expected: 'a text that is not empty' },
    {
      set: { name: 'a' },
      path: ['values'],
      found: 'undefined',
      expected: 'atomic weights by symbol: { Cu: "63.546" }',
    },
    {
      set: { name: 'a', values: [] },
      path: ['values'],
      found: 'an array',
      expected: 'atomic weights by symbol: { Cu: "63.546" }',
    },
    {
      set: { name: 'a', values: {}, extends: '1997' },
      path: ['extends'],
      found: '"1997"',
      expected: '"abridged", "standard" or another set',
    },
    {
      set: { name: 'a', values: {}, extends: null },
      path: ['extends'],
      found: 'null',
      expected: '"abridged", "standard" or another set',
    },
    {
      set: { name: 'a', values: {}, extends: {} },
      path: ['extends', 'name'],
      found: 'undefined',
      expected: 'a text that is not empty',
    },
  ])('is refused at $path: $found', ({ set, path, found, expected }) => {
    expect(() => atomicWeightSet(set as AtomicWeightSet)).toThrow(
      expect.objectContaining({
        code: 'element/invalid-set',
        path,
        problems: expect.arrayContaining([expect.objectContaining({ path, found, expected })]),
      }),
    )
  })

  it.each([
    { values: { Zn: 65.39 }, code: 'element/not-text', path: ['values', 'Zn'], hint: '"65.39"?' },
    { values: { Zn: '65,39' }, code: 'element/bad-weight', path: ['values', 'Zn'], hint: '"65.39"?' },
    { values: { Zn: '65.39 ± 70' }, code: 'element/bad-bound', path: ['values', 'Zn'], hint: undefined },
    { values: { ZN: '65.39' }, code: 'element/unknown-symbol', path: ['values', 'ZN'], hint: 'Zn?' },
    {
      values: JSON.parse('{ "__proto__": "1.0" }'),
      code: 'element/unknown-symbol',
      path: ['values', '__proto__'],
      hint: undefined,
    },
  ])('is refused for $values as $code', ({ values, code, path, hint }) => {
    const set = { name: 'slip', values } as unknown as AtomicWeightSet
    expect(() => atomicWeightSet(set)).toThrow(
      expect.objectContaining({ problems: [expect.objectContaining({ code, path, hint })] }),
    )
  })

  it('is refused with all its mistakes at once', () => {
    const set = { name: '', values: { Zn: 65.39, ZN: '65.39', O: '15.999' }, extends: 7 } as unknown as AtomicWeightSet
    expect(() => atomicWeightSet(set)).toThrow(
      expect.objectContaining({
        message: expect.stringContaining('(and 3 more)'),
        problems: [
          expect.objectContaining({ path: ['name'] }),
          expect.objectContaining({ path: ['values', 'Zn'] }),
          expect.objectContaining({ path: ['values', 'ZN'] }),
          expect.objectContaining({ path: ['extends'] }),
        ],
      }),
    )
  })

  it('has no more parts than it was given', () => {
    const set = atomicWeightSet({ name: 'a', values: { Zn: '65.4' } })
    expect(Object.keys(set).sort()).toEqual(['name', 'values'])
    const more = atomicWeightSet({ name: 'a', values: {}, edition: '1', source: 's', extends: 'standard' })
    expect(Object.keys(more).sort()).toEqual(['edition', 'extends', 'name', 'source', 'values'])
  })

  it('says of which part it speaks', () => {
    expect(() => atomicWeightSet(7 as never)).toThrow(/: This is 7 where /)
    expect(() => atomicWeightSet({ name: 'a', values: {}, extends: 7 } as never)).toThrow(/: extends is 7 where /)
  })

  it('is refused when it extends itself', () => {
    const set: { name: string; values: Record<string, string>; extends?: AtomicWeightSet } = {
      name: 'loop',
      values: {},
    }
    set.extends = set
    expect(() => atomicWeightSet(set)).toThrow(expect.objectContaining({ code: 'element/invalid-set' }))
    expect(() => atomicWeight('O', set)).toThrow(expect.objectContaining({ code: 'element/invalid-set' }))
  })

  it('is refused with an error of the library, whatever it is', () => {
    fc.assert(
      fc.property(fc.anything(), (set) => {
        try {
          expect(atomicWeightSet(set as AtomicWeightSet).name).not.toBe('')
        } catch (error) {
          expect(error).toMatchObject({ name: 'ElementError', code: 'element/invalid-set' })
        }
      }),
    )
  })
})
