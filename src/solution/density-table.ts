import type { TextOf } from '../stoichiometry/given.js'

/** Densities of aqueous solutions of one substance against the mass fraction. */
export interface DensityTable {
  /** The solute; the solvent is water. */
  readonly substance: string
  /** The temperature, in degrees Celsius. */
  readonly celsius: string
  /** Where the numbers stand. */
  readonly source: string
  /** Mass fraction and density, in the order of the mass fraction. */
  readonly points: readonly (readonly [TextOf<'ratio'>, TextOf<'density'>])[]
}
