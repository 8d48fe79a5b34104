import { describe, expect, it } from 'vitest'
import { constantMass, type Ignition, waterOfCrystallisation } from '../../src/product/index.js'
import { exact, quantity } from '../../src/quantity/index.js'
import { refusal } from '../quantity/refusal.js'

const alum = { hydrate: '0.5000 g', residue: '0.2721 g', anhydrous: 'KAl(SO4)2' } as const
const copper = { hydrate: '1.7612 g', anhydrous: 'CuSO4', tolerance: '0.05' } as const
const constant = constantMass({ weighings: ['1.1111 g', '1.1110 g'], criterion: 'ph-eur' })
const falling = constantMass({ weighings: ['1.1500 g', '1.1110 g'], criterion: 'ph-eur' })
const codes = (ignition: Ignition) =>
  waterOfCrystallisation(ignition).explanations.map(({ code, support }) => `${code}: ${support}`)

describe('water of crystallisation', () => {
  it('is mass, fraction and number of moles', () => {
    const { water, waterFraction, x } = waterOfCrystallisation(alum)
    expect([water, waterFraction, x].map(String)).toEqual(['0.2279 g', '45.58 %', '12.00'])
    expect(x.naming).toMatchObject({ symbol: 'x', role: 'water' })
  })

  it('names the two next hydrates, the nearer first', () => {
    const { candidates } = waterOfCrystallisation(alum)
    expect(candidates.map(({ formula, consistent, expected }) => [formula, consistent, expected])).toEqual([
      ['KAl(SO4)2·12H2O', true, false],
      ['KAl(SO4)2·13H2O', false, false],
    ])
    expect(candidates[0]?.waterFraction.toString()).toBe('45.572 %')
    expect(candidates[0]?.waters.toString()).toBe('12')
    expect(candidates[0]?.difference.toString()).toBe('0.00')
  })

  it('names the expected hydrate as well, one with half a water too', () => {
    const plaster = { hydrate: '1.4515 g', residue: '1.3614 g', anhydrous: 'CaSO4', expected: 'CaSO4·0.5H2O' } as const
    const { candidates, explanations } = waterOfCrystallisation(plaster)
    expect(candidates.map(({ waters }) => String(waters))).toEqual(['0.5', '1', '0'])
    expect(candidates[0]).toMatchObject({ expected: true, consistent: true, formula: 'CaSO4·0.5H2O' })
    expect(candidates[2]).toMatchObject({ formula: 'CaSO4' })
    expect(candidates[2]?.waterFraction.toString()).toBe('0 %')
    expect(explanations).toEqual([])
  })

  it('looks at the half between two whole numbers up to 2.5, and at none beyond', () => {
    const found = (anhydrous: Ignition['anhydrous'], residue: Ignition['residue']) =>
      waterOfCrystallisation({ hydrate: '1.0000 g', residue, anhydrous }).candidates.map(({ waters }) => String(waters))
    expect(found('CaSO4', '0.9382 g')).toEqual(['0.5', '0', '1']) // 136.14 : 145.15
    expect(found('CdCl2', '0.8029 g')).toEqual(['2.5', '2', '3']) // 183.31 : 228.35
    expect(found('CdCl2', '0.7440 g')).toEqual(['4', '3']) // 3.50 waters
    const plaster = { hydrate: '1.0000 g', residue: '0.9382 g', anhydrous: 'CaSO4', tolerance: '0.01' } as const
    const { candidates, explanations } = waterOfCrystallisation(plaster)
    expect(candidates[0]).toMatchObject({ formula: 'CaSO4·0.5H2O', consistent: true })
    expect(explanations).toEqual([])
  })

  it.each([
    { anhydrous: 'CdSO4', expected: 'CdSO4·8/3H2O', residue: '2.4381 g', formula: 'CdSO4·8/3H2O', waters: 8 / 3 },
    { anhydrous: 'CdSO4', expected: '3CdSO4·8H2O', residue: '2.4381 g', formula: 'CdSO4·8/3H2O', waters: 8 / 3 },
    { anhydrous: 'CdSO4', expected: '(CdSO4)3·8H2O', residue: '2.4381 g', formula: 'CdSO4·8/3H2O', waters: 8 / 3 },
    { anhydrous: '3CdSO4', expected: 'CdSO4·8/3H2O', residue: '2.4381 g', formula: '3CdSO4·8H2O', waters: 8 },
    {
      anhydrous: 'KAl(SO4)2',
      expected: 'K2SO4·Al2(SO4)3·24H2O',
      residue: '1.6328 g',
      formula: 'KAl(SO4)2·12H2O',
      waters: 12,
    },
    { anhydrous: 'CuSO4', expected: '[Cu(H2O)4]SO4·H2O', residue: '1.9177 g', formula: 'CuSO4·5H2O', waters: 5 },
    { anhydrous: 'CuSO4', expected: 'CuSO4', residue: '2.9999 g', formula: 'CuSO4', waters: 0 },
  ] as const)('$expected is $formula where $anhydrous is left', ({ anhydrous, expected, residue, formula, waters }) => {
    const ignition = { hydrate: '3.0000 g', residue, anhydrous, expected, tolerance: '0.01' } as const
    const { candidates, explanations } = waterOfCrystallisation(ignition)
    expect(candidates[0]).toMatchObject({ formula, expected: true, consistent: true })
    expect(candidates[0]?.waters.value.toNumber()).toBe(waters)
    expect(candidates.filter((one) => one.expected)).toHaveLength(1)
    expect(explanations).toEqual([])
  })

  it('the number of 8/3 is exact', () => {
    const ignition = { hydrate: '3.0000 g', residue: '2.4381 g', anhydrous: 'CdSO4', expected: '3CdSO4·8H2O' } as const
    const { waters } = waterOfCrystallisation(ignition).candidates[0]!
    expect(waters.times(exact('3')).minus(exact('8')).value.abs().lt('1e-30')).toBe(true)
    expect(waters.significantFigures).toBeNull()
  })

  it.each([
    { expected: 'CuSO4·5H2O', why: 'shares sulfur, and holds copper' },
    { expected: 'NaCl·2H2O', why: 'shares nothing' },
    { expected: 'K2SO4·Al2(SO3)3·24H2O', why: 'has its elements in another ratio' },
    { expected: 'KAl(SO4)2·SO3·12H2O', why: 'has sulfur beyond it' },
    { expected: 'KAl(SO3)2·12H2O', why: 'has too little oxygen for its hydrogen' },
    { expected: 'KAlS2O6', why: 'has less than the salt' },
  ] as const)('$expected is no alum: it $why', ({ expected }) => {
    expect(refusal(() => waterOfCrystallisation({ ...alum, expected })).code).toBe('product/no-mole-ratio')
  })

  it('takes the anhydrous salt out of a hydrate that stands for it', () => {
    expect(waterOfCrystallisation({ ...alum, anhydrous: 'KAl(SO4)2·12H2O' }).x.toString()).toBe('12.00')
  })

  it('has an uncertainty where the masses state theirs, and takes twice that for tolerance', () => {
    const stated = { ...alum, hydrate: quantity('0.5000(2) g'), residue: quantity('0.2721(2) g') }
    const { uncertainty, tolerance } = waterOfCrystallisation(stated)
    expect(uncertainty?.toString()).toBe('0.022')
    expect(tolerance.toString()).toBe('0.044')
  })

  it('has none where they do not, and takes one in the last figure', () => {
    const { uncertainty, tolerance } = waterOfCrystallisation(alum)
    expect(uncertainty).toBeUndefined()
    expect(tolerance.toString()).toBe('0.01')
  })

  it('takes a tolerance that is given', () => {
    expect(waterOfCrystallisation({ ...alum, tolerance: '0.10' }).tolerance.toString()).toBe('0.10')
  })

  it('names the hydrates around x, and none where no salt holds so much', () => {
    const hydrates = (residue: `${number} g`) =>
      waterOfCrystallisation({ hydrate: '1.0000 g', residue, anhydrous: 'CuSO4' }).candidates.map(
        ({ waters }) => `${waters}`,
      )
    expect(hydrates('0.0812 g')).toEqual([]) // 0.9188 / 18.015 by 0.0812 / 159.60 are 100.2
    expect(hydrates('0.0814 g')).toEqual(['100', '99']) // 99.98
    expect(hydrates('1.0100 g')).toEqual(['0', '0.5', '1']) // below zero
  })
})

describe('what explains the water found', () => {
  const tooMuch: Ignition = { ...copper, residue: '1.1110 g', expected: 'CuSO4·5H2O' } // x = 5.185
  const tooLittle: Ignition = { ...copper, residue: '1.1600 g', expected: 'CuSO4·5H2O' } // x = 4.59

  it.each([
    {
      what: 'too much, nothing known of the drying',
      ignition: tooMuch,
      found: ['damp: possible', 'residue-lost: possible', 'not-pure: possible'],
    },
    {
      what: 'too much of a sample that was still drying',
      ignition: { ...tooMuch, drying: falling },
      found: ['damp: supported', 'residue-lost: possible', 'not-pure: possible'],
    },
    {
      what: 'too much of a sample dried to constant mass',
      ignition: { ...tooMuch, drying: constant },
      found: ['residue-lost: possible', 'not-pure: possible'],
    },
    {
      what: 'too little, nothing known of the ignition',
      ignition: tooLittle,
      found: ['incomplete-ignition: possible', 'water-lost-before: possible', 'not-pure: possible'],
    },
    {
      what: 'too little of a residue still losing mass',
      ignition: { ...tooLittle, igniting: falling },
      found: ['incomplete-ignition: supported', 'water-lost-before: possible', 'not-pure: possible'],
    },
    {
      what: 'too little of a residue ignited to constant mass',
      ignition: { ...tooLittle, igniting: constant },
      found: ['water-lost-before: supported', 'not-pure: possible'],
    },
    {
      what: 'the water of another hydrate',
      ignition: { ...copper, residue: '1.3162 g', expected: 'CuSO4·5H2O' }, // x = 2.995
      found: [
        'other-hydrate: supported',
        'incomplete-ignition: possible',
        'water-lost-before: possible',
        'not-pure: possible',
      ],
    },
    {
      what: 'water between two hydrates, none expected',
      ignition: { ...copper, residue: '1.1110 g' },
      found: ['damp: possible', 'residue-lost: possible', 'not-pure: possible'],
    },
    {
      what: 'the water that was expected',
      ignition: { ...copper, residue: '1.1258 g', expected: 'CuSO4·5H2O' },
      found: [],
    },
    {
      what: 'a residue heavier than the hydrate',
      ignition: { ...copper, residue: '2.0 g' },
      found: ['numbers-swapped: possible'],
    },
    { what: 'hardly any residue', ignition: { ...copper, residue: '0.001 g' }, found: ['numbers-swapped: possible'] },
    {
      what: 'an unknown number of water expected',
      ignition: { ...copper, residue: '1.1258 g', expected: 'CuSO4·xH2O' },
      found: [],
    },
  ] as const)('$what: $found', ({ ignition, found }) => expect(codes(ignition)).toEqual(found))

  it.each([
    {
      ignition: tooMuch,
      numbers: ['damp difference 0.185', 'residue-lost difference 0.185', 'not-pure difference 0.185'],
    },
    {
      ignition: { ...copper, residue: '1.3162 g', expected: 'CuSO4·5H2O' },
      numbers: [
        'other-hydrate x 2.995',
        'incomplete-ignition difference -2.005',
        'water-lost-before difference -2.005',
        'not-pure difference -2.005',
      ],
    },
    { ignition: { ...copper, residue: '2.0 g' }, numbers: ['numbers-swapped x -1'] },
  ] as const)('has numbers behind it: $numbers', ({ ignition, numbers }) => {
    const { explanations } = waterOfCrystallisation(ignition)
    expect(explanations.map((each) => [each.code, ...Object.entries(each.numbers).flat()].join(' '))).toEqual(numbers)
  })

  it('is said in plain sentences', () => {
    const messages = waterOfCrystallisation({ ...tooMuch, drying: falling }).explanations.map(({ message }) => message)
    expect(messages[0]).toBe('The sample was damp: more water went than CuSO4·5H2O holds; its mass was still falling.')
  })

  it.each([
    { what: 'no ignition', ignition: null, code: 'product/not-an-object' },
    { what: 'no residue', ignition: { ...alum, residue: '0 g' }, code: 'product/not-positive' },
    { what: 'no hydrate', ignition: { ...alum, hydrate: '0 g' }, code: 'product/not-positive' },
    { what: 'no tolerance', ignition: { ...alum, tolerance: '0' }, code: 'product/not-positive' },
    { what: 'a salt that is none', ignition: { ...alum, anhydrous: 'zn' }, code: 'formula/unknown-symbol' },
  ])('is refused with $what', ({ ignition, code }) => {
    expect(refusal(() => waterOfCrystallisation(ignition as Ignition)).code).toBe(code)
  })
})
