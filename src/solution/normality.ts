import { isQuantity, type Quantity } from '../quantity/index.js'
import { type Choice, chosen, type Given, type TextOf } from '../stoichiometry/given.js'
import { aboveZero, anObject } from './bounds.js'
import { concentrationNaming } from './naming.js'
import { SolutionError } from './solution-error.js'

/** A normality: as old manuals write it (`"6 N"`), or as a concentration of equivalents in mol/L. Text is exact. */
export type Normality = Given<'amountConcentration'> | `${number} N` | `${number} eq/L`

/** What one mole counts as; without it a normality says nothing. */
export interface EquivalentsPerMole {
  /**
   * Equivalents per mole in the reaction at hand, a whole number: 2 for sulfuric acid that gives both its protons. The inverse
   * of the equivalence factor (1/2). Text and numbers are exact.
   */
  readonly equivalentsPerMole: Choice
  /** Of what; for the labels. */
  readonly substance?: string | undefined
}

/**
 * The amount concentration behind a normality: normality divided by the equivalents per mole.
 *
 * @param normality - As in `6 N`; text is exact.
 * @param per - Equivalents per mole.
 * @returns The amount concentration in mol/L.
 * @throws {@link SolutionError} `solution/bad-equivalents`, `solution/not-above-zero`, `solution/not-an-object`;
 *   {@link QuantityError} for what cannot be read.
 * @source Equivalence factor and equivalent entity: IUPAC, Compendium of Chemical Terminology (Gold Book), equivalent entity.
 *
 * @example
 * ```ts
 * import { fromNormality } from 'saltwright/solution'
 *
 * fromNormality('6 N', { equivalentsPerMole: 2 }).toString() // => '3 mol/L'
 * fromNormality('6 N', { equivalentsPerMole: 0 }) // throws solution/bad-equivalents
 * ```
 */
export function fromNormality(normality: Normality, per: EquivalentsPerMole): Quantity<'amountConcentration'> {
  const z = equivalentsOf(per)
  const stated = aboveZero(chosen(plainText(normality), 'amountConcentration', { label: 'normality', symbol: 'N' }))
  return stated.dividedBy(z).named(concentrationNaming(per.substance))
}

/**
 * The normality of a solution: amount concentration times the equivalents per mole.
 *
 * @param concentration - The amount concentration; text is exact.
 * @param per - Equivalents per mole.
 * @returns The concentration of equivalents in mol/L: 3 mol/L sulfuric acid with two equivalents per mole has 6 mol/L, "6 N".
 * @throws {@link SolutionError} `solution/bad-equivalents`, `solution/not-above-zero`, `solution/not-an-object`;
 *   {@link QuantityError} for what cannot be read.
 * @source Equivalence factor and equivalent entity: IUPAC, Compendium of Chemical Terminology (Gold Book), equivalent entity.
 *
 * @example
 * ```ts
 * import { toNormality } from 'saltwright/solution'
 *
 * toNormality('3 mol/L', { equivalentsPerMole: 2 }).toString() // => '6 mol/L'
 * ```
 */
export function toNormality(
  concentration: Given<'amountConcentration'>,
  per: EquivalentsPerMole,
): Quantity<'amountConcentration'> {
  const z = equivalentsOf(per)
  const stated = aboveZero(chosen(concentration, 'amountConcentration', concentrationNaming(per.substance)))
  return stated.times(z).named({ label: 'normality', symbol: 'N', role: 'concentration' })
}

function equivalentsOf(per: EquivalentsPerMole): Quantity<'ratio'> {
  const { equivalentsPerMole } = anObject(per, '{ equivalentsPerMole: 2 }')
  const names = { label: 'equivalents per mole', symbol: 'z', role: 'equivalence factor' } as const
  const z = chosen(equivalentsPerMole, 'ratio', names).to('1')
  if (z.value.isInteger() && z.value.gt(0)) return z
  throw new SolutionError({
    code: 'solution/bad-equivalents',
    message: `${z.toString()} is no number of equivalents per mole.`,
    found: z.toString(),
    expected: 'a whole number above zero: 2 for both protons of sulfuric acid, whose equivalence factor is 1/2',
  })
}

/** `6 N` and `6 eq/L` count moles of equivalents per litre. */
function plainText(normality: Normality): Given<'amountConcentration'> {
  if (isQuantity(normality) || typeof normality !== 'string') return normality as Given<'amountConcentration'>
  const text = normality.trimEnd()
  const sign = [' N', ' eq/L'].find((ending) => text.endsWith(ending))
  if (sign === undefined) return text as TextOf<'amountConcentration'>
  return `${text.slice(0, -sign.length)} mol/L` as TextOf<'amountConcentration'>
}
