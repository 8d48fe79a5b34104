import { exactNullSpace } from '../equation/exact-null-space.js'
import { combine, type Equation, lowestTerms, type Term } from '../equation/index.js'
import { formatFormula } from '../formula/index.js'
import { addFractions, divideFractions, type Fraction, fraction, multiplyFractions } from '../fraction.js'
import { isStrongAcid, isStrongBase, neutralisationEnthalpy } from '../product/index.js'
import type { Quantity } from '../quantity/index.js'
import { speciesKey } from '../stoichiometry/index.js'
import type { SubstanceKey } from './substance.js'

/** What a stage does with one substance. */
export interface Change {
  /** How it is written. */
  readonly formula: string
  /** Moles made per mole of the stage's equation as written; below zero where it is used up. */
  readonly moles: Fraction
  /** True where the equation says that it leaves as a gas. */
  readonly gas: boolean
}

/** A stage as arithmetic: what it uses and makes. */
export interface StageChemistry {
  /** Its name. */
  readonly name: string
  /** Its equation. */
  readonly equation: Equation
  /** What it does, by substance. */
  readonly changes: ReadonlyMap<SubstanceKey, Change>
  /** For a stage that only removes a leftover: which. */
  readonly clears: SubstanceKey | undefined
  /** The exact fraction of the solution that goes on into it. */
  readonly aliquot: Fraction
  /** What is taken away before it. */
  readonly removes: ReadonlySet<SubstanceKey>
  /** Where a strong acid meets a strong base in it: their heat per mole of the water they form, and how much they form. */
  readonly neutralisation: StageNeutralisation | undefined
}

/** A strong acid and a strong base in one stage. */
export interface StageNeutralisation {
  /** Enthalpy per mole of water formed. */
  readonly enthalpy: Quantity<'molarEnergy'>
  /** Moles of water formed per mole of the stage's equation as written. */
  readonly water: Fraction
}

/** Whether a strong acid and a strong base meet in an equation, and what comes of it. */
export function neutralisationIn(
  equation: Equation,
  changes: ReadonlyMap<SubstanceKey, Change>,
): StageNeutralisation | undefined {
  const reactants = equation.left.map(({ formula }) => formula)
  const [acid, base] = [reactants.find(isStrongAcid), reactants.find(isStrongBase)]
  const water = changes.get(speciesKey('H2O'))
  if (acid === undefined || base === undefined || water === undefined) return undefined
  return { enthalpy: neutralisationEnthalpy(acid, base) as Quantity<'molarEnergy'>, water: water.moles }
}

/** The net changes of an equation, by substance: water on both sides counts once. */
export function changesOf(equation: Equation): ReadonlyMap<SubstanceKey, Change> {
  const changes = new Map<SubstanceKey, Change>()
  for (const term of equation.left) count(changes, term, -1n)
  for (const term of equation.right) count(changes, term, 1n)
  return changes
}

function count(changes: Map<SubstanceKey, Change>, term: Term, sign: bigint): void {
  const key = speciesKey(term.formula)
  const known = changes.get(key)
  const moles = multiplyFractions(term.coefficient, fraction(sign))
  changes.set(key, {
    formula: known?.formula ?? formatFormula(term.formula, 'plain'),
    moles: known === undefined ? moles : addFractions(known.moles, moles),
    gas: known?.gas === true || leavesAsGas(term, key),
  })
}

/** Whether a species leaves as a gas: by its state, or without one where the substance is a gas that water hardly holds. */
function leavesAsGas({ state }: Term, key: SubstanceKey): boolean {
  return state === undefined ? permanentGases.some((gas) => speciesKey(gas) === key) : state === 'g'
}

/** Substances that leave a vessel as gases: common knowledge, no source. Ammonia and hydrogen chloride mostly stay dissolved. */
const permanentGases = ['H2', 'O2', 'N2', 'Cl2', 'CO', 'CO2', 'N2O', 'NO', 'NO2', 'SO2', 'H2S'] as const

/** Whether a stage only changes states: it dissolves or brings down what is there, and makes nothing else of it. */
export function changesStatesOnly({ changes }: StageChemistry): boolean {
  return [...changes.values()].every(({ moles }) => moles.numerator === 0n)
}

/** Whether a stage uses a substance up. */
export function uses(stage: StageChemistry, key: SubstanceKey): boolean {
  return (stage.changes.get(key)?.moles.numerator ?? 0n) < 0n
}

/** Whether a stage makes a substance. */
export function makes(stage: StageChemistry, key: SubstanceKey): boolean {
  return (stage.changes.get(key)?.moles.numerator ?? 0n) > 0n
}

/** What is left of one mole of a stage's products at the end: the product of all later aliquots. */
function shareAfter(stages: readonly StageChemistry[], index: number): Fraction {
  return stages.slice(index + 1).reduce((share, { aliquot }) => multiplyFractions(share, aliquot), fraction(1n))
}

/** The net moles of a substance over all main stages, per unit of the multipliers, counted at the end of the preparation. */
export function netMoles(stages: readonly StageChemistry[], times: readonly Fraction[], key: SubstanceKey): Fraction {
  return stages.reduce((total, stage, index) => {
    const moles = stage.changes.get(key)?.moles
    if (moles === undefined) return total
    const share = multiplyFractions(times[index] as Fraction, shareAfter(stages, index))
    return addFractions(total, multiplyFractions(moles, share))
  }, fraction(0n))
}

/**
 * How often each stage runs so that nothing is left of what one stage makes for another: the multipliers of the overall
 * equation, without a common scale.
 *
 * @param chain - Those of the stages that make something of something else, and clear no leftover.
 * @returns One answer for each independent way, in the order of the chain; exactly one where its stages hang together.
 */
export function chainMultipliers(
  stages: readonly StageChemistry[],
  chain: readonly StageChemistry[],
  intermediates: readonly SubstanceKey[],
): readonly (readonly bigint[])[] {
  const rows = intermediates.map((key) => wholeRow(chain.map((stage) => weightedMoles(stages, stage, key))))
  return exactNullSpace(rows, chain.length)
}

function weightedMoles(stages: readonly StageChemistry[], stage: StageChemistry, key: SubstanceKey): Fraction {
  return multiplyFractions(stage.changes.get(key)?.moles ?? fraction(0n), shareAfter(stages, stages.indexOf(stage)))
}

/** How often a stage that only changes states runs: once for all that the other stages bring to it, or take from it. */
export function timesOfStateChange(
  stages: readonly StageChemistry[],
  times: readonly Fraction[],
  index: number,
): Fraction {
  const stage = stages[index] as StageChemistry
  const { key, coefficient } = startOf(stage)
  const brought = multiplyFractions(netMoles(stages.slice(0, index), times, key), stage.aliquot)
  const taken = netMoles(stages.slice(index + 1), times.slice(index + 1), key)
  const moles = brought.numerator === 0n ? divideFractions(taken, shareAfter(stages, index)) : brought
  return divideFractions(
    { ...moles, numerator: moles.numerator < 0n ? -moles.numerator : moles.numerator },
    coefficient,
  )
}

/** What a stage starts from: the first substance of its equation, and how many moles of it. */
export function startOf({ equation }: StageChemistry): {
  readonly key: SubstanceKey
  readonly coefficient: Fraction
} {
  const [{ formula, coefficient }] = equation.left as readonly [Term]
  return { key: speciesKey(formula), coefficient }
}

/** The chain added up, in lowest terms. What an aliquot leaves behind is not counted: the equation is of what goes on. */
export function overallOf(stages: readonly StageChemistry[], times: readonly Fraction[]): Equation {
  const chain = stages.map(({ equation }, index) => ({
    equation,
    times: multiplyFractions(times[index] as Fraction, shareAfter(stages, index)),
  }))
  return lowestTerms(combine(chain.filter((stage) => stage.times.numerator !== 0n)))
}

function wholeRow(row: readonly Fraction[]): readonly bigint[] {
  const common = row.reduce((product, { denominator }) => product * denominator, 1n)
  return row.map(({ numerator, denominator }) => (numerator * common) / denominator)
}

/** The stages that lead to the product; those that only clear a leftover are left out. */
export function mainStages(stages: readonly StageChemistry[]): readonly StageChemistry[] {
  return stages.filter(({ clears }) => clears === undefined)
}
