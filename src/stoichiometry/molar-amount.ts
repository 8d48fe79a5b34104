import { type FormulaLike, formulaOf, type MolarMassOptions, molarMass } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import { anObject, notNegative, partOfWhole } from './bounds.js'
import { chosen, type Given, measured, onLabel } from './given.js'
import { amountNaming, massNaming, namedAmount } from './naming.js'

/** How a mass becomes an amount, or an amount a mass. */
export interface MolarOptions extends MolarMassOptions {
  /** Mass fraction of the substance in what is weighed, as on the label: `"98.5 %"`. Pure unless said; text is measured, `"90 %"` to 1 %. */
  readonly assay?: Given<'ratio'> | undefined
}

/**
 * The amount of substance in a mass: n = m w / M.
 *
 * @param mass - What was weighed; text is measured.
 * @param formula - What it is, as it was weighed: the hydrate, if a hydrate was on the balance.
 * @param options - Atomic weights, the number for `·xH2O`, and the assay of an impure solid.
 * @returns The amount in mol.
 * @throws {@link StoichiometryError} `stoichiometry/negative`, `stoichiometry/not-a-fraction`, `stoichiometry/not-an-object`; {@link FormulaError} and
 *   {@link QuantityError} for a formula or a mass that cannot be read.
 * @source IUPAC, Quantities, Units and Symbols in Physical Chemistry (Green Book), 3rd edition, section 2.10.
 *
 * @example
 * ```ts
 * import { amountFromMass } from 'saltwright/stoichiometry'
 *
 * amountFromMass('2.00 g', 'CuSO4·5H2O').toString() // => '0.00801 mol'
 * amountFromMass('5.00 g', 'KOH', { assay: '85.0 %' }).toString() // => '0.0758 mol'
 * ```
 */
export function amountFromMass(
  mass: Given<'mass'>,
  formula: FormulaLike,
  options: MolarOptions = {},
): Quantity<'amount'> {
  const { assay } = anObject(options, optionsExpected)
  const of = formulaOf(formula).text
  const weighed = notNegative(measured(mass, 'mass', massNaming(of)))
  const pure = assay === undefined ? weighed : weighed.times(assayOf(assay, of))
  return namedAmount(pure.dividedBy(molarMass(formula, options)), of)
}

/**
 * The mass of an amount of substance: m = n M / w.
 *
 * @param amount - How much is wanted; text is exact.
 * @param formula - What is weighed: the hydrate, if a hydrate goes on the balance.
 * @param options - Atomic weights, the number for `·xH2O`, and the assay of an impure solid.
 * @returns The mass in g.
 * @throws {@link StoichiometryError} `stoichiometry/negative`, `stoichiometry/not-a-fraction`, `stoichiometry/not-an-object`; {@link FormulaError} and
 *   {@link QuantityError} for a formula or an amount that cannot be read.
 * @source IUPAC, Quantities, Units and Symbols in Physical Chemistry (Green Book), 3rd edition, section 2.10.
 *
 * @example
 * ```ts
 * import { roundTo } from 'saltwright/quantity'
 * import { massFromAmount } from 'saltwright/stoichiometry'
 *
 * massFromAmount('0.0400 mol', 'ZnSO4·7H2O').toString() // => '11.502 g'
 * roundTo(massFromAmount('0.050 mol', 'CuO'), { place: '0.001' }).toString() // => '3.977 g'
 * ```
 */
export function massFromAmount(
  amount: Given<'amount'>,
  formula: FormulaLike,
  options: MolarOptions = {},
): Quantity<'mass'> {
  const { assay } = anObject(options, optionsExpected)
  const of = formulaOf(formula).text
  const wanted = notNegative(chosen(amount, 'amount', amountNaming(of)))
  const pure = wanted.times(molarMass(formula, options)).named(massNaming(of))
  if (assay === undefined) return pure
  return pure.dividedBy(assayOf(assay, of)).named(massNaming(of, `mass of ${of} as it is, with its impurities`))
}

const optionsExpected = 'options: { weights, assay }'

function assayOf(assay: Given<'ratio'>, of: string): Quantity<'ratio'> {
  return partOfWhole(onLabel(assay, { label: `assay of ${of}`, symbol: 'w', of, role: 'assay' }))
}
