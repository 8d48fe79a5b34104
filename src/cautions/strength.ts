import { type Formula, formulaOf, molarMass } from '../formula/index.js'
import { exact, type Quantity } from '../quantity/index.js'
import { chosen } from '../stoichiometry/given.js'
import { speciesKey } from '../stoichiometry/index.js'
import type { SubstanceFact } from './facts.js'

/**
 * The mass fraction of a solution in per cent: as given, or made from the concentration with the density. Without a density the
 * solution is taken as no denser than water, or than concentrated ammonia, which errs to the stronger side.
 */
function strengthOf(fact: SubstanceFact): Quantity<'ratio'> | undefined {
  const naming = { label: 'mass fraction of the solution', symbol: 'w', role: 'mass fraction' } as const
  if (fact.massFraction !== undefined) return chosen(fact.massFraction, 'ratio', naming).to('%')
  if (fact.concentration === undefined) return undefined
  const concentration = chosen(fact.concentration, 'amountConcentration', { label: 'concentration', symbol: 'c' })
  return concentration.times(molarMass(fact.formula)).dividedBy(densityOf(fact)).to('%').named(naming)
}

/** Concentrated ammonia is the one lighter than water: 0.88 g/mL, common practice, no source. */
function densityOf({ density, formula }: SubstanceFact): Quantity<'density'> {
  const naming = { label: 'density of the solution', symbol: 'ρ', role: 'density' } as const
  if (density !== undefined) return chosen(density, 'density', naming)
  return exact(speciesKey(formula) === speciesKey('NH3') ? '0.88 g/mL' : '1.00 g/mL', naming)
}

/** A substance of which the formula has been read and the strength worked out, once for all that is asked of it. */
export interface SubstanceAtHand extends SubstanceFact {
  readonly formula: Formula
  readonly strength: Quantity<'ratio'> | undefined
}

/** Reads the formula of a substance and works out its strength. */
export function atHand(given: SubstanceFact): SubstanceAtHand {
  const fact = { ...given, formula: formulaOf(given.formula) }
  return { ...fact, strength: strengthOf(fact) }
}
