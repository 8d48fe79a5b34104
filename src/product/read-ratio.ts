import { showFound } from '../errors.js'
import { type Fraction, fractionOf } from '../fraction.js'
import { ProductError } from './product-error.js'

const mostMoles = 1000

/** Reads a mole ratio: a whole number, or a fraction of two. */
export function readRatio(text: string): Fraction {
  const parts = typeof text === 'string' ? text.split('/').map(wholeNumber) : []
  const [top, bottom = 1] = parts
  if (parts.length <= 2 && top !== undefined && parts.every((part) => part > 0)) return fractionOf(top, bottom)
  throw new ProductError({
    code: 'product/unreadable-ratio',
    message: `${showFound(text)} is not a mole ratio.`,
    found: showFound(text),
    expected: `whole numbers from 1 to ${mostMoles}: "2" or "1/3"`,
  })
}

/** A whole number in range; zero for anything else. */
function wholeNumber(text: string): number {
  const digits = text.trim()
  if (digits.length > 4 || [...digits].some((digit) => digit < '0' || digit > '9')) return 0
  const number = Number(digits)
  return number <= mostMoles ? number : 0
}
