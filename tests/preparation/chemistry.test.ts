import { planPreparation, type Recipe, type RecipeStage, type RecipeSupply } from 'saltwright/preparation'
import { describe, expect, it } from 'vitest'
import { parseEquation } from '../../src/equation/index.js'
import { changesOf } from '../../src/preparation/chemistry.js'
import { speciesKey } from '../../src/stoichiometry/index.js'
import { alum } from './recipes.js'

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
      what: 'dissolve what a later stage takes, between stages that run more and less often',
      given: recipe(
        'Cu2CO3(OH)2',
        [
          stage('slake', '2 K2O + 2 H2O -> 4 KOH'),
          stage('dissolve', 'CuSO4(s) -> CuSO4(aq)'),
          stage('precipitate', 'CuSO4(aq) + 2 KOH -> Cu(OH)2 + K2SO4'),
          stage('carbonate', '2 Cu(OH)2 + H2CO3 -> Cu2CO3(OH)2 + 2 H2O'),
        ],
        [
          { form: 'solid', substance: 'K2O' },
          { form: 'solid', substance: 'CuSO4', stage: 'dissolve' },
          { form: 'solid', substance: 'H2CO3' },
        ],
      ),
      overall: '2 K2O + 2 CuSO4(s) + H2CO3 -> 2 K2SO4 + Cu2CO3(OH)2',
      extents: ['0.1', '0.2', '0.2', '0.1'],
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

it('has nothing of a stage that only clears a leftover, not even its states', () => {
  const { overall } = planPreparation(
    recipe(
      'FeSO4·7H2O',
      [
        stage('dissolve', 'Fe + H2SO4 -> FeSO4 + H2'),
        stage('use up the acid', 'FeCO3 + H2SO4 -> FeSO4(s) + CO2 + H2O', { clears: 'H2SO4' }),
        stage('crystallise', 'FeSO4(aq) + 7 H2O -> FeSO4·7H2O'),
      ],
      [
        { form: 'solid', substance: 'Fe' },
        { form: 'solution', substance: 'H2SO4', concentration: '3 mol/L', excessFactor: '1.1' },
        { form: 'solid', substance: 'FeCO3' },
      ],
    ),
  )
  expect(overall.toString()).toBe('Fe + H2SO4 + 7 H2O -> H2 + FeSO4·7H2O')
})

describe('what a stage does with a substance', () => {
  const change = (equation: string, substance: string) => changesOf(parseEquation(equation)).get(speciesKey(substance))

  it.each([
    ['2 A -> B', undefined],
    ['2 CuO + 3 ZnO -> 4 CuO', '2/1'],
    ['5 CuO -> 1/2 CuO + ZnO', '-9/2'],
    ['CuO(s) -> CuO(aq)', '0/1'],
  ])('is counted over both sides: %s', (equation, moles) => {
    const { numerator, denominator } = change(equation.replace('A', 'C').replace('B', 'N'), 'CuO')?.moles ?? {}
    expect(numerator === undefined ? undefined : `${numerator}/${denominator}`).toBe(moles)
  })

  it('is written as it stands first, without its state', () => {
    expect(change('CuSO4.5H2O(s) -> CuSO4·5H2O(aq)', 'CuSO4·5H2O')?.formula).toBe('CuSO4·5H2O')
  })

  it.each(['H2', 'O2', 'N2', 'Cl2', 'CO', 'CO2', 'N2O', 'NO', 'NO2', 'SO2', 'H2S'])(
    '%s leaves as a gas, unless it is said to stay',
    (gas) => {
      const isGas = (equation: string) => change(equation, gas)?.gas
      expect([`CuO -> ${gas}`, `CuO -> ${gas}(g)`, `CuO -> ${gas}(aq)`].map(isGas)).toEqual([true, true, false])
      expect([`${gas}(aq) -> ${gas}(g)`, `${gas}(g) -> ${gas}(aq)`].map(isGas)).toEqual([true, true])
    },
  )

  it.each(['NH3', 'HCl', 'H2O', 'CuO'])('%s stays, unless it is said to leave', (substance) => {
    expect(change(`ZnO -> ${substance}`, substance)?.gas).toBe(false)
    expect(change(`ZnO -> ${substance}(g)`, substance)?.gas).toBe(true)
    expect(change(`ZnO -> ${substance}↑`, substance)?.gas).toBe(true)
  })
})

describe('the heat of a stage', () => {
  const heats = (product: string, ...equations: readonly string[]) => {
    const reactants = equations.flatMap((equation) => equation.split(' -> ')[0]?.split(' + ') ?? [])
    const supplies = reactants.filter((one) => one !== product).map((one) => one.replace(/^2 /, ''))
    const stages = equations.map((equation, index) => stage(`stage ${index}`, equation))
    const plan = planPreparation(
      recipe(
        product,
        stages,
        supplies.map((substance) => ({ form: 'solid', substance })),
      ),
    )
    return plan.stages.map(({ heat }) => heat?.heat.toString())
  }

  // -285.830 kJ/mol for water less -230.015 kJ/mol for hydroxide: 55.815 kJ per mole of water that forms
  it.each([
    {
      what: 'a strong acid and a strong base',
      product: 'NaCl',
      equation: 'HCl + NaOH -> NaCl + H2O',
      heat: '5.5815 kJ',
    },
    { what: 'two moles of water', product: 'K2SO4', equation: 'H2SO4 + 2 KOH -> K2SO4 + 2 H2O', heat: '11.163 kJ' },
    { what: 'a weak acid', product: 'NaCH3COO', equation: 'CH3COOH + NaOH -> NaCH3COO + H2O', heat: undefined },
    { what: 'a weak base', product: 'NH4Cl', equation: 'HCl + NH3 -> NH4Cl', heat: undefined },
    { what: 'no water that forms', product: 'NaOHHCl', equation: 'HCl + NaOH -> NaOHHCl', heat: undefined },
    { what: 'an oxide', product: 'ZnSO4', equation: 'ZnO + H2SO4 -> ZnSO4 + H2O', heat: undefined },
  ])('of $what', ({ product, equation, heat }) => expect(heats(product, equation)).toEqual([heat]))
})

describe('aliquots', () => {
  it('of several stages multiply', () => {
    // a half of a quarter of what is made first goes on to the end, so eight times as much is made
    const { supplies, stages, overall } = planPreparation(
      recipe(
        'KAl(SO4)2·12H2O',
        [
          stage('precipitate', '2 AlCl3 + 6 KOH -> 2 Al(OH)3 + 6 KCl'),
          stage('dissolve', '2 Al(OH)3 + 3 H2SO4 -> Al2(SO4)3 + 6 H2O', { aliquot: '0.25' }),
          stage('crystallise', 'Al2(SO4)3 + K2SO4 + 24 H2O -> 2 KAl(SO4)2·12H2O', { aliquot: '50 %' }),
        ],
        [
          { form: 'solid', substance: 'AlCl3' },
          { form: 'solid', substance: 'KOH' },
          { form: 'solid', substance: 'H2SO4' },
          { form: 'solid', substance: 'K2SO4' },
        ],
      ),
    )
    expect(supplies.map(({ substance, need }) => `${substance} ${need.value}`)).toEqual([
      'AlCl3 0.8',
      'KOH 2.4',
      'H2SO4 0.3',
      'K2SO4 0.05',
    ])
    expect(stages.map(({ extent }) => `${extent.value}`)).toEqual(['0.4', '0.1', '0.05'])
    expect(overall.toString()).toBe('2 AlCl3 + 6 KOH + 3 H2SO4 + 18 H2O + K2SO4 -> 6 KCl + 2 KAl(SO4)2·12H2O')
  })
})

describe('thirds', () => {
  const made = (
    product: string,
    equation: string,
    reactants: readonly string[],
    scale: { of: string; amount: string },
  ) =>
    planPreparation({
      ...recipe(
        product,
        [stage('dissolve', equation)],
        reactants.map((substance) => ({ form: 'solid', substance })),
      ),
      scale,
    })

  it.each([1, 2, 4, 5, 7, 10])('leave no crumbs of the last digits behind: %d mmol', (millimoles) => {
    const amount = `${millimoles}e-3 mol`
    const chloride = made('AlCl3', '2 Al + 6 HCl -> 2 AlCl3 + 3 H2', ['Al', 'HCl'], { of: 'HCl', amount })
    const phosphate = made('Fe3(PO4)2', '3 FeO + 2 H3PO4 -> Fe3(PO4)2 + 3 H2O', ['FeO', 'H3PO4'], { of: 'FeO', amount })
    expect([chloride.leftovers, phosphate.leftovers]).toEqual([[], []])
  })
})

describe('a substance that goes in more than once', () => {
  const [metal, alkali] = alum.supplies as readonly [RecipeSupply, RecipeSupply]
  const acid = { form: 'solid', substance: 'H2SO4' } as const
  const needs = (...acids: readonly RecipeSupply[]) =>
    planPreparation({ ...alum, supplies: [metal, alkali, ...acids] })
      .supplies.slice(2)
      .map(({ stage: at, naiveNeed, need }) => `${at}: ${naiveNeed.value}, ${need.value}`)

  // 0.025 mol of aluminium: 0.0125 mol of acid bring the hydroxide down, 0.0375 mol dissolve it again; half of the 0.050 mol of
  // alkali is left and takes 0.0125 mol more
  it('has for each portion the need up to the next', () => {
    expect(needs({ ...acid, stage: 'neutralise' }, { ...acid, stage: 'redissolve' })).toEqual([
      'neutralise: 0.0125, 0.025',
      'redissolve: 0.0375, 0.0375',
    ])
  })

  it('has all of it at once where it goes in once', () => {
    expect(needs(acid)).toEqual(['neutralise: 0.05, 0.0625'])
  })
})
