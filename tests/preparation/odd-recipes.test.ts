import {
  assessPreparation,
  planClass,
  planPreparation,
  type Recipe,
  type RecipeSupply,
  recipeJsonSchema,
  recordsJsonSchema,
} from 'saltwright/preparation'
import { assessmentSheet, benchSheet } from 'saltwright/report'
import { describe, expect, it } from 'vitest'
import { planSummary } from '../../src/preparation/summaries.js'
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
    expect(waste[0]?.used.operands[0]?.operands[1]?.naming.label).toContain('Al')
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
      expect(planSummary(plan).rows.at(-1)).toEqual(['limited by', 'KOH, K₂CO₃'])
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

  describe("a course's own atomic weights count wherever a mass meets an amount", () => {
    // By round weights: ZnO 116, H2SO4 98, ZnSO4 196, ZnSO4·7H2O 322, H2 2 g/mol.
    const atomicWeights = { name: 'round', values: { Zn: '100', S: '32', O: '16', H: '1' } }
    const [oxide, acid] = zincSulfate.supplies as readonly [RecipeSupply, RecipeSupply]
    const planWith = (change: Partial<Recipe>) => planPreparation({ ...zincSulfate, atomicWeights, ...change })

    it('in the masses of supplies and of the product', () => {
      const { supplies, theoretical, product } = planWith({})
      expect([supplies[0]?.measure, theoretical.mass, product.molarMass].map(String)).toEqual([
        '4.640 g',
        '12.9 g',
        '322 g/mol',
      ])
    })

    it('in a scale by mass', () => {
      const { scale } = planWith({ scale: { of: 'ZnSO4·7H2O', mass: '32.2 g' } })
      expect(scale.amount.toString()).toBe('0.100 mol')
    })

    it('in what a manual prints', () => {
      const printed = { form: 'solid', substance: 'ZnO', asPrinted: '5.8 g' } as const
      expect(planWith({ supplies: [printed, acid] }).supplies[0]?.amount.toString()).toBe('0.0500 mol')
    })

    it.each([
      { form: 'stock', massFraction: '98 %', density: '2 g/mL' }, // 20 mol/L
      { form: 'molal', molality: '1 mol/kg', density: '2.196 g/mL' }, // 2.196 / 1.098 = 2 mol/L
      { form: 'liquid', density: '1.96 g/mL' }, // 20 mol/L
    ] as const)('in the strength of an acid that is $form', ({ ...strength }) => {
      const [, taken] = planWith({ supplies: [oxide, { substance: 'H2SO4', ...strength } as RecipeSupply] }).supplies
      expect(taken?.measure.toString()).toBe(strength.form === 'molal' ? '20.0 mL' : '2.0 mL')
    })

    it('in what a label prints beside it', () => {
      const stock = { form: 'stock', substance: 'H2SO4', massFraction: '98 %', density: '2 g/mL' } as const
      const codes = ['20 mol/L', '19.7 mol/L'].map((printedConcentration) =>
        planWith({ supplies: [oxide, { ...stock, printedConcentration }] }).findings.map(({ code }) => code),
      )
      expect(codes).toEqual([['practically-equal'], ['concentration-inconsistent', 'practically-equal']])
    })

    it('in the mass of a gas', () => {
      const { stages } = planWith({
        stages: [{ name: 'dissolve', equation: 'Zn + H2SO4 + 7H2O -> ZnSO4·7H2O + H2' }],
        supplies: [{ form: 'solid', substance: 'Zn' }, acid],
      })
      expect(stages[0]?.gases[0]?.mass.toString()).toBe('0.08 g')
    })

    it('in the solution of a class that is made from a solid or from a stock, and in what it holds', () => {
      const lines = [{ solid: 'H2SO4' }, { massFraction: '98 %', density: '2 g/mL' }].map((madeFrom) => {
        const solution = { form: 'solution', substance: 'H2SO4', concentration: '2 mol/L', madeFrom } as const
        const recipe = { ...zincSulfate, atomicWeights, supplies: [oxide, solution] }
        return planClass(recipe, [{ name: 'Bench 1', scale: { mass: '32.2 g' } }]).store
      })
      expect(lines.map(([, line]) => String(line?.making?.take))).toEqual(['9.8 g', '5.0 mL'])
      expect(lines[0]?.[0]?.amount.toString()).toBe('0.100 mol')
    })

    it('in an assessment: what was used, what was obtained, and what else it may be', () => {
      const { used, actual, explanations } = assessPreparation(planWith({}), {
        format: 'saltwright/records@1',
        supplies: [{ substance: 'ZnO', mass: '2.3200 g' }], // 0.02 mol, so 6.44 g is possible
        product: { mass: '16.100 g' },
      })
      expect([used[0]?.amount, actual.amount].map(String)).toEqual(['0.0200 mol', '0.0500 mol'])
      // 16.1 g is 2.5 times the 6.44 g of the heptahydrate: no hydrate with less water is as heavy
      expect(explanations.filter(({ code }) => code === 'other-hydrate')).toEqual([])
    })
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
