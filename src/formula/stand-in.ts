import { FormulaError } from './formula-error.js'
import { standIns } from './tables/stand-ins.js'

/** Letters that are no symbol and no likely slip, told as what they stand for where they do: `M(OH)2`, `LnCl3`. */
export function asStandIn(error: FormulaError): FormulaError {
  const row = standIns.find(({ letters }) => letters === error.found)
  if (row === undefined || error.hint !== undefined) return error
  return new FormulaError({
    ...error.toJSON(),
    code: 'formula/placeholder',
    message: error.message.replace('is not an element symbol', `stands for ${row.meaning}, which has no composition`),
    expected: 'the symbol of one element',
  })
}
