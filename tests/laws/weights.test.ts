import {
  amountConcentration,
  amountFromMass,
  checkConcentration,
  compositionFromAssays,
  convertBasis,
  equivalents,
  explainYield,
  extentOfReaction,
  gasVolume,
  gravimetricAssay,
  gravimetricFactor,
  leftovers,
  limitingReagent,
  makeUp,
  massFraction,
  massFromAmount,
  molality,
  type Quantity,
  runStages,
  stockFor,
  theoreticalYield,
  titrationAssay,
  waterOfCrystallisation,
} from 'saltwright'
import { describe, expect, it } from 'vitest'

/** No weights of this world, so that nothing agrees by chance: H2O 14, KOH 42, H2SO4 64, K2SO4 120, CuSO4 110, CuSO4·5H2O 180. */
const weights = {
  name: 'invented',
  values: { H: '2.0000', O: '10.000', S: '20.000', K: '30.000', Cu: '50.000', N: '6.0000' },
}
const [H2SO4, KOH] = [
  { substance: 'H2SO4', weights },
  { substance: 'KOH', weights },
] as const
const bottle = { massFraction: '64.000 %', density: '1.0000 g/mL' } as const // 640 g in a litre: 10 mol/L
const neutralising = '2KOH + H2SO4 -> K2SO4 + 2H2O'
const supplies = { KOH: '4.2000 g', H2SO4: '6.4000 g' } as const // 0.1 mol of each
const ignition = { hydrate: '18.000 g', residue: '11.000 g', anhydrous: 'CuSO4', weights } as const

describe('the atomic weights that are chosen count in', () => {
  it.each<{ name: string; found: Quantity | undefined; is: string }>([
    { name: 'amountFromMass', found: amountFromMass('4.2000 g', 'KOH', { weights }), is: '0.10000 mol' },
    { name: 'massFromAmount', found: massFromAmount('0.1 mol', 'KOH', { weights }), is: '4.2000 g' },
    {
      name: 'limitingReagent',
      found: limitingReagent(neutralising, supplies, { weights }).extent,
      is: '0.050000 mol',
    },
    { name: 'extentOfReaction', found: extentOfReaction(neutralising, supplies, { weights }), is: '0.050000 mol' },
    { name: 'equivalents', found: equivalents(neutralising, supplies, { weights })[1]?.equivalents, is: '2.0000' },
    { name: 'leftovers', found: leftovers(neutralising, supplies, { weights })[1]?.left, is: '0.05000 mol' },
    {
      name: 'theoreticalYield',
      found: theoreticalYield(neutralising, 'K2SO4', supplies, { weights }).mass,
      is: '6.0000 g',
    },
    {
      name: 'runStages',
      found: runStages([{ equation: neutralising }], supplies, { weights }).stages[0]?.extent,
      is: '0.050000 mol',
    },
    {
      name: 'runStages, of what is added',
      found: runStages([{ equation: neutralising, add: { KOH: '4.2000 g' } }], { H2SO4: '1 mol' }, { weights })
        .stages[0]?.extent,
      is: '0.050000 mol',
    },
    {
      name: 'convertBasis',
      found: convertBasis({ massFraction: '26.000 %', from: 'NH4OH', to: 'NH3', weights }),
      is: '12.000 %',
    },
    { name: 'amountConcentration, by mass', found: amountConcentration({ ...bottle, ...H2SO4 }), is: '10.000 mol/L' },
    {
      name: 'amountConcentration, by molality', // 64 g in 1064 g, of which a litre weighs 1064 g
      found: amountConcentration({ molality: '1.0000 mol/kg', density: '1.0640 g/mL', ...H2SO4 }),
      is: '1.0000 mol/L',
    },
    {
      name: 'amountConcentration, by solute',
      found: amountConcentration({
        mass: '18.000 g',
        weighed: 'CuSO4·5H2O',
        volume: '1.0000 L',
        substance: 'CuSO4',
        weights,
      }),
      is: '0.10000 mol/L',
    },
    {
      name: 'massFraction, by concentration',
      found: massFraction({ concentration: '10.000 mol/L', density: '1.0000 g/mL', ...H2SO4 }),
      is: '64.000 %',
    },
    {
      name: 'massFraction, by molality', // as much solute as solvent
      found: massFraction({ molality: '15.625 mol/kg', ...H2SO4 }),
      is: '50.000 %',
    },
    {
      name: 'molality, by mass fraction',
      found: molality({ massFraction: '50.000 %', ...H2SO4 }),
      is: '15.625 mol/kg',
    },
    {
      name: 'molality, by concentration',
      found: molality({ concentration: '1.0000 mol/L', density: '1.0640 g/mL', ...H2SO4 }),
      is: '1.0000 mol/kg',
    },
    { name: 'makeUp', found: makeUp({ concentration: '1 mol/L', volume: '1 L', ...KOH }).mass, is: '42.000 g' },
    {
      name: 'stockFor',
      found: stockFor({ concentration: '1 mol/L', volume: '100 mL', stock: bottle, ...H2SO4 }).stock,
      is: '10.000 mL',
    },
    {
      name: 'checkConcentration',
      found: checkConcentration({ ...bottle, printed: '8.0000 mol/L', ...H2SO4 }).deviation,
      is: '25.00 %',
    },
    {
      name: 'gasVolume',
      found: gasVolume({ gas: 'H2', amount: '1.0000 mol', at: '0 °C, 1 atm', weights }).mass,
      is: '4.0000 g',
    },
    { name: 'gravimetricFactor', found: gravimetricFactor({ weighed: 'CuO', sought: 'CuSO4', weights }), is: '1.8333' },
    {
      name: 'gravimetricAssay',
      found: gravimetricAssay({ sample: '10.000 g', precipitate: '6.0000 g', weighed: 'CuO', sought: 'Cu', weights })
        .massFraction,
      is: '50.000 %',
    },
    {
      name: 'titrationAssay',
      found: titrationAssay({
        sample: '8.4000 g',
        sought: 'KOH',
        titrant: { concentration: '1.0000 mol/L', volume: '100.00 mL' },
        weights,
      }).massFraction,
      is: '50.000 %',
    },
    {
      name: 'compositionFromAssays',
      found: compositionFromAssays([{ of: 'Cu', massFraction: '25.000 %' }], { weights }).constituents[0]?.amount,
      is: '0.50000 mol',
    },
    { name: 'waterOfCrystallisation', found: waterOfCrystallisation(ignition).x, is: '5.000' },
    {
      name: 'waterOfCrystallisation, of its candidates', // 70 g in 180 g
      found: waterOfCrystallisation(ignition).candidates[0]?.waterFraction,
      is: '38.889 %',
    },
    {
      name: 'explainYield', // 11 g of CuSO4 would be 18 g of CuSO4·5H2O
      found: explainYield({ actual: '15.000 g', theoretical: '11.000 g', product: 'CuSO4', weights }).find(
        ({ code }) => code === 'other-hydrate',
      )?.numbers.theoreticalYield,
      is: '18.000 g',
    },
  ])('$name', ({ found, is }) => expect(String(found)).toBe(is))
})
