import { showFound } from '../errors.js'
import { SolutionError } from './solution-error.js'
import { stockReagents } from './stock-reagent-data.js'
import type { StockReagent } from './stock-strength.js'

/**
 * Looks up a concentrated reagent: the strengths in which it is usually sold. They are nominal; the assay on the bottle takes
 * precedence.
 *
 * @param name - Its formula or usual name: `H2SO4`, `sulfuric acid`.
 * @returns The reagent with its strengths, each with its source.
 * @throws {@link SolutionError} `solution/unknown-stock`.
 *
 * @example
 * ```ts
 * import { amountConcentration, stockReagent } from 'saltwright/solution'
 *
 * const { strengths, formula } = stockReagent('ammonia solution')
 * strengths[0]?.massFraction // => '28.0 %'
 * strengths.map((stock) => amountConcentration({ ...stock, substance: formula }).toString()).slice(0, 2) // => ['15 mol/L', '15 mol/L']
 * stockReagent('aqua fortis') // throws solution/unknown-stock
 * ```
 */
export function stockReagent(name: string): StockReagent {
  const found = stockReagents.find((reagent) => reagent.formula === name || reagent.name === name)
  if (found !== undefined) return found
  throw new SolutionError({
    code: 'solution/unknown-stock',
    message: `${showFound(name)} is not in the table of stock reagents.`,
    found: showFound(name),
    expected: stockReagents.map(({ formula }) => formula).join(', '),
    hint: 'Give the mass fraction and the density that stand on the bottle.',
  })
}
