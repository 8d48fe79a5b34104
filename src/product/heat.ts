import type { FormulaLike } from '../formula/index.js'
import { constant, exact, type Quantity } from '../quantity/index.js'
import { type Given, measured } from '../stoichiometry/given.js'
import { positive, record } from './guard.js'
import { isStrongAcid, isStrongBase } from './strong.js'

/** A neutralisation; text is measured. */
export interface Neutralisation {
  /** Amount of water that acid and base form. */
  readonly water: Given<'amount'>
  /** Reaction enthalpy per mole of that water, below zero where heat is released. */
  readonly enthalpy: Given<'molarEnergy'>
  /** Mass of the whole solution that warms up; without it there is no temperature rise. */
  readonly solution?: Given<'mass'> | undefined
  /** Its specific heat capacity; that of water unless said. */
  readonly specificHeatCapacity?: Given<'specificHeatCapacity'> | undefined
}

/** What a neutralisation gives off. Estimates: no heat is lost, nothing dilutes. */
export interface NeutralisationHeat {
  /** Heat released. */
  readonly heat: Quantity<'energy'>
  /** By how many kelvins the solution warms up at most; undefined where its mass is not known. */
  readonly temperatureRise: Quantity<'temperature'> | undefined
}

/**
 * The reaction enthalpy of a strong acid with a strong base in dilute solution: H+ + OH- gives H2O, at 25 °C.
 *
 * @param acid - The acid.
 * @param base - The base.
 * @returns The enthalpy per mole of water, below zero; undefined unless both are strong: then give a value of your own, or none.
 *   For sulfuric acid, whose second proton is not quite strong, it is the nearest estimate.
 * @throws {@link FormulaError} `formula/unknown-symbol` and its other codes, for a formula that cannot be read.
 * @source CODATA Key Values for Thermodynamics (1989): enthalpies of formation of H2O(l), -285.830 ± 0.040 kJ/mol, and OH-(aq),
 *   -230.015 ± 0.040 kJ/mol; from memory, the same values in Thomsen, thermodynamic tables (1997).
 *
 * @example
 * ```ts
 * import { neutralisationEnthalpy } from 'saltwright/product'
 *
 * neutralisationEnthalpy('HCl', 'NaOH')?.toString() // => '-55.815 kJ/mol'
 * neutralisationEnthalpy('HCl', 'NH3') // => undefined
 * ```
 */
export function neutralisationEnthalpy(acid: FormulaLike, base: FormulaLike): Quantity<'molarEnergy'> | undefined {
  if (!isStrongAcid(acid) || !isStrongBase(base)) return undefined
  const water = constant('-285.830 kJ/mol', {
    label: 'enthalpy of formation of liquid water',
    symbol: 'ΔfH',
    of: 'H2O',
    uncertainty: '0.040 kJ/mol',
    id: 'CODATA 1989: H2O(l)',
  })
  const hydroxide = constant('-230.015 kJ/mol', {
    label: 'enthalpy of formation of dissolved hydroxide',
    symbol: 'ΔfH',
    of: 'OH^-',
    uncertainty: '0.040 kJ/mol',
    id: 'CODATA 1989: OH-(aq)',
  })
  return water.minus(hydroxide).named({ label: 'enthalpy of neutralisation', symbol: 'ΔrH' })
}

/**
 * The heat that a neutralisation releases, and by how much it warms the solution at most.
 *
 * @param neutralisation - The amount of water formed, the enthalpy per mole of it, and the mass of the solution.
 * @returns Heat and, where the mass is known, the temperature rise in kelvins. Estimates, never a promise that it stays cool.
 * @throws {@link ProductError} `product/not-positive`; `product/not-an-object`.
 * @source Specific heat capacity of water 4.184 J/(g K): OpenStax, Chemistry 2e, section 5.1, Table 5.1. Solution taken as water,
 *   no heat lost: the same, section 5.2.
 *
 * @example
 * ```ts
 * import { neutralisationHeat } from 'saltwright/product'
 *
 * const { heat, temperatureRise } = neutralisationHeat({
 *   water: '0.100 mol',
 *   enthalpy: '-55.8 kJ/mol',
 *   solution: '75 g',
 * })
 * heat.toString() // => '5.58 kJ'
 * temperatureRise?.toString() // => '18 K'
 * ```
 */
export function neutralisationHeat(neutralisation: Neutralisation): NeutralisationHeat {
  const { water, enthalpy, solution } = record(neutralisation, 'a neutralisation')
  const reaction = measured(enthalpy, 'molarEnergy', { label: 'enthalpy of neutralisation', symbol: 'ΔrH' })
  const amount = positive(water, 'amount', { label: 'amount of water formed', symbol: 'n', of: 'H2O', role: 'amount' })
  const heat = exact('0 J').minus(amount.times(reaction)).to('kJ').named({ label: 'heat released', symbol: 'q' })
  if (solution === undefined) return { heat, temperatureRise: undefined }
  const mass = positive(solution, 'mass', { label: 'mass of the solution', symbol: 'm', role: 'mass' })
  const capacity = mass.times(capacityOf(neutralisation))
  return { heat, temperatureRise: heat.dividedBy(capacity).named({ label: 'temperature rise at most', symbol: 'ΔT' }) }
}

function capacityOf({ specificHeatCapacity }: Neutralisation): Quantity<'specificHeatCapacity'> {
  const naming = { label: 'specific heat capacity', symbol: 'c' } as const
  if (specificHeatCapacity !== undefined) return positive(specificHeatCapacity, 'specificHeatCapacity', naming)
  return constant('4.184 J/(g K)', { ...naming, of: 'H2O' })
}
