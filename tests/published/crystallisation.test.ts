import {
  expectedCrop,
  massRatioFromFraction,
  type SolubilityTable,
  temperatureForCrop,
} from '../../src/crystallisation/index.js'
import { type AtomicWeights, atomicWeightSet } from '../../src/element/index.js'
import { componentMasses } from '../../src/product/index.js'
import { exact, type Quantity } from '../../src/quantity/index.js'
import { checkPublished, type PublishedRow } from './check.js'
import { shownAs } from './shown-as.js'

type Mass = Quantity<'mass'>
type Ratio = Quantity<'ratio'>

const kilograms = (text: string): Mass => exact(`${text} kg` as '1 kg')
const ratio = (text: string): Ratio => exact(text as '1')
const perHundred = (text: string): Ratio => exact(`${text} %` as '1 %')

/** A feed by its mass and the salt in it: salt and water. */
interface Feed {
  readonly salt: Mass
  readonly water: Mass
}

function feed(mass: string, salt: Ratio): Feed {
  const total = kilograms(mass)
  return { salt: total.times(salt), water: total.minus(total.times(salt)) }
}

/** A saturated feed, from the grams of salt per 100 g of water. */
function saturated(mass: string, solubility: string): Feed {
  const k = perHundred(solubility)
  return feed(mass, k.dividedBy(exact(1).plus(k)))
}

interface Cooled extends Feed {
  readonly crystal: string
  readonly solubility: Ratio
  readonly evaporated?: Mass
  readonly weights?: AtomicWeights
}

function cooled({ salt, ...rest }: Cooled): ReturnType<typeof expectedCrop> {
  return expectedCrop({ ...rest, dissolved: salt, temperature: '20 degC' })
}

/** Atomic weights that give the molar masses, or the rounded mass fraction, that a source works with. */
const weighing = (values: Readonly<Record<string, string>>): AtomicWeights =>
  atomicWeightSet({ name: 'of the source', values: { O: '16', ...values } })

function row(
  at: string,
  what: string,
  published: string,
  ours: () => Quantity,
  agrees: PublishedRow['agrees'] = true,
): PublishedRow {
  return { at, what, published, ours: () => shownAs(published, ours()), agrees }
}

const soda = { crystal: 'Na2CO3·10H2O', ...feed('10000', perHundred('30')), solubility: perHundred('21.5') }
const epsom = { crystal: 'MgSO4·7H2O', ...feed('1000', perHundred('30')) }
const epsomOfTwoTonnes = { crystal: 'MgSO4·7H2O', ...feed('2000', perHundred('30')), solubility: perHundred('35.5') }
const glauber = { crystal: 'Na2SO4·10H2O', solubility: perHundred('9') }
const coulson = { ...glauber, salt: kilograms('1000'), water: kilograms('5000'), evaporated: kilograms('100') }
const glauberFrom30 = { ...glauber, ...saturated('1000', '40.8'), solubility: perHundred('9.0') }
const sodaOfSixTonnes = {
  ...soda,
  ...feed('6000', perHundred('35')),
  evaporated: kilograms('6000').times(perHundred('4')),
}
const potash = { crystal: 'K2CO3·2H2O', ...saturated('500', '139.8'), solubility: perHundred('110.5') }
const nitre = { crystal: 'KNO3', ...feed('1', perHundred('50')), solubility: perHundred('40') }
const sylvite = {
  crystal: 'KCl',
  salt: kilograms('1000'),
  water: kilograms('1000').dividedBy(massRatioFromFraction('35 %')),
  solubility: massRatioFromFraction('25.4 %'),
}

checkPublished(
  'Geankoplis, Transport Processes and Unit Operations, 3rd ed. (1993): statement and answers of Example 12.11-1 from memory',
  [
    row('Example 12.11-1, case 1', 'crystals in kg', '6370', () => cooled(soda).crop, {
      ours: '6360',
      differs: 'the book rounds the coefficients of its two equations',
    }),
    row('Example 12.11-1, case 1', 'mother liquor in kg', '3630', () => cooled(soda).motherLiquor, {
      ours: '3640',
      differs: 'the book rounds the coefficients of its two equations',
    }),
    row(
      'Example 12.11-1, case 2',
      'crystals in kg',
      '6630',
      () => cooled({ ...soda, evaporated: kilograms('300') }).crop,
    ),
    row(
      'Example 12.11-1, case 2',
      'mother liquor in kg',
      '3070',
      () => cooled({ ...soda, evaporated: kilograms('300') }).motherLiquor,
    ),
    row('Problem 12.11-2', 'water needed in kg', '1857', () => sylvite.water),
    row('Problem 12.11-2, (a)', 'crystals in kg', '368', () => cooled(sylvite).crop),
    row(
      'Problem 12.11-2, (b)',
      'crystals in kg',
      '399',
      () => cooled({ ...sylvite, evaporated: sylvite.water.times(perHundred('5')) }).crop,
    ),
  ],
)

checkPublished(
  'McCabe, Smith and Harriott, Unit Operations of Chemical Engineering (statement and solution on a web page)',
  [
    row(
      'Example 27.1',
      'crystals in kg',
      '261',
      () =>
        cooled({
          ...epsom,
          evaporated: epsom.water.times(perHundred('5')),
          solubility: massRatioFromFraction('24.5 %'),
        }).crop,
    ),
  ],
)

checkPublished(
  "Richardson, Harker and Backhurst, Coulson and Richardson's Chemical Engineering, vol. 2, 5th ed. (2002)",
  [
    row('Example 15.3', 'crystals in kg', '1432', () => cooled(coulson).crop, {
      ours: '1431',
      differs: 'the book rounds the ratio of the molar masses to 2.27, and cuts off the 1432.7 that this gives',
    }),
  ],
)

const potashWeights = weighing({ K: '39', C: '12', H: '1.0551066784496906' }) // 138 and 0.7921

checkPublished('Elements of Mass Transfer, Part 1 (worked numbers of a public notebook; authors from memory)', [
  row('Example 7.5', 'crystals in kg', '576.477290', () => cooled(glauberFrom30).crop, {
    ours: '578.326137',
    differs: 'the mass fraction of the salt in the crystals is taken as 0.442 instead of 0.441',
    explained: () =>
      shownAs(
        '576.477290',
        cooled({ ...glauberFrom30, weights: weighing({ Na: '23', S: '32', H: '0.9633484162895928' }) }).crop,
      ),
  }),
  row('Example 7.7 (misprinted as the 10-hydrate)', 'crystals in kg', '108.634036', () => cooled(potash).crop, {
    ours: '108.184898',
    differs: 'the mass fraction of the salt in the crystals is taken as 0.7921 instead of 0.7932',
    explained: () => shownAs('108.634036', cooled({ ...potash, weights: potashWeights }).crop),
  }),
  row('Example 7.7', 'yield in per cent', '29.557504', () => cooled(potash).share, {
    ours: '29.439223',
    differs: 'the mass fraction of the salt in the crystals is taken as 0.7921 instead of 0.7932',
  }),
  row('Example 7.11', 'crystals in kg', '5049.122335', () => cooled(sodaOfSixTonnes).crop, {
    ours: '5586.552939',
    differs: 'the source uses 116 and 296 where the molar masses are 106 and 286, and rounds their ratio to 0.391',
    explained: () =>
      shownAs(
        '5049.122335',
        cooled({ ...sodaOfSixTonnes, weights: weighing({ Na: '28', C: '12', H: '1.0337595907928389' }) }).crop,
      ),
  }),
])

checkPublished('Felder and Rousseau, Elementary Principles of Chemical Processes, 3rd ed., publisher’s solution', [
  row('Problem 6.78', 'crystals per unit of feed', '0.300', () => cooled(nitre).crop),
  row('Problem 6.78', 'saturated solution per unit of feed', '0.700', () => cooled(nitre).motherLiquor),
  row('Problem 6.78', 'crystals per solution', '0.429', () => cooled(nitre).crop.dividedBy(cooled(nitre).motherLiquor)),
])

const sodaTable: SolubilityTable = {
  salt: 'Na2CO3',
  name: 'sodium carbonate',
  per: '100 g of water',
  source: 'Himmelblau and Riggs, 7th ed. (2004), Example 8.6',
  phases: [{ crystal: 'Na2CO3·10H2O', celsius: [0, 10, 20, 30], printed: ['7', '12.5', '21.5', '38.8'] }],
}

checkPublished('Himmelblau and Riggs, Basic Principles and Calculations in Chemical Engineering, 7th ed. (2004)', [
  row('Example 8.6', 'temperature in °C for 3000 kg of crystals', '26', () => {
    const { salt, water } = saturated('10000', '38.8')
    const wanted = { crystal: 'Na2CO3·10H2O', dissolved: salt, water, crop: '3000 kg', table: sodaTable } as const
    return temperatureForCrop(wanted)
  }),
])

checkPublished('Scilab textbook companion 632 (a process-calculations textbook without a title)', [
  row(
    'Example 9.7, potassium chloride for the unnamed salt',
    'crystals in kg',
    '20.275',
    () =>
      cooled({
        crystal: 'KCl',
        ...feed('100', perHundred('25')),
        evaporated: kilograms('7.5'),
        solubility: perHundred('7'),
      }).crop,
  ),
])

const wet = () =>
  componentMasses({ total: kilograms('5600'), converted: kilograms('2800'), factors: [ratio('0.20'), ratio('0.95')] })

checkPublished('A web page on the balance of a crystalliser (chemistryportal.net)', [
  row('5600 kg of a 50 % solution', 'saturated solution in kg', '3360', () => wet()[0]),
  {
    at: '5600 kg of a 50 % solution',
    what: 'wet crystals in kg',
    published: '2200',
    ours: () => shownAs('2200', wet()[1], '10'),
    agrees: { ours: '2240', differs: 'a misprint: the two printed flows do not add up to the feed' },
  },
])

checkPublished('An anonymous tutoring page', [
  row('2000 kg of 30 % magnesium sulfate', 'crystals in kg', '211.45', () => cooled(epsomOfTwoTonnes).crop, {
    ours: '335.82',
    differs: 'the page leaves out the water that the heptahydrate takes with it',
  }),
])
