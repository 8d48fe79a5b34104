import { parseFormula } from '../formula/index.js'
import { combined } from './combine.js'
import type { Equation, Term } from './equation.js'
import { EquationError } from './equation-error.js'
import { type HelperText, helperOf, helperTerm } from './helper-species.js'
import { makeEquation } from './make-equation.js'
import { checkChoice, checkOptions } from './options.js'
import { allTerms, formulaKey } from './species.js'

/** Whether a reaction runs in acidic or in basic solution. */
export type Medium = 'acid' | 'base'

/** What is asked of a completion. */
export interface MediumOptions {
  /** The solution: hydrons (`'acid'`) or hydroxide (`'base'`) are added with the water. */
  readonly medium: Medium
}

/** Checks the medium, and that the equation does not speak of the other one. */
export function checkMedium(equation: Equation, options: MediumOptions): void {
  checkOptions(options)
  const { medium } = options
  checkChoice('medium', medium ?? null, ['acid', 'base'])
  const strange = allTerms(equation).find(
    ({ formula }) => belongsTo(formulaKey(formula)) === (medium === 'acid' ? 'base' : 'acid'),
  )
  if (strange === undefined) return
  const found = formulaKey(strange.formula)
  throw new EquationError({
    code: 'equation/medium-contradicted',
    message: `${found} stands in the equation, which is to be completed in ${medium === 'acid' ? 'an acid' : 'a base'}.`,
    position: strange.position,
    path: ['medium'],
    found,
    expected: 'the medium that the equation shows',
    hint: `medium: '${medium === 'acid' ? 'base' : 'acid'}'`,
  })
}

function belongsTo(key: string): Medium | undefined {
  if (key === 'OH^-') return 'base'
  return key === 'H^+' || key === oxonium ? 'acid' : undefined
}

const oxonium = 'H3O^+'

/** Whether a term is water, the hydron or oxonium, hydroxide or the electron: the completion finds these by itself. */
export function isHelper({ formula }: Term): boolean {
  return helperOf(formula) !== undefined || formulaKey(formula) === oxonium
}

/**
 * An equation that is balanced with hydrons, written for its medium: in a base with hydroxide, in an acid with oxonium where
 * the equation that was given has it.
 */
export function inMedium(balanced: Equation, given: Equation, medium: Medium): Equation {
  return inWrittenOrder(withoutHydrons(balanced, given, medium), given)
}

function withoutHydrons(balanced: Equation, given: Equation, medium: Medium): Equation {
  if (medium === 'base') return exchanged(balanced, dissociation(given, 'H2O', ['H^+', 'OH^-']))
  const hasOxonium = allTerms(given).some(({ formula }) => formulaKey(formula) === oxonium)
  return hasOxonium ? exchanged(balanced, dissociation(given, oxonium, ['H^+', 'H2O'])) : balanced
}

/** The equation plus as many times the dissociation of water or oxonium as makes the hydrons cancel. */
function exchanged(balanced: Equation, relation: Equation): Equation {
  const onLeft = hydrons(balanced.left)
  const times = onLeft === 0n ? -hydrons(balanced.right) : onLeft
  return combined(
    [balanced, relation],
    [
      { numerator: 1n, denominator: 1n },
      { numerator: times, denominator: 1n },
    ],
  )
}

function hydrons(terms: readonly Term[]): bigint {
  return terms.find(({ formula }) => helperOf(formula) === 'H^+')?.coefficient.numerator ?? 0n
}

function dissociation(given: Equation, from: HelperText | typeof oxonium, to: readonly HelperText[]): Equation {
  const left =
    from === oxonium ? { ...helperTerm('H^+', given), formula: parseFormula(oxonium) } : helperTerm(from, given)
  return makeEquation({ left: [left], right: to.map((text) => helperTerm(text, given)), arrow: given.arrow })
}

/** Where species that were not written come: water, then hydrons, oxonium or hydroxide, then electrons. */
const lastOnes = ['H2O', 'H^+', oxonium, 'OH^-', 'e^-']

/** The species in the order in which they were written; those that were not come last. */
function inWrittenOrder({ left, right, arrow }: Equation, given: Equation): Equation {
  const written = [...allTerms(given).map(({ formula }) => formulaKey(formula)), ...lastOnes]
  const place = ({ formula }: Term) => written.indexOf(formulaKey(formula))
  const sorted = (terms: readonly Term[]) => [...terms].sort((a, b) => place(a) - place(b))
  return makeEquation({ left: sorted(left), right: sorted(right), arrow })
}
