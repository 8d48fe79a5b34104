import { showFound } from '../errors.js'
import { type Dimension, nameDimension } from './dimension.js'
import { QuantityError } from './quantity-error.js'
import { findUnit, type Unit, units, unitsOf } from './unit.js'

/** The unit a text names, if it measures the dimension. */
export function unitFor(text: unknown, dimension: Dimension): Unit {
  const unit = typeof text === 'string' ? findUnit(text.trim()) : undefined
  if (unit === undefined) throw unknownUnit(text, dimension)
  if (units[unit].dimension !== dimension) throw wrongUnit(unit, dimension)
  return unit
}

function unknownUnit(found: unknown, dimension: Dimension): QuantityError {
  return new QuantityError({
    code: 'quantity/unknown-unit',
    message: `${showFound(found)} is not a unit.`,
    found: showFound(found),
    expected: unitsOf(dimension).join(', '),
  })
}

function wrongUnit(unit: Unit, dimension: Dimension): QuantityError {
  return new QuantityError({
    code: 'quantity/wrong-dimension',
    message: `${unit} is a unit of ${nameDimension(units[unit].dimension)}, not of ${nameDimension(dimension)}.`,
    found: unit,
    expected: unitsOf(dimension).join(', '),
  })
}
