import type { AtomicWeights } from '../element/index.js'
import { type FormulaLike, formulaOf, molarMass } from '../formula/index.js'
import { fractionOf } from '../fraction.js'
import type { Quantity } from '../quantity/index.js'
import { exactFraction } from '../stoichiometry/exact-fraction.js'
import { type Given, measured } from '../stoichiometry/given.js'
import { type AssayResult, assayResult } from './gravimetric-assay.js'
import { positive, record } from './guard.js'
import { readRatio } from './read-ratio.js'

/** A standard solution that was used up; text is measured. */
export interface Titrant {
  /** Its amount concentration. */
  readonly concentration: Given<'amountConcentration'>
  /** The volume delivered. */
  readonly volume: Given<'volume'>
  /** The volume that a blank takes, to be subtracted; none unless said. */
  readonly blank?: Given<'volume'> | undefined
}

/** A titration of a weighed sample; text is measured. */
export interface TitrationAssay {
  /** Mass of the sample. */
  readonly sample: Given<'mass'>
  /** What is sought. */
  readonly sought: FormulaLike
  /** The standard solution. */
  readonly titrant: Titrant
  /** Moles of the substance sought per mole of titrant, as `"1/2"`; one unless said. */
  readonly ratio?: string | undefined
  /** A second solution that takes back what was added in excess. */
  readonly back?: Titrant | undefined
  /** Moles of titrant that a mole of the second solution takes back, as `"1"`; one unless said. */
  readonly backRatio?: string | undefined
  /** Where only a part of the dissolved sample was titrated: that part and the whole. */
  readonly aliquot?:
    | {
        /** What was titrated. */
        readonly taken: Given<'volume'>
        /** Of how much it was taken. */
        readonly of: Given<'volume'>
      }
    | undefined
  /** Atomic weights; `"abridged"` unless said. */
  readonly weights?: AtomicWeights | undefined
}

/** What a titration finds. */
export interface TitrationResult extends AssayResult {
  /** Amount of the substance sought in the sample. */
  readonly amount: Quantity<'amount'>
}

/**
 * A titration assay: how much of a substance a sample holds, from the volume of a standard solution; directly, with a blank, by back
 * titration, or of an aliquot.
 *
 * @param assay - The sample, what is sought, the standard solution, mole ratio, back titration, aliquot.
 * @returns Amount, mass and mass fraction of the substance sought. Below zero where the blank or the back titration takes more
 *   than was added: to be looked at, not hidden.
 * @throws {@link ProductError} `product/not-positive`; `product/unreadable-ratio`; `product/not-an-object`.
 * @source OpenStax, Chemistry 2e, section 4.5, Titration. Back titration and aliquots: Harvey, Analytical Chemistry 2.0, chapter 9.
 *
 * @example
 * ```ts
 * import { titrationAssay } from 'saltwright/product'
 *
 * const iron = titrationAssay({
 *   sample: '1.2040 g',
 *   sought: '(NH4)2Fe(SO4)2·6H2O',
 *   titrant: { concentration: '0.02010 mol/L', volume: '30.21 mL' },
 *   ratio: '5',
 * })
 * iron.massFraction.toString() // => '98.88 %'
 * ```
 */
export function titrationAssay(assay: TitrationAssay): TitrationResult {
  const { sought, titrant, back, weights, sample } = record(assay, 'a titration')
  const of = formulaOf(sought).text
  const used = usedUp(titrant, 'titrant')
  const net = back === undefined ? used : used.minus(takenBack(back, assay.backRatio))
  const amount = whole(net.times(ratioOf(assay.ratio, `moles of ${of} per mole of titrant`)), assay).named({
    label: `amount of ${of}`,
    symbol: 'n',
    of,
    role: 'amount',
  })
  return { amount, ...assayResult(amount.times(molarMass(sought, { weights })), sample, of) }
}

/** The amount of a standard solution that was used up, less the blank. */
function usedUp(titrant: Titrant, what: string): Quantity<'amount'> {
  const { concentration, volume, blank } = record(titrant, `a ${what}: { concentration, volume }`)
  const c = positive(concentration, 'amountConcentration', {
    label: `concentration of the ${what}`,
    symbol: 'c',
    role: 'concentration',
  })
  const delivered = positive(volume, 'volume', { label: `volume of the ${what}`, symbol: 'V', role: 'volume' })
  const net =
    blank === undefined ? delivered : delivered.minus(measured(blank, 'volume', { label: 'blank', symbol: 'V' }))
  return c.times(net).named({ label: `amount of the ${what}`, symbol: 'n', role: 'amount' })
}

function takenBack(back: Titrant, ratio: string | undefined): Quantity<'amount'> {
  return usedUp(back, 'back titrant').times(ratioOf(ratio, 'moles of titrant per mole of back titrant'))
}

function ratioOf(ratio: string | undefined, label: string): Quantity<'ratio'> {
  const moles = ratio === undefined ? fractionOf(1) : readRatio(ratio)
  return exactFraction(moles, { label, symbol: 'r', role: 'mole ratio' })
}

function whole(amount: Quantity<'amount'>, { aliquot }: TitrationAssay): Quantity<'amount'> {
  if (aliquot === undefined) return amount
  const { taken, of } = record(aliquot, 'an aliquot: { taken, of }')
  const part = positive(taken, 'volume', { label: 'aliquot', symbol: 'V', role: 'aliquot' })
  return amount.times(positive(of, 'volume', { label: 'whole solution', symbol: 'V', role: 'aliquot' }).dividedBy(part))
}
