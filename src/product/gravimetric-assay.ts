import { formulaOf } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import type { Given } from '../stoichiometry/given.js'
import { type GravimetricPair, gravimetricFactor } from './gravimetric-factor.js'
import { positive } from './guard.js'

/** A sample and the precipitate it gave; text is measured. */
export interface GravimetricAssay extends GravimetricPair {
  /** Mass of the sample. */
  readonly sample: Given<'mass'>
  /** Mass of the substance that was weighed in the end. */
  readonly precipitate: Given<'mass'>
}

/** What an assay finds. */
export interface AssayResult {
  /** Mass of the substance sought. */
  readonly mass: Quantity<'mass'>
  /** Its mass fraction in the sample, in per cent. */
  readonly massFraction: Quantity<'ratio'>
}

/**
 * A gravimetric assay: how much of a substance a sample holds, from the mass of a precipitate.
 *
 * @param assay - The sample, the precipitate, what it is and what is sought.
 * @returns Mass and mass fraction of the substance sought.
 * @throws {@link ProductError} `product/not-positive`; the codes of {@link gravimetricFactor}.
 * @source OpenStax, Chemistry 2e, section 4.5, Gravimetric Analysis.
 *
 * @example
 * ```ts
 * import { gravimetricAssay } from 'saltwright/product'
 *
 * const sulfate = { sample: '0.4550 g', precipitate: '0.6168 g', weighed: 'BaSO4', sought: 'MgSO4' } as const
 * gravimetricAssay(sulfate).massFraction.toString() // => '69.91 %'
 * ```
 */
export function gravimetricAssay(assay: GravimetricAssay): AssayResult {
  const factor = gravimetricFactor(assay)
  const of = formulaOf(assay.sought).text
  const precipitate = positive(assay.precipitate, 'mass', { label: 'mass of precipitate', symbol: 'm', role: 'net' })
  return assayResult(precipitate.times(factor), assay.sample, of)
}

/** A mass found in a sample, and its mass fraction. */
export function assayResult(found: Quantity<'mass'>, sample: Given<'mass'>, of: string): AssayResult {
  const taken = positive(sample, 'mass', { label: 'mass of sample', symbol: 'm', role: 'net' })
  const mass = found.named({ label: `mass of ${of}`, symbol: 'm', of, role: 'mass' })
  return {
    mass,
    massFraction: mass
      .dividedBy(taken)
      .to('%')
      .named({ label: `mass fraction of ${of}`, symbol: 'w', of, role: 'purity' }),
  }
}
