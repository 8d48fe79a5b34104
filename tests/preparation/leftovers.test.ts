import { assessPreparation, planPreparation, type Recipe, type Records } from 'saltwright/preparation'
import { describe, expect, it } from 'vitest'
import { halfOfIt, oxalate as trioxalate } from '../review/recipes.js'
import { zincSulfate } from './recipes.js'

/** Alum in which the acid first clears the alkali that dissolving the metal left; all of the filtrate goes on. */
const alum: Recipe = {
  ...halfOfIt,
  scale: { of: 'Al', amount: '0.0400 mol' },
  stages: halfOfIt.stages.map(({ aliquot: _, ...stage }) => stage),
  supplies: [
    { form: 'solid', substance: 'Al' },
    { form: 'solution', substance: 'KOH', concentration: '2.00 mol/L', excessFactor: '1.5' },
    { form: 'solution', substance: 'H2SO4', concentration: '5.00 mol/L', excessFactor: '1.05' },
  ],
}

const recorded = (supplies: Records['supplies']): Records => ({
  format: 'saltwright/records@1',
  supplies: supplies ?? [],
  product: { mass: '12.000 g' },
})

describe('what is not recorded counts as planned, whatever else was used', () => {
  // The plan says 18.9 mL of acid, 0.0945 mol: 1.05 times 0.0800 mol for the aluminium and 0.0100 mol for the alkali left over.
  it.each([
    // 0.0945 mol - (0.1000 - 0.0400) mol / 2 = 0.0645 mol of acid for 0.03225 mol of alum at 474.372 g/mol
    { aluminium: '1.0793 g', alkali: '50.0 mL', grams: 15.299, limiting: ['H2SO4'] },
    // 0.0945 mol - (0.0800 - 0.0400) mol / 2 = 0.0745 mol of acid for 0.03725 mol of alum
    { aluminium: '1.0793 g', alkali: '40.0 mL', grams: 17.67, limiting: ['H2SO4'] },
    // 1.0793 g of aluminium are 0.04000 mol, and 30.0 mL leave 0.0200 mol of alkali: acid enough
    { aluminium: '1.0793 g', alkali: '30.0 mL', grams: 18.975, limiting: ['Al'] },
  ])('$alkali of alkali: $grams g at most', ({ aluminium, alkali, grams, limiting }) => {
    const assessment = assessPreparation(
      alum,
      recorded([
        { substance: 'Al', mass: aluminium },
        { substance: 'KOH', volume: alkali },
      ]),
    )
    expect(assessment.used.map(({ measure }) => measure.toString())).toEqual([aluminium, alkali, '18.9 mL'])
    expect(assessment.theoretical.mass.value.toNumber()).toBeCloseTo(grams, 2)
    expect(assessment.limiting).toEqual(limiting)
  })
})

describe('a scale by what goes in', () => {
  const recipe: Recipe = { ...alum, scale: { of: 'Al', mass: '1.000 g' }, stages: halfOfIt.stages }

  it('counts what is taken, though only a part of it goes on', () => {
    const plan = planPreparation(recipe)
    expect(plan.supplies[0]?.measure.toString()).toBe('1.000 g')
    expect(plan.theoretical.mass.value.toNumber()).toBeCloseTo((0.5 / 26.982) * 474.372, 3)
  })

  it('is what moles per mole are per mole of', () => {
    const [aluminium, , acid] = alum.supplies as [Recipe['supplies'][0], unknown, Recipe['supplies'][0]]
    const alkali = { form: 'solution', substance: 'KOH', concentration: '2.00 mol/L', molesPerMole: '3' } as const
    const { supplies } = planPreparation({ ...recipe, supplies: [aluminium, alkali, acid] })
    expect(supplies[1]?.amount.value.toNumber()).toBeCloseTo(3 / 26.982, 10)
  })

  it.each([
    ['3.15 g', '3.2 g'],
    ['3.25 g', '3.2 g'],
    ['3.35 g', '3.4 g'],
  ])('of %s is %s on a balance that shows tenths: a tie goes to the even digit', (mass, shown) => {
    const plan = planPreparation({
      ...alum,
      scale: { of: 'KNO3', mass },
      product: 'KNO3·NH4NO3',
      stages: [{ name: 'join', equation: 'KNO3 + NH4NO3 -> KNO3·NH4NO3' }],
      supplies: [
        { form: 'solid', substance: 'KNO3' },
        { form: 'solid', substance: 'NH4NO3' },
      ],
      instruments: { balance: '0.1 g' },
    })
    expect(plan.supplies[0]?.measure.toString()).toBe(shown)
  })
})

/** Oxalic acid goes in twice: 1.10 times the need at first, and what that leaves helps at the end. */
const oxalate = (excessFactor: string): Recipe => ({
  ...trioxalate,
  scale: { of: '(NH4)2Fe(SO4)2·6H2O', amount: '0.0250 mol' },
  supplies: trioxalate.supplies.map((supply) =>
    supply.form === 'solution' && supply.stage === 'Dissolve' ? { ...supply, excessFactor } : supply,
  ),
})

it('a scale by what there is always enough of is what the stages use of it in all', () => {
  const plan = planPreparation({ ...zincSulfate, scale: { of: 'H2O', amount: '0.240 mol' } })
  expect(plan.theoretical.amount.value.toNumber()).toBeCloseTo(0.04, 12) // one made and seven used
})

describe('what is left of a supply when more of it goes in', () => {
  // 0.0025 mol of oxalic acid are left of 0.0275 mol; the end needs 0.0125 mol
  it.each([
    { factor: '0.9', codes: [] },
    { factor: '0.8', codes: ['practically-equal'] },
    { factor: '0.7', codes: ['supply-short', 'not-the-scale-limits'] },
    { factor: '1.2', codes: [] },
  ])('counts: $factor times the need says $codes', ({ factor, codes }) => {
    const plan = planPreparation(oxalate(factor))
    expect(plan.findings.map(({ code }) => code)).toEqual(codes)
    expect(plan.supplies.map(({ left }) => left?.value.toNumber())).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      0.0025,
    ])
  })

  it('is not what an earlier stage makes for it: that is part of the need', () => {
    const plan = planPreparation({
      format: 'saltwright/recipe@1',
      title: 'Ammonium copper(II) sulfate hexahydrate',
      product: '(NH4)2Cu(SO4)2·6H2O',
      scale: { of: 'CuSO4', amount: '0.0400 mol' },
      stages: [
        { name: 'precipitate', equation: 'CuSO4 + 2NH3 + 2H2O -> Cu(OH)2 + (NH4)2SO4' },
        { name: 'join', equation: 'Cu(OH)2 + 2(NH4)2SO4 + 4H2O -> (NH4)2Cu(SO4)2·6H2O + 2NH3' },
      ],
      supplies: [
        { form: 'solid', substance: 'CuSO4', weighedAs: 'CuSO4·5H2O' },
        { form: 'solution', substance: 'NH3', concentration: '2.00 mol/L', stage: 'precipitate' },
        { form: 'solid', substance: '(NH4)2SO4', stage: 'join' },
      ],
    })
    const { need, left } = plan.supplies[2] as (typeof plan.supplies)[0]
    expect([need.toString(), left]).toEqual(['0.04 mol', undefined]) // half of what the stage uses was made before
    expect(plan.findings.filter(({ code }) => code === 'supply-short')).toEqual([])
  })
})
