import { atomicWeightSet } from '../../src/element/index.js'
import { waterFraction } from '../../src/formula/index.js'
import {
  componentMasses,
  constantMass,
  constantMassCriteria,
  type GasConditionsName,
  gasVolume,
  gravimetricAssay,
  gravimetricFactor,
  netMass,
  neutralisationEnthalpy,
  percentRecovery,
  percentYield,
  titrationAssay,
  waterOfCrystallisation,
} from '../../src/product/index.js'
import { exact, type Quantity, quantity } from '../../src/quantity/index.js'
import { massFromAmount } from '../../src/stoichiometry/index.js'
import { checkPublished, type PublishedRow } from './check.js'
import { shownAs } from './shown-as.js'

const grams = (text: string): Quantity<'mass'> => quantity(`${text} g` as '1 g')

function row(
  at: string,
  what: string,
  published: string,
  ours: () => Quantity,
  agrees: PublishedRow['agrees'] = true,
): PublishedRow {
  return { at, what, published, ours: () => shownAs(published, ours()), agrees }
}

/** The most product that a mass of another substance gives, one for one or by a given ratio, with the molar masses of the source. */
function theoretical(mass: string, from: string, to: string): Quantity<'mass'> {
  const of = (text: string) => quantity(`${text} g/mol` as '1 g/mol')
  return grams(mass).dividedBy(of(from)).times(of(to))
}

const copper = theoretical('1.274', '159.62', '63.55')
const sulfate = { sample: '0.4550 g', precipitate: '0.6168 g', weighed: 'BaSO4', sought: 'MgSO4' } as const
const hydroxide = exact('0.250 mol/L').times(exact('35.23 mL'))
const ether = exact('1500 mL')
  .times(exact('0.7894 g/mL'))
  .times(gravimetricFactor({ weighed: 'C2H5OH', sought: '(C2H5)2O', ratio: '1/2' }))

checkPublished('OpenStax, Chemistry 2e, sections 4.4 and 4.5', [
  row('4.4, Calculation of Percent Yield', 'theoretical yield in g', '0.5072', () => copper),
  row('4.4, Calculation of Percent Yield', 'yield in per cent', '77.3', () => percentYield(grams('0.392'), copper)),
  row('4.4, exercise', 'yield in per cent', '31', () => percentYield('25 g', '81 g')),
  row('4.4, exercise (ether)', 'yield in per cent', '87.6', () =>
    percentYield(exact('1170 mL').times(exact('0.7134 g/mL')), ether),
  ),
  row('4.5, Gravimetric Analysis', 'MgSO4 in g', '0.3181', () => gravimetricAssay(sulfate).mass),
  row('4.5, Gravimetric Analysis', 'MgSO4 in per cent', '69.91', () => gravimetricAssay(sulfate).massFraction),
  row(
    '4.5, exercise (GaBr3)',
    'Ga in per cent',
    '22.4',
    () =>
      gravimetricAssay({ sample: '0.165 g', precipitate: '0.299 g', weighed: 'AgBr', sought: 'Ga', ratio: '1/3' })
        .massFraction,
  ),
  row('4.5, Titration Analysis', 'concentration in mol/L', '0.176', () => hydroxide.dividedBy(exact('50.00 mL'))),
])

const silica = netMass({ gross: '0.1414 g', tare: '0.0183 g', of: 'SiO2' })
const oxalateFactor = gravimetricFactor({ weighed: 'MgC2O4·H2O', sought: 'MgO' })
const [oxalate] = componentMasses({ total: '26.23 mg', converted: '20.98 mg', factors: [oxalateFactor, '1.0000'] })
const dow = componentMasses({
  total: '7.815 g',
  converted: '1.002 g',
  factors: [
    gravimetricFactor({ weighed: 'Al(C9H6NO)3', sought: 'Al2O3' }),
    gravimetricFactor({ weighed: 'Mg(C9H6NO)2', sought: 'MgO' }),
  ],
})
const illConditioned =
  'ill-conditioned: 0.0001 g of the oxides move the aluminium by 2 %, and the book rounds on the way'

checkPublished('Harvey D., Analytical Chemistry 2.0, chapter 8', [
  row('Example 8.6', 'SiO2 in g', '0.1231', () => silica),
  row('Example 8.6', 'SiO2 in per cent', '24.61', () => silica.dividedBy(grams('0.5003')).to('%')),
  row('Example 8.7', 'loss of the pure oxalate in per cent', '69.08', () => exact(1).minus(oxalateFactor).to('%')),
  row('Example 8.7', 'oxalate in mg', '7.60', () => oxalate),
  row('Example 8.7', 'oxalate in per cent', '29.0', () => oxalate.dividedBy(quantity('26.23 mg')).to('%')),
  row('Dow metal', 'aluminium oxinate in g', '0.314', () => dow[0], { ours: '0.310', differs: illConditioned }),
  row('Dow metal', 'magnesium oxinate in g', '7.501', () => dow[1], { ours: '7.505', differs: illConditioned }),
  row(
    'Dow metal',
    'Al in per cent',
    '3.02',
    () =>
      dow[0]
        .times(gravimetricFactor({ weighed: 'Al(C9H6NO)3', sought: 'Al' }))
        .dividedBy(grams('0.611'))
        .to('%'),
    { ours: '2.98', differs: illConditioned },
  ),
  row('Dow metal', 'Mg in per cent', '95.5', () =>
    dow[1]
      .times(gravimetricFactor({ weighed: 'Mg(C9H6NO)2', sought: 'Mg' }))
      .dividedBy(grams('0.611'))
      .to('%'),
  ),
])

const weights2007 = atomicWeightSet({
  name: 'molar masses of the source',
  values: { Ba: '137.327', S: '32.066', O: '15.9994' },
})

checkPublished('IUPAC Recommendations, Pure Appl. Chem. 2025, 97, 137, gravimetric factor', [
  row(
    'gravimetric factor',
    'SO3 in BaSO4',
    '0.343048',
    () => gravimetricFactor({ weighed: 'BaSO4', sought: 'SO3', weights: 'standard' }),
    {
      ours: '0.343052',
      differs: 'the source has 80.0640 for SO3, from S 32.066',
      explained: () =>
        shownAs('0.343048', gravimetricFactor({ weighed: 'BaSO4', sought: 'SO3', weights: weights2007 })),
    },
  ),
])

checkPublished('Handbook tables and an assay procedure', [
  row('handbook, from memory', 'S in BaSO4', '0.1374', () => gravimetricFactor({ weighed: 'BaSO4', sought: 'S' })),
  row(
    'nickel by dimethylglyoxime',
    'Ni in Ni(C4H7N2O2)2',
    '0.2032',
    () => gravimetricFactor({ weighed: 'Ni(C4H7N2O2)2', sought: 'Ni' }),
    { ours: '0.2031', differs: 'the traditional value rests on older atomic weights (Ni 58.71)' },
  ),
])

const report = netMass({ gross: '22.5517 g', tare: '22.2949 g', of: 'BaSO4' })
const worksheet = {
  hydrate: netMass({ gross: '37.6102 g', tare: '35.8490 g' }),
  residue: netMass({ gross: '36.9600 g', tare: '35.8490 g' }),
  anhydrous: 'CuSO4',
}
const epsom = { hydrate: '5.061 g', residue: '2.472 g', anhydrous: 'MgSO4' } as const
const alum = { hydrate: '0.5000 g', residue: '0.2721 g', anhydrous: 'KAl(SO4)2' } as const
const ferrioxalate = theoretical('1.500', '404.0', '491.2')
const ammine = theoretical('4.87', '249.71', '245.79')
const aluminium = massFromAmount(grams('1.0006').dividedBy(quantity('26.982 g/mol')), 'KAl(SO4)2·12H2O')
const series = ['21.7830 g', '21.7850 g', '21.7859 g', '21.7857 g'] as const

checkPublished('Laboratory manuals, worksheets, reports and question threads', [
  row(
    'gravimetric sulfur',
    'mean of the constant weighings in g',
    '21.7858',
    () => constantMass({ weighings: series, criterion: 'ph-eur', take: 'mean' }).mass,
  ),
  row('gravimetric sulfate', 'BaSO4 in g', '0.2568', () => report),
  row('gravimetric sulfate', 'SO3 in g', '0.0881', () =>
    report.times(gravimetricFactor({ weighed: 'BaSO4', sought: 'SO3' })),
  ),
  row(
    'sulfate by BaSO4',
    'SO4 in per cent',
    '33.0',
    () =>
      gravimetricAssay({ sample: '4.52 g', precipitate: '3.62 g', weighed: 'BaSO4', sought: 'SO4^2-' }).massFraction,
  ),
  row(
    'iron as Fe2O3',
    'Fe in per cent',
    '18.83',
    () =>
      gravimetricAssay({ sample: '0.5962 g', precipitate: '0.3210 g', weighed: 'Fe2O3', sought: 'Fe' }).massFraction,
    {
      ours: '37.66',
      differs: 'the source leaves out that Fe2O3 holds two Fe',
      explained: () =>
        shownAs(
          '18.83',
          gravimetricAssay({ sample: '0.5962 g', precipitate: '0.3210 g', weighed: 'Fe2O3', sought: 'Fe', ratio: '1' })
            .massFraction,
        ),
    },
  ),
  row('copper(II) sulfate', 'hydrate in g', '1.761', () => worksheet.hydrate),
  row('copper(II) sulfate', 'anhydrous salt in g', '1.111', () => worksheet.residue),
  row('copper(II) sulfate', 'water in g', '0.65', () => waterOfCrystallisation(worksheet).water),
  row('copper(II) sulfate', 'water in per cent', '37', () => waterOfCrystallisation(worksheet).waterFraction),
  row('copper(II) sulfate', 'water per formula unit', '5.2', () => waterOfCrystallisation(worksheet).x),
  row('copper(II) sulfate', 'nearest hydrate', '5', () => nearest(worksheet)),
  row(
    'copper(II) sulfate, 2.000 g',
    'water in per cent',
    '36.1',
    () => waterOfCrystallisation({ hydrate: '2.000 g', residue: '1.278 g', anhydrous: 'CuSO4' }).waterFraction,
  ),
  row('magnesium sulfate', 'nearest hydrate', '7', () => nearest(epsom)),
  row('alum, crucible 1', 'water in g', '0.2279', () => waterOfCrystallisation(alum).water),
  row('alum, crucible 1', 'water per formula unit', '12.00', () => waterOfCrystallisation(alum).x),
  row('iron(III) chloride', 'water of FeCl3·6H2O in per cent', '40.0', () => waterFraction('FeCl3·6H2O').to('%')),
  row('trioxalatoferrate(III)', 'theoretical yield in g', '1.824', () => ferrioxalate),
  row('trioxalatoferrate(III)', 'actual yield in g', '1.319', () => netMass({ gross: '52.444 g', tare: '51.125 g' })),
  row(
    'trioxalatoferrate(III)',
    'yield in per cent',
    '72.31',
    () => percentYield(netMass({ gross: '52.444 g', tare: '51.125 g' }), ferrioxalate),
    {
      ours: '72.32',
      differs: 'the source divides by the rounded theoretical yield',
      explained: () => shownAs('72.31', percentYield('1.319 g', '1.824 g')),
    },
  ),
  row('tetraamminecopper(II) sulfate', 'yield in per cent', '94.4', () => percentYield(grams('4.52'), ammine), {
    ours: '94.3',
    differs: 'the source rounds the amounts on the way',
  }),
  row('alum from aluminium', 'theoretical yield in g', '17.595', () => aluminium, {
    ours: '17.592',
    differs: 'the molar mass of the source, 474.3884, and its rounded amount',
  }),
  row('alum from aluminium', 'yield in per cent', '70.22', () => percentYield(grams('12.354'), aluminium), {
    ours: '70.23',
    differs: 'the report divides 12.3549 g, given elsewhere, by 17.595 g',
    explained: () => shownAs('70.22', percentYield('12.3549 g', '17.595 g')),
  }),
  row('zinc sulfide', 'yield in per cent', '80.8', () => percentYield('0.606 g', '0.750 g')),
  row('sodium chloride, still wet', 'yield in per cent', '109', () =>
    percentYield(grams('19'), grams('10.9').times(gravimetricFactor({ weighed: 'HCl', sought: 'NaCl' }))),
  ),
  row('copper cycle', 'recovery in per cent', '78.85', () => percentRecovery('0.0672 g', '0.0856 g'), {
    ours: '78.50',
    differs: 'the two printed masses do not give the printed quotient',
  }),
  row('calcium reported after an ignition broken off', 'Ca in per cent of the sample', '28.46', () =>
    correctedCalcium(),
  ),
  row('calcium reported after an ignition broken off', 'error in per cent of the right value', '3.65', () =>
    quantity('29.50 %').minus(correctedCalcium()).dividedBy(correctedCalcium()).to('%'),
  ),
])

/** The number of water of the nearest hydrate. */
function nearest(ignition: Parameters<typeof waterOfCrystallisation>[0]): Quantity {
  return waterOfCrystallisation(ignition).candidates[0]?.waters ?? exact('0')
}

/** The residue taken for CaO held 8 % CaCO3. */
function correctedCalcium(): Quantity<'ratio'> {
  const reported = quantity('29.50 %')
  const inOxide = gravimetricFactor({ weighed: 'CaO', sought: 'Ca' })
  const inCarbonate = gravimetricFactor({ weighed: 'CaCO3', sought: 'Ca' })
  const real = exact('0.92').times(inOxide).plus(exact('0.08').times(inCarbonate))
  return reported.times(real.dividedBy(inOxide))
}

const criterion = (name: keyof typeof constantMassCriteria): Quantity =>
  exact(String(constantMassCriteria[name].within) as '1 mg')

checkPublished('Pharmacopoeias on constant mass', [
  row('European Pharmacopoeia, General Notices 1.2', 'largest difference in mg', '0.5', () => criterion('ph-eur')),
  row('Chinese Pharmacopoeia, General Notices', 'largest difference in mg', '0.3', () => criterion('chp')),
])

/** The recommended values are exact and printed with dots at the end, so their last digit is cut, not rounded. */
function cut(at: string, published: string, conditions: GasConditionsName): PublishedRow {
  const volume = () => gasVolume({ gas: 'H2', amount: exact('1 mol'), at: conditions }).volume
  const ours = () => volume().value.toFixed(20).slice(0, published.length)
  return { at, what: 'in L/mol', published, ours, agrees: true }
}

checkPublished('CODATA recommended values of 2018 and 2022 (from memory)', [
  cut('molar volume of ideal gas, 273.15 K, 100 kPa', '22.71095464', '0 °C, 100 kPa'),
  cut('molar volume of ideal gas, 273.15 K, 101.325 kPa', '22.41396954', '0 °C, 1 atm'),
])

checkPublished('CODATA Key Values for Thermodynamics (1989), from memory', [
  row(
    'H2O(l) and OH-(aq)',
    'enthalpy of neutralisation in kJ/mol',
    '-55.815',
    () => neutralisationEnthalpy('HNO3', 'KOH') ?? exact('0'),
  ),
])

checkPublished('OpenStax, Chemistry 2e, section 4.5, by the titration of a weighed sample', [
  row('Titration Analysis', 'amount in mmol', '8.81', () =>
    titrationAssay({
      sample: '1.000 g',
      sought: 'HCl',
      titrant: { concentration: '0.250 mol/L', volume: '35.23 mL' },
    }).amount.to('mmol'),
  ),
])
