import {
  assessPreparation,
  planClass,
  planPreparation,
  type Recipe,
  recipeJsonSchema,
  recordsJsonSchema,
} from 'saltwright/preparation'
import { assessmentSheet, benchSheet } from 'saltwright/report'
import { describe, expect, it } from 'vitest'
import { doubleSaltAsPrinted, zincSulfate } from './recipes.js'

const precipitation: Recipe = {
  format: 'saltwright/recipe@1',
  title: 'Potassium nitrate through barium sulfate',
  product: 'KNO3',
  productName: 'potassium nitrate',
  scale: { of: 'KNO3', amount: '0.100 mol' },
  stages: [
    { name: 'precipitate', equation: 'Ba(NO3)2 + K2SO4 -> BaSO4 + 2KNO3' },
    { name: 'evaporate', equation: 'H2O(l) -> H2O(g)' },
  ],
  supplies: [
    { form: 'solid', substance: 'Ba(NO3)2' },
    { form: 'solid', substance: 'K2SO4', excessFactor: '1.05' },
  ],
}

describe('recipes out of the ordinary', () => {
  it('water that only changes its state has no extent', () => {
    const [, evaporate] = planPreparation(precipitation).stages
    expect(evaporate?.extent.toString()).toBe('0 mol')
    expect(evaporate?.gases).toEqual([])
  })

  it('a metal that is not in the product leaves as waste, all of it', () => {
    const [barium] = planClass(precipitation, [{ name: 'Bench 1', scale: { amount: '0.100 mol' } }]).waste
    expect(barium?.metal).toBe('Ba')
    expect(barium?.inProduct.toString()).toBe('0 mol')
    expect(barium?.inLiquor.toString()).toBe('0.05 mol')
  })

  it('a metal that counts twice in a supply counts twice in the waste', () => {
    const recipe: Recipe = {
      ...precipitation,
      product: 'BaSO4',
      scale: { of: 'BaSO4', amount: '0.0300 mol' },
      stages: [{ name: 'precipitate', equation: 'Al2(SO4)3 + 3BaCl2 -> 3BaSO4 + 2AlCl3' }],
      supplies: [
        { form: 'solid', substance: 'Al2(SO4)3' },
        { form: 'solid', substance: 'BaCl2' },
      ],
    }
    const { waste } = planClass(recipe, [{ name: 'Bench 1', scale: { amount: '0.0300 mol' } }])
    expect(waste.map(({ metal, used }) => `${metal} ${used}`)).toEqual(['Al 0.02 mol', 'Ba 0.03 mol'])
  })

  describe('a product that comes from two supplies', () => {
    const recipe: Recipe = {
      ...precipitation,
      title: 'Potassium sulfate',
      product: 'K2SO4',
      productName: 'potassium sulfate',
      scale: { of: 'KOH', amount: '0.100 mol' },
      stages: [
        { name: 'neutralise', equation: '2KOH + H2SO4 -> K2SO4 + 2H2O' },
        { name: 'use up the acid', equation: 'K2CO3 + H2SO4 -> K2SO4 + H2O + CO2(g)', clears: 'H2SO4' },
      ],
      supplies: [
        { form: 'solid', substance: 'KOH', name: 'potassium hydroxide' },
        { form: 'solution', substance: 'H2SO4', concentration: '3 mol/L', excessFactor: '1.2' },
        { form: 'solid', substance: 'K2CO3', asPrinted: '0.006 mol' },
      ],
    }
    const plan = planPreparation(recipe)

    it('is limited by both', () => {
      expect(plan.limiting).toEqual(['KOH', 'K2CO3'])
      expect(plan.theoretical.amount.toString()).toBe('0.056 mol')
      expect(benchSheet(plan)).toContain('Limited by: potassium hydroxide and K₂CO₃.')
    })

    it('is assessed by both', () => {
      const assessment = assessPreparation(recipe, { format: 'saltwright/records@1', product: { mass: '8.00 g' } })
      expect(assessmentSheet(assessment)).toContain('follows from potassium hydroxide and K₂CO₃.')
    })
  })

  it('a table that ends before five kelvins more says nothing of filtering too warm', () => {
    const { cooling } = planPreparation({ ...zincSulfate, crystallisation: { temperature: '28 degC', water: '8 mL' } })
    expect(cooling?.known === true && cooling.tooWarm).toBeUndefined()
  })

  it('water by mass counts as water by volume', () => {
    const cooled = (water: string) =>
      planPreparation({ ...zincSulfate, crystallisation: { temperature: '5 degC', water } }).cooling
    expect(JSON.stringify(cooled('8.0 g'))).toBe(JSON.stringify(cooled('8.0 mL')))
  })

  it('a recipe as printed is assessed by its own amounts', () => {
    const assessment = assessPreparation(doubleSaltAsPrinted, {
      format: 'saltwright/records@1',
      product: { mass: '15.50 g' },
    })
    expect(assessment.percentYield.toString()).toBe('79.06 %')
    expect(assessment.used[0]?.excess?.equivalents.value.toString()).toBe('1')
  })

  it("a course's own atomic weights are named in every result", () => {
    const wall = { name: 'wall chart', values: { Zn: '65.4', S: '32.1', O: '16.0', H: '1.01' } }
    const plan = planPreparation({ ...zincSulfate, atomicWeights: wall })
    expect(plan.atomicWeights).toBe('wall chart')
    expect(plan.supplies[0]?.measure.toString()).toBe('3.256 g')
    expect(benchSheet(plan)).toContain('Relative atomic masses: wall chart.')
  })

  it('where no product can form from what was used, there is no percent yield', () => {
    const records = {
      format: 'saltwright/records@1',
      supplies: [{ substance: 'ZnO', mass: '0.000 g' }],
      product: { mass: '0.000 g' },
    } as const
    expect(() => assessPreparation(zincSulfate, records)).toThrow(
      expect.objectContaining({ problems: [expect.objectContaining({ code: 'preparation/no-product-possible' })] }),
    )
  })
})

describe('the shapes of recipes and records', () => {
  it.each([
    { name: 'recipe', schema: recipeJsonSchema(), format: 'saltwright/recipe@1' },
    { name: 'records', schema: recordsJsonSchema(), format: 'saltwright/records@1' },
  ])('$name as JSON Schema asks for its format', ({ schema, format }) => {
    expect(schema).toMatchObject({ type: 'object', properties: { format: { const: format } } })
  })
})
