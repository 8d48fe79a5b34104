import { Decimal } from '../decimal.js'
import { showFound } from '../errors.js'
import { ElementError } from './element-error.js'

/** An atomic weight as a number and a bound: that of every normal material lies within `value` plus or minus `halfWidth`. */
export interface WeightRange {
  /** The value, with its digits. */
  readonly value: string
  /** Half the width of the range; undefined where none was written. */
  readonly halfWidth: string | undefined
}

const longest = 60

/**
 * Reads an atomic weight as it is printed: a value, a value with its bound, or an interval, whose midpoint stands for it. No
 * atomic weight reaches 1000, so powers of ten are not read.
 */
export function readWeight(written: unknown): WeightRange {
  if (typeof written !== 'string') throw notText(written)
  const text = written.trim()
  if (text.length > longest) throw badWeight(text)
  if (text.startsWith('[')) return readInterval(text)
  return text.endsWith(')') ? readBracketed(text) : readBounded(text)
}

/** `63.546 ± 0.003`, or `63.546` alone. */
function readBounded(text: string): WeightRange {
  const [value = '', bound, ...rest] = text
    .replace('+/-', '±')
    .split('±')
    .map((part) => part.trim())
  if (rest.length > 0 || !isWeight(value)) throw badWeight(text)
  if (bound === undefined) return { value, halfWidth: undefined }
  if (!isNumeral(bound)) throw badWeight(text)
  if (!new Decimal(bound).lt(value)) throw badBound(text)
  return { value, halfWidth: bound }
}

/** `63.546(3)`: the digits in brackets stand for the last digits of the value. */
function readBracketed(text: string): WeightRange {
  const [value = '', digits = ''] = text.slice(0, -1).split('(')
  if (!isNumeral(value) || !isNumeral(digits) || digits.includes('.')) throw badWeight(text)
  const bound = new Decimal(`${digits}e${-decimals(value)}`)
  return readBounded(`${value} ± ${bound.toFixed(decimals(value))}`)
}

/** `[1.00784, 1.00811]`: the midpoint gets the decimals it needs, and no fewer than the ends have. */
function readInterval(text: string): WeightRange {
  const [lower = '', upper = '', ...rest] = text
    .slice(1, -1)
    .split(',')
    .map((end) => end.trim())
  if (!text.endsWith(']') || rest.length > 0 || !isWeight(lower) || !isWeight(upper)) throw badWeight(text)
  const width = new Decimal(upper).minus(lower)
  if (!width.gt(0)) throw badBound(text)
  const middle = width.div(2).plus(lower)
  const places = Math.max(decimals(lower), decimals(upper), middle.decimalPlaces())
  return { value: middle.toFixed(places), halfWidth: width.div(2).toFixed() }
}

function isNumeral(text: string): boolean {
  return /^\d+(\.\d+)?$/.test(text)
}

function isWeight(text: string): boolean {
  return isNumeral(text) && Number(text) > 0 && Number(text) < 1000
}

function decimals(numeral: string): number {
  const point = numeral.indexOf('.')
  return point < 0 ? 0 : numeral.length - point - 1
}

function notText(found: unknown): ElementError {
  return new ElementError({
    code: 'element/not-text',
    message: 'An atomic weight is given as text, for a JavaScript number has lost the zeros at its end.',
    found: showFound(found),
    expected: 'a text such as "63.546"',
    hint: typeof found === 'number' ? `"${found}"?` : undefined,
  })
}

function badWeight(text: string): ElementError {
  return new ElementError({
    code: 'element/bad-weight',
    message: `${showFound(text)} is not an atomic weight.`,
    found: showFound(text),
    expected: 'a number between 0 and 1000 as printed: "63.546", "63.546 ± 0.003", "63.546(3)" or "[1.00784, 1.00811]"',
    hint: hintFor(text),
  })
}

function hintFor(text: string): string | undefined {
  if (text.includes('/mol')) return 'Leave the unit out: an atomic weight is a bare number.'
  const massNumber = /^[[(](\d{1,3})[\])]$/.exec(text)?.[1]
  if (massNumber !== undefined) return `"${massNumber}" if the mass number is to stand for the atomic weight.`
  return /^\d+,\d+$/.test(text) ? `"${text.replace(',', '.')}"?` : undefined
}

function badBound(text: string): ElementError {
  return new ElementError({
    code: 'element/bad-bound',
    message: `The range of ${showFound(text)} is empty, upside down or reaches zero.`,
    found: showFound(text),
    expected: 'a bound smaller than the value, or an interval from the lower end to the upper end',
  })
}
