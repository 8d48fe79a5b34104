import { showFound } from '../errors.js'
import { EquationError } from './equation-error.js'

/** Refuses options that are no object. */
export function checkOptions(options: unknown): void {
  if (typeof options === 'object' && options !== null) return
  throw new EquationError({
    code: 'equation/unknown-option',
    message: `Options were expected, not ${showFound(options)}.`,
    found: showFound(options),
    expected: 'an object with options',
  })
}

/** Refuses an option that is none of the choices; without one the default applies. */
export function checkChoice(name: string, value: unknown, choices: readonly string[]): void {
  if (value === undefined || choices.includes(value as string)) return
  throw new EquationError({
    code: 'equation/unknown-option',
    message: `The option ${name} is ${showFound(value)}.`,
    path: [name],
    found: showFound(value),
    expected: choices.map((choice) => `"${choice}"`).join(' or '),
  })
}
