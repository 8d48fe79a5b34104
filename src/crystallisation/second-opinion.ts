import { asDimension, constant, exact, type Quantity } from '../quantity/index.js'
import { bracketAt, covers, interpolate, isNarrow } from './points.js'
import { type SecondTable, secondSolubilities } from './second-solubilities.js'
import type { PhaseSolubility } from './solubility-table.js'

/** What another table says of the same salt at the same temperature. */
export interface SecondOpinion {
  /** Its solubility, in g of the anhydrous salt per g of water. */
  readonly massRatio: Quantity<'ratio'>
  /** How far it lies from the first table, in per cent of that. */
  readonly difference: Quantity<'ratio'>
  /** Where it is printed. */
  readonly source: string
}

/** Every other table that says something about the same solid at this temperature; they are compared, never averaged. */
export function secondOpinions(
  salt: string,
  phase: PhaseSolubility,
  first: Quantity<'ratio'>,
  temperature: Quantity<'temperature'>,
): readonly SecondOpinion[] {
  return secondSolubilities
    .filter((table) => table.salt === salt)
    .flatMap((table) => withinPhase(table, phase, temperature))
    .map(({ massRatio, source }) => ({
      massRatio,
      source,
      difference: massRatio.minus(first).dividedBy(first).to('%'),
    }))
}

/** The value of a second table, whose solids have no names: both points have to lie within the range of the first table's. */
function withinPhase(
  table: SecondTable,
  phase: PhaseSolubility,
  temperature: Quantity<'temperature'>,
): readonly Omit<SecondOpinion, 'difference'>[] {
  const celsius = table.celsius.filter(
    (t) => (phase.celsius[0] as number) <= t && t <= (phase.celsius.at(-1) as number),
  )
  if (celsius.length === 0 || !covers(celsius, temperature)) return []
  const bracket = bracketAt(celsius, temperature)
  if (!isNarrow(celsius, bracket)) return []
  const printed = celsius.map((t) => table.printed[table.celsius.indexOf(t)] as string)
  const valueAt = (index: number) => perWater(table, `${celsius[index]} °C`, printed[index] as string)
  return [{ massRatio: interpolate(celsius, bracket, valueAt, temperature), source: table.source }]
}

function perWater({ salt, source }: SecondTable, at: string, printed: string): Quantity<'ratio'> {
  const text: string = `${printed} g`
  const mass = constant(text, {
    label: `${salt} per 100 g of water at ${at}`,
    of: salt,
    role: 'solubility',
    id: `${source}: ${salt} at ${at} = ${text}`,
    wholeNumberZeros: 'significant',
  })
  return asDimension(mass, 'mass').dividedBy(exact('100 g'))
}
