import { planBenches, planClass, type Recipe } from 'saltwright/preparation'
import { preparationRoomSheet } from 'saltwright/report'
import { describe, expect, it } from 'vitest'
import { zincSulfate } from './recipes.js'

const acid = { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' } as const
const withStock = (madeFrom: object): Recipe =>
  ({
    ...zincSulfate,
    supplies: [
      { form: 'solid', substance: 'ZnO' },
      { ...acid, madeFrom },
    ],
  }) as Recipe
const benches = [
  { name: 'Bench 1', scale: { amount: '0.0400 mol' } },
  { name: 'Bench 2', scale: { mass: '14.377 g' } },
]
const toPrepare = (options: Parameters<typeof planClass>[2]): readonly string[] =>
  planClass(zincSulfate, benches, options).store.map((line) => line.toPrepare.toString())

describe('a class', () => {
  it('plans every bench at its own scale', () => {
    const { benches: plans } = planClass(zincSulfate, benches)
    expect(plans.map(({ name, plan }) => `${name} ${plan.supplies[0]?.measure}`)).toEqual([
      'Bench 1 3.255 g',
      'Bench 2 4.069 g',
    ])
  })

  it.each([
    { what: 'without spare', options: {}, store: ['7.324 g', '33 mL'] },
    { what: 'with two benches more', options: { spare: { benches: 2 } }, store: ['14.648 g', '66 mL'] },
    { what: 'with a quarter more', options: { spare: { percent: '25 %' } }, store: ['9.155 g', '41.3 mL'] },
    {
      what: 'in whole containers',
      options: { containers: { mass: '5 g', volume: '250 mL' } },
      store: ['10 g', '250 mL'],
    },
  ])('adds up what to prepare $what', ({ options, store }) => expect(toPrepare(options)).toEqual(store))

  it('adds up what to prepare to what the balance and the cylinder of the recipe show', () => {
    const instruments = { balance: '0.01 g', cylinder: '0.5 mL' }
    const { store } = planClass({ ...zincSulfate, instruments }, benches, { spare: { percent: '7 %' } })
    expect(store.map(({ total, toPrepare: next }) => `${total} ${next}`)).toEqual(['7.33 g 7.85 g', '33 mL 35.5 mL'])
  })

  it.each([
    {
      from: { massFraction: '96 %', density: '1.84 g/mL' },
      take: '5.50',
      stockIntoWater: true,
      strength: ['96 %', '1.84 g/mL'],
    },
    {
      from: { massFraction: '80 %', density: '1.84 g/mL', statedAs: 'SO3' }, // 18.39 mol/L
      take: '5.38',
      stockIntoWater: true,
      strength: ['80 %', '1.84 g/mL'],
    },
    { from: { concentration: '6.00 mol/L' }, take: '16.50', stockIntoWater: false, strength: ['6.00 mol/L'] },
    { from: { solid: 'H2SO4' }, take: '9.71', stockIntoWater: false, strength: [] },
    { from: { solid: 'H2SO4', assay: '98 %' }, take: '9.91', stockIntoWater: false, strength: ['98 %'] },
  ])('says how a solution is made from $from', ({ from, take, stockIntoWater, strength }) => {
    const making = planClass(withStock(from), benches).store[1]?.making
    expect(making?.strength.map(String)).toEqual(strength)
    expect(making?.from).toBe('H2SO4')
    expect(making?.take.value.toFixed(2)).toBe(take)
    expect(making?.makeUpTo.toString()).toBe('33 mL')
    expect(making?.stockIntoWater).toBe(stockIntoWater)
  })

  it('says how a solution is made from a solid', () => {
    const recipe: Recipe = {
      format: 'saltwright/recipe@1',
      title: 'Barium sulfate',
      product: 'BaSO4',
      scale: { of: 'BaSO4', amount: '0.0100 mol' },
      stages: [{ name: 'Precipitate', equation: 'BaCl2 + Na2SO4 -> BaSO4 + 2NaCl' }],
      supplies: [
        {
          form: 'solution',
          substance: 'BaCl2',
          concentration: '0.100 mol/L',
          madeFrom: { solid: 'BaCl2·2H2O', assay: '99 %' },
        },
        { form: 'solution', substance: 'Na2SO4', concentration: '0.500 mol/L' },
      ],
    }
    const [barium, sodium] = planClass(recipe, [{ name: 'Bench 1', scale: { amount: '0.0100 mol' } }]).store
    expect(barium?.making?.from).toBe('BaCl2·2H2O')
    expect(barium?.making?.take.value.toFixed(3)).toBe('2.467')
    expect(sodium?.making).toBeUndefined()
  })

  it('is told with what its store holds', () => {
    const { format, title, store } = planClass(zincSulfate, benches, { spare: { benches: 1 } })
    expect({ format, title }).toEqual({ format: 'saltwright/class-plan@1', title: 'Zinc sulfate heptahydrate' })
    // 0.0400 and 0.0500 mol of product, and half as much again for a third bench; acid 1.10 times the oxide
    expect(
      store.map(({ total, withSpare, amount, concentration, making, ...line }) => ({
        ...line,
        numbers: [total, withSpare, concentration, making].map(String),
        amount: amount.to('mol').value.toFixed(4),
      })),
    ).toMatchObject([
      {
        substance: 'ZnO',
        name: 'zinc oxide',
        taken: 'ZnO',
        form: 'solid',
        numbers: ['7.324 g', '10.986 g', 'undefined', 'undefined'],
        amount: '0.1350',
      },
      {
        substance: 'H2SO4',
        name: 'sulfuric acid',
        taken: 'H2SO4',
        form: 'solution',
        numbers: ['33 mL', '49.5 mL', '3.00 mol/L', 'undefined'],
        amount: '0.1485',
      },
    ])
  })

  it('takes the substance that the recipe is scaled by where a bench names none', () => {
    const byOxide = { ...zincSulfate, scale: { of: 'ZnO', amount: '1 mol' } }
    const [bench] = planClass(byOxide, [{ name: 'Bench 1', scale: { mass: '3.255 g' } }]).benches
    expect(bench?.plan.theoretical.mass.value.toFixed(2)).toBe('11.50')
    expect(bench?.plan.scale.formula).toBe('ZnO')
  })

  it('lets a bench scale by another substance', () => {
    const [bench] = planClass(zincSulfate, [{ name: 'Bench 1', scale: { of: 'ZnO', mass: '3.255 g' } }]).benches
    expect(bench?.plan.theoretical.mass.value.toFixed(2)).toBe('11.50')
  })

  it('counts what leaves of each metal, at most and at least', () => {
    const { waste, liquidWaste } = planClass(zincSulfate, benches)
    expect(
      waste.map(({ metal, used, inLiquor }) => `${metal} ${used.value.toFixed(3)} ${inLiquor.value.toFixed(3)}`),
    ).toEqual(['Zn 0.090 0.000'])
    expect(liquidWaste.toString()).toBe('33 mL')
  })

  it('has no liquid waste where everything is weighed, and no metal where there is none', () => {
    const recipe: Recipe = {
      format: 'saltwright/recipe@1',
      title: 'Ammonium sulfate',
      product: '(NH4)2SO4',
      scale: { of: '(NH4)2SO4', amount: '0.1 mol' },
      stages: [{ name: 'neutralise', equation: '2NH4HCO3 + H2SO4 -> (NH4)2SO4 + 2H2O + 2CO2(g)' }],
      supplies: [
        { form: 'solid', substance: 'NH4HCO3' },
        { form: 'solid', substance: 'H2SO4' },
      ],
    }
    const plan = planClass(recipe, [{ name: 'Bench 1', scale: { amount: '0.1 mol' } }])
    expect(plan.waste).toEqual([])
    expect(plan.liquidWaste.toString()).toBe('0 mL')
  })

  it('puts the bench in front of what should be looked at, and leaves remarks to the bench sheets', () => {
    const short = { ...zincSulfate, supplies: [zincSulfate.supplies[0], { ...acid, excessFactor: '0.9' }] } as Recipe
    const { findings } = planClass(short, benches)
    expect(findings.map(({ path, code }) => `${path.join('.')} ${code}`)).toEqual([
      'benches.0.supplies.1 supply-short',
      'benches.1.supplies.1 supply-short',
    ])
  })

  it('leaves remarks to the bench sheets, where there is nothing else', () => {
    const close = { ...zincSulfate, supplies: [zincSulfate.supplies[0], { ...acid, excessFactor: '1.005' }] } as Recipe
    const { findings, benches: plans } = planClass(close, benches)
    expect(plans[0]?.plan.findings.map(({ code }) => code)).toEqual(['practically-equal'])
    expect(findings).toEqual([])
  })

  it('can be planned bench by bench', () => {
    const plans = planBenches(zincSulfate, benches)
    expect(plans.next().value?.name).toBe('Bench 1')
    expect(JSON.stringify([...planBenches(zincSulfate, benches)])).toBe(
      JSON.stringify(planClass(zincSulfate, benches).benches),
    )
  })
})

describe('what a class needs beside its supplies', () => {
  const recipe: Recipe = {
    ...zincSulfate,
    auxiliaries: [
      { name: 'water', amount: '20 mL' },
      { name: 'charcoal', amount: '0.5 g' },
    ],
    washes: [
      { with: 'ice-cold water', volume: '2 mL' },
      { with: 'cold ethanol', volume: '3 mL', portions: 3 },
      { with: 'water', volume: '5 mL', portions: 2 },
    ],
  }

  it('is added up by name, with every portion of a wash, the spare and whole containers', () => {
    const twice = [
      { name: 'Bench 1', scale: { amount: '0.0400 mol' } },
      { name: 'Bench 2', scale: { amount: '0.0800 mol' } },
    ]
    const { aids } = planClass(recipe, twice, { spare: { percent: '50 %' }, containers: { volume: '100 mL' } })
    expect(aids.map((line) => `${line.name}: ${line.total}, ${line.withSpare}, ${line.toPrepare}`)).toEqual([
      'water: 90 mL, 135 mL, 200 mL',
      'charcoal: 1.5 g, 2.25 g, 2.25 g',
      'ice-cold water: 6 mL, 9 mL, 100 mL',
      'cold ethanol: 27 mL, 40.5 mL, 100 mL',
    ])
  })

  it('is on the list of the preparation room', () => {
    const sheet = preparationRoomSheet(planClass(recipe, benches))
    expect(sheet).toMatch(/charcoal +1\.125 g +1\.125 g +1\.125 g/)
    expect(sheet).toMatch(/cold ethanol +20\.25 mL/)
  })

  it('is nothing where the recipe says of nothing', () => expect(planClass(zincSulfate, benches).aids).toEqual([]))
})
