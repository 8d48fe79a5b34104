import { assessPreparation, planPreparation, type Recipe, type Records } from 'saltwright/preparation'
import type { Quantity } from 'saltwright/quantity'
import { describe, expect, it } from 'vitest'
import { namesIn } from '../quantity/names.js'
import { alum, zincSulfate } from './recipes.js'

const recipe = { ...zincSulfate, crystallisation: { temperature: '5 degC', water: '8 mL' } }
const records = (product: Records['product'], supplies: Records['supplies'] = []): Records => ({
  format: 'saltwright/records@1',
  bench: 'Bench 1',
  supplies,
  product,
})
const codes = (given: Records): readonly string[] => assessPreparation(recipe, given).findings.map(({ code }) => code)
const oxide = { substance: 'ZnO', gross: '27.455 g', tare: '24.200 g' }

describe('an assessment', () => {
  const assessment = assessPreparation(
    planPreparation(recipe),
    records({ gross: '20.317 g', tare: '11.204 g' }, [oxide]),
  )

  it('weighs by difference and keeps the figures that the weighings allow', () => {
    expect(assessment.actual.mass.toString()).toBe('9.113 g')
    expect(assessment.theoretical.mass.toString()).toBe('11.50 g')
    expect(assessment.percentYield.toString()).toBe('79.24 %')
  })

  it('says what was recorded and what counts as planned', () => {
    expect(assessment.used.map(({ substance, recorded, measure }) => `${substance} ${recorded} ${measure}`)).toEqual([
      'ZnO true 3.255 g',
      'H2SO4 false 14.7 mL',
    ])
    expect(assessment.findings).toEqual([])
  })

  it('accounts for the loss without making it add up', () => {
    expect(assessment.losses.map(({ item, mass }) => `${item} ${mass}`)).toEqual([
      'theoretical 11.50 g',
      'left in liquor 3.54 g',
      'washed away undefined',
      'recovered 9.113 g',
      'unexplained -1.15 g',
    ])
  })

  it.each([
    { washes: [{ with: 'ice water', volume: '1 mL', portions: 3, substance: 'H2O' }], washed: '3.6' },
    { washes: [{ with: 'ice water', volume: '1 mL', substance: 'H2O' }], washed: '1.2' },
    { washes: [{ with: 'cold ethanol', volume: '3 mL', portions: 3, substance: 'C2H6O' }], washed: undefined },
    { washes: [{ with: 'something cold', volume: '3 mL' }], washed: undefined },
    {
      washes: [
        { with: 'ice water', volume: '1 mL', substance: 'H2O' },
        { with: 'cold ethanol', volume: '3 mL', substance: 'C2H6O' },
      ],
      washed: undefined,
    },
    {
      washes: [
        { with: 'ice water', volume: '1 mL', substance: 'H2O' },
        { with: 'more of it', volume: '0.5 mL', portions: 4, substance: 'H2O' },
      ],
      washed: '3.6',
    },
    { washes: [], washed: undefined },
  ])('counts what washing takes away only where it is water: $washes', ({ washes, washed }) => {
    const { losses } = assessPreparation({ ...recipe, washes }, records({ mass: '7.000 g' }, [oxide]))
    expect(losses.find(({ item }) => item === 'washed away')?.mass?.value.toFixed(1)).toBe(washed)
  })

  it('knows nothing of washing where no temperature is said, or no solubility known', () => {
    const washes = [{ with: 'water', volume: '1 mL', substance: 'H2O' }]
    const washedAway = (changed: object) =>
      assessPreparation({ ...recipe, washes, ...changed } as Recipe, records({ mass: '7.000 g' }, [oxide])).losses[2]
        ?.mass
    expect(washedAway({ crystallisation: undefined })).toBeUndefined()
    expect(washedAway({ crystallisation: { temperature: '90 degC' } })).toBeUndefined()
  })

  it('takes the recipe as well as the plan', () => {
    const again = assessPreparation(recipe, records({ gross: '20.317 g', tare: '11.204 g' }, [oxide]))
    expect(JSON.stringify(again)).toBe(JSON.stringify(assessment))
  })
})

describe('the product', () => {
  it.each([
    { how: 'from a tared balance', product: { mass: '9.113 g' } },
    { how: 'from a tared balance, whatever its vessel weighs', product: { mass: '9.113 g', gross: '20.317 g' } },
    { how: 'from a tared balance beside a series', product: { mass: '9.113 g', series: ['20.317 g'] } },
    { how: 'by difference beside a tare alone', product: { mass: '9.113 g', tare: '11.204 g' } },
    {
      how: 'with cap and label weighed apart',
      product: { gross: '21.787 g', tare: ['11.204 g', '1.352 g', '0.118 g'] },
    },
    { how: 'from the last weighing of a series', product: { series: ['20.400 g', '20.317 g'], tare: '11.204 g' } },
    {
      how: 'from two vessels',
      product: {
        vessels: [
          { gross: '15.204 g', tare: '11.204 g' },
          { gross: '16.314 g', tare: '11.201 g' },
        ],
      },
    },
  ])('is weighed $how', ({ product }) => {
    expect(assessPreparation(recipe, records(product)).actual.mass.toString()).toBe('9.113 g')
  })

  it('shows a zero where the balance shows one, also in whole grams', () => {
    const whole = records({ gross: '120 g', tare: '107 g' }, [{ substance: 'ZnO', gross: '30 g', tare: '28 g' }])
    const { actual, used, percentYield } = assessPreparation(recipe, whole)
    expect([actual.mass, used[0]!.measure].map(String)).toEqual(['13 g', '2 g'])
    expect(percentYield.significantFigures).toBe(1)
    expect(percentYield.value.toNumber()).toBeCloseTo((13 / 2) * (81.379 / 287.54) * 100, 2)
  })

  it('is corrected for its purity', () => {
    const { correctedYield } = assessPreparation(recipe, records({ mass: '9.113 g', purity: '98.0 %' }))
    expect(correctedYield?.toString()).toBe('77.6 %')
  })
})

describe('records of a substance that goes in twice', () => {
  const twice = {
    ...alum,
    supplies: [
      ...alum.supplies.slice(0, 2),
      { form: 'solution', substance: 'H2SO4', concentration: '6 mol/L', stage: 'neutralise' },
      { form: 'solution', substance: 'H2SO4', concentration: '6 mol/L', stage: 'redissolve' },
    ],
  } as const
  const used = (...supplies: NonNullable<Records['supplies']>) =>
    assessPreparation(twice, records({ mass: '5.0 g' }, supplies))
      .used.slice(2)
      .map(({ recorded, measure }) => `${recorded} ${measure.to('mL' as never)}`)
  const acid = (volume: string, stage?: string) => ({ substance: 'H2SO4', volume, ...(stage && { stage }) })

  it('count in the order in which it goes in, unless they name the stage', () => {
    expect(used(acid('4.20 mL'), acid('6.30 mL'))).toEqual(['true 4.20 mL', 'true 6.30 mL'])
    expect(used(acid('6.30 mL', 'redissolve'), acid('4.20 mL'))).toEqual(['true 4.20 mL', 'true 6.30 mL'])
    // 0.025 mol at 6 mol/L, as planned
    expect(used(acid('6.30 mL', 'redissolve'))).toEqual(['false 4.2 mL', 'true 6.30 mL'])
  })

  it('are refused where they name a stage that it does not go into', () => {
    expect(() => used(acid('1.0 mL', 'crystallise'))).toThrow(
      expect.objectContaining({
        problems: [
          expect.objectContaining({
            code: 'preparation/unknown-stage',
            path: ['supplies', 0, 'stage'],
            found: 'crystallise',
            expected: 'neutralise, redissolve',
          }),
        ],
      }),
    )
  })
})

describe('what was used', () => {
  it('is named as it was measured, and compared with the need', () => {
    const { used } = assessPreparation(
      recipe,
      records({ mass: '8.000 g' }, [oxide, { substance: 'H2SO4', volume: '14.7 mL' }]),
    )
    expect(used.map(({ substance, name }) => `${substance}, ${name}`)).toEqual([
      'ZnO, zinc oxide',
      'H2SO4, sulfuric acid',
    ])
    // 3.255 g of oxide are 0.0399980 mol; 0.0441 mol of acid are 1.1025 of the need by the plan's 0.0400 mol
    expect(used.map(({ excess }) => `${excess?.equivalents} ${excess?.percentExcess}`)).toEqual([
      '1.000 0.0 %',
      '1.10 10. %',
    ])
    expect(used.map(({ measure: { naming } }) => [naming.symbol, naming.role, naming.of])).toEqual([
      ['m', 'net', 'ZnO'],
      ['V', 'volume', 'H2SO4'],
    ])
  })

  it('of a pure liquid may be weighed or measured', () => {
    const liquid = { form: 'liquid', substance: 'H2SO4', density: '1.83 g/mL', excessFactor: '1.10' } as const
    const acids = [{ volume: '2.35 mL' }, { mass: '4.30 g' }].map((measure) => {
      const given = records({ mass: '8.000 g' }, [oxide, { substance: 'H2SO4', ...measure }])
      return assessPreparation({ ...recipe, supplies: [recipe.supplies[0], liquid] as never }, given).used[1]
    })
    // 2.35 mL · 1.83 g/mL / 98.072 g/mol; 4.30 g / 98.072 g/mol
    expect(acids.map((acid) => acid?.amount.toString())).toEqual(['0.0439 mol', '0.0438 mol'])
  })
})

describe('the product of an assessment', () => {
  const { product, actual, theoretical, correctedYield, percentYield, title, bench, atomicWeights, format } =
    assessPreparation(recipe, records({ mass: '9.113 g', purity: '98.0 %' }, [oxide]))

  it('is told in every respect', () => {
    expect({ format, title, bench, atomicWeights }).toEqual({
      format: 'saltwright/assessment@1',
      title: 'Zinc sulfate heptahydrate',
      bench: 'Bench 1',
      atomicWeights: 'abridged',
    })
    expect(product).toMatchObject({ formula: 'ZnSO4·7H2O', name: 'ZnSO4·7H2O' })
    expect(product.molarMass.toString()).toBe('287.54 g/mol')
    expect([actual.amount, theoretical.amount].map(String)).toEqual(['0.03169 mol', '0.04000 mol'])
  })

  it('is named on paper', () => {
    const naming = (q: Quantity | undefined) => ({ ...q?.naming, label: undefined })
    expect(naming(actual.mass)).toEqual({ symbol: 'm', role: 'actual yield' })
    expect(naming(actual.amount)).toEqual({ symbol: 'n', of: 'ZnSO4·7H2O' })
    expect(naming(theoretical.amount)).toEqual({ symbol: 'n', of: 'ZnSO4·7H2O', role: 'theoretical yield' })
    expect(naming(theoretical.mass)).toEqual({ symbol: 'm', of: 'ZnSO4·7H2O', role: 'theoretical yield' })
    expect(naming(percentYield)).toEqual({ role: 'percent yield' })
    expect(naming(correctedYield)).toEqual({ role: 'percent yield' })
    expect(namesIn(correctedYield)).toContain('w, purity, -')
  })
})

describe('findings of an assessment', () => {
  it.each<{ what: string; given: Records; found: readonly string[] }>([
    {
      what: 'gross below tare',
      given: records({ gross: '11.2 g', tare: '20.3 g' }, [oxide]),
      found: ['gross-below-tare'],
    },
    {
      what: 'nothing obtained',
      given: records({ gross: '11.2 g', tare: '11.2 g' }, [oxide]),
      found: ['nothing-obtained'],
    },
    { what: 'over 100 %', given: records({ mass: '12.62 g' }, [oxide]), found: ['yield-over-100'] },
    { what: 'the limiting supply not recorded', given: records({ mass: '9 g' }), found: ['supply-not-recorded'] },
    {
      what: 'a supply with gross below tare counts as planned',
      given: records({ mass: '9 g' }, [{ substance: 'ZnO', gross: '24.2 g', tare: '27.5 g' }]),
      found: ['gross-below-tare', 'supply-not-recorded'],
    },
    {
      what: 'at rest on a balance that cannot show it',
      given: records({ series: ['20.32 g', '20.32 g'], tare: '11.20 g', constancy: { within: '0.005 g' } }, [oxide]),
      found: ['criterion-below-readability'],
    },
    {
      what: 'at rest on a balance that just can',
      given: records({ series: ['20.32 g', '20.32 g'], tare: '11.20 g', constancy: { within: '10 mg' } }, [oxide]),
      found: [],
    },
    {
      what: 'still falling',
      given: records({ series: ['20.400 g', '20.317 g'], tare: '11.204 g', constancy: { within: '0.005 g' } }, [oxide]),
      found: ['not-constant-mass'],
    },
    {
      what: 'at rest by a named criterion',
      given: records({ series: ['20.3174 g', '20.3171 g'], tare: '11.2040 g', constancy: 'ph-eur' }, [oxide]),
      found: [],
    },
    {
      what: 'per gram of the product, not of its vessel', // 0.5 mg per gram: 4.6 mg of 9.191 g, but 10.2 mg of 20.395 g
      given: records({ series: ['20.400 g', '20.395 g'], tare: '11.204 g', constancy: 'usp' }, [oxide]),
      found: ['not-constant-mass'],
    },
    {
      what: 'at rest per gram of the product',
      given: records({ series: ['20.400 g', '20.396 g'], tare: '11.204 g', constancy: 'usp' }, [oxide]),
      found: [],
    },
    {
      what: 'a criterion without a series',
      given: records({ mass: '9.113 g', constancy: 'ph-eur' }, [oxide]),
      found: [],
    },
    {
      what: 'per gram of nothing',
      given: records({ series: ['11.204 g', '11.204 g'], tare: '11.204 g', constancy: 'usp' }, [oxide]),
      found: ['nothing-obtained'],
    },
    {
      what: 'a series of one weighing is no series',
      given: records({ series: ['20.317 g'], tare: '11.204 g', constancy: 'ph-eur' }, [oxide]),
      found: [],
    },
    {
      what: 'per gram of a vessel that weighs more empty, nothing is judged',
      given: records({ series: ['11.205 g', '11.204 g'], tare: '20.317 g', constancy: 'usp' }, [oxide]),
      found: ['gross-below-tare'],
    },
  ])('$what', ({ given, found }) => expect(codes(given)).toEqual(found))

  it('a balance too coarse for the criterion is told with its step', () => {
    const series = { series: ['20.32 g', '20.32 g'], tare: '11.20 g', constancy: { within: '0.005 g' } }
    const [finding] = assessPreparation(recipe, records(series, [oxide])).findings
    expect(Object.entries(finding?.numbers ?? {}).map(([name, number]) => `${name} ${number}`)).toEqual([
      'step 0.01 g',
      'limit 0.005 g',
    ])
  })

  // 0.50 mg per gram: of the crystals alone, for their vessel does not dry.
  it.each<{ what: string; product: Records['product']; limit: string; reached: boolean }>([
    {
      what: '2.000 g of crystals that lost 5 mg',
      product: { series: ['20.3000 g', '20.2950 g'], tare: '18.3000 g', constancy: 'usp' },
      limit: '1.0000',
      reached: false,
    },
    {
      what: 'with the tare in parts',
      product: { series: ['20.3000 g', '20.2995 g'], tare: ['18.0000 g', '0.3000 g'], constancy: 'usp' },
      limit: '1.0000',
      reached: true,
    },
    {
      what: 'the mass from a tared balance, where no tare is recorded',
      product: { series: ['20.3000 g', '20.2980 g'], mass: '1.9980 g', constancy: 'usp' },
      limit: '0.9990',
      reached: false,
    },
  ])('a criterion per gram goes by the substance: $what', ({ product, limit, reached }) => {
    const { constancy } = assessPreparation(recipe, records(product, [oxide]))
    expect(constancy?.limit.to('mg').value.toFixed(4)).toBe(limit)
    expect(constancy?.reached).toBe(reached)
  })

  it('explains a yield over 100 % by what the data speak for first', () => {
    const { explanations, percentYield } = assessPreparation(
      recipe,
      records(
        { series: ['24.20 g', '23.82 g'], tare: '11.204 g', constancy: 'school-balance', mayBeIncluded: ['1.11 g'] },
        [oxide],
      ),
    )
    expect(percentYield.value.gt(100)).toBe(true)
    // 12.616 g of 11.50 g: the product without what may be included is 11.51 g, still too much; less water is lighter
    expect(explanations.map(({ code, support }) => `${code} ${support}`)).toEqual([
      'not-constant-mass supported',
      'numbers-swapped possible',
      'other-salts possible',
    ])
  })
})

describe('what was really used', () => {
  it('decides what limits', () => {
    const used = [oxide, { substance: 'H2SO4', volume: '10.0 mL' }]
    const { limiting, percentYield } = assessPreparation(recipe, records({ mass: '8.000 g' }, used))
    expect(limiting).toEqual(['H2SO4'])
    expect(percentYield.toString()).toBe('92.7 %')
  })

  it('counts with the assay and the concentration of this very bottle', () => {
    const used = [
      { substance: 'ZnO', mass: '3.255 g', assay: '98.0 %' },
      { substance: 'H2SO4', volume: '14.7 mL', concentration: '2.957 mol/L' },
    ]
    const assessment = assessPreparation(recipe, records({ mass: '8.000 g' }, used))
    expect(assessment.used.map(({ amount }) => amount.toString())).toEqual(['0.0392 mol', '0.0435 mol'])
  })
})
