import type { Equation, Term } from './equation.js'
import { makeEquation } from './make-equation.js'
import { allTerms } from './species.js'

/** Elements that water, hydrons and hydroxide bring along; they do not tell one half-reaction from the other. */
const ofWater = ['H', 'O', 'D', 'T']

/**
 * The two half-reactions of a redox reaction, without water, hydrons and electrons: the species that share an element belong
 * together. Where all share one, a single species that turns into two, or two that turn into one, takes part in both.
 */
export function splitHalves(own: Equation): readonly Equation[] | undefined {
  const groups = elementGroups(allTerms(own))
  if (groups.length === 2) return groups.map((group) => only(own, (term) => isIn(term, group)))
  return groups.length === 1 ? sharedHalves(own) : undefined
}

/** Sets of elements such that no species has elements of two of them; species of hydrogen and oxygen alone are one group. */
function elementGroups(terms: readonly Term[]): readonly ReadonlySet<string>[] {
  return terms.reduce<readonly ReadonlySet<string>[]>((groups, term) => {
    const elements = keyElements(term)
    const touched = groups.filter((group) => elements.some((element) => group.has(element)))
    const merged = new Set([...elements, ...touched.flatMap((group) => [...group])])
    return [...groups.filter((group) => !touched.includes(group)), merged]
  }, [])
}

function keyElements({ formula }: Term): readonly string[] {
  const elements = [...formula.counts.keys()].filter((symbol) => !ofWater.includes(symbol))
  return elements.length > 0 ? elements : ['O']
}

function isIn(term: Term, group: ReadonlySet<string>): boolean {
  return keyElements(term).some((element) => group.has(element))
}

function only({ left, right, arrow }: Equation, belongs: (term: Term) => boolean): Equation {
  return makeEquation({ left: left.filter(belongs), right: right.filter(belongs), arrow })
}

/** `Cl2 -> Cl^-` and `Cl2 -> ClO3^-`; `IO3^- -> I2` and `I^- -> I2`. */
function sharedHalves(own: Equation): readonly Equation[] | undefined {
  const { left, right, arrow } = own
  if (left.length === 1 && right.length === 2)
    return right.map((term) => makeEquation({ left: [...left], right: [term], arrow }))
  if (left.length === 2 && right.length === 1)
    return left.map((term) => makeEquation({ left: [term], right: [...right], arrow }))
  return undefined
}
