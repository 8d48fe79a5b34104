import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type CropInput, expectedCrop, type SolubilityTable } from '../../src/crystallisation/index.js'
import { exact, quantity } from '../../src/quantity/index.js'
import { refusal } from '../quantity/refusal.js'

const batch: CropInput = {
  crystal: 'ZnSO4·7H2O',
  amount: '0.0400 mol',
  water: '12.0 g',
  temperature: '5 degC',
}

describe('an expected crop', () => {
  it('counts the water that the crystals take', () => {
    const cooled = expectedCrop(batch)
    expect(cooled.crop.toString()).toBe('3.18 g')
    expect(cooled.complete.toString()).toBe('11.502 g')
    expect(cooled.share.toString()).toBe('27.7 %')
    expect(cooled.loss.toString()).toBe('8.32 g')
    expect(cooled.saltLeft.toString()).toBe('4.67 g')
    expect(cooled.waterLeft.toString()).toBe('10.61 g')
    expect(cooled.motherLiquor.toString()).toBe('15.28 g')
    expect(cooled.crystal).toBe('ZnSO4·7H2O')
  })

  it('leaves a liquor that is just saturated', () => {
    const { saltLeft, waterLeft, massRatio } = expectedCrop(batch)
    expect(saltLeft.dividedBy(waterLeft).value.toFixed(20)).toBe(massRatio.value.toFixed(20))
  })

  it('names its numbers for a working', () => {
    const { crop, loss } = expectedCrop(batch)
    expect(crop.naming).toEqual({ label: 'expected crop', symbol: 'm', of: 'ZnSO4·7H2O', role: 'mass' })
    expect(loss.naming.label).toBe('loss to the mother liquor, as crystals')
  })

  it.each([
    { what: 'by the mass of the anhydrous salt', change: { amount: undefined, dissolved: '6.458 g' }, crop: '3.18 g' },
    { what: 'with water boiled off', change: { evaporated: '4.0 g' }, crop: '7.97 g' },
    { what: 'with nothing boiled off', change: { evaporated: '0 g' }, crop: '3.18 g' },
    { what: 'at a temperature in kelvins', change: { temperature: '278.15 K' }, crop: '3.18 g' },
    { what: 'with a solubility of one’s own', change: { solubility: '0.441' }, crop: '3.1667 g' },
    { what: 'with a solubility as a quantity', change: { solubility: quantity('44.1 %') }, crop: '3.17 g' },
    { what: 'with older atomic weights', change: { weights: 'standard' }, crop: '3.18 g' },
  ] as const)('is found $what', ({ change, crop }) => {
    expect(expectedCrop({ ...batch, ...change } as CropInput).crop.toString()).toBe(crop)
  })

  it('needs no division for an anhydrous salt', () => {
    const { crop, share, complete, saltLeft } = expectedCrop({
      crystal: 'KNO3',
      dissolved: exact('20.0 g'),
      water: exact('25.0 g'),
      temperature: '0 degC',
    })
    expect([crop, share, complete, saltLeft].map(String)).toEqual(['16.59 g', '82.95 %', '20.0 g', '3.41 g'])
    expect(crop.rule).toBe('difference')
  })

  it('says where its solubility comes from, or that it was given', () => {
    expect(expectedCrop(batch).solubility?.source).toContain('CRC')
    expect(expectedCrop({ ...batch, solubility: '0.441' }).solubility).toBeUndefined()
  })

  it('takes a table of one’s own', () => {
    const table: SolubilityTable = {
      salt: 'ZnSO4',
      name: 'zinc sulfate',
      per: '100 g of water',
      source: 'invented',
      phases: [{ crystal: 'ZnSO4·7H2O', celsius: [0, 20], printed: ['41.9', '54.4'] }],
    }
    const { crop, solubility } = expectedCrop({ ...batch, solubility: table })
    expect(crop.toString()).toBe('2.90 g')
    expect(solubility?.source).toBe('invented')
  })

  it('says that pure water makes the loss an upper estimate where something else is dissolved', () => {
    const [note] = expectedCrop({ ...batch, alsoDissolved: ['H2SO4'] }).notes
    expect(note?.code).toBe('upper-estimate')
    expect(note?.message).toContain('Where H2SO4 in the liquor shares an ion with ZnSO4, it is an upper estimate')
    expect(expectedCrop(batch).notes.map(({ code }) => code)).toEqual(['pure-water'])
  })

  it('is nothing where the water holds all of the salt', () => {
    const { crop, share, loss, notes } = expectedCrop({ ...batch, water: '100 g' })
    expect([crop, share, loss].map(String)).toEqual(['0 g', '0 %', '11.502 g'])
    expect(notes.map(({ code }) => code)).toEqual(['unsaturated', 'pure-water'])
  })

  it('hands on the remarks of the table', () => {
    const alum = expectedCrop({
      crystal: 'KAl(SO4)2·12H2O',
      amount: '0.0250 mol',
      water: '25 g',
      temperature: '20 degC',
    })
    expect(alum.notes.map(({ code }) => code)).toEqual(['pure-water', 'about-the-table'])
  })

  it('never exceeds all of the salt, and both add up', () => {
    const grams = fc.double({ min: 1, max: 500, noNaN: true })
    fc.assert(
      fc.property(grams, grams, (salt, water) => {
        const cooled = attemptCrop(salt, water)
        if (cooled === undefined) return
        expect(cooled.crop.compare(cooled.complete)).toBeLessThanOrEqual(0)
        expect(cooled.crop.plus(cooled.loss).value.toFixed(15)).toBe(cooled.complete.value.toFixed(15))
      }),
      { numRuns: 100 },
    )
  })
})

function attemptCrop(salt: number, water: number): ReturnType<typeof expectedCrop> | undefined {
  const input = { ...batch, amount: undefined, dissolved: exact(`${salt} g`), water: exact(`${water} g`) }
  try {
    return expectedCrop(input)
  } catch (error) {
    expect(error).toMatchObject({ code: 'crystallisation/water-used-up' })
    return undefined
  }
}

describe('an expected crop is refused', () => {
  it.each([
    {
      what: 'nothing dissolved',
      change: { amount: undefined },
      code: 'crystallisation/not-positive',
      path: ['dissolved'],
    },
    {
      what: 'salt given twice',
      change: { dissolved: '6 g' },
      code: 'crystallisation/salt-given-twice',
      path: ['dissolved'],
    },
    { what: 'no salt', change: { amount: '0 mol' }, code: 'crystallisation/not-positive', path: ['amount'] },
    { what: 'no water', change: { water: '0 g' }, code: 'crystallisation/not-positive', path: ['water'] },
    {
      what: 'water from nowhere',
      change: { evaporated: '-1 g' },
      code: 'crystallisation/not-positive',
      path: ['evaporated'],
    },
    {
      what: 'a solubility of zero',
      change: { solubility: '0' },
      code: 'crystallisation/not-positive',
      path: ['solubility'],
    },
    {
      what: 'all water gone',
      change: { evaporated: '12.0 g' },
      code: 'crystallisation/water-used-up',
      path: ['evaporated'],
    },
    {
      what: 'too little water for the hydrate',
      change: { evaporated: '9.9 g' },
      code: 'crystallisation/water-used-up',
      path: undefined,
    },
    {
      what: 'crystals that melt',
      change: { solubility: '1.4' },
      code: 'crystallisation/no-such-crop',
      path: undefined,
    },
    {
      what: 'a salt without a table',
      change: { crystal: 'LaCl3·7H2O' },
      code: 'crystallisation/unknown-salt',
      path: undefined,
    },
    {
      what: 'another solid at this temperature',
      change: { temperature: '45 degC' },
      code: 'crystallisation/outside-table',
      path: undefined,
    },
    {
      what: 'water of unknown number',
      change: { crystal: 'ZnSO4·xH2O' },
      code: 'formula/unknown-water',
      path: undefined,
    },
    { what: 'a volume of water', change: { water: '12 mL' }, code: 'quantity/wrong-dimension', path: undefined },
    {
      what: 'other solutes that are no list',
      change: { alsoDissolved: 'H2SO4' },
      code: 'crystallisation/not-a-list',
      path: undefined,
    },
  ])('$what', ({ change, code, path }) => {
    const error = refusal(() => expectedCrop({ ...batch, ...change } as CropInput))
    expect(error.code).toBe(code)
    expect(error.path).toEqual(path)
  })

  it('without an object', () => {
    expect(refusal(() => expectedCrop(null as never)).code).toBe('crystallisation/not-an-object')
  })
})

it('remembers solubilities only up to a limit, and is the same with and without', () => {
  const temperatures = Array.from({ length: 130 }, (_, index) => `${(index / 10).toFixed(1)} degC` as '0.0 degC')
  const cropAt = (temperature: '0.0 degC'): string =>
    expectedCrop({ crystal: 'KNO3', dissolved: '20.0 g', water: '25.0 g', temperature }).crop.value.toString()
  const first = temperatures.map(cropAt)
  expect(temperatures.map(cropAt)).toEqual(first)
  expect(new Set(first).size).toBe(130)
})
