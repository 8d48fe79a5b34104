import { exact, type Quantity } from '../../src/quantity/index.js'
import {
  amountConcentration,
  convertBasis,
  densityOf,
  dilution,
  fromNormality,
  readTo,
  stockReagent,
  stockReagents,
} from '../../src/solution/index.js'
import { checkPublished, type Difference, type PublishedRow } from './check.js'
import { printedConcentrations } from './data/density-table-concentrations.js'
import { type PrintedOtherwise, printedOtherwise, volumesForOneMolar } from './data/stock-reagents.js'
import { toTheDigitsOf } from './written-as.js'

/** One strength, whose numbers count as exact, so that nothing but the molar mass limits the digits. */
interface Strength {
  readonly substance: string
  readonly massFraction: string
  readonly basis?: string | undefined
  readonly rho: Quantity<'density'>
  readonly printed: string
}

const ratio = (text: string): Quantity<'ratio'> => exact(text) as Quantity<'ratio'>
const density = (text: string): Quantity<'density'> => exact(text) as Quantity<'density'>

function ourValue({ substance, massFraction, basis, rho, printed }: Strength): string {
  return toTheDigitsOf(
    printed,
    amountConcentration({ massFraction: ratio(massFraction), basis, density: rho, substance }),
  )
}

function withMolarMass({ massFraction, rho, printed }: Strength, molarMass: string): string {
  const M = exact(molarMass) as Quantity<'molarMass'>
  return toTheDigitsOf(printed, rho.times(ratio(massFraction)).dividedBy(M))
}

function agreement(strength: Strength): true | Difference {
  const { substance, massFraction, printed } = strength
  const other = printedOtherwise.find(
    (row) => row.substance === substance && row.massFraction === massFraction && row.printed === printed,
  )
  return other === undefined ? true : difference(strength, other)
}

function difference(strength: Strength, { ours, differs, molarMass }: PrintedOtherwise): Difference {
  return { ours, differs, ...(molarMass !== undefined && { explained: () => withMolarMass(strength, molarMass) }) }
}

function rowOf(at: string, strength: Strength): PublishedRow {
  const { substance, massFraction, basis = substance, printed } = strength
  const what = `the concentration of ${substance} with ${massFraction} of ${basis}`
  return { at, what, published: printed, ours: () => ourValue(strength), agrees: agreement(strength) }
}

for (const source of new Set(stockReagents.flatMap(({ strengths }) => strengths.map((strength) => strength.source)))) {
  const rows = stockReagents.flatMap(({ name, formula, strengths }) =>
    strengths
      .filter((strength) => strength.source === source)
      .map((strength) => rowOf(name, { ...strength, substance: formula, rho: density(strength.density) })),
  )
  checkPublished(source, rows)
}

checkPublished(
  'CRC Handbook of Chemistry and Physics, 102nd edition (2021), Concentrative Properties of Aqueous Solutions, 20 °C: rows with their density',
  printedConcentrations.map((row) =>
    rowOf(`${row.substance}, ${row.massFraction}`, {
      ...row,
      rho: density(densityOf(row.substance, row.massFraction).toString()),
    }),
  ),
)

/** From the concentration that the table prints for the usual strength, as the table does. */
function volumeForOneMolar(substance: string): string {
  const [usual] = stockReagent(substance).strengths
  const from = exact(usual?.printed as string) as Quantity<'amountConcentration'>
  return readTo(dilution({ from, to: '1 mol/L', volume: '1000 mL' }).stock, '0.5 mL').toString()
}

checkPublished(
  'A supplier’s table, Composition of concentrated reagent-grade acids, ammonium hydroxide, and sodium and potassium hydroxide solutions: volumes',
  volumesForOneMolar.map(
    ({ substance, printed }): PublishedRow => ({
      at: 'volume for 1 L of 1 mol/L, to the nearest 0.5 mL',
      what: `the volume of concentrated ${substance}`,
      published: printed,
      ours: () => volumeForOneMolar(substance),
      agrees: true,
    }),
  ),
)

checkPublished('Laboratory manuals and stockroom pages', [
  {
    at: 'stock of nitric acid for the copper cycle',
    what: 'the volume of 15.7 mol/L for 50 mL of 8 mol/L',
    published: '25.5 mL',
    ours: () => readTo(dilution({ from: '15.7 mol/L', to: '8 mol/L', volume: '50 mL' }).stock, '0.1 mL').toString(),
    agrees: true,
  },
  {
    at: 'stock of hydrochloric acid',
    what: 'the concentration of 12.1 mol/L, diluted to twice its volume,',
    published: '6.05 mol/L',
    ours: () => dilution({ from: '12.1 mol/L', stock: '50 mL', volume: '100 mL' }).to.toString(),
    agrees: true,
  },
  {
    at: 'Blanchard, ammonium iron(II) sulfate: 222 cc of 6 N sulfuric acid for 2/3 formula weight',
    what: 'the amount of sulfuric acid',
    published: '0.666 mol',
    ours: () => fromNormality('6 N', { equivalentsPerMole: 2 }).times(exact('222 mL')).toString(),
    agrees: true,
  },
  {
    at: 'a supplier’s table, ammonium hydroxide: 56.6 % w/w, equivalent to 28.0 % of NH3',
    what: 'the mass fraction of NH3 as NH4OH',
    published: '56.6 %',
    ours: () => convertBasis({ massFraction: '28.0 %', from: 'NH3', to: 'NH4OH' }).toString(),
    agrees: { ours: '57.6 %', differs: '56.6 % of NH4OH are 27.5 % of NH3; one of the two has a slip of the pen' },
  },
  {
    at: 'British Pharmacopoeia 2012, Appendix I A, Sulfuric Acid: 54x mL for x mol/L, of acid of about 18 mol/L',
    what: 'the volume for 1 L of 1 mol/L',
    published: '54 mL',
    ours: () => readTo(dilution({ from: '18 mol/L', to: '1 mol/L', volume: '1000 mL' }).stock, '1 mL').toString(),
    agrees: {
      ours: '56 mL',
      differs: '54 mL are of acid of 98 % rather than of the 96 % and 18 mol/L that stand beside it',
    },
  },
])
