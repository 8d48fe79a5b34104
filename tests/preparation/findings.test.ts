import {
  assessPreparation,
  type Finding,
  planClass,
  planPreparation,
  type Recipe,
  type RecipeSupply,
  type Records,
} from 'saltwright/preparation'
import { describe, expect, it } from 'vitest'
import { alum, withCarbonate, zincSulfate } from './recipes.js'

const [oxide, acid] = zincSulfate.supplies as readonly [RecipeSupply, RecipeSupply]
const byOxide = { of: 'ZnO', amount: '0.0400 mol' }
const zincWith = (change: Partial<Recipe>): Recipe => ({ ...zincSulfate, ...change })
const withAcid = (change: object): Recipe => zincWith({ supplies: [oxide, { ...acid, ...change } as RecipeSupply] })
const cooledTo = (temperature: string, water: string): Recipe => zincWith({ crystallisation: { temperature, water } })

const stock = {
  form: 'stock',
  substance: 'H2SO4',
  massFraction: '96 %',
  density: '1.84 g/mL',
  printedConcentration: '16 mol/L',
  excessFactor: '1.10',
} as const

/** Zinc oxide as printed, on a balance or in a cylinder of some step. */
function printed(mass: string, instruments: NonNullable<Recipe['instruments']>): Recipe {
  const { scale, ...recipe } = zincSulfate
  const supplies: readonly RecipeSupply[] = [
    { form: 'solid', substance: 'ZnO', asPrinted: mass },
    { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', asPrinted: '5 mL' },
  ]
  return { ...recipe, instruments, supplies }
}

/** How much it matters, what was found, where, and each number with its name. */
const told = ({ severity, code, path, numbers }: Finding): string =>
  `${severity} ${code} at ${path.join('.')}: ${Object.entries(numbers)
    .map(([name, number]) => `${name} ${number}`)
    .join(', ')}`
const ofPlan = (recipe: Recipe): readonly string[] => planPreparation(recipe).findings.map(told)

// ZnO: M = 81.379 g/mol, so 0.0400 mol are 3.25516 g; 0.0440 mol of acid at 3.00 mol/L are 14.667 mL.
describe('a finding of a plan says how much it matters, where to look, and by what numbers', () => {
  it.each<{ what: string; recipe: Recipe; found: readonly string[] }>([
    {
      what: 'less acid than is needed',
      recipe: withAcid({ excessFactor: '0.9' }),
      found: ['problem supply-short at supplies.1: taken 0.036 mol, needed 0.04 mol, equivalents 0.9'],
    },
    {
      what: 'less acid than the scale needs',
      recipe: { ...withAcid({ excessFactor: '0.9' }), scale: byOxide },
      found: [
        'problem supply-short at supplies.1: taken 0.036 mol, needed 0.04 mol, equivalents 0.9',
        'doubt not-the-scale-limits at scale: scale 0.0400 mol',
      ],
    },
    {
      what: 'just enough to be practically equal',
      recipe: withAcid({ excessFactor: '1.01' }),
      found: ['remark practically-equal at supplies.1: equivalents 1.01, excess 1 %'],
    },
    { what: 'just too much for that', recipe: withAcid({ excessFactor: '1.011' }), found: [] },
    {
      what: 'a balance that shows nothing',
      recipe: zincWith({ instruments: { balance: '10 g' } }),
      found: ['problem below-readability at supplies.0: shown 0 g, unrounded 3.255 g'],
    },
    {
      what: 'a coarse cylinder',
      recipe: zincWith({ instruments: { cylinder: '1 mL' } }),
      found: ['doubt rounded-visibly at supplies.1: shown 15 mL, unrounded 14.66666667 mL'],
    },
    { what: 'one per cent off', recipe: printed('1 g', { balance: '0.99 g' }), found: [] },
    {
      what: 'more than one per cent off',
      recipe: printed('1 g', { balance: '0.98 g' }),
      found: ['doubt rounded-visibly at supplies.0: shown 0.98 g, unrounded 1 g'],
    },
    {
      what: 'a cylinder that is too small',
      recipe: zincWith({ instruments: { cylinderCapacity: '14.6 mL' } }),
      found: ['doubt beyond-vessel at supplies.1: volume 14.7 mL, capacity 14.6 mL'],
    },
    {
      what: 'a cylinder that just holds it',
      recipe: zincWith({ instruments: { cylinderCapacity: '14.7 mL' } }),
      found: [],
    },
    {
      what: 'alkali that was left and takes acid',
      recipe: alum,
      found: [
        'remark alkali-or-acid-cleared at supplies.2: naive 0.05 mol, need 0.0625 mol, difference 0.0125 mol',
        'remark practically-equal at supplies.2: equivalents 1, excess 0 %',
      ],
    },
    {
      what: 'a carbonate for which no acid is left', // 5 g of 115.85 g/mol
      recipe: withCarbonate,
      found: ['remark supply-not-needed at supplies.2: taken 0.0431581 mol', 'doubt claim-does-not-hold at claims.0: '],
    },
    {
      what: 'a solubility that nobody knows',
      recipe: cooledTo('90 degC', '8 mL'),
      found: ['remark solubility-unknown at crystallisation: '],
    },
    {
      what: 'two labels on one bottle',
      recipe: zincWith({ supplies: [oxide, stock] }),
      found: [
        'doubt rounded-visibly at supplies.1: shown 2.4 mL, unrounded 2.443 mL',
        'doubt concentration-inconsistent at supplies.1: printed 16 mol/L, calculated 18.01 mol/L',
      ],
    },
    {
      what: 'an excess that is stated well',
      recipe: { ...withAcid({}), claims: [{ of: 'H2SO4', excess: '10 %' }] },
      found: ['remark claim-holds at claims.0: equivalents 1.1, excess 10 %'],
    },
    {
      what: 'what limits, stated wrongly, after a claim that holds',
      recipe: {
        ...withAcid({}),
        claims: [
          { of: 'ZnO', limiting: true },
          { of: 'H2SO4', limiting: true },
        ],
      },
      found: [
        'remark claim-holds at claims.0: equivalents 1, excess 0 %',
        'doubt claim-does-not-hold at claims.1: equivalents 1.1, excess 10 %',
      ],
    },
  ])('$what', ({ recipe, found }) => expect(ofPlan(recipe)).toEqual(found))

  it.each([
    ['1.0025 g', '1.002 g'],
    ['1.0035 g', '1.004 g'],
  ])('half a step of the balance goes to the even one: %s is shown as %s', (mass, shown) => {
    expect(planPreparation(printed(mass, { balance: '0.001 g' })).supplies[0]?.measure.toString()).toBe(shown)
  })

  it('a claim is told as it was made', () => {
    const claims = [
      { of: 'ZnO', limiting: true },
      { of: 'H2SO4', excess: '12 %' },
    ] as const
    expect(planPreparation(zincWith({ claims })).findings.map(({ message }) => message)).toEqual([
      'That ZnO limits holds by the amounts given.',
      'That H2SO4 is in 12 % excess does not hold by the amounts given.',
    ])
  })

  it('less than half crystallises from much water', () => {
    const [finding, ...others] = planPreparation(cooledTo('5 degC', '20 mL')).findings
    expect(others).toEqual([])
    expect(finding).toMatchObject({ code: 'much-stays-dissolved', severity: 'doubt', path: ['crystallisation'] })
    const { crop, complete, share } = finding?.numbers ?? {}
    expect(complete?.toString()).toBe('11.502 g')
    expect(share?.value.lt(50)).toBe(true)
    expect(
      crop
        ?.dividedBy(complete as never)
        .to('%')
        .value.minus(share?.value ?? 0)
        .abs()
        .lt('1e-20'),
    ).toBe(true)
  })
})

const records = (product: Records['product'], supplies: Records['supplies'] = []): Records => ({
  format: 'saltwright/records@1',
  supplies,
  product,
})
const weighed = { substance: 'ZnO', mass: '3.255 g' }

describe('a finding of an assessment does, too', () => {
  it.each<{ what: string; given: Records; found: readonly string[] }>([
    {
      what: 'a supply lighter with its vessel than without',
      given: records({ mass: '9.00 g' }, [{ substance: 'ZnO', gross: '24.2 g', tare: '27.5 g' }]),
      found: [
        'problem gross-below-tare at supplies.0: difference -3.3 g',
        'remark supply-not-recorded at supplies: planned 3.255 g',
      ],
    },
    {
      what: 'a product lighter with its vessel than without',
      given: records({ gross: '11.2 g', tare: '20.3 g' }, [weighed]),
      found: ['problem gross-below-tare at product: difference -9.1 g'],
    },
    {
      what: 'no product',
      given: records({ mass: '0.00 g' }, [weighed]),
      found: ['doubt nothing-obtained at product: actual 0.00 g, theoretical 11.50 g, percentYield 0.0 %'],
    },
    {
      what: 'too much product',
      given: records({ mass: '12.62 g' }, [weighed]),
      found: [
        'problem yield-over-100 at product: actual 12.62 g, theoretical 11.50 g, percentYield 109.7 %, beyond 1.12 g',
      ],
    },
    {
      what: 'a crop that was still drying',
      given: records({ series: ['20.400 g', '20.317 g'], tare: '11.204 g', constancy: { within: '0.005 g' } }, [
        weighed,
      ]),
      found: ['doubt not-constant-mass at product.series: change -0.083 g, limit 0.005 g'],
    },
    {
      what: 'less acid than was planned', // 10.0 mL of 3.00 mol/L for 0.0400 mol of oxide
      given: records({ mass: '8.00 g' }, [weighed, { substance: 'H2SO4', volume: '10.0 mL' }]),
      found: ['doubt other-limits at supplies: used 0.0300 mol, equivalents 0.750'],
    },
  ])('$what', ({ given, found }) => expect(assessPreparation(zincSulfate, given).findings.map(told)).toEqual(found))
})

it('a finding of a class keeps its numbers', () => {
  const { findings } = planClass(withAcid({ excessFactor: '0.9' }), [
    { name: 'Bench 1', scale: { amount: '0.0800 mol' } },
  ])
  expect(findings.map(told)).toEqual([
    'problem supply-short at benches.0.supplies.1: taken 0.072 mol, needed 0.08 mol, equivalents 0.9',
  ])
  expect(findings[0]?.message).toMatch(/^Bench 1: There is less H2SO4/)
})
