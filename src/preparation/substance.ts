import { type Formula, formatFormula, parseFormula } from '../formula/index.js'
import { formatFraction } from '../fraction.js'

/** Names a substance whatever way it is written: by its atoms, its charge and its water of crystallisation. */
export type SubstanceKey = string

/** The key of a substance: `(NH4)2Fe(SO4)2·6H2O` and `FeSO4·(NH4)2SO4·6H2O` have the same. */
export function substanceKey(formula: Formula): SubstanceKey {
  const atoms = [...formula.counts].map(([symbol, count]) => `${symbol}${formatFraction(count)}`).sort()
  return `${atoms.join(' ')} ${formula.charge} ${formula.hydration ?? 'x'}`
}

/** The key of a substance given as text. */
export function keyOf(text: string): SubstanceKey {
  return substanceKey(parseFormula(text))
}

/** A formula as it is written everywhere in plans and sheets. */
export function plainFormula(formula: Formula): string {
  return formatFormula(formula, 'plain')
}
