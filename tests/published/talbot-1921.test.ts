import { atomicWeightSet } from '../../src/element/index.js'
import { molarMass } from '../../src/formula/index.js'
import {
  componentMasses,
  constantMass,
  gravimetricAssay,
  gravimetricFactor,
  netMass,
  titrationAssay,
} from '../../src/product/index.js'
import { exact, logarithm, type Quantity } from '../../src/quantity/index.js'
import { checkPublished, type PublishedRow } from './check.js'
import { shownAs } from './shown-as.js'

/** Atomic weights of 1920 to one decimal, as the problems of the book use them. */
const weights = atomicWeightSet({
  name: 'Talbot, to one decimal',
  values: {
    Ag: '107.9',
    Al: '27.1',
    Ba: '137.4',
    Br: '79.9',
    C: '12.0',
    Ca: '40.1',
    Cl: '35.5',
    Cr: '52.0',
    Fe: '55.8',
    H: '1.0',
    I: '126.9',
    K: '39.1',
    Mg: '24.3',
    Mn: '54.9',
    N: '14.0',
    Na: '23.0',
    O: '16.0',
    P: '31.0',
    Pb: '207.2',
    S: '32.1',
  },
})

/** The unrounded weights of the same book, where a value rests on them. */
const unrounded = atomicWeightSet({
  name: 'Talbot, unrounded',
  values: { Ag: '107.88', Cl: '35.46', Fe: '55.84', O: '16.00' },
})

const grams = (text: string): Quantity<'mass'> => exact(`${text} g` as '1 g')
const ratio = (text: string): Quantity<'ratio'> => exact(text as '1')
const percent = (part: Quantity<'mass'>, whole: string): Quantity<'ratio'> => part.dividedBy(grams(whole)).to('%')

const fourPlaces = 'the book calculates with four-place logarithms and lets the last figure vary by one or two'

function row(
  at: string,
  what: string,
  published: string,
  ours: () => Quantity,
  agrees: PublishedRow['agrees'] = true,
): PublishedRow {
  return { at, what, published, ours: () => shownAs(published, ours()), agrees }
}

function factor(weighed: string, sought: string, set = weights): Quantity<'ratio'> {
  return gravimetricFactor({ weighed, sought, weights: set })
}

/** As the book prints a logarithm below zero: `9.8069-10`. */
const raised = (q: Quantity<'ratio'>): Quantity<'ratio'> => logarithm(q).plus(exact(10))

const coin = { sample: '0.2500 g', precipitate: '0.2991 g', weighed: 'AgCl', sought: 'Ag', weights } as const
const halides = componentMasses({
  total: grams('1'),
  converted: grams('0.6635'),
  factors: [factor('AgCl', 'Ag'), factor('AgBr', 'Ag')],
})
const oxides = componentMasses({
  total: grams('2.2120'),
  converted: grams('5.023'),
  factors: [
    gravimetricFactor({ weighed: 'CaO', sought: 'CaSO4', ratio: '1', weights }),
    gravimetricFactor({ weighed: 'BaO', sought: 'BaSO4', ratio: '1', weights }),
  ],
})
const chlorine = netMass({ gross: '14.4485 g', tare: '14.2216 g' })
const tube = netMass({ gross: '16.1721 g', tare: '15.9976 g' })
const iron = exact('0.2 mol/L').times(exact('25 mL')).times(molarMass('FeO', { weights }))
const rochelle = titrationAssay({
  sample: '0.9500 g',
  sought: 'KNaC4H4O6·4H2O',
  titrant: { concentration: exact('0.1321 mol/L').times(ratio('1.064')), volume: exact('43.65 mL') },
  back: { concentration: exact('0.1321 mol/L'), volume: exact('1.72 mL') },
  ratio: '1/2',
  weights,
})
const soda = (volume: string, sought: string): Quantity<'ratio'> =>
  titrationAssay({
    sample: '1.500 g',
    sought,
    titrant: { concentration: exact('0.5 mol/L'), volume: exact(`${volume} mL` as '1 mL') },
    weights,
  }).massFraction

/** Problem 30: alkali from oxalic acid; 1.190 mL of the acid neutralise 1 mL of it. */
const alkali = exact('0.2460 g')
  .dividedBy(molarMass('H2C2O4·2H2O', { weights }))
  .times(exact(2))
  .dividedBy(exact('41.03 mL').minus(exact('0.63 mL').dividedBy(ratio('1.190'))))
const calcite = titrationAssay({
  sample: '0.1200 g',
  sought: 'CaCO3',
  titrant: { concentration: alkali.dividedBy(ratio('1.190')), volume: exact('36.38 mL') },
  back: { concentration: alkali, volume: exact('6.20 mL') },
  ratio: '1/2',
  weights,
})

checkPublished(
  'Talbot H. P., An Introductory Course of Quantitative Chemical Analysis (1921), problems with atomic weights to one decimal',
  [
    row('problem 73a', 'Ag in AgCl', '0.7526', () => factor('AgCl', 'Ag'), {
      ours: '0.7524',
      differs: 'the printed value rests on the unrounded atomic weights of the book',
      explained: () => shownAs('0.7526', factor('AgCl', 'Ag', unrounded)),
    }),
    row('problem 73c', 'MgCl2 in MgNH4PO4', '0.6940', () => factor('MgNH4PO4', 'MgCl2'), {
      ours: '0.6941',
      differs: fourPlaces,
    }),
    row('problem 74b', 'MgO in Mg2P2O7', '0.3620', () => factor('Mg2P2O7', 'MgO'), {
      ours: '0.3621',
      differs: fourPlaces,
    }),
    row('problem 74d', 'Fe in Fe2O3', '0.6990', () => factor('Fe2O3', 'Fe'), { ours: '0.6992', differs: fourPlaces }),
    row('problem 76', 'Mn3O4 in MnO2', '0.8774', () => factor('MnO2', 'Mn3O4'), {
      ours: '0.8773',
      differs: fourPlaces,
    }),
    row('problem 75a', 'logarithm of Pb in PbCrO4, ten added', '9.8069', () => raised(factor('PbCrO4', 'Pb'))),
    row('problem 75c', 'logarithm of Pb in PbO2, ten added', '9.9376', () => raised(factor('PbO2', 'Pb'))),
    row('problem 77 (silver coin)', 'Ag in per cent', '90.05', () => gravimetricAssay(coin).massFraction, {
      ours: '90.02',
      differs: fourPlaces,
    }),
    row(
      'problem 77 (silver coin)',
      'AgI in g',
      '0.4898',
      () => gravimetricAssay({ ...coin, sought: 'AgI', ratio: '1' }).mass,
      { ours: '0.4897', differs: fourPlaces },
    ),
    row('problem 79 (potash alum to ignited alumina)', 'Al2O3 in g from 2 g', '0.2154', () =>
      grams('2').times(factor('KAl(SO4)2·12H2O', 'Al2O3')),
    ),
    row(
      'problem 87 (iron(II) ammonium sulfate)',
      'sample in g',
      '0.6870',
      () => grams('5').times(factor('BaSO4', 'S')),
      {
        ours: '0.6874',
        differs: fourPlaces,
      },
    ),
    row('problem 86', 'sample in g', '6.99', () => grams('10').times(factor('Fe2O3', 'Fe'))),
    row(
      'problem 93 (limestone)',
      'CaO in tons from 3 tons',
      '1.565',
      () => grams('3').times(ratio('0.9305')).times(factor('CaCO3', 'CaO')),
      {
        ours: '1.564',
        differs: fourPlaces,
      },
    ),
    row('problem 93 (limestone)', 'Mg2P2O7 in g from 3 g', '0.2044', () =>
      grams('3').times(ratio('0.0516')).times(factor('MgCO3', 'Mg2P2O7')),
    ),
    row('problem 47', 'FeO in per cent', '35.89', () => percent(iron, '1'), { ours: '35.90', differs: fourPlaces }),
    row(
      'problem 47',
      'Al2O3 in per cent',
      '10.03',
      () => percent(grams('0.5').minus(iron.times(factor('FeO', 'Fe2O3'))), '1'),
      { ours: '10.10', differs: 'the printed value is not reproduced by the numbers of the problem' },
    ),
    row('problem 103', 'Br in per cent', '21.30', () => percent(halides[1].times(factor('AgBr', 'Br')), '1'), {
      ours: '21.27',
      differs: 'an indirect analysis magnifies the four-place rounding',
    }),
    row('problem 106', 'CaO in g', '1.824', () => oxides[0], {
      ours: '1.829',
      differs: 'an indirect analysis magnifies the four-place rounding',
    }),
    row('problem 106', 'BaO in g', '0.3877', () => oxides[1], {
      ours: '0.3835',
      differs: 'an indirect analysis magnifies the four-place rounding',
    }),
    row('problem 19 (Rochelle salt)', 'purity in per cent', '87.72', () => rochelle.massFraction),
    row('problem 23', 'NaOH in per cent', '6.67', () => soda('5.00', 'NaOH')),
    row('problem 23', 'Na2CO3 in per cent', '84.28', () => soda('23.85', 'Na2CO3'), {
      ours: '84.27',
      differs: fourPlaces,
    }),
    row('problem 30 (calcite)', 'purity in per cent', '97.97', () => calcite.massFraction, {
      ours: '98.00',
      differs: fourPlaces,
    }),
    row(
      'typical problem 4',
      '2 BaCl2·2H2O in g/mol',
      '488',
      () => exact(2).times(molarMass('BaCl2·2H2O', { weights })),
      {
        ours: '489',
        differs: '488.8 with the atomic weights of the book',
      },
    ),
    row('typical problem 4', 'FeS2 in g/mol', '120.0', () => molarMass('FeS2', { weights })),
    row('specimen page of a note-book', 'sample in g', '0.1745', () => tube),
    row('specimen page of a note-book', 'precipitate in g', '0.2269', () => chlorine),
    row('specimen page of a note-book', 'Cl in per cent', '32.18', () => percentOf(chlorine, tube), {
      ours: '32.17',
      differs: fourPlaces,
    }),
    {
      at: 'specimen page of a note-book, successive weighings within 0.0003 g',
      what: 'constant weights',
      published: '14.4487, 14.4485',
      ours: () => constantPair(['14.4496 g', '14.4487 g', '14.4485 g']),
      agrees: true,
    },
  ],
)

function percentOf(precipitate: Quantity<'mass'>, sample: Quantity<'mass'>): Quantity<'ratio'> {
  return precipitate
    .times(factor('AgCl', 'Cl', unrounded))
    .dividedBy(sample)
    .to('%')
}

/** The first two successive weighings that count as constant. */
function constantPair(weighings: readonly `${number} g`[]): string {
  const end = weighings.findIndex(
    (_, index) =>
      index > 0 && constantMass({ weighings: weighings.slice(0, index + 1), criterion: 'analytical-balance' }).reached,
  )
  return weighings
    .slice(end - 1, end + 1)
    .map((text) => text.replace(' g', ''))
    .join(', ')
}
