import { solubilityOf } from '../../src/crystallisation/index.js'
import { exact, type Quantity } from '../../src/quantity/index.js'
import { checkPublished, type PublishedRow } from './check.js'
import { handbookSolubilities, type PrintedSolubilities, singleSolubilities } from './data/solubilities.js'
import { shownAs } from './shown-as.js'

const massRatio = (salt: string, celsius: number): Quantity<'ratio'> => solubilityOf(salt, `${celsius} degC`).massRatio

function converted({ salt, celsius, perHundredOfWater }: PrintedSolubilities): readonly PublishedRow[] {
  return celsius.map((t, index) => {
    const published = perHundredOfWater[index] as string
    const ours = () =>
      shownAs(published, massRatio(salt, t).times(exact(100)), `1e-${published.split('.')[1]?.length ?? 0}`)
    return { at: `${salt} at ${t} °C`, what: 'g per 100 g of water', published, ours, agrees: true }
  })
}

/** The printed mass percent, read back out of the mass ratio. */
function asPrinted({ salt, celsius, massPercent = [] }: PrintedSolubilities): readonly PublishedRow[] {
  return massPercent.map((published, index) => {
    const t = celsius[index] as number
    const ours = () => {
      const k = massRatio(salt, t)
      return shownAs(published, k.dividedBy(exact(1).plus(k)).to('%'))
    }
    return { at: `${salt} at ${t} °C`, what: 'mass percent', published, ours, agrees: true }
  })
}

checkPublished(
  'CRC Handbook of Chemistry and Physics, 98th ed. (2017), Aqueous Solubility of Inorganic Compounds at Various Temperatures',
  handbookSolubilities.flatMap(asPrinted),
)

checkPublished('The same, converted outside the library', handbookSolubilities.flatMap(converted))

checkPublished('Solubility tables of single salts', singleSolubilities.flatMap(converted))

checkPublished('Blanchard, Phelan and Davis, Synthetic Inorganic Chemistry, 5th ed. (1936), p. 343', [
  ...converted({
    salt: '(NH4)2Fe(SO4)2',
    celsius: [0, 10, 20, 30, 40, 50, 70],
    perHundredOfWater: ['12', '17', '22', '28', '33', '40', '52'],
  }),
])
