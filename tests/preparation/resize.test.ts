import { type Bench, planBenches, type Recipe } from 'saltwright/preparation'
import { describe, expect, it } from 'vitest'
import { doubleSaltAsPrinted, zincSulfate } from './recipes.js'

const batch: Pick<Recipe, 'auxiliaries' | 'washes' | 'crystallisation'> = {
  auxiliaries: [{ name: 'charcoal', amount: '0.5 g' }],
  washes: [{ with: 'cold ethanol', volume: '3 mL', portions: 3 }],
  crystallisation: { temperature: '5 degC', water: '17 mL', evaporated: '9 mL' },
}
const atBench = (recipe: Recipe, scale: Bench['scale']): Recipe | undefined =>
  [...planBenches({ ...recipe, ...batch }, [{ name: 'Bench 1', scale }])][0]?.plan.recipe

describe('a bench at another scale', () => {
  it.each<{ what: string; recipe: Recipe; scale: Bench['scale']; amounts: readonly string[] }>([
    {
      what: 'its own scale, letter by letter',
      recipe: zincSulfate,
      scale: { amount: '0.0400 mol' },
      amounts: ['0.5 g', '3 mL', '17 mL', '9 mL'],
    },
    {
      what: 'twice the amount',
      recipe: zincSulfate,
      scale: { amount: '0.0800 mol' },
      amounts: ['1 g', '6 mL', '34 mL', '18 mL'],
    },
    {
      what: 'a mass, to three figures',
      recipe: zincSulfate,
      scale: { mass: '10.000 g' },
      amounts: ['0.435 g', '2.61 mL', '14.8 mL', '7.82 mL'],
    },
    {
      what: 'another substance',
      recipe: zincSulfate,
      scale: { of: 'ZnO', amount: '0.0200 mol' },
      amounts: ['0.25 g', '1.5 mL', '8.5 mL', '4.5 mL'],
    },
    {
      what: 'a recipe that has no scale but what it prints',
      recipe: {
        ...doubleSaltAsPrinted,
        supplies: [
          { form: 'solid', substance: 'FeSO4', weighedAs: 'FeSO4·7H2O', asPrinted: '13.9 g' },
          { form: 'solid', substance: '(NH4)2SO4', asPrinted: '7.0 g' },
        ],
      },
      scale: { amount: '0.1 mol' }, // it is printed for 0.0499989 mol
      amounts: ['1 g', '6 mL', '34 mL', '18 mL'],
    },
  ])('says what is for the whole batch at $what', ({ recipe, scale, amounts }) => {
    const { auxiliaries, washes, crystallisation } = atBench(recipe, scale) as Recipe
    expect([
      auxiliaries?.[0]?.amount,
      washes?.[0]?.volume,
      crystallisation?.water,
      crystallisation?.evaporated,
    ]).toEqual(amounts)
  })

  it('scales what a manual prints of its supplies', () => {
    const [half] = planBenches(doubleSaltAsPrinted, [{ name: 'Bench 1', scale: { amount: '0.0250 mol' } }])
    // 13.9 g of FeSO4·7H2O at 278.006 g/mol are 0.0499989 mol, which limits; 0.0250 mol are 0.500011 of that
    expect(half?.plan.supplies.map(({ measure }) => measure.toString())).toEqual(['6.950 g', '3.500 g'])
    expect(half?.plan.theoretical.amount.value.toNumber()).toBeCloseTo(0.025, 6)
    expect(half?.plan.recipe.supplies.map((supply) => 'asPrinted' in supply && supply.asPrinted)).toEqual([
      '6.95015 g',
      '3.50008 g',
    ])
  })

  it('does not scale it by another substance', () => {
    const bench = { name: 'Bench 2', scale: { of: 'FeSO4', amount: '0.0250 mol' } }
    expect(() => [
      ...planBenches(doubleSaltAsPrinted, [{ name: 'Bench 1', scale: { amount: '1 mol' } }, bench]),
    ]).toThrow(
      expect.objectContaining({
        problems: [
          expect.objectContaining({ code: 'preparation/printed-at-one-scale', path: ['benches', 1, 'scale', 'of'] }),
        ],
      }),
    )
  })

  it('leaves out what the recipe does not say', () => {
    const plain = { ...zincSulfate, crystallisation: { temperature: '5 degC' } }
    const [bench] = planBenches(plain, [{ name: 'Bench 1', scale: { amount: '0.0800 mol' } }])
    expect(bench?.plan.recipe).toEqual({ ...plain, scale: { of: 'ZnSO4·7H2O', amount: '0.0800 mol' } })
  })
})
