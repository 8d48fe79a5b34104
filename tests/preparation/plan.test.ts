import { planPreparation, type Recipe, type RecipeStage, type RecipeSupply } from 'saltwright/preparation'
import { describe, expect, it } from 'vitest'
import { alum, doubleSaltAsPrinted, zincSulfate } from './recipes.js'

const measures = (recipe: Recipe): readonly string[] =>
  planPreparation(recipe).supplies.map(({ substance, measure }) => `${substance} ${measure}`)

const codes = (recipe: Recipe): readonly string[] => planPreparation(recipe).findings.map(({ code }) => code)

describe('a plan', () => {
  it('says what to weigh and measure at the chosen scale', () => {
    expect(measures(zincSulfate)).toEqual(['ZnO 3.255 g', 'H2SO4 14.7 mL'])
  })

  it('gives the theoretical yield, the limiting supply and the overall equation', () => {
    const plan = planPreparation(zincSulfate)
    expect(plan.theoretical.mass.toString()).toBe('11.502 g')
    expect(plan.theoretical.amount.toString()).toBe('0.04 mol')
    expect(plan.limiting).toEqual(['ZnO'])
    expect(plan.overall.toString()).toBe('ZnO + H2SO4 + 6 H2O -> ZnSO4·7H2O')
    expect(plan.leftovers.map(({ formula, amount }) => `${formula} ${amount}`)).toEqual(['H2SO4 0.004 mol'])
  })

  it.each([
    { by: 'a mass of product', scale: { of: 'ZnSO4·7H2O', mass: '11.50164 g' } },
    { by: 'an amount of a supply', scale: { of: 'ZnO', amount: '0.0400 mol' } },
    { by: 'an amount of an intermediate', scale: { of: 'ZnSO4', amount: '0.0400 mol' } },
  ])('can be scaled by $by', ({ scale }) => {
    expect(measures({ ...zincSulfate, scale })).toEqual(['ZnO 3.255 g', 'H2SO4 14.7 mL'])
  })

  // 0.05 mol of CuO in five times its amount of acid at 6 mol/L: common practice, no source.
  it('never takes the figures of a choice for those of a reading: 0.25 mol at 6 mol/L is 41.7 mL', () => {
    const recipe: Recipe = {
      format: 'saltwright/recipe@1',
      title: 'Copper(II) sulfate pentahydrate',
      product: 'CuSO4·5H2O',
      scale: { of: 'CuO', amount: '0.050 mol' },
      stages: [{ name: 'dissolve and crystallise', equation: 'CuO + H2SO4 + 4H2O -> CuSO4·5H2O' }],
      supplies: [
        { form: 'solid', substance: 'CuO' },
        { form: 'solution', substance: 'H2SO4', concentration: '6 mol/L', molesPerMole: '5' },
      ],
    }
    expect(measures(recipe)).toEqual(['CuO 3.977 g', 'H2SO4 41.7 mL'])
  })
})

it('a plan is frozen all the way down, its recipe too', () => {
  const seen = new Set<object>()
  const isPlain = (value: object): boolean => [Object.prototype, Array.prototype].includes(Object.getPrototypeOf(value))
  const visit = (value: unknown): void => {
    if (typeof value !== 'object' || value === null || !isPlain(value)) return
    seen.add(value)
    for (const part of Object.values(value)) visit(part)
  }
  visit(planPreparation(zincSulfate))
  expect([...seen].filter((part) => !Object.isFrozen(part))).toEqual([])
  expect(seen.size).toBeGreaterThan(50)
})

describe('stages hand on what they leave', () => {
  // 0.025 mol: 25 mL of 2 mol/L alkali and 0.675 g of metal: common practice, no source.
  it('alum from aluminium: the acid for the alkali that is left is part of the need', () => {
    const plan = planPreparation(alum)
    expect(plan.supplies.map(({ substance, measure }) => `${substance} ${measure}`)).toEqual([
      'Al 0.675 g',
      'KOH 25.0 mL',
      'H2SO4 10.4 mL',
    ])
    const acid = plan.supplies[2]
    expect(acid?.naiveNeed.toString()).toBe('0.05 mol')
    expect(acid?.need.toString()).toBe('0.0625 mol')
    expect(plan.findings.map(({ code }) => code)).toContain('alkali-or-acid-cleared')
  })

  it('shows the hydrogen that leaves and the potassium sulfate that stays', () => {
    const plan = planPreparation(alum)
    expect(plan.stages[0]?.gases.map(({ gas, amount }) => `${gas} ${amount}`)).toEqual(['H2 0.0375 mol'])
    expect(plan.leftovers.map(({ formula, amount }) => `${formula} ${amount}`)).toEqual(['K2SO4 0.0125 mol'])
  })
})

describe('a recipe as printed', () => {
  it('is taken to the letter: a mass that is weighed, a volume that is measured; another measure is worked out', () => {
    const taken = (asPrinted: string) => {
      const [first, ...others] = doubleSaltAsPrinted.supplies
      const { supplies } = planPreparation({
        ...doubleSaltAsPrinted,
        supplies: [{ ...first, asPrinted } as never, ...others],
      })
      return supplies[0]?.exactMeasure
    }
    expect(['13.9 g', '0.0139 kg', '0.0500 mol'].map((text) => taken(text)?.toString())).toEqual([
      '13.9 g',
      '13.9 g',
      '13.900 g',
    ])
    expect(taken('13.9 g')?.naming).toEqual({
      label: 'mass of FeSO4·7H2O',
      symbol: 'm',
      of: 'FeSO4·7H2O',
      role: 'mass',
    })
  })

  it('is audited by its own amounts: equivalents, the limiting supply, and what is practically equal', () => {
    const plan = planPreparation(doubleSaltAsPrinted)
    expect(plan.limiting).toEqual(['FeSO4'])
    expect(plan.supplies.map(({ excess }) => excess?.equivalents.value.toFixed(3))).toEqual(['1.000', '1.060'])
    expect(plan.scale.formula).toBe('(NH4)2Fe(SO4)2·6H2O')
  })

  it.each([
    { claim: { of: 'FeSO4', limiting: true as const }, code: 'claim-holds' },
    { claim: { of: '(NH4)2SO4', limiting: true as const }, code: 'claim-does-not-hold' },
    { claim: { of: '(NH4)2SO4', excess: '6 %' }, code: 'claim-holds' },
    { claim: { of: '(NH4)2SO4', excess: '14 %' }, code: 'claim-does-not-hold' },
    { claim: { of: 'KNO3', limiting: true as const }, code: 'claim-does-not-hold' },
  ])('a claim is checked: $claim.of $code', ({ claim, code }) => {
    expect(codes({ ...doubleSaltAsPrinted, claims: [claim] })).toEqual([code])
  })
})

describe('a scale', () => {
  const acid = { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L' } as const
  const scaledBy = (oxide: object, stock: object, scale: object): Recipe =>
    ({
      ...zincSulfate,
      scale,
      supplies: [
        { form: 'solid', substance: 'ZnO', ...oxide },
        { ...acid, ...stock },
      ],
    }) as Recipe

  it('can be what a manual prints of a supply', () => {
    const plan = planPreparation(scaledBy({ asPrinted: '3.25516 g' }, {}, { of: 'ZnO' }))
    expect(plan.scale.amount.value.toFixed(4)).toBe('0.0400')
    expect(plan.supplies[1]?.measure.toString()).toBe('13.3 mL')
  })

  it('by a supply that does not limit is a doubt', () => {
    const recipe = scaledBy({}, { excessFactor: '0.9' }, { of: 'ZnO', amount: '0.0400 mol' })
    expect(codes(recipe)).toEqual(['supply-short', 'not-the-scale-limits'])
  })
})

describe('a gas', () => {
  const recipe = (product: string): Recipe => ({
    ...zincSulfate,
    stages: [{ name: 'dissolve and crystallise', equation: `Zn + H2SO4 + 7H2O -> ZnSO4·7H2O + ${product}` }],
    supplies: [{ form: 'solid', substance: 'Zn' }, zincSulfate.supplies[1] as Recipe['supplies'][number]],
  })

  it.each(['H2', 'H2(g)'])('%s leaves, whether its state is written or not', (product) => {
    const plan = planPreparation(recipe(product))
    expect(plan.stages[0]?.gases.map(({ gas }) => gas)).toEqual(['H2'])
    expect(plan.leftovers.map(({ formula }) => formula)).toEqual(['H2SO4'])
    expect(plan.cautions.map(({ code }) => code)).toContain('hydrogen')
  })

  it('that comes out as it went in is none that the stage makes', () => {
    const sparged = `Zn + H2SO4 + 7H2O + N2(g) -> ZnSO4·7H2O + H2 + N2(g)`
    const plan = planPreparation({ ...recipe('H2'), stages: [{ name: 'dissolve', equation: sparged }] })
    expect(plan.stages[0]?.gases.map(({ gas }) => gas)).toEqual(['H2'])
  })

  it('that is written as dissolved stays', () => {
    expect(planPreparation(recipe('H2(aq)')).stages[0]?.gases).toEqual([])
  })
})

describe('the cautions of a plan', () => {
  const cautionsOf = (change: Partial<Recipe>) => planPreparation({ ...zincSulfate, ...change }).cautions
  const named = (change: Partial<Recipe>) => cautionsOf(change).map(({ code, about }) => `${code} ${about}`)
  const wash = { with: 'alcohol', volume: '1 mL' } as const

  it.each<{ what: string; change: Partial<Recipe>; suction: number }>([
    { what: 'nothing filtered', change: {}, suction: 0 },
    { what: 'crystals that are washed', change: { washes: [wash] }, suction: 1 },
    { what: 'crystals that are cooled', change: { crystallisation: { temperature: '5 degC' } }, suction: 1 },
    { what: 'suction that the recipe names', change: { operations: ['suction', 'boil'] }, suction: 1 },
  ])('speak of suction once or never: $what', ({ change, suction }) => {
    expect(named(change).filter((code) => code.startsWith('suction'))).toHaveLength(suction)
  })

  it('speak of washes and aids of which the recipe says what they are', () => {
    const ofAlcohol = (change: Partial<Recipe>) => named(change).filter((code) => code.endsWith(' C2H5OH'))
    const both = ['substance-hazard C2H5OH', 'flammable-liquid C2H5OH']
    expect(ofAlcohol({ washes: [wash] })).toEqual([])
    expect(ofAlcohol({ washes: [{ ...wash, substance: 'C2H5OH' }] })).toEqual(both)
    expect(ofAlcohol({ auxiliaries: [{ name: 'alcohol', amount: '1 mL', substance: 'C2H5OH' }] })).toEqual(both)
    const alcohol = cautionsOf({ washes: [{ ...wash, substance: 'C2H5OH' }] }).find(
      (caution) => caution.about === 'C2H5OH',
    )
    expect(alcohol?.message).toMatch(/^alcohol: /)
  })

  it('speak of the heat of each scale', () => {
    const neutralised = (amount: string) =>
      planPreparation({
        format: 'saltwright/recipe@1',
        title: 'Sodium chloride',
        product: 'NaCl',
        scale: { of: 'NaCl', amount },
        stages: [{ name: 'neutralise', equation: 'HCl + NaOH -> NaCl + H2O' }],
        supplies: [
          { form: 'solution', substance: 'HCl', concentration: '2 mol/L' },
          { form: 'solution', substance: 'NaOH', concentration: '2 mol/L' },
        ],
      }).cautions.flatMap(({ numbers }) => numbers.heat?.toString() ?? [])
    expect([neutralised('0.1 mol'), neutralised('0.2 mol')]).toEqual([['5.5815 kJ'], ['11.163 kJ']])
  })

  it('tell where a classification is of another form than the solid that is weighed', () => {
    const weighed = { form: 'solid', substance: 'H2SO4', excessFactor: '1.10' } as const
    const [oxide, poured] = zincSulfate.supplies as readonly [RecipeSupply, RecipeSupply]
    const messages = [weighed, poured].map(
      (acid) => cautionsOf({ supplies: [oxide, acid] }).find(({ about }) => about === 'H2SO4')?.message,
    )
    expect(messages.map((message) => /Classified here as (\w+)/.exec(message ?? '')?.[1])).toEqual([
      'solution',
      undefined,
    ])
  })
})

it('stages have the steps that the recipe gives them', () => {
  const [dissolve, crystallise] = zincSulfate.stages as readonly [RecipeStage, RecipeStage]
  const { stages } = planPreparation({ ...zincSulfate, stages: [{ ...dissolve, steps: ['Stir.'] }, crystallise] })
  expect(stages.map(({ name, steps }) => ({ name, steps }))).toEqual([
    { name: 'dissolve', steps: ['Stir.'] },
    { name: 'crystallise', steps: [] },
  ])
})

it('where nothing of the product can form, nothing limits, and nothing is said of cooling', () => {
  const [metal, alkali] = alum.supplies as readonly [RecipeSupply, RecipeSupply]
  const little = { form: 'solution', substance: 'H2SO4', concentration: '6 mol/L', asPrinted: '1 mL' } as const
  const plan = planPreparation({
    ...alum,
    supplies: [metal, alkali, little], // 0.006 mol of acid, less than the 0.0125 mol that the alkali takes
    crystallisation: { temperature: '5 degC', water: '10 mL' },
  })
  expect([plan.theoretical.amount, plan.theoretical.mass].map(String)).toEqual(['0 mol', '0 g'])
  expect([plan.limiting, plan.cooling]).toEqual([[], undefined])
  expect(codes(plan.recipe)).toEqual(['supply-short', 'alkali-or-acid-cleared'])
})

describe('cooling', () => {
  const cooled = (crystallisation: NonNullable<Recipe['crystallisation']>, change: Partial<Recipe> = {}) => {
    const { cooling } = planPreparation({ ...zincSulfate, ...change, crystallisation })
    return cooling?.known === true ? cooling : undefined
  }
  const temperature = '5 degC'

  it('may be to a temperature below zero', () => {
    expect(
      planPreparation({ ...zincSulfate, crystallisation: { temperature: '-5 degC', water: '8 mL' } }).cooling,
    ).toMatchObject({ known: false })
  })

  it('is not estimated without water', () => expect(cooled({ temperature })).toBeUndefined())

  it('counts the water that is left: 8 mL less 2 mL as 6 g', () => {
    const kept = cooled({ temperature, water: '8 mL', evaporated: '2 mL' })
    expect(kept?.expected.crop.equals(cooled({ temperature, water: '6 g' })?.expected.crop as never)).toBe(true)
    expect(kept?.expected.crop.equals(cooled({ temperature, water: '8 g' })?.expected.crop as never)).toBe(false)
  })

  it('five kelvins too warm costs what is kept in solution at that temperature', () => {
    const crop = cooled({ temperature, water: '8 mL' })
    const warm = cooled({ temperature: '10 degC', water: '8 mL' })
    expect(crop?.tooWarm?.temperature.toString()).toBe('10 °C')
    expect(crop?.tooWarm?.lessBy.equals(crop.expected.crop.minus(warm?.expected.crop as never))).toBe(true)
    expect(crop?.tooWarm?.lessBy.naming).toMatchObject({ symbol: 'm', of: 'ZnSO4·7H2O' })
  })

  it('that brings nothing down costs nothing more when too warm', () => {
    const dilute = cooled({ temperature, water: '1000 mL' })
    expect(dilute?.expected.crop.value.isZero()).toBe(true)
    expect(dilute?.tooWarm).toBeUndefined()
  })

  it('goes by the atomic weights of the recipe', () => {
    const atomicWeights = { name: 'round', values: { Zn: '100', S: '32', O: '16', H: '1' } } // 0.0400 mol of 322 g/mol
    expect(cooled({ temperature, water: '8 mL' }, { atomicWeights })?.expected.complete.toString()).toBe('12.9 g')
  })
})
