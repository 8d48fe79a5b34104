import { exactNullSpace } from '../equation/exact-null-space.js'
import type { Equation, Term } from '../equation/index.js'
import { formatFormula } from '../formula/index.js'
import { addFractions, type Fraction, fraction, multiplyFractions } from '../fraction.js'
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
    gas: known?.gas === true || (term.state ?? term.formula.state) === 'g',
  })
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
 * equation, without a common scale. A stage that clears a leftover has none.
 *
 * @returns One answer for each independent way; exactly one where the stages hang together.
 */
export function chainMultipliers(
  stages: readonly StageChemistry[],
  intermediates: readonly SubstanceKey[],
): readonly (readonly bigint[])[] {
  const rows = intermediates.map((key) =>
    wholeRow(stages.map((stage, index) => weightedMoles(stages, stage, index, key))),
  )
  return exactNullSpace(rows, stages.length)
}

function weightedMoles(
  stages: readonly StageChemistry[],
  stage: StageChemistry,
  index: number,
  key: SubstanceKey,
): Fraction {
  return multiplyFractions(stage.changes.get(key)?.moles ?? fraction(0n), shareAfter(stages, index))
}

function wholeRow(row: readonly Fraction[]): readonly bigint[] {
  const common = row.reduce((product, { denominator }) => product * denominator, 1n)
  return row.map(({ numerator, denominator }) => (numerator * common) / denominator)
}
