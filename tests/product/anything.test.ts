import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cautionsFor } from '../../src/cautions/index.js'
import {
  expectedCrop,
  massRatioFromFraction,
  solidsOf,
  solubilityOf,
  temperatureForCrop,
  warmFiltration,
  washLoss,
} from '../../src/crystallisation/index.js'
import { isSaltwrightError } from '../../src/errors.js'
import {
  componentMasses,
  compositionFromAssays,
  constantMass,
  explainYield,
  gasVolume,
  gravimetricAssay,
  gravimetricFactor,
  lossAccount,
  netMass,
  neutralisationEnthalpy,
  neutralisationHeat,
  overallYield,
  percentRecovery,
  percentYield,
  titrationAssay,
  waterOfCrystallisation,
} from '../../src/product/index.js'

/** Things that look like what is asked for, and things that do not. */
const value = fc.oneof(
  fc.constantFrom(
    '5 g',
    '0.04 mol',
    '20 degC',
    '50 %',
    '1',
    '-3 g',
    '0 g',
    '1e99 g',
    'KNO3',
    'ZnSO4·7H2O',
    'zn',
    '',
    'x',
  ),
  fc.constantFrom('1e120 g', '1e-120 g', '1e130', '2 mol/L', '9 mL', '-273.15 degC', '1e20 degC', '·xH2O', 'e^-'),
  fc.anything(),
)
const thing = fc.oneof(value, fc.array(value, { maxLength: 3 }), fc.dictionary(fc.string(), value))

type Call = (...given: readonly never[]) => unknown

const series = { weighings: ['1.0002 g', '1.0000 g'], criterion: 'ph-eur' } as const
const masses = { actual: '12.6 g', theoretical: '11.5 g' } as const
const batch = { crystal: 'ZnSO4·7H2O', dissolved: '6 g', water: '12 g', temperature: '5 degC' } as const
const titrant = { concentration: '1 mol/L', volume: '20 mL', blank: '0.1 mL' } as const
const sample = { sample: '1 g', sought: 'MgO' } as const
const substance = {
  formula: 'HCl',
  form: 'solution',
  concentration: '1 mol/L',
  density: '1.02 g/mL',
  name: 'x',
} as const

/** Each function with arguments that it takes. */
const calls: readonly (readonly [string, Call, ...unknown[]])[] = [
  ['netMass', netMass, { gross: '5 g', tare: ['1 g'], of: 'KNO3' }],
  ['constantMass', constantMass, { ...series, taken: '1 g', take: 'mean' }],
  ['percentYield', percentYield, '1 g', '2 g', { purity: '98 %' }],
  ['percentRecovery', percentRecovery, '1 g', '2 g'],
  ['overallYield', overallYield, ['90 %', '80 %']],
  [
    'explainYield',
    explainYield,
    { ...masses, mayBeIncluded: ['1 g'], product: 'CuSO4', alternatives: ['CuSO4·5H2O'], others: [masses] },
  ],
  ['explainYield', explainYield, { ...masses, drying: constantMass(series), weights: 'abridged' }],
  [
    'waterOfCrystallisation',
    waterOfCrystallisation,
    { hydrate: '5 g', residue: '3 g', anhydrous: 'CuSO4', expected: 'CuSO4·5H2O', tolerance: '0.1' },
  ],
  [
    'waterOfCrystallisation',
    waterOfCrystallisation,
    {
      hydrate: '5 g',
      residue: '3 g',
      anhydrous: 'CuSO4',
      drying: constantMass(series),
      igniting: constantMass(series),
    },
  ],
  ['gravimetricFactor', gravimetricFactor, { weighed: 'BaSO4', sought: 'SO3', ratio: '1', weights: 'abridged' }],
  ['gravimetricAssay', gravimetricAssay, { sample: '1 g', precipitate: '1 g', weighed: 'BaSO4', sought: 'S' }],
  [
    'titrationAssay',
    titrationAssay,
    { ...sample, titrant, ratio: '1/2', back: titrant, backRatio: '1', aliquot: { taken: '1 mL', of: '9 mL' } },
  ],
  ['componentMasses', componentMasses, { total: '1 g', converted: '0.6 g', factors: ['0.5', '1'] }],
  ['compositionFromAssays', compositionFromAssays, [{ of: 'Fe', massFraction: '5 %' }], { weights: 'abridged' }],
  ['lossAccount', lossAccount, { theoretical: '9 g', recovered: '5 g', leftInLiquor: '1 g', washedAway: '1 g' }],
  ['gasVolume', gasVolume, { gas: 'H2', amount: '1 mol', at: '0 °C, 1 atm', weights: 'abridged' }],
  ['gasVolume', gasVolume, { gas: 'H2', amount: '1 mol', at: { temperature: '20 degC', pressure: '1 bar' } }],
  ['neutralisationHeat', neutralisationHeat, { water: '1 mol', enthalpy: '-55 kJ/mol', solution: '1 kg' }],
  ['neutralisationEnthalpy', neutralisationEnthalpy, 'HCl', 'KOH'],
  ['solubilityOf', solubilityOf, 'KNO3', '5 degC', { crystal: 'KNO3' }],
  ['solidsOf', solidsOf, 'KNO3'],
  ['massRatioFromFraction', massRatioFromFraction, '20 %'],
  ['expectedCrop', expectedCrop, { ...batch, evaporated: '1 g', alsoDissolved: ['H2SO4'], weights: 'abridged' }],
  ['expectedCrop', expectedCrop, { ...batch, dissolved: undefined, amount: '0.04 mol', solubility: '0.4' }],
  ['warmFiltration', warmFiltration, batch, { temperature: '9 degC', solubility: '0.5' }],
  ['temperatureForCrop', temperatureForCrop, { crystal: 'KNO3', dissolved: '20 g', water: '25 g', crop: '15 g' }],
  ['washLoss', washLoss, { crystal: 'KNO3', water: '5 g', temperature: '5 degC', solubility: '0.2' }],
  [
    'cautionsFor',
    cautionsFor,
    { substances: [substance], gases: [{ gas: 'H2', amount: '1 mol', volume: '22 L' }], operations: ['boil'] },
  ],
  ['cautionsFor', cautionsFor, { neutralisation: { heat: '1 kJ', temperatureRise: '3 K' }, product: 'KNO3' }],
]

/** The same arguments with one thing in them, however deep, replaced. */
function replaced(given: unknown): fc.Arbitrary<unknown> {
  const whole: fc.Arbitrary<unknown> = thing
  if (typeof given !== 'object' || given === null) return whole
  const parts = Object.entries(given).map(([key, part]) =>
    replaced(part).map((by) =>
      Array.isArray(given) ? given.map((old, at) => (at === Number(key) ? by : old)) : { ...given, [key]: by },
    ),
  )
  return fc.oneof(whole, ...parts)
}

describe('whatever comes in', () => {
  it.each(calls.map(([name, call, ...given]) => ({ name, call, given })))(
    '$name takes what it should, and else gives an error of the library',
    ({ call, given }) => {
      expect(() => call(...(given as never[]))).not.toThrow()
      fc.assert(fc.property(replaced(given), (args) => isAnswered(call, args)))
    },
  )
})

/** Whether a call gives an answer or an error of the library; anything else is thrown on. */
function isAnswered(call: Call, args: unknown): boolean {
  try {
    call(...((Array.isArray(args) ? args : [args]) as never[]))
    return true
  } catch (error) {
    if (isSaltwrightError(error)) return true
    throw error
  }
}
