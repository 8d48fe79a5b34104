import { type FormulaLike, formulaOf } from '../formula/index.js'
import { type Quantity, roundTo } from '../quantity/index.js'
import { chosen } from '../stoichiometry/given.js'
import { speciesKey } from '../stoichiometry/index.js'
import { type Caution, generalCaution } from './caution.js'
import type { GasFact } from './facts.js'
import { type GeneralCautionCode, generalCautions } from './general-cautions.js'
import { gasClassification } from './substance-cautions.js'

/** What an evolved gas calls for: how much there is, the precaution, and its classification. */
export function gasCautions(fact: GasFact): readonly Caution[] {
  const about = formulaOf(fact.gas).text
  const numbers = numbersOf(fact, about)
  const code = codeOf(fact.gas)
  const amounts = Object.values(numbers).map(shown)
  const said = amounts.length === 0 ? about : `${about}, ${amounts.join(', ')}`
  const message = `${said}: ${generalCautions[code].text}`
  return [generalCaution(code, { about, numbers, message }), gasClassification(fact)]
}

/** A worked-out volume has more digits than anybody needs here. */
function shown(quantity: Quantity): string {
  return (quantity.value.sd() > 3 ? roundTo(quantity, { figures: 3 }) : quantity).toString()
}

/** Gases that poison in small amounts: common knowledge, no source. */
const toxicGases = ['H2S', 'SO2', 'Cl2', 'NO', 'CO', 'NH3', 'HCN', 'HCl'] as const

function codeOf(gas: FormulaLike): GeneralCautionCode {
  const key = speciesKey(gas)
  if (key === speciesKey('H2')) return 'hydrogen'
  if (key === speciesKey('NO2')) return 'nitrogen-dioxide'
  return toxicGases.some((toxic) => speciesKey(toxic) === key) ? 'toxic-gas' : 'gas-evolved'
}

function numbersOf({ amount, volume }: GasFact, of: string): Readonly<Record<string, Quantity>> {
  return {
    ...(amount !== undefined && { amount: chosen(amount, 'amount', { label: `amount of ${of}`, symbol: 'n', of }) }),
    ...(volume !== undefined && { volume: chosen(volume, 'volume', { label: `volume of ${of}`, symbol: 'V', of }) }),
  }
}
