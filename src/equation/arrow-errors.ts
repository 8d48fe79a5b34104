import type { Span } from '../errors.js'
import { isSpace } from './characters.js'
import { isConditionText } from './conditions.js'
import type { Arrow } from './equation.js'
import { EquationError } from './equation-error.js'

/** An arrow found in a text. */
export interface FoundArrow extends Span {
  readonly kind: Arrow
  /** Whether two or more dashes follow a formula without a space, so that the first may have been meant as a charge. */
  readonly attached: boolean
}

/** No arrow anywhere. */
export function missingArrow(text: string): EquationError {
  return new EquationError({
    code: 'equation/missing-arrow',
    message: 'There is no arrow between the two sides.',
    position: { start: 0, end: text.length },
    expected: 'an arrow such as ->, =, <=> or →',
    hint: arrowHint(text),
  })
}

function arrowHint(text: string): string | undefined {
  if (text.includes('\\')) return 'Write -> instead of a typesetting command.'
  if (text.includes('&')) return 'Write -> instead of markup.'
  const words = [' yields ', ' gives ', ' to form ', ' to give ', ' produces '].filter((word) => text.includes(word))
  return words[0] === undefined ? undefined : `Write -> instead of "${words[0].trim()}".`
}

/** Two arrows, or one with a condition inside. */
export function secondArrow(text: string, first: FoundArrow, second: FoundArrow): EquationError {
  const between = text.slice(first.end, second.start)
  if (isConditionText(between)) return conditionInArrow(text, first.start, second.end)
  return new EquationError({
    code: 'equation/several-arrows',
    message: `A second arrow stands at character ${second.start + 1}; an equation has one.`,
    position: { start: second.start, end: second.end },
    found: text.slice(second.start, second.end),
    expected: 'one arrow',
    hint: severalHint(text, first, second),
  })
}

function severalHint(text: string, first: FoundArrow, second: FoundArrow): string {
  const attached = [first, second].some(
    (arrow) => arrow.kind === 'stoichiometric' && !isSpace(text.charCodeAt(arrow.end)),
  )
  if (attached) return 'Write a double bond without its sign: C2H4 for CH2=CH2.'
  return 'Write each stage as an equation of its own.'
}

function conditionInArrow(text: string, start: number, end: number): EquationError {
  return new EquationError({
    code: 'equation/condition',
    message: 'Conditions and catalysts have no place in the arrow.',
    position: { start, end },
    found: text.slice(start, end),
    expected: 'a bare arrow',
    hint: 'Write the arrow alone and keep the conditions in the procedure.',
  })
}

/** A sign that is no arrow. */
export function unknownArrow(
  text: string,
  start: number,
  end: number,
  hint = 'Write -> between the sides.',
): EquationError {
  const found = text.slice(start, end)
  return new EquationError({
    code: 'equation/unknown-arrow',
    message: `"${found}" at character ${start + 1} is not an arrow.`,
    position: { start, end },
    found,
    expected: 'an arrow such as ->, =, <=> or →',
    hint,
  })
}

/** An arrow from the right to the left. */
export function reversedArrow(text: string, start: number, end: number): EquationError {
  const found = text.slice(start, end)
  return new EquationError({
    code: 'equation/unknown-arrow',
    message: `"${found}" at character ${start + 1} points to the left.`,
    position: { start, end },
    found,
    expected: 'an arrow to the right, such as ->',
    hint: 'Write the reactants on the left and the products on the right of ->.',
  })
}
