import { isSaltwrightError } from 'saltwright'
import { planPreparation, type Recipe, type RecipeStage } from 'saltwright/preparation'
import { describe, expect, it } from 'vitest'
import { alum } from './recipes.js'

/** Path and code of every problem of the alum recipe with one stage changed. */
function problemsWith(index: number, change: Partial<RecipeStage>): readonly string[] {
  const stages = alum.stages.map((stage, at) => (at === index ? { ...stage, ...change } : stage))
  return problemsOf({ ...alum, stages })
}

function problemsOf(recipe: Recipe): readonly string[] {
  try {
    planPreparation(recipe)
  } catch (error) {
    if (!isSaltwrightError(error)) throw error
    return (error.problems ?? []).map(({ path = [], code, found }) => `${path.join('.')} ${code} ${found}`)
  }
  return []
}

describe('what a stage says of leftovers', () => {
  it.each<{ what: string; at: number; change: Partial<RecipeStage>; problems: readonly string[] }>([
    {
      what: 'clears what its equation does not have',
      at: 1,
      change: { clears: 'NaOH' },
      problems: ['stages.1.clears preparation/clears-nothing NaOH'],
    },
    {
      what: 'clears what its equation makes',
      at: 1,
      change: { clears: 'K2SO4' },
      problems: ['stages.1.clears preparation/clears-nothing K2SO4'],
    },
    {
      what: 'takes away what never came in',
      at: 4,
      change: { removes: ['KOH', 'NaCl', 'CaO'] },
      problems: [
        'stages.4.removes.1 preparation/removes-nothing NaCl',
        'stages.4.removes.2 preparation/removes-nothing CaO',
      ],
    },
    {
      what: 'takes away what only comes later',
      at: 1,
      change: { removes: ['Al(OH)3'] },
      problems: ['stages.1.removes.0 preparation/removes-nothing Al(OH)3'],
    },
    {
      what: 'takes away what a later stage uses',
      at: 3,
      change: { removes: ['Al(OH)3'] },
      problems: ['stages.3.equation preparation/missing-supply Al(OH)3'],
    },
  ])('is refused where it $what', ({ at, change, problems }) => expect(problemsWith(at, change)).toEqual(problems))

  it('is refused where stages have nothing to do with one another', () => {
    const stages = [{ name: 'burn', equation: 'CaCO3 -> CaO + CO2' }, ...alum.stages]
    const supplies: Recipe['supplies'] = [...alum.supplies, { form: 'solid', substance: 'CaCO3' }]
    expect(problemsOf({ ...alum, stages, supplies })).toEqual([
      'stages preparation/stages-not-linked 2 independent ways',
    ])
  })
})

describe('stages that contradict one another', () => {
  it('are refused where one would not run at all', () => {
    const recipe: Recipe = {
      format: 'saltwright/recipe@1',
      title: 'Potassium chloride, by too many ways',
      product: 'KCl',
      scale: { of: 'KCl', amount: '0.100 mol' },
      stages: [
        { name: 'slake', equation: 'K2O + H2O -> 2KOH' },
        { name: 'dissolve', equation: '2K + 2H2O -> 2KOH + H2' },
        { name: 'neutralise', equation: 'Cl2 + H2 + 2KOH -> 2KCl + 2H2O' },
      ],
      supplies: ['K2O', 'K', 'Cl2'].map((substance) => ({ form: 'solid', substance })),
    }
    expect(problemsOf(recipe)).toEqual(['stages preparation/stages-contradict 0, 1, 1'])
  })
})

describe('what is taken away', () => {
  const oxalate: Recipe = {
    format: 'saltwright/recipe@1',
    title: 'Iron(II) oxalate, washed and oxidised',
    product: 'Fe2(C2O4)3',
    scale: { of: 'FeSO4', amount: '0.0200 mol' },
    stages: [
      { name: 'precipitate', equation: 'FeSO4 + H2C2O4 -> FeC2O4 + H2SO4' },
      { name: 'oxidise', equation: '2FeC2O4 + H2O2 + H2C2O4 -> Fe2(C2O4)3 + 2H2O', removes: ['H2C2O4', 'H2SO4'] },
    ],
    supplies: [
      { form: 'solid', substance: 'FeSO4' },
      { form: 'solid', substance: 'H2C2O4', stage: 'precipitate', excessFactor: '1.5' },
      { form: 'solid', substance: 'H2C2O4', stage: 'oxidise' },
      { form: 'solution', substance: 'H2O2', concentration: '1 mol/L' },
    ],
  }

  it('does not go on, and is told with its amount', () => {
    const plan = planPreparation(oxalate)
    expect(plan.stages[1]?.removed.map(({ formula, amount }) => `${formula} ${amount.value}`)).toEqual([
      'H2C2O4 0.01',
      'H2SO4 0.02',
    ])
    expect(plan.leftovers).toEqual([])
  })

  it('serves no later stage: each portion has its own need', () => {
    const needs = planPreparation(oxalate).supplies.map(
      ({ substance, stage, need }) => `${substance} ${stage} ${need.value}`,
    )
    expect(needs).toEqual([
      'FeSO4 precipitate 0.02',
      'H2C2O4 precipitate 0.02',
      'H2C2O4 oxidise 0.01',
      'H2O2 oxidise 0.01',
    ])
  })

  it('may have been supplied to an earlier stage that does not use it', () => {
    const [precipitate, oxidise] = oxalate.stages as readonly [RecipeStage, RecipeStage]
    const stages = [
      { name: 'dissolve', equation: 'FeSO4·7H2O -> FeSO4 + 7H2O' },
      precipitate,
      { ...oxidise, removes: ['H2C2O4', 'H2SO4', 'NaCl'] },
      { name: 'spend', equation: 'NaCl + AgNO3 -> AgCl + NaNO3', clears: 'NaCl' },
    ]
    const supplies: Recipe['supplies'] = [
      { form: 'solid', substance: 'FeSO4·7H2O' },
      ...oxalate.supplies.slice(1),
      { form: 'solid', substance: 'NaCl', stage: 'dissolve', molesPerMole: '1' },
      { form: 'unlimited', substance: 'AgNO3' },
    ]
    expect(problemsOf({ ...oxalate, stages, supplies })).toEqual(['stages.3.equation preparation/missing-supply NaCl'])
  })
})
