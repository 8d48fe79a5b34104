import { type Formula, formulaOf } from '../formula/index.js'
import { divideFractions, type Fraction, fraction, multiplyFractions } from '../fraction.js'
import {
  noMultipliers,
  notAList,
  reversedStage,
  tooManyStages,
  twoAims,
  undeterminedMultipliers,
  unknownSpecies,
} from './chain-errors.js'
import { combined } from './combine.js'
import type { Equation } from './equation.js'
import { type EquationLike, equationOf, equationsOf } from './equation-of.js'
import { exactNullSpace } from './exact-null-space.js'
import { helperOf } from './helper-species.js'
import { smallestWholeNumbers } from './integers.js'
import { type NetAmount, netAmounts, type StateTable, speciesName, statesIn } from './net-amounts.js'
import { checkOptions } from './options.js'
import { allTerms } from './species.js'

/** What {@link stageMultipliers} aims at: named intermediates that cancel, or a given overall equation; not both. */
export interface ChainOptions {
  /**
   * The species that must cancel, as formulas or their texts. Default: the electron, and whatever one stage makes and a
   * later one uses, apart from water, the hydron and hydroxide.
   */
  readonly cancel?: readonly (Formula | string)[] | undefined
  /** The overall equation to which the stages must add up, exactly as it stands. */
  readonly overall?: EquationLike | undefined
}

/** What one run of a stage makes and uses, by the name of the species. */
type Net = ReadonlyMap<string, NetAmount>

const maxStages = 100
const one: Fraction = { numerator: 1n, denominator: 1n }
const nothing: Fraction = { numerator: 0n, denominator: 1n }

/**
 * How many times each stage of a chain runs so that the intermediates cancel, or so that a given overall equation comes
 * out. Where intermediates cancel, the scale is the one that gives the overall equation the smallest whole numbers.
 *
 * @param stages - The equations of the stages or their texts, in order.
 * @param options - The intermediates, or the overall equation.
 * @returns One exact fraction for each stage, none below zero.
 * @throws {@link EquationError} `equation/no-multipliers` where no multipliers do it.
 * @throws {@link EquationError} `equation/undetermined-multipliers` where more than one set does: name more intermediates.
 * @throws {@link EquationError} `equation/reversed-stage` where a stage would have to run backwards.
 * @throws {@link EquationError} `equation/unknown-species` where an intermediate stands in no stage.
 * @throws {@link EquationError} `equation/unknown-option` where both aims are given.
 * @throws {@link EquationError} `equation/too-many-stages` beyond 100 stages.
 * @source Common practice, no source.
 *
 * @example
 * ```ts
 * import { combine, stageMultipliers } from 'saltwright/equation'
 *
 * const oxidation = 'Fe^2+ -> Fe^3+ + e^-'
 * const reduction = 'MnO4^- + 8 H^+ + 5 e^- -> Mn^2+ + 4 H2O'
 * const [times, once] = stageMultipliers([oxidation, reduction])
 * times // => { numerator: 5n, denominator: 1n }
 * const overall = combine([{ equation: reduction, times: once }, { equation: oxidation, times }])
 * overall.text // => 'MnO4^- + 8 H^+ + 5 Fe^2+ -> Mn^2+ + 4 H2O + 5 Fe^3+'
 * ```
 */
export function stageMultipliers(stages: readonly EquationLike[], options: ChainOptions = {}): readonly Fraction[] {
  checkOptions(options)
  const equations = chainOf(stages)
  const { cancel, overall } = options
  if (overall === undefined) return timesCancelling(equations, cancel)
  if (cancel !== undefined) throw twoAims()
  return timesTowards(equations, equationOf(overall))
}

/**
 * The overall equation of a chain of stages in which the intermediates cancel: {@link stageMultipliers}, then `combine`.
 *
 * @param stages - The equations of the stages or their texts, in order.
 * @param options - The intermediates; without them those that {@link ChainOptions} says.
 * @returns The overall equation, with the smallest whole numbers.
 * @throws {@link EquationError} `equation/undetermined-multipliers` where the intermediates do not link all stages, and
 * whatever else {@link stageMultipliers} and {@link combine} throw.
 * @source Common practice, no source.
 *
 * @example
 * ```ts
 * import { overallEquation } from 'saltwright/equation'
 *
 * const stages = [
 *   '2 Al + 2 KOH + 6 H2O -> 2 K[Al(OH)4] + 3 H2',
 *   'K[Al(OH)4] + 2 H2SO4 -> KAl(SO4)2 + 4 H2O',
 * ]
 * overallEquation(stages).text // => '2 Al + 2 KOH + 4 H2SO4 -> 2 H2O + 3 H2 + 2 KAl(SO4)2'
 * ```
 */
export function overallEquation(stages: readonly EquationLike[], options: Pick<ChainOptions, 'cancel'> = {}): Equation {
  checkOptions(options)
  const equations = chainOf(stages)
  return combined(equations, timesCancelling(equations, options.cancel))
}

function chainOf(stages: readonly EquationLike[]): readonly Equation[] {
  const equations = equationsOf(stages)
  if (equations.length > maxStages) throw tooManyStages(equations.length, maxStages)
  return equations
}

function listed(species: NonNullable<ChainOptions['cancel']>): NonNullable<ChainOptions['cancel']> {
  if (Array.isArray(species)) return Array.from(species) // in which a hole is undefined, and refused as such
  throw notAList(species)
}

function timesCancelling(equations: readonly Equation[], cancel: ChainOptions['cancel']): readonly Fraction[] {
  const table = statesIn(equations)
  const nets = equations.map((equation) => netAmounts(equation, one, table))
  const names =
    cancel === undefined ? intermediates(nets) : listed(cancel).map((species) => namedIn(species, nets, table))
  const vector = onlyVector(nets, names)
  const upright = firstIsNegative(vector) ? vector.map((value) => -value) : vector
  const idle = upright.indexOf(0n)
  if (idle >= 0) throw noMultipliers(`Stage ${idle + 1} would have to be left out.`)
  return toSmallestOverall(equations, checkForward(upright.map((value) => fraction(value))))
}

function timesTowards(equations: readonly Equation[], overall: Equation): readonly Fraction[] {
  const all = [...equations, overall]
  const table = statesIn(all)
  const nets = all.map((equation) => netAmounts(equation, one, table))
  const vector = onlyVector(nets, [...new Set(nets.flatMap((net) => [...net.keys()]))])
  const target = vector.at(-1) as bigint
  if (target === 0n) throw noMultipliers('The stages cancel one another.')
  return checkForward(vector.slice(0, -1).map((value) => fraction(-value, target)))
}

/** The one way to run the stages in which the named species cancel, as whole numbers. */
function onlyVector(nets: readonly Net[], names: readonly string[]): readonly bigint[] {
  const rows = names.map((name) => smallestWholeNumbers(nets.map((net) => net.get(name)?.net ?? nothing)))
  const [vector, another] = exactNullSpace(rows, nets.length)
  if (vector === undefined) throw noMultipliers(undefined)
  if (another !== undefined) throw undeterminedMultipliers()
  return vector
}

function firstIsNegative(vector: readonly bigint[]): boolean {
  return (vector.find((value) => value !== 0n) as bigint) < 0n
}

function checkForward(times: readonly Fraction[]): readonly Fraction[] {
  const backwards = times.findIndex(({ numerator }) => numerator < 0n)
  if (backwards >= 0) throw reversedStage(backwards)
  return times
}

/** The multipliers scaled so that the overall equation is in lowest terms. */
function toSmallestOverall(equations: readonly Equation[], times: readonly Fraction[]): readonly Fraction[] {
  const coefficients = allTerms(combined(equations, times)).map(({ coefficient }) => coefficient)
  const scale = divideFractions(fraction(smallestWholeNumbers(coefficients)[0] as bigint), coefficients[0] as Fraction)
  return times.map((value) => multiplyFractions(value, scale))
}

/** The electron, and what one stage makes and a later one uses, apart from water, the hydron and hydroxide. */
function intermediates(nets: readonly Net[]): readonly string[] {
  const names = new Set(nets.flatMap((net) => [...net.keys()]))
  return [...names].filter((name) => isIntermediate(nets.map((net) => net.get(name))))
}

function isIntermediate(amounts: readonly (NetAmount | undefined)[]): boolean {
  const made = amounts.findIndex((amount) => amount !== undefined && amount.net.numerator > 0n)
  const used = amounts.map((amount) => amount !== undefined && amount.net.numerator < 0n).lastIndexOf(true)
  if (made < 0 || used < 0) return false
  const helper = helperOf((amounts[made] as NetAmount).formula)
  return helper === 'e^-' || (helper === undefined && made < used)
}

function namedIn(species: Formula | string, nets: readonly Net[], table: StateTable): string {
  const formula = formulaOf(species)
  const name = speciesName({ formula, state: formula.state }, table)
  if (nets.every((net) => !net.has(name))) throw unknownSpecies(name)
  return name
}
