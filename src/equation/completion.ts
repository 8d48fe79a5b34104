import type { Equation } from './equation.js'
import { type HelperText, helperTerm } from './helper-species.js'
import { makeEquation } from './make-equation.js'
import { withCoefficients } from './place-solution.js'
import { independentSolutions } from './solutions.js'
import { allTerms } from './species.js'

/** Helpers of a half-reaction, least first: hydrons and water only where they are needed. */
const halfHelpers: readonly (readonly HelperText[])[] = [['e^-'], ['H^+', 'e^-'], ['H2O', 'e^-'], ['H2O', 'H^+', 'e^-']]

/** Helpers of a whole reaction. */
const wholeHelpers: readonly (readonly HelperText[])[] = [[], ['H^+'], ['H2O'], ['H2O', 'H^+']]

/** A half-reaction balanced with electrons, and with hydrons and water where it needs them; nothing where none is unique. */
export function completeHalf(own: Equation, given: Equation): Equation | undefined {
  return firstOf(halfHelpers.map((helpers) => () => completed(own, helpers, given)))
}

/** A reaction balanced with hydrons and water where it needs them; nothing where none is unique. */
export function completeWhole(own: Equation, given: Equation): Equation | undefined {
  return firstOf(wholeHelpers.map((helpers) => () => completed(own, helpers, given)))
}

/** The species of an equation with every helper on the right: what to balance where no completion is unique. */
export function withAllHelpers(own: Equation, isHalf: boolean, given: Equation): Equation {
  return widened(own, isHalf ? ['H2O', 'H^+', 'e^-'] : ['H2O', 'H^+'], given)
}

function firstOf<T>(tries: readonly (() => T | undefined)[]): T | undefined {
  for (const attempt of tries) {
    const result = attempt()
    if (result !== undefined) return result
  }
  return undefined
}

/** The only balanced equation with some helpers in which every species that was given keeps its side, and electrons flow. */
function completed(own: Equation, helpers: readonly HelperText[], given: Equation): Equation | undefined {
  const all = widened(own, helpers, given)
  const formulas = allTerms(all).map(({ formula }) => formula)
  const [values, another] = independentSolutions(formulas, all.left.length)
  if (values === undefined || another !== undefined) return undefined
  const upright = (values[0] as bigint) < 0n ? values.map((value) => -value) : values
  const electrons = helpers.includes('e^-') ? upright.at(-1) : 1n
  const count = formulas.length - helpers.length
  return electrons !== 0n && upright.slice(0, count).every((value) => value > 0n)
    ? withCoefficients(all, upright)
    : undefined
}

function widened({ left, right, arrow }: Equation, helpers: readonly HelperText[], given: Equation): Equation {
  return makeEquation({ left, right: [...right, ...helpers.map((text) => helperTerm(text, given))], arrow })
}
