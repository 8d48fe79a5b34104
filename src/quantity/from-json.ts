import type { Decimal } from '../decimal.js'
import { isSaltwrightError } from '../errors.js'
import { readCalculation } from './calculation-reader.js'
import type { StatedUncertainty } from './input.js'
import {
  badJson,
  type Fields,
  largestPlace,
  readChoice,
  readDecimal,
  readObject,
  readSpread,
  readUnit,
  readWhole,
} from './json-reader.js'
import { inputNode, type Node } from './node.js'
import type { Quantity } from './quantity.js'
import { figuresAt, placeAt } from './significance.js'

/**
 * Reads a quantity from JSON: from what `JSON.parse` gives for a quantity, for {@link toJSON}, or for a calculation with one result.
 *
 * @param json - Anything; only a document of a quantity can be read.
 * @returns The quantity, with its origin where the document has it.
 * @throws {@link QuantityError} `quantity/bad-json` with the path of the first mistake; `quantity/out-of-range` where a calculation
 *   cannot be done.
 * @source Common practice, no source.
 *
 * @example
 * ```ts
 * import { fromJSON, quantity, toJSON } from 'saltwright/quantity'
 *
 * fromJSON(JSON.parse(JSON.stringify(quantity('3.980 g')))).toString() // => '3.980 g'
 * fromJSON(toJSON(quantity('7.428 g'))).significantFigures // => 4
 * fromJSON({ value: '3,98', unit: 'g', significantFigures: 3 }) // throws quantity/bad-json
 * ```
 */
export function fromJSON(json: unknown): Quantity {
  return guarded(json, () => {
    if (!isCalculation(json)) return readNumber(json)
    const [result, ...others] = readCalculation(json)
    if (result !== undefined && others.length === 0) return result
    throw badJson(`${others.length + 1} results`, ['results'], 'one result; calculationFromJSON reads several')
  })
}

/**
 * Reads quantities with their origin from JSON. Those that share a measurement share it again.
 *
 * @param json - Anything; only what {@link calculationToJSON} writes can be read.
 * @returns The quantities that were saved, in their order.
 * @throws {@link QuantityError} `quantity/bad-json` with the path of the first mistake; `quantity/out-of-range` where a calculation
 *   cannot be done.
 *
 * @example
 * ```ts
 * import { calculationFromJSON, calculationToJSON, quantity } from 'saltwright/quantity'
 *
 * const mass = quantity('3.98 g', { label: 'mass of zinc oxide' })
 * calculationFromJSON(calculationToJSON([mass])).map((q) => q.naming.label) // => ['mass of zinc oxide']
 * ```
 */
export function calculationFromJSON(json: unknown): readonly Quantity[] {
  return guarded(json, () => readCalculation(json))
}

/** A getter or a proxy in the document may throw whatever it likes; that is the document's mistake. */
function guarded<T>(json: unknown, read: () => T): T {
  try {
    return read()
  } catch (error) {
    throw isSaltwrightError(error) ? error : badJson(json, [], 'plain JSON')
  }
}

function isCalculation(json: unknown): boolean {
  return (
    typeof json === 'object' && json !== null && (json as { format?: unknown }).format === 'saltwright/calculation@1'
  )
}

function readNumber(json: unknown): Node {
  const fields = readObject(
    json,
    [],
    ['format', 'value', 'unit', 'significantFigures', 'place', 'exact', 'uncertainty'],
  )
  if (fields.has('format'))
    readChoice(fields.get('format'), ['format'], ['saltwright/quantity@1', 'saltwright/calculation@1'])
  const value = readDecimal(fields.get('value'), ['value'])
  const unit = readUnit(fields.get('unit'), ['unit'])
  const written = placeOf(fields.get('value') as string)
  const facts = { ambiguous: false, uncertainty: numberUncertainty(fields), id: undefined }
  if (fields.has('exact')) {
    readChoice(fields.get('exact'), ['exact'], [true])
    if (fields.has('place'))
      throw badJson('a place', ['place'], 'none, for an exact number has no last significant digit')
    if (fields.has('uncertainty'))
      throw badJson('an uncertainty', ['uncertainty'], 'none, for an exact number has none')
    return inputNode(value, unit, { ...facts, kind: 'exact', writtenPlace: written })
  }
  const figures = readWhole(fields.get('significantFigures'), ['significantFigures'], 0, 200)
  return inputNode(value, unit, {
    ...facts,
    kind: 'measured',
    writtenPlace: lastPlace(fields, value, value.isZero() ? written : placeAt(value, figures)),
  })
}

/** The place of the last significant digit: as the document says it where the figures leave it open. */
function lastPlace(fields: Fields, value: Decimal, implied: number): number {
  if (!fields.has('place')) return implied
  const place = readWhole(fields.get('place'), ['place'], -largestPlace, largestPlace)
  const agrees = value.isZero() ? place === implied : figuresAt(value, place) === figuresAt(value, implied)
  if (agrees) return place
  throw badJson(String(place), ['place'], `the place of the last significant digit, such as ${implied}`)
}

/** The exponent of ten of the last digit of a number as it is written in a document. */
function placeOf(text: string): number {
  const [digits = '', exponent = '0'] = text.split('e')
  const [, decimals = ''] = digits.split('.')
  return Math.max(-largestPlace, Math.min(largestPlace, Number(exponent) - decimals.length))
}

function numberUncertainty(fields: Fields): StatedUncertainty | undefined {
  if (!fields.has('uncertainty')) return undefined
  return Object.freeze({ standard: readSpread(fields.get('uncertainty'), ['uncertainty']), distribution: 'normal' })
}
