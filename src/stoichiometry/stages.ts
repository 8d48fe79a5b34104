import type { AtomicWeights } from '../element/index.js'
import { showFound } from '../errors.js'
import type { FormulaLike } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import { partOfWhole } from './bounds.js'
import { type Choice, chosen } from './given.js'
import { compareAmounts } from './limiting-reagent.js'
import {
  afterReaction,
  amountsIn,
  type Keys,
  listPool,
  type Pool,
  portionOf,
  pour,
  remove,
  share,
  withoutKey,
} from './pool.js'
import { amountMade, amountUsed } from './progress.js'
import { type Reaction, reactionOf } from './reaction.js'
import { speciesKey } from './species.js'
import type { Stage, StageRun, StagesOptions, StagesRun } from './stage.js'
import { StoichiometryError } from './stoichiometry-error.js'
import { readSupplies, type Supplies } from './supplies.js'

/**
 * Runs a preparation stage by stage. Each stage goes on until its limiting reagent is used up; what it makes and what it leaves
 * are there for the next one. So alkali left over from dissolving a metal meets the acid of the next stage, a metal that is
 * recovered comes back, and only the aliquot that is taken goes on.
 *
 * @param stages - One or more stages, in the order in which they are done.
 * @param supplies - What is there at the beginning; more can be added at each stage.
 * @param options - What is always in excess (water unless said), atomic weights, and the band of "practically equal".
 * @returns Each stage with what it used, made and left, and what is there in the end.
 * @throws {@link StoichiometryError} `stoichiometry/not-supplied` for a reactant that was neither supplied nor made before;
 *   `stoichiometry/nothing-limits` where all reactants are in excess; `stoichiometry/not-a-fraction` for an aliquot above 1;
 *   `stoichiometry/bad-stages`, `stoichiometry/unbalanced-equation`, `stoichiometry/bad-supplies`, `stoichiometry/not-a-supply`,
 *   `stoichiometry/negative`; {@link EquationError}, {@link FormulaError} and {@link QuantityError} for what cannot be read.
 * @source Each stage as in OpenStax, Chemistry 2e, section 4.4.
 *
 * @example
 * ```ts
 * import { amountOf, runStages } from 'saltwright/stoichiometry'
 *
 * const alum = runStages(
 *   [
 *     { equation: '2Al + 2KOH + 6H2O -> 2K[Al(OH)4] + 3H2' },
 *     { equation: '2KOH + H2SO4 -> K2SO4 + 2H2O', add: { H2SO4: '0.090 mol' } },
 *     { equation: 'K[Al(OH)4] + 2H2SO4 + 8H2O -> KAl(SO4)2·12H2O' },
 *   ],
 *   { Al: '0.025 mol', KOH: '0.050 mol' },
 * )
 * amountOf(alum.stages[0]?.after ?? [], 'KOH')?.toString() // => '0.025 mol'
 * amountOf(alum.after, 'KAl(SO4)2·12H2O')?.toString() // => '0.025 mol'
 * amountOf(alum.after, 'H2SO4')?.toString() // => '0.0275 mol'
 * ```
 */
export function runStages(stages: readonly Stage[], supplies: Supplies = {}, options: StagesOptions = {}): StagesRun {
  if (!Array.isArray(stages) || stages.length === 0) throw badStages(stages, 'a list of one or more stages')
  if (options === null) throw badStages(options, 'options, or nothing')
  const uncounted = keysOf(options.inExcess ?? ['H2O'])
  let pool = pour(new Map(), readSupplies(supplies, options.weights), uncounted)
  // Not map, which would pass over the holes of a list.
  const runs = Array.from(stages, (stage: Stage, index) => {
    const { run, left } = runStage(stage, nameOf(stage, index), pool, uncounted, options)
    pool = left
    return run
  })
  return { stages: runs, after: listPool(pool) }
}

interface Step {
  readonly run: StageRun
  readonly left: Pool
}

function runStage(stage: Stage, name: string, pool: Pool, uncounted: Keys, options: StagesOptions): Step {
  const reaction = reactionOf(stage.equation)
  const before = prepare(stage, pool, uncounted, options.weights)
  requireReactants(reaction, before, uncounted, name)
  const { limiting, practicallyEqual } = compareAmounts(reaction, amountsIn(before), options.practicallyEqualWithin)
  const used = reaction.reactants.map((reactant) => portionOf(reactant, amountUsed(reactant, limiting)))
  const made = reaction.products.map((product) => portionOf(product, amountMade(product, limiting)))
  const left = afterReaction(before, used, made, uncounted, name)
  return {
    left,
    run: {
      name,
      equation: reaction.text,
      before: listPool(before),
      limiting: limiting.formula,
      practicallyEqual,
      extent: limiting.extent,
      used: used.map(withoutKey),
      made: made.map(withoutKey),
      after: listPool(left),
    },
  }
}

/** What is there when the reaction of a stage begins. */
function prepare(stage: Stage, pool: Pool, uncounted: Keys, weights: AtomicWeights | undefined): Pool {
  const part = stage.aliquot === undefined ? pool : share(pool, aliquotOf(stage.aliquot))
  const kept = remove(part, keysOf(stage.remove ?? []))
  return pour(kept, readSupplies(stage.add ?? {}, weights), uncounted)
}

function aliquotOf(aliquot: Choice): Quantity<'ratio'> {
  return partOfWhole(chosen(aliquot, 'ratio', { label: 'aliquot', symbol: 'a', role: 'aliquot' }))
}

function requireReactants({ reactants, text }: Reaction, pool: Pool, uncounted: Keys, name: string): void {
  for (const { key, formula } of reactants) {
    if (!pool.has(key) && !uncounted.has(key)) throw notSupplied(formula, text, name)
  }
}

function keysOf(formulas: readonly FormulaLike[]): Keys {
  if (!Array.isArray(formulas)) throw badStages(formulas, 'a list of formulas')
  return new Set(formulas.map((formula: FormulaLike) => speciesKey(formula)))
}

function nameOf(stage: unknown, index: number): string {
  if (typeof stage !== 'object' || stage === null) throw badStages(stage, 'a stage: { equation: "..." }')
  const name: unknown = (stage as Stage).name ?? `stage ${index + 1}`
  if (typeof name !== 'string') throw badStages(name, 'the name of a stage, which is text')
  return name
}

function badStages(found: unknown, expected: string): StoichiometryError {
  return new StoichiometryError({
    code: 'stoichiometry/bad-stages',
    message: `${showFound(found)} is not ${expected}.`,
    found: showFound(found),
    expected,
  })
}

function notSupplied(formula: string, equation: string, name: string): StoichiometryError {
  return new StoichiometryError({
    code: 'stoichiometry/not-supplied',
    message: `${formula} reacts in ${name} ("${equation}") but was neither supplied nor made before.`,
    found: `no ${formula}`,
    expected: `${formula} among the supplies, added at ${name}, or in inExcess`,
  })
}
