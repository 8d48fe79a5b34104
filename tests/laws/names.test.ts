import { readFileSync } from 'node:fs'
import {
  amountConcentration,
  amountFromMass,
  amountInVolume,
  amountNeeded,
  assessPreparation,
  atomicWeight,
  checkCapacity,
  checkConcentration,
  componentMasses,
  compositionFromAssays,
  constantMass,
  convertBasis,
  densityOf,
  dilution,
  equivalents,
  exact,
  expectedCrop,
  explainYield,
  fromNormality,
  gasVolume,
  gravimetricAssay,
  gravimetricFactor,
  leftovers,
  limitingReagent,
  lossAccount,
  makeUp,
  massFraction,
  massFractionAt,
  massFractions,
  massFromAmount,
  massRatioFromFraction,
  molality,
  molarMass,
  netMass,
  neutralisationEnthalpy,
  neutralisationHeat,
  overallYield,
  percentRecovery,
  percentYield,
  planClass,
  planPreparation,
  quantity,
  type Recipe,
  type Records,
  readTo,
  runStages,
  solubilityOf,
  stockFor,
  temperatureForCrop,
  theoreticalYield,
  titrationAssay,
  toNormality,
  vesselFor,
  volumeToDeliver,
  warmFiltration,
  washLoss,
  waterFraction,
  waterOfCrystallisation,
} from 'saltwright'
import { expect, it } from 'vitest'
import { namesIn } from '../quantity/names.js'

const examples = new URL('../../docs/examples/', import.meta.url)
const read = (path: string): unknown => JSON.parse(readFileSync(new URL(path, examples), 'utf8'))

const zincOxide = { form: 'solid', substance: 'ZnO', assay: '99 %' } as const
const acids = [
  { form: 'solution', substance: 'H2SO4', concentration: '3 mol/L', molesPerMole: '1.2' },
  { form: 'stock', substance: 'H2SO4', massFraction: '78 %', density: '1.84 g/mL', statedAs: 'SO3' },
  { form: 'molal', substance: 'H2SO4', molality: '2 mol/kg', density: '1.12 g/mL' },
  { form: 'normal', substance: 'H2SO4', normality: '6 mol/L', equivalentsPerMole: '2' },
  { form: 'liquid', substance: 'H2SO4', density: '1.83 g/mL', assay: '98 %' },
  { form: 'solid', substance: 'H2SO4', asPrinted: '0.0400 mol' },
  { form: 'solution', substance: 'H2SO4', concentration: '3 mol/L', asPrinted: '25 mL' },
] as const
const zincSulfate: Recipe = {
  format: 'saltwright/recipe@1',
  title: 'Zinc sulfate',
  product: 'ZnSO4·7H2O',
  scale: { of: 'ZnSO4·7H2O', amount: '0.0400 mol' },
  stages: [{ name: 'all at once', equation: 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O' }],
  supplies: [
    zincOxide,
    {
      form: 'solution',
      substance: 'H2SO4',
      concentration: '3 mol/L',
      excessFactor: '1.1',
      madeFrom: { massFraction: '96 %', density: '1.84 g/mL' },
    },
  ],
  auxiliaries: [{ name: 'charcoal', amount: '0.5 g' }],
  washes: [{ with: 'ice-cold water', volume: '2 mL', substance: 'H2O' }],
  crystallisation: { temperature: '5 degC', water: '8 mL', evaporated: '2 mL' },
}
const benches = [
  { name: 'Bench 1', scale: { amount: '0.0400 mol' } },
  { name: 'Bench 2', scale: { mass: '14.377 g' } },
]
/** A recipe without a scale, in which one stage clears what another leaves. */
const aluminateAsPrinted: Recipe = {
  format: 'saltwright/recipe@1',
  title: 'Potassium tetrahydroxoaluminate',
  product: 'K[Al(OH)4]',
  stages: [
    { name: 'dissolve', equation: '2Al + 2KOH + 6H2O -> 2K[Al(OH)4] + 3H2' },
    { name: 'neutralise', equation: '2KOH + H2SO4 -> K2SO4 + 2H2O', clears: 'KOH' },
  ],
  supplies: [
    { form: 'solid', substance: 'Al', asPrinted: '1.00 g' },
    { form: 'solution', substance: 'KOH', concentration: '2 mol/L', asPrinted: '25 mL' },
    { form: 'solution', substance: 'H2SO4', concentration: '2 mol/L', asPrinted: '10 mL' },
  ],
}

/** Calls by the name of their function. */
const calls: Readonly<Record<string, readonly (() => unknown)[]>> = {
  amountConcentration: [
    () => amountConcentration({ mass: '12.48 g', weighed: 'CuSO4·5H2O', volume: '100.0 mL', substance: 'CuSO4' }),
    () => amountConcentration({ massFraction: '56.6 %', basis: 'NH4OH', density: '0.900 g/mL', substance: 'NH3' }),
    () => amountConcentration({ normality: '6 N', equivalentsPerMole: 2, substance: 'H2SO4' }),
    () => amountConcentration({ molality: '2.000 mol/kg', density: '1.10 g/mL', substance: 'KOH' }),
  ],
  amountInVolume: [() => amountInVolume('25 mL', '2 mol/L')],
  convertBasis: [() => convertBasis({ massFraction: '56.6 %', from: 'NH4OH', to: 'NH3' })],
  densityOf: [() => densityOf('H2SO4', '71 %')],
  massFractionAt: [() => massFractionAt('KOH', '1.3500 g/mL')],
  massFraction: [
    () => massFraction({ concentration: '6.00 mol/L', density: '1.10 g/mL', substance: 'HCl' }),
    () => massFraction({ molality: '2.000 mol/kg', substance: 'KOH' }),
  ],
  molality: [
    () => molality({ concentration: '6.00 mol/L', density: '1.10 g/mL', substance: 'HCl' }),
    () => molality({ massFraction: '10.09 %', substance: 'KOH' }),
  ],
  toNormality: [() => toNormality('3 mol/L', { equivalentsPerMole: 2 })],
  fromNormality: [() => fromNormality('6 N', { equivalentsPerMole: 2 })],
  volumeToDeliver: [() => volumeToDeliver('0.25 mol', '6 mol/L')],
  dilution: [() => dilution({ from: '15.7 mol/L', to: '8 mol/L', volume: '50 mL', substance: 'HNO3' })],
  stockFor: [
    () =>
      stockFor({
        substance: 'H2SO4',
        concentration: '3 mol/L',
        volume: '500 mL',
        stock: { massFraction: '96.0 %', density: '1.84 g/mL' },
      }),
  ],
  makeUp: [() => makeUp({ substance: 'CuSO4', concentration: '0.5 mol/L', volume: '250 mL', weigh: 'CuSO4·5H2O' })],
  checkConcentration: [
    () => checkConcentration({ substance: 'HCOOH', massFraction: '90 %', density: '1.13 g/mL', printed: '23.6 mol/L' }),
  ],
  checkCapacity: [() => checkCapacity('180 mL', '250 mL', { vessel: 'beaker', usable: '0.5' })],
  atomicWeight: [() => atomicWeight('Zn')],
  molarMass: [() => molarMass('ZnO')],
  massFractions: [() => massFractions('ZnSO4·7H2O').get('Zn')],
  waterFraction: [() => waterFraction('ZnSO4·7H2O')],
  amountFromMass: [() => amountFromMass('5.00 g', 'KOH', { assay: '85.0 %' })],
  massFromAmount: [() => massFromAmount('0.0400 mol', 'ZnO', { assay: '85.0 %' })],
  amountNeeded: [
    () => amountNeeded('ZnO + H2SO4 -> ZnSO4 + H2O', 'H2SO4', { for: '0.0400 mol', of: 'ZnO', excessFactor: '1.2' }),
  ],
  theoreticalYield: [
    () => theoreticalYield('ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O', 'ZnSO4·7H2O', { ZnO: '3.98 g', H2SO4: '0.060 mol' }),
  ],
  limitingReagent: [() => limitingReagent('3Si + 2N2 -> Si3N4', { Si: '2.00 g', N2: '1.50 g' })],
  equivalents: [() => equivalents('ZnO + H2SO4 -> ZnSO4 + H2O', { ZnO: '3.98 g', H2SO4: '0.060 mol' })],
  leftovers: [() => leftovers('ZnO + H2SO4 -> ZnSO4 + H2O', { ZnO: '3.98 g', H2SO4: '0.060 mol' })],
  runStages: [
    () =>
      runStages(
        [{ equation: 'ZnO + H2SO4 -> ZnSO4 + H2O' }, { equation: 'ZnSO4 + 7H2O -> ZnSO4·7H2O', aliquot: '0.5' }],
        { ZnO: '3.98 g', H2SO4: '0.060 mol' },
      ),
  ],
  expectedCrop: [
    () => expectedCrop({ crystal: 'ZnSO4·7H2O', amount: '0.0400 mol', water: '12.0 g', temperature: '5 degC' }),
    () =>
      expectedCrop({
        crystal: 'KNO3',
        dissolved: '20.0 g',
        water: '25.0 g',
        evaporated: '2 g',
        temperature: '5 degC',
        solubility: '0.16',
      }),
  ],
  solubilityOf: [() => solubilityOf('ZnSO4', '5 degC')],
  massRatioFromFraction: [() => massRatioFromFraction('24.5 %')],
  temperatureForCrop: [
    () => temperatureForCrop({ crystal: 'KNO3', dissolved: '20.0 g', water: '25.0 g', crop: '15.0 g' }),
  ],
  warmFiltration: [
    () =>
      warmFiltration(
        { crystal: 'KNO3', dissolved: '20.0 g', water: '25.0 g', temperature: '5 degC' },
        { temperature: '10 degC' },
      ),
  ],
  washLoss: [() => washLoss({ crystal: 'KNO3', water: '5.0 g', temperature: '0 degC' })],
  gasVolume: [
    () => gasVolume({ gas: 'CO2', amount: '0.0400 mol', at: '20 °C, 100 kPa' }),
    () => gasVolume({ gas: 'H2', amount: '0.0400 mol', at: { temperature: '20 degC', pressure: '1.01 bar' } }),
  ],
  gravimetricFactor: [() => gravimetricFactor({ weighed: 'Fe2O3', sought: 'Fe' })],
  gravimetricAssay: [
    () => gravimetricAssay({ sample: '0.4550 g', precipitate: '0.6168 g', weighed: 'BaSO4', sought: 'MgSO4' }),
  ],
  titrationAssay: [
    () =>
      titrationAssay({
        sample: '1.2040 g',
        sought: '(NH4)2Fe(SO4)2·6H2O',
        titrant: { concentration: '0.02010 mol/L', volume: '30.21 mL' },
        ratio: '5',
      }),
    () =>
      titrationAssay({
        sample: '1.2040 g',
        sought: '(NH4)2Fe(SO4)2·6H2O',
        titrant: { concentration: '0.02010 mol/L', volume: '30.21 mL' },
        ratio: '5',
        back: { concentration: '0.05010 mol/L', volume: '5.21 mL', blank: '0.05 mL' },
        backRatio: '1',
        aliquot: { taken: '25.00 mL', of: '250.0 mL' },
      }),
  ],
  compositionFromAssays: [
    () =>
      compositionFromAssays([
        { of: 'Fe^3+', massFraction: '11.3 %' },
        { of: 'C2O4^2-', massFraction: '53.9 %' },
      ]),
  ],
  componentMasses: [
    () =>
      componentMasses({
        total: '1.000 g',
        converted: '0.604 g',
        factors: [gravimetricFactor({ weighed: 'CaCO3', sought: 'CaO' }), '1.0000'],
      }),
  ],
  waterOfCrystallisation: [
    () => {
      const masses = { hydrate: quantity('0.5000(2) g'), residue: quantity('0.2721(2) g'), anhydrous: 'KAl(SO4)2' }
      const { uncertainty, tolerance } = waterOfCrystallisation(masses)
      return [uncertainty, tolerance, waterOfCrystallisation({ ...masses, tolerance: '0.1' }).tolerance]
    },
    () => waterOfCrystallisation({ hydrate: '0.5000 g', residue: '0.2721 g', anhydrous: 'KAl(SO4)2' }),
  ],
  constantMass: [
    () => constantMass({ weighings: ['14.4496 g', '14.4487 g'], criterion: 'analytical-balance' }),
    () => constantMass({ weighings: ['14.4496 g', '14.4487 g'], taken: '1.000 g', criterion: 'usp' }),
  ],
  lossAccount: [
    () => lossAccount({ theoretical: '11.502 g', recovered: '7.428 g', washedAway: '0.50 g' }),
    () => lossAccount({ theoretical: '11.502 g', recovered: '7.428 g', leftInLiquor: '3.1 g' }),
  ],
  netMass: [() => netMass({ gross: '20.102 g', tare: ['11.204 g', '1.352 g'] })],
  neutralisationEnthalpy: [() => neutralisationEnthalpy('HCl', 'NaOH')],
  neutralisationHeat: [
    () => neutralisationHeat({ water: '0.100 mol', enthalpy: '-55.8 kJ/mol', solution: '75 g' }),
    () =>
      neutralisationHeat({
        water: '0.100 mol',
        enthalpy: '-55.8 kJ/mol',
        solution: '75 g',
        specificHeatCapacity: '3.9 J/(g K)',
      }),
  ],
  explainYield: [
    () =>
      explainYield({
        actual: '12.62 g',
        theoretical: '11.50 g',
        mayBeIncluded: ['1.35 g'],
        product: 'CuSO4',
        drying: constantMass({ weighings: ['12.70 g', '12.62 g'], criterion: 'school-balance' }),
        others: [{ actual: '25.24 g', theoretical: '23.00 g' }],
      }),
  ],
  vesselFor: [() => vesselFor('41.7 mL', { item: 'measuring cylinder', standard: 'ISO' })],
  readTo: [() => readTo(exact('0.125 g', { label: 'some salt', symbol: 'm' }), '0.01 g')],
  overallYield: [() => overallYield(['92.1 %', '75.0 %'])],
  percentRecovery: [() => percentRecovery('0.0672 g', '0.0856 g')],
  planClass: [
    () => {
      const { store, aids, waste, liquidWaste } = planClass(zincSulfate, benches, {
        spare: { percent: '10 %' },
        containers: { volume: '50 mL' },
      })
      return [store, aids, waste, liquidWaste]
    },
    () => planClass(zincSulfate, benches, { spare: { benches: 1 } }).store[0],
  ],
  planPreparation: [
    () => planPreparation({ ...zincSulfate, scale: { of: 'ZnSO4·7H2O', mass: '14.377 g' } }).scale,
    () => planPreparation(aluminateAsPrinted).supplies,
    () => planPreparation(aluminateAsPrinted).findings,
    ...acids.map((acid) => () => planPreparation({ ...zincSulfate, supplies: [zincOxide, acid] }).supplies[1]),
  ],
  assessPreparation: [
    () => {
      const { used, actual, correctedYield } = assessPreparation(zincSulfate, {
        format: 'saltwright/records@1',
        supplies: [
          { substance: 'ZnO', gross: '27.455 g', tare: '24.200 g', assay: '98.0 %' },
          { substance: 'H2SO4', volume: '14.7 mL', concentration: '2.957 mol/L' },
        ],
        product: { gross: '20.317 g', tare: ['10.204 g', '1.000 g'], purity: '98.0 %' },
      })
      return [used, actual, correctedYield]
    },
    () => {
      const { findings, explanations } = assessPreparation(zincSulfate, {
        format: 'saltwright/records@1',
        supplies: [{ substance: 'ZnO', mass: '3.255 g' }],
        product: { mass: '12.62 g', mayBeIncluded: ['1.35 g'] },
      })
      return [findings, explanations]
    },
  ],
  percentYield: [() => percentYield('0.392 g', '0.5072 g', { purity: '98.0 %' })],
}
const recipes = ['potassium-aluminium-sulfate', 'zinc-sulfate', 'ammonium-iron-ii-sulfate']

function listed(title: string, names: Iterable<string>): string {
  return [title, ...[...names].map((name) => `  ${name}`)].map((line) => `${line}\n`).join('')
}

function ofCalls(): readonly string[] {
  return Object.entries(calls).flatMap(([name, list]) =>
    list.map((call, index) => listed(`${name}, ${index + 1}`, namesIn(call()))),
  )
}

/** Each name once; of the assessment those that are not in the plan. */
function ofRecipe(recipe: string): string {
  const plan = planPreparation(read(`recipes/${recipe}.json`) as Recipe)
  const assessment = assessPreparation(plan, read(`records/${recipe}-bench-1.json`) as Records)
  const planned = new Set(namesIn(plan))
  const assessed = new Set(namesIn(assessment).filter((name) => !planned.has(name)))
  return listed(`${recipe}, plan`, planned) + listed(`${recipe}, assessment`, assessed)
}

/* Read the difference before you accept a new one with `vitest -u`. */
it('what numbers are called on paper is as before', async () => {
  const document = [...ofCalls(), ...recipes.map(ofRecipe)].join('')
  await expect(document).toMatchFileSnapshot('documents/names.txt')
})
