import type { Equation } from './equation.js'
import { EquationError } from './equation-error.js'
import { allTerms, speciesText } from './species.js'

/** Refuses a hydrate with an unknown number of water, `·xH2O`: its atoms cannot be counted. */
export function checkComposition(equation: Equation): void {
  const unknown = allTerms(equation).find(({ formula }) => hasDot(formula.text) && formula.hydration === null)
  if (unknown === undefined) return
  const found = speciesText(unknown)
  throw new EquationError({
    code: 'equation/unknown-count',
    message: `The atoms of ${found} cannot be counted: the number of water is unknown.`,
    position: unknown.position,
    found,
    expected: 'a hydrate with a known number of water',
  })
}

/** Whether a formula may have several parts: the cheap half of the question, as most have one. */
function hasDot(text: string): boolean {
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at)
    if (code > 0x7f || code === 0x2e || code === 0x2a) return true
  }
  return false
}
