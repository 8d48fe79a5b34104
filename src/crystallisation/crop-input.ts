import type { AtomicWeights } from '../element/index.js'
import { showFound } from '../errors.js'
import { anhydrous, type FormulaLike, formulaOf, molarMass } from '../formula/index.js'
import type { Dimension, Quantity } from '../quantity/index.js'
import { chosen, type Given, type Labels } from '../stoichiometry/given.js'
import { CrystallisationError } from './crystallisation-error.js'
import { record } from './record.js'
import type { SolubilityTable } from './solubility-table.js'
import { fractionOf } from './table-value.js'

/** What is cooled. All masses are of the whole batch; text is exact. */
export interface CropInput {
  /** The crystals that form: `ZnSO4·7H2O`. */
  readonly crystal: FormulaLike
  /** The dissolved salt: the mass of the anhydrous salt. Give this or `amount`. */
  readonly dissolved?: Given<'mass'> | undefined
  /** The dissolved salt: its amount. Give this or `dissolved`. */
  readonly amount?: Given<'amount'> | undefined
  /** All the water in the liquor before cooling, that of dissolved hydrates and of added solutions included. */
  readonly water: Given<'mass'>
  /** How much of it is boiled off or dries up; none unless said. */
  readonly evaporated?: Given<'mass'> | undefined
  /** At what temperature the crystals are filtered off. */
  readonly temperature: Given<'temperature'>
  /** Grams of the anhydrous salt per gram of water at that temperature, or a table; the built-in table unless said. */
  readonly solubility?: Given<'ratio'> | SolubilityTable | undefined
  /** What else is dissolved, such as acid in excess: with an ion in common it drives more of the salt out. */
  readonly alsoDissolved?: readonly string[] | undefined
  /** Atomic weights; `"abridged"` unless said. */
  readonly weights?: AtomicWeights | undefined
}

/** What is cooled, without the temperature. */
export type Batch = Pick<CropInput, 'crystal' | 'dissolved' | 'amount' | 'water' | 'evaporated' | 'weights'>

/** The numbers of the balance. */
export interface Liquor {
  /** The crystals. */
  readonly crystal: string
  /** The anhydrous salt in them. */
  readonly salt: string
  /** Mass of the anhydrous salt that is dissolved. */
  readonly saltMass: Quantity<'mass'>
  /** Mass of the water that is left after boiling down. */
  readonly waterMass: Quantity<'mass'>
  /** Mass fraction of the anhydrous salt in the crystals. */
  readonly fraction: Quantity<'ratio'>
  /** Whether the crystals hold water. */
  readonly hydrated: boolean
}

/** Reads what is cooled. */
export function readLiquor(batch: Batch): Liquor {
  const crystal = formulaOf(record(batch, 'what is cooled').crystal)
  const salt = anhydrous(crystal)
  const molar = molarMass(salt, { weights: batch.weights })
  const fraction = fractionOf(molar, molarMass(crystal, { weights: batch.weights }))
  return {
    crystal: crystal.text,
    salt: salt.text,
    saltMass: saltMass(batch, salt.text, molar),
    waterMass: waterLeft(batch),
    fraction,
    hydrated: fraction.value.lt(1),
  }
}

function saltMass({ dissolved, amount }: Batch, of: string, molar: Quantity<'molarMass'>): Quantity<'mass'> {
  const naming: Labels = { label: `mass of dissolved ${of}`, symbol: 'm', of, role: 'mass' }
  if (amount === undefined) return positive(dissolved, 'mass', naming, 'dissolved')
  if (dissolved !== undefined) throw givenTwice()
  const moles = positive(
    amount,
    'amount',
    { label: `amount of dissolved ${of}`, symbol: 'n', of, role: 'amount' },
    'amount',
  )
  return moles.times(molar).named(naming)
}

function waterLeft({ water, evaporated }: Batch): Quantity<'mass'> {
  const all = positive(water, 'mass', { label: 'water', symbol: 'm', of: 'H2O', role: 'water' }, 'water')
  if (evaporated === undefined) return all
  const gone = chosen(evaporated, 'mass', { label: 'water evaporated', symbol: 'm', of: 'H2O', role: 'water' })
  if (gone.value.lt(0)) throw notPositive(gone, 'water evaporated', 'evaporated')
  const left = all.minus(gone)
  if (left.value.gt(0)) return left.named({ label: 'water left', symbol: 'm', of: 'H2O', role: 'water' })
  throw new CrystallisationError({
    code: 'crystallisation/water-used-up',
    message: `${gone} of water evaporate out of ${all}: no liquor is left.`,
    path: ['evaporated'],
    found: String(gone),
    expected: `less than ${all}`,
  })
}

/** A quantity above zero; text is exact. */
export function positive<D extends Dimension>(
  given: Given<D> | undefined,
  dimension: D,
  naming: Labels,
  path: string,
): Quantity<D> {
  if (given === undefined) throw notPositive(given, naming.label, path)
  const q = chosen(given, dimension, naming)
  if (q.value.gt(0)) return q
  throw notPositive(q, naming.label, path)
}

function givenTwice(): CrystallisationError {
  return new CrystallisationError({
    code: 'crystallisation/salt-given-twice',
    message: 'The dissolved salt is given by its mass and by its amount.',
    path: ['dissolved'],
    found: 'dissolved and amount',
    expected: 'one of the two',
  })
}

function notPositive(found: Quantity | undefined, what: string, path: string): CrystallisationError {
  const shown = found === undefined ? showFound(found) : String(found)
  return new CrystallisationError({
    code: 'crystallisation/not-positive',
    message: `${shown} stands where the ${what} was expected.`,
    path: [path],
    found: shown,
    expected: `${what}, above zero`,
  })
}
