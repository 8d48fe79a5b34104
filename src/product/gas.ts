import type { AtomicWeights } from '../element/index.js'
import { showFound } from '../errors.js'
import { type FormulaLike, formulaOf, molarMass } from '../formula/index.js'
import { exact, type Quantity } from '../quantity/index.js'
import { chosen, type Given, measured } from '../stoichiometry/given.js'
import { type GasConditionsName, gasConditions } from './gas-conditions.js'
import { positive, record } from './guard.js'
import { ProductError } from './product-error.js'

/** A gas that is evolved, and the state at which its volume is wanted; text is measured. */
export interface GasEvolved {
  /** Which gas: `H2`. */
  readonly gas: FormulaLike
  /** How much of it. */
  readonly amount: Given<'amount'>
  /** At what temperature and pressure: named, or measured. */
  readonly at:
    | GasConditionsName
    | {
        /** As measured. */
        readonly temperature: Given<'temperature'>
        /** Of the gas itself: over water, what is read less the vapour pressure of water. */
        readonly pressure: Given<'pressure'>
      }
  /** Atomic weights for the mass; `"abridged"` unless said. */
  readonly weights?: AtomicWeights | undefined
}

/** A gas by amount, volume and mass. */
export interface GasVolume {
  /** Which gas. */
  readonly gas: string
  /** How much of it. */
  readonly amount: Quantity<'amount'>
  /** Its volume as an ideal gas, in litres. */
  readonly volume: Quantity<'volume'>
  /** Its mass. */
  readonly mass: Quantity<'mass'>
  /** At what temperature. */
  readonly temperature: Quantity<'temperature'>
  /** At what pressure. */
  readonly pressure: Quantity<'pressure'>
}

/**
 * The volume that an evolved gas takes up, by the ideal gas law V = nRT/p, dry. Water vapour over a warm liquid adds to it.
 *
 * @param evolved - The gas, its amount, and the temperature and pressure: a name of {@link gasConditions}, or measured.
 * @returns Amount, volume in litres and mass, with the temperature and pressure they hold for.
 * @throws {@link ProductError} `product/not-positive`; `product/unknown-conditions`; `product/not-an-object`.
 * @source Molar gas constant 8.314 462 618 153 24 J/(mol K), exact as the product of the Avogadro and Boltzmann constants: CODATA
 *   2018 and 2022.
 *
 * @example
 * ```ts
 * import { gasVolume } from 'saltwright/product'
 *
 * const hydrogen = gasVolume({ gas: 'H2', amount: '0.0400 mol', at: '25 °C, 100 kPa' })
 * hydrogen.volume.toString() // => '0.992 L'
 * const warm = { temperature: '31.5 degC', pressure: '99.2 kPa' } as const
 * gasVolume({ gas: 'H2', amount: '0.0400 mol', at: warm }).volume.toString() // => '1.02 L'
 * ```
 */
export function gasVolume(evolved: GasEvolved): GasVolume {
  const { weights } = record(evolved, 'an evolved gas')
  const gas = formulaOf(evolved.gas).text
  const amount = positive(evolved.amount, 'amount', { label: `amount of ${gas}`, symbol: 'n', of: gas, role: 'amount' })
  const { temperature, pressure } = stateOf(evolved.at)
  const energy = amount.times(gasConstant()).times(absolute(temperature))
  return {
    gas,
    amount,
    volume: energy.dividedBy(pressure).named({ label: `volume of ${gas}`, symbol: 'V', of: gas, role: 'volume' }),
    mass: amount
      .times(molarMass(gas, { weights }))
      .named({ label: `mass of ${gas}`, symbol: 'm', of: gas, role: 'mass' }),
    temperature,
    pressure,
  }
}

type State = Pick<GasVolume, 'temperature' | 'pressure'>

const temperatureNaming = { label: 'temperature', symbol: 't', role: 'temperature' } as const
const pressureNaming = { label: 'pressure', symbol: 'p', role: 'pressure' } as const

function stateOf(at: GasEvolved['at']): State {
  if (typeof at === 'string') return namedState(at)
  const { temperature, pressure } = record(at, 'a temperature and a pressure')
  return {
    temperature: measured(temperature, 'temperature', temperatureNaming),
    pressure: positive(pressure, 'pressure', pressureNaming),
  }
}

function namedState(name: GasConditionsName): State {
  if (!Object.hasOwn(gasConditions, name)) throw unknownConditions(name)
  const { temperature, pressure } = gasConditions[name]
  return {
    temperature: chosen(temperature, 'temperature', temperatureNaming),
    pressure: chosen(pressure, 'pressure', pressureNaming),
  }
}

function absolute(temperature: Quantity<'temperature'>): Quantity<'temperature'> {
  const naming = { label: 'absolute temperature', symbol: 'T', role: 'temperature' } as const
  return positive(temperature.to('K').named(naming), 'temperature', naming)
}

function gasConstant(): Quantity<'molarHeatCapacity'> {
  return exact('8.31446261815324 J/(mol K)', { label: 'molar gas constant', symbol: 'R' })
}

function unknownConditions(found: unknown): ProductError {
  const expected = Object.keys(gasConditions)
    .map((name) => `"${name}"`)
    .join(', ')
  return new ProductError({
    code: 'product/unknown-conditions',
    message: `${showFound(found)} does not say at what temperature and pressure.`,
    found: showFound(found),
    expected: `${expected}, or { temperature, pressure }`,
  })
}
