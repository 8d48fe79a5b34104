import { planPreparation, type Recipe, type RecipeStage } from 'saltwright/preparation'
import { describe, expect, it } from 'vitest'

const recipe = (product: string, stages: readonly RecipeStage[], supplies: Recipe['supplies']): Recipe => ({
  format: 'saltwright/recipe@1',
  title: product,
  product,
  scale: { of: product, amount: '0.100 mol' },
  stages,
  supplies,
})
const stage = (name: string, equation: string, more: Partial<RecipeStage> = {}): RecipeStage => ({
  name,
  equation,
  ...more,
})

describe('stages that only change states', () => {
  it.each([
    {
      what: 'bring down what an earlier stage made',
      given: recipe(
        'KNO3',
        [stage('exchange', 'NaNO3(aq) + KCl(aq) -> KNO3(aq) + NaCl(s)'), stage('cool', '2 KNO3(aq) -> 2 KNO3(s)')],
        [
          { form: 'solid', substance: 'NaNO3' },
          { form: 'solid', substance: 'KCl' },
        ],
      ),
      overall: 'NaNO3(aq) + KCl(aq) -> NaCl(s) + KNO3(s)',
      extents: ['0.1', '0.05'],
    },
    {
      what: 'dissolve what a later stage takes',
      given: recipe(
        'CuSO4·5H2O',
        [
          stage('dissolve', 'CuSO4(s) -> CuSO4(aq)'),
          stage('crystallise', 'CuSO4(aq) + 5 H2O(l) -> CuSO4·5H2O(s)', { aliquot: '0.5' }),
        ],
        [{ form: 'solid', substance: 'CuSO4', stage: 'dissolve' }],
      ),
      overall: 'CuSO4(s) + 5 H2O(l) -> CuSO4·5H2O(s)',
      extents: ['0.2', '0.1'],
    },
    {
      what: 'boil off water that nobody measures',
      given: recipe(
        'ZnSO4·7H2O',
        [stage('dissolve', 'ZnO(s) + H2SO4(aq) + 6 H2O(l) -> ZnSO4·7H2O(s)'), stage('evaporate', 'H2O(l) -> H2O(g)')],
        [
          { form: 'solid', substance: 'ZnO' },
          { form: 'solution', substance: 'H2SO4', concentration: '3 mol/L' },
        ],
      ),
      overall: 'ZnO(s) + H2SO4(aq) + 6 H2O(l) -> ZnSO4·7H2O(s)',
      extents: ['0.1', '0'],
    },
  ])('$what', ({ given, overall, extents }) => {
    const plan = planPreparation(given)
    expect(plan.theoretical.amount.value.toFixed()).toBe('0.1')
    expect(plan.overall.toString()).toBe(overall)
    expect(plan.stages.map(({ extent }) => extent.value.toFixed())).toEqual(extents)
  })
})

describe('the overall equation', () => {
  it('is of what goes on, not of what an aliquot leaves behind', () => {
    const { overall, supplies } = planPreparation(
      recipe(
        '(NH4)2Fe(SO4)2·6H2O',
        [
          stage('dissolve', 'Fe(s) + H2SO4(aq) -> FeSO4(aq) + H2(g)'),
          stage('join', 'FeSO4(aq) + (NH4)2SO4(aq) + 6 H2O(l) -> (NH4)2Fe(SO4)2·6H2O(s)', { aliquot: '50 %' }),
        ],
        [
          { form: 'solid', substance: 'Fe' },
          { form: 'solution', substance: 'H2SO4', concentration: '3 mol/L' },
          { form: 'solid', substance: '(NH4)2SO4' },
        ],
      ),
    )
    expect(overall.toString()).toBe('Fe(s) + H2SO4(aq) + (NH4)2SO4(aq) + 6 H2O(l) -> H2(g) + (NH4)2Fe(SO4)2·6H2O(s)')
    expect(supplies.map(({ need }) => need.value.toFixed())).toEqual(['0.2', '0.2', '0.1'])
  })
})
