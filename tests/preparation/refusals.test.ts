import { isSaltwrightError } from 'saltwright'
import {
  assessPreparation,
  type Bench,
  planBenches,
  planClass,
  planPreparation,
  type Recipe,
  type Records,
} from 'saltwright/preparation'
import { reviewWorksheet } from 'saltwright/review'
import { describe, expect, it } from 'vitest'
import { showFound } from '../../src/errors.js'
import { refusal } from '../quantity/refusal.js'
import { doubleSaltAsPrinted, zincSulfate } from './recipes.js'

type Json = Record<string, unknown>

/** Path and code of every problem that a call reports. */
function problemsOf(call: () => unknown): readonly string[] {
  try {
    call()
  } catch (error) {
    if (!isSaltwrightError(error)) throw error
    return (error.problems ?? [error]).map(({ path = [], code }) => `${path.join('.')} ${code}`)
  }
  return []
}

const plan = (change: Json): readonly string[] =>
  problemsOf(() => planPreparation({ ...zincSulfate, ...change } as Recipe))
const [oxide, acid] = zincSulfate.supplies as unknown as readonly [Json, Json]
const [dissolve, crystallise] = zincSulfate.stages as unknown as readonly [Json, Json]

describe('a recipe is refused, with every mistake and its place', () => {
  it.each<{ what: string; change: Json; problems: readonly string[] }>([
    { what: 'another format', change: { format: 'x' }, problems: ['format preparation/unknown-choice'] },
    { what: 'no title', change: { title: undefined }, problems: ['title preparation/missing'] },
    { what: 'an empty title', change: { title: '' }, problems: ['title preparation/wrong-type'] },
    { what: 'a number as title', change: { title: 7 }, problems: ['title preparation/wrong-type'] },
    { what: 'a key of another format', change: { yield: '80 %' }, problems: ['yield preparation/unknown-key'] },
    { what: 'no stages', change: { stages: [] }, problems: ['stages preparation/wrong-type'] },
    { what: 'stages that are no list', change: { stages: {} }, problems: ['stages preparation/wrong-type'] },
    {
      what: 'more stages than anybody runs',
      change: { stages: Array.from({ length: 51 }, () => dissolve) },
      problems: ['stages preparation/wrong-type'],
    },
    {
      what: 'an unknown symbol in the product',
      change: { product: 'ZzSO4' },
      problems: ['product formula/unknown-symbol'],
    },
    {
      what: 'an equation without an arrow and a formula of another alphabet, both at once',
      change: { product: 'СuSO4', stages: [{ name: 'a', equation: 'ZnO + H2SO4' }] },
      problems: ['product formula/look-alike', 'stages.0.equation equation/missing-arrow'],
    },
    { what: 'a claim of nothing', change: { claims: [{ of: 'H2SO4' }] }, problems: ['claims.0 preparation/missing'] },
    {
      what: 'an unbalanced stage',
      change: { stages: [{ ...dissolve, equation: 'ZnO + H2SO4 -> ZnSO4' }, crystallise] },
      problems: ['stages.0.equation preparation/unbalanced-stage'],
    },
    {
      what: 'an unbalanced charge',
      change: { stages: [{ ...dissolve, equation: 'Zn -> Zn^2+' }, crystallise] },
      problems: ['stages.0.equation preparation/unbalanced-stage'],
    },
    {
      what: 'a product that no stage makes',
      change: { product: 'CuSO4·5H2O' },
      problems: ['product preparation/product-not-made'],
    },
    {
      what: 'a scale of something else',
      change: { scale: { of: 'NaCl', amount: '1 mol' } },
      problems: ['scale.of preparation/scale-not-in-stages'],
    },
    {
      what: 'an amount and a mass as scale',
      change: { scale: { of: 'ZnO', amount: '1 mol', mass: '1 g' } },
      problems: ['scale preparation/two-amount-rules'],
    },
    { what: 'neither of them', change: { scale: { of: 'ZnO' } }, problems: ['scale preparation/no-amount-rule'] },
    {
      what: 'a scale of what is not printed, beside what is',
      change: { scale: { of: 'ZnO' }, supplies: [oxide, { ...acid, excessFactor: undefined, asPrinted: '15 mL' }] },
      problems: ['scale preparation/no-amount-rule'],
    },
    { what: 'no scale at all', change: { scale: undefined }, problems: ['scale preparation/no-amount-rule'] },
    {
      what: 'grams for moles',
      change: { scale: { of: 'ZnO', amount: '3.255 g' } },
      problems: ['scale.amount preparation/wrong-dimension'],
    },
    {
      what: 'a scale of nothing',
      change: { scale: { of: 'ZnO', amount: '0 mol' } },
      problems: ['scale.amount preparation/not-positive'],
    },
    {
      what: 'a scale below nothing',
      change: { scale: { of: 'ZnO', amount: '-1 mol' } },
      problems: ['scale.amount preparation/not-positive'],
    },
    {
      what: 'a choice with an uncertainty',
      change: { scale: { of: 'ZnO', mass: '3.26(1) g' } },
      problems: ['scale.mass quantity/bad-uncertainty'],
    },
    {
      what: 'a scale beyond measure',
      change: { scale: { of: 'ZnO', amount: '1e999 mol' } },
      problems: ['scale.amount quantity/exponent-out-of-range'],
    },
    {
      what: 'a decimal comma',
      change: { scale: { of: 'ZnO', amount: '0,04 mol' } },
      problems: ['scale.amount quantity/decimal-comma'],
    },
    {
      what: 'two rules for one supply',
      change: { supplies: [oxide, { ...acid, molesPerMole: '2' }] },
      problems: ['supplies.1 preparation/two-amount-rules'],
    },
    {
      what: 'a solution without a concentration',
      change: { supplies: [oxide, { form: 'solution', substance: 'H2SO4' }] },
      problems: ['supplies.1.concentration preparation/missing'],
    },
    {
      what: 'grams for an amount concentration',
      change: { supplies: [oxide, { ...acid, concentration: '3 g' }] },
      problems: ['supplies.1.concentration preparation/wrong-dimension'],
    },
    {
      what: 'shares of more than the whole, and a per cent sign left out',
      change: {
        supplies: [
          { ...oxide, assay: '99.5' },
          { form: 'stock', substance: 'H2SO4', massFraction: '105 %', density: '1.84 g/mL' },
        ],
      },
      problems: ['supplies.0.assay preparation/not-positive', 'supplies.1.massFraction preparation/not-positive'],
    },
    {
      what: 'a printed volume of a solid and a printed mass of a solution',
      change: {
        supplies: [
          { ...oxide, asPrinted: '3 mL' },
          { ...acid, excessFactor: undefined, asPrinted: '15 g' },
        ],
      },
      problems: [
        'supplies.0.asPrinted preparation/wrong-dimension',
        'supplies.1.asPrinted preparation/wrong-dimension',
      ],
    },
    {
      what: 'a form nobody knows',
      change: { supplies: [oxide, { form: 'powder', substance: 'H2SO4' }] },
      problems: ['supplies.1.form preparation/unknown-choice'],
    },
    {
      what: 'a stage nobody knows',
      change: { supplies: [oxide, { ...acid, stage: 'boil' }] },
      problems: ['supplies.1.stage preparation/unknown-stage'],
    },
    {
      what: 'a supply that no stage uses',
      change: { supplies: [oxide, acid, { form: 'solid', substance: 'NaCl' }] },
      problems: ['supplies.2 preparation/unused-supply'],
    },
    {
      what: 'a supply that only an earlier stage uses',
      change: { supplies: [oxide, { ...acid, stage: 'crystallise' }] },
      problems: ['supplies.1 preparation/unused-supply'],
    },
    {
      what: 'an auxiliary for a stage nobody knows',
      change: { auxiliaries: [{ name: 'charcoal', amount: '1 g', stage: 'boil' }] },
      problems: ['auxiliaries.0.stage preparation/unknown-stage'],
    },
    {
      what: 'a supply twice',
      change: { supplies: [oxide, acid, oxide] },
      problems: ['supplies.2 preparation/supply-twice'],
    },
    {
      what: 'two stages of one name',
      change: { stages: [dissolve, { ...crystallise, name: dissolve.name }] },
      problems: ['stages.1.name preparation/stage-twice'],
    },
    {
      what: 'a supply left out',
      change: { supplies: [oxide] },
      problems: ['stages.0.equation preparation/missing-supply'],
    },
    {
      what: 'stages that have nothing to do with one another',
      change: {
        stages: [dissolve, crystallise, { name: 'other', equation: 'NaOH + HCl -> NaCl + H2O' }],
        supplies: [oxide, acid, { form: 'solid', substance: 'NaOH' }, { form: 'solid', substance: 'HCl' }],
      },
      problems: ['stages preparation/stages-not-linked'],
    },
    {
      what: 'a stage that uses only what there is always enough of',
      change: {
        stages: [{ name: 'make peroxide', equation: '2H2O + O2 -> 2H2O2' }, dissolve, crystallise],
        supplies: [oxide, acid, { form: 'unlimited', substance: 'O2' }],
      },
      problems: ['stages.0.equation preparation/nothing-limits'],
    },
    {
      what: 'weights that are neither named nor a table',
      change: { atomicWeights: 'old' },
      problems: ['atomicWeights preparation/unknown-choice'],
    },
    {
      what: 'weights with a unit, of nothing, and of no element',
      change: { atomicWeights: { name: 'ours', values: { Zn: '65.38 g/mol', S: '0', Xx: '1', O: '[15.9, 16.1]' } } },
      problems: [
        'atomicWeights.values.Zn element/bad-weight',
        'atomicWeights.values.S element/bad-weight',
        'atomicWeights.values.Xx element/unknown-symbol',
      ],
    },
  ])('$what', ({ change, problems }) => expect(plan(change)).toEqual(problems))

  it.each([
    { what: 'nothing', input: null },
    { what: 'text', input: 'ZnO' },
    { what: 'a list', input: [] },
    { what: 'a number', input: 3 },
  ])('$what is no recipe', ({ input }) => {
    expect(problemsOf(() => planPreparation(input as never))).toEqual([' preparation/wrong-type'])
  })

  it('reads keys of the prototype as unknown keys', () => {
    const hostile = JSON.parse('{"__proto__":{"title":"x"},"constructor":1}')
    expect(problemsOf(() => planPreparation({ ...zincSulfate, constructor: 1 } as never))).toEqual([
      'constructor preparation/unknown-key',
    ])
    expect(problemsOf(() => planPreparation(hostile)).length).toBeGreaterThan(5)
  })

  it('survives getters that throw', () => {
    const hostile = {
      get format(): never {
        throw new Error('no')
      },
    }
    expect(problemsOf(() => planPreparation(hostile as never))).toEqual([' preparation/unreadable'])
  })

  it.each([
    { equation: 'Zn + HCl -> ZnCl2 + H2', off: 'Cl, H', hint: 'Zn + 2 HCl -> ZnCl2 + H2' },
    { equation: '1/2 ZnO + H2SO4 -> ZnSO4 + H2O', off: 'O, Zn', hint: 'ZnO + H2SO4 -> ZnSO4 + H2O' },
    { equation: 'Zn -> Zn^2+', off: 'the charge', hint: undefined },
  ])('says in what $equation is off', ({ equation, off, hint }) => {
    const stages = [{ ...dissolve, equation }, crystallise]
    const { message, ...error } = refusal(() => planPreparation({ ...zincSulfate, stages } as never))
    expect(/not balanced in (.*)\.$/.exec(message)?.[1]?.split(', ').sort().join(', ')).toBe(off)
    expect(error).toMatchObject({ found: equation, hint })
  })

  it.each([
    {
      what: 'a product that no stage makes',
      change: { product: 'CuSO4·5H2O' },
      found: 'CuSO4·5H2O',
      expected: 'one of ZnSO4, H2O, ZnSO4·7H2O',
    },
    {
      what: 'two rules for one supply',
      change: { supplies: [oxide, { ...acid, molesPerMole: '2' }] },
      found: 'excessFactor, molesPerMole',
      expected: 'at most one of excessFactor, molesPerMole, asPrinted',
    },
    {
      what: 'a stage nobody knows',
      change: { supplies: [oxide, { ...acid, stage: 'boil' }] },
      found: 'boil',
      expected: 'dissolve, crystallise',
    },
    {
      what: 'a printed volume of a solid',
      change: { supplies: [{ ...oxide, asPrinted: '3 mL' }, acid] },
      found: '3 mL',
      expected: 'amount or mass',
    },
    {
      what: 'no scale',
      change: { scale: undefined },
      found: 'nothing',
      expected: 'a scale, or asPrinted for every supply',
    },
    {
      what: 'neither an amount nor a mass',
      change: { scale: { of: 'ZnO' } },
      found: 'neither',
      expected: 'amount: "0.0400 mol" or mass: "11.5 g"',
    },
    {
      what: 'both of them',
      change: { scale: { of: 'ZnO', amount: '1 mol', mass: '1 g' } },
      found: 'amount and mass',
      expected: 'one of the two',
    },
    {
      what: 'grams for moles',
      change: { scale: { of: 'ZnO', amount: '3.255 g' } },
      found: '3.255 g',
      expected: 'an amount above zero, with its unit',
    },
    {
      what: 'grams for an amount concentration',
      change: { supplies: [oxide, { ...acid, concentration: '3 g' }] },
      found: '3 g',
      expected: 'an amount concentration above zero, with its unit',
    },
    {
      what: 'a time for water',
      change: { crystallisation: { temperature: '5 degC', water: '3 s' } },
      found: '3 s',
      expected: 'a volume or a mass above zero, with its unit',
    },
    {
      what: 'too large a share',
      change: { supplies: [{ ...oxide, assay: '101 %' }, acid] },
      found: '101 %',
      expected: 'a ratio above zero and at most 100 %',
    },
    {
      what: 'what nothing supplies',
      change: { supplies: [oxide] },
      found: 'H2SO4',
      expected: 'a supply, or an earlier stage that makes it',
    },
  ])('says what stands where something else belongs: $what', ({ change, found, expected }) => {
    expect(refusal(() => planPreparation({ ...zincSulfate, ...change } as never))).toMatchObject({ found, expected })
  })

  it('a product that is not made by a recipe without a scale is one mistake', () => {
    expect(problemsOf(() => planPreparation({ ...doubleSaltAsPrinted, product: 'KNO3' }))).toEqual([
      'product preparation/product-not-made',
    ])
  })

  it('says the first mistake and counts the rest', () => {
    const both = { ...zincSulfate, product: 'Zz', title: '' }
    expect(() => planPreparation(both)).toThrow(/The recipe cannot be used: title: .* \(and 1 more\)/)
  })
})

describe('what cannot be weighed or measured is refused, with its place', () => {
  it.each<{ what: string; change: Json; problems: readonly string[] }>([
    {
      what: 'a solution from a weaker one',
      change: { supplies: [oxide, { ...acid, madeFrom: { concentration: '1.00 mol/L' } }] },
      problems: ['supplies.1.madeFrom solution/cannot-concentrate'],
    },
    {
      what: 'a solution from a weaker stock: 10 % at 1.07 g/mL is 1.09 mol/L',
      change: { supplies: [oxide, { ...acid, madeFrom: { massFraction: '10 %', density: '1.07 g/mL' } }] },
      problems: ['supplies.1.madeFrom solution/cannot-concentrate'],
    },
    {
      what: 'but not a solution that is taken as it is',
      change: { supplies: [oxide, { ...acid, madeFrom: { concentration: '3.00 mol/L' } }] },
      problems: [],
    },
    ...(['NaCl', 'CaO', 'Zn'] as const).map((weighedAs) => ({
      what: `a mass of ${weighedAs}`,
      change: { supplies: [{ ...oxide, weighedAs }, acid] },
      problems: weighedAs === 'Zn' ? [] : ['supplies.0 preparation/unrelated-substance'],
    })),
    {
      what: 'what has no elements but hydrogen and oxygen, in a mass of something else',
      change: {
        product: 'Zn(OH)2',
        scale: { of: 'Zn(OH)2', amount: '0.0100 mol' },
        stages: [{ name: 'precipitate', equation: 'Zn^2+ + 2OH^- -> Zn(OH)2' }],
        supplies: [
          { form: 'solution', substance: 'Zn^2+', concentration: '1 mol/L' },
          { form: 'solid', substance: 'OH^-', weighedAs: 'Ba(OH)2·8H2O' },
        ],
      },
      problems: ['supplies.1 preparation/unrelated-substance'],
    },
    {
      what: 'a solution of one substance that is made from another',
      change: { supplies: [oxide, { ...acid, madeFrom: { solid: 'NaCl' } }] },
      problems: ['supplies.1.madeFrom preparation/unrelated-substance'],
    },
    {
      what: 'a per cent stated as something else',
      change: {
        supplies: [
          oxide,
          { form: 'stock', substance: 'H2SO4', massFraction: '96 %', density: '1.84 g/mL', statedAs: 'NaCl' },
        ],
      },
      problems: ['supplies.1 solution/unrelated-bases'],
    },
    {
      what: 'half an equivalent, and a burette that nobody makes',
      change: {
        supplies: [
          {
            ...oxide,
            form: 'liquid',
            density: '5.6 g/mL',
            vessel: { item: 'burette', standard: 'ISO', available: ['33 mL'] },
          },
          { form: 'normal', substance: 'H2SO4', normality: '6 mol/L', equivalentsPerMole: '1.5' },
        ],
      },
      problems: ['supplies.0.vessel solution/unknown-glassware', 'supplies.1 solution/bad-equivalents'],
    },
    {
      what: 'a table of atomic weights with a slip of typing',
      change: { atomicWeights: { name: 'ours', values: { Zn: '65.38', XX: '16.00' } } },
      problems: ['atomicWeights.values.XX element/unknown-symbol'],
    },
    {
      what: 'a table that lacks an element, wherever it is needed',
      change: {
        atomicWeights: { name: 'ours', values: { H: '1.008' } },
        scale: { of: 'ZnO', mass: '3.255 g' },
      },
      problems: ['product element/not-in-set', 'scale.of element/not-in-set', 'supplies.0 element/not-in-set'],
    },
  ])('$what', ({ change, problems }) => expect(plan(change)).toEqual(problems))
})

describe('what was expected is said in words', () => {
  const washed = (portions: unknown): Json => ({ washes: [{ with: 'water', volume: '5 mL', portions }] })
  it.each<{ change: Json; expected: string }>([
    { change: washed('three'), expected: 'a whole number' },
    { change: washed(1.5), expected: 'a whole number' },
    { change: washed(0), expected: 'above 0' },
    { change: washed(1e300), expected: `at most ${Number.MAX_SAFE_INTEGER}` },
    { change: { title: '' }, expected: 'something that is not empty' },
    { change: { title: 'x'.repeat(2001) }, expected: 'text no longer than 2000' },
    { change: { stages: Array.from({ length: 51 }, () => dissolve) }, expected: 'a list no longer than 50' },
    { change: { notes: 'none' }, expected: 'a list' },
    { change: { scale: 'small' }, expected: 'an object' },
    { change: { atomicWeights: { name: 'ours', values: 'H' } }, expected: 'one of the shapes that the format allows' },
  ])('$expected', ({ change, expected }) => {
    const call = () => planPreparation({ ...zincSulfate, ...change } as Recipe)
    expect(call).toThrow(expect.objectContaining({ expected }))
  })

  it('of a spare below zero, and of an answer to a question with an endless name', () => {
    const benches = [{ name: 'Bench 1', scale: { amount: '1 mol' } }]
    const spare = () => planClass(zincSulfate, benches, { spare: { benches: -1 } })
    expect(spare).toThrow(expect.objectContaining({ expected: 'at least 0' }))
    const answers = { ['x'.repeat(201)]: '1 g' }
    const filled = () => reviewWorksheet(planPreparation(zincSulfate), { format: 'saltwright/worksheet@1', answers })
    expect(filled).toThrow(expect.objectContaining({ expected: 'text no longer than 200' }))
  })
})

it('any number of unknown keys is told', () => {
  const keys = Object.fromEntries(Array.from({ length: 200_000 }, (_, index) => [`key ${index}`, 1]))
  expect(plan(keys)).toHaveLength(200_000)
})

describe('records are refused', () => {
  const assess = (records: Json): readonly string[] =>
    problemsOf(() =>
      assessPreparation(zincSulfate, { format: 'saltwright/records@1', ...records } as unknown as Records),
    )
  it.each<{ what: string; records: Json; problems: readonly string[] }>([
    { what: 'without a product', records: {}, problems: ['product preparation/missing'] },
    { what: 'where nothing was weighed', records: { product: {} }, problems: ['product preparation/nothing-weighed'] },
    {
      what: 'with a gross mass alone',
      records: { product: { gross: '20 g' } },
      problems: ['product preparation/nothing-weighed'],
    },
    {
      what: 'with a volume of product',
      records: { product: { mass: '3 mL' } },
      problems: ['product.mass preparation/wrong-dimension'],
    },
    {
      what: 'with a mass below zero',
      records: { product: { mass: '-3 g' } },
      problems: ['product.mass preparation/not-positive'],
    },
    {
      what: 'with a criterion nobody knows',
      records: { product: { mass: '3 g', constancy: 'mine' } },
      problems: ['product.constancy preparation/unknown-choice'],
    },
    {
      what: 'with a volume of a solid, and a mass of a solution',
      records: {
        supplies: [
          { substance: 'ZnO', volume: '1 mL' },
          { substance: 'H2SO4', mass: '15 g' },
        ],
        product: { mass: '3 g' },
      },
      problems: ['supplies.0 preparation/wrong-dimension', 'supplies.1 preparation/wrong-dimension'],
    },
    {
      what: 'with a supply listed more often than it goes in',
      records: {
        supplies: [
          { substance: 'ZnO', mass: '1 g' },
          { substance: 'ZnO', mass: '2 g' },
        ],
        product: { mass: '3 g' },
      },
      problems: ['supplies.1.substance preparation/supply-twice'],
    },
    {
      what: 'of a supply that goes in elsewhere',
      records: { supplies: [{ substance: 'ZnO', stage: 'Crystallise', mass: '1 g' }], product: { mass: '3 g' } },
      problems: ['supplies.0.stage preparation/unknown-stage'],
    },
    {
      what: 'that say a mass in two ways',
      records: {
        supplies: [
          { substance: 'ZnO', mass: '3.2 g', gross: '40.0 g', tare: '30.0 g' },
          { substance: 'H2SO4', volume: '14.7 mL', mass: '17 g' },
        ],
        product: { mass: '3 g' },
      },
      problems: ['supplies.0 preparation/weighed-twice', 'supplies.1 preparation/weighed-twice'],
    },
    ...[
      { mass: '7.9 g', gross: '40.0 g', tare: '30.0 g' },
      { gross: '40.0 g', tare: '30.0 g', series: ['41.0 g', '40.1 g'] },
      { mass: '7.9 g', vessels: [{ gross: '40.0 g', tare: '30.0 g' }] },
    ].map((product) => ({
      what: `of a product by ${Object.keys(product)}`,
      records: { product },
      problems: ['product preparation/weighed-twice'],
    })),
    {
      what: 'of a supply that is not in the recipe, and of one that nobody measured',
      records: { supplies: [{ substance: 'NaCl', mass: '1 g' }, { substance: 'ZnO' }], product: { mass: '3 g' } },
      problems: ['supplies.0.substance preparation/unknown-supply', 'supplies.1 preparation/nothing-weighed'],
    },
  ])('$what', ({ records, problems }) => expect(assess(records)).toEqual(problems))
})

describe('records that are refused say what was found, and what would be right', () => {
  it.each<{ records: Json; found: string; expected: string }>([
    { records: { supplies: [{ substance: 'ZnO', volume: '1 mL' }] }, found: 'a volume', expected: 'a mass' },
    { records: { supplies: [{ substance: 'H2SO4', mass: '1 g' }] }, found: 'a mass', expected: 'a volume' },
    { records: { supplies: [{ substance: 'NaCl', mass: '1 g' }] }, found: 'NaCl', expected: 'ZnO, H2SO4' },
    {
      records: { supplies: [{ substance: 'ZnO', gross: '1 g' }] },
      found: 'no reading',
      expected: 'gross and tare, or mass, or volume',
    },
    {
      records: { supplies: [{ substance: 'ZnO', tare: '1 g' }] },
      found: 'no reading',
      expected: 'gross and tare, or mass, or volume',
    },
    {
      records: {
        supplies: [
          { substance: 'ZnO', mass: '1 g' },
          { substance: 'OZn', mass: '2 g' },
        ],
      },
      found: 'OZn',
      expected: 'one record for each time it goes in',
    },
    {
      records: { supplies: [{ substance: 'ZnO', mass: '0 g' }] },
      found: 'nothing of ZnO',
      expected: 'some of every supply',
    },
    {
      records: { product: { tare: '1 g' } },
      found: 'no weighing',
      expected: 'gross and tare, a series and a tare, vessels, or mass',
    },
    { records: { product: { mass: '-3 g' } }, found: '-3 g', expected: 'a mass of zero or more, with its unit' },
  ])('$found', ({ records, ...told }) => {
    const given = { format: 'saltwright/records@1', product: { mass: '3 g' }, ...records } as unknown as Records
    const error = refusal(() => assessPreparation(zincSulfate, given))
    expect(error).toMatchObject(told)
    expect(error.message).toMatch(/^The records cannot be used: /)
  })
})

describe('a class is refused', () => {
  const classOf = (benches: unknown, options: unknown = {}): readonly string[] =>
    problemsOf(() => planClass(zincSulfate, benches as never, options as never))
  it.each<{ what: string; benches: unknown; options?: unknown; problems: readonly string[] }>([
    { what: 'without benches', benches: [], problems: ['benches preparation/wrong-type'] },
    {
      what: 'with a bench without a scale',
      benches: [{ name: 'Bench 1', scale: {} }],
      problems: ['benches.0.scale preparation/no-amount-rule'],
    },
    {
      what: 'with a bench with two scales',
      benches: [{ name: 'Bench 1', scale: { amount: '1 mol', mass: '1 g' } }],
      problems: ['benches.0.scale preparation/two-amount-rules'],
    },
    {
      what: 'with a spare of less than nothing',
      benches: [{ name: 'Bench 1', scale: { amount: '1 mol' } }],
      options: { spare: { benches: -1 } },
      problems: ['options.spare.benches preparation/wrong-type'],
    },
    {
      what: 'with a spare of twenty, for twenty per cent',
      benches: [{ name: 'Bench 1', scale: { amount: '1 mol' } }],
      options: { spare: { percent: '20' } },
      problems: ['options.spare preparation/unknown-choice'],
    },
    {
      what: 'with a second bench that is scaled by what the recipe does not have',
      benches: [
        { name: 'Bench 1', scale: { amount: '1 mol' } },
        { name: 'Bench 2', scale: { of: 'NaCl', amount: '1 mol' } },
      ],
      problems: ['benches.1.scale.of preparation/scale-not-in-stages'],
    },
  ])('$what', ({ benches, options, problems }) => expect(classOf(benches, options)).toEqual(problems))
})

describe('what is no plan and no list', () => {
  it.each([
    { second: { name: 'Bench 2', scale: {} }, at: 'benches[1].scale', code: 'preparation/no-amount-rule' },
    {
      second: { name: 'Bench 2', scale: { of: 'NaCl', amount: '1 mol' } },
      at: 'benches[1].scale.of',
      code: 'preparation/scale-not-in-stages',
    },
  ])('bench by bench, it is told which one: $at', ({ second, at, code }) => {
    const benches = [{ name: 'Bench 1', scale: { amount: '1 mol' } }, second] as readonly Bench[]
    const call = () => [...planBenches(zincSulfate, benches)]
    expect(problemsOf(call)).toEqual([`${at.replace('[1]', '.1')} ${code}`])
    expect(call).toThrow(`${at}: `)
  })

  it('bench by bench, one that cannot be looked at stays that', () => {
    const bench = {
      get name(): string {
        throw new Error('not for you')
      },
    }
    expect(problemsOf(() => [...planBenches(zincSulfate, [bench as Bench])])).toEqual([' preparation/unreadable'])
  })

  it.each([{ benches: undefined }, { benches: null }, { benches: 3 }, { benches: {} }])(
    '$benches cannot be planned bench by bench',
    ({ benches }) => {
      expect(problemsOf(() => [...planBenches(zincSulfate, benches as never)])).toEqual([
        'benches preparation/wrong-type',
      ])
      expect(refusal(() => [...planBenches(zincSulfate, benches as never)]).found).toBe(showFound(benches))
    },
  )

  it('a scale whose numbers cannot be written is a mistake of the scale', () => {
    const scale = { of: 'ZnO', amount: '1e99 mol' }
    const huge = { ...zincSulfate, scale } as Recipe
    const benches: readonly Bench[] = [
      { name: 'Bench 1', scale: { amount: '0.0400 mol' } },
      { name: 'Bench 2', scale },
    ]
    const records: Records = { format: 'saltwright/records@1', product: { mass: '1.0 g' } }
    for (const call of [() => planPreparation(huge), () => assessPreparation(huge, records)])
      expect(problemsOf(call)).toEqual(['scale quantity/too-long'])
    for (const call of [() => planClass(zincSulfate, benches), () => [...planBenches(zincSulfate, benches)]])
      expect(problemsOf(call)).toEqual(['benches.1.scale quantity/too-long'])
    expect(() => planPreparation(huge)).toThrow('The recipe cannot be used: scale: ')
  })

  it('a plan whose recipe cannot be looked at is refused as a recipe', () => {
    const hostile = {
      get recipe(): never {
        throw new Error('no')
      },
    }
    const records = { format: 'saltwright/records@1', product: { mass: '1.0 g' } } as const
    expect(problemsOf(() => assessPreparation(hostile as never, records))).toContain('recipe preparation/unknown-key')
  })
})
