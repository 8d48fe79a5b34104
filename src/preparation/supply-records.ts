import type { ErrorDetails } from '../errors.js'
import { netMass } from '../product/index.js'
import type { Quantity } from '../quantity/index.js'
import { speciesKey } from '../stoichiometry/index.js'
import type { RecipeFacts, SupplyFacts } from './facts.js'
import type { Finding } from './finding.js'
import { problemsError } from './read-json.js'
import type { Records, SupplyRecord } from './records.js'
import { type MeasuredStrength, measuredBy, measureOf, reading } from './supply.js'
import { grossBelowTare, weighedTwice, weighingOf } from './weighing.js'

/** What was taken of a supply. */
export interface Taken {
  /** As it was weighed or measured. */
  readonly measure: Quantity<'mass'> | Quantity<'volume'>
  /** The amount that is. */
  readonly amount: Quantity<'amount'>
}

/** The records of the supplies. */
export interface SupplyReadings {
  /** What was taken, of every supply that was recorded. */
  readonly taken: ReadonlyMap<SupplyFacts, Taken>
  /** What is to be said of the weighings. */
  readonly findings: readonly Finding[]
}

/** Reads what was weighed and measured of each supply; every mistake is in the one error. */
export function readSupplyRecords(facts: RecipeFacts, { supplies = [] }: Records): SupplyReadings {
  const taken = new Map<SupplyFacts, Taken>()
  const findings: Finding[] = []
  const problems: ErrorDetails[] = []
  for (const [index, record] of supplies.entries()) {
    const read = readRecord(facts, taken, record, index)
    if ('problem' in read) problems.push(read.problem)
    else if (read.measure.value.lt(0))
      findings.push(grossBelowTare(['supplies', index], read.measure as Quantity<'mass'>))
    else taken.set(read.supply, takenOf(facts, record, read))
  }
  if (problems.length > 0) throw problemsError('records', problems)
  return { taken, findings }
}

interface ReadRecord {
  readonly supply: SupplyFacts
  readonly measure: Taken['measure']
}

/** Which supply a record is of and what was measured of it, or what is wrong with it. */
function readRecord(
  facts: RecipeFacts,
  taken: ReadonlyMap<SupplyFacts, Taken>,
  record: SupplyRecord,
  index: number,
): ReadRecord | { readonly problem: ErrorDetails } {
  const meant = facts.supplies.filter((each) => isRecordOf(facts, record, each))
  const supply = meant.find((each) => !taken.has(each))
  const measure = measuredOf(record)
  if (meant.length === 0) return { problem: unknownSupply(facts, record, index) }
  if (supply === undefined) return { problem: listedTwice(record, index) }
  if (measure === undefined) return { problem: nothingWeighed(record, index) }
  const ways = waysOf(record)
  if (ways.length > 1) return { problem: weighedTwice(['supplies', index], ways) }
  if (measuredBy(supply.recipe.form).includes(measure.dimension)) return { supply, measure }
  return { problem: otherMeasure(supply, measure, index) }
}

function takenOf({ weights }: RecipeFacts, record: SupplyRecord, { supply, measure }: ReadRecord): Taken {
  return { measure, amount: measureOf(supply, weights, strengthOf(record)).amountIn(measure) }
}

function isRecordOf({ stages }: RecipeFacts, { substance, stage }: SupplyRecord, supply: SupplyFacts): boolean {
  return supply.key === speciesKey(substance) && (stage === undefined || stages[supply.stage]?.name === stage)
}

function measuredOf({
  mass,
  gross,
  tare,
  volume,
  substance,
}: SupplyRecord): Quantity<'mass'> | Quantity<'volume'> | undefined {
  if (volume !== undefined)
    return reading(volume, 'volume').named({
      symbol: 'V',
      of: substance,
      role: 'volume',
      label: `volume of ${substance} used`,
    })
  if (mass !== undefined)
    return reading(mass, 'mass').named({ symbol: 'm', of: substance, role: 'mass', label: `mass of ${substance} used` })
  if (gross === undefined || tare === undefined) return undefined
  return netMass(weighingOf({ gross, tare }, substance))
}

/** The ways in which a record says how much was taken: one is enough, and two may contradict each other. */
function waysOf({ mass, volume, gross, tare }: SupplyRecord): readonly string[] {
  const filled = gross === undefined && tare === undefined ? undefined : 'gross and tare'
  return [mass && 'mass', volume && 'volume', filled].filter((way) => way !== undefined)
}

function strengthOf({ assay, concentration }: SupplyRecord): MeasuredStrength {
  return {
    assay: assay === undefined ? undefined : reading(assay, 'ratio'),
    concentration: concentration === undefined ? undefined : reading(concentration, 'amountConcentration'),
  }
}

function unknownSupply(facts: RecipeFacts, { substance, stage }: SupplyRecord, index: number): ErrorDetails {
  const { supplies } = facts
  const known = supplies.filter((supply) => isRecordOf(facts, { substance }, supply))
  if (stage !== undefined && known.length > 0) return notAtStage(facts, known, stage, index)
  return {
    code: 'preparation/unknown-supply',
    message: `supplies[${index}]: ${substance} is not in the recipe.`,
    path: ['supplies', index, 'substance'],
    found: substance,
    expected: supplies.map(({ formula }) => formula.text).join(', '),
  }
}

function notAtStage(
  { stages }: RecipeFacts,
  known: readonly SupplyFacts[],
  found: string,
  index: number,
): ErrorDetails {
  const [{ formula }] = known as readonly [SupplyFacts]
  return {
    code: 'preparation/unknown-stage',
    message: `supplies[${index}]: ${formula.text} does not go into a stage "${found}".`,
    path: ['supplies', index, 'stage'],
    found,
    expected: known.map(({ stage }) => stages[stage]?.name).join(', '),
  }
}

function nothingWeighed({ substance }: SupplyRecord, index: number): ErrorDetails {
  return {
    code: 'preparation/nothing-weighed',
    message: `supplies[${index}]: nothing says how much ${substance} was used.`,
    path: ['supplies', index],
    found: 'no reading',
    expected: 'gross and tare, or mass, or volume',
  }
}

function listedTwice({ substance }: SupplyRecord, index: number): ErrorDetails {
  return {
    code: 'preparation/supply-twice',
    message: `supplies[${index}]: ${substance} is listed more often than it goes in.`,
    path: ['supplies', index, 'substance'],
    found: substance,
    expected: 'one record for each time it goes in',
  }
}

function otherMeasure({ recipe, formula }: SupplyFacts, { dimension }: Quantity, index: number): ErrorDetails {
  const expected = measuredBy(recipe.form).join(' or ')
  return {
    code: 'preparation/wrong-dimension',
    message: `supplies[${index}]: ${formula.text} comes as ${recipe.form} and is measured by its ${expected}, not by its ${dimension}.`,
    path: ['supplies', index],
    found: `a ${dimension}`,
    expected: `a ${expected}`,
  }
}
