import type { AtomicWeights } from '../../src/element/index.js'
import { balance, parseEquation } from '../../src/equation/index.js'
import { massFractions, molarMass } from '../../src/formula/index.js'
import { percentYield } from '../../src/product/index.js'
import { exact, type Quantity, quantity } from '../../src/quantity/index.js'
import { amountConcentration, amountInVolume, dilution, volumeToDeliver } from '../../src/solution/index.js'
import {
  amountFromMass,
  amountNeeded,
  limitingReagent,
  massFromAmount,
  type SpeciesAmount,
  theoreticalYield,
} from '../../src/stoichiometry/index.js'
import type { BookRow, Sample } from './data/openstax-chemistry-2e.js'
import { toTheDigitsOf } from './written-as.js'

/** Book data are measured, whatever the functions would take their text for. */
const mass = (text: string): Quantity<'mass'> => quantity(text) as Quantity<'mass'>
const amount = (text: string): Quantity<'amount'> => quantity(text) as Quantity<'amount'>
const volume = (text: string): Quantity<'volume'> => quantity(text) as Quantity<'volume'>
const ratio = (text: string): Quantity<'ratio'> => quantity(text) as Quantity<'ratio'>
const density = (text: string): Quantity<'density'> => quantity(text) as Quantity<'density'>
const concentration = (text: string): Quantity<'amountConcentration'> =>
  quantity(text) as Quantity<'amountConcentration'>

function amountOf(sample: Sample, weights?: AtomicWeights): Quantity<'amount'> {
  if (sample.amount !== undefined) return amount(sample.amount)
  if (sample.mass !== undefined) return amountFromMass(mass(sample.mass), sample.of, { weights })
  return amountInVolume(volume(String(sample.volume)), concentration(String(sample.concentration)))
}

const amountsOf = (supplies: readonly Sample[], weights?: AtomicWeights): readonly SpeciesAmount[] =>
  supplies.map((sample) => ({ formula: sample.of, amount: amountOf(sample, weights) }))

/** What reacts or forms, as an amount, a mass, or a volume of solution, as the printed unit asks. */
function reacted(row: Extract<BookRow, { readonly kind: 'reaction' }>, weights?: AtomicWeights): Quantity {
  const given = amountOf(row.given, weights)
  const pure = row.purity === undefined ? given : given.times(ratio(row.purity))
  const wanted = amountNeeded(row.equation, row.wanted, { for: pure, of: row.given.of })
  if (row.concentration !== undefined) return volumeToDeliver(wanted, concentration(row.concentration))
  return row.printed.endsWith('mol') ? wanted : massFromAmount(wanted, row.wanted, { weights })
}

/** Mass of solute in a volume, volume that holds a mass of it, or concentration: from mass fraction and density. */
function byDensity(row: Extract<BookRow, { readonly kind: 'density' }>): Quantity {
  const w = ratio(row.massFraction)
  if (row.volume !== undefined) return density(row.density).times(volume(row.volume)).times(w)
  if (row.mass !== undefined) return mass(row.mass).dividedBy(w).dividedBy(density(row.density))
  return amountConcentration({ massFraction: w, density: density(row.density), substance: row.of })
}

function diluted(row: Extract<BookRow, { readonly kind: 'diluted' | 'stock' }>): Quantity {
  const c = concentration(row.concentration)
  if (row.kind === 'diluted') return dilution({ from: c, stock: volume(row.volume), volume: volume(row.to) }).to
  const other = concentration(row.from)
  return c.compare(other) > 0
    ? dilution({ from: c, stock: volume(row.volume), to: other }).volume
    : dilution({ from: other, to: c, volume: volume(row.volume) }).stock
}

function titrated(row: Extract<BookRow, { readonly kind: 'titration' }>): Quantity {
  const analyte = amountNeeded(row.equation, row.analyte, { for: amountOf(row.titrant), of: row.titrant.of })
  return amountConcentration({ amount: analyte, volume: volume(row.volume), substance: row.analyte })
}

function analysed(row: Extract<BookRow, { readonly kind: 'analysis' }>): Quantity {
  const analyte = amountNeeded(row.equation, row.analyte, { for: amountOf(row.weighed), of: row.weighed.of })
  return massFromAmount(analyte, row.analyte).dividedBy(mass(row.sample)).to('%')
}

/** A row whose answer is a number. */
export type NumericRow = Exclude<BookRow, { readonly kind: 'balance' | 'limiting' }>

/** Our value of a row whose answer is a number. */
export function answerTo(row: NumericRow, weights?: AtomicWeights): Quantity {
  switch (row.kind) {
    case 'molar mass':
      return molarMass(row.formula, { weights })
    case 'amount':
      return amountFromMass(mass(row.mass), row.of, { weights })
    case 'mass':
      return massFromAmount(amount(row.amount).times(exact(row.times ?? 1)), row.of, { weights })
    case 'element':
      return massFractions(row.formula).get(row.element)?.to('%') as Quantity<'ratio'>
    case 'group':
      return exact(row.times).times(molarMass(row.group)).dividedBy(molarMass(row.formula)).to('%')
    case 'mass fraction':
      return mass(row.part).dividedBy(mass(row.whole)).to('%')
    case 'concentration':
      return amountConcentration({
        amount: amountOf(row.sample),
        volume: volume(row.volume),
        substance: row.sample.of,
      })
    case 'amount in solution':
      return amountInVolume(volume(row.volume), concentration(row.concentration))
    case 'mass in solution':
      return massFromAmount(amountInVolume(volume(row.volume), concentration(row.concentration)), row.of)
    case 'volume of solution':
      return volumeToDeliver(amountOf(row.sample), concentration(row.concentration))
    case 'diluted':
    case 'stock':
      return diluted(row)
    case 'density':
      return byDensity(row)
    case 'reaction':
      return reacted(row, weights)
    case 'yield':
      return percentYield(mass(row.actual), theoreticalYield(row.equation, row.product, amountsOf(row.supplies)).mass)
    case 'titration':
      return titrated(row)
    case 'analysis':
      return analysed(row)
  }
}

/** What the library gives for a row, to the printed digits. */
export function ourAnswer(row: BookRow): string {
  if (row.kind === 'balance') return balance(row.equation).toString()
  if (row.kind === 'limiting') return limitingReagent(row.equation, amountsOf(row.supplies)).formula
  return toTheDigitsOf(row.printed, answerTo(row))
}

/** What the book prints for a row, equations in the spelling of the library. */
export function printedAnswer(row: BookRow): string {
  return row.kind === 'balance' ? parseEquation(row.printed).toString() : row.printed
}
