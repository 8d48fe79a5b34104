import { type FormulaLike, formulaOf } from '../formula/index.js'
import { type Quantity, sum } from '../quantity/index.js'
import { anObject, listOf } from './bounds.js'
import { namedAmount } from './naming.js'
import { speciesKey } from './species.js'
import type { StagesRun } from './stage.js'
import type { SpeciesAmount } from './supplies.js'

/**
 * Looks up how much there is of a species in a list of amounts.
 *
 * @param amounts - What a calculation gave: what was used, made or left.
 * @param formula - The species, written in any way.
 * @returns The amount in mol; undefined where the list does not have the species, as for water that is not counted.
 * @throws {@link FormulaError} the codes of `parseFormula`, such as `formula/unknown-symbol`; {@link StoichiometryError}
 *   `stoichiometry/not-an-object`.
 * @source A look-up: no rule.
 *
 * @example
 * ```ts
 * import { amountOf, runStages } from 'saltwright/stoichiometry'
 *
 * const { after } = runStages([{ equation: 'CuO + H2SO4 -> CuSO4 + H2O' }], { CuO: '0.050 mol', H2SO4: '0.25 mol' })
 * amountOf(after, 'H2SO4')?.toString() // => '0.2 mol'
 * amountOf(after, 'H2O') // => undefined
 * ```
 */
export function amountOf(amounts: readonly SpeciesAmount[], formula: FormulaLike): Quantity<'amount'> | undefined {
  const wanted = speciesKey(formula)
  return listOf(amounts, 'a list of amounts').find((entry) => speciesKey(entry.formula) === wanted)?.amount
}

/**
 * How much of a species all stages use together. With the species in excess this is the true need: what an earlier stage left
 * over and a later one must use up first is counted in.
 *
 * @param run - What {@link runStages} gave.
 * @param formula - The species.
 * @returns The amount in mol; undefined where no stage uses it.
 * @throws {@link FormulaError} the codes of `parseFormula`, such as `formula/unknown-symbol`; {@link StoichiometryError}
 *   `stoichiometry/not-an-object`.
 * @source Common practice, no source.
 *
 * @example
 * ```ts
 * import { amountUsedInAll, runStages } from 'saltwright/stoichiometry'
 *
 * const run = runStages(
 *   [
 *     { equation: '2Al + 2KOH + 6H2O -> 2K[Al(OH)4] + 3H2' },
 *     { equation: '2KOH + H2SO4 -> K2SO4 + 2H2O' },
 *     { equation: 'K[Al(OH)4] + 2H2SO4 -> KAl(SO4)2 + 4H2O' },
 *   ],
 *   { Al: '0.025 mol', KOH: '0.050 mol' },
 *   { inExcess: ['H2O', 'H2SO4'] },
 * )
 * amountUsedInAll(run, 'H2SO4')?.toString() // => '0.0625 mol'
 * ```
 */
export function amountUsedInAll(run: StagesRun, formula: FormulaLike): Quantity<'amount'> | undefined {
  const { stages } = anObject(run, 'what runStages gives')
  const used = listOf(stages, 'the stages that runStages gives').flatMap((stage) => amountOf(stage.used, formula) ?? [])
  if (used.length === 0) return undefined
  const of = formulaOf(formula).text
  return namedAmount(sum(used), of, `amount of ${of} that reacts in all stages`)
}
