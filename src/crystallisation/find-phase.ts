import { type FormulaLike, formulaOf } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import { CrystallisationError } from './crystallisation-error.js'
import { type Bracket, bracketAt, celsiusOf, covers, isNarrow, widestGap } from './points.js'
import type { PhaseSolubility, SolubilityTable } from './solubility-table.js'
import { substanceKey } from './substance-key.js'

/** The solid that is stable at a temperature, or the one asked for, with the tabulated points around the temperature. */
export interface PhaseAt {
  /** The solid and its points. */
  readonly phase: PhaseSolubility
  /** The points to interpolate between. */
  readonly bracket: Bracket
}

/** Finds the solid and the points; never reaches from one solid into the next, nor beyond the table. */
export function findPhase(
  table: SolubilityTable,
  temperature: Quantity<'temperature'>,
  crystal: FormulaLike | undefined,
): PhaseAt {
  const candidates = crystal === undefined ? table.phases : phasesOf(table, crystal)
  const phase = candidates.find(({ celsius }) => covers(celsius, temperature))
  if (phase === undefined) throw outsideTable(table, candidates, temperature)
  const bracket = bracketAt(phase.celsius, temperature)
  if (!isNarrow(phase.celsius, bracket)) throw tooFarApart(phase, bracket, temperature)
  return { phase, bracket }
}

/** The keys of tabulated solids: a memo, as their formulas are text. */
const keys: WeakMap<PhaseSolubility, string> = /* @__PURE__ */ new WeakMap()

function keyOf(phase: PhaseSolubility): string {
  const key = keys.get(phase) ?? substanceKey(phase.crystal)
  keys.set(phase, key)
  return key
}

/** The entries of one solid. */
export function phasesOf(table: SolubilityTable, crystal: FormulaLike): readonly PhaseSolubility[] {
  const key = substanceKey(crystal)
  const found = table.phases.filter((phase) => keyOf(phase) === key)
  if (found.length > 0) return found
  const { text } = formulaOf(crystal)
  throw new CrystallisationError({
    code: 'crystallisation/phase-not-tabulated',
    message: `The table of ${table.salt} has no solubilities of ${text}.`,
    found: text,
    expected: table.phases.map((phase) => phase.crystal).join(' or '),
  })
}

function outsideTable(
  table: SolubilityTable,
  candidates: readonly PhaseSolubility[],
  temperature: Quantity<'temperature'>,
): CrystallisationError {
  const other = table.phases.find(({ celsius }) => covers(celsius, temperature))
  const at = showCelsius(temperature)
  return new CrystallisationError({
    code: 'crystallisation/outside-table',
    message: `No solubility is tabulated at ${at}; nothing is extrapolated, nor drawn from one solid phase into the next.`,
    found: at,
    expected: candidates.map(showRange).join(', '),
    hint: other && `At ${at} the stable solid is ${other.crystal}.`,
  })
}

function tooFarApart(
  { crystal, celsius }: PhaseSolubility,
  [low, high]: Bracket,
  temperature: Quantity<'temperature'>,
): CrystallisationError {
  return new CrystallisationError({
    code: 'crystallisation/points-too-far-apart',
    message: `The solubility of ${crystal} is tabulated at ${celsius[low]} and ${celsius[high]} °C: too far apart for a straight line.`,
    found: showCelsius(temperature),
    expected: `a tabulated temperature, or two at most ${widestGap} °C apart`,
  })
}

function showCelsius(temperature: Quantity<'temperature'>): string {
  return `${celsiusOf(temperature).toDecimalPlaces(2)} °C`
}

/** The range of a solid: `0 to 30 °C for ZnSO4·7H2O`. */
function showRange({ crystal, celsius }: PhaseSolubility): string {
  return `${celsius[0]} to ${celsius[celsius.length - 1]} °C for ${crystal}`
}
