import { attempt, type Outcome } from '../errors.js'
import { type Formula, type FormulaLike, formulaOf } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import { chosen, type Given } from '../stoichiometry/given.js'
import { checkTable } from './check-table.js'
import { findPhase } from './find-phase.js'
import { findTable } from './find-table.js'
import { type CrystallisationNote, note } from './note.js'
import { degrees, interpolate } from './points.js'
import { record } from './record.js'
import { type SecondOpinion, secondOpinions } from './second-opinion.js'
import type { PhaseEvidence, PhaseSolubility, SolubilityTable } from './solubility-table.js'
import { tabulated } from './table-value.js'

/** A solubility in pure water, with everything it rests on. */
export interface Solubility {
  /** The anhydrous salt that is counted. */
  readonly salt: string
  /** The solid in equilibrium with the solution. */
  readonly crystal: string
  /** At what temperature. */
  readonly temperature: Quantity<'temperature'>
  /** Grams of the anhydrous salt per gram of all the water. */
  readonly massRatio: Quantity<'ratio'>
  /** The lowest and the highest temperature tabulated for this solid. */
  readonly range: readonly [Quantity<'temperature'>, Quantity<'temperature'>]
  /** Whether it lies between two tabulated temperatures. */
  readonly interpolated: boolean
  /** Where the table is printed. */
  readonly source: string
  /** Where the name of the solid comes from. */
  readonly evidence: PhaseEvidence | undefined
  /** What other tables say. */
  readonly others: readonly SecondOpinion[]
  /** What a person should know about it. */
  readonly notes: readonly CrystallisationNote[]
}

/** What can be said beside the salt and the temperature. */
export interface SolubilityOptions {
  /** A table of one's own; the built-in one of the salt unless said. */
  readonly table?: SolubilityTable | undefined
  /** The solid that is meant; the stable one of the temperature unless said, or the one asked for where that is a hydrate. */
  readonly crystal?: FormulaLike | undefined
}

/** Tables that lie further apart than this are worth a remark, in per cent. Common practice, no source. */
const worthSaying = 3

/**
 * The solubility of a salt in pure water, from a printed table: interpolated linearly between neighbouring temperatures of one
 * solid phase, never beyond the table and never from one solid into the next.
 *
 * @param salt - The anhydrous salt, for the solid that is stable; or a hydrate, for that solid only. A formula or its text.
 * @param temperature - In degrees Celsius or kelvins. Text is exact; a measured one limits the figures.
 * @param options - `crystal`, the solid that is meant; `table`, a table of one's own.
 * @returns Grams of the anhydrous salt per gram of all the water, with solid, range, source, other tables and remarks.
 * @throws {@link CrystallisationError} `crystallisation/unknown-salt`; `crystallisation/phase-not-tabulated` for a solid the table
 *   has not; `crystallisation/outside-table` beyond the range of the solid; `crystallisation/points-too-far-apart` between
 *   temperatures more than 25 °C apart; `crystallisation/bad-table`. {@link FormulaError} for a formula that cannot be
 *   read.
 * @source The tables say theirs; see {@link solubilityTables}. Linear interpolation: common practice, no source.
 *
 * @example
 * ```ts
 * import { solubilityOf } from 'saltwright/crystallisation'
 *
 * const cold = solubilityOf('ZnSO4', '5 degC')
 * cold.massRatio.toString() // => '0.441'
 * cold.crystal // => 'ZnSO4·7H2O'
 * solubilityOf('ZnSO4·7H2O', '35 degC') // throws crystallisation/outside-table
 * ```
 */
export function solubilityOf(
  salt: FormulaLike,
  temperature: Given<'temperature'>,
  options: SolubilityOptions = {},
): Solubility {
  const formula = formulaOf(salt)
  const at = chosen(temperature, 'temperature', { label: 'temperature', symbol: 't', role: 'temperature' })
  const { crystal, table: own } = record(options, 'options: { crystal, table }')
  const table = own === undefined ? findTable(formula) : checkTable(own)
  const { phase, bracket } = findPhase(table, at, crystal ?? hydrateOrNone(formula))
  const massRatio = interpolate(phase.celsius, bracket, (index) => tabulated(table, phase, index), at)
  const others = secondOpinions(table.salt, phase, massRatio, at)
  return {
    salt: table.salt,
    crystal: phase.crystal,
    temperature: at,
    massRatio: named(massRatio, table),
    range: [degrees(phase.celsius[0] as number), degrees(phase.celsius[phase.celsius.length - 1] as number)],
    interpolated: bracket[0] !== bracket[1],
    source: table.source,
    evidence: phase.evidence,
    others,
    notes: notesOn(table, phase, others),
  }
}

/**
 * The solubility of a salt, without throwing: for a plan that goes on without one.
 *
 * @param salt - As for {@link solubilityOf}.
 * @param temperature - As for {@link solubilityOf}.
 * @param options - As for {@link solubilityOf}.
 * @returns The solubility, or the error.
 *
 * @example
 * ```ts
 * import { trySolubilityOf } from 'saltwright/crystallisation'
 *
 * trySolubilityOf('ZnSO4·7H2O', '35 degC').ok // => false
 * ```
 */
export function trySolubilityOf(
  salt: FormulaLike,
  temperature: Given<'temperature'>,
  options: SolubilityOptions = {},
): Outcome<Solubility> {
  return attempt(() => solubilityOf(salt, temperature, options))
}

/** Asked for a hydrate, only that solid will do; asked for the bare salt, whatever is stable. */
function hydrateOrNone(salt: Formula): Formula | undefined {
  return salt.hydration?.gt(0) ? salt : undefined
}

function named(massRatio: Quantity<'ratio'>, { salt }: SolubilityTable): Quantity<'ratio'> {
  return massRatio.named({
    label: `solubility of ${salt}, g per g of water`,
    symbol: 's',
    of: salt,
    role: 'solubility',
  })
}

function notesOn(
  table: SolubilityTable,
  phase: PhaseSolubility,
  others: readonly SecondOpinion[],
): readonly CrystallisationNote[] {
  const { salt } = table
  const { crystal, evidence } = phase
  const far = others.filter(({ difference }) => difference.value.abs().gt(worthSaying))
  const unseen = evidence === 'from memory' && crystal !== salt
  return [
    ...(table.fromMemory ? [note('table-from-memory', `The solubilities of ${salt} are from memory.`)] : []),
    ...(unseen ? [note('solid-from-memory', `That ${crystal} is the solid in this range is from memory.`)] : []),
    ...(table.note === undefined ? [] : [note('about-the-table', table.note)]),
    ...far.map(differs),
  ]
}

function differs({ massRatio, difference, source }: SecondOpinion): CrystallisationNote {
  const percent = difference.value.toFixed(0)
  const sign = difference.value.gt(0) ? '+' : ''
  return note('tables-differ', `Another table has ${massRatio} g per g of water (${sign}${percent} %): ${source}.`)
}
