import { type Formula, type Part, parseFormula } from '../formula/index.js'
import { type Fraction, fractionOf, multiplyFractions } from '../fraction.js'
import type { Term } from './equation.js'
import { EquationError } from './equation-error.js'
import { withCoefficient } from './place-solution.js'
import { type IonCount, ionsOfSalt, isWeakHydroxide } from './salt-ions.js'
import { formulaKey, speciesText } from './species.js'
import { strongAcids, weakSalts } from './strong-electrolytes.js'

/** Elements that are no metals; a dissolved substance of these alone that is no strong acid or salt is a molecule. */
const nonMetals = 'H D T He B C N O F Ne Si P S Cl Ar Ge As Se Br Kr Sb Te I Xe At Rn'.split(' ')

/** How many hydrons of dissolved sulfuric acid are taken as free. */
export type SulfuricAcid = 'both' | 'first'

/** The ions a term gives in solution, and the water of a hydrate; nothing where it stays as it is. */
export function dissociate(term: Term, sulfuricAcid: SulfuricAcid): readonly Term[] | undefined {
  if (term.formula.charge !== 0) return undefined
  const key = formulaKey(term.formula)
  if (weakSalts.some(({ formula }) => formula === key)) return undefined
  const ions = ionsOfAcid(key, sulfuricAcid)
  return ions === undefined ? saltTerms(term) : ions.map((ion) => ionTerm(term, ion, fractionOf(1)))
}

function ionsOfAcid(key: string, sulfuricAcid: SulfuricAcid): readonly IonCount[] | undefined {
  const acid = strongAcids.find(({ formula }) => formula === key)
  if (acid === undefined) return undefined
  if (key === 'H2SO4' && sulfuricAcid === 'first')
    return [
      { ion: 'H^+', count: 1 },
      { ion: 'HSO4^-', count: 1 },
    ]
  return [
    { ion: 'H^+', count: acid.hydrons },
    { ion: acid.anion, count: 1 },
  ]
}

function saltTerms(term: Term): readonly Term[] | undefined {
  const [salt, ...others] = term.formula.parts as [Part, ...Part[]]
  const text = formulaKey(parseFormula(salt.text))
  const ions = ionsOfSalt(text)
  if (ions === undefined || !others.every(isWater)) return keepWhole(term, text)
  const waters = others.map((part) => waterTerm(term, part))
  return [...ions.map((ion) => ionTerm(term, ion, salt.times as Fraction)), ...waters]
}

/** A molecule, or a hydroxide of a weak base, stays; of a metal compound outside the tables that is not known. */
function keepWhole(term: Term, salt: string): undefined {
  if (isWeakHydroxide(salt) || !hasMetal(term.formula)) return undefined
  const found = speciesText(term)
  throw new EquationError({
    code: 'equation/unknown-electrolyte',
    message: `Whether ${found} dissociates, and into what, is not in the table of strong electrolytes.`,
    position: term.position,
    found,
    expected: 'a salt, acid or base of the table, or its ions',
    hint: 'Write the ions that are in solution.',
  })
}

function hasMetal({ counts }: Formula): boolean {
  return [...counts.keys()].some((symbol) => !nonMetals.includes(symbol))
}

function isWater({ counts, charge }: Part): boolean {
  const [hydrogen, oxygen] = [counts.get('H'), counts.get('O')]
  return charge === 0 && counts.size === 2 && hydrogen?.numerator === 2n && oxygen?.numerator === 1n
}

function ionTerm(term: Term, { ion, count }: IonCount, times: Fraction): Term {
  const coefficient = multiplyFractions(multiplyFractions(term.coefficient, times), fractionOf(count))
  return withCoefficient({ ...term, formula: parseFormula(ion), state: 'aq' }, coefficient)
}

function waterTerm(term: Term, part: Part): Term {
  const coefficient = multiplyFractions(term.coefficient, part.times as Fraction)
  return withCoefficient({ ...term, formula: parseFormula('H2O'), state: 'l' }, coefficient)
}
