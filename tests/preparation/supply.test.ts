import { assessPreparation, planPreparation, type Recipe, type RecipeSupply } from 'saltwright/preparation'
import { describe, expect, it } from 'vitest'
import { zincSulfate } from './recipes.js'

const [oxide] = zincSulfate.supplies as readonly [RecipeSupply]
const withAcid = (acid: object): Recipe => ({
  ...zincSulfate,
  supplies: [oxide, { substance: 'H2SO4', ...acid } as RecipeSupply],
})
const acidOf = (acid: object) => planPreparation(withAcid(acid)).supplies[1]

// 0.0400 mol of sulfuric acid, M = 98.072 g/mol with the abridged weights, worked out by hand for each form.
describe('a supply in each of its forms', () => {
  it.each<{ form: object; measure: string; concentration: string | undefined }>([
    { form: { form: 'solid' }, measure: '3.923 g', concentration: undefined },
    { form: { form: 'solid', assay: '98 %' }, measure: '4.003 g', concentration: undefined },
    { form: { form: 'liquid', density: '1.83 g/mL' }, measure: '2.1 mL', concentration: undefined },
    { form: { form: 'liquid', density: '1.83 g/mL', assay: '98 %' }, measure: '2.2 mL', concentration: undefined },
    { form: { form: 'solution', concentration: '3.00 mol/L' }, measure: '13.3 mL', concentration: '3.000' },
    { form: { form: 'stock', massFraction: '96 %', density: '1.84 g/mL' }, measure: '2.2 mL', concentration: '18.011' },
    {
      form: { form: 'molal', molality: '2.00 mol/kg', density: '1.12 g/mL' },
      measure: '21.4 mL',
      concentration: '1.873',
    },
    {
      form: { form: 'normal', normality: '6 mol/L', equivalentsPerMole: '2' },
      measure: '13.3 mL',
      concentration: '3.000',
    },
  ])('$form is measured as $measure', ({ form, measure, concentration }) => {
    const supply = acidOf(form)
    expect(supply?.measure.toString()).toBe(measure)
    expect(supply?.concentration?.to('mol/L').value.toFixed(3)).toBe(concentration)
  })

  it.each<{ form: object; amount: string }>([
    { form: { form: 'solid', asPrinted: '3.92288 g' }, amount: '0.0400' },
    { form: { form: 'solid', asPrinted: '0.0400 mol' }, amount: '0.0400' },
    { form: { form: 'solution', concentration: '3.00 mol/L', asPrinted: '25 mL' }, amount: '0.0750' },
    { form: { form: 'liquid', density: '1.83 g/mL', asPrinted: '10 mL' }, amount: '0.1866' },
    { form: { form: 'liquid', density: '1.83 g/mL', asPrinted: '18.3 g' }, amount: '0.1866' },
  ])('as printed, $form is $amount mol', ({ form, amount }) => {
    expect(acidOf(form)?.amount.value.toFixed(4)).toBe(amount)
  })

  it('ammonia by per cent is ammonia as NH3, whatever the equation calls it', () => {
    const recipe: Recipe = {
      format: 'saltwright/recipe@1',
      title: 'Ammonium sulfate',
      product: '(NH4)2SO4',
      scale: { of: '(NH4)2SO4', amount: '0.100 mol' },
      stages: [{ name: 'neutralise', equation: '2NH4OH + H2SO4 -> (NH4)2SO4 + 2H2O' }],
      supplies: [
        { form: 'stock', substance: 'NH4OH', massFraction: '28.0 %', density: '0.898 g/mL', statedAs: 'NH3' },
        { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L' },
      ],
    }
    const [ammonia] = planPreparation(recipe).supplies
    expect(ammonia?.concentration?.value.toFixed(2)).toBe('14.76')
    expect(ammonia?.measure.toString()).toBe('13.5 mL')
  })
})

describe('a solid that is weighed for another', () => {
  // Barium sulfate from 0.0100 mol of the alum, M(KAl(SO4)2·12H2O) = 474.37 g/mol; the doubled formula is the same crystals.
  const withAlum = (weighedAs: string, equation = 'KAl(SO4)2 + 2BaCl2 -> 2BaSO4 + KCl + AlCl3'): Recipe => ({
    format: 'saltwright/recipe@1',
    title: 'Barium sulfate',
    product: 'BaSO4',
    scale: { of: 'BaSO4', amount: '0.0200 mol' },
    stages: [{ name: 'precipitate', equation }],
    supplies: [
      { form: 'solid', substance: equation.split(' ')[0] as string, weighedAs },
      { form: 'unlimited', substance: equation.includes('BaCl2') ? 'BaCl2' : 'Ba^2+' },
    ],
  })

  it.each([
    { weighedAs: 'KAl(SO4)2·12H2O', measure: '4.744 g' },
    { weighedAs: 'K2SO4·Al2(SO4)3·24H2O', measure: '4.744 g' },
  ])('$weighedAs: the same crystals in the same mass', ({ weighedAs, measure }) => {
    const plan = planPreparation(withAlum(weighedAs))
    expect(plan.supplies[0]?.measure.toString()).toBe(measure)
    const records = { format: 'saltwright/records@1', supplies: [{ substance: 'KAl(SO4)2', mass: measure }] } as const
    const { used } = assessPreparation(plan, { ...records, product: { mass: '4.00 g' } })
    expect(used[0]?.amount.value.toFixed(4)).toBe('0.0100')
  })

  it.each([
    { weighedAs: 'Al2(SO4)3', measure: '2.281 g', says: 'three sulfates each: 0.0200 mol / 3 of 342.13 g/mol' },
    { weighedAs: '(NH4)2Fe(SO4)2·6H2O', measure: '3.921 g', says: 'two each: 0.0100 mol of 392.12 g/mol' },
    { weighedAs: 'KAl(SO4)2·12H2O', measure: '4.744 g', says: 'two each: 0.0100 mol of 474.37 g/mol' },
    { weighedAs: 'Na2SO4', measure: '2.841 g', says: 'one each: 0.0200 mol of 142.04 g/mol' },
  ])('a salt for one of its ions: $weighedAs, $says', ({ weighedAs, measure }) => {
    const plan = planPreparation(withAlum(weighedAs, 'SO4^2- + Ba^2+ -> BaSO4'))
    expect(plan.supplies[0]?.measure.toString()).toBe(measure)
  })

  it('an alum for aluminium sulfate counts half: what it has least of decides', () => {
    const plan = planPreparation(withAlum('KAl(SO4)2·12H2O', 'Al2(SO4)3 + 3BaCl2 -> 3BaSO4 + 2AlCl3'))
    expect(plan.supplies[0]?.measure.toString()).toBe('6.325 g') // 0.0200 mol / 3 of sulfate in 0.0400 mol / 3 of 474.37 g/mol
  })

  it('a basic salt for the salt in it counts once: its copper says two, its sulfur one', () => {
    const plan = planPreparation(withAlum('Cu2(OH)2SO4', 'CuSO4 + BaCl2 -> BaSO4 + CuCl2'))
    expect(plan.supplies[0]?.measure.toString()).toBe('5.143 g') // 0.0200 mol of 257.162 g/mol
  })

  it('a double salt for one of its salts counts once: its iron says one, its sulfur two', () => {
    const plan = planPreparation(withAlum('(NH4)2Fe(SO4)2·6H2O', 'FeSO4 + BaCl2 -> BaSO4 + FeCl2'))
    expect(plan.supplies[0]?.measure.toString()).toBe('7.842 g') // 0.0200 mol of 392.12 g/mol
  })
})

describe('what the instruments can show', () => {
  const codes = (instruments: object, scale = '0.0400 mol'): readonly string[] =>
    planPreparation({ ...zincSulfate, scale: { of: 'ZnO', amount: scale }, instruments } as Recipe).findings.map(
      ({ code }) => code,
    )

  it.each([
    { what: 'a fine balance', instruments: {}, scale: '0.0400 mol', found: [] },
    { what: 'a kitchen balance', instruments: { balance: '1 g' }, scale: '0.0400 mol', found: ['rounded-visibly'] },
    {
      what: 'a balance that shows nothing of it',
      instruments: { balance: '10 g' },
      scale: '0.0400 mol',
      found: ['below-readability'],
    },
    {
      what: 'a cylinder that is too small',
      instruments: { cylinderCapacity: '10 mL' },
      scale: '0.0400 mol',
      found: ['beyond-vessel'],
    },
    { what: 'a coarse cylinder', instruments: { cylinder: '1 mL' }, scale: '0.0400 mol', found: ['rounded-visibly'] },
  ])('$what', ({ instruments, scale, found }) => expect(codes(instruments, scale)).toEqual(found))
})

describe('glassware', () => {
  const withVessel = (vessel: object, concentration = '3.00 mol/L') =>
    planPreparation(withAcid({ form: 'solution', concentration, vessel, excessFactor: '1.10' }))
  const cylinder = { item: 'measuring cylinder', standard: 'ISO' }

  it('is chosen for the volume, with its tolerance by the standard that is named', () => {
    const [, acid] = withVessel({ ...cylinder, accuracy: 'A' }).supplies
    expect(acid?.vessel?.capacity.toString()).toBe('25 mL')
    expect(acid?.vessel?.tolerance.toString()).toBe('0.25 mL')
    expect(acid?.measure.toString()).toBe('14.65 mL')
  })

  it.each([
    { what: 'a vessel that is too small', vessel: { ...cylinder, available: ['10 mL'] }, found: ['beyond-vessel'] },
    {
      what: 'a pipette without that mark',
      vessel: { item: 'transfer pipette', standard: 'ISO' },
      found: ['no-such-mark'],
    },
    { what: 'a vessel that fits', vessel: cylinder, found: [] },
  ])('$what', ({ vessel, found }) => {
    expect(withVessel(vessel).findings.map(({ code, path }) => `${code} ${path.join('.')}`)).toEqual(
      found.map((code) => `${code} supplies.1`),
    )
  })

  it('of its own is not the cylinder of the bench', () => {
    const burette = { item: 'burette', standard: 'ISO', available: ['50 mL'] } as const
    const acid = { form: 'solution', concentration: '1.40 mol/L', vessel: burette, excessFactor: '1.10' }
    const plan = planPreparation({ ...withAcid(acid), instruments: { cylinderCapacity: '25 mL' } })
    expect(plan.supplies[1]?.measure.toString()).toBe('31.43 mL')
    expect(plan.findings).toEqual([])
  })

  it('is not looked for where nothing is measured', () => {
    const { supplies } = planPreparation({
      format: 'saltwright/recipe@1',
      title: 'Potassium sulfate',
      product: 'K2SO4',
      scale: { of: 'K2SO4', amount: '0.0100 mol' },
      stages: [
        { name: 'neutralise', equation: '2KOH + H2SO4 -> K2SO4 + 2H2O' },
        { name: 'clear', equation: 'KOH + HCl -> KCl + H2O', clears: 'KOH' },
      ],
      supplies: [
        { form: 'solution', substance: 'KOH', concentration: '1.00 mol/L' },
        { form: 'solution', substance: 'H2SO4', concentration: '1.00 mol/L' },
        {
          form: 'solution',
          substance: 'HCl',
          concentration: '1.00 mol/L',
          vessel: { item: 'burette', standard: 'ISO' },
        },
      ],
    })
    expect(supplies[2]?.measure.toString()).toBe('0.0 mL')
    expect(supplies[2]?.vessel).toBeUndefined()
  })

  it('has nothing to do with what is weighed', () => {
    expect(
      planPreparation({
        ...zincSulfate,
        supplies: [{ ...oxide, vessel: cylinder } as RecipeSupply, zincSulfate.supplies[1] as RecipeSupply],
      }).supplies[0]?.vessel,
    ).toBeUndefined()
  })

  it.each([
    { printedConcentration: '18.0 mol/L', found: [] },
    { printedConcentration: '16 mol/L', found: ['concentration-inconsistent'] },
  ])(
    'a label that prints $printedConcentration beside 96 % and 1.84 g/mL: $found',
    ({ printedConcentration, found }) => {
      const plan = planPreparation(
        withAcid({
          form: 'stock',
          massFraction: '96 %',
          density: '1.84 g/mL',
          printedConcentration,
          excessFactor: '1.10',
        }),
      )
      expect(plan.findings.map(({ code }) => code).filter((code) => code !== 'rounded-visibly')).toEqual(found)
    },
  )
})

describe('what there is always enough of', () => {
  it('is not measured, but can be named', () => {
    const recipe: Recipe = {
      ...zincSulfate,
      supplies: [...zincSulfate.supplies, { form: 'unlimited', substance: 'H2O', name: 'water' }],
    }
    expect(planPreparation(recipe).supplies.map(({ substance }) => substance)).toEqual(['ZnO', 'H2SO4'])
  })
})
