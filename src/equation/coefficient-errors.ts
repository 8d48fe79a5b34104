import { skipDigits } from './characters.js'
import { EquationError } from './equation-error.js'

/** The most digits a coefficient may have. */
export const maxDigits = 100

/** A number without a formula: `2 + H2O`. */
export function missingFormula(text: string, start: number, end: number): EquationError {
  return new EquationError({
    code: 'equation/missing-formula',
    message: `The number "${text.slice(start, end)}" at character ${start + 1} has no formula behind it.`,
    position: { start, end },
    found: text.slice(start, end),
    expected: 'a formula after the coefficient',
  })
}

/** A number that is none: `1/`, `1/0`. */
export function unreadable(text: string, start: number, end: number, expected: string, hint?: string): EquationError {
  return new EquationError({
    code: 'equation/coefficient-unreadable',
    message: `The coefficient at character ${start + 1} cannot be read.`,
    position: { start, end },
    found: text.slice(start, end),
    expected,
    hint,
  })
}

/** `n CO2`, `nCO2`: a letter in place of a number. */
export function letter(text: string, start: number): EquationError {
  return unknownNumber(text, start, start + 1, 'letter')
}

/** `? H2`, `__ H2`: a place to fill in. */
export function blank(text: string, start: number, end: number): EquationError {
  let next = start
  while (next < end && text.charAt(next) === text.charAt(start)) next += 1
  return unknownNumber(text, start, next, 'blank')
}

function unknownNumber(text: string, start: number, end: number, what: string): EquationError {
  return new EquationError({
    code: 'equation/coefficient-unreadable',
    message: `The ${what} at character ${start + 1} stands for an unknown number.`,
    position: { start, end },
    found: text.slice(start, end),
    expected: 'a number before the formula',
    hint: 'Write the numbers, or leave them out and balance the equation.',
  })
}

/** Two numbers before one formula: `2 3 H2O`. */
export function twoNumbers(text: string, start: number, end: number): EquationError {
  return unreadable(text, start, end, 'one number before the formula', 'Write the product of the two numbers.')
}

/** A comma in the number: `0,5 O2`. */
export function decimalComma(text: string, start: number, comma: number, end: number): EquationError {
  const last = skipDigits(text, comma + 1, end)
  const found = text.slice(start, last)
  return new EquationError({
    code: 'equation/decimal-comma',
    message: `"${found}" at character ${start + 1} has a comma in the number.`,
    position: { start, end: last },
    found,
    expected: 'a decimal point',
    hint: found.replace(',', '.'),
  })
}

/** A number of absurd length. */
export function outOfRange(text: string, start: number, end: number): EquationError {
  return new EquationError({
    code: 'equation/coefficient-out-of-range',
    message: `The coefficient at character ${start + 1} has more than ${maxDigits} digits.`,
    position: { start, end },
    found: `${text.slice(start, start + 20)}...`,
    expected: `a coefficient of at most ${maxDigits} digits`,
  })
}

/** A zero before a formula. */
export function zero(text: string, start: number, end: number): EquationError {
  return new EquationError({
    code: 'equation/coefficient-out-of-range',
    message: `The coefficient at character ${start + 1} is zero.`,
    position: { start, end },
    found: text.slice(start, end),
    expected: 'a coefficient above zero',
    hint: 'Leave the substance out.',
  })
}

/** A minus before a formula. */
export function negative(text: string, start: number, end: number): EquationError {
  return new EquationError({
    code: 'equation/coefficient-out-of-range',
    message: `A minus stands before the term at character ${start + 1}.`,
    position: { start, end },
    found: text.slice(start, end),
    expected: 'a coefficient above zero',
    hint: 'Write the substance on the other side of the arrow.',
  })
}
