import { showFound } from '../errors.js'
import type { Naming } from './input.js'
import { QuantityError } from './quantity-error.js'

const parts = ['label', 'symbol', 'of', 'role'] as const

/** No options, and no names. */
export const none: Naming = /* @__PURE__ */ Object.freeze({})

/** The names of a quantity, checked: whatever else the object holds is left out. */
export function readNaming(given: unknown): Naming {
  if (given === none) return none
  if (typeof given !== 'object' || given === null) throw notNames(given)
  const naming: Record<string, string> = {}
  for (const part of parts) {
    const text = (given as Naming)[part]
    if (text === undefined) continue
    if (typeof text !== 'string') throw notText(part, text)
    naming[part] = text
  }
  return Object.freeze(naming)
}

/** The name of a measurement that stays the same wherever it is saved, checked. */
export function readId(given: unknown): string | undefined {
  if (given === undefined || (typeof given === 'string' && given !== '')) return given
  throw new QuantityError({
    code: 'quantity/unknown-option',
    message: `${showFound(given)} is no id of a measurement.`,
    path: ['id'],
    found: showFound(given),
    expected: 'a text that is not empty',
  })
}

function notNames(given: unknown): QuantityError {
  return new QuantityError({
    code: 'quantity/unknown-option',
    message: `${showFound(given)} does not name a quantity.`,
    found: showFound(given),
    expected: 'an object such as { label: "mass of zinc oxide", symbol: "m", of: "ZnO" }',
  })
}

function notText(part: string, found: unknown): QuantityError {
  return new QuantityError({
    code: 'quantity/unknown-option',
    message: `The ${part} of a quantity is text, not ${showFound(found)}.`,
    path: [part],
    found: showFound(found),
    expected: 'text',
  })
}
