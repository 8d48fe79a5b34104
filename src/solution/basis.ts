import type { AtomicWeights } from '../element/index.js'
import { type Formula, type FormulaLike, formulaOf, molarMass } from '../formula/index.js'
import { compareFractions, divideFractions, type Fraction, fraction } from '../fraction.js'
import type { Quantity } from '../quantity/index.js'
import { exactFraction } from '../stoichiometry/exact-fraction.js'
import { type Given, onLabel } from '../stoichiometry/given.js'
import { isOfWater } from '../stoichiometry/of-water.js'
import { speciesKey } from '../stoichiometry/species.js'
import { aFraction, anObject } from './bounds.js'
import { massFractionNaming } from './naming.js'
import { SolutionError } from './solution-error.js'

/** A mass fraction that is stated as one substance and wanted as another. */
export interface BasisChange {
  /** The mass fraction as stated; text is measured, `"90 %"` to 1 %. */
  readonly massFraction: Given<'ratio'>
  /** What it is stated as: `NH4OH`. */
  readonly from: FormulaLike
  /** What it is wanted as: `NH3`. */
  readonly to: FormulaLike
  /** Which atomic weights: `"abridged"` unless said. */
  readonly weights?: AtomicWeights | undefined
}

/**
 * The same strength on another basis: ammonia as NH3 instead of NH4OH, phosphoric acid as H3PO4 instead of P2O5, a salt without
 * its water of crystallisation.
 *
 * @param change - The mass fraction, what it is stated as and what it is wanted as.
 * @returns The mass fraction on the other basis, in the unit of the stated one.
 * @throws {@link SolutionError} `solution/unrelated-bases` where the two have other elements in other ratios, hydrogen and oxygen
 *   aside; `solution/not-a-fraction`, `solution/not-an-object`; {@link FormulaError} and {@link QuantityError} for what cannot be
 *   read.
 * @source Common practice, no source: a mole of the one holds as many atoms of the common elements as so many moles of the other.
 *
 * @example
 * ```ts
 * import { convertBasis } from 'saltwright/solution'
 *
 * convertBasis({ massFraction: '56.6 %', from: 'NH4OH', to: 'NH3' }).toString() // => '27.5 %'
 * convertBasis({ massFraction: '85.0 %', from: 'H3PO4', to: 'P2O5' }).toString() // => '61.6 %'
 * convertBasis({ massFraction: '85.0 %', from: 'H3PO4', to: 'HCl' }) // throws solution/unrelated-bases
 * ```
 */
export function convertBasis(change: BasisChange): Quantity<'ratio'> {
  const { massFraction, from, to, weights } = anObject(change, '{ massFraction, from, to }')
  const stated = statedFraction(massFraction, from)
  const moles = molesPerMole(to, from)
  const massRatio = molarMass(to, { weights }).times(moles).dividedBy(molarMass(from, { weights }))
  return stated.times(massRatio).named(massFractionNaming(formulaOf(to).text))
}

/** A mass fraction as it was stated. */
export function statedFraction(massFraction: Given<'ratio'>, as: FormulaLike): Quantity<'ratio'> {
  return aFraction(onLabel(massFraction, massFractionNaming(formulaOf(as).text)))
}

/** Moles of one substance in a mole of another that holds the same elements, hydrogen and oxygen aside; exact. */
export function molesPerMole(of: FormulaLike, per: FormulaLike): Quantity<'ratio'> {
  const [one, other] = [formulaOf(of), formulaOf(per)]
  return exactFraction(ratioOfMoles(one, other), {
    label: `moles of ${one.text} per mole of ${other.text}`,
    symbol: 'r',
    of: one.text,
    role: 'mole ratio',
  })
}

function ratioOfMoles(of: Formula, per: Formula): Fraction {
  if (speciesKey(of) === speciesKey(per)) return fraction(1n)
  const [first, ...others] = keyElements(of, per).map((symbol) => ratioOfAtoms(symbol, of, per))
  const related = first !== undefined && others.every((other) => compareFractions(other, first) === 0)
  if (!related || first.numerator === 0n) throw unrelated(of, per)
  return first
}

/** The elements by which two formulas are compared: all but those of water, which come and go with it. */
function keyElements(of: Formula, per: Formula): readonly string[] {
  const symbols = new Set([...of.counts.keys(), ...per.counts.keys()])
  return [...symbols].filter((symbol) => !isOfWater(symbol))
}

/** How many moles of one bring as many atoms as a mole of the other; 0 where one has none of them. */
function ratioOfAtoms(symbol: string, of: Formula, per: Formula): Fraction {
  const [inOne, inOther] = [of.counts.get(symbol), per.counts.get(symbol)]
  return inOne === undefined || inOther === undefined ? fraction(0n) : divideFractions(inOther, inOne)
}

function unrelated(of: Formula, per: Formula): SolutionError {
  return new SolutionError({
    code: 'solution/unrelated-bases',
    message: `A strength stated as ${per.text} says nothing about ${of.text}.`,
    found: `${per.text} and ${of.text}`,
    expected: 'two formulas with the same elements in the same ratio, hydrogen and oxygen aside',
  })
}
